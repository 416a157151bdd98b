"""Ten thousand generated jobs: reading, listing, searching and sorting; run by hand.

    python -m tests.benchmarks.history [JOBS]

Prints the time to read and parse the bytes alone, the time of the list, and their ratio.
"""

import json
import random
import statistics
import sys
import tempfile
import time
from pathlib import Path

from aligner.data_files import demo
from aligner.storage.history import jobs_in
from aligner.window.history.model import HistoryModel


def generated_jobs(folder, count, seed=1):
    """Write so many jobs, one folder a bike, each as long as the demo job with its log."""
    chance = random.Random(seed)
    sample = json.loads(demo("fellside-true.job.json").read_text(encoding="utf-8"))
    for number in range(count):
        bike = f"bike {chance.randrange(max(1, count // 20))}"
        sample["sheet"]["name"] = bike
        sample["title"] = f"refit {number}"
        month, date = chance.randrange(1, 13), chance.randrange(1, 29)
        day = f"{chance.randrange(2010, 2027)}-{month:02}-{date:02}"
        sample["align"]["begun"] = f"{day}T10:00:00+00:00"
        sample["log"] = [
            {"step": f"step {place}", "at": f"{day}T11:{place:02}:00+00:00"} for place in range(34)
        ]
        place = folder / bike
        place.mkdir(exist_ok=True)
        (place / f"{number}.job.json").write_text(json.dumps(sample, indent=1), encoding="utf-8")


def read_and_parse(files):
    """What no list of jobs can do without; nothing is kept, as a list keeps nothing."""
    for path in files:
        json.loads(path.read_bytes())


def seconds(work):
    """How long a piece of work takes, and what it gives."""
    start = time.perf_counter()
    result = work()
    return time.perf_counter() - start, result


def main():
    """Measure and print."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        generated_jobs(folder, count)
        files = sorted(folder.rglob("*.job.json"))
        size = sum(path.stat().st_size for path in files)
        print(f"{count} jobs, {size / 1e6:.1f} MB")
        ratios = []
        for _ in range(5):
            bare, _ = seconds(lambda: read_and_parse(files))
            first, _ = seconds(lambda: next(iter(jobs_in(folder))))
            whole, rows = seconds(lambda: list(jobs_in(folder)))
            ratios.append(whole / bare)
            print(
                f"bytes read and parsed {bare:.2f} s; first row {1000 * first:.1f} ms; "
                f"all rows {whole:.2f} s; ratio {whole / bare:.2f}"
            )
        model = HistoryModel()
        adding, _ = seconds(lambda: model.add(rows))
        searching, _ = seconds(lambda: model.search("bike 12 refit"))
        sorting, _ = seconds(lambda: model.sort(0))
        print(f"median ratio {statistics.median(ratios):.2f}")
        print(
            f"shown {1000 * adding:.0f} ms; searched {1000 * searching:.0f} ms; "
            f"sorted {1000 * sorting:.0f} ms"
        )


if __name__ == "__main__":
    main()
