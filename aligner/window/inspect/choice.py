"""The three findings to choose from: 1 good, 2 watch, 3 replace, or the arrow keys.

The trap: Enter goes on and must never mark anything, or a person who walks through the list
with it has called every part good.
"""

from __future__ import annotations

from PySide6.QtCore import QPointF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from aligner.drawing.theme import GAP, Theme
from aligner.job.inspect import Finding
from aligner.language import begun, say
from aligner.window.inspect.list import FINDING_KEYS
from aligner.window.inspect.words import given_words

_ORDER = tuple(Finding)


class FindingButton(QPushButton):
    """One finding: its number, its word, and a ring that is filled when it is the one given.

    Signals:
        stepped: an arrow key asks for the finding before (-1) or after (+1) the given one.
        keyed: 1, 2 or 3 was pressed.
        went_on: Enter was pressed.
    """

    stepped = Signal(int)
    keyed = Signal(object)
    went_on = Signal()

    def __init__(self, theme: Theme, finding: Finding, number: int) -> None:
        word = given_words(finding)
        super().__init__(f"{number}   {begun(word)}")
        self._theme = theme
        self.setCheckable(True)
        self.setAccessibleName(say("{finding}, key {number}", finding=word, number=number))

    def sizeHint(self) -> QSize:
        return QSize(super().sizeHint().width(), self._theme.px(54))

    def minimumSizeHint(self) -> QSize:
        return QSize(super().minimumSizeHint().width() + self._theme.px(40), self._theme.px(54))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if event.isAutoRepeat():
            return
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.went_on.emit()
        elif key in FINDING_KEYS:
            self.keyed.emit(FINDING_KEYS[key])
        elif key in (Qt.Key.Key_Right, Qt.Key.Key_Down):
            self.stepped.emit(1)
        elif key in (Qt.Key.Key_Left, Qt.Key.Key_Up):
            self.stepped.emit(-1)
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        r, half = self._theme.px(8), self.fontMetrics().horizontalAdvance(self.text()) / 2
        middle = QPointF(self.width() / 2 - half - self._theme.px(22), self.height() / 2)
        painter.setPen(QPen(self._theme.color("accent" if self.isChecked() else "quiet"), 2))
        painter.drawEllipse(middle, r, r)
        if self.isChecked():
            painter.setBrush(self._theme.color("accent"))
            painter.drawEllipse(middle, r * 0.5, r * 0.5)


class FindingChoice(QWidget):
    """The three findings side by side.

    Signals:
        given: a finding; `None` where the given one was pressed again, which takes it back.
        went_on: Enter was pressed.
    """

    given = Signal(object)
    went_on = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._given: Finding | None = None
        self.buttons = {
            finding: FindingButton(theme, finding, number)
            for number, finding in enumerate(_ORDER, start=1)
        }
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GAP)
        for finding, button in self.buttons.items():
            row.addWidget(button, 1)
            button.clicked.connect(lambda _=False, finding=finding: self._give(finding))
            button.keyed.connect(self._give)
            button.stepped.connect(self._step)
            button.went_on.connect(self.went_on)

    def show_finding(self, finding: Finding | None) -> None:
        """Show which one is given."""
        self._given = finding
        for each, button in self.buttons.items():
            button.setChecked(each is finding)

    def begin(self) -> None:
        """Put the keyboard on the finding given, or on the first."""
        self.buttons[self._given or _ORDER[0]].setFocus(Qt.FocusReason.TabFocusReason)

    def _give(self, finding: Finding) -> None:
        wanted = None if finding is self._given else finding
        self.show_finding(self._given)
        self.given.emit(wanted)
        self.begin()

    def _step(self, by: int) -> None:
        if self._given is None:
            wanted = _ORDER[0] if by > 0 else _ORDER[-1]
        else:
            wanted = _ORDER[min(max(_ORDER.index(self._given) + by, 0), len(_ORDER) - 1)]
        if wanted is not self._given:
            self._give(wanted)
