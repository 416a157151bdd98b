"""The card on which every attempt at the alignment is seen closing on nought.

The trap: a chart says nothing to a screen reader and little across a bench, so each attempt
stands in words under its chart as well.
"""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QPaintEvent, QShowEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from aligner.assessment import Assessment
from aligner.assessment.attempts import AttemptSeries
from aligner.drawing.attempt_chart import ChartPicture, paint_attempts
from aligner.drawing.theme import GAP, Theme
from aligner.job import Job
from aligner.language import marked, say
from aligner.units.preferred import Preferred
from aligner.window.align.attempts_words import allowed_words, attempt_words, chart_of, series_title
from aligner.window.widgets.folding_card import FoldingCard
from aligner.window.widgets.labels import label

_LEGEND = marked(
    "Disc: within. Square: out. Ring: unsettled. Cross: no limit. Dash: not measured. "
    "Whisker: 95 %. Band: allowed by the sheet as it is now."
)


class AttemptChart(QWidget):
    """One chart; paints what it is given."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.theme = theme
        self._picture = ChartPicture((), None, "", "")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(theme.px(160), theme.px(104))

    def show_picture(self, picture: ChartPicture) -> None:
        """Draw this from now on."""
        if picture != self._picture:
            self._picture = picture
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_attempts(painter, self.theme, QRectF(self.rect()), self._picture)


class AttemptColumn(QWidget):
    """A chart with its title above, and each attempt in words below."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.title = label("", "strong")
        self.allowed = label("", "small")
        self.chart = AttemptChart(theme)
        self.lines: list[QLabel] = []
        self._list = QVBoxLayout()
        self._list.setContentsMargins(0, 0, 0, 0)
        self._list.setSpacing(2)
        head = QHBoxLayout()
        head.addWidget(self.title)
        head.addStretch(1)
        head.addWidget(self.allowed)
        self._list.addStretch(1)
        self._halves = QBoxLayout(QBoxLayout.Direction.TopToBottom)
        self._halves.setSpacing(GAP)
        self._halves.addWidget(self.chart, 1)
        self._halves.addLayout(self._list)
        column = QVBoxLayout(self)
        column.setContentsMargins(theme.px(4), theme.px(4), theme.px(4), 0)
        column.setSpacing(2)
        column.addLayout(head)
        column.addLayout(self._halves, 1)

    def set_words_beside(self, are_beside: bool) -> None:
        """Put the words beside the chart, or below it."""
        direction = QBoxLayout.Direction
        self._halves.setDirection(direction.LeftToRight if are_beside else direction.TopToBottom)
        chart, words = (5, 4) if are_beside else (1, 0)
        self._halves.setStretch(0, chart)
        self._halves.setStretch(1, words)

    def show_series(self, series: AttemptSeries, show: Preferred) -> None:
        """Show the attempts at one subject, the newest first in words."""
        title = series_title(series, show)
        said = [attempt_words(series, row, show) for row in reversed(series.rows)]
        self.title.setText(title)
        self.allowed.setText(allowed_words(series, show))
        self.chart.show_picture(chart_of(series, show))
        self.chart.setAccessibleName(say("{title}, every attempt", title=title))
        self.chart.setAccessibleDescription(". ".join(reversed(said)).replace("\n", ", "))
        while len(self.lines) < len(said):
            line = label("", "small", wraps=True)
            self.lines.append(line)
            self._list.insertWidget(self._list.count() - 1, line)
        for place, line in enumerate(self.lines):
            line.setVisible(place < len(said))
            line.setText(said[place] if place < len(said) else "")


class AttemptsCard(FoldingCard):
    """Heights, squareness and legs' plane, attempt by attempt."""

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(theme, say("Attempts, the oldest first"))
        self._show = show
        self._assessment: Assessment | None = None
        self._is_stale = False
        self.setAccessibleName(say("Attempts"))
        self.columns = [AttemptColumn(theme) for _ in range(3)]
        for column in self.columns:
            self.parts.add(column)
            self.parts.folded.connect(column.set_words_beside)
        self.add_parts()
        self.column.addWidget(label(say(_LEGEND), "small", wraps=True))

    def show_job(self, job: Job, assessment: Assessment) -> None:
        """Show the attempts of a job; worked out only while the card is looked at."""
        self._assessment = assessment
        self._is_stale = not self.isVisible()
        if not self._is_stale:
            self._refresh()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._is_stale:
            self._is_stale = False
            self._refresh()

    def _refresh(self) -> None:
        if self._assessment is None:
            return
        for column, series in zip(self.columns, self._assessment.attempts, strict=True):
            column.show_series(series, self._show)
