"""The readings of a measured point, the gauge they were taken with, and what they say."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from aligner.assessment.findings import number_words, size_words, verdict_advice
from aligner.assessment.inspection import PlaceStanding
from aligner.drawing.theme import GAP, Theme
from aligner.gauging import Verdict
from aligner.job import Job
from aligner.language import begun, say
from aligner.sheet.quantities import Length
from aligner.units.preferred import Preferred
from aligner.window.inspect.doors import PlaceDoors, gauges_on_offer
from aligner.window.inspect.limit import LimitLine
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.folding_row import FoldingRow
from aligner.window.widgets.labels import label, set_tone
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.reading_box import ReadingBox

_CELLS = 3
#: Width, at 100 % text, from which the limit stands beside the readings.
_BESIDE = 600
#: Width of the readings, at 100 % text, where it does.
_BOX = 280


class NumberEntry(QWidget):
    """Everything with a number to it.

    Signals:
        went_on: Enter after the last field.
    """

    went_on = Signal()

    def __init__(
        self, theme: Theme, show: Preferred, doors: PlaceDoors, standing: PlaceStanding
    ) -> None:
        super().__init__()
        self._show = show
        self._doors = doors
        measure = standing.point.measure
        reading = say(measure.reading) if measure else ""
        self._usual_gauge = say(measure.gauge) if measure else ""
        guide = measure.guide if measure else ""
        self.box = ReadingBox(theme, reading, Length, show.length, _CELLS, guide)
        self.gauge = Choice(say("{point}: gauge", point=standing.title), letters=8)
        self.limit = LimitLine(theme, show, doors, standing.title)
        self.verdict = wrapping("", "strong")
        self.advice = wrapping("", "small")
        with_gauge = QHBoxLayout()
        with_gauge.setSpacing(GAP)
        with_gauge.addWidget(label(say("With", meaning="a gauge")))
        with_gauge.addWidget(self.gauge, 1)
        right = QWidget()
        beside = QVBoxLayout(right)
        beside.setContentsMargins(0, 0, 0, 0)
        beside.setSpacing(GAP)
        beside.addLayout(with_gauge)
        beside.addWidget(self.limit)
        beside.addStretch(1)
        row = FoldingRow(theme, wanted=_BESIDE)
        wide = self.box.maximumWidth()
        self.box.setFixedWidth(theme.px(_BOX))
        row.folded.connect(  # alone in its line, it may be as wide as the line
            lambda is_folded: self.box.setMaximumWidth(wide if is_folded else theme.px(_BOX))
        )
        row.add(self.box, 0, on_top=True)
        row.add(right)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(GAP)
        column.addWidget(row)
        column.addWidget(self.verdict)
        column.addWidget(self.advice)
        self.box.typed.connect(lambda got: doors.draft_readings(got, self._gauge_name()))
        self.box.kept.connect(lambda got: doors.keep_readings(got, self._gauge_name()))
        self.box.went_on.connect(self._after_readings)
        self.gauge.chosen.connect(doors.keep_gauge)
        self.limit.went_on.connect(self.went_on)

    def show_number(self, job: Job, standing: PlaceStanding) -> None:
        """Show the readings and what follows from them."""
        measured = standing.measured
        read = say("not read")
        if measured is not None:
            read = size_words(standing.point, measured.read_mm, self._show)
        self.box.show_readings(standing.found.readings, read)
        self._offer_gauges(job, standing.found.gauge)
        self.limit.show_limit(standing)
        words = number_words(standing, self._show)
        self.verdict.setText(begun(words))
        self.verdict.setVisible(bool(words))
        is_out = measured is not None and measured.verdict is Verdict.OUT
        set_tone(self.verdict, "tone", "attention" if is_out else "")
        advice = verdict_advice(standing)
        self.advice.setText(advice)
        self.advice.setVisible(bool(advice))
        set_tone(self.advice, "tone", "attention" if is_out else "")

    @property
    def has_refused_text(self) -> bool:
        """Whether something typed here cannot be read."""
        return self.box.has_refused_text or self.limit.has_refused_text

    def begin(self) -> None:
        """Put the keyboard in the first empty cell."""
        self.box.go_to_first_empty()

    def _after_readings(self) -> None:
        if self.limit.is_wanted and self.box.first_cell.text().strip():
            self.limit.begin()
        else:
            self.went_on.emit()

    def _offer_gauges(self, job: Job, named: str | None) -> None:
        offered = gauges_on_offer(job)
        if named and named not in offered:
            offered = [named, *offered]
        self.gauge.offer((name, name) for name in offered)
        if named:
            self.gauge.show_value(named)
        elif self.gauge.value is None and offered:
            usual = self._usual_gauge
            self.gauge.show_value(usual if usual in offered else offered[0])

    def _gauge_name(self) -> str:
        return str(self.gauge.value or "")
