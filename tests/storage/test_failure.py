"""Every cause of a failed save that can be expected has its own words: cause, then what to do."""

from __future__ import annotations

import errno
import os
from pathlib import Path

import pytest

from aligner.storage.failure import save_failed, unconfirmed

PATH = Path("/bikes/refit.job.json")

SENTENCES = {
    "ENOSPC": "the disk is full, so it was not saved; free some space and save again, or save it "
    "to another drive",
    "EROFS": "the drive is write-protected, so it was not saved; save it to another drive",
    "EACCES": "writing is not allowed there, so it was not saved; allow writing to the folder, or "
    "save it in another one",
    "ENOENT": f"the folder “{PATH.parent}” is not there, so it was not saved; put it back (is its "
    "drive plugged in?), or save it in another folder",
    "EIO": "the drive reported a fault, so it was not saved; save it to another drive, then have "
    "this one checked",
    "EBUSY": "another program has the file open, so it was not saved; close it there and save "
    "again",
}


@pytest.mark.parametrize(("code", "sentence"), SENTENCES.items(), ids=SENTENCES.keys())
def test_a_cause_is_said_in_words(code: str, sentence: str) -> None:
    number = getattr(errno, code)

    failed = save_failed(OSError(number, os.strerror(number)), PATH)

    assert str(failed) == f"refit.job.json: {sentence}"


@pytest.mark.parametrize("number", sorted(errno.errorcode))
def test_any_cause_gives_one_line_with_what_to_do(number: int) -> None:
    failed = save_failed(OSError(number, os.strerror(number)), PATH)

    assert failed.where == "refit.job.json"
    assert failed.understood
    assert failed.wanted
    assert "\n" not in str(failed)
    assert "Errno" not in str(failed)


def test_a_save_that_the_drive_did_not_confirm_is_not_called_unsaved() -> None:
    assert str(unconfirmed(PATH)) == (
        "refit.job.json: it was written, but the drive did not confirm that it is safe there; "
        "save again, and keep a copy on another drive"
    )
