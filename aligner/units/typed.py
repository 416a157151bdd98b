"""Reading a quantity that a person typed, or that a document holds.

The trap: nothing may be guessed without a word. A comma is a decimal comma, but `1,450`
could also be one thousand four hundred and fifty, so it is asked about where the language
spoken writes decimals with a point; `lb` alone is no
torque; `Nm` is newton metre here and a length of nanometres nowhere.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from aligner.errors import AlignerError
from aligner.language import decimal_sign
from aligner.units.dimension import EVERY_DIMENSION, Dimension, Unit, factor, folded


class UnreadableQuantity(AlignerError):
    """A text cannot be read as the quantity that belongs here."""


@dataclass(frozen=True)
class TypedQuantity:
    """A number and its unit as they were typed, with the value they mean.

    Attributes:
        number: the digits as typed, decimal point for comma ("4.20", "11/64").
        unit: the unit's symbol ("mm", "lbf·ft").
        value: the same in the dimension's own unit.
    """

    number: str
    unit: str
    value: float

    @property
    def text(self) -> str:
        """Number and unit as they are kept in a document: "31 lbf·ft"."""
        return f"{self.number} {self.unit}"


_SIGN = r"(?P<sign>[+\-−]?)\s*"
_FRACTION = r"(?:(?P<whole>[0-9]+)[\s\-])?\s*(?P<over>[0-9]+)\s*/\s*(?P<under>[0-9]+)"
_DECIMAL = r"(?P<decimal>[0-9]+[.,]?[0-9]*|[.,][0-9]+)"
_NUMBER = re.compile(rf"\s*{_SIGN}(?:{_FRACTION}|{_DECIMAL})\s*(?P<unit>.*?)\s*", re.DOTALL)
_THOUSANDS_OR_DECIMALS = re.compile(r"[1-9][0-9]{0,2},[0-9]{3}")
_LONGEST = 60


def read_quantity(
    text: str, dimension: Dimension, *, unit_if_bare: str | None = None, signed: bool = False
) -> TypedQuantity:
    """The quantity a text means.

    Args:
        text: what was typed: "4,2", "11/64 in", "31 lbf ft", "4.3 kgf·m".
        dimension: what belongs here.
        unit_if_bare: the symbol of the unit a number alone takes; `None` refuses a bare number.
        signed: whether a negative value makes sense here.

    Raises:
        UnreadableQuantity: in words: what was understood and what would be right.
    """
    example = f"“{dimension.example}”"
    if len(text) > _LONGEST:
        raise UnreadableQuantity("", "far too long for a quantity", f"write it as {example}")
    found = _NUMBER.fullmatch(text)
    if found is None:
        raise UnreadableQuantity(
            "", f"“{text.strip()}” does not begin with a number", f"write it as {example}"
        )
    number, magnitude = _number(found, text)
    unit = _unit(found["unit"], dimension, unit_if_bare, number, example)
    value = magnitude * factor(dimension, unit.symbol)
    if value < 0 and not signed:
        raise UnreadableQuantity(
            "", f"{number} {unit.symbol} is negative", f"{dimension.name} here is zero or more"
        )
    if abs(value) > dimension.largest:
        raise UnreadableQuantity(
            "",
            f"{number} {unit.symbol} is more than {dimension.largest:g} {dimension.own_unit}",
            f"no such {dimension.name.split(' ', 1)[1]} is found on a motorcycle",
        )
    found_quantity = TypedQuantity(number, unit.symbol, value)
    if len(found_quantity.text) > _LONGEST:  # or a document could not be read back
        raise UnreadableQuantity("", "far too many digits for a quantity", f"write it as {example}")
    return found_quantity


def _number(found: re.Match[str], text: str) -> tuple[str, float]:
    sign = "-" if found["sign"] in ("-", "−") else ""
    if found["over"]:
        if int(found["under"]) == 0:
            raise UnreadableQuantity("", f"“{text.strip()}” divides by nought", "write 11/64 in")
        whole = f"{found['whole']} " if found["whole"] else ""
        magnitude = int(found["whole"] or 0) + int(found["over"]) / int(found["under"])
        number = f"{sign}{whole}{found['over']}/{found['under']}"
        return number, -magnitude if sign else magnitude
    digits = found["decimal"]
    if decimal_sign() != "," and _THOUSANDS_OR_DECIMALS.fullmatch(digits):
        with_point, without = digits.replace(",", "."), digits.replace(",", "")
        raise UnreadableQuantity(
            "", f"“{digits}” can be read as {with_point} or as {without}", "write one of the two"
        )
    digits = digits.replace(",", ".")
    if digits.startswith("."):
        digits = "0" + digits
    number = sign + digits.removesuffix(".")
    return number, float(number)


def _unit(
    typed: str, dimension: Dimension, unit_if_bare: str | None, number: str, example: str
) -> Unit:
    key = folded(typed)
    if not key:
        if unit_if_bare is None:
            raise UnreadableQuantity(
                "", f"“{number}” is a number without a unit", f"write it as {example}"
            )
        return dimension.unit(unit_if_bare)
    for unit in dimension.units:
        if key in unit.spellings or key == folded(unit.symbol):
            return unit
    if key in dimension.puzzling:
        raise UnreadableQuantity("", f"“{typed}” is not clear", dimension.puzzling[key])
    for other in EVERY_DIMENSION:
        if any(key in unit.spellings for unit in other.units):
            raise UnreadableQuantity(
                "",
                f"“{number} {typed}” is {other.name} where {dimension.name} belongs",
                f"write it as {example}",
            )
    symbols = ", ".join(unit.symbol for unit in dimension.units)
    raise UnreadableQuantity("", f"“{typed}” is not a unit known here", f"it can be {symbols}")
