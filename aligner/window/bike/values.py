"""The cards of a sheet's single values: the bike, its dimensions, its limits."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout

from aligner.assessment.missing import DIMENSIONS
from aligner.drawing.theme import ROOM, Theme
from aligner.job import Job
from aligner.job.edits_sheet import (
    with_bike_name,
    with_job_title,
    with_sheet_note,
    with_source,
    with_value,
)
from aligner.language import marked, say
from aligner.sheet import Sheet
from aligner.sheet.quantities import Angle, Length, Quantity, SignedLength
from aligner.units import ANGLE, LENGTH, UnreadableQuantity
from aligner.units.preferred import Preferred
from aligner.window.bike.boxes import ValueBox
from aligner.window.bike.words import FORKS, HANDLEBARS, value_words
from aligner.window.measuring.guides import measured_by
from aligner.window.open_job import OpenJob
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.folding_grid import FoldingGrid, titled
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.page import wrapping

_SIGNED = {"fork.bracket_offset", "steering.offset", "protrusion.target"}
_ANGLES = {"steering.rake"}
_EITHER = {"squaring.tolerance", "in_line.tolerance"}
#: How what the manual does not print can be measured; limits are only ever taken from it.
_GUIDES = {
    "fork.leg_spacing": "leg_spacing",
    "fork.bracket_spacing": "bracket_spacing",
    "fork.lower_bracket_to_axle": "lower_to_axle",
    "fork.bracket_offset": "bracket_offset",
    "fork.tube_diameter": "tube_diameter",
    "steering.rake": "rake",
    "steering.offset": "axle_offset",
    "steering.front_radius": "wheel_radius",
    "steering.rear_radius": "wheel_radius",
    "steering.wheelbase": "wheelbase",
}
#: Limits, each with its name, and what is said where it is left out; "" where it is missing.
LIMITS = {
    "protrusion.target": (
        marked("tubes' height, target"),
        marked("equal heights only"),
    ),
    "protrusion.tolerance": (marked("tubes' height, tolerance ±"), ""),
    "squaring.tolerance": (marked("lower bracket square, tolerance ±"), marked("not asked for")),
    "in_line.tolerance": (marked("legs in line, tolerance ±"), marked("not asked for")),
}


class ValuesCard(Card):
    """Values of the sheet, each with its source beside it; Enter walks down either column."""

    def __init__(
        self, title: str, open_job: OpenJob, theme: Theme, show: Preferred, names: dict[str, str]
    ) -> None:
        super().__init__(title)
        self._open_job = open_job
        self._show = show
        self.values: dict[str, ValueBox] = {}
        self.sources: dict[str, ValueBox] = {}
        grid = QGridLayout()
        grid.setHorizontalSpacing(ROOM)
        grid.setVerticalSpacing(4)
        for column, width in enumerate((5, 4, 5)):
            grid.setColumnStretch(column, width)
        for column, heading in enumerate(("", say("value"), say("where it comes from"))):
            grid.addWidget(label(heading, "small"), 0, column)
        for line, (path, english) in enumerate(names.items(), start=1):
            name = say(english)
            its_source = say("{value}, source", value=name)
            value = ValueBox(theme, name, lambda text, path=path: read_value(path, text, show))
            measured_by(value, _GUIDES.get(path, "from_the_manual"))
            source = ValueBox(theme, its_source, str, say("manual page, or measured"))
            bind(open_job, value, name, lambda job, found, path=path: with_value(job, path, found))
            bind(
                open_job,
                source,
                its_source,
                lambda job, found, path=path: with_source(job, path, found or ""),
            )
            top = Qt.AlignmentFlag.AlignTop
            words = wrapping(name)
            words.setMinimumHeight(value.line.minimumHeight())
            for column, widget in enumerate((words, value, source)):
                grid.addWidget(widget, line, column, top)
            self.values[path], self.sources[path] = value, source
        self.column.addLayout(grid)
        self.column.addStretch(1)
        _walk_down(list(self.values.values()))
        _walk_down(list(self.sources.values()))

    def show_sheet(self, sheet: Sheet) -> None:
        """Show the values as they are."""
        for path, box in self.values.items():
            value = value_at(sheet, path)
            if value is None:
                left_out = say(LIMITS[path][1]) if path in LIMITS else say("not given")
                missing = "" if left_out else say("missing: say what the manual allows")
                box.show_value("", missing, "attention", left_out=left_out)
            else:
                box.show_value(value.said, value_words(value, self._show))
            self.sources[path].show_value(sheet.sources.get(path, ""))


class BikeCard(Card):
    """The bike's name, its fork and handlebars, what this job is for, and a note."""

    def __init__(self, open_job: OpenJob, theme: Theme) -> None:
        super().__init__(say("The bike and this job"))
        self._open_job = open_job
        self.name = ValueBox(theme, say("name"), str, say("name the bike"))
        self.title = ValueBox(theme, say("this job"), str, say("what it is for: front end refit"))
        self.note = ValueBox(
            theme, say("note"), str, say("anything else worth knowing of the bike")
        )
        self.lines = (self.name, self.title, self.note)
        self.fork = Choice(
            say("fork"), [(kind, say(words)) for kind, words in FORKS.items()], letters=8
        )
        self.handlebars = Choice(
            say("handlebars"),
            [(place, say(words)) for place, words in HANDLEBARS.items()],
            letters=8,
        )
        grid = FoldingGrid(theme, 3, spacing=ROOM, least=220)
        for name, box, wide in (
            (self.name.name, self.name, 1),
            (self.fork.accessibleName(), self.fork, 1),
            (self.handlebars.accessibleName(), self.handlebars, 1),
            (self.title.name, self.title, 1),
            (self.note.name, self.note, 2),
        ):
            grid.add(titled(label(name, "small"), box), wide)
        self.column.addWidget(grid)
        bind(
            open_job,
            self.name,
            say("bike's name"),
            lambda job, text: with_bike_name(job, text or ""),
        )
        bind(
            open_job,
            self.title,
            say("job's title"),
            lambda job, text: with_job_title(job, text or ""),
        )
        bind(
            open_job,
            self.note,
            say("note on the sheet"),
            lambda job, text: with_sheet_note(job, text or ""),
        )
        for box, path in ((self.fork, "fork.kind"), (self.handlebars, "fork.handlebars")):
            box.chosen.connect(
                lambda answer, path=path, box=box: open_job.edit(
                    box.accessibleName(), lambda job: with_value(job, path, answer)
                )
            )
        _walk_down([self.name, self.fork, self.handlebars, self.title, self.note])

    def show_sheet(self, sheet: Sheet) -> None:
        """Show the bike as it is."""
        is_named = bool(sheet.name)
        self.name.show_value(
            sheet.name,
            "" if is_named else say("missing: name the bike"),
            "" if is_named else "attention",
        )
        self.title.show_value(self._open_job.job.title)
        self.note.show_value(sheet.note)
        self.fork.show_value(sheet.fork.kind)
        self.handlebars.show_value(sheet.fork.handlebars)


