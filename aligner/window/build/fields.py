"""Fields of the Build stage that are not readings: a line of words, a choice, a tick in a row.

The trap: a line that is being typed must not be written over by a refresh, and what was typed in it
is kept the moment it is left.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QWheelEvent
from PySide6.QtWidgets import QLineEdit

from aligner.drawing.theme import Theme
from aligner.window.widgets.spoken_choice import SpokenChoice


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


class Choice(SpokenChoice):
    """A choice from a list; the mouse wheel never changes it, and Enter goes on.

    Signals:
        chosen: what was chosen, as it stands in the job.
        went_on: Enter was pressed.
    """

    chosen = Signal(object)
    went_on = Signal()

    def __init__(self, theme: Theme, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.setMinimumHeight(theme.px(34))
        self._choices: list[tuple[object, str]] = []  # Qt would keep a word's kind for its text
        self.activated.connect(lambda place: self.chosen.emit(self._choices[place][0]))

    def show_choice(self, choices: Sequence[tuple[object, str]], chosen: object) -> None:
        """Show what there is to choose from, and what is chosen."""
        if self._choices != list(choices):
            self._choices = list(choices)
            self.clear()
            self.addItems([words for _, words in choices])
        values = [value for value, _ in choices]
        self.setCurrentIndex(values.index(chosen) if chosen in values else 0)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.went_on.emit()
        else:
            super().keyPressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Leave the choice alone: a wheel turned over it is meant for the page."""
        event.ignore()
