"""Reading a quantity that a person typed, or that a document holds.

The trap: nothing may be guessed without a word. A comma is a decimal comma, but `1,450`
could also be one thousand four hundred and fifty, so it is asked about; where the language
spoken writes decimals with a comma, so is `1.450`. `lb` alone is no
torque; `Nm` is newton metre here and a length of nanometres nowhere.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from aligner.errors import AlignerError
from aligner.language import decimal_sign, say, with_decimal_sign, written
from aligner.units.dimension import EVERY_DIMENSION
from aligner.units.unit import Dimension, Unit, factor, folded


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

    @property
    def said(self) -> str:
        """The same with the decimal sign of the language spoken."""
        return with_decimal_sign(self.text)


_SIGN = r"(?P<sign>[+\-−]?)\s*"
_FRACTION = r"(?:(?P<whole>[0-9]+)[\s\-])?\s*(?P<over>[0-9]+)\s*/\s*(?P<under>[0-9]+)"
_DECIMAL = r"(?P<decimal>[0-9]+[.,]?[0-9]*|[.,][0-9]+)"
_NUMBER = re.compile(rf"\s*{_SIGN}(?:{_FRACTION}|{_DECIMAL})\s*(?P<unit>.*?)\s*", re.DOTALL)
_THOUSANDS_OR_DECIMALS = re.compile(r"[1-9][0-9]{0,2}[.,][0-9]{3}")
_LONGEST = 60


def read_quantity(
    text: str,
    dimension: Dimension,
    *,
    unit_if_bare: str | None = None,
    signed: bool = False,
    decimal: str | None = None,
) -> TypedQuantity:
    """The quantity a text means.

    Args:
        text: what was typed: "4,2", "11/64 in", "31 lbf ft", "4.3 kgf·m".
        dimension: what belongs here.
        unit_if_bare: the symbol of the unit a number alone takes; `None` refuses a bare number.
        signed: whether a negative value makes sense here.
        decimal: the sign that is always a decimal one: "." in documents; that of the language
            spoken if left out.

    Raises:
        UnreadableQuantity: in words: what was understood and what would be right.
    """
    example = dimension.example_said
    if len(text) > _LONGEST:
        raise UnreadableQuantity("", say("far too long for a quantity"), _write_as(example))
    found = _NUMBER.fullmatch(text)
    if found is None:
        raise UnreadableQuantity(
            "",
            say("“{text}” does not begin with a number", text=text.strip()),
            _write_as(example),
        )
    number, magnitude = _number(found, text, decimal or decimal_sign())
    unit = _unit(found["unit"], dimension, unit_if_bare, number, example)
    value = magnitude * factor(dimension, unit.symbol)
    found_quantity = TypedQuantity(number, unit.symbol, value)
    if value < 0 and not signed:
        raise UnreadableQuantity(
            "",
            say("{quantity} is negative", quantity=found_quantity.said),
            say("{kind} here is zero or more", kind=say(dimension.name)),
        )
    if abs(value) > dimension.largest:
        raise UnreadableQuantity(
            "",
            say(
                "{quantity} is more than {largest}",
                quantity=found_quantity.said,
                largest=f"{written(dimension.largest)} {dimension.own_unit}",
            ),
            say(dimension.none_such),
        )
    if len(found_quantity.text) > _LONGEST:  # or a document could not be read back
        raise UnreadableQuantity("", say("far too many digits for a quantity"), _write_as(example))
    return found_quantity


def _write_as(example: str) -> str:
    return say("write it as “{example}”", example=example)


def _number(found: re.Match[str], text: str, decimal: str) -> tuple[str, float]:
    sign = "-" if found["sign"] in ("-", "−") else ""
    if found["over"]:
        if int(found["under"]) == 0:
            raise UnreadableQuantity(
                "", say("“{text}” divides by nought", text=text.strip()), say("write 11/64 in")
            )
        whole = f"{found['whole']} " if found["whole"] else ""
        magnitude = int(found["whole"] or 0) + int(found["over"]) / int(found["under"])
        number = f"{sign}{whole}{found['over']}/{found['under']}"
        return number, -magnitude if sign else magnitude
    digits = found["decimal"]
    if decimal not in digits and _THOUSANDS_OR_DECIMALS.fullmatch(digits):
        either = digits.replace(",", ".")
        raise UnreadableQuantity(
            "",
            say(
                "“{text}” can be read as {decimal} or as {whole}",
                text=digits,
                decimal=either.replace(".", decimal),
                whole=either.replace(".", ""),
            ),
            say("write one of the two"),
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
                "",
                say(
                    "“{number}” is a number without a unit",
                    number=with_decimal_sign(number),
                ),
                _write_as(example),
            )
        return dimension.unit(unit_if_bare)
    for unit in dimension.units:
        if key in unit.spellings or key == folded(unit.symbol):
            return unit
    if key in dimension.puzzling:
        raise UnreadableQuantity(
            "", say("“{unit}” is not clear", unit=typed), say(dimension.puzzling[key])
        )
    for other in EVERY_DIMENSION:
        if any(key in unit.spellings for unit in other.units):
            raise UnreadableQuantity(
                "",
                say(
                    "“{text}” is {other} where {kind} belongs",
                    text=f"{with_decimal_sign(number)} {typed}",
                    other=say(other.name),
                    kind=say(dimension.name),
                ),
                _write_as(example),
            )
    symbols = ", ".join(unit.symbol for unit in dimension.units)
    raise UnreadableQuantity(
        "",
        say("“{unit}” is not a unit known here", unit=typed),
        say("it can be {units}", units=symbols),
    )
