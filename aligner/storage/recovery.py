"""Copies of what was typed since the last save, so that it survives a crash.

The trap: a recovery copy that silently takes the document's place undoes what another
program saved meanwhile. So a copy remembers the file it belongs to as it was then, and at
the next start it is laid before the person with what differs, in words.

A copy is one line of facts, then the document's bytes as they would have been saved: a
person can take the document out with a text editor.
"""

from __future__ import annotations

import contextlib
import json
import os
import time
from dataclasses import dataclass
from datetime import UTC, datetime
from enum import StrEnum
from pathlib import Path

from aligner.job import Job
from aligner.storage.changes import changes
from aligner.storage.document_file import DocumentFile, digest, load_job
from aligner.storage.documents import LARGEST_BYTES, NewerDocument, document_and_newer
from aligner.storage.failure import save_failed
from aligner.storage.files import read_whole, write_whole
from aligner.storage.process import Worker, this_worker
from aligner.storage.refusal import UnusableDocument

LEFT_BEHIND_AFTER_S = 600.0
_UNFINISHED_AFTER_S = 24 * 3600.0

_ENDING = ".recovery"


class Original(StrEnum):
    """How the file that a recovery copy belongs to stands now."""

    NEVER_SAVED = "never saved"
    AS_IT_WAS = "as it was"
    CHANGED_SINCE = "changed since by another program"
    GONE = "not there any more"
    UNREADABLE = "there, but it cannot be read"


@dataclass(frozen=True)
class RecoveryCopy:
    """A copy found in the recovery folder.

    Attributes:
        path: of the copy.
        original: the file the job was opened from or last saved to; `None` if never saved.
        original_digest: of that file's content as it was then; "" if never saved.
        written: when the copy was made.
        worker: the program that made it; `None` where the copy does not say.
        content: the job as it would have been saved.
        is_whole: whether the copy is as it was written; of a damaged one take what can be read.
        renewed_s: when its program last said that it still runs, in seconds since 1970.
    """

    path: Path
    original: Path | None
    original_digest: str
    written: datetime
    worker: Worker | None
    content: bytes
    is_whole: bool = True
    renewed_s: float = 0.0

    def may_be_open_still(self, now_s: float | None = None) -> bool:
        """Whether the program that made it may be running, and the copy then is not for us.

        After the computer was started anew, another program may have its process number; so
        one that has not renewed its copy for long counts as gone.
        """
        if self.worker is None or self.worker.is_surely_gone():
            return False
        silent_s = (time.time() if now_s is None else now_s) - self.renewed_s
        return silent_s < LEFT_BEHIND_AFTER_S

    @property
    def file(self) -> DocumentFile | None:
        """The original as it was then: a save over what it became since is refused."""
        if self.original is None:
            return None
        newer = document_and_newer(self.content, Job)[1]
        return DocumentFile(self.original, -1, -1, self.original_digest, newer)


@dataclass(frozen=True)
class Found:
    """What a recovery copy holds, held against its original.

    Attributes:
        job: the copy's job; `None` where it cannot be read.
        original: how the original stands now.
        changes: what differs from the original as it is now, in words; from an empty job
            where there is none to read.
        trouble: why the copy cannot be read, in words; "" where it can.
    """

    job: Job | None
    original: Original
    changes: tuple[str, ...]
    trouble: str = ""


def keep_recovery_copy(
    folder: Path, name: str, content: bytes, file: DocumentFile | None, at: datetime
) -> Path:
    """Write the copy of one window's unsaved edits, in place of the copy before.

    Args:
        folder: for recovery copies; it is made if it is not there, for this person alone.
        name: of the copy, the same for one open job, other than any other's.
        content: the job as it would be saved.
        file: the file as it was last read or written; `None` if never saved.
        at: the time now, with its offset from UTC.

    Returns:
        The path of the copy.

    Raises:
        SaveFailed: in words; the copy before is whole.
    """
    path = folder / f"{name}{_ENDING}"
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as error:
        raise save_failed(error, folder) from error
    worker = this_worker()
    facts = {
        "recovery": 1,
        "original": str(file.path.absolute()) if file else "",
        "original_digest": file.digest if file else "",
        "written": at.isoformat(),
        "user": worker.user,
        "host": worker.host,
        "process": worker.process,
        "digest": digest(content),
    }
    write_whole(path, json.dumps(facts).encode() + b"\n" + content)
    return path


