"""Why a file could not be written, in words: the cause first, then what to do.

The trap: the system's own words ("[Errno 28] No space left on device") tell a person neither
which file it was nor that the one saved before is still whole.
"""

from __future__ import annotations

import errno
from pathlib import Path

from aligner.errors import AlignerError


class SaveFailed(AlignerError):
    """A file was not written; what was on the disk before is whole. `where` is its name."""


_ANOTHER_DRIVE = "save it to another drive"
_DRIVE_FAULT = (
    "the drive reported a fault, so it was not saved",
    "save it to another drive, then have this one checked",
)
_NOT_ALLOWED = (
    "writing is not allowed there, so it was not saved",
    "allow writing to the folder, or save it in another one",
)
_NO_ANSWER = (
    "the network drive does not answer, so it was not saved",
    "try again when it is back, or save it on this computer",
)
_CAUSES: dict[str, tuple[str, str]] = {
    "ENOSPC": (
        "the disk is full, so it was not saved",
        f"free some space and save again, or {_ANOTHER_DRIVE}",
    ),
    "EDQUOT": (
        "your share of the disk is used up, so it was not saved",
        f"free some space and save again, or {_ANOTHER_DRIVE}",
    ),
    "EROFS": ("the drive is write-protected, so it was not saved", _ANOTHER_DRIVE),
    "EACCES": _NOT_ALLOWED,
    "EPERM": _NOT_ALLOWED,
    "ENAMETOOLONG": ("the file name is too long, so it was not saved", "give it a shorter name"),
    "EINVAL": ("the drive does not take this file name", "give it a plainer name"),
    "EISDIR": ("a folder has that name, so it was not saved", "give it another name"),
    "ELOOP": ("its links lead round in a circle, so it was not saved", "give it another name"),
    "EFBIG": ("the drive does not take a file this large, so it was not saved", _ANOTHER_DRIVE),
    "EBUSY": (
        "another program has the file open, so it was not saved",
        "close it there and save again",
    ),
    "EMFILE": ("too many files are open, so it was not saved", "close some and save again"),
    "ENFILE": ("too many files are open, so it was not saved", "close some and save again"),
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
            f"the folder “{path.parent}” is not there, so it was not saved",
            "put it back (is its drive plugged in?), or save it in another folder",
        )
    understood, wanted = _CAUSES.get(
        code,
        (f"it was not saved ({error.strerror or error})", "try again, or save it elsewhere"),
    )
    return SaveFailed(path.name, understood, wanted)


def unconfirmed(path: Path) -> SaveFailed:
    """The new file is in place, but the drive would not say that it is safely there."""
    return SaveFailed(
        path.name,
        "it was written, but the drive did not confirm that it is safe there",
        "save again, and keep a copy on another drive",
    )