def dimensions_card(open_job: OpenJob, theme: Theme, show: Preferred) -> ValuesCard:
    """The card of the dimensions."""
    return ValuesCard(say("Dimensions"), open_job, theme, show, DIMENSIONS)


def limits_card(open_job: OpenJob, theme: Theme, show: Preferred) -> ValuesCard:
    """The card of what the front end is set to."""
    names = {path: name for path, (name, _) in LIMITS.items()}
    return ValuesCard(say("Limits for the alignment"), open_job, theme, show, names)


def bind(
    open_job: OpenJob,
    box: ValueBox,
    name: str | Callable[[], str],
    change: Callable[[Job, Any], Job],
) -> None:
    """Let a box edit the job: a draft while it is typed in, one step when it is left."""
    box.typed.connect(lambda value: open_job.draft(lambda job: change(job, value)))
    box.spoiled.connect(open_job.drop_draft)
    box.kept.connect(
        lambda value: open_job.edit(
            name if isinstance(name, str) else name(), lambda job: change(job, value)
        )
    )


def read_value(path: str, text: str, show: Preferred) -> Quantity:
    """The quantity that belongs at a path of the sheet.

    Raises:
        UnreadableQuantity: in words.
    """
    if path in _EITHER:
        return _angle_or_length(text)
    if path in _ANGLES:
        return Angle.typed(text, ANGLE.own_unit)
    kind = SignedLength if path in _SIGNED else Length
    return kind.typed(text, show.unit(LENGTH))


def value_at(sheet: Sheet, path: str) -> Quantity | None:
    """The quantity at a path of the sheet."""
    part, field = path.split(".")
    found: Quantity | None = getattr(getattr(sheet, part), field)
    return found


def _angle_or_length(text: str) -> Quantity:
    refusals: list[UnreadableQuantity] = []
    kinds: Sequence[type[Quantity]] = (Angle, Length)
    for kind in kinds:
        try:
            return kind.typed(text)
        except UnreadableQuantity as refusal:
            refusals.append(refusal)
    raise UnreadableQuantity(
        "", refusals[0].understood, say("write it as “0.4 deg” or, on the gauge, “0.5 mm”")
    )


def _walk_down(boxes: Sequence[ValueBox | Choice]) -> None:
    """Let Enter go from each box to the next."""
    for box, following in pairwise(boxes):
        box.went_on.connect(
            lambda following=following: following.setFocus(Qt.FocusReason.TabFocusReason)
        )
