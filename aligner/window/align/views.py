"""The row of plain buttons that says what the right half of the Align page shows."""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QPushButton, QWidget

from aligner.drawing.theme import GAP
from aligner.language import marked, say
from aligner.window.widgets.wrapping_row import WrappingRow


class View(StrEnum):
    """What the right half of the page shows: the value is the word on its button, in English."""

    READINGS = marked("&Readings")
    POINTS = marked("&Points")
    GAUGES = marked("&Gauges")
    ROAD = marked("On the r&oad")
    ATTEMPTS = marked("A&ttempts")

    @property
    def words(self) -> str:
        """What its button says, without the mark of its letter."""
        return self.marked_words.replace("&", "")

    @property
    def marked_words(self) -> str:
        """What its button says, with the mark of its letter."""
        return say(self.value)


def as_the_eye_goes(stops: Iterable[QWidget], here: QWidget | None, step: int) -> QWidget | None:
    """The next place for the keyboard from here; `None` at either end.

    Args:
        stops: every place in order, those that are hidden or disabled with them.
        here: where the keyboard is.
        step: 1 for the next, -1 for the one before.
    """
    shown = [stop for stop in stops if stop is here or (stop.isVisible() and stop.isEnabled())]
    if here not in shown:
        return None
    place = shown.index(here) + step
    return shown[place] if 0 <= place < len(shown) else None


def beyond(page: QWidget, step: int) -> QWidget | None:
    """The first place for the keyboard after a page, or before it; `None` if there is none."""
    there: QWidget | None = page
    while there is not None:
        there = there.nextInFocusChain() if step > 0 else there.previousInFocusChain()
        if there is page or there is None:
            break
        takes_it = there.focusPolicy() & Qt.FocusPolicy.TabFocus
        if takes_it and there.isVisible() and there.isEnabled() and not page.isAncestorOf(there):
            return there
    return None


class _ViewButton(QPushButton):
    def keyPressEvent(self, event: QKeyEvent) -> None:
        match event.key():
            case Qt.Key.Key_Return | Qt.Key.Key_Enter if not event.isAutoRepeat():
                self.click()
            case Qt.Key.Key_Right:
                self.focusNextChild()
            case Qt.Key.Key_Left:
                self.focusPreviousChild()
            case _:
                super().keyPressEvent(event)


class ViewRow(QWidget):
    """One button for each view; Tab and the arrow keys walk them.

    Alt and the marked letter opens one.

    Signals:
        chosen: a view.
    """

    chosen = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self._buttons: dict[View, QPushButton] = {}
        row = WrappingRow(self, GAP // 2)
        for view in View:
            button = _ViewButton(view.marked_words)
            button.setCheckable(True)
            button.setAccessibleName(say("Show: {view}", view=view.words))
            button.clicked.connect(lambda _=False, view=view: self.chosen.emit(view))
            row.add(button)
            self._buttons[view] = button
        self.show_view(View.READINGS)

    def button(self, view: View) -> QPushButton:
        """The button of a view."""
        return self._buttons[view]

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops."""
        return list(self._buttons.values())

    def show_view(self, view: View) -> None:
        """Mark the view that is open: its button is pressed in, and says so."""
        for each, button in self._buttons.items():
            button.setChecked(each is view)
            words, is_open = each.marked_words, say("open", meaning="a view")
            button.setText(f"✓ {words}" if each is view else words)
            button.setAccessibleDescription(is_open if each is view else "")
