"""The card for spring and spacer: their lengths, what to cut the spacer to, what it leaves."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from aligner.assessment.build import BuildAssessment
from aligner.assessment.build_spring import WHERE
from aligner.assessment.notice import Level
from aligner.drawing.theme import Theme
from aligner.job import Job
from aligner.language import marked, say
from aligner.sheet.quantities import Length
from aligner.units.preferred import Preferred
from aligner.window.build.spring_words import change_tone, change_words, cut_words, preload_lines
from aligner.window.widgets.folding_grid import FoldingGrid
from aligner.window.widgets.labels import Card, Caution, label, set_tone
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.reading_box import ReadingBox, one_of

_BOXES = (
    ("free_length", marked("free length"), "free_length"),
    ("room", marked("room to the cap"), "spring_room"),
    ("washers", marked("washers, seats"), "washers"),
    ("wanted_preload", marked("wanted preload"), "from_the_manual"),
    ("old_spacer", marked("spacer as it was"), "spacer"),
    ("solid_length", marked("all coils touching"), "solid_length"),
    ("fitted_spacer", marked("spacer that went in"), "spacer"),
)
_IN_A_ROW = 4
_HOW = marked(
    "The same in both legs, after the maker's manual. The spacer's ends are square and deburred. "
    "More preload holds the machine higher; it does not make the spring stiffer."
)
_PUSHES = marked(
    "The spring pushes the cap: keep face and hand out of its line until several threads hold."
)


class SpringCard(Card):
    """Spring and spacer of each leg.

    Signals:
        typed: fields of the fitting while they are typed. kept: when they are left.
        went_on: Enter after the last field.
    """

    typed = Signal(object)
    kept = Signal(object)
    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(say("Spring and spacer"))
        self._show = show
        self.boxes = {
            name: ReadingBox(theme, say(words), Length, show.length, 1, guide)
            for name, words, guide in _BOXES
        }
        grid = FoldingGrid(theme, _IN_A_ROW)
        for box in self.boxes.values():
            grid.add(box)
        self.cut = label("", "strong", wraps=True)
        self.lines = label("", "text", wraps=True)
        self.by_sag = label("", "strong", wraps=True)
        self.notices = label("", "text", wraps=True, tone="attention")
        self.caution = Caution(say(_PUSHES), self)
        self.column.addWidget(wrapping(say(_HOW), "quiet"))
        self.column.addWidget(grid)
        for said in (self.cut, self.lines, self.by_sag, self.notices, self.caution):
            self.column.addWidget(said)
        self._connect()

    def walk(self) -> list[QWidget]:
        """What the keyboard can reach, as the eye goes."""
        return [cell for box in self.boxes.values() for cell in box.cells]

    def go_to_first_empty(self) -> None:
        """Put the keyboard in the first box without a length, or in the first."""
        empty = (box for box in self.boxes.values() if not box.first_cell.text().strip())
        next(empty, self.boxes["free_length"]).go_to_first_empty()

    def show_job(self, job: Job, found: BuildAssessment) -> None:
        """Show a job's lengths and what they come to."""
        given, spring = job.build.spring, found.spring
        told = {
            notice.where: notice.text
            for notice in spring.notices
            if notice.level is Level.ATTENTION
        }
        on_sheet = {"wanted_preload": job.sheet.legs.spring.preload}
        for name, box in self.boxes.items():
            value = getattr(given, name)
            counted = value or on_sheet.get(name)
            box.show_readings((value,) if value else (), counted.said if counted else "?")
            box.say_trouble(told.pop(f"{WHERE}.{name}", "") if value else "")
        rest = [each.text for each in spring.notices if each.level is Level.NOTE]
        for said, words in (
            (self.cut, cut_words(found, self._show)),
            (self.lines, "\n".join(preload_lines(spring, self._show))),
            (self.by_sag, change_words(found, self._show)),
            (self.notices, " ".join([*told.values(), *rest])),
        ):
            said.setText(words)
            said.setVisible(bool(words))
        set_tone(self.by_sag, "tone", change_tone(found))

    def _connect(self) -> None:
        for name, box in self.boxes.items():
            box.typed.connect(lambda found, name=name: self.typed.emit({name: one_of(found)}))
            box.kept.connect(lambda found, name=name: self.kept.emit({name: one_of(found)}))
        names = list(self.boxes)
        for name, following in pairwise(names):
            self.boxes[name].went_on.connect(self.boxes[following].go_to_first_empty)
        self.boxes[names[-1]].went_on.connect(self.went_on)
