"""The questions of a pattern, one a row, each with its answers side by side."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QButtonGroup, QGridLayout, QHBoxLayout, QLabel, QPushButton, QWidget

from aligner.drawing.theme import ROOM, Theme
from aligner.language import say
from aligner.sheet.patterns import Question, questions
from aligner.window.bike.boxes import HEIGHT, ValueBox
from aligner.window.widgets.labels import label
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.wrapping_row import WrappingRow


class _Answer(QPushButton):
    """One answer: a filled ring where it is taken. Enter goes on to the next question."""

    went_on = Signal()

    def __init__(self, title: str) -> None:
        super().__init__(f"○ {title}")
        self.setCheckable(True)
        self.toggled.connect(lambda is_on: self.setText(f"{'●' if is_on else '○'} {title}"))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.went_on.emit()
        else:
            super().keyPressEvent(event)


class ChoiceRows(QWidget):
    """The questions of a pattern, one a row; Left and Right choose, Enter goes on.

    Signals:
        changed: another answer was taken.
        went_on: Enter was pressed in the last row.
    """

    changed = Signal()
    went_on = Signal()

    def __init__(self, theme: Theme, *lines: ValueBox) -> None:
        """Make the rows.

        Args:
            theme: sizes.
            lines: what is typed before the questions, in line with their answers.
        """
        super().__init__()
        self.answers: dict[str, dict[str, QPushButton]] = {}
        self._groups: dict[str, QButtonGroup] = {}
        self._abouts: dict[str, QLabel] = {}
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setVerticalSpacing(4)
        grid.setHorizontalSpacing(ROOM)
        grid.setColumnStretch(1, 1)
        for row, box in enumerate(lines):
            box.setMaximumWidth(theme.px(420))
            title = label(box.name)
            title.setMinimumHeight(theme.px(HEIGHT))
            grid.addWidget(title, row, 0, Qt.AlignmentFlag.AlignTop)
            line = QHBoxLayout()  # its words under it wrap at its own width, not at the grid's
            line.addWidget(box, 1)
            line.addStretch(0)
            grid.addLayout(line, row, 1)
        asked = questions()
        row = len(lines)
        for question in asked:
            grid.addWidget(label(say(question.ask)), row, 0)
            grid.addLayout(self._row(question, theme), row, 1)
            row += 1
            if any(option.about for option in question.options):
                self._abouts[question.question] = wrapping("", "small")
                grid.addWidget(self._abouts[question.question], row, 1)
                row += 1
        names = [question.question for question in asked]
        for name, following in zip(names, [*names[1:], ""], strict=True):
            for answer in self.answers[name].values():
                answer.went_on.connect(lambda following=following: self._go_on(following))
        self._say_about()

    @property
    def choices(self) -> dict[str, str]:
        """The option taken, by question."""
        return {
            name: next(option for option, answer in answers.items() if answer.isChecked())
            for name, answers in self.answers.items()
        }

    def show_choices(self, choices: dict[str, str]) -> None:
        """Take these answers."""
        for name, option in choices.items():
            self.answers[name][option].setChecked(True)
        self._say_about()

    def go_to_first(self) -> None:
        """Put the keyboard on the first question."""
        self._go_on(next(iter(self.answers)))

    def _row(self, question: Question, theme: Theme) -> WrappingRow:
        line = WrappingRow(spacing=4)
        group = QButtonGroup(self)
        made: dict[str, QPushButton] = {}
        for option in question.options:
            answer = _Answer(say(option.title))
            answer.setAccessibleName(f"{say(question.ask)}: {say(option.title)}")
            answer.setAccessibleDescription(say(option.about))
            answer.setMinimumHeight(theme.px(HEIGHT))
            group.addButton(answer)
            line.add(answer)
            made[option.name] = answer
        next(iter(made.values())).setChecked(True)
        group.buttonClicked.connect(lambda _: self._changed())
        self._groups[question.question] = group
        self.answers[question.question] = made
        return line

    def _changed(self) -> None:
        self._say_about()
        self.changed.emit()

    def _say_about(self) -> None:
        chosen = self.choices
        for question in questions():
            if question.question in self._abouts:
                about = say(question.option(chosen[question.question]).about)
                self._abouts[question.question].setText(about)
                self._abouts[question.question].setVisible(bool(about))

    def _go_on(self, name: str) -> None:
        if not name:
            self.went_on.emit()
            return
        taken = self._groups[name].checkedButton()
        taken.setFocus(Qt.FocusReason.TabFocusReason)
