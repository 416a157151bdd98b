"""The one job that a window has open, and the one door through which it is edited.

The trap: two copies of the truth. Widgets hold none: they show what stands here, and every
edit is an undoable command that puts a new job in place of the old one. What is being typed
but not yet left is a draft: it is shown and assessed at once, and becomes one undoable step
when the field is left.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoCommand, QUndoStack

from aligner.assessment import Assessment, assess
from aligner.assessment.freshness import is_ahead
from aligner.assessment.opened_again import with_dependents_opened
from aligner.job import Job
from aligner.job.stamps import now_here
from aligner.language import say
from aligner.storage.document_file import DocumentFile, keep_both, load_job, save_job

Change = Callable[[Job], Job]


class OpenJob(QObject):
    """A job, where it is kept, and its history of edits.

    Signals:
        started: another job is opened: what was being typed was not meant for it.
        changed: the job on the screen, and so its assessment, is another one.
        look_changed: another part of the same job is looked at.
        kept_changed: the file, or whether there are unsaved edits, has changed.
    """

    started = Signal()
    changed = Signal()
    kept_changed = Signal()
    look_changed = Signal()

    def __init__(
        self,
        job: Job | None = None,
        parent: QObject | None = None,
        *,
        now: Callable[[], datetime] = now_here,
    ) -> None:
        super().__init__(parent)
        self._now = now
        self._job = job or Job()
        self._draft: Job | None = None
        self._assessment: Assessment | None = None
        self._file: DocumentFile | None = None
        self._only_read = ""
        self._looked: datetime | None = None  # when the clock was last looked at
        self.edits = QUndoStack(self)
        self.edits.cleanChanged.connect(self._clean_changed)

    @property
    def job(self) -> Job:
        """The job as it stands on the screen, with what is being typed."""
        return self._draft or self._job

    @property
    def assessment(self) -> Assessment:
        """What that job amounts to, worked out once for each job."""
        if self._assessment is None:
            self._assessment = assess(self.job, self._time_for(self.job))
        return self._assessment

    def _time_for(self, job: Job) -> datetime | None:
        """A time late enough to tell whether a job's readings are dated ahead of the clock.

        The clock is looked at only where the last look does not settle it.
        """
        begun = job.align.begun
        if begun is not None and (self._looked is None or is_ahead(begun, self._looked)):
            self._looked = self._now()
        return self._looked

    def say_anew(self) -> None:
        """Work out the same assessment again: another language is spoken from here on."""
        self._assessment = None

    @property
    def path(self) -> Path | None:
        """The file the job is kept in, if it has one yet."""
        return self._file.path if self._file else None

    @property
    def file(self) -> DocumentFile | None:
        """That file as it was last read or written."""
        return self._file

    @property
    def only_read(self) -> str:
        """Why the file must not be written from here, in words; "" where it may be."""
        return self._only_read

    @only_read.setter
    def only_read(self, words: str) -> None:
        if words != self._only_read:
            self._only_read = words
            self.kept_changed.emit()

    @property
    def has_unsaved_edits(self) -> bool:
        """Whether anything was changed since the job was last saved or opened."""
        return not self.edits.isClean() or self._draft is not None

    @property
    def has_draft(self) -> bool:
        """Whether something is being typed that is not kept yet."""
        return self._draft is not None

    def draft(self, change: Change) -> None:
        """Show what the job would be with what is being typed; nothing is kept yet."""
        typed = change(self._job)
        self._show(draft=None if typed == self._job else typed)

    def drop_draft(self) -> None:
        """Show the job without what was being typed."""
        if self._draft is not None:
            self._show(draft=None)

    def keep_draft(self) -> None:
        """Make a step of what is being typed where its field was not left; it is saved then."""
        draft = self._draft
        if draft is not None:
            self.edit(say("what was typed"), lambda _: draft)

    def edit(self, name: str, change: Change) -> None:
        """Change the job by one undoable step.

        Args:
            name: of the step, as the Edit menu shows it ("left reading").
            change: from the job as it is to the job as it shall be.
        """
        before = self._job
        after = with_dependents_opened(before, change(before), self._now())
        self._draft = None
        if after == before:
            self._show(draft=None)
            return
        self.edits.push(_Edit(self, name, before, after))

    def start(self, job: Job, file: DocumentFile | None = None, *, only_read: str = "") -> None:
        """Open another job in place of this one; its history begins anew."""
        self._job, self._draft, self._assessment = job, None, None
        self._file = file
        self._only_read = only_read
        self.edits.clear()
        self.started.emit()
        self._show(draft=None)
        self.kept_changed.emit()

    def load(self, path: Path) -> None:
        """Open the job a file holds.

        Raises:
            UnusableDocument: in words; the job open until now stays open.
        """
        job, file = load_job(path)
        self.start(job, file)

    def recover(self, job: Job, before: Job, file: DocumentFile | None) -> None:
        """Open a job found in a recovery copy, as one undoable step from what its file holds."""
        self.start(before, file)
        self.edit(say("recovered edits"), lambda _: job)

    def save(self, path: Path | None = None, *, over_changes: bool = False) -> None:
        """Write the job to its file, or to another that becomes its file.

        Args:
            path: of the file; its own if left out.
            over_changes: replace what another program wrote there, after the person chose so.

        Raises:
            SaveFailed, ChangedOnDisk: in words; the old file is whole and the edits stay here.
        """
        place = path or self.path
        if place is None:
            raise ValueError("a job that was never saved needs a path")
        last = self._file if place == self.path else None
        newer = self._file.newer if self._file else None
        self._now_in(
            save_job(self._job, place, last, over_changes=over_changes, newer=newer),
        )

    def save_copy(self, path: Path) -> None:
        """Write the job to another file, which does not become its own; raises as `save`."""
        save_job(self._job, path, newer=self._file.newer if self._file else None)

    def save_beside(self, at: datetime) -> None:
        """Write the job beside its file, which another program changed; raises as `save`."""
        if self._file is None:
            raise ValueError("a job that was never saved has no file to stand beside")
        self._now_in(keep_both(self._job, self._file.path, at, self._file.newer))

    def _now_in(self, file: DocumentFile) -> None:
        self._file = file
        self._only_read = ""
        self.edits.setClean()
        self.kept_changed.emit()

    def put(self, job: Job) -> None:
        """Set the job without a step of its own: only the undoable commands call this."""
        self._job = job
        self._show(draft=None)

    def _clean_changed(self, _is_clean: bool) -> None:
        self.kept_changed.emit()

    def _show(self, draft: Job | None) -> None:
        self._draft = draft
        self._assessment = None
        self.changed.emit()


class _Edit(QUndoCommand):
    """One undoable step: the job before it and the job after it."""

    def __init__(self, open_job: OpenJob, name: str, before: Job, after: Job) -> None:
        super().__init__(name)
        self._open_job = open_job
        self._before = before
        self._after = after

    def undo(self) -> None:
        self._open_job.put(self._before)

    def redo(self) -> None:
        self._open_job.put(self._after)
