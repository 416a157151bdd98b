"""Sag and the preload that corrects it, against force balances solved numerically."""

import math

import pytest
from scipy.optimize import brentq
from uncertainties import ufloat

from aligner.assessment.build_oil import assess_oil
from aligner.assessment.build_sag import assess_sag
from aligner.gauging import Verdict
from aligner.job.edits_build import with_sag_lengths
from aligner.sheet.legs import SagBand, SpringSpecification
from aligner.sheet.quantities import Length, Ratio
from tests.assessment.build_jobs import job, job_with_gaps, job_with_sag, legs, lengths


def sag_of(made):
    return assess_sag(made, assess_oil(made))


def spring_n(compression_mm):
    """5.5 N/mm for 50 mm, then 8 N/mm, as the invented sheet says."""
    return 5.5 * min(compression_mm, 50) + 8.0 * max(compression_mm - 50, 0)


def air_n(stroke_mm, gap_mm):
    """Isothermal air of the invented leg, p V constant."""
    bore, tube = math.pi * 18**2, math.pi * 20**2
    v0 = bore * gap_mm + tube * 150
    return 0.101325 * (v0 / (v0 - tube * stroke_mm) - 1) * tube


def preload_by_balance(measured_mm, wanted_mm, air):
    """Preload with which the same load settles at the wanted sag, found by a root finder."""
    load = spring_n(18 + measured_mm) + air(measured_mm)
    return brentq(lambda x: spring_n(x + wanted_mm) + air(wanted_mm) - load, 0, 140)


def test_the_sag_is_the_mean_of_both_lengths_and_its_share_of_travel():
    found = sag_of(job_with_sag("200 mm", "150 mm", "160 mm")).rider
    assert found.sag.sag_mm == pytest.approx(45.0)
    assert found.sag.stiction_mm == pytest.approx(10.0)
    assert found.share == pytest.approx(0.3)
    assert found.verdict is Verdict.WITHIN


def test_its_uncertainty_is_that_of_three_lengths_with_one_gauge():
    found = sag_of(job_with_sag("200 mm", "150 mm", "160 mm")).rider.from_middle
    scale = ufloat(0, 0.3 / math.sqrt(3))

    def length():
        return ufloat(0, 0.2 / math.sqrt(3)) + ufloat(0, 0.5 / math.sqrt(12)) + scale

    reference = length() - (length() + length()) / 2
    assert found.standard_uncertainty == pytest.approx(reference.std_dev)


def test_scatter_alone_proves_no_sag_within():
    made = job()
    for which, middle in (("extended", 200.0), ("rider_down", 150.0), ("rider_up", 160.0)):
        readings = lengths(*(f"{middle + off}" for off in (-0.1, 0.0, 0.0, 0.1)))
        made = with_sag_lengths(made, which, readings)
    assert sag_of(made).rider.verdict is Verdict.UNSETTLED


def test_the_preload_change_for_a_spring_in_two_rates_is_that_of_the_balance():
    found = sag_of(job_with_sag("200 mm", "135 mm", "145 mm")).rider
    wanted = 0.29 * 150
    assert found.verdict is Verdict.OUT
    assert found.by_forces
    reference = preload_by_balance(60.0, wanted, lambda _: 0.0) - 18
    assert found.change_mm == pytest.approx(reference, abs=1e-6)


def test_the_air_is_counted_in_where_the_gaps_are_read():
    made = job_with_sag("200 mm", "135 mm", "145 mm", job_with_gaps(("221",), ("221",)))
    found = sag_of(made).rider
    wanted = 0.29 * 150
    reference = preload_by_balance(60.0, wanted, lambda s: air_n(s, 221)) - 18
    assert found.change_mm == pytest.approx(reference, abs=1e-6)
    assert found.change_mm > 60.0 - wanted + 1  # the air held a share that the spring must take


def test_a_linear_spring_with_nothing_known_of_it_is_corrected_one_for_one():
    made = job_with_sag("200 mm", "135 mm", "145 mm", job(spring=SpringSpecification()))
    found = sag_of(made).rider
    assert not found.by_forces
    assert found.change_mm == pytest.approx(60.0 - 0.29 * 150)


def test_a_band_in_millimetres_needs_no_travel():
    band = SagBand(rider_low=Length.typed("40 mm"), rider_high=Length.typed("50 mm"))
    found = sag_of(job_with_sag("200 mm", "150 mm", "160 mm", job(sag=band, travel=None)))
    assert found.rider.verdict is Verdict.WITHIN
    assert found.rider.share is None


@pytest.mark.parametrize(
    ("extended", "down", "up", "said"),
    [
        ("200 mm", "210 mm", "215 mm", "longer than the extended"),
        ("200 mm", "160 mm", "150 mm", "changed over"),
        ("400 mm", "150 mm", "160 mm", "more than the travel"),
    ],
    ids=["longer when loaded", "sets changed over", "more than the travel"],
)
def test_readings_that_cannot_be_get_a_sentence(extended, down, up, said):
    found = sag_of(job_with_sag(extended, down, up))
    assert any(said in notice.text for notice in found.notices)


def test_a_set_that_is_still_to_be_read_is_named():
    made = with_sag_lengths(job(), "rider_down", lengths("150"))
    found = sag_of(made)
    assert found.rider.sag is None
    assert "the extended length and lifted up is still to be read" in found.notices[0].text


def test_a_band_the_wrong_way_round_is_said_and_not_judged():
    band = SagBand(rider_low=Ratio.typed("33 %"), rider_high=Ratio.typed("25 %"))
    found = sag_of(job_with_sag("200 mm", "150 mm", "160 mm", job(sag=band)))
    assert found.rider.verdict is Verdict.MISSING
    assert any("put the lower one first" in notice.text for notice in found.notices)


def test_a_wanted_sag_that_would_leave_the_spring_loose_is_refused():
    band = SagBand(rider_low=Length.typed("90 mm"), rider_high=Length.typed("100 mm"))
    found = sag_of(job_with_sag("200 mm", "180 mm", "190 mm", job(sag=band, spring=legs().spring)))
    assert found.rider.change_mm is None
    assert any("spring loose" in notice.text for notice in found.notices)


def test_less_sag_with_the_rider_than_without_is_noticed():
    made = job_with_sag("200 mm", "170 mm", "180 mm")
    for which, text in (("static_down", "140"), ("static_up", "150")):
        made = with_sag_lengths(made, which, lengths(text))
    assert any("less with the rider" in notice.text for notice in sag_of(made).notices)
