"""Quantities inside documents: kept exactly as typed, carrying the value they mean.

A quantity is text in a document ("4.25 mm", "31 lbf·ft") and so survives a change of
preferred units without rounding drift. A bare number is refused: it has no unit.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, ClassVar, Self

from pydantic import GetCoreSchemaHandler
from pydantic_core import CoreSchema, core_schema

from aligner import units
from aligner.language import say, with_decimal_sign
from aligner.units import Dimension, UnreadableQuantity, read_quantity


@dataclass(frozen=True, slots=True)
class Quantity:
    """A quantity as typed. Use one of the kinds below, which say what it measures.

    Attributes:
        text: number and unit as typed, the unit spelled one way: "31 lbf·ft".
        value: the same in the dimension's own unit (mm, N·m, deg, %, ml, km, N, ...).
    """

    text: str
    value: float

    dimension: ClassVar[Dimension]
    signed: ClassVar[bool] = False

    @classmethod
    def typed(
        cls, text: str, unit_if_bare: str | None = None, *, decimal: str | None = None
    ) -> Self:
        """What a person typed; a number alone takes `unit_if_bare`.

        Args:
            text: number and unit.
            unit_if_bare: the symbol of a unit.
            decimal: the decimal sign; that of the language spoken if left out.

        Raises:
            UnreadableQuantity: in words, with what would be right.
        """
        found = read_quantity(
            text, cls.dimension, unit_if_bare=unit_if_bare, signed=cls.signed, decimal=decimal
        )
        return cls(found.text, found.value)

    @classmethod
    def _validated(cls, given: object) -> Self:
        if isinstance(given, cls):
            return given
        if isinstance(given, str):
            return cls.typed(given, decimal=".")
        if isinstance(given, (int, float)) and not isinstance(given, bool):
            raise UnreadableQuantity(
                "",
                say("{number} is a bare number", number=repr(given)),
                say(
                    "write it as text with its unit, such as “{example}”",
                    example=cls.dimension.example_said,
                ),
            )
        raise UnreadableQuantity(
            "",
            say("this is not a quantity"),
            say("write it as text, such as “{example}”", example=cls.dimension.example_said),
        )

    @classmethod
    def __get_pydantic_core_schema__(cls, _: Any, __: GetCoreSchemaHandler) -> CoreSchema:
        return core_schema.no_info_plain_validator_function(
            cls._validated,
            serialization=core_schema.plain_serializer_function_ser_schema(_as_text),
        )

    def __str__(self) -> str:
        return self.text

    @property
    def unit(self) -> str:
        """The symbol of the unit it was typed in: "lbf·ft", "US fl oz"."""
        return self.text.lstrip("-0123456789./ ")

    @property
    def number(self) -> str:
        """The number as it was typed, with a decimal point: "4.25", "1 11/64"."""
        return self.text.removesuffix(self.unit).rstrip()

    @property
    def said(self) -> str:
        """The text for a person: with the decimal sign of the language spoken."""
        return with_decimal_sign(self.text)


@dataclass(frozen=True, slots=True)
class OneOf:
    """Marks a field that takes one of two kinds of quantity, told apart by the unit."""

    kinds: tuple[type[Quantity], type[Quantity]]

    def _validated(self, given: object) -> Quantity:
        refusals: list[UnreadableQuantity] = []
        for kind in self.kinds:
            try:
                return kind._validated(given)
            except UnreadableQuantity as refusal:
                refusals.append(refusal)
        one, other = (kind.dimension.example_said for kind in self.kinds)
        raise UnreadableQuantity(
            "",
            refusals[0].understood,
            say("write it as text, such as “{one}” or “{other}”", one=one, other=other),
        )

    def __get_pydantic_core_schema__(self, _: Any, __: GetCoreSchemaHandler) -> CoreSchema:
        return core_schema.no_info_plain_validator_function(
            self._validated,
            serialization=core_schema.plain_serializer_function_ser_schema(_as_text),
        )


_as_text: Callable[[Quantity], str] = str


class Length(Quantity):
    """A length, zero or more; `value` in mm."""

    __slots__ = ()
    dimension = units.LENGTH


class SignedLength(Quantity):
    """A length with a sign; `value` in mm."""

    __slots__ = ()
    dimension = units.LENGTH
    signed = True


class Torque(Quantity):
    """A torque, zero or more; `value` in N·m."""

    __slots__ = ()
    dimension = units.TORQUE


class Angle(Quantity):
    """An angle, zero or more; `value` in degrees."""

    __slots__ = ()
    dimension = units.ANGLE


class Ratio(Quantity):
    """A share or a tolerance; `value` in per cent."""

    __slots__ = ()
    dimension = units.RATIO


class Volume(Quantity):
    """A volume, zero or more; `value` in ml."""

    __slots__ = ()
    dimension = units.VOLUME


class Distance(Quantity):
    """A distance on the road, zero or more; `value` in km."""

    __slots__ = ()
    dimension = units.DISTANCE


class Force(Quantity):
    """A force, zero or more; `value` in N."""

    __slots__ = ()
    dimension = units.FORCE


class Stiffness(Quantity):
    """A spring rate, zero or more; `value` in N/mm."""

    __slots__ = ()
    dimension = units.STIFFNESS


class Viscosity(Quantity):
    """A kinematic viscosity, zero or more; `value` in cSt (mm²/s)."""

    __slots__ = ()
    dimension = units.VISCOSITY
