"""The bike from the side in mm, before it is laid out on a screen: where each point lies.

The trap: a dimension that is missing or mistyped must still leave a bike. So each is kept within
bounds, and what the sheet does not say is drawn to usual proportions and named.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from aligner.drawing.usual import BRACKET_OFFSET_MM, bracket_spacing_mm, kept
from aligner.language import say

#: Stand-ins where the sheet gives no dimension, so that there is a drawing at all; mm and deg.
_RAKE_DEG = 27.0
_OFFSET_MM = 45.0
_RADIUS_MM = 310.0
_WHEELBASE_MM = 1430.0
_BRACKET_TO_AXLE_MM = 560.0

#: How far the tubes and the axis are drawn above the top bracket; mm.
STUB_MM = 34.0
ABOVE_THE_STUB_MM = 40.0


@dataclass(frozen=True)
class SideProportions:
    """What the side view is drawn to; mm and degrees, `None` where the sheet does not say.

    Attributes:
        rake_deg: of the steering axis from the vertical.
        offset_mm: of the axle ahead of the steering axis.
        front_radius_mm, rear_radius_mm: over the tyres.
        wheelbase_mm: axle to axle.
        bracket_offset_mm: legs' plane ahead of the steering axis.
        bracket_to_axle_mm: lower bracket to axle, along the leg.
        bracket_spacing_mm: between the clamps.
        tube_mm: outside diameter of the tubes in the brackets.
        is_upside_down: whether the thick outer tubes stand in the brackets.
    """

    rake_deg: float | None = None
    offset_mm: float | None = None
    front_radius_mm: float | None = None
    rear_radius_mm: float | None = None
    wheelbase_mm: float | None = None
    bracket_offset_mm: float | None = None
    bracket_to_axle_mm: float | None = None
    bracket_spacing_mm: float | None = None
    tube_mm: float | None = None
    is_upside_down: bool = False

    @property
    def stand_ins(self) -> tuple[str, ...]:
        """What is drawn to usual proportions because the sheet does not say it."""
        given = {
            say("rake"): self.rake_deg,
            say("offset of the axle"): self.offset_mm,
            say("front wheel radius"): self.front_radius_mm,
            say("rear wheel radius"): self.rear_radius_mm,
            say("wheelbase"): self.wheelbase_mm,
            say("bracket offset"): self.bracket_offset_mm,
            say("lower bracket to axle"): self.bracket_to_axle_mm,
            say("bracket spacing"): self.bracket_spacing_mm,
            say("tube diameter"): self.tube_mm,
        }
        return tuple(name for name, value in given.items() if value is None)


@dataclass(frozen=True)
class SideChange:
    """How the front end differs from the sheet, in true size.

    Attributes:
        rake_deg: change of rake; negative: nose down.
        wheelbase_mm: change of wheelbase.
        rise_mm: of both legs up through the brackets.
    """

    rake_deg: float = 0.0
    wheelbase_mm: float = 0.0
    rise_mm: float = 0.0


@dataclass(frozen=True)
class Bones:
    """Points and lengths in mm: x ahead of the rear axle, y above the ground.

    `foot` is the point of the steering axis square to the axle; `along` goes up the axis from
    there and `ahead` of it, square to it.
    """

    rake_deg: float
    front_radius: float
    rear_radius: float
    wheelbase: float
    axle: tuple[float, float]
    foot: tuple[float, float]
    ground: tuple[float, float]
    normal_foot: tuple[float, float]
    lower: float
    top: float
    leg: float
    leg_top: float
    slider_top: float
    reach: float

    def along(self, up: float, ahead: float = 0.0) -> tuple[float, float]:
        """A point so far up the steering axis and so far ahead of it."""
        e = math.radians(self.rake_deg)
        x = self.foot[0] - up * math.sin(e) + ahead * math.cos(e)
        return x, self.foot[1] + up * math.cos(e) + ahead * math.sin(e)


def bones(p: SideProportions, change: SideChange) -> Bones:
    """The bike with both tyres on the ground, its steering changed by so much."""
    rake = kept(p.rake_deg, _RAKE_DEG, 8.0, 55.0) + change.rake_deg
    offset = kept(p.offset_mm, _OFFSET_MM, -60.0, 150.0)
    front = kept(p.front_radius_mm, _RADIUS_MM, 150.0, 450.0)
    rear = kept(p.rear_radius_mm, _RADIUS_MM, 150.0, 450.0)
    wheelbase = kept(p.wheelbase_mm, _WHEELBASE_MM, front + rear + 60.0, 2600.0)
    leg = kept(p.bracket_offset_mm, BRACKET_OFFSET_MM, -60.0, 120.0)
    lower = kept(p.bracket_to_axle_mm, _BRACKET_TO_AXLE_MM, 250.0, 900.0)
    top = lower + bracket_spacing_mm(p.bracket_spacing_mm)
    wheelbase += change.wheelbase_mm
    e = math.radians(rake)
    axle = (wheelbase, front)
    foot = (axle[0] - offset * math.cos(e), axle[1] - offset * math.sin(e))
    ground = (foot[0] + foot[1] * math.tan(e), 0.0)
    normal = front * math.sin(e) - offset
    normal_foot = (axle[0] + normal * math.cos(e), normal * math.sin(e))
    # The tube's top keeps its place along the leg; the brackets come down it.
    leg_top = top + STUB_MM
    lower, top = lower - change.rise_mm, top - change.rise_mm
    highest = max(leg_top, top + STUB_MM) + ABOVE_THE_STUB_MM
    reach = math.hypot(foot[0] - ground[0], foot[1]) + highest
    return Bones(
        rake_deg=rake,
        front_radius=front,
        rear_radius=rear,
        wheelbase=wheelbase,
        axle=axle,
        foot=foot,
        ground=ground,
        normal_foot=normal_foot,
        lower=lower,
        top=top,
        leg=leg,
        leg_top=leg_top,
        slider_top=lower * 0.62,
        reach=reach,
    )
