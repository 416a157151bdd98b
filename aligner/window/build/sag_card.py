"""The card for the sag: five lengths along the leg, what they come to, and the preload change."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from aligner.assessment.build import BuildAssessment
from aligner.assessment.readings import mean_mm
from aligner.drawing.theme import Theme
from aligner.gauging import Verdict
from aligner.job import Job
from aligner.job.listed_gauges import gauge_choices
from aligner.language import marked, say
from aligner.sheet.quantities import Length
from aligner.units.preferred import Preferred
from aligner.window.build.results import sag_words
from aligner.window.build.spring_words import change_tone, change_words
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.folding_grid import FoldingGrid, titled
from aligner.window.widgets.labels import Card, label, set_tone
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.reading_box import ReadingBox, one_of

_BOXES = (
    ("extended", marked("extended"), "sag_extended"),
    ("static_down", marked("alone, pushed down"), "sag_pushed"),
    ("static_up", marked("alone, lifted"), "sag_lifted"),
    ("rider_down", marked("rider, pushed down"), "sag_pushed"),
    ("rider_up", marked("rider, lifted"), "sag_lifted"),
)
_AFTER_THE_GAUGE = "rider_down"
_HOW = marked(
    "The same two marks along the leg each time. Extended: front wheel off the ground. Then "
    "pushed down and let up slowly, lifted and let down slowly: friction lies between the two."
)


class SagCard(Card):
    """The sag's lengths.

    Signals:
        typed: which length and its readings, while they are typed. kept: when they are left.
        gauge_chosen: the gauge's name.
        spacer_typed: the spacer that was in, while it is typed. spacer_kept: when it is left.
        went_on: Enter after the last box.
    """

    typed = Signal(str, object)
    kept = Signal(str, object)
    gauge_chosen = Signal(object)
    spacer_typed = Signal(object)
    spacer_kept = Signal(object)
    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(say("Sag, once the machine stands on its wheels"))
        self._show = show
        self.gauge = Choice(say("gauge of the sag lengths"))
        self.boxes = {
            name: ReadingBox(theme, say(words), Length, show.length, 2, guide)
            for name, words, guide in _BOXES
        }
        with_gauge = titled(label(say("read with"), "small"), self.gauge)
        grid = FoldingGrid(theme, 3)
        for name, box in self.boxes.items():
            if name == _AFTER_THE_GAUGE:
                grid.add(with_gauge)
            grid.add(box)
        self.spacer = ReadingBox(
            theme, say("spacer while the sag was read"), Length, show.length, 1, "spacer"
        )
        grid.add(self.spacer)
        self.static = label("", "text", wraps=True)
        self.rider = label("", "strong", wraps=True)
        self.new_spacer = label("", "strong", wraps=True)
        self.notices = label("", "text", wraps=True, tone="attention")
        self.column.addWidget(wrapping(say(_HOW), "quiet"))
        self.column.addWidget(grid)
        for said in (self.static, self.rider, self.new_spacer, self.notices):
            self.column.addWidget(said)
        names = list(self.boxes)
        for name, box in self.boxes.items():
            box.typed.connect(lambda found, name=name: self.typed.emit(name, found))
            box.kept.connect(lambda found, name=name: self.kept.emit(name, found))
        for name, following in pairwise(names):
            self.boxes[name].went_on.connect(self.boxes[following].go_to_first_empty)
        self.boxes[names[-1]].went_on.connect(self.spacer.go_to_first_empty)
        self.spacer.went_on.connect(self.went_on)
        self.spacer.typed.connect(lambda found: self.spacer_typed.emit(one_of(found)))
        self.spacer.kept.connect(lambda found: self.spacer_kept.emit(one_of(found)))
        self.gauge.chosen.connect(self.gauge_chosen)
        self.gauge.went_on.connect(self.boxes["extended"].go_to_first_empty)

    def walk(self) -> list[QWidget]:
        """Where the keyboard stops, as the eye goes: the gauge begins the second row."""
        stops: list[QWidget] = []
        for name, box in self.boxes.items():
            stops += [self.gauge] if name == _AFTER_THE_GAUGE else []
            stops += box.cells
        return [*stops, *self.spacer.cells]

    def show_job(self, job: Job, found: BuildAssessment) -> None:
        """Show a job's lengths and what they come to."""
        lengths = job.build.sag
        self.gauge.offer(gauge_choices(job, lengths.gauge))
        self.gauge.show_value(lengths.gauge)
        for name, box in self.boxes.items():
            readings = getattr(lengths, name)
            mean = say("not read")
            if readings:
                mean = self._show.show_length(mean_mm(readings))
            box.show_readings(readings, mean)
        spacer = lengths.spacer
        self.spacer.show_readings((spacer,) if spacer else (), spacer.said if spacer else "?")
        sag = found.sag
        for said, name, under in (
            (self.static, "static", sag.static),
            (self.rider, "rider", sag.rider),
        ):
            said.setText(sag_words(name, under, self._show))
            set_tone(said, "tone", "attention" if under.verdict is Verdict.OUT else "")
        self.new_spacer.setText(change_words(found, self._show))
        set_tone(self.new_spacer, "tone", change_tone(found))
        self.new_spacer.setVisible(bool(self.new_spacer.text()))
        self.notices.setText(" ".join(notice.text for notice in sag.notices))
        self.notices.setVisible(bool(self.notices.text()))
