"""A number as it was given, for a sentence about it: in as many digits as it needs."""

from __future__ import annotations

from aligner.language import decimal_sign


def in_digits(value: float, most: int | None = 6) -> str:
    """A number in so many digits at most (`None`: all), with the decimal sign of the language."""
    text = f"{value}" if most is None else f"{value:.{most}g}"
    return text.replace(".", decimal_sign())
