"""What the leg calculations refuse, in words: no number from a slip of the keyboard goes through.

The trap: a bore of 0, a stroke typed as minus, or a value that is no number at all runs
through a formula without complaint and comes out as a volume somebody pours.
"""

from __future__ import annotations

import math

from aligner.errors import AlignerError
from aligner.language import say, written

ROUNDING_SLACK_MM = 1e-9
"""Stops a length that is just the limit from failing by its last binary digit."""


class LegError(AlignerError):
    """Raised when a fork leg's dimensions or readings cannot give the value asked for."""


def finite(where: str, value: float) -> float:
    """Give the value back if it is a number.

    Args:
        where: the field's name, as the person knows it, in English: it is said here.
        value: what was given there.

    Raises:
        LegError: the value is infinite or not a number.
    """
    if not math.isfinite(value):
        raise LegError(
            say(where),
            say("{value} is not a measured value", value=value),
            say("a plain number is needed"),
        )
    return value


def positive(where: str, value: float, unit: str) -> float:
    """Give the value back if it is a number above nothing.

    Raises:
        LegError: the value is nothing, less than nothing, or no number.
    """
    if finite(where, value) <= 0:
        raise LegError(
            say(where),
            f"{written(value)} {unit}",
            say("a value greater than 0 {unit} is needed", unit=unit),
        )
    return value


def not_negative(where: str, value: float, unit: str) -> float:
    """Give the value back if it is a number not below nothing.

    Raises:
        LegError: the value is less than nothing, or no number.
    """
    if finite(where, value) < 0:
        raise LegError(
            say(where), f"{written(value)} {unit}", say("0 {unit} or more is needed", unit=unit)
        )
    return value
