"""The program itself, started in a process of its own and closed once it has said its first."""

import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]

_STARTED = """
from PySide6.QtCore import QTimer
from aligner.window.application import run_window
from aligner.window.main_window import MainWindow
offered = MainWindow.offer_recovery
def offer_recovery(self):
    offered(self)
    print(self.sentence.text(), self.question.text, sep="\\n", flush=True)
    QTimer.singleShot(0, self.close)
MainWindow.offer_recovery = offer_recovery
run_window(None)
"""


def started(**places):
    """Start it; its sentence and its question are in `stdout`.

    Args:
        places: of its settings and its recovery copies, as the desktop names them.
    """
    return subprocess.run(
        [sys.executable, "-c", _STARTED],
        cwd=ROOT,
        env={**os.environ, "QT_QPA_PLATFORM": "offscreen", **places},
        capture_output=True,
        text=True,
        timeout=60,
        check=True,
    )
