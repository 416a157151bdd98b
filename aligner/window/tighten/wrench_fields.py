"""What is asked of a wrench and of an adapter, how it is understood, and how it is shown.

The trap: a bare number takes no unit here. The unit of a scale is what a wrench's numbers mean,
so it must be typed; the graduation alone may leave it out and takes that of the lowest mark.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from pydantic import ValidationError

from aligner.errors import AlignerError
from aligner.job import Adapter, TorqueWrench
from aligner.language import begun, marked, say, written
from aligner.sheet.quantities import Angle, Length, Quantity, Ratio, Torque
from aligner.units import UnreadableQuantity


@dataclass(frozen=True)
class Field:
    """One line of a form.

    Attributes:
        key: of the part's field; "name" for what its owner calls it.
        label: beside it, in English.
        example: likewise; shown in it while it is empty.
        kind: of quantity; `None` for words.
        unit: what a number alone takes; "" asks for one.
        is_needed: whether it must be filled in.
        guide: how it is measured; "" for words.
    """

    key: str
    label: str
    example: str
    kind: type[Quantity] | None = None
    unit: str = ""
    is_needed: bool = False
    guide: str = ""


WRENCH_FIELDS = (
    Field("name", marked("Called"), marked("click wrench"), is_needed=True),
    Field("low", marked("Lowest mark"), "5 N·m", Torque, is_needed=True, guide="wrench_range"),
    Field("high", marked("Highest mark"), "25 N·m", Torque, is_needed=True, guide="wrench_range"),
    Field(
        "graduation",
        marked("Marks apart"),
        marked("0.5 N·m"),
        Torque,
        is_needed=True,
        guide="gauge_step",
    ),
    Field(
        "permissible_deviation", marked("Deviation ±"), "4 %", Ratio, "%", guide="wrench_deviation"
    ),
    Field(
        "lowest_share",
        marked("Not used below"),
        marked("20 %, of the top"),
        Ratio,
        "%",
        guide="wrench_range",
    ),
    Field("grip_length", marked("L, drive to grip"), "215 mm", Length, "mm", guide="lever_length"),
    Field("drive", marked("Drive"), "3/8 in"),
)
ADAPTER_FIELDS = (
    Field("name", marked("Called"), marked("crow's foot"), is_needed=True),
    Field(
        "effective_length",
        marked("E, drive to fastener"),
        "30 mm",
        Length,
        "mm",
        True,
        "lever_length",
    ),
    Field(
        "angle",
        marked("Angle to the wrench"),
        marked("0 to 180 deg"),
        Angle,
        "deg",
        guide="adapter_angle",
    ),
    Field("drive", marked("Drive"), "3/8 in"),
)


class FieldRefused(AlignerError):
    """One line of a form cannot be kept; `key` names it."""

    def __init__(self, key: str, said: str) -> None:
        super().__init__("", said)
        self.key = key


def read_fields(fields: tuple[Field, ...], texts: Mapping[str, str]) -> dict[str, object]:
    """What was typed, by field; empty lines that are not needed are left out.

    Raises:
        FieldRefused: the first line that cannot be read, and why.
    """
    found: dict[str, object] = {}
    scale_unit = ""
    for field in fields:
        text = texts.get(field.key, "").strip()
        if not text:
            if field.is_needed:
                raise FieldRefused(
                    field.key,
                    say(
                        "{field}: it is needed; as “{example}”",
                        field=say(field.label),
                        example=say(field.example),
                    ),
                )
            continue
        if field.kind is None:
            found[field.key] = text
            continue
        try:
            value = field.kind.typed(text, field.unit or scale_unit or None)
        except UnreadableQuantity as refusal:
            raise FieldRefused(field.key, f"{say(field.label)}: {refusal}") from None
        if field.kind is Torque and not scale_unit:
            scale_unit = value.unit
        found[field.key] = value
    return found


def wrench_from(texts: Mapping[str, str], before: TorqueWrench | None) -> tuple[str, TorqueWrench]:
    """Name and wrench as typed.

    Raises:
        FieldRefused: a line cannot be read, or the lines do not fit each other.
    """
    values = read_fields(WRENCH_FIELDS, texts)
    name = str(values.pop("name"))
    if before is not None and before.source:
        values["source"] = before.source
    try:
        wrench = TorqueWrench.model_validate(values)
    except ValidationError as error:
        raise FieldRefused("low", _first_words(error)) from None
    if wrench.doubt is not None:
        key, why = wrench.doubt
        raise FieldRefused(key, begun(str(why)))
    return name, wrench


def adapter_from(
    texts: Mapping[str, str], before: Adapter | None, *, concentric: bool
) -> tuple[str, Adapter]:
    """Name and adapter as typed; a concentric one needs no length.

    Raises:
        FieldRefused: a line cannot be read.
    """
    filled = dict(texts)
    if concentric and not filled.get("effective_length", "").strip():
        filled["effective_length"] = "0 mm"
    values = read_fields(ADAPTER_FIELDS, filled)
    name = str(values.pop("name"))
    angle = values.get("angle")
    if isinstance(angle, Angle) and angle.value > 180:
        raise FieldRefused("angle", say("Angle: from 0, straight out, to 180 deg, folded back"))
    if before is not None and before.source:
        values["source"] = before.source
    return name, Adapter.model_validate({**values, "concentric": concentric})


def wrench_line(wrench: TorqueWrench) -> str:
    """A wrench in one line: "5 N·m to 25 N·m, marks 0.5 N·m apart, ± 4 %, L 215 mm".

    One that is not chosen says why in a second sentence.
    """
    if wrench.doubt is not None:
        return say(
            "{wrench}. Not chosen: {why}.", wrench=_described(wrench), why=str(wrench.doubt[1])
        )
    return _described(wrench)


def _described(wrench: TorqueWrench) -> str:
    parts = [
        say("{low} to {high}", low=wrench.low.said, high=wrench.high.said),
        say("marks {graduation} apart", graduation=wrench.graduation.said),
        f"± {wrench.permissible_deviation.said}",
    ]
    if wrench.lowest_share is not None:
        parts.append(say("used from {share} of the top", share=wrench.lowest_share.said))
    parts.append(f"L {wrench.grip_length.said}" if wrench.grip_length else say("L not measured"))
    if wrench.drive:
        parts.append(say("{size} drive", size=wrench.drive))
    return ", ".join(parts)


def adapter_line(adapter: Adapter) -> str:
    """An adapter in one line."""
    if adapter.concentric:
        parts = [say("concentric: changes nothing in the setting")]
    else:
        angle = f"{written(adapter.angle.value)}°"
        parts = [f"E {adapter.effective_length.said}", say("{angle} to the wrench", angle=angle)]
    if adapter.drive:
        parts.append(say("{size} drive", size=adapter.drive))
    return ", ".join(parts)


def texts_of(part: TorqueWrench | Adapter | None, name: str) -> dict[str, str]:
    """What stands in a form's lines for a part that is to be changed."""
    if part is None:
        return {"name": name}
    keys = {field.key for field in (*WRENCH_FIELDS, *ADAPTER_FIELDS)} - {"name"}
    texts = {key: getattr(part, key, None) for key in keys}
    return {"name": name} | {key: str(value) for key, value in texts.items() if value is not None}


def _first_words(error: ValidationError) -> str:
    first = error.errors()[0]
    cause = first.get("ctx", {}).get("error")
    text = str(cause) if cause is not None else first["msg"]
    return begun(text)
