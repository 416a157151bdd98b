"""Files read and written whole: the old file stays until the new one is safely on the disk.

The trap: a file written in place is damaged if the power fails half way. So the new bytes go
to a file of their own in the same folder, are flushed to the disk, and take the old name in
one step; the folder is flushed too, or the step itself might be forgotten.
"""

from __future__ import annotations

import contextlib
import errno
import os
import stat
import time
from collections.abc import Callable
from itertools import count
from pathlib import Path

from aligner.errors import AlignerError
from aligner.language import say
from aligner.storage.failure import SaveFailed, save_failed, unconfirmed
from aligner.storage.refusal import UnusableDocument

Agreement = Callable[[bytes | None], None]

_BINARY = getattr(os, "O_BINARY", 0)  # without it Windows would change the line ends
_NEW_FILE = os.O_WRONLY | os.O_CREAT | os.O_EXCL | _BINARY | getattr(os, "O_CLOEXEC", 0)
_LONGEST_NAME_BYTES = 255
_LEFT_OVER_AFTER_S = 24 * 3600.0
_number = count(1)
#: What a drive answers that cannot flush a folder, or does not let us: there is no more to do.
_NO_FOLDER_FLUSH = {errno.EINVAL, errno.ENOTSUP, errno.EACCES, errno.EPERM, errno.EBADF}


def read_whole(path: Path, largest: int) -> bytes:
    """All bytes of a document's file.

    Args:
        path: of the file.
        largest: bytes; a longer file is not read to its end, one byte more than this is returned.

    Raises:
        UnusableDocument: in words: no such file, a folder, no permission, not readable.
    """
    try:
        if path.is_dir():
            raise IsADirectoryError(errno.EISDIR, "it is a folder")
        with path.open("rb") as file:
            return file.read(largest + 1)
    except (FileNotFoundError, NotADirectoryError) as error:
        raise UnusableDocument("", say("there is no such file"), say("check its name")) from error
    except IsADirectoryError as error:
        raise UnusableDocument(
            "", say("this is a folder"), say("name a job document in it")
        ) from error
    except PermissionError as error:
        raise UnusableDocument(
            "", say("reading it is not allowed"), say("allow reading it, or ask its owner")
        ) from error
    except OSError as error:
        raise UnusableDocument(
            "",
            say("it cannot be read ({why})", why=error.strerror),
            say("take another copy of it"),
        ) from error
    except ValueError as error:  # a null character in the name
        raise UnusableDocument("", say("this is not a file name"), say("check its name")) from error


def previous_path(path: Path) -> Path:
    """Where the version before the last save is kept: "NAME.previous" beside the document."""
    name = path.name
    while len(os.fsencode(name)) > _LONGEST_NAME_BYTES - len(".previous"):
        name = name[:-1]
    return path.with_name(f"{name}.previous")


def write_whole(
    path: Path, content: bytes, *, keep_previous: bool = False, agree: Agreement | None = None
) -> int:
    """Put a document's bytes on disk in place of the file's old ones, or leave the old ones.

    A symlink is followed; permissions, and the owner as far as allowed, are kept.

    Args:
        path: of the file; its folder must be there.
        content: all of the new file.
        keep_previous: keep the old bytes as `previous_path` until the next save.
        agree: called with the bytes that stand there now (`None`: no file), once before anything
            is written and once just before the swap; what it raises stops the save. It is not
            asked where the bytes are the new ones already.

    Returns:
        When the new file was last modified, in nanoseconds, as the drive says.

    Raises:
        SaveFailed: in words; the old file is whole and the new bytes are gone from the disk.
    """
    try:
        target = Path(os.path.realpath(path))
        modified_ns = _replaced(target, content, keep_previous, agree)
    except OSError as error:
        raise save_failed(error, path) from error
    except AlignerError:
        raise
    except ValueError as error:  # a null character, or one the drive's names cannot hold
        raise SaveFailed(
            path.name, say("this is not a file name"), say("give it another name")
        ) from error
    try:
        _flush_folder(target.parent)
    except OSError as error:
        raise unconfirmed(path) from error
    _sweep(target)
    return modified_ns


