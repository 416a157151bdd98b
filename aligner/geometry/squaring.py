"""How far the lower bracket is turned against the frame, from one pair of distances.

The trap: equal distances left and right mean straight, but the *difference* says nothing of
the angle without the four dimensions of the reference points, and a dimension typed in
another unit still gives an angle. So the dimensions are checked against the readings first.

Left and right point are mirror images. Seen from above, with the steering axis at the
origin, x forward and y to the rider's left, a the reach and b the half width on the bracket,
c the setback and w the half width on the frame, and the bracket turned by delta:

    d_L^2 - d_R^2 = -4 (c b + w a) sin(delta)        exact, whatever the heights
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from aligner.errors import AlignerError
from aligner.geometry.bounds import require_length, require_number
from aligner.geometry.reference_pair import ReferencePair, check_dimensions, without_asymmetry
from aligner.language import say, written


@dataclass(frozen=True)
class Distances:
    """What the gauge reads from frame to bracket on each side.

    Attributes:
        left_mm: on the rider's left.
        right_mm: on the rider's right.
    """

    left_mm: float
    right_mm: float

    @property
    def difference_mm(self) -> float:
        """Left less right."""
        return self.left_mm - self.right_mm


@dataclass(frozen=True)
class TurnSensitivities:
    """How the turn follows what it is made of, in degrees for a mm.

    Attributes:
        by_left: by the left reading.
        by_right: by the right reading.
        by_asymmetry: by the frame's asymmetry.
    """

    by_left: float
    by_right: float
    by_asymmetry: float


def turn_deg(
    left_mm: float, right_mm: float, pair: ReferencePair, frame_asymmetry_mm: float = 0.0
) -> float:
    """The bracket's turn as it stands; the correction is the opposite turn.

    Args:
        left_mm: d_L, between the left points.
        right_mm: d_R, between the right points.
        pair: where the points lie.
        frame_asymmetry_mm: d_L - d_R of this frame when truly straight.

    Returns:
        The turn, positive to the rider's left (anticlockwise from above), -90 to 90.

    Raises:
        AlignerError: the dimensions cannot be right for these readings.

    Derived: mathematics.md 4.
    """
    check_dimensions(left_mm, right_mm, pair, frame_asymmetry_mm)
    return math.degrees(_turn(left_mm, right_mm, pair, frame_asymmetry_mm))


def _turn(left_mm: float, right_mm: float, pair: ReferencePair, asymmetry_mm: float) -> float:
    left, right = without_asymmetry(left_mm, right_mm, asymmetry_mm)
    # As a product, because the squares of two nearly equal distances lose digits.
    sine = (right - left) * (left + right) / (4 * pair.lever_mm2)
    return math.asin(sine)


def turn_sensitivities(
    left_mm: float, right_mm: float, pair: ReferencePair, frame_asymmetry_mm: float = 0.0
) -> TurnSensitivities:
    """How the turn follows each reading and the frame's asymmetry, in degrees for a mm.

    Raises:
        AlignerError: as `turn_deg`, and at a turn of 90 degrees, where it follows nothing.

    Derived: the derivatives of mathematics.md 4.
    """
    check_dimensions(left_mm, right_mm, pair, frame_asymmetry_mm)
    left, right = without_asymmetry(left_mm, right_mm, frame_asymmetry_mm)
    cosine = math.cos(_turn(left_mm, right_mm, pair, frame_asymmetry_mm))
    if cosine < 1e-9:
        raise AlignerError(
            "squaring",
            say(
                "readings of {left} and {right} mm turn the bracket by 90 degrees",
                left=written(left_mm),
                right=written(right_mm),
            ),
            say("read both sides again"),
        )
    unit = math.degrees(1 / (2 * pair.lever_mm2 * cosine))
    return TurnSensitivities(-left * unit, right * unit, (left + right) / 2 * unit)


def distances_at(
    wanted_turn_deg: float,
    left_mm: float,
    right_mm: float,
    pair: ReferencePair,
    frame_asymmetry_mm: float = 0.0,
) -> Distances:
    """What the two sides would read with the bracket at another turn.

    With the weighted mean turn of several pairs this gives the reading each pair should have
    had, and so its residual in mm; with 0 it gives the readings to aim for.

    Args:
        wanted_turn_deg: the turn asked about, positive to the left.
        left_mm: d_L as it stands.
        right_mm: d_R as it stands.
        pair: where the points lie.
        frame_asymmetry_mm: d_L - d_R of this frame when truly straight.

    Raises:
        AlignerError: as `turn_deg`.

    Derived: mathematics.md 4, the plan part of each squared distance.
    """
    check_dimensions(left_mm, right_mm, pair, frame_asymmetry_mm)
    require_number(say("turn"), wanted_turn_deg, "degrees")
    now = _turn(left_mm, right_mm, pair, frame_asymmetry_mm)
    then = math.radians(wanted_turn_deg)
    left, right = without_asymmetry(left_mm, right_mm, frame_asymmetry_mm)
    a, b = pair.bracket_reach_mm, pair.bracket_half_width_mm
    c, w = pair.frame_setback_mm, pair.frame_half_width_mm
    mean_square = (left**2 + right**2) / 2 + 2 * (c * a - w * b) * (math.cos(then) - math.cos(now))
    half_change = 2 * pair.lever_mm2 * math.sin(then)
    return Distances(
        math.sqrt(max(mean_square - half_change, 0.0)) + frame_asymmetry_mm / 2,
        math.sqrt(max(mean_square + half_change, 0.0)) - frame_asymmetry_mm / 2,
    )


def straight_distance_mm(
    left_mm: float, right_mm: float, pair: ReferencePair, frame_asymmetry_mm: float = 0.0
) -> float:
    """What both sides read when the bracket is straight.

    Known asymmetry of the frame stands half on each side of it: the left then reads half the
    asymmetry more, the right half less (`distances_at` with a turn of 0).

    Raises:
        AlignerError: as `turn_deg`.
    """
    straight = distances_at(0.0, left_mm, right_mm, pair, frame_asymmetry_mm)
    return (straight.left_mm + straight.right_mm) / 2


def changes(
    left_mm: float, right_mm: float, pair: ReferencePair, frame_asymmetry_mm: float = 0.0
) -> Distances:
    """How much each side's reading changes on the way to straight; positive grows longer.

    Raises:
        AlignerError: as `turn_deg`.
    """
    straight = distances_at(0.0, left_mm, right_mm, pair, frame_asymmetry_mm)
    return Distances(straight.left_mm - left_mm, straight.right_mm - right_mm)


def changes_without_dimensions(
    left_mm: float, right_mm: float, frame_asymmetry_mm: float = 0.0
) -> Distances:
    """How much each side's reading changes when each goes to the mean; no angle is known.

    True to first order in the turn; the angle, and the exact target, need the four
    dimensions of a `ReferencePair`.

    Raises:
        AlignerError: a reading is no length.

    Derived: mathematics.md 4.
    """
    require_length("left", left_mm)
    require_length("right", right_mm)
    require_number("frame_asymmetry", frame_asymmetry_mm)
    left, right = without_asymmetry(left_mm, right_mm, frame_asymmetry_mm)
    return Distances((right - left) / 2, (left - right) / 2)
