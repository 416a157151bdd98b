"""Unsaved edits, and what is being typed, kept in a recovery copy within two seconds.

The trap: a copy written at every keystroke, or flushed to the disk while the window waits,
is felt. So a first change starts a second's wait, all that comes meanwhile goes into the same
copy, and another thread writes it.
"""

from __future__ import annotations

import os
from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal

from aligner.job import Job
from aligner.language import say
from aligner.storage.document_file import DocumentFile
from aligner.window.files.background import Background
from aligner.window.open_job import OpenJob
from aligner.window.widgets.question_bar import QuestionBar

WAIT_MS = 1000


class Autosave(QObject):
    """The recovery copy of one open job.

    Signals:
        kept: a copy of the job as it was a moment ago is on the disk.
        failed: it could not be written, in words; said once until one is written again.
    """

    kept = Signal()
    failed = Signal(str)

    def __init__(
        self,
        open_job: OpenJob,
        background: Background,
        now: Callable[[], datetime],
        folder: Path,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._open_job = open_job
        self._background = background
        self._now = now
        self._folder = folder
        self._copy: Path | None = None
        self._kept: tuple[Job, DocumentFile | None] | None = None
        self._is_writing = self._has_failed = False
        self.name = _new_name()
        self._wait = QTimer(self, singleShot=True, interval=WAIT_MS)
        self._wait.timeout.connect(self.keep)
        open_job.changed.connect(self._begin)
        open_job.kept_changed.connect(self._begin)

    @property
    def copy(self) -> Path | None:
        """The copy on the disk; `None` where there is none."""
        return self._copy

    def adopt(self, copy: Path) -> None:
        """Go on with a copy that was found, now of this name; it is written over from now on."""
        self._copy = copy

    def keep(self) -> None:
        """Write the copy now, in the other thread; take it away where all edits are saved."""
        self._wait.stop()
        open_job = self._open_job
        if not open_job.has_unsaved_edits:
            self.drop()
            return
        job, file = open_job.job, open_job.file
        if (job, file) == self._kept:
            return
        if self._is_writing:
            self._begin()
            return
        self._is_writing = True
        folder, name, at = self._folder, self.name, self._now()

        def written(came: Path | str) -> None:
            self._written(came, job, file)

        self._background.run(lambda: _written_copy(folder, name, job, file, at), written)

    def drop(self) -> None:
        """Take the copy away: all is saved, or the person let the edits go."""
        self._wait.stop()
        self._kept = None
        copy, self._copy = self._copy, None
        if copy is None and not self._is_writing:
            return
        from aligner.storage.recovery import remove_recovery_copy

        path = copy or self._folder / f"{self.name}.recovery"
        self.name = _new_name()  # what is still being written goes to the old name, then goes
        self._background.run(lambda: remove_recovery_copy(path))

    def _begin(self) -> None:
        if not self._wait.isActive():
            self._wait.start()

    def _written(self, came: Path | str, job: Job, file: DocumentFile | None) -> None:
        self._is_writing = False
        if isinstance(came, str):
            if not self._has_failed:
                self._has_failed = True
                self.failed.emit(came)
            return
        self._has_failed = False
        if came.stem != self.name:
            return  # dropped meanwhile
        self._copy, self._kept = came, (job, file)
        self.kept.emit()


def say_no_copy(question: QuestionBar, why: str) -> None:
    """Say in the window that no recovery copy can be written."""
    question.ask(
        say("No recovery copy can be written; save the job now and then. {why}.", why=why),
        [(say("Understood"), lambda: None)],
        takes_keyboard=False,
    )


def _written_copy(
    folder: Path, name: str, job: Job, file: DocumentFile | None, at: datetime
) -> Path | str:
    """The copy's path, or why there is none."""
    from aligner.errors import AlignerError
    from aligner.storage.documents import as_bytes
    from aligner.storage.recovery import keep_recovery_copy

    try:
        content = as_bytes(job, file.newer if file else None)
        return keep_recovery_copy(folder, name, content, file, at)
    except (AlignerError, OSError, ValueError) as error:
        return str(error)


def _new_name() -> str:
    return f"{os.getpid()}-{os.urandom(4).hex()}"
