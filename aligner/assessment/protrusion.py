"""What the protrusion readings say: whether the legs are equal and on target, and what to move."""

from __future__ import annotations

from dataclasses import dataclass, replace

from aligner.assessment.notice import Notice, attention, refused
from aligner.assessment.readings import (
    Judged,
    gauge_notices,
    gauge_of,
    gravest,
    judged,
    mean_mm,
    mean_of,
    odd_reading,
    unproved,
    usable_gauges,
)
from aligner.errors import AlignerError
from aligner.gauging import (
    Advice,
    Difference,
    Estimate,
    Gauge,
    Term,
    Verdict,
    difference,
    settling_advice,
)
from aligner.geometry import Moves, Policy, moves
from aligner.job import Job
from aligner.language import marked, say
from aligner.sheet.quantities import SignedLength
from aligner.units.shown import rounded

WHERE = "align.protrusion"

_NOT_MEASURED = {
    "left": marked("The left leg is not measured."),
    "right": marked("The right leg is not measured."),
}
_OVER = {"left": marked("the left {size} over it"), "right": marked("the right {size} over it")}
_UNDER = {
    "left": marked("the left {size} under it"),
    "right": marked("the right {size} under it"),
}


@dataclass(frozen=True)
class ProtrusionAssessment:
    """The legs' heights.

    Attributes:
        left: of the left leg, `None` without readings.
        right: of the right leg.
        policy: which leg goes where.
        difference: left minus right, judged; positive: the left stands higher.
        left_against_goal: left minus the height it should have, where the policy has one.
        right_against_goal: likewise.
        goal_mm: that height.
        moves: what to do; positive pushes a leg up through the brackets.
        verdict: of the difference and, where there is a goal, of each leg against it.
        advice: what would settle it, where it is unsettled.
        notices: what to know.
    """

    left: Estimate | None
    right: Estimate | None
    policy: Policy
    difference: Judged | None = None
    left_against_goal: Judged | None = None
    right_against_goal: Judged | None = None
    goal_mm: float | None = None
    moves: Moves | None = None
    verdict: Verdict = Verdict.MISSING
    advice: Advice | None = None
    notices: tuple[Notice, ...] = ()

    @property
    def mean_mm(self) -> float | None:
        """Mean height of both legs."""
        if self.left is None or self.right is None:
            return None
        return (self.left.value_mm + self.right.value_mm) / 2


def assess_protrusion(job: Job) -> ProtrusionAssessment:
    """The protrusion readings of a job's present attempt, assessed."""
    readings = job.align.protrusion
    policy = readings.policy or (Policy.TO_TARGET if job.sheet.protrusion.target else Policy.SHARE)
    gauge = gauge_of(job, readings.gauge)
    left, right = mean_of(readings.left, gauge), mean_of(readings.right, gauge)
    notices = list(odd_reading(readings.left, gauge, f"{WHERE}.left"))
    notices += odd_reading(readings.right, gauge, f"{WHERE}.right")
    if left or right:
        notices += gauge_notices(job, readings.gauge, WHERE)
    if left is None or right is None:
        if left or right:
            absent = "left" if left is None else "right"
            notices.append(attention(f"{WHERE}.{absent}", say(_NOT_MEASURED[absent])))
        return ProtrusionAssessment(left, right, policy, notices=tuple(notices))
    found = _of_both_legs(job, (left, right), policy, gauge)
    return replace(found, notices=(*notices, *found.notices))


