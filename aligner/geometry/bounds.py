"""Refuses a length that no part of a fork or frame can have, in words.

The trap: a nan slips through every comparison and an infinity through most, and either
comes out at the other end as a correction somebody turns a bracket by.
"""

from __future__ import annotations

import math

from aligner.errors import AlignerError
from aligner.language import say, written


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
            say("{value} is not a measurement", value=written(value, "")),
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
            say("{value} mm is no length", value=written(value_mm)),
            say("give more than 0 mm"),
        )


def require_width(where: str, value_mm: float) -> None:
    """Raise `AlignerError` unless the value is a finite length, nothing included."""
    require_number(where, value_mm)
    if value_mm < 0:
        raise AlignerError(
            where,
            say("{value} mm puts the left point on the right", value=written(value_mm)),
            say("give the distance from the middle, 0 mm or more"),
        )
