"""The program starts whatever its settings file holds."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]

STARTED = """
from PySide6.QtCore import QTimer
from aligner.window.application import run_window
from aligner.window.main_window import MainWindow
shown = MainWindow.show
def show(self):
    shown(self)
    QTimer.singleShot(0, lambda: (print(self.sentence.text(), flush=True), self.close()))
MainWindow.show = show
run_window(None)
"""


@pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="places as on Linux")
@pytest.mark.parametrize(
    "kept",
    [
        pytest.param("[General]\ngeometry=42\nrecent=7\npage_size=x", id="other kinds of value"),
        pytest.param("[General]\ngeometry=@ByteArray(x)\nrecent=@Invalid()", id="not understood"),
        pytest.param("\x00\x01[[preferences\n=de", id="damaged"),
    ],
)
def test_settings_that_were_edited_or_damaged_do_not_keep_it_from_starting(tmp_path, kept):
    (tmp_path / "Aligner").mkdir()
    (tmp_path / "Aligner" / "Aligner.conf").write_text(kept)
    places = {"XDG_CONFIG_HOME": str(tmp_path), "XDG_STATE_HOME": str(tmp_path)}

    started = subprocess.run(
        [sys.executable, "-c", STARTED],
        cwd=ROOT,
        env={**os.environ, **places},
        capture_output=True,
        text=True,
        timeout=60,
        check=True,
    )

    assert "Traceback" not in started.stderr
    assert started.stdout.strip()
