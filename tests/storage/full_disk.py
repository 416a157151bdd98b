"""Save to a drive that is really full, with a little more room each time.

By hand, on a small drive made for it:
`mount -t tmpfs -o size=256k tmpfs DRIVE && python -m tests.storage.full_disk DRIVE`.
The drive is filled but for some bytes, and a job larger than the one before is saved there and
kept as a recovery copy. The old one must stand there whole or the new one, and the refusal must
say that the disk is full.
"""

from __future__ import annotations

import errno
import sys
from collections import Counter
from pathlib import Path

from aligner.storage.document_file import load_job, save_job
from aligner.storage.documents import as_bytes
from aligner.storage.failure import SaveFailed
from aligner.storage.recovery import keep_recovery_copy, recovery_copies
from tests.storage.crash_harness import AT, numbered_job

_STEP_BYTES = 2048
_OLD, _NEW = numbered_job(100), numbered_job(127)


def run(drive: Path) -> Counter[str]:
    """What became of each save, from a drive without room to one with enough."""
    counted: Counter[str] = Counter(saved=0, refused=0, lost=0, unclear=0)
    path, filling = drive / "refit.job.json", drive / "filling"
    for room in range(0, 4 * len(as_bytes(_NEW)), _STEP_BYTES):
        filling.unlink(missing_ok=True)
        file = save_job(_OLD, path, over_changes=True)
        keep_recovery_copy(drive, "1", as_bytes(_OLD), file, AT)
        _fill(filling, room)
        for save, found in (
            (lambda file=file: save_job(_NEW, path, file), lambda: load_job(path)[0]),
            (
                lambda file=file: keep_recovery_copy(drive, "1", as_bytes(_NEW), file, AT),
                lambda: recovery_copies(drive)[0].content,
            ),
        ):
            counted[_outcome(save, found)] += 1
    return counted


def _outcome(save: object, found: object) -> str:
    assert callable(save)
    assert callable(found)
    try:
        save()
        wanted = _NEW
    except SaveFailed as refused:
        if "the disk is full" not in str(refused):
            print(refused, file=sys.stderr)
            return "unclear"
        wanted = _OLD
    is_whole = found() in (wanted, as_bytes(wanted))
    return "lost" if not is_whole else "saved" if wanted is _NEW else "refused"


def _fill(path: Path, room: int) -> None:
    """Fill the drive, then give so many bytes back."""
    size = 0
    with path.open("wb", buffering=0) as file:
        try:
            while True:
                size += file.write(b"x" * _STEP_BYTES)
        except OSError as error:
            if error.errno != errno.ENOSPC:
                raise
        file.truncate(max(size - room, 0))


def main() -> int:
    """Run as a command: on which drive."""
    counted = run(Path(sys.argv[1]))
    print(dict(counted))
    return 1 if counted["lost"] or counted["unclear"] else 0


if __name__ == "__main__":
    sys.exit(main())
