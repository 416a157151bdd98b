"""A line of words that shows its beginning again once it is left."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent

from aligner.drawing.theme import Theme
from aligner.window.widgets.word_line import WordLine


class NoteLine(WordLine):
    """A line of words; a long text is seen from its first word unless it is typed in."""

    def show_words(self, words: str) -> None:
        """Show what the job holds; what is being typed stays."""
        super().show_words(words)
        if not self.hasFocus():
            self.setCursorPosition(0)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() != Qt.FocusReason.PopupFocusReason:
            self.setCursorPosition(0)


class PartLine(NoteLine):
    """A line of a part; Alt with Up or Down moves the part.

    Signals:
        moved: -1 or 1, after what was typed is kept.
        emptied: it must hold words and was left without; what stood there stands there again.
    """

    moved = Signal(int)
    emptied = Signal()

    def __init__(self, theme: Theme, name: str, hint: str = "", *, needs_words: bool) -> None:
        super().__init__(theme, name, hint)
        self._needs_words = needs_words

    def keyPressEvent(self, event: QKeyEvent) -> None:
        by = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}.get(Qt.Key(event.key()))
        if by is not None and event.modifiers() & Qt.KeyboardModifier.AltModifier:
            self._keep()
            self.moved.emit(by)
        else:
            super().keyPressEvent(event)

    def _keep(self) -> None:
        if self._needs_words and not self.text().strip() and self._kept:
            self.setText(self._kept)
            self.emptied.emit()
        else:
            super()._keep()
