"""The head bearing's later adjustments: when, what and why, each in a row that is kept as typed."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QPushButton, QVBoxLayout, QWidget

from aligner.drawing.theme import GAP, Theme
from aligner.job import Job
from aligner.language import say
from aligner.window.widgets.labels import label
from aligner.window.widgets.word_line import WordLine


class Adjustments(QWidget):
    """Rows of adjustments, and the button for one more.

    Signals:
        typed: place, field and words, while they are typed. kept: when they are left.
        wanted: one more row. unwanted: the place of a row to be taken out.
        rows_made: a row came.
    """

    typed = Signal(int, str, str)
    kept = Signal(int, str, str)
    wanted = Signal()
    unwanted = Signal(int)
    rows_made = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._rows: list[tuple[QWidget, ...]] = []
        self.add = QPushButton(say("Log an adjustment after a road test"))
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(GAP)
        self._grid.setColumnStretch(1, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(self._grid)
        column.addWidget(self.add, 0, Qt.AlignmentFlag.AlignLeft)
        self.add.clicked.connect(self._add)

    def walk(self) -> list[QWidget]:
        """What the keyboard can reach, in the order the eye goes."""
        fields = [widget for row in self._rows for widget in row[1:]]
        return [*fields, self.add]

    def line(self, place: int, field: str) -> WordLine:
        """The line for "what" or "why" of one adjustment."""
        found = self._rows[place][1 if field == "what" else 2]
        if not isinstance(found, WordLine):
            raise TypeError(field)
        return found

    def show_job(self, job: Job) -> None:
        """Show a job's adjustments."""
        made = job.build.bearing.adjustments
        while len(self._rows) > len(made):
            for widget in self._rows.pop():
                self._grid.removeWidget(widget)
                widget.hide()
                widget.deleteLater()
        while len(self._rows) < len(made):
            self._make_row(len(self._rows))
        for place, adjustment in enumerate(made):
            on = self._rows[place][0]
            on.setText(str(adjustment.on))  # type: ignore[attr-defined]
            self.line(place, "what").show_kept(adjustment.what)
            self.line(place, "why").show_kept(adjustment.why)

    def _make_row(self, place: int) -> None:
        number = place + 1
        what = WordLine(
            self._theme,
            say("adjustment {number}: what was changed", number=number),
            say("what was changed"),
        )
        why = WordLine(
            self._theme,
            say("adjustment {number}: why", number=number),
            say("why: what the road test showed"),
        )
        out = QPushButton(say("Take out"))
        out.setAccessibleName(say("Take out adjustment {number}", number=number))
        for field, line in (("what", what), ("why", why)):
            line.typed.connect(lambda text, field=field: self.typed.emit(place, field, text))
            line.kept.connect(lambda text, field=field: self.kept.emit(place, field, text))
        what.went_on.connect(lambda: why.setFocus(Qt.FocusReason.TabFocusReason))
        why.went_on.connect(lambda: self.add.setFocus(Qt.FocusReason.TabFocusReason))
        out.clicked.connect(lambda: self.unwanted.emit(place))
        row = (label("", "quiet"), what, why, out)
        for turn, widget in enumerate((row[0], what, out, why)):
            self._grid.addWidget(widget, 2 * place + turn // 2, turn % 2)
            widget.show()  # or the keyboard could not go there yet
        self._rows.append(row)
        self.rows_made.emit()

    def _add(self) -> None:
        self.wanted.emit()
        if self._rows:
            self.line(len(self._rows) - 1, "what").setFocus(Qt.FocusReason.OtherFocusReason)
