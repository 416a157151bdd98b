"""A document and the file it is kept in: what was last read or written there is remembered.

The trap: two windows, or a synchronised folder, and one save silently undoes another's work.
So before a file is replaced, what stands there must be what was last seen there.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from aligner.job import Job
from aligner.language import marked, say
from aligner.sheet import Sheet
from aligner.storage.documents import (
    LARGEST_BYTES,
    Document,
    as_bytes,
    document_and_newer,
    document_from,
    kind_of,
)
from aligner.storage.failure import SaveFailed
from aligner.storage.files import Agreement, read_whole, write_whole
from aligner.storage.places import ending_of, free_path
from aligner.storage.refusal import UnusableDocument
from aligner.storage.unknown_fields import Newer

_NOT_OURS = {
    "job": marked("what stands there is not a job that can be read, so it was left"),
    "sheet": marked("what stands there is not a sheet that can be read, so it was left"),
}


class ChangedOnDisk(SaveFailed):
    """The file is not as it was last read or written: another program has been there.

    Attributes:
        is_gone: there is no file any more.
    """

    def __init__(self, path: Path, *, is_gone: bool) -> None:
        understood = (
            say("the file is not there any more, so it was not saved")
            if is_gone
            else say("the file was changed by another program, so it was not saved")
        )
        wanted = (
            say("save it there anew, or under another name")
            if is_gone
            else say("keep both, or choose one")
        )
        super().__init__(path.name, understood, wanted)
        self.is_gone = is_gone


@dataclass(frozen=True, slots=True)
class DocumentFile:
    """A file as it was when last read or written.

    Attributes:
        path: of the file.
        size_bytes: its length.
        modified_ns: when it was last modified, in nanoseconds, as the drive says.
        digest: of its content.
        newer: what a newer minor version wrote in it; it is kept on saving.
    """

    path: Path
    size_bytes: int
    modified_ns: int
    digest: str
    newer: Newer | None = None

    def is_as_it_was(self) -> bool:
        """Whether the same content stands there now; only read where size or time differ.

        For a look now and then; a save compares the content itself.
        """
        try:
            now = self.path.stat()
            if (now.st_size, now.st_mtime_ns) == (self.size_bytes, self.modified_ns):
                return True
            return digest(read_whole(self.path, LARGEST_BYTES)) == self.digest
        except (OSError, UnusableDocument):
            return False


def digest(content: bytes) -> str:
    """What tells one content from another, as text."""
    from hashlib import blake2b  # late: the window is painted before a file is read

    return blake2b(content, digest_size=16).hexdigest()


def load_job(path: Path) -> tuple[Job, DocumentFile]:
    """The job a file holds, and the file as it was.

    Raises:
        NewerDocument: made by a newer version.
        UnusableDocument: in words.
    """
    return _loaded(path, Job)


def load_sheet(path: Path) -> tuple[Sheet, DocumentFile]:
    """The sheet a file holds, and the file as it was; raises as `load_job`."""
    return _loaded(path, Sheet)


def save_job(
    job: Job,
    path: Path,
    last: DocumentFile | None = None,
    *,
    over_changes: bool = False,
    newer: Newer | None = None,
) -> DocumentFile:
    """Write a job to its file; what stood there is kept as "NAME.previous".

    Args:
        job: to be written.
        path: of the file.
        last: the file as it was last read or written; `None` for a file new to this job. A job
            that stands there is then replaced, anything else is left alone.
        over_changes: replace whatever stands there, after the person chose so.
        newer: what a newer minor version wrote in the file the job comes from.

    Raises:
        ChangedOnDisk: the file is not as it was last read or written.
        SaveFailed: in words; the old file is whole.
    """
    return _saved(job, path, last, over_changes, newer)


def save_sheet(
    sheet: Sheet, path: Path, last: DocumentFile | None = None, *, over_changes: bool = False
) -> DocumentFile:
    """Write a sheet to its file, as `save_job` does a job."""
    return _saved(sheet, path, last, over_changes, None)


def keep_both(
    document: Document, path: Path, at: datetime, newer: Newer | None = None
) -> DocumentFile:
    """Write a document beside its file, which another program changed.

    Args:
        document: to be written.
        path: of the file that stays as it is.
        at: the time now, as the person's clock shows it; it becomes part of the name:
            "NAME (kept 2026-11-25 14.02).job.json".
        newer: what a newer minor version wrote in the file the document comes from.

    Raises:
        SaveFailed: in words.
    """
    ending = ending_of(path)
    stem = path.name.removesuffix(ending)
    kept = say("{name} (kept {at})", name=stem, at=f"{at:%Y-%m-%d %H.%M}")
    beside = path.with_name(f"{kept}{ending}")
    return _saved(document, free_path(beside), None, over_changes=False, newer=newer)


def _loaded(path: Path, model: type[Document]) -> tuple[Document, DocumentFile]:
    try:
        modified_ns = path.stat().st_mtime_ns  # before reading, so a later change shows
    except (OSError, ValueError):
        modified_ns = 0  # reading says in words what is wrong
    content = read_whole(path, LARGEST_BYTES)
    document, newer = document_and_newer(content, model)
    return document, DocumentFile(path, len(content), modified_ns, digest(content), newer)


def _saved(
    document: Document,
    path: Path,
    last: DocumentFile | None,
    over_changes: bool,
    newer: Newer | None,
) -> DocumentFile:
    newer = newer or (last.newer if last else None)
    content = as_bytes(document, newer)
    _check_reads_back(content, document, path)
    agree: Agreement | None = None
    if not over_changes:
        agree = _is_as_last_seen(path, last) if last else _is_ours(path, type(document))
    modified_ns = write_whole(path, content, keep_previous=True, agree=agree)
    return DocumentFile(path, len(content), modified_ns, digest(content), newer)


def _check_reads_back(content: bytes, document: Document, path: Path) -> None:
    """A document that could not be opened again must not take a good one's place."""
    try:
        document_from(content, type(document))
    except UnusableDocument as error:
        raise SaveFailed(
            path.name,
            say(
                "it could not be opened again ({field}: {understood}), so it was not saved",
                field=error.where,
                understood=error.understood,
            ),
            error.wanted or say("correct that field and save again"),
        ) from error


def _is_as_last_seen(path: Path, last: DocumentFile) -> Agreement:
    def agree(found: bytes | None) -> None:
        if found is None and not path.parent.is_dir():
            return  # the folder is gone: writing says so
        if found is None or digest(found) != last.digest:
            raise ChangedOnDisk(path, is_gone=found is None)

    return agree


def _is_ours(path: Path, model: type[Document]) -> Agreement:
    def agree(found: bytes | None) -> None:
        if not found:
            return
        try:
            document_from(found, model)
        except UnusableDocument as error:
            raise SaveFailed(
                path.name,
                say(_NOT_OURS[kind_of(model)]),
                say("save under another name"),
            ) from error

    return agree
