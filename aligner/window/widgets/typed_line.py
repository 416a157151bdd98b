"""A line to type in, where a key held down counts once.

The trap: Enter repeats by itself while it is held. What asks first and acts on the next Enter
would then have asked nobody.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QLineEdit


class TypedLine(QLineEdit):
    """A line of text.

    Signals:
        entered: Enter was pressed, once.
        escaped: Escape was pressed.
        left: the line is left.
    """

    entered = Signal()
    escaped = Signal()
    left = Signal()

    def __init__(self, name: str, placeholder: str = "") -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.setPlaceholderText(placeholder)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if not event.isAutoRepeat():
                self.entered.emit()
        elif event.key() == Qt.Key.Key_Escape:
            self.escaped.emit()
        else:
            super().keyPressEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() != Qt.FocusReason.PopupFocusReason:
            self.left.emit()
