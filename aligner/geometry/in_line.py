"""Whether the two legs lie in one plane, from a plate, two bars or the spread of the tubes.

The trap is the side. The skew is positive when the left tube, going down, comes forward
against the right one: its lower end stands ahead. A positive skew comes from a top bracket
turned to the *left* of the lower one (its left clamp goes back), and turns the wheel to the
*right*, because the axle's left end stands ahead.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from aligner.errors import AlignerError
from aligner.geometry.bounds import require_length, require_number
from aligner.language import say, written


class Corner(StrEnum):
    """The one of four places where the plate does not touch; left is the rider's."""

    UPPER_LEFT = "upper_left"
    UPPER_RIGHT = "upper_right"
    LOWER_LEFT = "lower_left"
    LOWER_RIGHT = "lower_right"


class Face(StrEnum):
    """The face of the tubes that the plate lies on."""

    FRONT = "front"
    REAR = "rear"


class Side(StrEnum):
    """The rider's left or right."""

    LEFT = "left"
    RIGHT = "right"


# On the front a gap means that this tube lies further back just there. The left tube too far
# back below, or the right one too far back above, is a left lower end that stands behind.
_FRONT_SIGN = {
    Corner.UPPER_LEFT: 1,
    Corner.UPPER_RIGHT: -1,
    Corner.LOWER_LEFT: -1,
    Corner.LOWER_RIGHT: 1,
}


@dataclass(frozen=True)
class ForkDimensions:
    """What carries a skew to the brackets and to the axle; None where it is not known.

    Attributes:
        leg_spacing_mm: W, between the legs' middle lines.
        bracket_spacing_mm: H, from the lower to the top bracket.
        lower_bracket_to_axle_mm: A, along the legs.
    """

    leg_spacing_mm: float | None = None
    bracket_spacing_mm: float | None = None
    lower_bracket_to_axle_mm: float | None = None


@dataclass(frozen=True)
class InLine:
    """How the legs lie to each other; None where the method or the dimensions cannot tell.

    Attributes:
        skew_deg: psi, positive when the left tube's lower end stands ahead.
        twist_deg: phi, the top bracket's turn against the lower one, positive to the left.
            The correction is the opposite turn.
        top_bracket_rim_mm: how far that correction carries the top bracket's left clamp
            centre forward, along the arc, and the right one back.
        forward_side: the side of the top bracket that goes forward in the correction.
        axle_end_ahead_mm: how far the axle's left end stands ahead of its right end.
        axle_turn_deg: the wheel's turn against the lower bracket, positive to the left; it is
            always to the other side than the twist.
        convergence_deg: kappa, positive when the tubes stand further apart going down. A bend
            or a wrong bracket: no turning cures it.
        sensitivity_deg_per_mm: how the skew follows the gap or the end difference, and the
            convergence the lower width (the upper one the other way).
    """

    skew_deg: float | None
    twist_deg: float | None
    top_bracket_rim_mm: float | None
    forward_side: Side | None
    axle_end_ahead_mm: float | None
    axle_turn_deg: float | None
    convergence_deg: float | None
    sensitivity_deg_per_mm: float


def from_plate(
    gap_mm: float,
    height_mm: float,
    corner: Corner,
    fork: ForkDimensions | None = None,
    face: Face = Face.FRONT,
) -> InLine:
    """The legs' skew from a flat plate that touches the tubes at three places of four.

    Args:
        gap_mm: g, between plate and tube at the fourth place, 0 or more.
        height_mm: L, between the plate's upper and lower contact lines.
        corner: where the gap is, left being the rider's.
        fork: what carries the skew to the brackets and the axle.
        face: the face of the tubes that the plate lies on.

    Raises:
        AlignerError: no height, a negative gap or one as long as the height, or a twist of
            more than 90 degrees.

    Derived: mathematics.md 5; psi = atan(g / L), short of the true skew by a part psi^2 / 4.
    """
    require_length("in_line height", height_mm)
    require_number("in_line gap", gap_mm)
    if gap_mm < 0:
        raise AlignerError(
            "in_line gap",
            say("{value} mm is less than touching", value=written(gap_mm)),
            say("give the gap's width, 0 mm or more, and the corner it is at"),
        )
    _require_shorter("in_line gap", gap_mm, height_mm, say("the height between the contact lines"))
    sign = _FRONT_SIGN[corner] * (1 if face is Face.FRONT else -1)
    return _from_skew_tangent(sign * gap_mm / height_mm, sign / height_mm, fork)


