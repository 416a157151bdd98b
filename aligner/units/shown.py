"""Writing a value for a person: rounded to what matters, in the unit they prefer.

The trap: a value that rounds to nought must not print as "-0.0", and a rounded value is only
ever for the eye: documents keep what was typed.
"""

from __future__ import annotations

from aligner.language import decimal_sign, with_decimal_sign
from aligner.units.dimension import LENGTH, TORQUE, VOLUME
from aligner.units.unit import Dimension, factor

#: Decimals that make sense to a mechanic's eye, by unit; what is not listed takes one.
_DECIMALS = {
    "mm": 1,
    "cm": 2,
    "m": 3,
    "in": 3,
    "ft": 3,
    "thou": 0,
    "µm": 0,
    "N·m": 1,
    "lbf·ft": 1,
    "lbf·in": 0,
    "kgf·m": 2,
    "kgf·cm": 0,
    "ml": 0,
    "US fl oz": 2,
    "imp fl oz": 2,
    "deg": 2,
    "%": 0,
    "km": 0,
    "mi": 0,
}
_CUTS_TRAILING_ZEROS = {"N·m", "lbf·ft", "kgf·m"}
_UNSPACED = {"deg": "°"}


def shown(value: float, dimension: Dimension, unit: str | None = None, *, fine: int = 0) -> str:
    """A value in words for the screen: "4.3 mm", "23 N·m", "0.93°".

    Args:
        value: in the dimension's own unit.
        dimension: what it measures.
        unit: the symbol of the unit to show it in; the dimension's own if left out.
        fine: decimals more (or fewer, if negative) than usual for that unit.
    """
    symbol = unit or dimension.own_unit
    number = rounded(value / factor(dimension, symbol), _DECIMALS.get(symbol, 1) + fine)
    if symbol in _CUTS_TRAILING_ZEROS and decimal_sign() in number:
        number = number.rstrip("0").removesuffix(decimal_sign())
    suffix = _UNSPACED.get(symbol)
    return f"{number}{suffix}" if suffix else f"{number} {symbol}"


def rounded(number: float, decimals: int) -> str:
    """A number with so many decimals, never "-0"; the minus is the true one (U+2212).

    The decimal sign is that of the language spoken.
    """
    text = f"{number:.{max(decimals, 0)}f}"
    if float(text) == 0.0:
        text = text.removeprefix("-")
    return with_decimal_sign(text.replace("-", "−"))


def as_fine(number: str, other: str) -> str:
    """A number written with as many decimals as another has, at least: "25" beside "23.1"."""
    sign = decimal_sign()
    lacks = len(other.partition(sign)[2]) - len(number.partition(sign)[2])
    if lacks <= 0:
        return number
    return f"{number}{'' if sign in number else sign}{'0' * lacks}"


#: The dimensions for which a person has a choice of unit, with the symbols on offer.
CHOICES: dict[Dimension, tuple[str, ...]] = {
    LENGTH: ("mm", "in"),
    TORQUE: ("N·m", "lbf·ft", "kgf·m"),
    VOLUME: ("ml", "US fl oz", "imp fl oz"),
}
