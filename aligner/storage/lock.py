"""A lock beside an open document, which says who works on it and since when.

The trap: a lock that outlives its program (power cut, kill) locks people out of their own
work. So the holder renews it now and then, one whose program is gone or that was not renewed
for long counts as left behind, and reading is never blocked. Taking over is done by one at a
time behind a second file, or two could each take a lock that the other had just taken.
"""

from __future__ import annotations

import contextlib
import os
import time
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from aligner.errors import AlignerError
from aligner.language import say
from aligner.storage.failure import save_failed
from aligner.storage.process import Worker, this_worker

RENEW_EVERY_S = 60.0
LEFT_BEHIND_AFTER_S = 600.0
_GUARD_LEFT_BEHIND_AFTER_S = 10.0
_LONGEST_NAME_BYTES = 200  # leaves room for what is put round it within 255
_LARGEST_LOCK_BYTES = 4096
_NEW_FILE = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0)


@dataclass(frozen=True, slots=True)
class Holder:
    """Who holds a document, as its lock file says.

    Attributes:
        worker: who; `None` while the lock is just being written, or cannot be read.
        since: when it was taken.
        mark: what tells this lock from any other.
        renewed_s: when it was last renewed, in seconds since 1970, as the drive says.
    """

    worker: Worker | None
    since: datetime | None
    mark: str
    renewed_s: float

    def is_left_behind(self, now_s: float | None = None) -> bool:
        """Whether nobody works there any more: its program is gone, or has long been silent."""
        if self.worker is not None and self.worker.is_surely_gone():
            return True
        return (time.time() if now_s is None else now_s) - self.renewed_s > LEFT_BEHIND_AFTER_S

    def who(self) -> str:
        """Who has the document, in words."""
        return str(self.worker or say("another program", meaning="for whom a document is open"))

    def since_when(self) -> str:
        """The time here since when; "" where the lock does not say."""
        return f"{self.since.astimezone():%Y-%m-%d %H.%M}" if self.since else ""


class LockedByAnother(AlignerError):
    """A document is open elsewhere. It can still be read.

    Attributes:
        holder: who has it.
    """

    def __init__(self, path: Path, holder: Holder) -> None:
        who, since = holder.who(), holder.since_when()
        if holder.is_left_behind():
            understood = (
                say(
                    "it was left open by {who} since {since}, which does not run any more",
                    who=who,
                    since=since,
                )
                if since
                else say("it was left open by {who}, which does not run any more", who=who)
            )
            wanted = say("take it over")
        else:
            understood = (
                say("it is open for {who} since {since}", who=who, since=since)
                if since
                else say("it is open for {who}", who=who)
            )
            wanted = say("open it to read, or take it over if nobody works there")
        super().__init__(path.name, understood, wanted)
        self.holder = holder


class LockLost(AlignerError):
    """Another program has taken the document over, or its lock file is gone."""

    def __init__(self, path: Path) -> None:
        super().__init__(
            path.name,
            say("another program has taken it over"),
            say("save under another name"),
        )


@dataclass(frozen=True, slots=True)
class Lock:
    """A lock that is held. Renew it every `RENEW_EVERY_S` seconds, and release it at the end.

    Attributes:
        document: the path of the document it stands beside.
        mark: what tells this lock from any other.
    """

    document: Path
    mark: str

    def renew(self) -> None:
        """Say that the holder still works.

        Raises:
            LockLost: another holds it now, or nobody.
        """
        if not self.is_held():
            raise LockLost(self.document)
        with contextlib.suppress(OSError):
            os.utime(lock_path(self.document))

    def is_held(self) -> bool:
        """Whether the lock file is still this one."""
        found = holder(self.document)
        return found is not None and found.mark == self.mark

    def release(self) -> None:
        """Give the document free. A lock that another has taken over meanwhile stays."""
        with contextlib.suppress(OSError, LockedByAnother), _guarded(self.document):
            if self.is_held():
                lock_path(self.document).unlink()


