"""What is typed and not kept yet, carried from a page that goes to the one made in its place.

The trap: a page is made anew when the language, the units, the size of text or the colours are
changed. The job keeps what was kept; a text that was refused, a reason half written and a form
half filled in stand in the page alone, and would go with it.

A line is found again by where it stands in its page, since its name may be said in another
language. One that is not there any more, or is of another kind, is left alone. So is a text that
was refused and can be read now: in another unit or language it may mean what nobody meant.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Protocol, runtime_checkable

from PySide6.QtWidgets import QWidget

from aligner.window.widgets.typed_line import TypedLine

#: From the page down: the kind of each widget, and its place among its like, or its own key.
Address = tuple[tuple[str, object], ...]

#: The property of a part that is made when it is first wanted, by which it is known again.
KEY = "typedTextsKey"


@runtime_checkable
class LaysBy(Protocol):
    """A part of a page that knows best what was typed into it."""

    def lay_by(self) -> object:
        """What is typed and not kept; `None` where nothing is."""
        ...

    def take_up(self, laid_by: object) -> None:
        """Show that again, as far as it still belongs here."""
        ...


@dataclass(frozen=True)
class Typed:
    """What was typed into one page and not kept.

    Attributes:
        lines: texts that could not be kept, by where they stood.
        parts: what the parts that lay it by themselves gave, by where they stood.
    """

    lines: dict[Address, str]
    parts: dict[Address, object]


def typed_into(page: QWidget) -> Typed:
    """What is typed into a page and not kept."""
    lines, parts = {}, {}
    for address, widget in _all_in(page):
        if isinstance(widget, LaysBy):
            laid_by = widget.lay_by()
            if laid_by is not None:
                parts[address] = laid_by
        elif isinstance(widget, TypedLine) and widget.is_being_typed:
            lines[address] = widget.text()
    return Typed(lines, parts)


def type_again(page: QWidget, typed: Typed) -> None:
    """Have it stand in a page as if it had just been typed there."""
    for address, widget in list(_all_in(page)):
        if isinstance(widget, LaysBy) and address in typed.parts:
            widget.take_up(typed.parts[address])
        elif address in typed.lines and isinstance(widget, TypedLine):
            widget.type_in(typed.lines[address])
            if widget.property("refused") != "true":
                widget.give_back()


def _all_in(widget: QWidget, address: Address = ()) -> Iterator[tuple[Address, QWidget]]:
    """A page and all in it with where it stands; what lays by itself is not looked into."""
    yield address, widget
    if isinstance(widget, LaysBy):
        return
    count: dict[str, int] = {}
    for child in widget.children():
        if not isinstance(child, QWidget):
            continue
        kind = type(child).__name__
        place = count[kind] = count.get(kind, 0) + 1
        key = child.property(KEY)
        yield from _all_in(child, (*address, (kind, place if key is None else key)))
