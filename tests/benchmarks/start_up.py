"""Start-up against a bare Qt window of the same size, whole processes in turn; run by hand.

    python -m tests.benchmarks.start_up [RUNS]

Ours is the command itself, `aligner --demo`, ended as soon as it is painted; no setting of the
person who measures is read. Prints the medians of wall time, processor time and peak memory of
both, and the ratios pair by pair. `python -m tests.benchmarks.start_up_parts` says where it goes.
"""

import os
import resource
import statistics
import subprocess
import sys
import tempfile
import time

BARE = """
import sys
from PySide6.QtWidgets import QApplication, QLabel, QMainWindow
app = QApplication([])
window = QMainWindow()
window.setCentralWidget(QLabel("bare"))
window.resize(1280, 720)
window.show()
app.processEvents()
window.grab()
"""

OURS = """
import sys
from aligner.window import application


def painted():
    app = application.QApplication.instance()
    app.processEvents()
    for window in app.topLevelWidgets():
        if window.isVisible():
            window.grab()
    return 0


application.QApplication.exec = staticmethod(painted)
from aligner.__main__ import main
sys.exit(main(["--demo"]))
"""


def run(script):
    """Wall seconds, processor seconds and peak kilobytes of one process."""
    with tempfile.TemporaryDirectory() as home:
        folders = ("HOME", "XDG_CONFIG_HOME", "XDG_STATE_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME")
        places = dict.fromkeys(folders, home)
        begun = time.perf_counter()
        process = subprocess.Popen(
            [sys.executable, "-c", script],
            env={**os.environ, **places, "QT_QPA_PLATFORM": "offscreen"},
            stderr=subprocess.DEVNULL,
        )
        _, status, usage = os.wait4(process.pid, 0)
        taken = time.perf_counter() - begun
        process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode:
        raise RuntimeError("it did not come up")
    return taken, usage.ru_utime + usage.ru_stime, usage.ru_maxrss


def main():
    """Print the comparison."""
    runs = int(sys.argv[1]) if len(sys.argv) > 1 else 9
    run(BARE), run(OURS)
    pairs = [(run(OURS), run(BARE)) for _ in range(runs)]
    print(f"load {os.getloadavg()[0]:.2f} on {os.cpu_count()} cores")
    for place, what, unit in ((0, "wall", "s"), (1, "processor", "s"), (2, "peak memory", "kB")):
        ours = [pair[0][place] for pair in pairs]
        bare = [pair[1][place] for pair in pairs]
        ratios = sorted(a / b for a, b in zip(ours, bare, strict=True))
        print(
            f"{what}: ours {statistics.median(ours):.4g} {unit}, bare "
            f"{statistics.median(bare):.4g} {unit}, ratio {statistics.median(ratios):.2f} "
            f"({ratios[0]:.2f} to {ratios[-1]:.2f}) over {runs} pairs"
        )
    print(f"pages of {resource.getpagesize()} bytes, Python {sys.version.split()[0]}")


if __name__ == "__main__":
    main()
