"""The card for what the manual says of the legs: each value with its source, missing where it is.

The trap: these values belong to the bike's sheet, not to this job's readings; what is typed here is
kept on the sheet that the job carries, and says where it came from.
"""

from __future__ import annotations

from itertools import pairwise
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout

from aligner.drawing.theme import Theme
from aligner.job import Job
from aligner.language import marked, say
from aligner.sheet import Sheet
from aligner.sheet.legs import Pressure, Way
from aligner.sheet.quantities import (
    Force,
    Length,
    Quantity,
    Ratio,
    Stiffness,
    Torque,
    Volume,
)
from aligner.units import UnreadableQuantity
from aligner.units.preferred import Preferred
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.folding_grid import FoldingGrid
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.reading_box import ReadingBox, one_of
from aligner.window.widgets.tick import Tick
from aligner.window.widgets.word_line import WordLine


class ShareOrLength(Quantity):
    """A share of the travel, or a length along the leg where its unit says so."""

    __slots__ = ()
    dimension = Ratio.dimension

    @classmethod
    def typed(cls, text: str, unit_if_bare: str | None = None) -> Any:
        """A percentage, a bare number as one, or else a length with its unit."""
        try:
            return Ratio.typed(text, unit_if_bare)
        except UnreadableQuantity:
            try:
                return Length.typed(text)
            except UnreadableQuantity as refusal:
                wanted = say("write a share such as “30 %”, or a length such as “40 mm”")
                raise UnreadableQuantity("", refusal.understood, wanted) from refusal


_VALUES: tuple[tuple[str, str, type[Quantity]], ...] = (
    ("oil.air_gap", marked("air gap"), Length),
    ("oil.air_gap_tolerance", marked("gap, plus or minus"), Length),
    ("oil.volume", marked("oil of one leg"), Volume),
    ("oil.volume_tolerance", marked("oil, plus or minus"), Volume),
    ("bore", marked("bore of the tube"), Length),
    ("rod", marked("rod in the oil"), Length),
    ("travel", marked("travel"), Length),
    ("sliding_tube", marked("sliding tube"), Length),
    ("oil.air_pressure", marked("air pressure"), Pressure),
    ("spring.spacer", marked("spacer"), Length),
    ("spring.preload", marked("preload"), Length),
    ("spring.displaced", marked("spring's volume"), Volume),
    ("spring.rate", marked("spring rate"), Stiffness),
    ("spring.second_rate", marked("second rate"), Stiffness),
    ("spring.rate_changes_at", marked("rate changes at"), Length),
    ("bearing.radius", marked("pull's radius"), Length),
    ("bearing.pull_low", marked("pull, least"), Force),
    ("bearing.pull_high", marked("pull, most"), Force),
    ("bearing.torque_low", marked("drag, least"), Torque),
    ("bearing.torque_high", marked("drag, most"), Torque),
    ("sag.static_low", marked("static sag, least"), ShareOrLength),
    ("sag.static_high", marked("static sag, most"), ShareOrLength),
    ("sag.rider_low", marked("rider sag, least"), ShareOrLength),
    ("sag.rider_high", marked("rider sag, most"), ShareOrLength),
)
#: How what the manual does not print can be measured; all else is only ever taken from it.
_GUIDES = {
    "bore": "tube_bore",
    "rod": "rod_diameter",
    "travel": "travel",
    "sliding_tube": "sliding_tube",
    "spring.spacer": "spacer",
    "spring.preload": "spring_preload",
    "spring.displaced": "spring_volume",
    "spring.rate": "spring_rate",
    "spring.second_rate": "spring_rate",
    "spring.rate_changes_at": "spring_rate",
    "bearing.radius": "pull_radius",
}
_NEEDED = {"oil.air_gap", "oil.air_gap_tolerance", "bore", "travel"}
_IN_A_ROW = 4
_COILS: tuple[tuple[object, str], ...] = (
    (None, marked("closer coils: not said")),
    (Way.UP, marked("closer coils up")),
    (Way.DOWN, marked("closer coils down")),
)


