"""One look says how the document stands, and says to others that it is worked on."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from aligner.job import Job
from aligner.storage.document_file import DocumentFile, load_job, save_job
from aligner.storage.lock import holder, lock_path, take, take_over
from aligner.storage.watch import looked_at


@pytest.fixture
def document(tmp_path: Path) -> DocumentFile:
    (tmp_path / "bike").mkdir()
    return save_job(Job(title="ours"), tmp_path / "bike" / "refit.job.json")


def test_a_document_as_it_was(document: DocumentFile) -> None:
    lock = take(document.path)

    seen = looked_at(document, lock, None)

    assert (seen.is_changed, seen.is_gone, seen.taken_by) == (False, False, None)
    assert seen.lock == lock


def test_a_new_time_alone_is_no_change(document: DocumentFile) -> None:
    os.utime(document.path, (1, 1))

    assert not looked_at(document, None, None).is_changed


def test_a_change_and_a_file_that_is_gone(document: DocumentFile) -> None:
    save_job(Job(title="theirs"), document.path, load_job(document.path)[1])
    assert looked_at(document, None, None).is_changed

    document.path.unlink()
    seen = looked_at(document, None, None)
    assert seen.is_gone
    assert not seen.is_changed


def test_lock_and_recovery_copy_are_renewed(document: DocumentFile, tmp_path: Path) -> None:
    lock, copy = take(document.path), tmp_path / "1.recovery"
    copy.touch()
    for path in (lock_path(document.path), copy):
        os.utime(path, (1, 1))

    looked_at(document, lock, copy)

    assert lock_path(document.path).stat().st_mtime > 1
    assert copy.stat().st_mtime > 1


def test_a_lock_taken_over_is_told_and_not_taken_back(document: DocumentFile) -> None:
    lock = take(document.path)
    seen_there = holder(document.path)
    assert seen_there is not None
    other = take_over(document.path, seen_there)

    seen = looked_at(document, lock, None)

    assert seen.lock is None
    assert seen.taken_by is not None
    assert seen.taken_by.mark == other.mark
    assert other.is_held()


def test_a_lock_file_that_is_gone_is_made_again(document: DocumentFile) -> None:
    lock = take(document.path)
    lock_path(document.path).unlink()

    seen = looked_at(document, lock, None)

    assert seen.lock is not None
    assert seen.lock.is_held()


def test_a_folder_that_is_gone_keeps_the_lock_in_mind(document: DocumentFile) -> None:
    lock = take(document.path)
    document.path.parent.rename(document.path.parent.with_name("away"))

    seen = looked_at(document, lock, None)

    assert seen.is_gone
    assert seen.lock == lock
