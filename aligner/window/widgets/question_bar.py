"""A question asked in a line of the window itself: no dialog stands in the way."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton

from aligner.language import say
from aligner.window.keyboard_place import KeyboardPlace
from aligner.window.widgets.labels import label

Answer = tuple[str, Callable[[], object]]


class QuestionBar(QFrame):
    """A line with a question and its answers, or with something to be known.

    Signals:
        answered: the person answered, or left the question with Escape.
    """

    answered = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("caution")
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(12, 6, 12, 6)
        self._text = label(wraps=True)
        self._row.addWidget(self._text, 1)
        self._buttons: list[QPushButton] = []
        self._before: KeyboardPlace | None = None
        self.hide()

    @property
    def buttons(self) -> tuple[QPushButton, ...]:
        """The answers on offer."""
        return tuple(self._buttons)

    @property
    def text(self) -> str:
        """What is asked or said; "" when the line is hidden."""
        return self._text.text() if not self.isHidden() else ""

    def ask(self, question: str, answers: Sequence[Answer], *, takes_keyboard: bool = True) -> None:
        """Ask; the first answer has the keyboard. Escape leaves everything as it is.

        Args:
            question: in a sentence or two.
            answers: what each says, and what it does.
            takes_keyboard: not so where the person did nothing to be asked, and may be typing:
                the next Enter would answer unread.
        """
        self.leave()
        self._text.setText(question)
        self.setAccessibleName(question)
        for words, act in answers:
            button = QPushButton(words)
            button.clicked.connect(lambda _, act=act: self._answer(act))
            self._buttons.append(button)
            self._row.addWidget(button)
        self.show()
        if takes_keyboard:
            self.take_keyboard()

    def take_keyboard(self) -> None:
        """Put the keyboard on the first answer, where there is a question."""
        if self._buttons:
            focus = self.window().focusWidget()
            if focus not in self._buttons:
                self._before = KeyboardPlace(focus)
            self._buttons[0].setFocus(Qt.FocusReason.OtherFocusReason)

    def say(self, words: str) -> None:
        """Say something that needs no answer but to be read."""
        self.ask(words, [(say("Understood"), lambda: None)])

    def leave(self) -> None:
        """Take the question away unanswered; the keyboard goes back to where it was."""
        had_keyboard = self.window().focusWidget() in self._buttons
        for button in self._buttons:
            self._row.removeWidget(button)
            button.deleteLater()
        self._buttons = []
        self.hide()
        if had_keyboard and self._before is not None:
            self._before.go_back()
        self._before = None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        focus = self.focusWidget()
        if event.key() == Qt.Key.Key_Escape:
            self.leave()
            self.answered.emit()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and isinstance(
            focus, QPushButton
        ):
            if not event.isAutoRepeat():  # held since before it was asked: nobody has read it
                focus.click()
        else:
            super().keyPressEvent(event)

    def _answer(self, act: Callable[[], object]) -> None:
        self.leave()
        act()
        self.answered.emit()
