"""A line of words that sees to its own keeping."""

from __future__ import annotations

from PySide6.QtCore import Signal

from aligner.drawing.theme import Theme
from aligner.window.widgets.typed_line import TypedLine


class WordLine(TypedLine):
    """A line of words, kept when it is left and before Enter goes on.

    Signals:
        typed: the words while they are typed.
        kept: the words, where they are others than before.
    """

    typed = Signal(str)
    kept = Signal(str)

    def __init__(self, theme: Theme, name: str, hint: str = "") -> None:
        super().__init__(name, hint)
        self.setMinimumHeight(theme.px(34))
        self.textEdited.connect(lambda text: self.typed.emit(text.strip()))
        self.went_on.connect(self.keep)
        self.left.connect(self.keep)

    def keep(self) -> None:
        """Keep what is typed."""
        if self.is_being_typed:
            words = self.text().strip()
            self.end_typing()
            self.kept.emit(words)
            self.show_kept(words)
