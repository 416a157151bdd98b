"""What a screen reader is told while the keyboard is elsewhere, as Qt is asked to pass it on."""

import pytest
from PySide6 import QtGui
from PySide6.QtGui import QAccessible

from aligner.assessment import Stage
from tests.window.hands import press, tab_to, write

pytestmark = pytest.mark.skipif(
    not hasattr(QtGui, "QAccessibleAnnouncementEvent"), reason="needs Qt 6.8"
)


@pytest.fixture
def told(window, monkeypatch):
    """What was announced since the window stood: words, and whether they may interrupt."""
    heard = []

    def take(event):
        if isinstance(event, QtGui.QAccessibleAnnouncementEvent):
            is_urgent = event.politeness() == QAccessible.AnnouncementPoliteness.Assertive
            heard.append((event.message(), is_urgent))

    monkeypatch.setattr(QAccessible, "updateAccessibility", staticmethod(take))
    return heard


def test_the_sentence_is_read_when_it_has_become_another(window, told):
    window.go_to(Stage.BIKE)
    window.go_to(Stage.BIKE)
    assert told == [("Sheet complete.", False)]


def test_a_caution_may_interrupt(window, told):
    window.go_to(Stage.BIKE)
    window.go_to(Stage.ALIGN)
    assert told[-2:] == [
        ("Let the left leg down 1.6 mm.", False),
        ("Caution: hold the leg as its clamps come slack: it drops.", True),
    ]


def test_nothing_is_read_while_a_reading_is_being_typed_and_once_when_it_is_kept(window, told):
    tab_to("left leg, reading 1")
    press("Ctrl+A")
    write("9.9")
    assert told == []
    press("Tab")
    assert len(told) == 1
    assert told[0] == (window.sentence.text(), False)
