"""A choice of the sheet, a button, and how Enter goes from box to box.

The trap: the wheel over a list of choices changes it unseen while the page is scrolled.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import QEvent, QPointF, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QComboBox, QPushButton

from aligner.drawing.theme import Theme
from aligner.window.bike.boxes import HEIGHT, ValueBox
from aligner.window.widgets.spoken_choice import SpokenChoice

#: The arrow of a choice is drawn by the box itself, in the theme's colour.
_NO_BUTTON = (
    "QComboBox::drop-down { border: none; width: 22px; } QComboBox::down-arrow { image: none; }"
)


class ChoiceBox(SpokenChoice):
    """A choice; the wheel passes over it, and Enter goes on.

    Signals:
        chosen: what stands for the answer that a person took.
        went_on: Enter was pressed.
    """

    chosen = Signal(object)
    went_on = Signal()

    def __init__(self, theme: Theme, name: str, answers: Sequence[tuple[str, object]] = ()) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.setMinimumHeight(theme.px(HEIGHT))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.setMinimumContentsLength(8)
        self._answers: list[object] = []
        self._theme = theme
        self.setStyleSheet(_NO_BUTTON)
        self.offer(answers)
        self.activated.connect(lambda at: self.chosen.emit(self._answers[at]))

    @property
    def answer(self) -> object:
        """What stands for the answer shown; `None` if there is none."""
        at = self.currentIndex()
        return self._answers[at] if 0 <= at < len(self._answers) else None

    def offer(self, answers: Sequence[tuple[str, object]]) -> None:
        """Offer these answers, each its words and what stands for it."""
        words = [text for text, _ in answers]
        if words == [self.itemText(at) for at in range(self.count())]:
            self._answers = [stands_for for _, stands_for in answers]
            return
        shown = self.answer
        self._answers = [stands_for for _, stands_for in answers]
        self.clear()
        self.addItems(words)
        self.show_answer(shown)

    def show_answer(self, answer: object) -> None:
        """Show an answer without taking it."""
        at = self._answers.index(answer) if answer in self._answers else -1
        if self.currentIndex() != at:
            self.setCurrentIndex(at)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.went_on.emit()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        half = self._theme.px(5)
        x, y = self.width() - 3 * half, self.height() / 2 - half / 2
        painter.setPen(QPen(self._theme.color("quiet"), 2))
        painter.drawPolyline([QPointF(x - half, y), QPointF(x, y + half), QPointF(x + half, y)])

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Wheel:
            event.ignore()
            return False
        return super().event(event)


class PressButton(QPushButton):
    """A button that Enter presses like Space."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.isAutoRepeat():
            self.click()
        else:
            super().keyPressEvent(event)


def walk_down(boxes: Sequence[ValueBox | ChoiceBox]) -> None:
    """Let Enter go from each box to the next."""
    for box, following in pairwise(boxes):
        box.went_on.connect(
            lambda following=following: following.setFocus(Qt.FocusReason.TabFocusReason)
        )
