"""Several measured lengths put together, with what they have in common taken into account.

The trap: a gauge that reads 0.1 mm long does so on both sides, and drops out of their
difference; squared and added once for each side it would hide a good result. It is added
with its sign within a group of lengths that share a gauge, and squared between the groups.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import inf, isfinite, sqrt

from aligner.errors import AlignerError
from aligner.gauging.readings import Estimate
from aligner.gauging.uncertainty import Part, combined_uncertainty
from aligner.language import say


class UnusableTerm(AlignerError):
    """Lengths cannot be put together as asked."""


@dataclass(frozen=True)
class Term:
    """One length with its weight in the result.

    Attributes:
        coefficient: change of the result for one millimetre more of this length (the
            sensitivity coefficient of GUM 5.1.3), in the result's unit per mm, signed.
        estimate: the length.
        limit_group: lengths with the same name here were taken with the same gauge and share
            its limit of error; an empty name stands alone.
    """

    coefficient: float
    estimate: Estimate
    limit_group: str = ""


@dataclass(frozen=True)
class Combination:
    """A result made from several lengths, in the unit the coefficients lead to.

    Attributes:
        value: the sum of coefficient times length; where the result is not linear in the
            lengths the caller has a better one.
        standard_uncertainty: `None` if that of any length is unknown.
        degrees_of_freedom: effective, not yet cut; infinite where nothing is known.
        fixed_part: the standard uncertainty that more readings do not make smaller.
    """

    value: float
    standard_uncertainty: float | None
    degrees_of_freedom: float
    fixed_part: float


@dataclass(frozen=True)
class Difference:
    """Left less right, positive where the left is more.

    Attributes:
        value_mm: left minus right.
        standard_uncertainty_mm: `None` if that of either side is unknown.
        degrees_of_freedom: effective, not yet cut.
        terms: the two sides as they went in, for what would settle a verdict.
    """

    value_mm: float
    standard_uncertainty_mm: float | None
    degrees_of_freedom: float
    terms: tuple[Term, Term]


def combine(terms: Sequence[Term]) -> Combination:
    """A linear combination of lengths, with its standard uncertainty.

    Scatter and resolution are each length's own; limits of error are common to a group.

    Raises:
        UnusableTerm: there is no term, or a coefficient is not a number.

    Source: GUM 5.1.2 (independent) and 5.2.2 note 1 (fully correlated), G.4.1.
    """
    if not terms:
        raise UnusableTerm(say("terms"), say("there is none"), say("give at least one length"))
    if not all(isfinite(term.coefficient) for term in terms):
        raise UnusableTerm(
            say("coefficient"), say("one is not a number"), say("check the dimensions it is from")
        )
    fixed = fixed_part(terms)
    value = sum(term.coefficient * term.estimate.value_mm for term in terms)
    scatters = [
        Part(term.coefficient * type_a_mm, term.estimate.type_a_degrees_of_freedom)
        for term in terms
        if (type_a_mm := term.estimate.type_a_mm) is not None
    ]
    if len(scatters) < len(terms):
        return Combination(value, None, inf, fixed)
    u, nu = combined_uncertainty([*scatters, Part(fixed)])
    return Combination(value, u, nu, fixed)


def difference(left: Estimate, right: Estimate, *, same_gauge: bool) -> Difference:
    """Left less right, with its standard uncertainty.

    Args:
        left: the left side's length.
        right: the right side's length.
        same_gauge: whether both were taken with one and the same gauge, whose limit of
            error then drops out.

    Source: mathematics.md 1; GUM 5.2.2.
    """
    group = "both sides" if same_gauge else ""
    terms = (Term(1.0, left, group), Term(-1.0, right, group))
    whole = combine(terms)
    return Difference(whole.value, whole.standard_uncertainty, whole.degrees_of_freedom, terms)


def fixed_part(terms: Sequence[Term]) -> float:
    """Standard uncertainty that does not shrink with more readings: resolution and limits."""
    squares = 0.0
    common: dict[str, float] = {}
    for term in terms:
        resolution = term.coefficient * term.estimate.resolution_part_mm
        squares += resolution * resolution
        limit = term.coefficient * term.estimate.limit_part_mm
        if term.limit_group:
            common[term.limit_group] = common.get(term.limit_group, 0.0) + limit
        else:
            squares += limit * limit
    return sqrt(squares + sum(limit * limit for limit in common.values()))
