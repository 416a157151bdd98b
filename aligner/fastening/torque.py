"""Torque units, and whether two torques printed side by side in a manual are the same.

The trap: where a line reads "40 to 50 N·m (29 to 36 lbf·ft)" one half was copied from the
other, and the copy may be rounded, cut off or plainly wrong. Nothing printed tells which half
is the first one, so a disagreement is shown with its size and never settled here.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from typing import Literal

from aligner.errors import AlignerError
from aligner.language import marked, say, written
from aligner.units import TORQUE, factor

#: N·m in one of each unit a torque is printed in, the commoner ones in manuals first (common
#: practice, no source).
NEWTON_METRES_PER_UNIT = {
    unit: factor(TORQUE, unit)
    for unit in ("N·m", "lbf·ft", "lbf·in", "kgf·m", "kgf·cm", "daN·m", "N·cm")
}

_DIGITS = re.compile(r"[0-9]+(?:[.,](?P<decimals>[0-9]+))?")
#: Keeps binary rounding from making or unmaking a touch at the edge of two intervals.
_SLACK = 1e-9


class UnreadableTorque(AlignerError):
    """A printed torque cannot be read, or its unit is not known here."""


@dataclass(frozen=True)
class PrintedTorque:
    """A torque as printed: its number, and how fine that number is.

    Attributes:
        number: as printed, in `unit`.
        step: one unit of its last printed digit (1 for "36", 0.1 for "3.6").
        unit: a key of `NEWTON_METRES_PER_UNIT`.
    """

    number: float
    step: float
    unit: str

    @property
    def value_nm(self) -> float:
        """The printed number in N·m."""
        return self.number * newton_metres_per(self.unit)

    @property
    def step_nm(self) -> float:
        """One unit of the last printed digit in N·m."""
        return self.step * newton_metres_per(self.unit)

    @property
    def decimals(self) -> int:
        """How many decimals are printed."""
        return max(0, -round(math.log10(self.step)))

    @property
    def text(self) -> str:
        """Number and unit with the printed decimals: "3.60 kgf·m"."""
        return f"{written(self.number, f'.{self.decimals}f')} {self.unit}"


@dataclass(frozen=True)
class PrintedRange:
    """The torque of one line in one unit; a value printed alone has low and high the same."""

    low: PrintedTorque
    high: PrintedTorque


@dataclass(frozen=True)
class PrintedPairDisagreement:
    """How far one end of a printed pair is from being one torque written twice.

    Attributes:
        end: which end of the range.
        first: that end as printed in the first unit.
        second: that end as printed in the second unit.
        difference_nm: first less second, taken as printed.
        beyond_rounding_nm: what is left of it after both are allowed half of their last digit.
        is_cut_copy: whether it goes away if one of them was cut off at its last printed digit
            instead of rounded.
    """

    end: Literal["low", "high", "both"]
    first: PrintedTorque
    second: PrintedTorque
    difference_nm: float
    beyond_rounding_nm: float
    is_cut_copy: bool

    @property
    def difference_share(self) -> float:
        """The difference as a share of the first value (0.02 for two per cent)."""
        return self.difference_nm / self.first.value_nm if self.first.value_nm else math.inf

    def __str__(self) -> str:
        in_first_unit = self.second.value_nm / newton_metres_per(self.first.unit)
        text = (
            marked(
                "{first} and {second} differ by {difference} ({second} is {converted}): "
                "one is a copy of the other cut off at its last digit, not rounded"
            )
            if self.is_cut_copy
            else marked(
                "{first} and {second} differ by {difference} ({second} is {converted}): "
                "more than rounding explains, so one of them is misprinted or misread"
            )
        )
        return say(
            text,
            first=self.first.text,
            second=self.second.text,
            difference=f"{written(abs(self.difference_nm), '.2g')} N·m",
            converted=f"{written(in_first_unit, f'.{self.first.decimals + 1}f')} {self.first.unit}",
        )


def newton_metres_per(unit: str) -> float:
    """N·m in one of this unit.

    Raises:
        UnreadableTorque: the unit is not known here.
    """
    try:
        return NEWTON_METRES_PER_UNIT[unit]
    except KeyError:
        known = ", ".join(NEWTON_METRES_PER_UNIT)
        raise UnreadableTorque(
            "",
            say("“{unit}” is no unit of torque", unit=unit),
            say("it can be {units}", units=known),
        ) from None


def printed_torque(number: str, unit: str) -> PrintedTorque:
    """A torque from its printed digits; the last printed digit tells how fine it is.

    Args:
        number: the digits as printed: "36", "3.6", "3,60".
        unit: a key of `NEWTON_METRES_PER_UNIT`.

    Raises:
        UnreadableTorque: not a plain number, or the unit is not known here.
    """
    newton_metres_per(unit)
    found = _DIGITS.fullmatch(number.strip())
    if found is None:
        raise UnreadableTorque(
            "",
            say("“{text}” is not a number", text=number.strip()[:40]),
            say("write it as “36”"),
        )
    decimals = len(found["decimals"] or "")
    return PrintedTorque(float(number.replace(",", ".")), 10.0**-decimals, unit)


def printed_pair_disagreement(
    first: PrintedRange, second: PrintedRange
) -> PrintedPairDisagreement | None:
    """The worse of the two ends at which two printed ranges are not the same torque, or `None`.

    Two printed values agree if there is a torque that rounds to both: each stands for all that
    lies within half of its last printed digit, and the two spans touch. They are then both
    good copies, of each other or of a third unit. A copy that was cut off instead (36.9 printed
    as 36) stands for the whole step above its digits; that is a disagreement too, because the
    reader is given a torque that is not the printed one, but it is told apart.

    Derived: it follows from what a rounded or cut-off number means.

    Args:
        first: the range in the unit printed first.
        second: the same line in the unit printed beside it.
    """
    if first.low == first.high and second.low == second.high:
        return _disagreement("both", first.low, second.low)
    ends = (
        _disagreement("low", first.low, second.low),
        _disagreement("high", first.high, second.high),
    )
    apart = [end for end in ends if end is not None]
    return max(apart, key=_gravity, default=None)


def _gravity(apart: PrintedPairDisagreement) -> tuple[bool, float]:
    return not apart.is_cut_copy, apart.beyond_rounding_nm


def _disagreement(
    end: Literal["low", "high", "both"], first: PrintedTorque, second: PrintedTorque
) -> PrintedPairDisagreement | None:
    difference_nm = first.value_nm - second.value_nm
    allowed_nm = (first.step_nm + second.step_nm) / 2
    if abs(difference_nm) <= allowed_nm + _SLACK:
        return None
    # The cut one stands for the step above its digits, so the gap may be half a step wider.
    cut = second if difference_nm > 0 else first
    is_cut_copy = abs(difference_nm) <= allowed_nm + cut.step_nm / 2 + _SLACK
    return PrintedPairDisagreement(
        end, first, second, difference_nm, abs(difference_nm) - allowed_nm, is_cut_copy
    )
