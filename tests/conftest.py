"""What every test shares: Qt draws off the screen, in one application."""

import os

import pytest
from PySide6.QtCore import QCoreApplication, QEvent

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["LC_ALL"] = "C.UTF-8"  # the words are asked for in English, whatever is spoken here


@pytest.fixture(scope="session", autouse=True)
def application(qapp):
    """One application with widgets for all: the job card must not start a lesser one first."""
    return qapp


@pytest.fixture(autouse=True)
def _widgets_go_with_their_test():
    """What a test let go is gone before the next: Qt would keep it for its event loop."""
    yield
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
