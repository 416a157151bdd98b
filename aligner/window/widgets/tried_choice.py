"""A choice whose values are looked at before one of them is kept.

The trap: the arrow keys go past values on the way to the one that is meant. The drawing shows each,
and yet none of them may become a step that Undo takes back.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent

from aligner.window.widgets.choice import Choice


class TriedChoice(Choice):
    """A choice that keeps what is shown once it is left.

    Signals:
        tried: another one is looked at by the arrow keys; nothing is kept yet.
        chosen: it is left, gone on from, or picked from the list, and holds another than before.
    """

    tried = Signal(object)

    def __init__(self, name: str) -> None:
        super().__init__(name, letters=6)
        self._kept: object = None
        self._by_key = False

    def go_to_first_empty(self) -> None:
        """Put the keyboard on it, as on a box of readings."""
        self.setFocus(Qt.FocusReason.TabFocusReason)

    def show_value(self, value: object) -> None:
        """Show what the job holds, which is what is being tried while the keys go past it."""
        if not self._by_key:
            self._kept = value
        super().show_value(value)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._keep()
            super().keyPressEvent(event)
            return
        self._by_key = True
        super().keyPressEvent(event)
        self._by_key = self.value != self._kept

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() != Qt.FocusReason.PopupFocusReason:
            self._keep()

    def _take(self) -> None:
        if self._by_key:
            self.tried.emit(self.value)
        else:
            self._keep()

    def _keep(self) -> None:
        self._by_key = False
        if self.currentIndex() >= 0 and self.value != self._kept:
            self._kept = self.value
            self.chosen.emit(self._kept)
