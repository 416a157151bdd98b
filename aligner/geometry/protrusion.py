"""How far each leg moves in the brackets, and what unequal legs do to the axle and the tyre.

The trap is the sign. Protrusion is the tube's top edge above the top bracket, so a leg that
stands higher has its axle end higher too, and the wheel's top leans to the *other* side.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from aligner.errors import AlignerError
from aligner.geometry.bounds import require_length, require_number
from aligner.language import say


class Policy(StrEnum):
    """Which protrusion the legs are brought to."""

    TO_TARGET = "to_target"
    TO_AS_FOUND = "to_as_found"
    LEFT_TO_RIGHT = "left_to_right"
    RIGHT_TO_LEFT = "right_to_left"
    SHARE = "share"


@dataclass(frozen=True)
class Moves:
    """What to do to each leg; a positive move pushes it up through the brackets.

    Attributes:
        left_mm: move of the left leg.
        right_mm: move of the right leg.
    """

    left_mm: float
    right_mm: float


@dataclass(frozen=True)
class MoveSensitivities:
    """How each move follows each reading, in mm of move for a mm of reading.

    Attributes:
        left_by_left: the left leg's move by the left reading.
        left_by_right: the left leg's move by the right reading.
        right_by_left: the right leg's move by the left reading.
        right_by_right: the right leg's move by the right reading.
    """

    left_by_left: float
    left_by_right: float
    right_by_left: float
    right_by_right: float


_SENSITIVITIES = {
    Policy.TO_TARGET: MoveSensitivities(-1.0, 0.0, 0.0, -1.0),
    Policy.TO_AS_FOUND: MoveSensitivities(-1.0, 0.0, 0.0, -1.0),
    Policy.LEFT_TO_RIGHT: MoveSensitivities(-1.0, 1.0, 0.0, 0.0),
    Policy.RIGHT_TO_LEFT: MoveSensitivities(0.0, 0.0, 1.0, -1.0),
    Policy.SHARE: MoveSensitivities(-0.5, 0.5, 0.5, -0.5),
}


def moves(
    left_mm: float,
    right_mm: float,
    policy: Policy,
    target_mm: float | None = None,
    as_found_mm: float | None = None,
) -> Moves:
    """The move of each leg that carries out the policy.

    Args:
        left_mm: protrusion of the left leg now.
        right_mm: protrusion of the right leg now.
        policy: which protrusion the legs are brought to.
        target_mm: the sheet's protrusion, for `to_target`.
        as_found_mm: the mean of both legs as found, for `to_as_found`.

    Raises:
        AlignerError: the policy has no target to go to, or a reading is not a number.

    Derived: mathematics.md 3.
    """
    require_number(say("protrusion left"), left_mm)
    require_number(say("protrusion right"), right_mm)
    match policy:
        case Policy.TO_TARGET:
            goal_mm = _goal_mm(
                say("protrusion target"), target_mm, say("the sheet gives no target protrusion")
            )
        case Policy.TO_AS_FOUND:
            goal_mm = _goal_mm(
                say("protrusion as found"),
                as_found_mm,
                say("no protrusion was read before stripping"),
            )
        case Policy.LEFT_TO_RIGHT:
            return Moves(right_mm - left_mm, 0.0)
        case Policy.RIGHT_TO_LEFT:
            return Moves(0.0, left_mm - right_mm)
        case Policy.SHARE:
            return Moves((right_mm - left_mm) / 2, (left_mm - right_mm) / 2)
    return Moves(goal_mm - left_mm, goal_mm - right_mm)


def _goal_mm(where: str, goal_mm: float | None, missing: str) -> float:
    if goal_mm is None:
        raise AlignerError(
            where,
            missing,
            say("give it, or bring one leg to the other (left_to_right, right_to_left or share)"),
        )
    require_number(where, goal_mm)
    return goal_mm


def move_sensitivities(policy: Policy) -> MoveSensitivities:
    """How each move follows each reading; the target and the as-found mean are held fixed.

    The as-found mean is a reading of another day, with an uncertainty of its own; a move to
    it follows it one for one.
    """
    return _SENSITIVITIES[policy]


def axle_lean_deg(difference_mm: float, leg_spacing_mm: float) -> float:
    """The axle's lean against the brackets if the legs are left unequal: atan(D / W).

    Args:
        difference_mm: D, left less right; positive when the left leg stands higher.
        leg_spacing_mm: W, between the legs' middle lines.

    Returns:
        The lean, positive when the axle's left end is higher: the wheel's top leans to the
        rider's right.

    Raises:
        AlignerError: there is no spacing, or the difference is not a number.

    Derived: mathematics.md 3.
    """
    require_number(say("protrusion difference"), difference_mm)
    require_length(say("leg_spacing"), leg_spacing_mm)
    return math.degrees(math.atan2(difference_mm, leg_spacing_mm))


def patch_shift_mm(lean_deg: float, front_radius_mm: float) -> float:
    """How far the tyre's contact lies from the axle's middle, sideways: R sin(lean).

    Taken square to the steering axis. On the ground, with rake e and the bars held straight,
    the shift is shorter by about cos(e); steered to roll straight ahead it is longer by about
    1 / cos(e).

    Args:
        lean_deg: from `axle_lean_deg`; positive when the axle's left end is higher.
        front_radius_mm: radius of the front wheel over the tyre.

    Returns:
        The shift, positive to the rider's left.

    Raises:
        AlignerError: there is no radius, or the lean is not a number.

    Derived: mathematics.md 3.
    """
    require_number(say("axle lean"), lean_deg, "degrees")
    require_length(say("front_radius"), front_radius_mm)
    return front_radius_mm * math.sin(math.radians(lean_deg))
