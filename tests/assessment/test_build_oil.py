"""The oil of both legs: millilitres, verdicts with uncertainty, volume, and what is missing."""

import math

import pytest
from uncertainties import ufloat

from aligner.assessment.build_oil import assess_oil, oil_advice
from aligner.gauging import Remedy, Verdict
from aligner.job.edits_build import with_build, with_leg_oil
from aligner.sheet.legs import OilSpecification
from aligner.sheet.quantities import Length, Volume
from tests.assessment.build_jobs import job, job_with_gaps, legs, lengths

WANTED = ("221", "221", "221")


def test_a_leg_with_too_small_a_gap_has_the_millilitres_of_the_cylinder_to_draw_off():
    found = assess_oil(job_with_gaps(("209",) * 3, WANTED))
    assert found.left.change_ml == pytest.approx(-math.pi * 1.8**2 * 1.2)  # cm: pi r^2 h
    assert found.left.verdict is Verdict.OUT
    assert found.right.verdict is Verdict.WITHIN
    assert found.suction_depth_mm == 221.0


def test_a_leg_with_too_large_a_gap_has_oil_to_add():
    found = assess_oil(job_with_gaps(WANTED, ("226",) * 3))
    assert found.right.change_ml == pytest.approx(+math.pi * 1.8**2 * 0.5)


def test_before_a_gap_is_read_nothing_is_said_of_gauge_or_tolerance():
    oil = legs().oil.with_changes(air_gap_tolerance=None)
    assert assess_oil(with_build(job(oil=oil), oil="fork oil")).notices == ()
    read = assess_oil(with_leg_oil(job(oil=oil), "left", gap=lengths("221")))
    assert any("no tolerance for the air gap" in notice.text for notice in read.notices)
    assert any("gauge" in notice.text for notice in read.notices)


def test_the_legs_difference_has_the_uncertainty_that_correlated_errors_give():
    found = assess_oil(job_with_gaps(("220.5",) * 3, ("221",) * 3))
    scale = ufloat(0, 0.3 / math.sqrt(3))  # one gauge: the same error on both sides
    parts = [
        value + ufloat(0, 0.2 / math.sqrt(3)) + ufloat(0, 0.5 / math.sqrt(12)) + scale
        for value in (220.5, 221.0)
    ]
    reference = parts[0] - parts[1]
    assert found.difference.value == pytest.approx(reference.nominal_value)
    assert found.difference.standard_uncertainty == pytest.approx(reference.std_dev)


def test_two_legs_each_within_can_be_unlike_by_too_much():
    found = assess_oil(job_with_gaps(("219.8",) * 6, ("222.3",) * 6))
    assert found.left.verdict is Verdict.WITHIN
    assert found.right.verdict is Verdict.WITHIN
    assert found.difference.verdict is not Verdict.WITHIN
    assert found.verdict is found.difference.verdict


def test_a_gap_at_its_limit_is_unsettled_and_says_what_would_settle_it():
    made = job_with_gaps(("222.9",), ("221",))
    found = assess_oil(made)
    assert found.left.verdict is Verdict.UNSETTLED
    assert oil_advice(made, found) is not None


def test_without_a_gauge_the_verdict_waits_for_its_name():
    made = with_leg_oil(job(), "left", gap=lengths("221"))
    made = with_leg_oil(made, "right", gap=lengths("221"))
    found = assess_oil(made)
    assert found.verdict is Verdict.UNSETTLED
    assert oil_advice(made, found).remedy is Remedy.NAME_THE_GAUGE
    assert any("gauge" in notice.text for notice in found.notices)


def test_scatter_alone_proves_no_air_gap_within_and_asks_for_the_gauge():
    made = job()
    for side in ("left", "right"):
        made = with_leg_oil(made, side, gap=lengths("220.9", "221", "221.1", "221"))
    found = assess_oil(made)
    assert found.left.verdict is Verdict.UNSETTLED
    assert found.difference.verdict is Verdict.UNSETTLED
    assert oil_advice(made, found).remedy is Remedy.NAME_THE_GAUGE


def test_without_a_bore_there_are_no_millilitres_and_it_is_said():
    found = assess_oil(job_with_gaps(("209",), WANTED, bore=None))
    assert found.left.change_ml is None
    assert found.left.verdict is Verdict.OUT
    assert "bore of the tube" in found.missing


def test_a_rod_in_the_oil_makes_the_millilitres_fewer():
    plain = assess_oil(job_with_gaps(("209",), WANTED)).left.change_ml
    with_rod = assess_oil(job_with_gaps(("209",), WANTED, rod=Length.typed("18 mm"))).left.change_ml
    assert with_rod == pytest.approx(0.75 * plain)  # half the bore, a quarter of its area


def test_a_rod_that_fills_the_bore_is_refused_in_words_and_nothing_breaks():
    found = assess_oil(job_with_gaps(("209",), WANTED, rod=Length.typed("36 mm")))
    assert found.left.change_ml is None
    assert any("does not go into a bore" in notice.text for notice in found.notices)


def test_the_volume_poured_in_is_held_against_the_manuals():
    made = with_leg_oil(job(), "left", volume=Volume.typed("265 ml"))
    found = assess_oil(made).left.volume
    assert found.difference_ml == pytest.approx(5.0)
    assert found.level_rise_mm == pytest.approx(5000 / (math.pi * 18**2))


@pytest.mark.parametrize(
    ("poured", "verdict"),
    [("262 ml", Verdict.WITHIN), ("270 ml", Verdict.OUT)],
    ids=["within", "out"],
)
def test_where_the_sheet_gives_a_volume_alone_the_volume_is_judged(poured, verdict):
    oil = OilSpecification(volume=Volume.typed("260 ml"), volume_tolerance=Volume.typed("3 ml"))
    made = job(oil=oil)
    for side in ("left", "right"):
        made = with_leg_oil(made, side, volume=Volume.typed(poured))
    found = assess_oil(made)
    assert found.by_volume
    assert found.verdict is verdict


def test_a_sheet_that_says_nothing_is_told_what_it_lacks():
    made = job(oil=OilSpecification())
    assert "air gap or volume of oil" in assess_oil(made).missing


def test_a_sheet_without_a_tolerance_is_said_to_lack_it_once_something_is_read():
    oil = legs().oil.with_changes(air_gap_tolerance=None)
    made = job_with_gaps(("221",), ("221",), oil=oil)
    found = assess_oil(made)
    assert found.verdict is Verdict.MISSING
    assert any("no tolerance" in notice.text for notice in found.notices)


def test_a_gauge_that_is_not_on_the_list_is_named():
    made = with_build(job_with_gaps(("221",), ("221",)), gauge="a lost rule")
    assert any("a lost rule" in notice.text for notice in assess_oil(made).notices)
