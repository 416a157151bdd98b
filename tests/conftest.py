"""What every test shares: Qt off the screen, in one application; languages made up for a test."""

import os

import pytest
from PySide6.QtCore import QCoreApplication, QEvent

from aligner.language import speak

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


@pytest.fixture(autouse=True)
def _english_after_each_test():
    yield
    speak("en")


@pytest.fixture
def german(request):
    """A few texts in German: those of the module's GERMAN, by text or by (text, meaning, count).

    The language's code is the module's own, since results that hold texts are kept by the code.
    """
    texts = request.module.GERMAN

    def translated(text, meaning, count):
        return texts.get((text, meaning, count)) or texts.get(text, text)

    speak(f"de-{request.module.__name__}", translated, ",")


@pytest.fixture
def bracketed():
    """Every text in brackets, whole and once, so that one which is not said can be told."""

    def translated(text, meaning, count):
        assert "⟦" not in text, "said twice"
        return f"⟦{text}⟧"

    speak("brackets", translated, ",")