def lock_path(document: Path) -> Path:
    """Where the lock of a document is: a hidden file beside it."""
    document = Path(os.path.realpath(document))
    name = document.name
    while len(os.fsencode(name)) > _LONGEST_NAME_BYTES:
        name = name[:-1]
    return document.with_name(f".{name}.lock")


def holder(document: Path) -> Holder | None:
    """Who holds a document, or `None`; never fails, so that reading is never blocked."""
    path = lock_path(document)
    try:
        with path.open("rb") as file:
            content = file.read(_LARGEST_LOCK_BYTES)
            renewed_s = os.fstat(file.fileno()).st_mtime
    except OSError:
        return None
    worker, since, mark = _read(content)
    return Holder(worker, since, mark, renewed_s)


def take(document: Path) -> Lock:
    """Take the lock of a document that nobody holds.

    Raises:
        LockedByAnother: someone does, or did and left it behind; says who.
        SaveFailed: a lock cannot be written there; the document can still be read.
    """
    lock, content = _new_lock(document)
    try:
        _create(lock_path(document), content)
    except FileExistsError:
        raise _held(document) from None
    except OSError as error:
        raise save_failed(error, document) from error
    return lock


def take_over(document: Path, seen: Holder) -> Lock:
    """Take a document from the holder that was seen there, by the person's choice.

    Raises:
        LockedByAnother: meanwhile it is another that holds it.
        SaveFailed: a lock cannot be written there.
    """
    lock, content = _new_lock(document)
    path = lock_path(document)
    try:
        with _guarded(document):
            found = holder(document)
            if found is None:
                return take(document)
            if found.mark != seen.mark:
                raise LockedByAnother(document, found)
            new = path.with_name(f"{path.name}.{lock.mark}")
            _create(new, content)
            new.replace(path)
    except OSError as error:
        raise save_failed(error, document) from error
    return lock


def _held(document: Path) -> LockedByAnother:
    """The refusal to one who comes second, also where the first has gone meanwhile."""
    nobody = Holder(None, None, "", time.time())
    return LockedByAnother(document, holder(document) or nobody)


def _new_lock(document: Path) -> tuple[Lock, bytes]:
    import json  # late: only when a document is opened to be worked on

    worker, mark = this_worker(), os.urandom(8).hex()
    text = json.dumps(
        {
            "user": worker.user,
            "host": worker.host,
            "process": worker.process,
            "since": datetime.now(UTC).isoformat(timespec="seconds"),
            "mark": mark,
        }
    )
    return Lock(document, mark), text.encode()


def _read(content: bytes) -> tuple[Worker | None, datetime | None, str]:
    import json  # as above

    try:
        fields = json.loads(content)
        worker = Worker(str(fields["user"]), str(fields["host"]), int(fields["process"]))
        return worker, datetime.fromisoformat(fields["since"]), str(fields["mark"])
    except (ValueError, TypeError, LookupError, RecursionError):
        return None, None, content.hex()


def _create(path: Path, content: bytes) -> None:
    """A new file with this content; `FileExistsError` where there is one, whoever comes first."""
    handle = os.open(path, _NEW_FILE, 0o666)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(content)
    except OSError:
        with contextlib.suppress(OSError):
            path.unlink()
        raise


@contextlib.contextmanager
def _guarded(document: Path) -> Iterator[None]:
    """Be the only one who takes over or releases; one who died in here is passed after 10 s."""
    guard = lock_path(document).with_suffix(".lock-change")
    with contextlib.suppress(FileNotFoundError):
        if time.time() - guard.stat().st_mtime > _GUARD_LEFT_BEHIND_AFTER_S:
            guard.unlink()
    try:
        os.close(os.open(guard, _NEW_FILE, 0o666))
    except FileExistsError:
        raise _held(document) from None
    try:
        yield
    finally:
        with contextlib.suppress(OSError):
            guard.unlink()
