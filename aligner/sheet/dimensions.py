"""The bike's dimensions and the tolerances its front end is set to."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

from aligner.sheet.model import Part
from aligner.sheet.quantities import Angle, Length, OneOf, SignedLength


class ForkKind(StrEnum):
    """How the legs damp and spring, in the trade's words."""

    DAMPER_ROD = "damper_rod"
    AIR_ASSISTED = "air_assisted"
    ANTI_DIVE = "anti_dive"
    CARTRIDGE = "cartridge"
    UPSIDE_DOWN = "upside_down"


class HandlebarPlace(StrEnum):
    """Where the handlebars are clamped."""

    ABOVE = "above"
    BETWEEN = "between"
    BELOW = "below"


class Fork(Part):
    """The fork's dimensions. What is not known is left out, never guessed.

    Attributes:
        kind: how the legs are made.
        handlebars: above the top bracket, between the brackets, or below the top bracket.
        leg_spacing: centre to centre of the two legs, across the bike.
        bracket_spacing: height between the middles of the two brackets' clamps.
        lower_bracket_to_axle: along the leg, from the lower bracket's clamp to the axle.
        bracket_offset: how far the plane of the legs stands ahead of the steering axis.
        tube_diameter: outside diameter of the tubes where the brackets clamp them.
    """

    kind: ForkKind = ForkKind.DAMPER_ROD
    handlebars: HandlebarPlace = HandlebarPlace.ABOVE
    leg_spacing: Length | None = None
    bracket_spacing: Length | None = None
    lower_bracket_to_axle: Length | None = None
    bracket_offset: SignedLength | None = None
    tube_diameter: Length | None = None


class Steering(Part):
    """What sets the steering geometry.

    Attributes:
        rake: of the steering axis, from the vertical.
        offset: of the axle ahead of the steering axis.
        front_radius: of the loaded front wheel.
        rear_radius: of the loaded rear wheel.
        wheelbase: axle to axle, along the ground.
    """

    rake: Angle | None = None
    offset: SignedLength | None = None
    front_radius: Length | None = None
    rear_radius: Length | None = None
    wheelbase: Length | None = None


class ProtrusionLimits(Part):
    """How far the tubes stand above the top bracket's upper face, and how unlike they may be.

    Attributes:
        target: of each leg; left out where only equality matters.
        tolerance: plus or minus, on the difference and on each leg against the target.
    """

    target: SignedLength | None = None
    tolerance: Length | None = None


class TurnLimits(Part):
    """How far out a bracket may stand.

    An angle is held against the turn, a length against what the gauge reads.
    """

    tolerance: Annotated[Angle | Length, OneOf((Angle, Length))] | None = None
