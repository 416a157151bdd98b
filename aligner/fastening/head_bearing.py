"""The head-bearing check: what a pull scale must read to start the steering turning.

The trap: the manual's pull holds at the manual's radius only. A scale hooked on nearer to the
steering axis reads more for the same drag, so the pull is always compared at one radius.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.errors import AlignerError
from aligner.language import say, written

# A pull carried to another radius and back differs in the last digits only, and must not be
# outside of an end it stands exactly on.
_ROUNDING = 1e-9


class UnusablePull(AlignerError):
    """A pull or its radius cannot be meant."""


@dataclass(frozen=True)
class PullRange:
    """A pull that is right for the head bearing, from low to high, at one radius.

    Attributes:
        low_n: least pull in N that should be felt.
        high_n: greatest pull in N.
        radius_mm: from the steering axis to where the scale pulls, square to that arm.
    """

    low_n: float
    high_n: float
    radius_mm: float

    def __post_init__(self) -> None:
        _check_radius(self.radius_mm)
        if not 0 <= self.low_n <= self.high_n:
            raise UnusablePull(
                say("head bearing pull"),
                say(
                    "it runs from {low} to {high} N",
                    low=written(self.low_n),
                    high=written(self.high_n),
                ),
                say("give the lower one first, zero or more"),
            )

    def holds(self, pull_n: float) -> bool:
        """Whether a pull in N at this radius is right, its ends included."""
        slack = _ROUNDING * self.high_n
        return self.low_n - slack <= pull_n <= self.high_n + slack


def pull_moment_nm(pull_n: float, radius_mm: float) -> float:
    """The moment about the steering axis in N·m of a pull square to its arm: F r.

    Source: a moment is force times arm (statics).

    Raises:
        UnusablePull: the radius is not above zero.
    """
    _check_radius(radius_mm)
    return pull_n * radius_mm / 1000


def pull_at_radius(specified: PullRange, radius_mm: float) -> PullRange:
    """The same bearing drag as a pull at another radius: F' = F r / r'.

    Args:
        specified: pull and radius as the manual gives them.
        radius_mm: where the scale is really hooked on.

    Raises:
        UnusablePull: the radius is not above zero.
    """
    _check_radius(radius_mm)
    scale = specified.radius_mm / radius_mm
    return PullRange(specified.low_n * scale, specified.high_n * scale, radius_mm)


def _check_radius(radius_mm: float) -> None:
    if not radius_mm > 0:
        raise UnusablePull(
            say("head bearing pull"),
            say("the radius is {radius}", radius=f"{written(radius_mm)} mm"),
            say("measure from the steering axis to the scale's hook"),
        )
