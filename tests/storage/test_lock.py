"""A lock says who works on a document, is never stuck for good, and never blocks reading."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import time
from pathlib import Path

import pytest

from aligner.job import Job
from aligner.storage.document_file import load_job, save_job
from aligner.storage.failure import SaveFailed
from aligner.storage.lock import (
    LEFT_BEHIND_AFTER_S,
    RENEW_EVERY_S,
    LockedByAnother,
    LockLost,
    holder,
    lock_path,
    take,
    take_over,
)
from aligner.storage.process import Worker, this_worker


@pytest.fixture
def document(tmp_path: Path) -> Path:
    path = tmp_path / "refit.job.json"
    save_job(Job(title="refit"), path)
    return path


def _gone_process() -> int:
    ended = subprocess.Popen([sys.executable, "-c", ""])
    ended.wait()
    return ended.pid


def _left_by(document: Path, worker: Worker) -> None:
    fields = {
        "user": worker.user,
        "host": worker.host,
        "process": worker.process,
        "since": "2026-11-25T14:02:00+00:00",
        "mark": "theirs",
    }
    lock_path(document).write_text(json.dumps(fields))


def test_a_lock_says_who_and_since_when(document: Path) -> None:
    take(document)

    found = holder(document)

    assert found is not None
    assert found.worker == this_worker()
    assert found.worker.process == os.getpid()
    assert found.since is not None
    assert abs(found.since.timestamp() - time.time()) < 60
    assert not found.is_left_behind()


def test_who_comes_second_is_told_who_has_it(document: Path) -> None:
    _left_by(document, Worker("ann", "shed", 411))

    with pytest.raises(LockedByAnother) as refused:
        take(document)

    since = refused.value.holder.since
    assert since is not None
    assert str(refused.value) == (
        "refit.job.json: it is open for ann on shed (process 411) since "
        f"{since.astimezone():%Y-%m-%d %H.%M}; open it to read, or take it over if nobody works "
        "there"
    )


def test_a_locked_document_can_be_read(document: Path) -> None:
    take(document)

    assert load_job(document)[0].title == "refit"


def test_releasing_leaves_nothing_behind(document: Path) -> None:
    before = set(document.parent.iterdir())
    lock = take(document)

    lock.release()

    assert holder(document) is None
    assert set(document.parent.iterdir()) == before
    take(document).release()


def test_a_lock_whose_program_on_this_computer_is_gone_is_left_behind(document: Path) -> None:
    _left_by(document, Worker("ann", this_worker().host, _gone_process()))

    found = holder(document)

    assert found is not None
    assert found.is_left_behind()
    with pytest.raises(LockedByAnother, match=r"left open by ann .* does not run any more; take"):
        take(document)


def test_a_program_on_another_computer_is_not_judged_by_its_number(document: Path) -> None:
    _left_by(document, Worker("ann", "another computer", _gone_process()))

    found = holder(document)

    assert found is not None
    assert not found.is_left_behind()


def test_a_lock_not_renewed_for_long_is_left_behind_and_renewing_prevents_it(
    document: Path,
) -> None:
    lock = take(document)
    long_ago = time.time() - LEFT_BEHIND_AFTER_S - 5
    os.utime(lock_path(document), (long_ago, long_ago))
    silent = holder(document)

    lock.renew()
    renewed = holder(document)

    assert silent is not None
    assert silent.is_left_behind()
    assert renewed is not None
    assert not renewed.is_left_behind()
    assert LEFT_BEHIND_AFTER_S > 5 * RENEW_EVERY_S


def test_a_lock_is_taken_over_and_its_holder_finds_out(document: Path) -> None:
    first = take(document)
    seen = holder(document)
    assert seen is not None

    second = take_over(document, seen)

    assert second.is_held()
    assert not first.is_held()
    with pytest.raises(LockLost, match="another program has taken it over"):
        first.renew()
    first.release()
    assert second.is_held()


def test_only_the_holder_that_was_seen_is_taken_over_from(document: Path) -> None:
    take(document)
    seen = holder(document)
    assert seen is not None
    winner = take_over(document, seen)

    with pytest.raises(LockedByAnother):
        take_over(document, seen)

    assert winner.is_held()


def test_taking_over_what_was_released_meanwhile_takes_it(document: Path) -> None:
    lock = take(document)
    seen = holder(document)
    assert seen is not None
    lock.release()

    assert take_over(document, seen).is_held()


@pytest.mark.parametrize(
    "content",
    [b"", b"{", b"[]", b'{"user": 1}', b"\xff", b"[" * 5000],
    ids=["empty", "cut", "a list", "half", "bytes", "deep"],
)
def test_a_lock_that_cannot_be_read_is_someones_until_long_silent(
    document: Path, content: bytes
) -> None:
    lock_path(document).write_bytes(content)
    found = holder(document)

    assert found is not None
    assert found.worker is None
    assert not found.is_left_behind()
    assert found.is_left_behind(time.time() + 2 * LEFT_BEHIND_AFTER_S)
    with pytest.raises(LockedByAnother, match="it is open for another program"):
        take(document)
    assert take_over(document, found).is_held()


def test_who_died_while_taking_over_does_not_stand_in_the_way_for_long(document: Path) -> None:
    take(document)
    seen = holder(document)
    assert seen is not None
    guard = lock_path(document).with_suffix(".lock-change")
    guard.touch()
    with pytest.raises(LockedByAnother):
        take_over(document, seen)

    os.utime(guard, (time.time() - 60, time.time() - 60))

    assert take_over(document, seen).is_held()
    assert not guard.exists()


def test_where_no_lock_can_be_written_it_is_said_in_words(tmp_path: Path) -> None:
    with pytest.raises(SaveFailed, match=r"the folder .* is not there"):
        take(tmp_path / "gone" / "refit.job.json")


@pytest.mark.skipif(os.name == "nt", reason="links need a right of their own there")
def test_a_link_and_the_document_behind_it_have_one_lock(document: Path, tmp_path: Path) -> None:
    link = tmp_path / "link"
    link.symlink_to(document)
    take(document)

    with pytest.raises(LockedByAnother):
        take(link)


def test_very_long_names_have_locks_too(tmp_path: Path) -> None:
    document = tmp_path / ("é" * 123 + ".job.json")
    lock = take(document)
    seen = holder(document)
    assert seen is not None

    assert take_over(document, seen).is_held()
    assert not lock.is_held()


@pytest.mark.skipif(not hasattr(os, "fork"), reason="the race forks")
def test_of_two_that_race_for_a_lock_one_and_only_one_wins() -> None:
    race = subprocess.run(
        [sys.executable, "-m", "tests.storage.lock_race", "60"],
        cwd=Path(__file__).parents[2],
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )

    assert race.returncode == 0, race.stdout + race.stderr
    assert race.stdout == "60 races of 2: 0 with no winner, 0 with more than one\n"
