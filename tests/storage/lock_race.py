"""Several programs race for one document's lock, again and again; one and only one may win.

By hand: `python -m tests.storage.lock_race 1000`. Half the rounds start with no lock, half
with one left behind by a program that is gone, which all try to take over.
"""

from __future__ import annotations

import os
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path

from aligner.errors import AlignerError
from aligner.storage.lock import holder, lock_path, take, take_over

_RACERS = 2


def winners(document: Path, *, left_behind: bool) -> int:
    """How many of the racers hold the document's lock when all have tried."""
    if left_behind:
        _wait_for(_started(lambda: _take(document)))
    ready_reading, ready_writing = os.pipe()
    go_reading, go_writing = os.pipe()

    result_reading, result_writing = os.pipe()

    def race() -> bool:
        os.close(go_writing)
        os.write(ready_writing, b"r")
        os.read(go_reading, 1)  # until the starter closes it
        result = b"-"
        try:
            if _take_over(document) if left_behind else _take(document):
                result = b"w"
        except AlignerError:
            result = b"l"
        os.write(result_writing, result)
        return True

    racers = [_started(race) for _ in range(_RACERS)]
    for _ in racers:
        os.read(ready_reading, 1)
    os.close(go_writing)
    # None is waited for before all have tried: the lock of one that is gone may be taken over.
    results = [os.read(result_reading, 1) for _ in racers]
    assert all(_wait_for(racer) for racer in racers)
    for handle in (ready_reading, ready_writing, go_reading, result_reading, result_writing):
        os.close(handle)
    found = holder(document)
    assert found is not None
    assert found.worker is not None
    lock_path(document).unlink()
    return results.count(b"w")


def _take(document: Path) -> bool:
    take(document)
    return True


def _take_over(document: Path) -> bool:
    seen = holder(document)
    return seen is not None and seen.is_left_behind() and take_over(document, seen).is_held()


def _started(work: Callable[[], bool]) -> int:
    child = os.fork()
    if child:
        return child
    status = 1
    try:
        status = 0 if work() else 1
    finally:
        os._exit(status)


def _wait_for(child: int) -> bool:
    return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]) == 0


def main() -> int:
    """Run as a command: how many rounds."""
    rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 1000
    with tempfile.TemporaryDirectory() as folder:
        document = Path(folder) / "refit.job.json"
        won = [winners(document, left_behind=bool(number % 2)) for number in range(rounds)]
    none, more = won.count(0), sum(number > 1 for number in won)
    print(f"{rounds} races of {_RACERS}: {none} with no winner, {more} with more than one")
    return 1 if none or more else 0


if __name__ == "__main__":
    sys.exit(main())