def _of_both_legs(
    job: Job, legs: tuple[Estimate, Estimate], policy: Policy, gauge: Gauge | None
) -> ProtrusionAssessment:
    """What two legs come to that are both read."""
    limits, as_found = job.sheet.protrusion, mean_as_found(job)
    target_mm = limits.target.value if limits.target else None
    tolerance_mm = limits.tolerance.value if limits.tolerance else None
    notices: list[Notice] = []
    if limits.tolerance is None:
        text = say("The sheet gives no tolerance for protrusion.")
        notices.append(attention("sheet.protrusion.tolerance", text))
    unlike = difference(*legs, same_gauge=gauge is not None)
    whole = judged(
        unlike.value_mm, unlike.standard_uncertainty_mm, unlike.degrees_of_freedom, tolerance_mm
    )
    goal_mm = _goal_mm(policy, target_mm, as_found)
    on_goal = [] if goal_mm is None else [_against(leg, goal_mm, tolerance_mm) for leg in legs]
    move: Moves | None = None
    try:
        move = moves(legs[0].value_mm, legs[1].value_mm, policy, target_mm, as_found)
    except AlignerError as error:
        notices.append(refused(f"{WHERE}.policy", error))
    if move is not None and limits.target is not None and policy is not Policy.TO_TARGET:
        notices += _off_target(legs, limits.target, tolerance_mm)
    # Legs that are alike are not yet at the height that was chosen and is not known.
    unknown = () if move is not None else (Verdict.MISSING,)
    verdict = gravest(whole.verdict, *(leg.verdict for leg in on_goal), *unknown)
    unproved_yet = unproved(verdict, gauge)
    return ProtrusionAssessment(
        *legs,
        policy,
        difference=whole,
        left_against_goal=on_goal[0] if on_goal else None,
        right_against_goal=on_goal[1] if on_goal else None,
        goal_mm=goal_mm,
        moves=move,
        verdict=Verdict.UNSETTLED if unproved_yet else verdict,
        advice=unproved_yet or _advice(job, whole, unlike, on_goal, legs),
        notices=tuple(notices),
    )


def _against(leg: Estimate, height_mm: float, tolerance_mm: float | None) -> Judged:
    """A leg less a height it should have, judged."""
    off_mm = leg.value_mm - height_mm
    return judged(off_mm, leg.standard_uncertainty_mm, leg.degrees_of_freedom, tolerance_mm)


def _off_target(
    legs: tuple[Estimate, Estimate], target: SignedLength, tolerance_mm: float | None
) -> tuple[Notice, ...]:
    """What to say where the sheet has a target, and the choice of which leg goes where has not."""
    off = []
    for side, leg in zip(("left", "right"), legs, strict=True):
        found = _against(leg, target.value, tolerance_mm)
        if tolerance_mm is not None and found.verdict is not Verdict.WITHIN:
            words = _OVER if found.value > 0 else _UNDER
            off.append(say(words[side], size=f"{rounded(abs(found.value), 1)} mm"))
    if not off:
        return ()
    text = say(
        "The sheet gives {target} for each leg, and as chosen the legs are not brought to it: "
        "{off}.",
        target=target.said,
        off=", ".join(off),
    )
    return (attention(f"{WHERE}.policy", text),)


def mean_as_found(job: Job) -> float | None:
    """Mean protrusion of both legs before anything was loosened; mm."""
    found = job.as_found.protrusion
    if not (found.left and found.right):
        return None
    return (mean_mm(found.left) + mean_mm(found.right)) / 2


def _goal_mm(policy: Policy, target_mm: float | None, as_found_mm: float | None) -> float | None:
    if policy is Policy.TO_TARGET:
        return target_mm
    return as_found_mm if policy is Policy.TO_AS_FOUND else None


def _advice(
    job: Job,
    whole: Judged,
    unlike: Difference,
    on_goal: list[Judged],
    legs: tuple[Estimate, Estimate],
) -> Advice | None:
    listed = usable_gauges(job)
    if whole.tolerance is None:
        return None
    if whole.verdict is Verdict.UNSETTLED:
        return settling_advice(unlike.terms, whole.tolerance, other_gauges=listed)
    for leg, goal in zip(legs, on_goal, strict=False):
        if goal.verdict is Verdict.UNSETTLED:
            return settling_advice(
                [Term(1.0, leg)], whole.tolerance, value=goal.value, other_gauges=listed
            )
    return None
