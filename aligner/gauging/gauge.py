"""A gauge: what it can tell apart, how far out it may be, and how well it repeats.

The trap: a gauge that claims to be exact makes every reading certain, so one with nothing
but noughts is refused; and an unknown gauge is `None` where a gauge belongs, never noughts.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import isfinite

from aligner.errors import AlignerError
from aligner.language import marked, say, written

_QUANTITIES = (marked("resolution"), marked("limit of error"), marked("repeatability"))


class UnusableGauge(AlignerError):
    """A gauge's description does not make sense."""


@dataclass(frozen=True)
class Gauge:
    """One measuring tool, as it is used at this bench.

    Attributes:
        name: what the person calls it.
        resolution_mm: the smallest step it is read to; a reading is within half of it.
        limit_of_error_mm: how far the whole scale may be out, either way; the same for every
            reading taken with it.
        repeatability_mm: the standard deviation of its readings of one and the same length.

    Raises:
        UnusableGauge: a quantity is negative or not a number, all three are nought, or the
            gauge has no name.
    """

    name: str
    resolution_mm: float
    limit_of_error_mm: float
    repeatability_mm: float

    def __post_init__(self) -> None:
        if not self.name.strip():
            raise UnusableGauge(
                say("gauge"), say("it has no name"), say("give it one, such as “depth gauge”")
            )
        quantities = (self.resolution_mm, self.limit_of_error_mm, self.repeatability_mm)
        for field, quantity_mm in zip(_QUANTITIES, quantities, strict=True):
            if not isfinite(quantity_mm):
                raise UnusableGauge(
                    f"{self.name}: {say(field)}",
                    say("it is not a number"),
                    say("give a length such as 0.02 mm"),
                )
            if quantity_mm < 0:
                raise UnusableGauge(
                    f"{self.name}: {say(field)}",
                    say("{value} mm is negative", value=written(quantity_mm)),
                    say("a gauge's error is given as a plain length, zero or more"),
                )
        if not any(quantities):
            raise UnusableGauge(
                self.name,
                say(
                    "resolution, limit of error and repeatability are all nought; no gauge is exact"
                ),
                say("give at least the smallest step it is read to"),
            )
