"""A line of words.

The trap: a line that is being typed must not be written over by a refresh, and what was typed in it
is kept the moment it is left.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QLineEdit

from aligner.drawing.theme import Theme


class WordLine(QLineEdit):
    """A line of words. Enter goes on; Escape gives back what stood there.

    Signals:
        typed: the words while they are typed.
        kept: the words when the line is left.
        went_on: Enter was pressed.
    """

    typed = Signal(str)
    kept = Signal(str)
    went_on = Signal()

    def __init__(self, theme: Theme, name: str, hint: str = "") -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.setPlaceholderText(hint)
        self.setMinimumHeight(theme.px(34))
        self._kept = ""
        self.textEdited.connect(lambda text: self.typed.emit(text.strip()))

    def show_words(self, words: str) -> None:
        """Show what the job holds; what is being typed stays."""
        if self.text() == self._kept:
            self._kept = words
            if self.text() != words:
                self.setText(words)

    def forget_typing(self) -> None:
        """From here on the line shows what the job holds."""
        self._kept = self.text()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._keep()
            self.went_on.emit()
        elif event.key() == Qt.Key.Key_Escape and self.text() != self._kept:
            self.setText(self._kept)
            self.typed.emit(self._kept)
        else:
            super().keyPressEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() != Qt.FocusReason.PopupFocusReason:
            self._keep()

    def _keep(self) -> None:
        if self.text() != self._kept:
            words = self.text().strip()
            self._kept = self.text()
            self.kept.emit(words)
            self.show_words(words)
