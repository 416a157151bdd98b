"""The sheet: what is known of one bike's front end, each value with where it came from."""

from __future__ import annotations

from typing import Literal, Self

from pydantic import Field, model_validator

from aligner.errors import AlignerError
from aligner.language import say
from aligner.sheet.dimensions import Fork, ProtrusionLimits, Steering, TurnLimits
from aligner.sheet.fasteners import Fastener, OrderRule
from aligner.sheet.inspection import InspectionLimit
from aligner.sheet.legs import Legs
from aligner.sheet.model import Part


class Sheet(Part):
    """One bike.

    Attributes:
        name: of the bike, as its owner calls it.
        fork: kind and dimensions of the fork.
        steering: what sets the steering geometry.
        protrusion: target and tolerance of the tubes' height.
        squaring: tolerance of the lower bracket's squareness to the frame.
        in_line: tolerance of the legs lying in one plane.
        legs: oil, springs, sag, and the head bearing's drag.
        fasteners: every joint the planner orders.
        rules: what the maker says of the order; these override the defaults.
        inspection: how far each part may be worn, by the key of its inspection point.
        sources: where a value came from, by its path ("fork.leg_spacing": "measured").
        note: anything else worth knowing.
    """

    document: Literal["sheet"] = "sheet"
    version: Literal[1] = 1
    name: str = ""
    fork: Fork = Fork()
    steering: Steering = Steering()
    protrusion: ProtrusionLimits = ProtrusionLimits()
    squaring: TurnLimits = TurnLimits()
    in_line: TurnLimits = TurnLimits()
    legs: Legs = Legs()
    fasteners: tuple[Fastener, ...] = ()
    rules: tuple[OrderRule, ...] = ()
    inspection: dict[str, InspectionLimit] = Field(default_factory=dict)
    sources: dict[str, str] = Field(default_factory=dict)
    note: str = ""

    @model_validator(mode="after")
    def _names_each_fastener_once(self) -> Self:
        seen: set[str] = set()
        for fastener in self.fasteners:
            if fastener.name in seen:
                raise AlignerError(
                    "fasteners",
                    say("“{name}” stands there twice", name=fastener.name),
                    say("give each its own name"),
                )
            seen.add(fastener.name)
        return self