class SheetCard(Card):
    """What the sheet says of oil, springs, sag and the head bearing's drag.

    Signals:
        typed: path, value and source, while it is typed. kept: when it is left.
        went_on: Enter after the last value.
    """

    typed = Signal(str, object, str)
    kept = Signal(str, object, str)
    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(say("From the maker's manual, for this bike's sheet"))
        self._shown: Sheet | None = None
        self.source = WordLine(
            theme, say("where these values come from"), say("such as manual p. 13-4")
        )
        self.boxes = {
            path: ReadingBox(
                theme,
                say(words),
                kind,
                "%" if kind is ShareOrLength else show.unit(kind.dimension),
                cells=1,
                guide=_GUIDES.get(path, "from_the_manual"),
            )
            for path, words, kind in _VALUES
        }
        self.oil = WordLine(theme, say("oil the manual names"), say("oil the manual names"))
        self.order = WordLine(theme, say("order of the parts"), say("what goes in, bottom up"))
        self.coils = Choice(
            say("which way up the closer coils go"), [(way, say(words)) for way, words in _COILS]
        )
        self.adjuster = Tick(say("cap with preload adjuster"))
        self.adjuster.setAccessibleName(self.adjuster.text())
        head = QHBoxLayout()
        head.addWidget(label(say("source of what is typed here")))
        head.addWidget(self.source, 1)
        words_row = FoldingGrid(theme, _IN_A_ROW)
        for widget in (self.oil, self.order, self.coils, self.adjuster):
            words_row.add(widget)
        grid = FoldingGrid(theme, _IN_A_ROW)
        for box in self.boxes.values():
            grid.add(box)
        said = say("What is not printed stays empty: it shows as missing and is never guessed.")
        self.column.addWidget(wrapping(said, "quiet"))
        self.column.addLayout(head)
        self.column.addWidget(words_row)
        self.column.addWidget(grid)
        self._connect()

    def show_job(self, job: Job) -> None:
        """Show what the sheet says."""
        legs, sources = job.sheet.legs, job.sheet.sources
        self.oil.show_kept(legs.oil.name)
        self.order.show_kept(legs.spring.order)
        self.coils.show_value(legs.spring.closer_coils)
        self.adjuster.setChecked(legs.spring.has_adjuster)
        if job.sheet is self._shown:
            return
        self._shown = job.sheet
        for path, box in self.boxes.items():
            value = _at(legs, path)
            absent = say("missing") if path in _NEEDED else say("not given")
            box.show_readings((value,) if value else (), value.said if value else absent)
            box.setToolTip(sources.get(f"legs.{path}", ""))

    def show_afresh(self, job: Job) -> None:
        """Show what the sheet says though it may be the sheet that was shown."""
        self._shown = None
        self.show_job(job)

    def _connect(self) -> None:
        for path, box in self.boxes.items():
            box.typed.connect(lambda found, path=path: self._say(self.typed, path, one_of(found)))
            box.kept.connect(lambda found, path=path: self._say(self.kept, path, one_of(found)))
        for line, path in ((self.oil, "oil.name"), (self.order, "spring.order")):
            line.typed.connect(lambda text, path=path: self._say(self.typed, path, text))
            line.kept.connect(lambda text, path=path: self._say(self.kept, path, text))
        self.coils.chosen.connect(lambda way: self._say(self.kept, "spring.closer_coils", way))
        self.adjuster.clicked.connect(
            lambda has: self._say(self.kept, "spring.has_adjuster", bool(has))
        )
        focus = Qt.FocusReason.TabFocusReason
        self.source.went_on.connect(lambda: self.oil.setFocus(focus))
        self.oil.went_on.connect(lambda: self.order.setFocus(focus))
        self.order.went_on.connect(lambda: self.coils.setFocus(focus))
        paths = [path for path, _, _ in _VALUES]
        self.coils.went_on.connect(self.boxes[paths[0]].go_to_first_empty)
        for path, following in pairwise(paths):
            self.boxes[path].went_on.connect(self.boxes[following].go_to_first_empty)
        self.boxes[paths[-1]].went_on.connect(self.went_on)

    def _say(self, signal: Any, path: str, value: object) -> None:
        signal.emit(path, value, self.source.text())


def _at(part: object, path: str) -> Any:
    for name in path.split("."):
        part = getattr(part, name)
    return part
