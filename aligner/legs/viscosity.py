"""Viscosity of a blend of two fork oils, and the shares that make a wanted one.

The trap is the name on the bottle. The "W" number of a fork oil ("10W") is not a viscosity: it
differs from maker to maker and is no ISO VG grade either. Nothing here turns a W number into a
viscosity; the viscosity in cSt at a stated temperature comes from the oil's data sheet. Nor can
two oils be blended by their viscosities at unlike temperatures.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from aligner.language import marked, say, written
from aligner.legs.refusals import LegError, finite, positive

W_GRADE_CAUTION = marked(
    "A W number of a fork oil is not a viscosity and differs from maker to maker: "
    "take the viscosity in cSt at 40 °C from the oil's data sheet."
)
LOWEST_CST, HIGHEST_CST = 0.21, 2e7
"""Range in which the double logarithm of ASTM D341 holds."""


@dataclass(frozen=True)
class Blend:
    """How much of each of two oils makes the wanted viscosity.

    Attributes:
        first_share: volume of the first oil as a share of the whole, 0 to 1.
        second_share: the rest.
        first_ml: volume of the first oil, ml.
        second_ml: volume of the second oil, ml.
    """

    first_share: float
    second_share: float
    first_ml: float
    second_ml: float


def blend_viscosity_cst(first_cst: float, second_cst: float, first_share: float) -> float:
    """Viscosity of two oils mixed, cSt at the one temperature both viscosities are given for.

    Source: ASTM D7152, ASTM blending method: the double logarithms weighted by volume. An
    estimate: additives that change the viscosity index can move the true value by some per cent.

    Args:
        first_cst: the first oil, cSt.
        second_cst: the second oil at the same temperature, cSt.
        first_share: the first oil's share by volume, 0 to 1.

    Raises:
        LegError: a share outside 0 to 1, or a viscosity the double logarithm does not hold for.
    """
    f = finite(marked("share of the first oil"), first_share)
    if not 0 <= f <= 1:
        raise LegError(
            say("share of the first oil"), written(f), say("a share from 0 to 1 is needed")
        )
    w1 = _double_logarithm(marked("first oil"), first_cst)
    w2 = _double_logarithm(marked("second oil"), second_cst)
    return _viscosity_of(f * w1 + (1 - f) * w2)


def blend_for_target(
    first_cst: float, second_cst: float, target_cst: float, total_ml: float
) -> Blend:
    """How much of each oil makes the wanted viscosity, all three at one temperature.

    Source: ASTM D7152, inverse ASTM blending method. Where both oils and the target are the
    same, any mixture will do and the first oil alone is given.

    Args:
        first_cst: the first oil, cSt.
        second_cst: the second oil, cSt.
        target_cst: the wanted viscosity, cSt.
        total_ml: volume wanted in all, ml.

    Raises:
        LegError: a target thinner than the thinner oil or thicker than the thicker one.
    """
    w1 = _double_logarithm(marked("first oil"), first_cst)
    w2 = _double_logarithm(marked("second oil"), second_cst)
    w = _double_logarithm(marked("wanted viscosity"), target_cst)
    total = positive(marked("oil wanted in all"), total_ml, "ml")
    thin, thick = sorted((first_cst, second_cst))
    if not thin <= target_cst <= thick:
        wanted = marked("a value from {thin} to {thick} cSt or a thicker oil is needed")
        if target_cst < thin:
            wanted = marked("a value from {thin} to {thick} cSt or a thinner oil is needed")
        raise LegError(
            say("wanted viscosity"),
            say(
                "{wanted} cSt cannot be mixed from oils of {first} and {second} cSt",
                wanted=written(target_cst),
                first=written(first_cst),
                second=written(second_cst),
            ),
            say(wanted, thin=written(thin), thick=written(thick)),
        )
    f = 1.0 if w1 == w2 else min(max((w - w2) / (w1 - w2), 0.0), 1.0)
    return Blend(f, 1 - f, total * f, total * (1 - f))


def _double_logarithm(where: str, v: float) -> float:
    if not LOWEST_CST <= finite(where, v) <= HIGHEST_CST:
        raise LegError(
            say(where),
            f"{written(v)} cSt",
            say("a value from 0.21 to 20,000,000 cSt is needed"),
        )
    return math.log10(math.log10(v + 0.7 + _thin_oil_term(v)))


def _thin_oil_term(v: float) -> float:
    return math.exp(-1.47 - 1.84 * v - 0.51 * v**2)


def _viscosity_of(w: float) -> float:
    """Solve Z(v) for v by Newton's method: D341's own inverse is only an approximation."""
    z = 10 ** (10**w)
    v = z - 0.7
    for _ in range(20):
        term = _thin_oil_term(v)
        step = (v + 0.7 + term - z) / (1 - (1.84 + 1.02 * v) * term)
        v -= step
        if abs(step) <= 1e-15 * v:
            break
    return v
