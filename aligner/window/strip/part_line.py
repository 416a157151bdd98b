"""A line of a part that came off: it can be moved, and may have to hold words."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent

from aligner.drawing.theme import Theme
from aligner.window.widgets.word_line import WordLine


class PartLine(WordLine):
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
            self.keep()
            self.moved.emit(by)
        else:
            super().keyPressEvent(event)

    def keep(self) -> None:
        """Keep what is typed; a name that was taken away stands there again."""
        if self._needs_words and not self.text().strip() and self.kept_text:
            self.fill(self.kept_text)
            self.emptied.emit()
        else:
            super().keep()
