"""How each value is measured, loaded when the first is asked for."""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import cache

from PySide6.QtWidgets import QWidget

from aligner.data_files import resource

#: The property of a box that names its guide.
_PROPERTY = "measuring_guide"


@dataclass(frozen=True)
class Guide:
    """How one value is measured.

    Attributes:
        key: what boxes go by.
        title: what is measured.
        how: two sentences.
        sketch: name of the drawing.
        source: where that is from.
    """

    key: str
    title: str
    how: str
    sketch: str
    source: str


@cache
def guides() -> dict[str, Guide]:
    """All guides by their key."""
    rows = json.loads(resource("measuring", "guides.json").read_text(encoding="utf-8"))
    return {row["key"]: Guide(**row) for row in rows}


def measured_by(widget: QWidget, guide: str) -> None:
    """Say by which guide what is typed into a widget, or into anything in it, is measured."""
    widget.setProperty(_PROPERTY, guide)


def guide_key(widget: QWidget | None) -> str:
    """The guide of a widget: its own, or that of the nearest one around it; "" for none."""
    while widget is not None:
        found = widget.property(_PROPERTY)
        if found is not None:
            return str(found)
        widget = widget.parentWidget()
    return ""
