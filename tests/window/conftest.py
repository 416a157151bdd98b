"""A window on the demo job, with a clock of its own so that every tick has its time."""

from datetime import UTC, datetime, timedelta

import pytest

from aligner.data_files import demo
from aligner.drawing.theme import Appearance, theme_for
from aligner.storage.document_file import load_job
from aligner.window.main_window import MainWindow


class Clock:
    """A clock that goes on by a minute each time it is looked at."""

    def __init__(self):
        self.time = datetime(2026, 5, 2, 9, 0, tzinfo=UTC)

    def __call__(self):
        self.time += timedelta(minutes=1)
        return self.time


@pytest.fixture
def demo_path():
    return demo("fellside-left-leg-high.job.json")


@pytest.fixture
def window(qtbot, demo_path):
    made = MainWindow(theme_for(Appearance.LIGHT), now=Clock())
    qtbot.addWidget(made)
    made.show_job(load_job(demo_path)[0])
    made.show()
    qtbot.waitExposed(made)
    yield made
    made.open_job.edits.setClean()
    made.open_job.drop_draft()
