"""How an open document stands on the disk: whether its lock and its content are still ours.

The trap: asking a network drive that does not answer takes its time. So this is one plain
function without a window in it, to be called from a thread of its own.
"""

from __future__ import annotations

import contextlib
from dataclasses import dataclass
from pathlib import Path

from aligner.errors import AlignerError
from aligner.storage.document_file import DocumentFile
from aligner.storage.lock import Holder, Lock, holder, take
from aligner.storage.recovery import renew_recovery_copy


@dataclass(frozen=True)
class Standing:
    """How a document stands.

    Attributes:
        file: that was looked at, as it was last read or written.
        is_changed: another content stands there now.
        is_gone: nothing stands there, or its folder cannot be reached.
        lock: that is held after the look; `None` if none.
        taken_by: who holds the document now instead.
    """

    file: DocumentFile | None
    is_changed: bool = False
    is_gone: bool = False
    lock: Lock | None = None
    taken_by: Holder | None = None


def looked_at(file: DocumentFile | None, lock: Lock | None, copy: Path | None) -> Standing:
    """Look at a document, and say that its window still works on it.

    Args:
        file: as it was last read or written; `None` for a job that is in no file.
        lock: to be renewed; one whose file is gone is taken anew.
        copy: the recovery copy, to be renewed.
    """
    if copy is not None:
        renew_recovery_copy(copy)
    lock, taken_by = _renewed(lock)
    if file is None:
        return Standing(None, lock=lock, taken_by=taken_by)
    is_gone = not _is_there(file.path)
    return Standing(file, not is_gone and not file.is_as_it_was(), is_gone, lock, taken_by)


def _renewed(lock: Lock | None) -> tuple[Lock | None, Holder | None]:
    if lock is None:
        return None, None
    with contextlib.suppress(AlignerError):
        lock.renew()
        return lock, None
    found = holder(lock.document)
    if found is not None:
        return None, found
    with contextlib.suppress(AlignerError):
        return take(lock.document), None
    return lock, None  # its folder is not there now; it may come back


def _is_there(path: Path) -> bool:
    try:
        return path.exists()
    except OSError:
        return False