def renew_recovery_copy(path: Path) -> None:
    """Say that the program that made the copy still runs; where that fails, nothing is lost."""
    with contextlib.suppress(OSError):
        os.utime(path)


def adopt_recovery_copy(copy: RecoveryCopy, name: str) -> Path | None:
    """Make a copy left behind one's own under a new name; `None` where another was first."""
    path = copy.path.with_name(f"{name}{_ENDING}")
    try:
        copy.path.rename(path)
    except OSError:
        return None
    renew_recovery_copy(path)
    return path


def remove_recovery_copy(path: Path) -> None:
    """Take a copy away: after a save, or when the person chose to drop it."""
    with contextlib.suppress(OSError):
        path.unlink()


def recovery_copies(folder: Path) -> tuple[RecoveryCopy, ...]:
    """The copies in the recovery folder, newest first; a damaged one among them never fails.

    What a copy begun more than a day ago left unfinished is taken away.
    """
    found: list[RecoveryCopy] = []
    try:
        entries = sorted(folder.iterdir())
    except OSError:
        return ()
    paths = [path for path in entries if path.name.endswith(_ENDING)]
    for path in entries:
        with contextlib.suppress(OSError):
            is_left_over = path.name.endswith(".part") and path.name.startswith(".")
            if is_left_over and path.stat().st_mtime < time.time() - _UNFINISHED_AFTER_S:
                path.unlink()
    for path in paths:
        with contextlib.suppress(UnusableDocument, OSError):
            found.append(_read(path, read_whole(path, 2 * LARGEST_BYTES)))
    return tuple(sorted(found, key=lambda copy: copy.written, reverse=True))


def found_in(copy: RecoveryCopy) -> Found:
    """What a copy holds and how it differs from its original as it is now."""
    try:
        job, _ = document_and_newer(copy.content, Job)
    except UnusableDocument as error:
        return Found(None, _original(copy)[0], (), str(error))
    state, original = _original(copy)
    return Found(job, state, changes(original or Job(), job))


def _original(copy: RecoveryCopy) -> tuple[Original, Job | None]:
    if copy.original is None:
        return Original.NEVER_SAVED, None
    try:
        job, file = load_job(copy.original)
    except NewerDocument:
        return Original.CHANGED_SINCE, None
    except UnusableDocument:
        gone = not copy.original.exists()
        return (Original.GONE if gone else Original.UNREADABLE), None
    is_as_it_was = file.digest == copy.original_digest
    return (Original.AS_IT_WAS if is_as_it_was else Original.CHANGED_SINCE), job


def _read(path: Path, whole: bytes) -> RecoveryCopy:
    line, _, content = whole.partition(b"\n")
    renewed_s = path.stat().st_mtime
    try:
        facts = json.loads(line)
        original = Path(facts["original"]) if facts["original"] else None
        written = datetime.fromisoformat(facts["written"])
        worker = Worker(str(facts["user"]), str(facts["host"]), int(facts["process"]))
        return RecoveryCopy(
            path,
            original,
            str(facts["original_digest"]),
            written.astimezone(UTC),
            worker,
            content,
            facts["digest"] == digest(content),
            renewed_s,
        )
    except (ValueError, TypeError, LookupError, RecursionError, OverflowError):
        at = datetime.fromtimestamp(renewed_s, UTC)
        return RecoveryCopy(path, None, "", at, None, content or whole, is_whole=False)
