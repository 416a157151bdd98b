"""A line that says what has just happened, and leaves the keyboard where it is."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton

from aligner.language import say
from aligner.window.widgets.labels import label


class SaidLine(QFrame):
    """What was done, or why it was not; hidden until there is something to say."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("card")
        self.setProperty("inHand", True)
        self._words = label(wraps=True)
        self.button = QPushButton(say("Put away"))
        self.button.clicked.connect(self.leave)
        line = QHBoxLayout(self)
        line.setContentsMargins(12, 6, 12, 6)
        line.addWidget(self._words, 1)
        line.addWidget(self.button)
        self.hide()

    @property
    def text(self) -> str:
        """What is said; "" when the line is hidden."""
        return self._words.text() if not self.isHidden() else ""

    def say(self, words: str) -> None:
        """Say this in place of what was said before."""
        self._words.setText(words)
        self.setAccessibleName(words)
        self.show()

    def leave(self) -> None:
        """Take the line away."""
        self.hide()
