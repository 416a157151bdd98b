"""How things stand before anything is loosened: heights, bracket, settings, sag, and later the oil.

The trap: everything here is optional, and the heights alone cannot be read later. So they stand
first, and Enter walks on from them through all the rest.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from aligner.assessment.as_found import SIDES, difference_words, has_air, sag_words
from aligner.assessment.readings import gauge_of
from aligner.drawing.theme import GAP, ROOM, Theme
from aligner.job import Job
from aligner.language import begun, marked, say
from aligner.sheet.quantities import Length, Quantity, SignedLength, Volume
from aligner.units.preferred import Preferred
from aligner.window.measuring.guides import measured_by
from aligner.window.open_job import OpenJob
from aligner.window.strip.fields import FoundFields
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.folding_row import beside
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.page import Page, wrapping
from aligner.window.widgets.reading_box import ReadingBox
from aligner.window.widgets.word_line import WordLine

#: How each value is measured.
_GUIDES = {
    "protrusion.left": "protrusion",
    "protrusion.right": "protrusion",
    "bracket.left": "frame_distance",
    "bracket.right": "frame_distance",
    "left.preload": "preload_found",
    "right.preload": "preload_found",
    "air_pressure": "air_pressure",
    "sag.extended": "sag_extended",
    "sag.static": "sag_as_found",
    "sag.rider": "sag_as_found",
    "left.oil": "poured_oil",
    "right.oil": "poured_oil",
}
_PRELOAD_HINT = marked("rings showing, clicks, or a length")
_WORDS = (
    ("handlebars", marked("handlebars"), marked("from where to where, or a length")),
    ("left.preload", marked("preload, left"), _PRELOAD_HINT),
    ("right.preload", marked("preload, right"), _PRELOAD_HINT),
    ("air_pressure", marked("air pressure"), marked("as its gauge shows it, with the unit")),
    ("steering", marked("steering"), marked("free, heavy, notched, or loose")),
)
_SAG = (
    ("sag.extended", marked("wheel off")),
    ("sag.static", marked("on its wheels")),
    ("sag.rider", marked("rider on")),
)
_SAG_LINES = {"static": marked("static sag {size}"), "rider": marked("rider sag {size}")}
_LEGS = {"left": marked("left leg"), "right": marked("right leg")}
_BRACKET_SIDES = {"left": marked("left side"), "right": marked("right side")}
_OILS = {"left": marked("left leg's oil"), "right": marked("right leg's oil")}
_OIL_LOOKS = {
    "left": marked("look of the left leg's oil"),
    "right": marked("look of the right leg's oil"),
}


class AsFoundView(QWidget):
    """The readings and notes as found.

    Signals:
        went_on: Enter after the last of them.
    """

    went_on = Signal()

    def __init__(self, open_job: OpenJob, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._open_job = open_job
        self._theme = theme
        self._show = show
        self.fields = FoundFields(open_job, show, self)
        self._titles: dict[str, QLabel] = {}
        self.page = Page(say("as found"))
        self.heights_said = wrapping("", "strong")
        self.bracket_said = wrapping("", "strong")
        self.sag_said = wrapping("")
        self.page.add(beside(theme, (self._heights_card(), 1), (self._bracket_card(), 1)))
        self.page.add(beside(theme, (self._words_card(), 1), (self._sag_card(), 1)))
        self.page.add(self._oil_card())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.page)
        self.fields.walk()
        self.fields.went_on.connect(self.went_on)

    def box(self, path: str) -> ReadingBox:
        """The box of some readings ("protrusion.left")."""
        found = self.fields[path]
        if not isinstance(found, ReadingBox):
            raise TypeError(path)
        return found

    def line(self, path: str) -> WordLine:
        """The line of some words ("steering")."""
        found = self.fields[path]
        if not isinstance(found, WordLine):
            raise TypeError(path)
        return found

    def refresh(self) -> None:
        """Show what the job holds."""
        job, show = self._open_job.job, self._show
        found = job.as_found
        self.fields.show_held()
        for pair, said in (
            (found.protrusion, self.heights_said),
            (found.bracket, self.bracket_said),
        ):
            words = difference_words(job, pair.left, pair.right, pair.gauge, show)
            words = f"{begun(words)}." if words else ""
            if words and gauge_of(job, pair.gauge) is None:
                words = f"{words} {say('Name the gauge: its own error is not counted yet.')}"
            said.setText(words)
            said.setVisible(bool(words))
        self.sag_said.setText(_sag_lines(job, show))
        asks_for_air = has_air(job)
        self.fields["air_pressure"].setVisible(asks_for_air)
        self._titles["air_pressure"].setVisible(asks_for_air)

    def begin(self, reads: str = "") -> None:
        """Put the keyboard on what is still to be read.

        Args:
            reads: what a step of the list reads ("protrusion", "squaring"); the first that is
                open where it is left out.
        """
        found = self._open_job.job.as_found
        pairs = {"protrusion": found.protrusion, "bracket": found.bracket}
        if reads:
            name = "bracket" if reads == "squaring" else "protrusion"
        else:
            name = next((n for n, pair in pairs.items() if not (pair.left and pair.right)), "")
        if not name:
            self.line("handlebars").setFocus(Qt.FocusReason.OtherFocusReason)
            return
        side = "left" if not pairs[name].left or pairs[name].right else "right"
        self.box(f"{name}.{side}").go_to_first_empty()

    def _heights_card(self) -> Card:
        card = Card(say("Heights, while the clamps still hold"))
        card.column.addWidget(
            wrapping(say("Tube top edge above the top bracket, never the cap."), "quiet")
        )
        gauge = Choice(say("gauge of the heights as found"))
        self._pair(card, "protrusion", SignedLength, _LEGS)
        self._with_gauge(card, "protrusion", gauge, say("gauge of the heights"))
        return self._with_words(card, self.heights_said)

    def _bracket_card(self) -> Card:
        card = Card(say("Lower bracket to the frame, both sides"))
        card.column.addWidget(
            wrapping(say("The same two points on each side, steering straight ahead."), "quiet")
        )
        gauge = Choice(say("gauge of the bracket as found"))
        self._pair(card, "bracket", Length, _BRACKET_SIDES)
        self._with_gauge(card, "bracket", gauge, say("gauge of the bracket"))
        return self._with_words(card, self.bracket_said)

    def _pair(self, card: Card, name: str, kind: type[Quantity], titles: dict[str, str]) -> None:
        boxes = QHBoxLayout()
        boxes.setSpacing(GAP)
        for side in SIDES:
            title = say(titles[side])
            box = self._reading(f"{name}.{side}", title, kind, self._show.length, 3)
            boxes.addWidget(box, 1, Qt.AlignmentFlag.AlignTop)
        card.column.addLayout(boxes)

    def _with_gauge(self, card: Card, name: str, gauge: Choice, step: str) -> None:
        self.fields.add(f"{name}.gauge", gauge, step)
        with_gauge = QHBoxLayout()
        with_gauge.addWidget(label(say("read with", meaning="a gauge")))
        with_gauge.addWidget(gauge, 1)
        card.column.addLayout(with_gauge)

    def _with_words(self, card: Card, said: QLabel) -> Card:
        card.column.addWidget(said)
        card.column.addStretch(1)
        return card

    def _words_card(self) -> Card:
        card = Card(say("How it is set, and how it feels"))
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP)
        grid.setVerticalSpacing(5)
        grid.setColumnStretch(1, 1)
        for row, (path, title, hint) in enumerate(_WORDS):
            self._titles[path] = label(say(title))
            grid.addWidget(self._titles[path], row, 0)
            name = say("{name} as found", name=say(title))
            grid.addWidget(self._words(path, name, say(hint)), row, 1)
        card.column.addLayout(grid)
        card.column.addStretch(1)
        return card

    def _sag_card(self) -> Card:
        card = Card(say("Sag, if it is wanted"))
        how = say("Between the same two marks along one leg.")
        card.column.addWidget(wrapping(how, "quiet"))
        boxes = QHBoxLayout()
        boxes.setSpacing(GAP)
        for path, title in _SAG:
            box = self._reading(path, say(title), Length, self._show.length, 1)
            boxes.addWidget(box, 1, Qt.AlignmentFlag.AlignTop)
        card.column.addLayout(boxes)
        card.column.addWidget(self.sag_said)
        card.column.addStretch(1)
        return card

    def _oil_card(self) -> Card:
        card = Card(say("Later: oil as it was drained"))
        row = QHBoxLayout()
        row.setSpacing(ROOM)
        for side in SIDES:
            leg = QHBoxLayout()
            leg.setSpacing(GAP)
            box = self._reading(f"{side}.oil", say(_OILS[side]), Volume, self._show.volume, 1)
            look = self._words(f"{side}.oil_look", say(_OIL_LOOKS[side]), say("clear, milky?"))
            leg.addWidget(box, 4)
            leg.addWidget(look, 5)
            row.addLayout(leg, 1)
        card.column.addLayout(row)
        return card

    def _reading(
        self, path: str, name: str, kind: type[Quantity], unit: str, cells: int
    ) -> ReadingBox:
        box = ReadingBox(self._theme, name, kind, unit, cells, _GUIDES[path])
        self.fields.add(path, box, say("{name} as found", name=name))
        return box

    def _words(self, path: str, name: str, hint: str) -> WordLine:
        line = WordLine(self._theme, name, hint)
        measured_by(line, _GUIDES.get(path, ""))
        self.fields.add(path, line, name)
        return line


def _sag_lines(job: Job, show: Preferred) -> str:
    said = [(line, sag_words(job, load, show)) for load, line in _SAG_LINES.items()]
    lines = ", ".join(say(line, size=words) for line, words in said if words)
    return f"{begun(lines)}." if lines else ""
