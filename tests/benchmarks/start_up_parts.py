"""Where the time to a painted window goes, each part on top of the one before; run by hand.

    python -m tests.benchmarks.start_up_parts [RUNS]

Prints the medians of processor time and peak memory of whole processes, run in turn, and both as
multiples of a bare Qt window.
"""

import os
import statistics
import sys
import tempfile

from tests.benchmarks.start_up import BARE, OURS, environment, run

_TELL = "\nimport time\nprint(time.process_time(), flush=True)\n"
_PYDANTIC = "from pydantic import BaseModel, ConfigDict, Field, model_validator\n"
_MODELS = "import aligner.job\nfrom aligner.storage.document_file import load_job\n"
_LOADED = (
    _MODELS
    + "from aligner.data_files import demo\n"
    + "job, _ = load_job(demo('fellside-left-leg-high.job.json'))\n"
)
_ASSESSED = _LOADED + "from aligner.assessment import assess\nassess(job).stages\n"

#: Each part with everything before it; the bare window stands in those from "and" on.
PARTS = {
    "Python alone": _TELL,
    "a bare Qt window": BARE,
    "and pydantic": _PYDANTIC + BARE,
    "and the documents' models": _MODELS + BARE,
    "and the demo job read": _LOADED + BARE,
    "and assessed": _ASSESSED + BARE,
    "the whole command": OURS,
}


def main():
    """Measure and print."""
    runs = int(sys.argv[1]) if len(sys.argv) > 1 else 9
    found = {name: [] for name in PARTS}
    with tempfile.TemporaryDirectory() as folder:
        around = environment(folder)
        for script in PARTS.values():
            run(script, around)
        for _ in range(runs):
            for name, script in PARTS.items():
                found[name].append(run(script, around))
    print(f"load {os.getloadavg()[0]:.2f} on {os.cpu_count()} cores, {runs} runs of each in turn")
    bare = found["a bare Qt window"]
    for name, runs_of_it in found.items():
        seconds = statistics.median(each[1] for each in runs_of_it)
        memory = statistics.median(each[2] for each in runs_of_it)
        ratio, more = (
            statistics.median(a[place] / b[place] for a, b in zip(runs_of_it, bare, strict=True))
            for place in (1, 2)
        )
        print(
            f"{name:26} {1000 * seconds:5.0f} ms {memory / 1024:6.1f} MB; "
            f"{ratio:.2f} and {more:.2f} of bare"
        )


if __name__ == "__main__":
    main()
