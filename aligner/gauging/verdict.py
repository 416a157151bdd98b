"""A measured value held against a tolerance: within, out, or the readings cannot tell.

The trap: a value inside the limit is not yet known to be inside it. The expanded
uncertainty is taken off the tolerance before anything is called within, and added to it
before anything is called out. Works in any unit, so it serves millimetres and degrees.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from math import isfinite, isnan

from aligner.errors import AlignerError
from aligner.gauging.student import student_distribution
from aligner.gauging.uncertainty import coverage_factor, whole_degrees_of_freedom
from aligner.language import marked, say, written

# A limit typed in inches and one typed in millimetres differ in the last digits only, and
# must not decide on which side a value lies that stands exactly on the limit.
_ROUNDING = 1e-12


class UnusableTolerance(AlignerError):
    """A value, its uncertainty or its tolerance cannot be judged."""


class Verdict(StrEnum):
    """What the readings say about a limit; its value is a key, and said where it is shown."""

    WITHIN = marked("within")
    OUT = marked("out")
    UNSETTLED = marked("unsettled")
    MISSING = marked("missing")

    @property
    def is_settled(self) -> bool:
        """Whether the readings have decided."""
        return self in (Verdict.WITHIN, Verdict.OUT)


@dataclass(frozen=True)
class Judgement:
    """A verdict with the figures it rests on, in the unit of the value judged.

    Attributes:
        verdict: what the readings say.
        probability_within: between 0 and 1; `None` where it cannot be known.
        expanded_uncertainty: for 95 %; `None` where it is unknown.
        coverage_factor: the expanded uncertainty over the standard one; `None` likewise.
    """

    verdict: Verdict
    probability_within: float | None
    expanded_uncertainty: float | None
    coverage_factor: float | None


def judge(
    value: float | None,
    standard_uncertainty: float | None,
    degrees_of_freedom: float,
    tolerance: float | None,
) -> Judgement:
    """The verdict on |value| <= tolerance.

    Args:
        value: the deviation from where it should be, either sign; `None` if not measured.
        standard_uncertainty: in the same unit; `None` if unknown, which settles nothing.
        degrees_of_freedom: of the uncertainty, cut to the whole number below here.
        tolerance: the largest deviation allowed either way; `None` if the sheet has none.

    Raises:
        UnusableTolerance: something given is not a number, or negative where it cannot be.

    Source: ISO 14253-1:2017 (within and out proven), JCGM 106:2012 7.4 (probability).
    """
    _check(value, standard_uncertainty, tolerance)
    if value is None or standard_uncertainty is None:
        unknown = Verdict.MISSING if value is None or tolerance is None else Verdict.UNSETTLED
        return Judgement(unknown, None, None, None)
    k = coverage_factor(degrees_of_freedom)
    expanded = k * standard_uncertainty
    if tolerance is None:
        return Judgement(Verdict.MISSING, None, expanded, k)
    probability = _probability_within(value, standard_uncertainty, degrees_of_freedom, tolerance)
    return Judgement(_verdict(abs(value), expanded, tolerance), probability, expanded, k)


def _verdict(deviation: float, expanded: float, tolerance: float) -> Verdict:
    rounding = _ROUNDING * max(deviation, tolerance)
    if deviation + expanded <= tolerance + rounding:
        return Verdict.WITHIN
    if deviation - expanded > tolerance + rounding:
        return Verdict.OUT
    return Verdict.UNSETTLED


def _probability_within(
    value: float, standard_uncertainty: float, degrees_of_freedom: float, tolerance: float
) -> float:
    if standard_uncertainty == 0.0:
        return 1.0 if abs(value) <= tolerance * (1.0 + _ROUNDING) else 0.0
    nu = whole_degrees_of_freedom(degrees_of_freedom)
    # Seen from the side the value is on, so that small chances keep their digits.
    deviation = abs(value)
    above = student_distribution((tolerance - deviation) / standard_uncertainty, nu)
    below = student_distribution((-tolerance - deviation) / standard_uncertainty, nu)
    return max(0.0, above - below)


def _check(
    value: float | None, standard_uncertainty: float | None, tolerance: float | None
) -> None:
    if value is not None and not isfinite(value):
        raise UnusableTolerance(
            say("value"),
            say("{value} is not a number", value=written(value, "")),
            say("check the readings"),
        )
    if standard_uncertainty is not None and (
        not isfinite(standard_uncertainty) or standard_uncertainty < 0
    ):
        raise UnusableTolerance(
            say("standard uncertainty"),
            say("{value} cannot be", value=written(standard_uncertainty, "")),
            say("it is zero or more"),
        )
    if tolerance is not None and (isnan(tolerance) or tolerance < 0):
        raise UnusableTolerance(
            say("tolerance"),
            say("{value} cannot be a tolerance", value=written(tolerance)),
            say("give zero or more, without a sign"),
        )
