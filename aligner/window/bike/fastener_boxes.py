"""The boxes and choices of one fastener, each bound to its field on the sheet.

The trap: a fastener changes its place on the sheet when others come or go. The boxes know it
by its place as last shown, and read and edit it there.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import datetime
from typing import Any

from PySide6.QtCore import QObject, Signal

from aligner.assessment.notice import Level
from aligner.drawing.theme import Theme
from aligner.errors import AlignerError
from aligner.job import Job
from aligner.job.edits_sheet import (
    torque_source,
    with_fastener,
    with_torque,
    with_torque_source,
)
from aligner.language import marked, say
from aligner.sheet import Fastener, Sheet
from aligner.units.preferred import Preferred
from aligner.window.bike.boxes import ValueBox
from aligner.window.bike.fastener_reads import emptied, field_text, read_field
from aligner.window.bike.values import bind
from aligner.window.measuring.guides import measured_by
from aligner.window.open_job import OpenJob
from aligner.window.widgets.choice import Choice, Row

#: What the manual does not print can be measured; all else is only ever taken from it.
_GUIDES = {"thread": "thread"}
_NEEDED = {"name": marked("A fastener without a name: name it as the checklist shall.")}


class FastenerBoxes(QObject):
    """What is typed and chosen of one fastener.

    Signals:
        kept: a box was left with another value.
        refused: a choice cannot be, in words; "" once one is taken.
    """

    kept = Signal()
    refused = Signal(str)

    def __init__(
        self, open_job: OpenJob, theme: Theme, show: Preferred, now: Callable[[], datetime]
    ) -> None:
        super().__init__()
        self.theme = theme
        self.show = show
        self.place = 0
        self.boxes: dict[str, ValueBox] = {}
        self.choices: dict[str, Choice] = {}
        self._open_job = open_job
        self._now = now

    @property
    def sheet(self) -> Sheet:
        """The sheet as it stands on the screen."""
        return self._open_job.job.sheet

    @property
    def fastener(self) -> Fastener:
        """The fastener as it stands on the screen."""
        return self.sheet.fasteners[self.place]

    def add_box(self, field: str, name: str, example: str) -> ValueBox:
        """A box for a field; "source" and "seating_source" are those of the torques."""
        made = ValueBox(
            self.theme,
            name,
            lambda text: self._read(field, text),
            example,
            needed=say(_NEEDED.get(field, "")),
        )
        measured_by(made, _GUIDES.get(field, "from_the_manual"))
        made.kept.connect(self.kept)
        bind(
            self._open_job,
            made,
            lambda: f"{self.fastener.name}, {name}",
            lambda job, value: self._changed(job, field, value),
        )
        self.boxes[field] = made
        return made

    def add_choice(self, field: str, name: str, rows: Iterable[Row]) -> None:
        """A choice for a field, from values with their words."""
        made = Choice(name, rows, letters=8)
        made.chosen.connect(lambda value: self._choose(field, name, value))
        self.choices[field] = made

    def show_text(self, field: str, understood: str = "", tone: str = "") -> None:
        """Show a field as the sheet has it, with words under it."""
        if field in ("source", "seating_source"):
            which = "torque" if field == "source" else "seating"
            text = torque_source(self.sheet, self.fastener, which)
        else:
            text = field_text(self.fastener, field)
        self.boxes[field].show_value(text, understood, tone)

    def doubts(self) -> dict[str, str]:
        """What there is to ask about the fastener's values, by field."""
        where = f"sheet.fasteners.{self.fastener.name}."
        return {
            notice.where.removeprefix(where).partition(".")[0]: notice.text
            for notice in self._open_job.assessment.tightening.notices
            if notice.where.startswith(where)
            and (notice.level is Level.ATTENTION or notice.where.endswith(".thread"))
        }

    def _choose(self, field: str, name: str, value: object) -> None:
        self.refused.emit("")
        try:
            self._open_job.edit(
                f"{self.fastener.name}, {name}",
                lambda job: with_fastener(job, self.place, self._now(), **{field: value}),
            )
        except AlignerError as error:
            self.refused.emit(f"{error}.")

    def _read(self, field: str, text: str) -> Any:
        if field in ("source", "seating_source"):
            return text
        return read_field(self.sheet, self.place, field, text)

    def _changed(self, job: Job, field: str, value: Any) -> Job:
        if field in ("source", "seating_source"):
            which = "torque" if field == "source" else "seating"
            return with_torque_source(job, self.place, which, value or "", self._now())
        if field in ("torque", "seating"):
            return with_torque(job, self.place, field, value, self._now())
        if value is None:
            value = emptied(job.sheet.fasteners[self.place], field)
        return with_fastener(job, self.place, self._now(), **{field: value})
