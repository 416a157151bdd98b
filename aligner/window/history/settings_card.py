"""What was set on one bike each time, as small charts with the values in words."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from pathlib import Path

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QGridLayout, QWidget

from aligner.assessment.settings_history import SettingSeries, last_day, settings_history
from aligner.drawing.history_chart import HistoryPoint, paint_history
from aligner.drawing.strokes import words
from aligner.drawing.theme import GAP, Theme
from aligner.errors import AlignerError
from aligner.job import Job
from aligner.language import say, say_count
from aligner.storage.document_file import load_job
from aligner.units.shown import rounded
from aligner.window.widgets.labels import Card, label

#: Jobs of one bike that are looked at, the latest of them.
MOST_JOBS = 24
_IN_A_ROW = 4
_DECIMALS = {"mm": 1, "ml": 0, "%": 0, "N·m": 2}


class SettingChart(QWidget):
    """One setting over the years."""

    def __init__(self, theme: Theme, series: SettingSeries) -> None:
        super().__init__()
        self._theme = theme
        self._series = series
        self.setMinimumHeight(theme.px(92))
        said = "; ".join(f"{day}: {self._in_words(value)}" for day, value in series.points)
        self.setAccessibleName(f"{series.name}: {said}")
        self.setToolTip(said)

    def _in_words(self, value: float) -> str:
        return f"{rounded(value, _DECIMALS.get(self._series.unit, 1))} {self._series.unit}"

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        line = self._theme.px(22)
        head = QRectF(0, 0, self.width(), line)
        words(painter, self._theme, head, self._series.name, role="quiet")
        box = QRectF(0, line, self.width(), self.height() - line)
        points = [HistoryPoint(day, value) for day, value in self._series.points]
        paint_history(painter, self._theme, box, points, None, self._in_words)


class SettingsCard(Card):
    """The charts of one bike; says so where nothing was set yet."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._shown: tuple[Path, ...] = ()
        self._title = label("", "strong", wraps=True)
        self.column.addWidget(self._title)
        self._grid = QGridLayout()
        self._grid.setSpacing(GAP)
        self.column.addLayout(self._grid)
        self.charts: list[SettingChart] = []

    def show_bike(self, bike: str, paths: Sequence[Path]) -> None:
        """Show what was set in these jobs of a bike; one that cannot be read is passed over."""
        self.show()
        if tuple(paths) == self._shown:
            return
        self._shown = tuple(paths)
        for chart in self.charts:
            self._grid.removeWidget(chart)
            chart.deleteLater()
        jobs = _latest(paths)
        series = settings_history(jobs)
        self.charts = [SettingChart(self._theme, each) for each in series[: 2 * _IN_A_ROW]]
        for place, chart in enumerate(self.charts):
            self._grid.addWidget(chart, place // _IN_A_ROW, place % _IN_A_ROW)
        what = say("nothing was set in its jobs yet")
        if series:
            what = say_count(
                "what was set in {count} job", "what was set in {count} jobs", len(jobs)
            )
        self._title.setText(f"{bike}: {what}")


def _latest(paths: Sequence[Path]) -> list[Job]:
    jobs = []
    for path in paths:
        try:
            jobs.append(load_job(path)[0])
        except AlignerError:
            continue
    return sorted(jobs, key=lambda job: last_day(job) or date.min)[-MOST_JOBS:]
