"""Where a pair of reference points lies on frame and bracket, and whether that can be.

The trap: a setback in centimetres or a half width measured as a whole width passes every
formula. It is caught only where the readings contradict it, so that is asked in every case.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from aligner.errors import AlignerError
from aligner.geometry.bounds import require_length, require_number, require_width
from aligner.language import say, written

PLAN_ALLOWANCE_MM = 1.0
"""How much the plan distance may exceed the measured one: a steel rule's millimetre.

Points at the same height read exactly their plan distance, and dimensions taken with a rule
are then as often too long as too short. Common practice, no source. The turn itself does not
depend on it.
"""


@dataclass(frozen=True)
class ReferencePair:
    """A point on each side of the frame and of the lower bracket, mirror images, in plan.

    Attributes:
        bracket_reach_mm: a, how far the bracket's points lie ahead of the steering axis when
            straight; negative if behind.
        bracket_half_width_mm: b, from the middle to either of them.
        frame_setback_mm: c, how far the frame's points lie behind the steering axis; negative
            if ahead.
        frame_half_width_mm: w, from the middle to either of them.
    """

    bracket_reach_mm: float
    bracket_half_width_mm: float
    frame_setback_mm: float
    frame_half_width_mm: float

    @property
    def lever_mm2(self) -> float:
        """The lever c b + w a, which carries a turn into a difference of the distances."""
        return (
            self.frame_setback_mm * self.bracket_half_width_mm
            + self.frame_half_width_mm * self.bracket_reach_mm
        )


def without_asymmetry(
    left_mm: float, right_mm: float, frame_asymmetry_mm: float
) -> tuple[float, float]:
    """Left and right with the frame's own difference taken off, half from each side."""
    return left_mm - frame_asymmetry_mm / 2, right_mm + frame_asymmetry_mm / 2


def check_dimensions(
    left_mm: float, right_mm: float, pair: ReferencePair, frame_asymmetry_mm: float = 0.0
) -> None:
    """Raise unless some turn of this pair could have made these readings.

    Args:
        left_mm: measured between the left points.
        right_mm: measured between the right points.
        pair: where the points lie.
        frame_asymmetry_mm: left less right when truly straight.

    Raises:
        AlignerError: a value is not a number or no length; the pair has no lever; no turn
            makes that difference; the points are further apart in plan than measured. Its
            `where` is the dimension that has to be looked at.

    Derived: mathematics.md 4.
    """
    _check_values(left_mm, right_mm, pair, frame_asymmetry_mm)
    lever = pair.lever_mm2
    if lever == 0:
        raise _no_lever(pair)
    left, right = without_asymmetry(left_mm, right_mm, frame_asymmetry_mm)
    needed = (left - right) * (left + right) / 4
    if abs(needed) > abs(lever):
        raise _no_turn(left, right, pair, abs(needed))
    cosine = math.sqrt(1 - (needed / lever) ** 2)
    plan_mm = math.sqrt(max(_plan_mean_square(pair, cosine), 0.0))
    measured_mm = math.sqrt((left**2 + right**2) / 2)
    if plan_mm > measured_mm + PLAN_ALLOWANCE_MM:
        raise _plan_too_long(plan_mm, measured_mm, pair)


def _check_values(
    left_mm: float, right_mm: float, pair: ReferencePair, frame_asymmetry_mm: float
) -> None:
    require_length("left", left_mm)
    require_length("right", right_mm)
    require_number("frame_asymmetry", frame_asymmetry_mm)
    require_number("bracket_reach", pair.bracket_reach_mm)
    require_width("bracket_half_width", pair.bracket_half_width_mm)
    require_number("frame_setback", pair.frame_setback_mm)
    require_width("frame_half_width", pair.frame_half_width_mm)
    if abs(frame_asymmetry_mm) >= 2 * min(left_mm, right_mm):
        raise AlignerError(
            "frame_asymmetry",
            say(
                "{value} mm is as long as the distances themselves",
                value=written(frame_asymmetry_mm),
            ),
            say("give left less right of this frame when truly straight"),
        )


