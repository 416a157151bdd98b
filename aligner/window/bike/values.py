"""The cards of a sheet's single values: the bike, its dimensions, its limits."""

from __future__ import annotations

from collections.abc import Callable, Sequence
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
from aligner.sheet import Sheet
from aligner.sheet.quantities import Angle, Length, Quantity, SignedLength
from aligner.units import ANGLE, LENGTH, UnreadableQuantity
from aligner.units.preferred import Preferred
from aligner.window.bike.boxes import ValueBox
from aligner.window.bike.choices import ChoiceBox, walk_down
from aligner.window.bike.words import FORKS, HANDLEBARS, value_words
from aligner.window.open_job import OpenJob
from aligner.window.widgets.folding_grid import FoldingGrid, titled
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.page import wrapping

_SIGNED = {"fork.bracket_offset", "steering.offset", "protrusion.target"}
_ANGLES = {"steering.rake"}
_EITHER = {"squaring.tolerance", "in_line.tolerance"}
#: Limits, each with its name, and what is said where it is left out; "" where it is missing.
LIMITS = {
    "protrusion.target": ("tubes' height, target", "only equal heights are asked for"),
    "protrusion.tolerance": ("tubes' height, tolerance ±", ""),
    "squaring.tolerance": ("lower bracket square, tolerance ±", "not asked for"),
    "in_line.tolerance": ("legs in line, tolerance ±", "not asked for"),
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
        for column, heading in enumerate(("", "value", "where it comes from")):
            grid.addWidget(label(heading, "small"), 0, column)
        for line, (path, name) in enumerate(names.items(), start=1):
            value = ValueBox(theme, name, lambda text, path=path: read_value(path, text, show))
            source = ValueBox(theme, f"{name}, source", str, "manual page, or measured")
            bind(open_job, value, name, lambda job, found, path=path: with_value(job, path, found))
            bind(
                open_job,
                source,
                f"{name}, source",
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
        walk_down(list(self.values.values()))
        walk_down(list(self.sources.values()))

    def show_sheet(self, sheet: Sheet) -> None:
        """Show the values as they are."""
        for path, box in self.values.items():
            value = value_at(sheet, path)
            if value is None:
                left_out = LIMITS.get(path, ("", "not given"))[1]
                missing = "" if left_out else "missing: say what the manual allows"
                box.show_value("", missing, "attention", left_out=left_out)
            else:
                box.show_value(value.text, value_words(value, self._show))
            self.sources[path].show_value(sheet.sources.get(path, ""))


class BikeCard(Card):
    """The bike's name, its fork and handlebars, what this job is for, and a note."""

    def __init__(self, open_job: OpenJob, theme: Theme) -> None:
        super().__init__("The bike and this job")
        self._open_job = open_job
        self.name = ValueBox(theme, "name", str, "name the bike")
        self.title = ValueBox(theme, "this job", str, "what it is for: front end refit")
        self.note = ValueBox(theme, "note", str, "anything else worth knowing of the bike")
        self.lines = (self.name, self.title, self.note)
        self.fork = ChoiceBox(theme, "fork", [(words, kind) for kind, words in FORKS.items()])
        self.handlebars = ChoiceBox(
            theme, "handlebars", [(words, place) for place, words in HANDLEBARS.items()]
        )
        grid = FoldingGrid(theme, 3, spacing=ROOM, least=220)
        for name, box, wide in (
            ("name", self.name, 1),
            ("fork", self.fork, 1),
            ("handlebars", self.handlebars, 1),
            ("this job", self.title, 1),
            ("note", self.note, 2),
        ):
            grid.add(titled(label(name, "small"), box), wide)
        self.column.addWidget(grid)
        bind(open_job, self.name, "bike's name", lambda job, text: with_bike_name(job, text or ""))
        bind(open_job, self.title, "job's title", lambda job, text: with_job_title(job, text or ""))
        bind(
            open_job,
            self.note,
            "note on the sheet",
            lambda job, text: with_sheet_note(job, text or ""),
        )
        for box, path, name in (
            (self.fork, "fork.kind", "fork"),
            (self.handlebars, "fork.handlebars", "handlebars"),
        ):
            box.chosen.connect(
                lambda answer, path=path, name=name: open_job.edit(
                    name, lambda job: with_value(job, path, answer)
                )
            )
        walk_down([self.name, self.fork, self.handlebars, self.title, self.note])

    def show_sheet(self, sheet: Sheet) -> None:
        """Show the bike as it is."""
        is_named = bool(sheet.name)
        self.name.show_value(
            sheet.name,
            "" if is_named else "missing: name the bike",
            "" if is_named else "attention",
        )
        self.title.show_value(self._open_job.job.title)
        self.note.show_value(sheet.note)
        self.fork.show_answer(sheet.fork.kind)
        self.handlebars.show_answer(sheet.fork.handlebars)


def dimensions_card(open_job: OpenJob, theme: Theme, show: Preferred) -> ValuesCard:
    """The card of the dimensions."""
    return ValuesCard("Dimensions", open_job, theme, show, DIMENSIONS)


def limits_card(open_job: OpenJob, theme: Theme, show: Preferred) -> ValuesCard:
    """The card of what the front end is set to."""
    names = {path: name for path, (name, _) in LIMITS.items()}
    return ValuesCard("Limits for the alignment", open_job, theme, show, names)


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
        "", refusals[0].understood, "write it as “0.4 deg” or, on the gauge, “0.5 mm”"
    )
