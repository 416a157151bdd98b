"""What was typed since the last save is found again, with what differs in words."""

from __future__ import annotations

import os
import stat
import subprocess
import sys
from dataclasses import replace
from datetime import datetime, timedelta, timezone
from pathlib import Path

import pytest

from aligner.job import Job
from aligner.storage import files
from aligner.storage.document_file import load_job, save_job
from aligner.storage.documents import as_bytes
from aligner.storage.failure import SaveFailed
from aligner.storage.process import Worker, this_worker
from aligner.storage.recovery import (
    Original,
    found_in,
    keep_recovery_copy,
    recovery_copies,
    remove_recovery_copy,
)
from tests.storage.test_files import CountedCalls

AT = datetime(2026, 11, 25, 14, 2, tzinfo=timezone(timedelta(hours=1)))
BEFORE, EDITED = Job(title="refit"), Job(title="refit", note="left leg dented")


@pytest.fixture
def document(tmp_path: Path) -> Path:
    path = tmp_path / "refit.job.json"
    save_job(BEFORE, path)
    return path


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    return tmp_path / "state" / "recovery"


def test_a_copy_is_found_with_what_differs(document: Path, folder: Path) -> None:
    _, file = load_job(document)
    keep_recovery_copy(folder, "1", as_bytes(EDITED), file, AT)

    (copy,) = recovery_copies(folder)
    found = found_in(copy)

    assert (copy.original, copy.written, copy.worker) == (document, AT, this_worker())
    assert copy.is_whole
    assert found.job == EDITED
    assert found.original is Original.AS_IT_WAS
    assert found.changes == ("note: now “left leg dented”",)


def test_a_job_never_saved_is_found_too(folder: Path) -> None:
    keep_recovery_copy(folder, "1", as_bytes(EDITED), None, AT)

    found = found_in(recovery_copies(folder)[0])

    assert found.job == EDITED
    assert found.original is Original.NEVER_SAVED
    assert found.changes == ("title: now “refit”", "note: now “left leg dented”")


def test_a_later_copy_takes_the_place_of_the_one_before(folder: Path) -> None:
    keep_recovery_copy(folder, "1", as_bytes(BEFORE), None, AT)
    keep_recovery_copy(folder, "1", as_bytes(EDITED), None, AT + timedelta(minutes=1))

    (copy,) = recovery_copies(folder)
    assert copy.content == as_bytes(EDITED)


def test_several_are_listed_newest_first(folder: Path) -> None:
    for minute in (3, 1, 2):
        at = AT + timedelta(minutes=minute)
        keep_recovery_copy(folder, str(minute), as_bytes(Job(title=str(minute))), None, at)

    assert [copy.path.name for copy in recovery_copies(folder)] == [
        "3.recovery",
        "2.recovery",
        "1.recovery",
    ]


def test_a_copy_goes_when_the_job_was_saved(document: Path, folder: Path) -> None:
    path = keep_recovery_copy(folder, "1", as_bytes(EDITED), None, AT)

    remove_recovery_copy(path)
    remove_recovery_copy(path)

    assert recovery_copies(folder) == ()


def test_what_was_saved_before_the_crash_does_not_differ(document: Path, folder: Path) -> None:
    _, file = load_job(document)
    keep_recovery_copy(folder, "1", as_bytes(EDITED), file, AT)
    save_job(EDITED, document, file)

    found = found_in(recovery_copies(folder)[0])

    assert found.changes == ()
    assert found.original is Original.CHANGED_SINCE


def _changed(path: Path) -> None:
    save_job(Job(title="other"), path, over_changes=True)


def _damaged(path: Path) -> None:
    path.write_bytes(b"{")


def _newer(path: Path) -> None:
    path.write_bytes(b'{"document": "job", "version": 2}')


