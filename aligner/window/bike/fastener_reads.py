"""What is typed of a fastener, read and held against the planner before it is kept.

The trap: a value that reads well but that no list can be made from (passes that end at half
the torque) would take the whole list away; it is refused at its box instead.
"""

from __future__ import annotations

import re
from typing import Any

from aligner.assessment.fasteners import joint_of
from aligner.assessment.sheet_changes import refusal_of
from aligner.errors import AlignerError
from aligner.fastening.joints import joint_kinds
from aligner.language import decimal_sign, say
from aligner.sheet import Fastener, Sheet, Side, TorqueSpecification
from aligner.sheet.printed_torque import printed_torque, torque_text
from aligner.sheet.quantities import Angle, Distance, Quantity, Ratio
from aligner.units import DISTANCE


def read_field(sheet: Sheet, place: int, field: str, text: str) -> Any:
    """The value of a fastener's field.

    Args:
        sheet: on which the fastener stands.
        place: of it, from 0.
        field: of the fastener: "torque", "bolts", "passes", ...
        text: as typed, not empty.

    Raises:
        AlignerError: in words.
    """
    fastener = sheet.fasteners[place]
    value = _value(fastener, field, text)
    if field == "name":
        _check_name(sheet, place, text)
    elif field not in ("note", "thread", "strength_class"):
        joint_of(fastener.with_changes(**{field: value}))
    return value


def emptied(fastener: Fastener, field: str) -> Any:
    """What a field holds once its box is emptied."""
    return Fastener.model_fields[field].get_default(call_default_factory=True)


def field_text(fastener: Fastener, field: str) -> str:
    """A field as it stands in its box."""
    value = getattr(fastener, field)
    if field in ("torque", "seating"):
        return torque_text(value) if value else ""
    if field == "passes":
        return ", ".join(share.said for share in value)
    if field == "bolts":
        return str(value)
    if isinstance(value, Quantity):
        return value.said
    return str(value) if value is not None else ""


def default_name(kind: str, side: Side | None) -> str:
    """What a new fastener is called, in the language spoken."""
    title = say(joint_kinds()[kind].title)
    if side is None:
        return title
    left, right = say("left {fastener}", fastener=title), say("right {fastener}", fastener=title)
    return left if side is Side.LEFT else right


def sides_of(kind: str) -> list[tuple[object, str]]:
    """The sides a new fastener of a kind can be given, and the words."""
    middle: tuple[object, str] = ((None,), say("in the middle"))
    sided: list[tuple[object, str]] = [
        ((Side.LEFT, Side.RIGHT), say("left and right")),
        ((Side.LEFT,), Side.LEFT.words),
        ((Side.RIGHT,), Side.RIGHT.words),
    ]
    how = joint_kinds()[kind].sided
    return {"always": sided, "never": [middle]}.get(how, [middle, *sided])


def check_list(sheet: Sheet) -> None:
    """Refuse a sheet that no list can be made from.

    Raises:
        AlignerError: in words.
    """
    refusal = refusal_of(sheet)
    if refusal is not None:
        raise refusal


def _value(fastener: Fastener, field: str, text: str) -> Any:
    match field:
        case "torque" | "seating":
            before: TorqueSpecification | None = getattr(fastener, field)
            return printed_torque(text, before.source if before else "")
        case "bolts":
            return _bolts(text)
        case "passes":
            return _passes(text)
        case "back_off":
            return Angle.typed(text, "deg")
        case "again_after":
            return Distance.typed(text, DISTANCE.own_unit)
        case _:
            return " ".join(text.split())


def _bolts(text: str) -> int:
    digits = text.split()[0]
    if not digits.isascii() or not digits.isdigit() or not 1 <= int(digits[:4]) <= 12:
        raise AlignerError(
            "", say("“{text}” is not a number of bolts", text=text), say("give 1 to 12")
        )
    return int(digits)


def _passes(text: str) -> tuple[Ratio, ...]:
    between = r"[;,]"
    if decimal_sign() == ",":
        between = r";|(?<![0-9]),|,(?![0-9])"  # between two digits it is a decimal comma
    shares = [share for share in re.split(between, text) if share.strip()]
    if not shares:
        raise AlignerError("", say("no share of the torque"), say("write “50 %, 100 %”"))
    return tuple(Ratio.typed(share, "%") for share in shares)


def _check_name(sheet: Sheet, place: int, text: str) -> None:
    name = " ".join(text.split())
    if any(each.name == name for at, each in enumerate(sheet.fasteners) if at != place):
        raise AlignerError(
            "", say("“{name}” is on the sheet already", name=name), say("give each its own name")
        )
