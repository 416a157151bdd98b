"""One gauge of the job: its name, what is known of it and from where, and how it is used."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from aligner.assessment.readings import gauge_refusal
from aligner.drawing.theme import Theme
from aligner.job import Gauge, Job
from aligner.job.edits_gauges import (
    free_gauge_name,
    gauge_uses,
    with_gauge_changed,
    with_gauge_renamed,
)
from aligner.job.known_gauges import known_gauge
from aligner.language import listed, marked, say
from aligner.sheet.quantities import Length
from aligner.units.preferred import Preferred
from aligner.window.align.entry import Entry, reads
from aligner.window.align.fold import Fold
from aligner.window.measuring.guides import measured_by
from aligner.window.open_job import Change, OpenJob
from aligner.window.widgets.page import wrapping

#: How each is found out.
_GUIDES = {
    "resolution": "gauge_step",
    "limit_of_error": "gauge_error",
    "repeatability": "gauge_repeats",
}
#: Field, name, the name of the undoable step that changes it, and what it is.
_VALUES = (
    (
        "resolution",
        marked("resolution"),
        marked("resolution of the gauge"),
        marked("The smallest step its scale or display is read to."),
    ),
    (
        "limit_of_error",
        marked("limit of error ±"),
        marked("limit of error of the gauge"),
        marked("The most it may be wrong by, the same every time."),
    ),
    (
        "repeatability",
        marked("repeatability"),
        marked("repeatability of the gauge"),
        marked("How far readings of one length scatter in your hand: their standard deviation."),
    ),
)


class GaugeFold(Fold):
    """One gauge."""

    def __init__(self, theme: Theme, show: Preferred, open_job: OpenJob, name: str) -> None:
        super().__init__(theme)
        self.name = name
        self._show = show
        self._open_job = open_job
        self._how_to = wrapping("", "quiet")
        self.body_column.addWidget(self._how_to)
        entry = self.add_entry("name", Entry(theme, say("name"), self._read_name))
        entry.kept.connect(self._rename)
        for field, words, step, about in _VALUES:
            read = reads(Length, show.length)
            entry = Entry(theme, say(words), read, say(about), show.length)
            measured_by(entry, _GUIDES[field])
            self._connect(field, say(step), entry)
        about = say("Where these values come from.")
        source = Entry(theme, say("source"), lambda text: text, about)
        self._connect("source", say("source of the gauge"), source)
        source.went_on.connect(lambda: self.head.setFocus(Qt.FocusReason.TabFocusReason))
        row = QHBoxLayout()
        self.remove = QPushButton(say("Remove"))
        self._used = wrapping("", "small")
        row.addWidget(self.remove)
        row.addWidget(self._used, 1)
        self.body_column.addLayout(row)

    def show_gauge(self, job: Job, name: str) -> None:
        """Show a gauge of a job."""
        self.name = name
        gauge = job.gauges[name]
        uses = gauge_uses(job, name)
        refusal = gauge_refusal(name, gauge)
        values = ", ".join(
            (
                say("read to {size}", size=gauge.resolution.said),
                say("wrong by ± {size} at most", size=gauge.limit_of_error.said),
                say("repeats to {size}", size=gauge.repeatability.said),
            )
        )
        self.say(name, f"{refusal}." if refusal else values)
        self.entries["name"].show_text(name)
        for field, *_ in _VALUES:
            held = getattr(gauge, field)
            text = held.said.removesuffix(f" {self._show.length}") if held.value else ""
            trouble = refusal if refusal and field == "resolution" else ""
            self.entries[field].show_text(text, trouble)
        self.entries["source"].show_text(gauge.source)
        known = known_gauge(name)
        self._how_to.setText(say(known.how_to) if known else "")
        self._how_to.setVisible(known is not None)
        self.remove.setAccessibleName(say("Remove {name}", name=name))
        self.remove.setEnabled(not uses)
        used = say("Used for {uses}: name another there to remove it.", uses=listed(uses))
        self._used.setText(used if uses else "")

    @property
    def how_to(self) -> str:
        """How it is used, where it is of the built-in list."""
        return self._how_to.text()

    @property
    def used(self) -> str:
        """What it was used for, where it cannot be removed."""
        return self._used.text()

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops, as the eye goes."""
        return [*super().stops(), self.remove]

    def _connect(self, field: str, step: str, entry: Entry) -> None:
        self.add_entry(field, entry)
        entry.typed.connect(lambda value: self._open_job.draft(self._change(field, value)))
        entry.kept.connect(lambda value: self._open_job.edit(step, self._change(field, value)))

    def _change(self, field: str, value: object) -> Change:
        given = getattr(Gauge(), field) if value is None else value
        changes = {field: given}
        name = self.name
        return lambda job: with_gauge_changed(job, name, **changes)

    def _read_name(self, text: str) -> str:
        return free_gauge_name(self._open_job.job, text, but=self.name)

    def _rename(self, new: str) -> None:
        name = self.name
        self._open_job.edit(
            say("name of the gauge"), lambda job: with_gauge_renamed(job, name, new)
        )
