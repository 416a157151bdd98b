"""What the Inspect stage sends through the one door for edits, for one place."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import Any

from aligner.errors import AlignerError
from aligner.job import Gauge, Job
from aligner.job.edits_inspect import (
    with_finding,
    with_gauge,
    with_limit,
    with_note,
    with_part_fitted,
    with_photograph,
    with_readings,
    without_photograph,
)
from aligner.job.inspect import Finding, Place
from aligner.job.known_gauges import known_gauges, not_listed
from aligner.language import say, spoken
from aligner.sheet.quantities import Length
from aligner.storage.photographs import keep_photograph, photograph_path
from aligner.window.inspect.words import given_words
from aligner.window.open_job import OpenJob


class PlaceDoors:
    """The edits of one place, each under the name the Edit menu shows.

    Args:
        open_job: the job on the screen.
        now: the time.
        place: which place these are of.
        title: of the place, for the names of the steps.
    """

    def __init__(
        self, open_job: OpenJob, now: Callable[[], datetime], place: Place, title: str
    ) -> None:
        self._open_job = open_job
        self._now = now
        self.place = place
        self._title = title
        self._is_closed = False

    def close(self) -> None:
        """Send nothing any more: another job was opened, and what was typed was not for it."""
        self._is_closed = True

    @property
    def job_path(self) -> Path | None:
        """Where the job is kept; photographs are kept beside it."""
        return self._open_job.path

    @property
    def only_read(self) -> str:
        """Why nothing may be written beside the job, in words; "" where it may."""
        return self._open_job.only_read

    def drop_draft(self) -> None:
        """Show the job without what was being typed."""
        if not self._is_closed:
            self._open_job.drop_draft()

    def draft_readings(self, readings: tuple[Length, ...], gauge: str) -> None:
        """Show readings that are being typed."""
        self._draft(lambda job: self._with_readings(job, readings, gauge))

    def keep_readings(self, readings: tuple[Length, ...], gauge: str) -> None:
        """Keep readings, with the gauge shown beside them."""
        self._edit(say("readings"), lambda job: self._with_readings(job, readings, gauge))

    def keep_gauge(self, name: str) -> None:
        """Keep which gauge the readings are taken with."""
        self._edit(
            say("gauge"), lambda job: with_gauge(job, self.place, name, _described(job, name))
        )

    def draft_note(self, note: str) -> None:
        """Show a note that is being typed."""
        self._draft(lambda job: with_note(job, self.place, note))

    def keep_note(self, note: str) -> None:
        """Keep a note."""
        self._edit(say("note"), lambda job: with_note(job, self.place, note))

    def keep_finding(self, finding: Finding | None) -> None:
        """Keep what the person makes of it; `None` takes it back."""
        at = self._now()
        self._edit(
            given_words(finding) if finding else say("finding taken back"),
            lambda job: with_finding(job, self.place, finding, at),
        )

    def keep_fitted(self, is_fitted: bool) -> None:
        """Keep whether the new part is fitted."""
        name = say("new part fitted") if is_fitted else say("new part not fitted")
        self._edit(name, lambda job: with_part_fitted(job, self.place, is_fitted))

    def draft_limit(self, **changes: Any) -> None:
        """Show a limit that is being typed."""
        self._draft(lambda job: with_limit(job, self.place[0], **changes))

    def keep_limit(self, **changes: Any) -> None:
        """Keep a limit on the job's own copy of the sheet."""
        self._edit(say("limit"), lambda job: with_limit(job, self.place[0], **changes))

    def add_photographs(self, sources: list[Path]) -> str:
        """Copy photographs beside the job and keep their names; what was refused, in words.

        Raises:
            ValueError: the job was never saved, so it has no folder yet.
        """
        path = self.job_path
        if path is None:
            raise ValueError("a job that was never saved has no folder for photographs")
        refused, names = [], []
        for source in sources:
            try:
                names.append(keep_photograph(path, source))
            except AlignerError as error:
                refused.append(str(error))

        def with_all(job: Job) -> Job:
            for name in names:
                job = with_photograph(job, self.place, name)
            return job

        if names:
            self._edit(say("photograph"), with_all)
        return ". ".join(refused)

    def take_off_photograph(self, name: str) -> None:
        """Take a photograph off the finding; its file stays."""
        self._edit(
            say("photograph taken off"), lambda job: without_photograph(job, self.place, name)
        )

    def photograph_file(self, name: str) -> Path | None:
        """The file of a photograph; `None` where the job has no folder or the name is no name."""
        if self.job_path is None:
            return None
        try:
            return photograph_path(self.job_path, name)
        except AlignerError:
            return None

    def _with_readings(self, job: Job, readings: tuple[Length, ...], gauge: str) -> Job:
        if readings and gauge and job.inspect.at_place(self.place).gauge is None:
            job = with_gauge(job, self.place, gauge, _described(job, gauge))
        return with_readings(job, self.place, readings)

    def _draft(self, change: Callable[[Job], Job]) -> None:
        if not self._is_closed:
            self._open_job.draft(change)

    def _edit(self, name: str, change: Callable[[Job], Job]) -> None:
        if not self._is_closed:
            self._open_job.edit(step_name(self._title, name), change)


def step_name(title: str, what: str) -> str:
    """A step in the Undo menu: the place and what was done there."""
    return f"{title.lower() if spoken() == 'en' else title}: {what}"


def gauges_on_offer(job: Job) -> list[str]:
    """The job's own gauges, and behind them the common ones it does not have yet."""
    return [*job.gauges, *not_listed(job.gauges)]


def _described(job: Job, name: str) -> Gauge:
    return job.gauges[name] if name in job.gauges else known_gauges()[name].for_job()
