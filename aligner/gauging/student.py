"""Student's t and the normal distribution, without a statistics library.

The trap: the plain formula loses its digits twice, in the far tail (one minus nearly one)
and at many degrees of freedom (large logarithms taken from each other). So the tail is what
is reckoned here, and beyond 200 degrees of freedom Hill's expansion takes over.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from math import erfc, exp, inf, isnan, lgamma, log, log1p, pi, sqrt

_MANY_DEGREES_OF_FREEDOM = 200.0
_SMALLEST = 1e-300
_PRECISION = 1e-15


def normal_distribution(z: float) -> float:
    """The probability that a standard normal variable is at most z."""
    return 0.5 * erfc(-z / sqrt(2.0))


def normal_quantile(probability: float) -> float:
    """The z that a standard normal variable stays under with this probability.

    Raises:
        ValueError: the probability is not between 0 and 1.
    """
    return _quantile(probability, lambda z: normal_distribution(-z), _normal_density)


def student_distribution(t: float, degrees_of_freedom: float) -> float:
    """The probability that Student's t is at most t.

    Args:
        t: the variable, either sign.
        degrees_of_freedom: more than 0, whole or not; infinite gives the normal distribution.

    Raises:
        ValueError: the degrees of freedom are not more than 0.
    """
    _check(degrees_of_freedom)
    tail = _upper_tail(abs(t), degrees_of_freedom)
    return tail if t < 0 else 1.0 - tail


@lru_cache(maxsize=1024)
def student_quantile(probability: float, degrees_of_freedom: float) -> float:
    """The t that Student's variable stays under with this probability.

    Args:
        probability: between 0 and 1, neither included.
        degrees_of_freedom: more than 0, whole or not; infinite gives the normal quantile.

    Raises:
        ValueError: the probability or the degrees of freedom are out of range.
    """
    _check(degrees_of_freedom)
    nu = degrees_of_freedom
    return _quantile(probability, lambda t: _upper_tail(t, nu), lambda t: _density(t, nu))


def _check(degrees_of_freedom: float) -> None:
    if isnan(degrees_of_freedom) or degrees_of_freedom <= 0:
        raise ValueError(f"degrees of freedom must be more than 0, not {degrees_of_freedom}")


def _normal_density(z: float) -> float:
    return exp(-0.5 * z * z) / sqrt(2.0 * pi)


def _density(t: float, nu: float) -> float:
    # It only steers Newton's steps, so the normal density is near enough at many degrees.
    if nu >= _MANY_DEGREES_OF_FREEDOM:
        return _normal_density(t)
    scale = lgamma(0.5 * (nu + 1.0)) - lgamma(0.5 * nu) - 0.5 * log(nu * pi)
    return exp(scale - 0.5 * (nu + 1.0) * log1p(t * t / nu))


def _upper_tail(t: float, nu: float) -> float:
    """P(T > t) for t >= 0: half of I_x(nu/2, 1/2), x = nu / (nu + t^2) (A&S 26.5.27)."""
    if nu >= _MANY_DEGREES_OF_FREEDOM:
        return normal_distribution(-_normal_equivalent(t, nu))
    square = t * t
    if square == inf:
        return 0.0
    x = nu / (nu + square)
    return 0.5 * _incomplete_beta(x, square / (nu + square), 0.5 * nu, 0.5)


def _normal_equivalent(t: float, nu: float) -> float:
    """The z with the same tail (G. W. Hill, Algorithm 395, Comm. ACM 13, 1970)."""
    if nu == inf:
        return t
    a = nu - 0.5
    b = 48.0 * a * a
    y = a * log1p(t * t / nu)
    series = (((-0.4 * y - 3.3) * y - 24.0) * y - 85.5) / (0.8 * y * y + 100.0 + b)
    return ((series + y + 3.0) / b + 1.0) * sqrt(y)


def _incomplete_beta(x: float, one_minus_x: float, a: float, b: float) -> float:
    """I_x(a, b), the regularised incomplete beta function, by continued fraction."""
    if x <= 0.0:
        return 0.0
    if one_minus_x <= 0.0:
        return 1.0
    front = exp(lgamma(a + b) - lgamma(a) - lgamma(b) + a * log(x) + b * log(one_minus_x))
    if x < (a + 1.0) / (a + b + 2.0):
        return front * _beta_fraction(x, a, b) / a
    return 1.0 - front * _beta_fraction(one_minus_x, b, a) / b


def _beta_fraction(x: float, a: float, b: float) -> float:
    """The continued fraction of A&S 26.5.8, by Lentz's method."""
    c = 1.0
    d = 1.0 / _not_zero(1.0 - (a + b) * x / (a + 1.0))
    fraction = d
    for m in range(1, 1000):
        even = m * (b - m) * x / ((a + 2 * m - 1.0) * (a + 2 * m))
        d = 1.0 / _not_zero(1.0 + even * d)
        c = _not_zero(1.0 + even / c)
        fraction *= d * c
        odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1.0))
        d = 1.0 / _not_zero(1.0 + odd * d)
        c = _not_zero(1.0 + odd / c)
        fraction *= d * c
        if abs(d * c - 1.0) < _PRECISION:
            break
    return fraction


def _not_zero(value: float) -> float:
    return value if abs(value) > _SMALLEST else _SMALLEST


def _quantile(
    probability: float, upper_tail: Callable[[float], float], density: Callable[[float], float]
) -> float:
    """Newton's steps kept inside a bracket; a step that leaves it is a halving instead."""
    if not 0.0 < probability < 1.0:
        raise ValueError(f"a probability is between 0 and 1, not {probability}")
    if probability < 0.5:
        return -_quantile_above(probability, upper_tail, density)
    return _quantile_above(1.0 - probability, upper_tail, density)


def _quantile_above(
    tail: float, upper_tail: Callable[[float], float], density: Callable[[float], float]
) -> float:
    low, high = 0.0, 1.0
    while upper_tail(high) > tail:
        low, high = high, 2.0 * high
    t = low
    for _ in range(200):
        excess = upper_tail(t) - tail
        if excess >= 0.0:
            low = t
        else:
            high = t
        slope = density(t)
        following = t + excess / slope if slope > 0.0 else inf
        if not low <= following <= high:
            following = 0.5 * (low + high)
        if abs(following - t) <= _PRECISION * max(1.0, abs(t)):
            return following
        t = following
    return t
