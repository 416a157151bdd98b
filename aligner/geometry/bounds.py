"""Refuses a length that no part of a fork or frame can have, in words.

The trap: a nan slips through every comparison and an infinity through most, and either
comes out at the other end as a correction somebody turns a bracket by.
"""

from __future__ import annotations

import math

from aligner.errors import AlignerError
from aligner.language import decimal_sign, say


def in_digits(value: float, most: int | None = 6) -> str:
    """A number in so many digits at most (`None`: all), with the decimal sign of the language."""
    text = f"{value}" if most is None else f"{value:.{most}g}"
    return text.replace(".", decimal_sign())


def require_number(where: str, value: float, unit: str = "mm") -> None:
    """Raise `AlignerError` unless the value is a finite number.

    Args:
        where: the field, as the person knows it.
        value: the length or angle.
        unit: its unit, for the sentence.
    """
    if not math.isfinite(value):
        raise AlignerError(
            where,
            say("{value} is not a measurement", value=in_digits(value, None)),
            say("give a number in degrees")
            if unit == "degrees"
            else say("give a number in {unit}", unit=unit),
        )


def require_length(where: str, value_mm: float) -> None:
    """Raise `AlignerError` unless the value is a finite length above nothing."""
    require_number(where, value_mm)
    if value_mm <= 0:
        raise AlignerError(
            where,
            say("{value} mm is no length", value=in_digits(value_mm)),
            say("give more than 0 mm"),
        )


def require_width(where: str, value_mm: float) -> None:
    """Raise `AlignerError` unless the value is a finite length, nothing included."""
    require_number(where, value_mm)
    if value_mm < 0:
        raise AlignerError(
            where,
            say("{value} mm puts the left point on the right", value=in_digits(value_mm)),
            say("give the distance from the middle, 0 mm or more"),
        )
