"""What earlier jobs said of a place, with the history of its number as a small chart."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from aligner.assessment.findings import carried_words, size_words
from aligner.assessment.inspection import PlaceStanding, limit_in_terms_mm, measured_value_mm
from aligner.drawing.history_chart import HistoryLimit, HistoryPoint, paint_history
from aligner.drawing.theme import ROOM, Theme
from aligner.job.inspection_points import LimitKind
from aligner.language import say
from aligner.units.preferred import Preferred
from aligner.window.widgets.labels import label
from aligner.window.widgets.page import wrapping


class HistoryChart(QWidget):
    """The numbers of one place by their dates."""

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._theme = theme
        self._show = show
        self._standing: PlaceStanding | None = None
        self.setFixedHeight(theme.px(112))
        self.setMinimumWidth(theme.px(250))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_history(self, standing: PlaceStanding) -> None:
        """Show a place's numbers; hidden where there is none from an earlier job."""
        self._standing = standing
        self.setVisible(any(each.readings and each.on for each in standing.carried))
        said = "; ".join(
            f"{on}: {size_words(standing.point, value, self._show)}"
            for on, value in standing.history
        )
        self.setAccessibleName(say("history: {values}", values=said))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        standing = self._standing
        if standing is None or standing.point.measure is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        value = limit_in_terms_mm(standing.point.measure, standing.limit)
        is_most = standing.point.measure.limit is LimitKind.MOST
        paint_history(
            painter,
            self._theme,
            QRectF(self.rect()),
            [HistoryPoint(on, number) for on, number in standing.history],
            HistoryLimit(value, is_most) if value is not None else None,
            lambda number: size_words(standing.point, number, self._show),
        )


class CarriedCard(QFrame):
    """On top of a place: what earlier jobs left to be looked at again."""

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._show = show
        self.setObjectName("caution")
        self.said = wrapping("")
        self.said.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.chart = HistoryChart(theme, show)
        row = QHBoxLayout(self)
        row.setContentsMargins(12, 6, 12, 6)
        row.setSpacing(ROOM)
        text = QVBoxLayout()
        text.setSpacing(2)
        text.addWidget(label(say("From earlier jobs"), "strong"))
        text.addWidget(self.said, 1)
        row.addLayout(text, 1)
        row.addWidget(self.chart, 1)

    def show_carried(self, standing: PlaceStanding) -> None:
        """Show what a place has from earlier jobs; hidden where it has nothing."""
        self.setVisible(bool(standing.carried))
        if not standing.carried:
            return
        measure = standing.point.measure
        lines = [
            carried_words(
                standing.point,
                each,
                measured_value_mm(measure, each.readings) if measure else None,
                self._show,
            )
            for each in reversed(standing.carried)
        ]
        self.said.setText("\n".join(lines))
        self.setAccessibleName(f"{say('From earlier jobs')}: {'; '.join(lines)}")
        self.chart.show_history(standing)
