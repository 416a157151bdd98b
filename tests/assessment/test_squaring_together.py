"""Several pairs together, by cases that need no formula: twins, mirror images, opposites."""

import pytest
from scipy.stats import t

from aligner.assessment import assess
from aligner.assessment.squaring import SquaringAssessment
from aligner.gauging import Verdict
from aligner.job import Job, SquaringPair
from aligner.sheet.quantities import Angle, Length, SignedLength
from aligner.units.preferred import Preferred
from tests.assessment.bench_jobs import true_job
from tests.rigid_model import LEFT, RIGHT, RigidPair


def mm(*values: float) -> tuple[Length, ...]:
    return tuple(Length.typed(f"{value:.9f} mm") for value in values)


def pair(name: str, left: tuple[float, ...], right: tuple[float, ...], **changes) -> SquaringPair:
    points = {
        "bracket_reach": SignedLength.typed("40 mm"),
        "bracket_half_width": Length.typed("120 mm"),
        "frame_setback": SignedLength.typed("150 mm"),
        "frame_half_width": Length.typed("100 mm"),
    }
    return SquaringPair(
        name=name, gauge="gauge", left=mm(*left), right=mm(*right), **{**points, **changes}
    )


def turned(name: str, turn_deg: float, *spread: float) -> SquaringPair:
    """What a gauge reads at a turn, by coordinates; read again with so much spread."""
    points = RigidPair(40, 120, 150, 100, height=60, turn_deg=turn_deg)
    left, right = points.distance(LEFT), points.distance(RIGHT)
    spread = spread or (0.0, 0.0)
    return pair(name, tuple(left + d for d in spread), tuple(right + d for d in spread))


def job_with(*pairs: SquaringPair) -> Job:
    job = true_job()
    limits = job.sheet.squaring.with_changes(tolerance=Angle.typed("0.2 deg"))
    return job.with_changes(
        sheet=job.sheet.with_changes(squaring=limits),
        align=job.align.with_changes(squaring=pairs),
    )


def found(*pairs: SquaringPair) -> SquaringAssessment:
    return assess(job_with(*pairs)).squaring


def test_two_pairs_that_are_both_straight_are_straight_together():
    both = found(
        pair("lugs", (200.0,) * 2, (200.0,) * 2), pair("bolts", (210.0,) * 2, (210.0,) * 2)
    )
    assert both.turn is not None
    assert both.turn.value == 0
    assert both.verdict is Verdict.WITHIN
    assert [each.residual_mm for each in both.pairs] == [0, 0]
    assert not both.disagree


@pytest.mark.parametrize("turn_deg", [0.5, -0.5])
def test_twins_say_what_each_says_with_twice_the_knowledge(turn_deg):
    spread = (-0.1, 0.0, 0.1)
    alone = found(turned("lugs", turn_deg, *spread))
    twins = found(turned("lugs", turn_deg, *spread), turned("bolts", turn_deg, *spread))
    assert alone.turn is not None
    assert twins.turn is not None
    assert twins.turn.value == pytest.approx(turn_deg, abs=1e-4)
    ratio = twins.turn.standard_uncertainty / alone.turn.standard_uncertainty
    assert ratio == pytest.approx(2**-0.5)
    freedom = alone.pairs[0].degrees_of_freedom
    assert twins.turn.judgement.coverage_factor == pytest.approx(t.ppf(0.975, int(2 * freedom)))


def test_pairs_that_say_opposite_things_disagree_and_the_residual_is_all_they_say():
    against = found(turned("lugs", 1.0), turned("bolts", -1.0))
    assert against.disagree
    assert against.odd_pair is None
    assert against.verdict is not Verdict.WITHIN
    assert against.turn is not None
    assert against.turn.value == pytest.approx(0, abs=1e-4)
    for each in against.pairs:
        assert each.left is not None
        assert each.right is not None
        assert each.residual_mm == pytest.approx(each.left.value_mm - each.right.value_mm, abs=1e-4)
    lugs, bolts = (each.normalized_residual for each in against.pairs)
    assert lugs == pytest.approx(-bolts, rel=1e-3)
    assert lugs > 0  # a turn to the left brings the left side nearer, and shows as a turn above


def test_of_three_pairs_the_one_that_stands_out_is_named():
    three = found(turned("lugs", 0.0), turned("bolts", 0.0), turned("pads", 1.0))
    assert three.odd_pair == "pads"
    job = job_with(turned("lugs", 0.0), turned("bolts", 0.0), turned("pads", 1.0))
    assert assess(job).correction(Preferred()).sentence == "Measure “pads” again."


def test_pairs_of_which_one_is_read_with_no_gauge_settle_nothing():
    bare = turned("bolts", 0.0).with_changes(gauge=None)
    both = found(turned("lugs", 0.0), bare)
    assert both.verdict is Verdict.UNSETTLED
    assert any("cannot be weighed" in notice.text for notice in both.notices)


@pytest.mark.parametrize("absent", ["left", "right"])
def test_a_pair_read_on_one_side_only_leaves_what_the_other_proves_and_is_asked_for(absent):
    half = turned("bolts", 0.0).with_changes(gauge=None, **{absent: ()})
    both = found(turned("lugs", 0.0), half)
    assert both.verdict is Verdict.WITHIN
    assert both.not_read == ("bolts",)
    told = assess(job_with(turned("lugs", 0.0), half)).correction(Preferred())
    assert "bolts" in told.sentence


def test_points_that_are_further_apart_than_what_was_read_are_refused_in_words():
    short = pair("lugs", (180.0,) * 2, (180.0,) * 2, frame_setback=SignedLength.typed("400 mm"))
    told = assess(job_with(short)).correction(Preferred())
    assert told.sentence == "The distances and the points do not fit."
    assert "180" in told.detail
