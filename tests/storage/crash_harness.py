"""Kill a program while it saves, again and again, and count what is lost, damaged or unclear.

By hand: `python -m tests.storage.crash_harness 500 [SEED [autosave|in-place]]`. A child saves one
numbered job after another as fast as it can, and says through a pipe what it begins and what
is saved; it is killed (signal 9) at a random moment. Then the document must hold a job that
reads, no older than the last one the child said was saved, and its previous version must read too.

With `autosave` the child writes recovery copies, of which the newest whole one counts. With
`in-place` the child writes the careless way, to show that the harness finds damage.

The trap: this proves what a killed program leaves, not what a power cut leaves; that rests
on the order of the flushes, which tests/storage/test_files.py checks.
"""

from __future__ import annotations

import os
import random
import signal
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from aligner.job import Job
from aligner.sheet import Sheet
from aligner.storage.document_file import DocumentFile, load_job, save_job
from aligner.storage.documents import as_bytes, job_from
from aligner.storage.files import previous_path
from aligner.storage.recovery import found_in, keep_recovery_copy, recovery_copies
from aligner.storage.refusal import UnusableDocument

Saved = Callable[[int, Path, DocumentFile], DocumentFile]
Read = Callable[[Path], Job | None]

AT = datetime(2026, 11, 25, 14, 2, tzinfo=UTC)
_LONGEST_WAIT_S = 0.02


@dataclass
class Outcome:
    """What the kills did.

    Attributes:
        kills: how many.
        saves: jobs that were said to be saved, in all.
        lost: the document was gone, or older than one said to be saved.
        damaged: the document or its previous version could not be read.
        unclear: a job that nobody had begun to save.
        in_the_middle: kills that fell between the beginning and the end of a save.
        left_over: unfinished files left in the folder; harmless, and swept after a day.
    """

    kills: int = 0
    saves: int = 0
    lost: int = 0
    damaged: int = 0
    unclear: int = 0
    in_the_middle: int = 0
    left_over: int = 0

    def __str__(self) -> str:
        return (
            f"{self.kills} kills, {self.in_the_middle} of them in the middle of a save, "
            f"{self.saves} saves: {self.lost} lost, {self.damaged} damaged, "
            f"{self.unclear} unclear; unfinished files left at the end: "
            f"{self.left_over}"
        )


def numbered_job(number: int) -> Job:
    """A job that carries its number, and is longer or shorter than the one before it."""
    note = "a line of notes\n" * ((number * 37) % 2000)
    return Job(title=str(number), note=note, sheet=Sheet(name="invented bike"))


def run(kills: int, seed: int, folder: Path, saved_by: Saved) -> Outcome:
    """Kill so many saving programs, one after the other, on one document in this folder."""
    read = found_in_copy if saved_by is as_a_recovery_copy else found_in_file
    chance = random.Random(seed)
    path = folder / "refit.job.json"
    save_job(numbered_job(0), path)
    _start_again(path, 0, saved_by)
    outcome, newest = Outcome(), 0
    for _ in range(kills):
        begun, saved = _killed_child(path, newest + 1, chance, saved_by)
        _check(path, read, newest if saved is None else saved, begun, outcome)
        outcome.kills += 1
        outcome.saves += 0 if saved is None else saved - newest
        outcome.in_the_middle += begun is not None and begun != saved
        newest = max(newest, begun or 0)
        _start_again(path, newest, saved_by)
    outcome.left_over = len(list(folder.glob(".*.part")))
    return outcome


def _killed_child(
    path: Path, first: int, chance: random.Random, saved_by: Saved
) -> tuple[int | None, int | None]:
    """The last number begun and the last number saved, as far as the child came."""
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(reading)
        _save_for_ever(path, first, writing, saved_by)
    os.close(writing)
    told = os.read(reading, 1)  # the child is at work
    time.sleep(chance.uniform(0, _LONGEST_WAIT_S))
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    while part := os.read(reading, 1 << 16):
        told += part
    os.close(reading)
    begun, saved = told.count(b"b"), told.count(b"s")
    return (first + begun - 1 if begun else None), (first + saved - 1 if saved else None)


def _save_for_ever(path: Path, first: int, writing: int, saved_by: Saved) -> None:
    try:
        _, file = load_job(path)
        number = first
        while True:
            os.write(writing, b"b")
            file = saved_by(number, path, file)
            os.write(writing, b"s")
            number += 1
    finally:
        os._exit(1)


def as_the_program_does(number: int, path: Path, file: DocumentFile) -> DocumentFile:
    """Save as the program saves."""
    return save_job(numbered_job(number), path, file)


def in_place(number: int, path: Path, file: DocumentFile) -> DocumentFile:
    """Save the careless way, a piece at a time over the old file."""
    content = as_bytes(numbered_job(number))
    with path.open("wb", buffering=0) as opened:
        for start in range(0, len(content), 512):
            opened.write(content[start : start + 512])
    return file


def as_a_recovery_copy(number: int, path: Path, file: DocumentFile) -> DocumentFile:
    """Keep a recovery copy as the window does, and leave the document alone."""
    keep_recovery_copy(path.parent, "1", as_bytes(numbered_job(number)), file, AT)
    return file


def found_in_file(path: Path) -> Job | None:
    """The job in the document; `None` where there is none. Raises where it cannot be read."""
    if not path.exists():
        return None
    if previous_path(path).exists():
        job_from(previous_path(path).read_bytes())
    return load_job(path)[0]


def found_in_copy(path: Path) -> Job | None:
    """The job in the recovery copy; `None` where there is none. Raises where it is damaged."""
    copies = recovery_copies(path.parent)
    if not copies:
        return None
    (copy,) = copies
    job = found_in(copy).job
    if not copy.is_whole or job is None:
        raise UnusableDocument("", "the copy is damaged")
    return job


def _check(path: Path, read: Read, saved: int, begun: int | None, outcome: Outcome) -> None:
    try:
        job = read(path)
    except UnusableDocument:
        outcome.damaged += 1
        return
    if job is None:
        outcome.lost += 1
        return
    number = int(job.title)
    if number < saved:
        outcome.lost += 1
    elif number > max(saved, begun or 0) or job != numbered_job(number):
        outcome.unclear += 1


def _start_again(path: Path, newest: int, saved_by: Saved) -> None:
    """The next round begins with the newest number in place, whatever the kill left."""
    if saved_by is as_a_recovery_copy:
        as_a_recovery_copy(newest, path, load_job(path)[1])
    else:
        path.write_bytes(as_bytes(numbered_job(newest)))


def main() -> int:
    """Run as a command: how many kills, and with which seed."""
    kills = int(sys.argv[1]) if len(sys.argv) > 1 else 500
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    ways: dict[str, Saved] = {"in-place": in_place, "autosave": as_a_recovery_copy}
    saved_by = ways[sys.argv[3]] if len(sys.argv) > 3 else as_the_program_does
    with tempfile.TemporaryDirectory() as folder:
        outcome = run(kills, seed, Path(folder), saved_by)
    print(outcome)
    return 1 if outcome.lost or outcome.damaged or outcome.unclear else 0


if __name__ == "__main__":
    sys.exit(main())
