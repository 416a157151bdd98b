"""From a key pressed in a reading field to the new corrections painted; run by hand.

    python -m tests.benchmarks.keystroke [KEYS] [JOB]

The whole window, off the screen, with real key events: digits, a decimal point, backspaces, and
Enter every tenth key. Prints the median and the 99th percentile for each stage with a field to
type in, of wall time and of processor time; the target is 8 ms and 16 ms.
"""

import os
import statistics
import sys
import time
from datetime import UTC, datetime

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit

from aligner.assessment import Stage
from aligner.data_files import demo
from aligner.drawing.theme import Appearance, theme_for
from aligner.storage.document_file import load_job
from aligner.window.main_window import MainWindow
from aligner.window.widgets.reading_box import ReadingBox

#: What is typed over and over: each reading is begun, mistyped, put right, and left by Enter.
_TYPED = ("4", ".", "2", "5", "\b", "1", "\b", "\b", "3", "\r")
_TYPED_WITH_UNIT = (*"204", "\b", *"5 mm", "\b", "m", "\r")  # as a sheet wants it
_KEYS = {"\b": Qt.Key.Key_Backspace, "\r": Qt.Key.Key_Return}
_STAGES = (Stage.ALIGN, Stage.BUILD, Stage.INSPECT, Stage.BIKE)


class Paints(QObject):
    """Counts what is painted, so that a key that paints nothing is not taken for a quick one."""

    def __init__(self):
        super().__init__()
        self.count = 0

    def eventFilter(self, _watched, event):
        self.count += event.type() == QEvent.Type.Paint
        return False


def settle(application):
    """Until nothing waits any more: layouts, then what they ask to have painted."""
    for _ in range(3):
        application.sendPostedEvents()
        application.processEvents()


def first_cell(page):
    """A field of a page to type a reading in."""
    fields = [
        field
        for field in page.findChildren(QLineEdit)
        if field.isVisible() and field.isEnabled() and not field.isReadOnly()
    ]
    cells = [field for field in fields if isinstance(field.parent(), ReadingBox)]
    numbers = [field for field in fields if field.text()[:1].isdigit()]
    return next(iter(cells or numbers or fields), None)


def milliseconds(application, window, page, keys):
    """Wall and processor time of so many keys, from the press to the paint."""
    wall, processor, enters = [], [], []
    for number in range(keys):
        cell = window.focusWidget()
        if not isinstance(cell, QLineEdit) or not page.isAncestorOf(cell):
            cell = first_cell(page)
            cell.setFocus(Qt.FocusReason.TabFocusReason)
            settle(application)
        typed = _TYPED if isinstance(cell.parent(), ReadingBox) else _TYPED_WITH_UNIT
        key = typed[number % len(typed)]
        if number % len(typed) == 0:
            cell.selectAll()  # a reading is typed over the last one
        begun, begun_cpu = time.perf_counter(), time.process_time()
        if key in _KEYS:
            QTest.keyPress(cell, _KEYS[key])
        else:
            QTest.keyPress(cell, key)
        settle(application)
        taken = 1000 * (time.perf_counter() - begun)
        (enters if key == "\r" else wall).append(taken)
        processor.append(1000 * (time.process_time() - begun_cpu))
        QTest.keyRelease(cell, _KEYS.get(key, Qt.Key.Key_1))
    return wall, processor, enters


def main():
    """Measure and print."""
    keys = int(sys.argv[1]) if len(sys.argv) > 1 else 400
    name = sys.argv[2] if len(sys.argv) > 2 else "fellside-left-leg-high.job.json"
    application = QApplication.instance() or QApplication([])
    application.setStyle("Fusion")
    clock = datetime(2026, 5, 2, 9, 0, tzinfo=UTC)
    window = MainWindow(theme_for(Appearance.LIGHT), now=lambda: clock)
    window.show_job(load_job(demo(name))[0])
    window.show()
    settle(application)
    paints = Paints()
    application.installEventFilter(paints)
    print(f"load {os.getloadavg()[0]:.2f} on {os.cpu_count()} cores; {name}")
    for stage in _STAGES:
        window.go_to(stage)
        settle(application)
        page = window.page(stage)
        if first_cell(page) is None:
            print(f"{stage.title}: no field to type in")
            continue
        milliseconds(application, window, page, 20)  # what is made late is made
        paints.count = 0
        wall, processor, enters = milliseconds(application, window, page, keys)
        painted = paints.count / keys
        application.removeEventFilter(paints)
        wall, processor, enters = milliseconds(application, window, page, keys)
        application.installEventFilter(paints)
        print(
            f"{stage.title}: {len(wall)} keys, median {statistics.median(wall):.1f} ms, "
            f"99th percentile {percentile(wall):.1f} ms, longest {max(wall):.1f} ms; "
            f"processor {statistics.median(processor):.1f} and {percentile(processor):.1f} ms; "
            f"{len(enters)} Enter, median {statistics.median(enters):.1f} ms, "
            f"longest {max(enters):.1f} ms; {painted:.0f} widgets painted a key"
        )
    window.open_job.edits.setClean()
    window.open_job.drop_draft()


def percentile(values):
    """The 99th."""
    return statistics.quantiles(values, n=100, method="inclusive")[98]


if __name__ == "__main__":
    main()
