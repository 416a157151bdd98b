"""The row of plain buttons that says which part of the Strip page is shown."""

from __future__ import annotations

from enum import StrEnum

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QPushButton, QWidget

from aligner.drawing.theme import GAP
from aligner.language import marked, say
from aligner.window.widgets.wrapping_row import WrappingRow


class StripView(StrEnum):
    """What the page shows: the value is the word on its button."""

    AS_FOUND = marked("&As found")
    LOOSEN = marked("&Loosen")
    PARTS = marked("&Parts off")

    @property
    def title(self) -> str:
        """The word without its shortcut mark."""
        return say(self.value).replace("&", "")


class StripViewRow(QWidget):
    """One button for each part; Alt and the marked letter opens it.

    Signals:
        chosen: a part.
    """

    chosen = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self._buttons: dict[StripView, QPushButton] = {}
        row = WrappingRow(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GAP // 2)
        for view in StripView:
            button = QPushButton(say(view.value))
            button.setCheckable(True)
            button.setAccessibleName(say("Show: {part}", part=view.title))
            button.clicked.connect(lambda _=False, view=view: self.chosen.emit(view))
            row.add(button)
            self._buttons[view] = button

    def button(self, view: StripView) -> QPushButton:
        """The button of a part."""
        return self._buttons[view]

    def show_view(self, view: StripView) -> None:
        """Mark the part that is open: its button is pressed in, and says so."""
        for each, button in self._buttons.items():
            button.setChecked(each is view)
            text = say(each.value)
            button.setText(f"✓ {text}" if each is view else text)
            button.setAccessibleDescription(
                say("open", meaning="this part is shown") if each is view else ""
            )
