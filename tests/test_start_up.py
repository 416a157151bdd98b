"""What the way to the window leaves out; a time would depend on the machine."""

import os
import subprocess
import sys


def loaded_by(imports, asked):
    """What a fresh process prints after some imports, word by word."""
    process = subprocess.run(
        [sys.executable, "-c", f"import {imports}\n{asked}"],
        env={**os.environ, "QT_QPA_PLATFORM": "offscreen"},
        capture_output=True,
        text=True,
        check=True,
    )
    return process.stdout.split()


def test_qt_reads_no_source_of_ours():
    """Qt's own import does, of each module imported after it: a tenth of the start."""
    asked = "import linecache; print(*(each for each in linecache.cache if 'aligner' in each))"

    assert loaded_by("aligner.window.application", asked) == []
