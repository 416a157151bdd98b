"""Whether several pairs of readings of one bracket agree, and their weighted mean.

The trap: a mean of readings that disagree looks as good as any other. So the mean never goes
without the chance of so much scatter, and the pair that stands out is named.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from aligner.errors import AlignerError
from aligner.geometry.bounds import require_number
from aligner.language import say, written

DISAGREE_BELOW = 0.05
"""Chance of so much scatter under which the pairs disagree (mathematics.md 4)."""


@dataclass(frozen=True)
class WeightedTurn:
    """The turn that several pairs give together, and how well they agree.

    Attributes:
        turn_deg: weighted mean, positive to the rider's left.
        uncertainty_deg: its standard uncertainty, from the pairs' own alone.
        residuals_deg: each pair's turn less the mean.
        normalized_residuals: each residual over its own standard deviation,
            sqrt(u_i^2 - u_mean^2); None for a single pair, which has nothing to differ from.
        chi_square: sum of the squared residuals over the squared uncertainties.
        consistency_p: chance of at least so much scatter in pairs that measure one turn;
            None for a single pair.
        odd_pair: name of the pair with the largest normalized residual if the pairs disagree;
            None if they agree, or if the largest is shared. Of two pairs the residuals are
            always alike, so neither can be named: only a third can tell.
    """

    turn_deg: float
    uncertainty_deg: float
    residuals_deg: tuple[float, ...]
    normalized_residuals: tuple[float | None, ...]
    chi_square: float
    consistency_p: float | None
    odd_pair: str | None

    @property
    def is_contradicted(self) -> bool:
        """The pairs disagree: something is bent, unlike, or misread."""
        return self.consistency_p is not None and self.consistency_p < DISAGREE_BELOW


def weighted_turn(
    turns_deg: Sequence[float], uncertainties_deg: Sequence[float], names: Sequence[str]
) -> WeightedTurn:
    """The weighted mean of the pairs' turns, weights 1 / u^2, with a test of agreement.

    Args:
        turns_deg: each pair's turn, positive to the left.
        uncertainties_deg: its standard uncertainty, above 0.
        names: what each pair is called.

    Raises:
        AlignerError: there is no pair, the three lists are not alike in length, or a pair has
            no uncertainty and so no weight.

    Source: weighted least squares for one unknown; mathematics.md 4.
    """
    if not names or not len(turns_deg) == len(uncertainties_deg) == len(names):
        raise AlignerError(
            "squaring",
            f"{len(turns_deg)} turns, {len(uncertainties_deg)} uncertainties, {len(names)} names",
            "give one of each for every pair, and at least one pair",
        )
    for name, turn, uncertainty in zip(names, turns_deg, uncertainties_deg, strict=True):
        require_number(name, turn, "degrees")
        require_number(name, uncertainty, "degrees")
        if uncertainty <= 0:
            raise AlignerError(
                name,
                say(
                    "its turn has an uncertainty of {angle} degrees, so it has no weight",
                    angle=written(uncertainty),
                ),
                say("give its gauge a resolution, a repeatability or a limit of error"),
            )
    return _weighted(turns_deg, uncertainties_deg, names)


def _weighted(
    turns: Sequence[float], uncertainties: Sequence[float], names: Sequence[str]
) -> WeightedTurn:
    pairs = range(len(names))
    smallest = min(uncertainties)
    weights = [(smallest / u) ** 2 for u in uncertainties]
    total = math.fsum(weights)
    # Everything against the first pair, and each residual from the other pairs alone, because
    # a pair with nearly all the weight differs from the mean by less than rounding would leave.
    offsets = [turn - turns[0] for turn in turns]
    mean = turns[0] + math.fsum(w * o for w, o in zip(weights, offsets, strict=True)) / total
    residuals = tuple(
        math.fsum(weights[j] * (turns[i] - turns[j]) for j in pairs if j != i) / total
        for i in pairs
    )
    chi_square = math.fsum((residuals[i] / uncertainties[i]) ** 2 for i in pairs)
    normalized: tuple[float | None, ...] = (None,)
    consistency_p: float | None = None
    odd_pair: str | None = None
    if len(names) > 1:
        others = [math.fsum(weights[j] for j in pairs if j != i) for i in pairs]
        scaled = [
            residuals[i] / (uncertainties[i] * math.sqrt(others[i] / total)) if others[i] else 0.0
            for i in pairs
        ]
        normalized = tuple(scaled)
        consistency_p = chi_square_survival(chi_square, len(names) - 1)
        if consistency_p < DISAGREE_BELOW:
            odd_pair = _outstanding(scaled, names)
    return WeightedTurn(
        turn_deg=mean,
        uncertainty_deg=smallest / math.sqrt(total),
        residuals_deg=residuals,
        normalized_residuals=normalized,
        chi_square=chi_square,
        consistency_p=consistency_p,
        odd_pair=odd_pair,
    )


def _outstanding(normalized: Sequence[float], names: Sequence[str]) -> str | None:
    sizes = [abs(residual) for residual in normalized]
    largest = max(sizes)
    alike = [name for name, size in zip(names, sizes, strict=True) if size > largest * (1 - 1e-9)]
    return alike[0] if len(alike) == 1 else None


def chi_square_survival(chi_square: float, degrees_of_freedom: int) -> float:
    """The chance that chi-square is at least so large: the upper incomplete gamma Q(n/2, x/2).

    Built up from Q(1/2, y) = erfc(sqrt(y)) or Q(1, y) = exp(-y) by
    Q(s + 1, y) = Q(s, y) + y^s exp(-y) / Gamma(s + 1): every term is positive, so none is lost.

    Raises:
        AlignerError: a negative chi-square, or no degree of freedom.

    Source: PlanetMath, "incomplete gamma function recurrence formula" (seen).
    """
    if not chi_square >= 0 or degrees_of_freedom < 1:
        raise AlignerError(
            "chi-square",
            f"{chi_square:g} with {degrees_of_freedom} degrees of freedom",
            "it is 0 or more, with at least one degree of freedom",
        )
    y = chi_square / 2
    if y == 0:
        return 1.0
    if math.isinf(y):
        return 0.0
    if degrees_of_freedom % 2:
        s, survival = 0.5, math.erfc(math.sqrt(y))
    else:
        s, survival = 1.0, math.exp(-y)
    while s < degrees_of_freedom / 2:
        survival += math.exp(s * math.log(y) - y - math.lgamma(s + 1))
        s += 1
    return min(survival, 1.0)
