"""Parts of an uncertainty put together: the root of the squares, and how well it is known.

The trap: degrees of freedom are cut to the whole number below, and five that rounding has
made 4.9999999999 must not become four.
"""

from __future__ import annotations

from collections.abc import Iterable
from math import floor, inf, isnan, sqrt
from typing import NamedTuple

from aligner.errors import AlignerError
from aligner.gauging.student import student_quantile
from aligner.language import say, written

COVERAGE_PROBABILITY = 0.95
"""The probability that an expanded uncertainty stands for (ISO 14253-1, GUM 6.3.3)."""

_ROUNDING = 1e-9


class Part(NamedTuple):
    """One part of an uncertainty.

    Attributes:
        standard_uncertainty: in whatever unit the whole is in; its sign does not matter.
        degrees_of_freedom: infinite for a part that is taken as known.
    """

    standard_uncertainty: float
    degrees_of_freedom: float = inf


def combined_uncertainty(parts: Iterable[Part]) -> Part:
    """Independent parts as one, with its effective degrees of freedom.

    Source: GUM 5.1.2 and the Welch-Satterthwaite formula, GUM G.4.1 (G.2b).
    """
    every = tuple(parts)
    u = sqrt(sum(part.standard_uncertainty * part.standard_uncertainty for part in every))
    if u == 0.0:
        return Part(0.0)
    doubt = sum((part.standard_uncertainty / u) ** 4 / part.degrees_of_freedom for part in every)
    return Part(u, 1.0 / doubt if doubt > 0.0 else inf)


def coverage_factor(degrees_of_freedom: float) -> float:
    """The k that makes a standard uncertainty an expanded one for 95 %.

    Args:
        degrees_of_freedom: cut to the whole number below, at least 1; infinite gives 1.960.

    Source: GUM G.3.4 and G.4.1 note 1, table G.2.
    """
    return student_quantile(
        0.5 + 0.5 * COVERAGE_PROBABILITY, whole_degrees_of_freedom(degrees_of_freedom)
    )


def whole_degrees_of_freedom(degrees_of_freedom: float) -> float:
    """The whole number below, at least 1; infinite stays infinite.

    Raises:
        AlignerError: the degrees of freedom are not more than 0.
    """
    if isnan(degrees_of_freedom) or degrees_of_freedom <= 0.0:
        raise AlignerError(
            say("degrees of freedom"),
            say("{value} is not more than 0", value=written(degrees_of_freedom)),
            say("give 1 or more"),
        )
    if degrees_of_freedom == inf:
        return inf
    return float(max(1, floor(degrees_of_freedom * (1.0 + _ROUNDING))))
