"""The fasteners that are checked again after some distance on the road, each with its tick.

The trap: a clamp settles, and one that is only looked at again is not checked. Each row takes
the value seen on the wrench, and a value far out is asked about before it is kept.
"""

from __future__ import annotations

from itertools import groupby

from PySide6.QtWidgets import QVBoxLayout

from aligner.assessment import Assessment
from aligner.assessment.rechecks import RecheckStanding
from aligner.assessment.ticks import with_recheck
from aligner.drawing.theme import GAP
from aligner.errors import AlignerError
from aligner.job import Job
from aligner.job.edits_tighten import without_recheck
from aligner.language import say
from aligner.sheet.quantities import Torque
from aligner.window.prove.recheck_row import RecheckRow
from aligner.window.setting import Setting
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.page import wrapping


class RecheckCard(Card):
    """A row for each fastener, by distance; it shows what the job says and keeps nothing."""

    def __init__(self, setting: Setting) -> None:
        super().__init__(say("Checked again on the road"))
        self.setAccessibleName(say("fasteners checked again on the road"))
        self._open_job = setting.open_job
        self._theme = setting.theme
        self._show = setting.show
        self._now = setting.now
        setting.open_job.started.connect(self._forget_typing)
        self.words = wrapping("", "quiet")
        self._column = QVBoxLayout()
        self._column.setSpacing(GAP)
        self.column.addWidget(self.words)
        self.column.addLayout(self._column)
        self._keys: tuple[tuple[str, float], ...] = ()
        self.rows: dict[str, RecheckRow] = {}

    def show_job(self, job: Job, assessment: Assessment) -> None:
        """Show the rows of a job; what is being typed in one stays."""
        rows = assessment.rechecks
        keys = tuple((row.key, row.after_km) for row in rows)
        if keys != self._keys:
            self._keys = keys
            self._make_rows(rows)
        for row in rows:
            self.rows[row.key].show_standing(row)
        done = sum(row.is_done for row in rows)
        self.words.setText(
            say(
                "{done} of {total} checked again. Set the wrench and see whether anything moves.",
                done=done,
                total=len(rows),
            )
            if rows
            else say(
                "The sheet asks for no fastener to be checked again. On the Bike stage, open a "
                "fastener and give a distance under “again after, on the road”."
            )
        )

    def _forget_typing(self) -> None:
        for row in self.rows.values():
            row.forget_typing()

    def _make_rows(self, rows: tuple[RecheckStanding, ...]) -> None:
        while (item := self._column.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        self.rows = {}
        for after_km, group in groupby(rows, lambda row: row.after_km):
            distance = self._show.show_distance(after_km)
            self._column.addWidget(label(say("After {distance}", distance=distance), "strong"))
            for row in group:
                made = RecheckRow(self._theme, self._show)
                made.ticked.connect(self._tick)
                made.unticked.connect(self._untick)
                self.rows[row.key] = made
                self._column.addWidget(made)

    def _tick(self, key: str, torque: Torque | None, wrench: str) -> None:
        row = self.rows[key]
        try:
            self._open_job.edit(
                say("checked again: {title}", title=row.title),
                lambda job: with_recheck(job, key, self._now(), torque=torque, wrench=wrench),
            )
        except AlignerError as refusal:
            row.say(say("Not ticked. {why}.", why=refusal))

    def _untick(self, key: str) -> None:
        self._open_job.edit(
            say("to check again: {title}", title=self.rows[key].title),
            lambda job: without_recheck(job, key, self._now()),
        )
