"""How each value is measured: beside every box that is read, two sentences and a drawing."""

import re

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit

from aligner.assessment import Stage
from aligner.data_files import demo
from aligner.storage.document_file import load_job
from aligner.window.measuring.card import MeasuringCard
from aligner.window.measuring.guides import guide_key, guides

#: Boxes that hold words and not a value: names, notes, reasons and where a value is from.
WORDS = re.compile(
    r"name|note|this job|source|because|reason|sign-off|wrench used|came off|look of|"
    r"handlebars as found|steering as found|oil that went in|where these values|"
    r"oil the manual names|order of the parts|raise",
    re.IGNORECASE,
)


def card_of(window):
    return window.findChild(MeasuringCard)


@pytest.mark.parametrize("key", sorted(guides()))
def test_a_guide_is_two_sentences(key):
    how = guides()[key].how
    assert len(re.findall(r"\.(?=\s+[A-Z]|$)", how)) == 2
    assert len(how) < 260


@pytest.mark.parametrize("stage", list(Stage), ids=lambda stage: stage.value)
@pytest.mark.parametrize(
    "name", ["fellside-left-leg-high", "fellside-air-assist", "quernbeck-upside-down"]
)
def test_every_box_for_a_value_says_how_it_is_measured(window, stage, name):
    window.show_job(load_job(demo(f"{name}.job.json"))[0])
    window.go_to(stage)
    lines = window.page(stage).findChildren(QLineEdit)
    without = {
        line.accessibleName() or line.placeholderText()
        for line in lines
        if not WORDS.search(line.accessibleName()) and guide_key(line) not in guides()
    }
    assert without == set()


def test_a_key_shows_how_the_value_in_hand_is_measured_and_follows_the_keyboard(window):
    window.go_to(Stage.ALIGN)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_F1, Qt.KeyboardModifier.ShiftModifier)
    card = card_of(window)
    assert card.isVisible()
    assert card.words[0] == "Height of a tube"
    shown = {card.words[0]}
    for _ in range(12):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        shown.add(card.words[0])
    assert "From the frame to the lower bracket" in shown


def test_the_card_never_covers_the_box_it_speaks_of(window):
    window.go_to(Stage.ALIGN)
    window.show_measuring()
    card = card_of(window)
    for _ in range(40):
        here = QApplication.focusWidget()
        if isinstance(here, QLineEdit):
            corner = here.mapTo(card.parentWidget(), here.rect().topLeft())
            assert not card.geometry().intersects(here.rect().translated(corner))
        QTest.keyClick(here, Qt.Key.Key_Tab)


def test_the_same_key_puts_the_card_away_and_the_keyboard_stays(window):
    window.go_to(Stage.ALIGN)
    here = QApplication.focusWidget()
    window.show_measuring()
    assert QApplication.focusWidget() is here
    window.show_measuring()
    assert card_of(window) is None or not card_of(window).isVisible()
    assert QApplication.focusWidget() is here