@pytest.mark.parametrize(
    ("change", "state"),
    [
        (_changed, Original.CHANGED_SINCE),
        (Path.unlink, Original.GONE),
        (_damaged, Original.UNREADABLE),
        (_newer, Original.CHANGED_SINCE),
    ],
    ids=["changed", "gone", "damaged", "newer"],
)
def test_what_became_of_the_original_is_said(
    document: Path, folder: Path, change: object, state: Original
) -> None:
    _, file = load_job(document)
    keep_recovery_copy(folder, "1", as_bytes(EDITED), file, AT)
    assert callable(change)
    change(document)

    found = found_in(recovery_copies(folder)[0])

    assert found.original is state
    assert found.job == EDITED


def test_a_copy_of_a_program_still_running_is_told_from_one_left_behind(folder: Path) -> None:
    keep_recovery_copy(folder, "1", as_bytes(EDITED), None, AT)
    (copy,) = recovery_copies(folder)
    ended = subprocess.Popen([sys.executable, "-c", ""])
    ended.wait()
    gone = replace(copy, worker=Worker("ann", this_worker().host, ended.pid))

    assert copy.may_be_open_still()
    assert not gone.may_be_open_still()


@pytest.mark.parametrize("length", range(0, 400, 37))
def test_a_damaged_copy_is_listed_with_what_can_be_had_and_never_fails(
    folder: Path, length: int
) -> None:
    path = keep_recovery_copy(folder, "1", as_bytes(EDITED), None, AT)
    path.write_bytes(path.read_bytes()[:length])

    (copy,) = recovery_copies(folder)
    found = found_in(copy)

    assert not copy.is_whole
    assert found.job is None
    assert found.trouble


def test_a_copy_that_lost_its_first_line_still_gives_its_job(folder: Path) -> None:
    path = keep_recovery_copy(folder, "1", as_bytes(EDITED), None, AT)
    path.write_bytes(b"?" + path.read_bytes())

    (copy,) = recovery_copies(folder)

    assert not copy.is_whole
    assert found_in(copy).job == EDITED


def test_other_files_and_no_folder_are_no_copies(folder: Path) -> None:
    assert recovery_copies(folder) == ()
    folder.mkdir(parents=True)
    (folder / "notes.txt").touch()
    (folder / "folder.recovery").mkdir()

    assert recovery_copies(folder) == ()


def test_a_copy_that_cannot_be_written_leaves_the_one_before(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    keep_recovery_copy(folder, "1", as_bytes(BEFORE), None, AT)
    calls = CountedCalls()
    with monkeypatch.context() as patched:
        patched.setattr(files, "os", calls)
        keep_recovery_copy(folder, "1", as_bytes(EDITED), None, AT)
    write = calls.made.index("write") + 1
    monkeypatch.setattr(files, "os", CountedCalls(fail_at=write))

    with pytest.raises(SaveFailed, match="the disk is full"):
        keep_recovery_copy(folder, "1", as_bytes(BEFORE), None, AT)

    monkeypatch.undo()
    assert recovery_copies(folder)[0].content == as_bytes(EDITED)


def test_a_recovery_folder_that_cannot_be_made_is_said(tmp_path: Path) -> None:
    (tmp_path / "file").touch()

    with pytest.raises(SaveFailed, match="is not there, so it was not saved"):
        keep_recovery_copy(tmp_path / "file" / "recovery", "1", b"", None, AT)


@pytest.mark.skipif(os.name == "nt", reason="permission bits as POSIX has them")
def test_the_recovery_folder_is_this_persons_alone(folder: Path) -> None:
    keep_recovery_copy(folder, "1", as_bytes(EDITED), None, AT)

    assert stat.S_IMODE(folder.stat().st_mode) == 0o700


def test_what_a_killed_program_left_unfinished_goes_after_a_day(folder: Path) -> None:
    keep_recovery_copy(folder, "1", as_bytes(EDITED), None, AT)
    old, new = folder / ".2.recovery.77-1.part", folder / ".3.recovery.77-1.part"
    for part in (old, new):
        part.write_bytes(b"x")
    os.utime(old, (1, 1))

    assert len(recovery_copies(folder)) == 1

    assert not old.exists()
    assert new.exists()