def from_bars(
    end_difference_mm: float,
    half_length_mm: float,
    height_mm: float,
    fork: ForkDimensions,
) -> InLine:
    """The legs' skew from two straight bars laid across the tubes, one above the other.

    Args:
        end_difference_mm: e, seen end on from the rider's left with the bars' middles in
            line: how far the lower bar's left end stands ahead of the upper bar's left end
            (negative: behind). Where both ends are read, half of left less right.
        half_length_mm: s, from the bars' middle to the end that is read.
        height_mm: L, between the bars.
        fork: the leg spacing W is needed.

    Raises:
        AlignerError: no leg spacing, height or half length, ends further apart than the half
            length, or a twist of more than 90 degrees.

    Derived: mathematics.md 5; tan(psi) = W tan(theta) / L with tan(theta) = e / s.
    """
    require_number("in_line end_difference", end_difference_mm)
    require_length("in_line half_length", half_length_mm)
    require_length("in_line height", height_mm)
    if fork.leg_spacing_mm is None:
        raise AlignerError(
            "leg_spacing",
            say("it is missing, and two bars tell nothing without it"),
            say("give the distance between the legs' middle lines in mm"),
        )
    require_length("leg_spacing", fork.leg_spacing_mm)
    _require_shorter(
        "in_line end_difference", end_difference_mm, half_length_mm, say("the bars' half length")
    )
    per_mm = fork.leg_spacing_mm / (half_length_mm * height_mm)
    return _from_skew_tangent(end_difference_mm * per_mm, per_mm, fork)


def from_spread(upper_width_mm: float, lower_width_mm: float, height_mm: float) -> InLine:
    """The legs' convergence from the widths over equal tubes at two heights.

    Args:
        upper_width_mm: over both tubes, above.
        lower_width_mm: over both tubes, below.
        height_mm: L, between the two.

    Raises:
        AlignerError: no height or width, or widths that differ by as much as the height.

    Derived: mathematics.md 5; kappa = atan((w_low - w_up) / L).
    """
    require_length("in_line upper_width", upper_width_mm)
    require_length("in_line lower_width", lower_width_mm)
    require_length("in_line height", height_mm)
    spread_mm = lower_width_mm - upper_width_mm
    _require_shorter("in_line widths", spread_mm, height_mm, say("the height between them"))
    return InLine(
        skew_deg=None,
        twist_deg=None,
        top_bracket_rim_mm=None,
        forward_side=None,
        axle_end_ahead_mm=None,
        axle_turn_deg=None,
        convergence_deg=math.degrees(math.atan2(spread_mm, height_mm)),
        sensitivity_deg_per_mm=math.degrees(height_mm / (height_mm**2 + spread_mm**2)),
    )


def _require_shorter(where: str, value_mm: float, limit_mm: float, limit: str) -> None:
    if abs(value_mm) >= limit_mm:
        raise AlignerError(
            where,
            say(
                "{value} mm is not shorter than {limit}, {size} mm",
                value=written(abs(value_mm)),
                limit=limit,
                size=written(limit_mm),
            ),
            say("check both and their units"),
        )


def _from_skew_tangent(tangent: float, per_mm: float, fork: ForkDimensions | None) -> InLine:
    fork = fork or ForkDimensions()
    tangent += 0.0  # a gap of nothing at a corner of negative sign is no minus nought
    spacing = fork.leg_spacing_mm
    drop = fork.lower_bracket_to_axle_mm
    twist = _twist(tangent, fork)
    if drop is not None:
        require_length("lower_bracket_to_axle", drop)
    ahead_mm = None if drop is None else drop * tangent
    rim_mm = None if twist is None or spacing is None else spacing / 2 * twist
    return InLine(
        skew_deg=math.degrees(math.atan(tangent)),
        twist_deg=None if twist is None else math.degrees(twist),
        top_bracket_rim_mm=rim_mm,
        forward_side=None if not rim_mm else Side.LEFT if rim_mm > 0 else Side.RIGHT,
        axle_end_ahead_mm=ahead_mm,
        axle_turn_deg=(
            None
            if ahead_mm is None or spacing is None
            else math.degrees(math.atan2(0.0 - ahead_mm, spacing))
        ),
        convergence_deg=None,
        sensitivity_deg_per_mm=math.degrees(per_mm / (1 + tangent**2)),
    )


def _twist(tangent: float, fork: ForkDimensions) -> float | None:
    """The twist in radians, sin(phi) = H tan(psi) / W; None without both dimensions."""
    if fork.leg_spacing_mm is not None:
        require_length("leg_spacing", fork.leg_spacing_mm)
    if fork.bracket_spacing_mm is not None:
        require_length("bracket_spacing", fork.bracket_spacing_mm)
    if fork.leg_spacing_mm is None or fork.bracket_spacing_mm is None:
        return None
    sine = fork.bracket_spacing_mm * tangent / fork.leg_spacing_mm
    if abs(sine) > 1:
        raise AlignerError(
            "in_line",
            say(
                "a skew of {angle} degrees would need the brackets twisted by more than 90 degrees",
                angle=written(math.degrees(math.atan(abs(tangent))), ".3g"),
            ),
            say(
                "check the readings, leg_spacing ({leg_spacing} mm) and bracket_spacing"
                " ({bracket_spacing} mm), and their units",
                leg_spacing=written(fork.leg_spacing_mm),
                bracket_spacing=written(fork.bracket_spacing_mm),
            ),
        )
    return math.asin(sine)
