"""What stands where the step in hand would: all done, or nothing to tighten and what is missing."""

from __future__ import annotations

from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QPushButton, QSizePolicy, QWidget

from aligner.assessment import StageState
from aligner.assessment.tightening import TighteningAssessment
from aligner.drawing.theme import Theme, TypeSize
from aligner.job import Job
from aligner.language import say
from aligner.window.stage_list import draw_mark
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.large_words import LargeWords


class RestCard(Card):
    """The list finished, or the list empty.

    Signals:
        sheet_wanted: the fasteners are to be given, on the Bike stage.
    """

    sheet_wanted = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.setProperty("inHand", True)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Expanding)
        self._mark = _Mark(theme)
        self.big = LargeWords(theme, TypeSize.HUGE)
        self.first = label("", "strong", wraps=True)
        self.more = label("", "text", wraps=True)
        self.go = QPushButton(say("Go to Bike"))
        self.go.clicked.connect(self.sheet_wanted)
        self.column.addStretch(1)
        for widget in (self._mark, self.big, self.first, self.more):
            self.column.addWidget(widget)
        self.column.addWidget(self.go, 0, Qt.AlignmentFlag.AlignLeft)
        self.column.addStretch(2)

    def show_finished(self, job: Job, tightening: TighteningAssessment) -> None:
        """Everything is done: how many steps, what was out of order, what comes again."""
        count = len(tightening.steps)
        self._mark.show()
        self.big.say(say("{done} of {all}", done=count, all=count))
        self.first.setText(say("Every step is ticked."))
        reasons = [
            f"{each.step.title}: {each.entry.reason}"
            for each in tightening.steps
            if each.entry is not None and each.entry.reason
        ]
        parts = []
        if reasons:
            lines = [say("With a reason, out of order or not passed: {count}", count=len(reasons))]
            lines += reasons[:4]
            if len(reasons) > 4:
                lines.append(say("and {count} more, on the job card", count=len(reasons) - 4))
            parts.append("\n".join(lines))
        parts.append(_again_words(job))
        parts.append(say("Choose any step in the list to see when and how it was done."))
        self.more.setText("\n\n".join(part for part in parts if part))
        self.go.hide()
        self._show_words()

    def show_empty(self, why: str) -> None:
        """Nothing to tighten, and what would give a list."""
        self._mark.hide()
        self.big.say(say("No list yet"))
        self.first.setText(why)
        self.more.setText(
            say(
                "The list is made from the fasteners on the sheet: each bolt, nut and cap with its "
                "torque from the maker's manual. Give them on the Bike stage, or start there from "
                "a pattern and fill in the torques."
            )
        )
        self.go.show()
        self._show_words()

    def _show_words(self) -> None:
        self.setAccessibleName(f"{self.big.text}. {self.first.text()}")
        self.first.setVisible(bool(self.first.text()))


class _Mark(QWidget):
    """The mark of a thing done, large."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self.setFixedHeight(theme.px(72))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        radius = self._theme.px(30)
        middle = QPointF(radius + 2, self.height() / 2)
        draw_mark(painter, self._theme, StageState.DONE, middle, radius)


def _again_words(job: Job) -> str:
    names = [each.name for each in job.sheet.fasteners if each.again_after is not None]
    if not names:
        return ""
    distances = {each.again_after.said for each in job.sheet.fasteners if each.again_after}
    fasteners = ", ".join(names)
    if len(distances) == 1:
        return say(
            "Checked again after {distance}: {fasteners}. The Prove stage keeps that list.",
            distance=distances.pop(),
            fasteners=fasteners,
        )
    return say(
        "Checked again after the road test: {fasteners}. The Prove stage keeps that list.",
        fasteners=fasteners,
    )
