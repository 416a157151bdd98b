"""The legs' heights against each other and against what they should be, and either side alike."""

import pytest

from aligner.assessment import assess
from aligner.assessment.protrusion import ProtrusionAssessment
from aligner.gauging import Verdict
from aligner.geometry import Policy
from aligner.job import Job
from aligner.sheet.quantities import Length, SignedLength
from tests.assessment.bench_jobs import lengths, true_job


def job_with(
    left: tuple[str, ...],
    right: tuple[str, ...],
    policy: Policy | None = None,
    target: str = "",
    as_found: tuple[str, str] | None = None,
    **changes: object,
) -> Job:
    job = true_job()
    heights = job.align.protrusion.with_changes(
        left=lengths(*left), right=lengths(*right), policy=policy, **changes
    )
    job = job.with_changes(align=job.align.with_changes(protrusion=heights))
    if target:
        limits = job.sheet.protrusion.with_changes(target=SignedLength.typed(target))
        job = job.with_changes(sheet=job.sheet.with_changes(protrusion=limits))
    if as_found:
        read = job.as_found.protrusion.with_changes(
            left=lengths(as_found[0]), right=lengths(as_found[1])
        )
        job = job.with_changes(as_found=job.as_found.with_changes(protrusion=read))
    return job


def found(*given, **changes) -> ProtrusionAssessment:
    return assess(job_with(*given, **changes)).protrusion


THREE = ("8.0 mm",) * 3
FOUR = ("5.0 mm",) * 3


def test_the_left_leg_higher_is_a_difference_above_nothing_and_the_other_way_round():
    higher, lower = found(THREE, FOUR), found(FOUR, THREE)
    assert higher.difference is not None
    assert lower.difference is not None
    assert (higher.difference.value, lower.difference.value) == (3.0, -3.0)
    assert higher.mean_mm == lower.mean_mm == 6.5
    assert higher.verdict is lower.verdict is Verdict.OUT


def test_without_a_choice_the_sheets_target_is_gone_to_and_without_one_the_legs_share():
    shared = found(THREE, FOUR)
    assert shared.policy is Policy.SHARE
    assert shared.goal_mm is shared.left_against_goal is shared.right_against_goal is None
    aimed = found(THREE, FOUR, target="6 mm")
    assert (aimed.policy, aimed.goal_mm) == (Policy.TO_TARGET, 6.0)
    assert aimed.left_against_goal is not None
    assert aimed.right_against_goal is not None
    assert (aimed.left_against_goal.value, aimed.right_against_goal.value) == (2.0, -1.0)


def test_back_to_where_they_stood_is_the_mean_of_both_legs_as_found():
    back = found(THREE, FOUR, Policy.TO_AS_FOUND, as_found=("7 mm", "8 mm"))
    assert back.goal_mm == 7.5
    assert back.moves is not None
    assert (back.moves.left_mm, back.moves.right_mm) == (-0.5, 2.5)


def test_legs_that_are_alike_and_off_their_target_are_out():
    alike = found(THREE, THREE, target="6 mm")
    assert alike.difference is not None
    assert alike.difference.verdict is Verdict.WITHIN
    assert alike.verdict is Verdict.OUT


@pytest.mark.parametrize(
    ("left", "right"), [("6.0 mm", "6.45 mm"), ("6.45 mm", "6.0 mm")], ids=["right", "left"]
)
def test_one_leg_that_may_be_off_its_target_is_unsettled_and_told_how_to_settle(left, right):
    # 0.45 mm of 0.5 mm: the legs' difference is known better than either leg by itself, of
    # which the gauge's own error of 0.1 mm may be the whole of what is left.
    job = job_with((left,) * 3, (right,) * 3, target="6 mm")
    coarse = job.gauges["gauge"].with_changes(limit_of_error=Length.typed("0.1 mm"))
    heights = assess(job.with_changes(gauges={"gauge": coarse})).protrusion
    assert heights.difference is not None
    assert heights.difference.verdict is Verdict.WITHIN
    assert heights.verdict is Verdict.UNSETTLED
    assert heights.advice is not None


@pytest.mark.parametrize("policy", [Policy.TO_TARGET, Policy.TO_AS_FOUND])
def test_a_height_that_was_chosen_and_is_not_known_is_never_within(policy):
    alike = found(THREE, THREE, policy)
    assert alike.moves is None
    assert alike.verdict is Verdict.MISSING
    assert any(notice.where == "align.protrusion.policy" for notice in alike.notices)


def test_a_target_that_is_not_gone_to_is_told_leg_by_leg():
    told = found(THREE, FOUR, Policy.SHARE, "6 mm").notices
    (text,) = [each.text for each in told if each.where == "align.protrusion.policy"]
    assert "the left 2.0 mm over it, the right 1.0 mm under it" in text
    mirrored = found(FOUR, THREE, Policy.SHARE, "6 mm").notices
    (text,) = [each.text for each in mirrored if each.where == "align.protrusion.policy"]
    assert "the left 1.0 mm under it, the right 2.0 mm over it" in text
    assert found(("6.0 mm",) * 3, ("6.0 mm",) * 3, Policy.SHARE, "6 mm").notices == ()


@pytest.mark.parametrize("absent", ["left", "right"])
def test_a_leg_that_is_not_read_is_asked_for_and_nothing_is_moved(absent):
    heights = {"left": FOUR, "right": FOUR, absent: ()}
    half = found(heights["left"], heights["right"], gauge=None)
    assert half.verdict is Verdict.MISSING
    assert half.moves is None
    assert half.mean_mm is None
    assert f"align.protrusion.{absent}" in [notice.where for notice in half.notices]
    assert any("gauge" in notice.text.lower() for notice in half.notices)
    assert found((), (), gauge=None).notices == ()
