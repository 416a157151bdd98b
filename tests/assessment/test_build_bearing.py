"""The head bearing's check: moments by hand, the band at another radius, and what was felt."""

import pytest

from aligner.assessment.build_bearing import assess_bearing
from aligner.gauging import Verdict
from aligner.job.build import FallAway
from aligner.job.edits_build import with_bearing
from aligner.sheet.legs import BearingDrag
from aligner.sheet.quantities import Force, Length
from tests.assessment.build_jobs import drag, job, job_with_pull


@pytest.mark.parametrize(
    ("pulls", "radius", "verdict"),
    [
        (("12", "13"), None, Verdict.WITHIN),
        (("20", "21"), None, Verdict.OUT),
        (("8", "9"), None, Verdict.OUT),
        (("15", "17"), None, Verdict.UNSETTLED),
        (("9", "17"), None, Verdict.UNSETTLED),
        # Nearer to the axis the same drag reads more: 350/250 x 16 N is 22.4 N.
        (("21", "22"), "250 mm", Verdict.WITHIN),
        (("23", "24"), "250 mm", Verdict.OUT),
    ],
    ids=[
        "within",
        "out",
        "out below",
        "on both sides",
        "beyond both ends, the mean inside",
        "within nearer in",
        "out nearer in",
    ],
)
def test_the_pull_is_held_against_the_band_at_its_radius(pulls, radius, verdict):
    found = assess_bearing(job_with_pull(*pulls, radius=radius))
    assert found.verdict is verdict
    arm = float((radius or "350 mm").removesuffix(" mm")) / 1000
    assert found.drag_nm == pytest.approx(sum(map(float, pulls)) / 2 * arm)


def test_a_drag_printed_as_a_torque_becomes_a_pull_at_the_radius_used():
    found = assess_bearing(job_with_pull("10", radius="300 mm", bearing=drag("2 N·m", "4 N·m")))
    assert found.wanted_pull.low_n == pytest.approx(2 / 0.3)
    assert found.wanted_pull.high_n == pytest.approx(4 / 0.3)
    assert found.verdict is Verdict.WITHIN


@pytest.mark.parametrize("pull", ["5.1", "5.7", "6.9", "7.2"])
def test_a_pull_that_is_just_what_the_manual_prints_is_within(pull):
    """200 mm and these: what is carried to a metre and back is less by the last digit."""
    printed = Force.typed(f"{pull} N")
    band = BearingDrag(pull_low=printed, pull_high=printed, radius=Length.typed("200 mm"))
    assert assess_bearing(job_with_pull(pull, bearing=band)).verdict is Verdict.WITHIN


def test_a_pull_without_a_radius_says_so():
    found = assess_bearing(job_with_pull("12", bearing=drag("2 N·m", "4 N·m")))
    assert found.drag_nm is None
    assert "radius" in found.notices[0].text


def test_a_radius_of_nothing_is_refused_in_words():
    found = assess_bearing(job_with_pull("12", radius="0 mm"))
    assert found.verdict is Verdict.MISSING
    assert any("radius is 0 mm" in notice.text for notice in found.notices)


def test_a_printed_pull_without_its_radius_is_no_band():
    band = BearingDrag(pull_low=Force.typed("10 N"), pull_high=Force.typed("16 N"))
    found = assess_bearing(job_with_pull("12", radius="350 mm", bearing=band))
    assert not found.has_band
    assert any("no radius" in notice.text for notice in found.notices)


def test_a_band_the_wrong_way_round_is_said():
    found = assess_bearing(job_with_pull("12", bearing=drag("4 N·m", "2 N·m")))
    assert not found.has_band
    assert any("lower one first" in notice.text for notice in found.notices)


@pytest.mark.parametrize("felt", list(FallAway), ids=[felt.name for felt in FallAway])
def test_the_check_is_passed_only_when_scale_and_feel_agree(felt):
    within = with_bearing(job_with_pull("12", "13"), fall_away=felt)
    assert assess_bearing(within).is_settled is (felt is FallAway.FREE)
    out = with_bearing(job_with_pull("30"), fall_away=felt)
    assert not assess_bearing(out).is_settled


def test_where_the_sheet_gives_no_drag_the_feel_decides():
    made = with_bearing(job(bearing=BearingDrag()), fall_away=FallAway.FREE)
    assert assess_bearing(made).is_settled