def _replaced(target: Path, content: bytes, keep_previous: bool, agree: Agreement | None) -> int:
    before = _status(target)
    old = None if before is None else _content(target)
    if before is not None and old == content:
        _flush_file(target)
        return before.st_mtime_ns
    if agree is not None:
        agree(old)
    new, modified_ns = _written_beside(target, content, before)
    try:
        if keep_previous and old is not None:
            previous = previous_path(target)
            copy, _ = _written_beside(target, old, before)
            _move(copy, previous)
        if agree is not None:
            agree(None if _status(target) is None else _content(target))
    except BaseException:
        _drop(new)
        raise
    _move(new, target)
    return modified_ns


def _status(target: Path) -> os.stat_result | None:
    """The status of the ordinary file there; `None` where there is nothing."""
    try:
        found = os.stat(target)  # noqa: PTH116  # every call of the save path goes through os
    except FileNotFoundError:
        return None
    if stat.S_ISDIR(found.st_mode):
        raise IsADirectoryError(errno.EISDIR, "it is a folder")
    if not stat.S_ISREG(found.st_mode):
        raise SaveFailed(
            target.name, say("that is not an ordinary file"), say("give it another name")
        )
    if not found.st_mode & 0o222:
        raise SaveFailed(
            target.name,
            say("the file is write-protected, so it was not saved"),
            say("allow writing to it, or save under another name"),
        )
    return found


def _content(target: Path) -> bytes:
    handle = os.open(target, os.O_RDONLY | _BINARY)
    try:
        parts = []
        while part := os.read(handle, 1 << 20):
            parts.append(part)
        return b"".join(parts)
    finally:
        os.close(handle)


def _written_beside(target: Path, content: bytes, like: os.stat_result | None) -> tuple[Path, int]:
    """A new file in the target's folder, flushed; and when it was modified, in nanoseconds."""
    new, handle = _opened_beside(target)
    try:
        try:
            rest = memoryview(content)
            while rest:
                rest = rest[os.write(handle, rest) :]
            os.fsync(handle)
            modified_ns = os.fstat(handle).st_mtime_ns
        finally:
            os.close(handle)
        _make_like(new, like)
    except BaseException:
        _drop(new)
        raise
    return new, modified_ns


def _opened_beside(target: Path) -> tuple[Path, int]:
    while True:
        new = target.with_name(f"{_beginning(target)}{os.getpid()}-{next(_number)}.part")
        with contextlib.suppress(FileExistsError):
            return new, os.open(new, _NEW_FILE, 0o666)


def _beginning(target: Path) -> str:
    return f".{target.name[:40]}."


def _make_like(new: Path, old: os.stat_result | None) -> None:
    if old is None:
        return  # the person's usual permissions for a new file
    if hasattr(os, "chown"):
        with contextlib.suppress(PermissionError):
            os.chown(new, old.st_uid, old.st_gid)
    os.chmod(new, stat.S_IMODE(old.st_mode) & 0o777)  # noqa: PTH101  # as above


def _move(new: Path, target: Path) -> None:
    try:
        os.replace(new, target)  # noqa: PTH105  # as above
    except BaseException:
        _drop(new)
        raise


def _drop(new: Path) -> None:
    with contextlib.suppress(OSError):
        os.unlink(new)  # noqa: PTH108  # as above


def _flush_file(target: Path) -> None:
    handle = os.open(target, os.O_RDWR | _BINARY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def _flush_folder(folder: Path) -> None:
    if os.name == "nt":  # Windows has no handle on a folder to flush
        return
    try:
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
    except OSError as error:
        if error.errno not in _NO_FOLDER_FLUSH:
            raise


def _sweep(target: Path) -> None:
    """Take away what a save that was killed a day or more ago left behind."""
    beginning, oldest = _beginning(target), time.time() - _LEFT_OVER_AFTER_S
    with contextlib.suppress(OSError), os.scandir(target.parent) as entries:
        for entry in entries:
            is_left_over = entry.name.startswith(beginning) and entry.name.endswith(".part")
            if is_left_over and entry.stat(follow_symlinks=False).st_mtime < oldest:
                os.unlink(entry.path)  # noqa: PTH108  # as above
