"""A unit, the dimension it belongs to, and how many of the dimension's own unit it is.

The trap: importing pint costs more than the whole of Qt's start, and a sheet in lbf·ft would pay
that each time it is opened. So a factor that is exact by definition stands with its unit, and
pint is asked for the others only; every factor is tested against pint.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from aligner.language import with_decimal_sign


@dataclass(frozen=True)
class Unit:
    """One unit of a dimension.

    Attributes:
        symbol: how the program writes it, in files and on the screen.
        pint_name: the expression pint knows it by.
        spellings: what people type for it, folded by `folded` (no case, spaces or dots).
        by_definition: how many of the dimension's own unit it is, where that follows from
            definitions alone; pint is asked where it is left out.
    """

    symbol: str
    pint_name: str
    spellings: tuple[str, ...]
    by_definition: float | None = None


@dataclass(frozen=True, eq=False)
class Dimension:
    """A kind of quantity: its name, its units (the first is the program's own) and its bounds.

    Attributes:
        name: what a person calls it, with its article ("a length").
        none_such: what is said to one that is too large.
        example: one written as it should be, for a refusal to show ("4.2 mm").
        units: every unit it may be typed in; values inside the program are in the first.
        largest: the largest magnitude that can be meant, in the program's own unit.
        puzzling: spellings that could mean more than one thing, with the question to ask.
    """

    name: str
    none_such: str
    example: str
    units: tuple[Unit, ...]
    largest: float
    puzzling: Mapping[str, str]

    @property
    def own_unit(self) -> str:
        """The symbol of the unit that values inside the program are in."""
        return self.units[0].symbol

    @property
    def example_said(self) -> str:
        """The example with the decimal sign of the language spoken."""
        return with_decimal_sign(self.example)

    def unit(self, symbol: str) -> Unit:
        """The unit with this symbol; `KeyError` if the dimension has none such."""
        for unit in self.units:
            if unit.symbol == symbol:
                return unit
        raise KeyError(symbol)


def folded(text: str) -> str:
    """A unit as typed, without case and without the marks people put between its parts."""
    kept = (letter for letter in text.casefold() if letter not in " .·⋅∙*×-_\u00a0\u202f")
    return "".join(kept).replace("″", '"').replace("''", '"').replace("′", "'")


@cache
def factor(dimension: Dimension, symbol: str) -> float:
    """How many of the dimension's own unit one of this unit is (25.4 for an inch).

    Raises:
        KeyError: the dimension has no unit with this symbol.
    """
    unit = dimension.unit(symbol)
    if unit is dimension.units[0]:
        return 1.0
    if unit.by_definition is not None:
        return unit.by_definition
    return float(_registry()(unit.pint_name).to(dimension.units[0].pint_name).magnitude)


@cache
def _registry() -> Any:  # pint's registry is a class made at run time
    import pint  # late: it is needed only for a unit without a definition here

    return pint.UnitRegistry(cache_folder=None)
