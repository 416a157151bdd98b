"""The card for a blend of two oils: what each is, what is wanted, and the millilitres of each."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QWidget

from aligner.assessment.build_blend import BlendAssessment
from aligner.drawing.theme import GAP, Theme
from aligner.job import Job
from aligner.language import begun, listed, marked, say
from aligner.legs import W_GRADE_CAUTION
from aligner.sheet.quantities import Quantity, Viscosity, Volume
from aligner.units.preferred import Preferred
from aligner.units.shown import rounded
from aligner.window.build.results import show_volume
from aligner.window.widgets.labels import Card, label, set_tone
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.reading_box import ReadingBox, one_of
from aligner.window.widgets.word_line import WordLine

_QUANTITIES: tuple[tuple[str, str, type[Quantity]], ...] = (
    ("first", marked("first oil"), Viscosity),
    ("second", marked("second oil"), Viscosity),
    ("wanted", marked("wanted"), Viscosity),
    ("amount", marked("amount in all"), Volume),
)
_GUIDES = {
    "first": "viscosity",
    "second": "viscosity",
    "wanted": "viscosity",
    "amount": "poured_oil",
}
_NAMES = {"first": marked("first oil's name"), "second": marked("second oil's name")}


class BlendCard(Card):
    """Two oils mixed to a wanted viscosity.

    Signals:
        typed: fields of the blend while they are typed. kept: when they are left.
        went_on: Enter after the last field.
    """

    typed = Signal(object)
    kept = Signal(object)
    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(say("Two oils mixed, all at one temperature (usually 40 °C)"))
        self._show = show
        self.names = {
            name: WordLine(theme, say(words), say(words)) for name, words in _NAMES.items()
        }
        self.boxes = {
            name: ReadingBox(theme, say(words), kind, show.unit(kind.dimension), 1, _GUIDES[name])
            for name, words, kind in _QUANTITIES
        }
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP)
        for column, name in enumerate(_NAMES):
            grid.addWidget(self.names[name], 0, column)
            grid.addWidget(self.boxes[name], 1, column, Qt.AlignmentFlag.AlignTop)
        for column, name in enumerate(("wanted", "amount")):
            grid.addWidget(self.boxes[name], 2, column, Qt.AlignmentFlag.AlignTop)
        self.said = label("", "strong", wraps=True)
        self.column.addLayout(grid)
        self.column.addWidget(self.said)
        self.column.addWidget(wrapping(say(W_GRADE_CAUTION), "quiet"))
        self.column.addStretch(1)
        self._connect()

    def show_job(self, job: Job, found: BlendAssessment) -> None:
        """Show a job's oils and what to take of each."""
        given = job.build.blend
        for name, line in self.names.items():
            line.show_kept(getattr(given, f"{name}_name"))
        for name, box in self.boxes.items():
            value = getattr(given, name)
            box.show_readings((value,) if value else (), value.said if value else "?")
        self.said.setText(self._words(job, found))
        set_tone(self.said, "tone", "attention" if found.refusal else "")
        self.said.setVisible(bool(self.said.text()))

    def walk(self) -> list[QWidget]:
        """What the keyboard can reach, oil by oil."""
        return [
            self.names["first"],
            *self.boxes["first"].cells,
            self.names["second"],
            *self.boxes["second"].cells,
            *self.boxes["wanted"].cells,
            *self.boxes["amount"].cells,
        ]

    def _words(self, job: Job, found: BlendAssessment) -> str:
        if found.refusal:
            return begun(found.refusal)
        if found.missing:
            return say("Still needed: {values}.", values=", ".join(found.missing))
        if found.blend is None:
            return ""
        given, blend = job.build.blend, found.blend
        parts = []
        for name, fallback, ml, share in (
            (given.first_name, say("first oil"), blend.first_ml, blend.first_share),
            (given.second_name, say("second oil"), blend.second_ml, blend.second_share),
        ):
            parts.append(
                say(
                    "{volume} of {oil} ({share} %)",
                    volume=show_volume(ml, self._show),
                    oil=name or fallback,
                    share=rounded(share * 100, 0),
                )
            )
        return say(
            "{mixture}. An estimate: additives can move it by some per cent.",
            mixture=listed(parts),
        )

    def _connect(self) -> None:
        for name, line in self.names.items():
            field = f"{name}_name"
            line.typed.connect(lambda words, field=field: self.typed.emit({field: words}))
            line.kept.connect(lambda words, field=field: self.kept.emit({field: words}))
            line.went_on.connect(self.boxes[name].go_to_first_empty)
        for name, box in self.boxes.items():
            box.typed.connect(lambda found, name=name: self.typed.emit({name: one_of(found)}))
            box.kept.connect(lambda found, name=name: self.kept.emit({name: one_of(found)}))
        self.boxes["first"].went_on.connect(
            lambda: self.names["second"].setFocus(Qt.FocusReason.TabFocusReason)
        )
        self.boxes["second"].went_on.connect(self.boxes["wanted"].go_to_first_empty)
        self.boxes["wanted"].went_on.connect(self.boxes["amount"].go_to_first_empty)
        self.boxes["amount"].went_on.connect(self.went_on)
