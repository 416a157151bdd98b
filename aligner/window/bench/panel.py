"""The panel of the bench view that takes the keys, and sees to it that a gauge ticks nothing.

The trap: a gauge types digits and Enter at a step that takes no reading. That Enter would tick
it. So an Enter that follows digits nobody asked for is swallowed.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent

from aligner.window.widgets.labels import Card, set_tone

_ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
_NUMBER = "0123456789.,+-−"


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
        self._has_stray_digits = False
        self.takes_keyboard(True)

    def takes_keyboard(self, takes: bool) -> None:
        """Whether the keyboard can stand here."""
        policy = Qt.FocusPolicy.StrongFocus if takes else Qt.FocusPolicy.NoFocus
        self.setFocusPolicy(policy)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in _ENTER and self._has_stray_digits:
            self._has_stray_digits = False
        elif event.key() in (*_ENTER, Qt.Key.Key_Space):
            self._has_stray_digits = False
            if not event.isAutoRepeat():
                self.acted.emit()
        elif event.text() and event.text() in _NUMBER:
            self._has_stray_digits = True
            self.strayed.emit(event.text())
        else:
            super().keyPressEvent(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        if event.key() in (*_ENTER, Qt.Key.Key_Space) and not event.isAutoRepeat():
            self.let_go.emit()
        super().keyReleaseEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        set_tone(self, "inHand", "true")

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self._has_stray_digits = False
        self.let_go.emit()
        set_tone(self, "inHand", "false")
        super().focusOutEvent(event)
