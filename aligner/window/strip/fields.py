"""The fields of what was found: each under its path in the job, walked in one order by Enter.

The trap: a field that is hidden is not there. Enter goes past it, and what it holds stays.
"""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QWidget

from aligner.assessment.readings import mean_mm
from aligner.job.edits_strip import with_as_found
from aligner.job.listed_gauges import gauge_choices
from aligner.language import say
from aligner.sheet.quantities import Quantity, Volume
from aligner.units.preferred import Preferred
from aligner.window.open_job import OpenJob
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.reading_box import ReadingBox
from aligner.window.widgets.word_line import WordLine

Field = ReadingBox | WordLine | Choice


class FoundFields(QObject):
    """Every field by its path below `as_found` ("protrusion.left"), in the order of the eye.

    Signals:
        went_on: Enter after the last of them.
    """

    went_on = Signal()

    def __init__(self, open_job: OpenJob, show: Preferred, parent: QObject) -> None:
        super().__init__(parent)
        self._open_job = open_job
        self._show = show
        self._fields: dict[str, Field] = {}

    def __getitem__(self, path: str) -> Field:
        return self._fields[path]

    def add(self, path: str, field: Field, name: str) -> None:
        """Take a field in, and send what it says through the one door for edits.

        Args:
            path: where it stands in the job.
            field: whose readings, words or choice it is.
            name: of its step in the Undo menu.
        """
        self._fields[path] = field

        def edit(said: object) -> None:
            self._open_job.edit(name, lambda job: with_as_found(job, path, _value(path, said)))

        def draft(said: object) -> None:
            self._open_job.draft(lambda job: with_as_found(job, path, _value(path, said)))

        if isinstance(field, Choice):
            field.chosen.connect(edit)
        else:
            field.typed.connect(draft)
            field.kept.connect(edit)

    def walk(self) -> None:
        """Let Enter and Tab go from each to the next, once all are there."""
        fields = list(self._fields.values())
        for field, following in pairwise(fields):
            field.went_on.connect(lambda field=field: self._go_on_from(field))
            QWidget.setTabOrder(_last(field), _first(following))
        fields[-1].went_on.connect(self.went_on)

    def show_held(self) -> None:
        """Show what the job holds; what is being typed stays."""
        job = self._open_job.job
        for path, field in self._fields.items():
            name, _, part = path.partition(".")
            held = getattr(job.as_found, name)
            held = getattr(held, part) if part else held
            if isinstance(field, ReadingBox):
                is_one = len(field.cells) == 1
                none = say("none", meaning="a reading") if is_one else say("not read")
                field.show_readings(*_readings(held, none, self._show))
            elif isinstance(field, WordLine):
                field.show_kept(held)
            else:
                field.offer(gauge_choices(job, held))
                field.show_value(held)

    def forget_typing(self) -> None:
        """Another job was opened: what could not be read was not typed for it."""
        for field in self._fields.values():
            if isinstance(field, ReadingBox):
                field.forget_typing()
            elif isinstance(field, WordLine):
                field.end_typing()

    def _go_on_from(self, field: Field) -> None:
        fields = list(self._fields.values())
        after = fields[fields.index(field) + 1 :]
        following = next((each for each in after if not each.isHidden()), None)
        if isinstance(following, ReadingBox):
            following.go_to_first_empty()
        elif following is not None:
            following.setFocus(Qt.FocusReason.TabFocusReason)


def _value(path: str, said: object) -> object:
    """What goes into the job: the oil of a leg is one volume, all else is as it was said."""
    if path.endswith(".oil") and isinstance(said, tuple):
        return said[0] if said else None
    return said


def _readings(held: object, none: str, show: Preferred) -> tuple[tuple[Quantity, ...], str]:
    """The readings of a box, and what stands large over them."""
    if isinstance(held, Volume):
        return (held,), held.said
    if not isinstance(held, tuple) or not held:
        return (), none
    return held, show.show_length(mean_mm(held))


def _first(field: Field) -> QWidget:
    return field.first_cell if isinstance(field, ReadingBox) else field


def _last(field: Field) -> QWidget:
    return field.cells[-1] if isinstance(field, ReadingBox) else field
