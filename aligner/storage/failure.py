"""Why a file could not be written, in words: the cause first, then what to do.

The trap: the system's own words ("[Errno 28] No space left on device") tell a person neither
which file it was nor that the one saved before is still whole.
"""

from __future__ import annotations

import errno
from pathlib import Path

from aligner.errors import AlignerError
from aligner.language import marked, say


class SaveFailed(AlignerError):
    """A file was not written; what was on the disk before is whole. `where` is its name."""


_ANOTHER_DRIVE = marked("save it to another drive")
_FREE_SPACE = marked("free some space and save again, or save it to another drive")
_DRIVE_FAULT = (
    marked("the drive reported a fault, so it was not saved"),
    marked("save it to another drive, then have this one checked"),
)
_NOT_ALLOWED = (
    marked("writing is not allowed there, so it was not saved"),
    marked("allow writing to the folder, or save it in another one"),
)
_NO_ANSWER = (
    marked("the network drive does not answer, so it was not saved"),
    marked("try again when it is back, or save it on this computer"),
)
_TOO_MANY_OPEN = (
    marked("too many files are open, so it was not saved"),
    marked("close some and save again"),
)
_CAUSES: dict[str, tuple[str, str]] = {
    "ENOSPC": (marked("the disk is full, so it was not saved"), _FREE_SPACE),
    "EDQUOT": (marked("your share of the disk is used up, so it was not saved"), _FREE_SPACE),
    "EROFS": (marked("the drive is write-protected, so it was not saved"), _ANOTHER_DRIVE),
    "EACCES": _NOT_ALLOWED,
    "EPERM": _NOT_ALLOWED,
    "ENAMETOOLONG": (
        marked("the file name is too long, so it was not saved"),
        marked("give it a shorter name"),
    ),
    "EINVAL": (marked("the drive does not take this file name"), marked("give it a plainer name")),
    "EISDIR": (
        marked("a folder has that name, so it was not saved"),
        marked("give it another name"),
    ),
    "ELOOP": (
        marked("its links lead round in a circle, so it was not saved"),
        marked("give it another name"),
    ),
    "EFBIG": (
        marked("the drive does not take a file this large, so it was not saved"),
        _ANOTHER_DRIVE,
    ),
    "EBUSY": (
        marked("another program has the file open, so it was not saved"),
        marked("close it there and save again"),
    ),
    "EMFILE": _TOO_MANY_OPEN,
    "ENFILE": _TOO_MANY_OPEN,
    "EIO": _DRIVE_FAULT,
    "ENXIO": _DRIVE_FAULT,
    "ENODEV": _DRIVE_FAULT,
    "ESTALE": _NO_ANSWER,
    "ETIMEDOUT": _NO_ANSWER,
    "ENOTCONN": _NO_ANSWER,
    "EHOSTDOWN": _NO_ANSWER,
}


def save_failed(error: OSError, path: Path) -> SaveFailed:
    """What went wrong when this file was to be written, in words."""
    code = errno.errorcode.get(error.errno or 0, "")
    if code in ("ENOENT", "ENOTDIR"):
        return SaveFailed(
            path.name,
            say("the folder “{folder}” is not there, so it was not saved", folder=path.parent),
            say("put it back (is its drive plugged in?), or save it in another folder"),
        )
    if code in _CAUSES:
        understood, wanted = _CAUSES[code]
        return SaveFailed(path.name, say(understood), say(wanted))
    return SaveFailed(
        path.name,
        say("it was not saved ({why})", why=error.strerror or error),
        say("try again, or save it elsewhere"),
    )


def unconfirmed(path: Path) -> SaveFailed:
    """The new file is in place, but the drive would not say that it is safely there."""
    return SaveFailed(
        path.name,
        say("it was written, but the drive did not confirm that it is safe there"),
        say("save again, and keep a copy on another drive"),
    )
