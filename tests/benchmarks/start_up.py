"""Start-up against a bare Qt window of the same size, whole processes in turn; run by hand.

    python -m tests.benchmarks.start_up [RUNS]

Prints the medians of wall time and peak memory of both, and the ratios pair by pair.
"""

import os
import resource
import statistics
import subprocess
import sys
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
from PySide6.QtWidgets import QApplication
from aligner.drawing.theme import Appearance, theme_for
from aligner.window.application import open_demo
from aligner.window.main_window import MainWindow
app = QApplication([])
app.setStyle("Fusion")
window = MainWindow(theme_for(Appearance.LIGHT))
open_demo(window)
window.show()
app.processEvents()
window.grab()
"""


def run(script):
    """Wall seconds and peak kilobytes of one process."""
    begun = time.perf_counter()
    process = subprocess.Popen(
        [sys.executable, "-c", script],
        env={**os.environ, "QT_QPA_PLATFORM": "offscreen"},
        stderr=subprocess.DEVNULL,
    )
    _, _, usage = os.wait4(process.pid, 0)
    process.returncode = 0
    return time.perf_counter() - begun, usage.ru_maxrss


def main():
    """Print the comparison."""
    runs = int(sys.argv[1]) if len(sys.argv) > 1 else 9
    run(BARE), run(OURS)
    pairs = [(run(OURS), run(BARE)) for _ in range(runs)]
    for place, what, unit in ((0, "wall", "s"), (1, "peak memory", "kB")):
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