def _plan_mean_square(pair: ReferencePair, cosine: float) -> float:
    """Mean of the two squared plan distances at a turn with this cosine, in mm2."""
    a, b = pair.bracket_reach_mm, pair.bracket_half_width_mm
    c, w = pair.frame_setback_mm, pair.frame_half_width_mm
    return c**2 + w**2 + a**2 + b**2 + 2 * (c * a - w * b) * cosine


def _no_lever(pair: ReferencePair) -> AlignerError:
    if pair.bracket_half_width_mm == 0 and pair.frame_half_width_mm == 0:
        where = say("half widths")
        understood = say("both are 0 mm, so left and right are one point")
    elif pair.bracket_reach_mm == 0 and pair.frame_setback_mm == 0:
        where, understood = "bracket_reach and frame_setback", say("both are 0 mm")
    elif pair.bracket_reach_mm == 0 and pair.bracket_half_width_mm == 0:
        where = "bracket_reach and bracket_half_width"
        understood = say("a point on the steering axis")
    elif pair.frame_setback_mm == 0 and pair.frame_half_width_mm == 0:
        where = "frame_setback and frame_half_width"
        understood = say("a point on the steering axis")
    else:
        where = say("reference points")
        understood = say("frame and bracket point lie in line with the axis")
    return AlignerError(
        where,
        f"{understood}; {say('no turn changes these distances')}",
        say("choose points further from the middle or from the steering axis"),
    )


def _no_turn(left: float, right: float, pair: ReferencePair, needed: float) -> AlignerError:
    lever = abs(pair.lever_mm2)
    arms = {
        "bracket_reach": (pair.bracket_reach_mm, pair.frame_half_width_mm),
        "bracket_half_width": (pair.bracket_half_width_mm, pair.frame_setback_mm),
        "frame_setback": (pair.frame_setback_mm, pair.bracket_half_width_mm),
        "frame_half_width": (pair.frame_half_width_mm, pair.bracket_reach_mm),
    }
    # The dimension that has to change least is the one to look at first.
    where = max(arms, key=lambda name: abs(arms[name][1]))
    value, arm = arms[where]
    least = value + math.copysign((needed - lever) / arm, pair.lever_mm2 * arm)
    bound = written(least, ".4g")
    if least > value:
        wanted = say(
            "if the other three are right it is at least {size} mm; or a side was misread",
            size=bound,
        )
    else:
        wanted = say(
            "if the other three are right it is at most {size} mm; or a side was misread",
            size=bound,
        )
    return AlignerError(
        where,
        say(
            "left and right differ by {difference} mm, and with these dimensions no turn"
            " makes more than {most} mm: {value} mm cannot be right",
            difference=written(abs(left - right), ".4g"),
            most=written(4 * lever / (left + right), ".4g"),
            value=written(value),
        ),
        wanted,
    )


def _plan_too_long(plan_mm: float, measured_mm: float, pair: ReferencePair) -> AlignerError:
    a, b = pair.bracket_reach_mm, pair.bracket_half_width_mm
    c, w = pair.frame_setback_mm, pair.frame_half_width_mm
    if abs(a + c) >= abs(b - w):
        where = "frame_setback" if c >= a else "bracket_reach"
        part = say(
            "bracket_reach and frame_setback put them {size} mm apart fore and aft",
            size=written(abs(a + c), ".4g"),
        )
    else:
        where = "bracket_half_width" if b >= w else "frame_half_width"
        part = say(
            "the half widths put them {size} mm apart sideways", size=written(abs(b - w), ".4g")
        )
    return AlignerError(
        where,
        say(
            "seen from above the points would be {plan} mm apart, longer than the"
            " {measured} mm measured; {part}",
            plan=written(plan_mm, ".4g"),
            measured=written(measured_mm, ".4g"),
            part=part,
        ),
        say("check that dimension and its unit first, then the others"),
    )
