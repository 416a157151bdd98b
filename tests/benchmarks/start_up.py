"""Start-up against a bare Qt window of the same size, whole processes in turn; run by hand.

    python -m tests.benchmarks.start_up [RUNS]

Ours is the command itself, `aligner --demo`, until its window is painted; no setting of the
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
import time
print(time.process_time(), flush=True)
"""

OURS = '''
import sys


class EndsWhenPainted:
    """Is asked for every module, finds none, and puts the end in place of the event loop."""

    def find_spec(self, name, *_):
        if name == "aligner.window.main_window":
            from PySide6.QtWidgets import QApplication
            QApplication.exec = staticmethod(painted)


def painted():
    from PySide6.QtWidgets import QApplication
    app = QApplication.instance()
    app.processEvents()
    for window in app.topLevelWidgets():
        if window.isVisible():
            window.grab()
    import time
    print(time.process_time(), flush=True)
    return 0


sys.meta_path.insert(0, EndsWhenPainted())
from aligner.__main__ import main
sys.exit(main(["--demo"]))
'''


FOLDERS = ("HOME", "XDG_CONFIG_HOME", "XDG_STATE_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME")


def environment(folder):
    """Of every process: no one's settings, and modules compiled once, as an installation has them.

    Args:
        folder: for the compiled modules; the first run fills it.
    """
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    kept |= {"QT_QPA_PLATFORM": "offscreen", "PYTHONPYCACHEPREFIX": folder}
    return kept


def run(script, environment):
    """Wall and processor seconds until one process has painted, and its peak kilobytes."""
    with tempfile.TemporaryDirectory() as home:
        places = dict.fromkeys(FOLDERS, home)
        begun = time.perf_counter()
        process = subprocess.Popen(
            [sys.executable, "-c", script],
            env={**environment, **places},
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
        )
        processor = process.stdout.readline()
        taken = time.perf_counter() - begun
        _, status, usage = os.wait4(process.pid, 0)
        process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode:
        raise RuntimeError("it did not come up")
    return taken, float(processor), usage.ru_maxrss


def main():
    """Print the comparison."""
    runs = int(sys.argv[1]) if len(sys.argv) > 1 else 9
    with tempfile.TemporaryDirectory() as folder:
        around = environment(folder)
        run(BARE, around), run(OURS, around)
        pairs = [(run(OURS, around), run(BARE, around)) for _ in range(runs)]
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
