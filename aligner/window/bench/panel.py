"""The panel of the bench view that takes the keys, and sees to it that a gauge ticks nothing."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent

from aligner.window.widgets.labels import Card, set_tone
from aligner.window.widgets.stray_number import StrayNumber

_ACTS = (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space)


class BenchPanel(Card):
    """A card that the keyboard can stand on.

    Signals:
        acted: Space or Enter went down.
        let_go: it came up again, or the keyboard went elsewhere.
        strayed: a sign of a number was typed here, with the text of it.
    """

    acted = Signal()
    let_go = Signal()
    strayed = Signal(str)

    def __init__(self, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._stray = StrayNumber()
        self.takes_keyboard(True)

    def takes_keyboard(self, takes: bool) -> None:
        """Whether the keyboard can stand here."""
        policy = Qt.FocusPolicy.StrongFocus if takes else Qt.FocusPolicy.NoFocus
        self.setFocusPolicy(policy)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._stray.takes(event):
            if event.key() not in _ACTS:
                self.strayed.emit(event.text())
        elif event.key() in _ACTS:
            if not event.isAutoRepeat():
                self.acted.emit()
        else:
            super().keyPressEvent(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        if event.key() in _ACTS and not event.isAutoRepeat():
            self.let_go.emit()
        super().keyReleaseEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        set_tone(self, "inHand", "true")

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self._stray.forget()
        self.let_go.emit()
        set_tone(self, "inHand", "false")
        super().focusOutEvent(event)
