"""No text of the window's own stands outside the translations: each is bracketed here."""

import re

import pytest
from PySide6.QtGui import QAccessible, QAction
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLabel, QLineEdit, QWidget

from aligner.assessment import Stage
from aligner.data_files import demo
from aligner.drawing.theme import Appearance, theme_for
from aligner.job import Job
from aligner.storage.document_file import load_job
from aligner.units.dimension import EVERY_DIMENSION
from aligner.window.main_window import MainWindow
from tests.window.conftest import Clock

DEMOS = (
    "fellside-left-leg-high",
    "fellside-true",
    "fellside-pairs-disagree",
    "fellside-air-assist",
    "fellside-anti-dive",
    "quernbeck-upside-down",
)
EMPTY = "no job"
#: Symbols and names that are the same in every language.
_THE_SAME = {"mm", "in", "m", "km", "k", "U", "Enter", "Tab", "Ctrl", "Alt", "Esc", "F1", "F6"}
_THE_SAME |= {"F11", "A4", "PDF", "CSV", "Aligner", "ISO", "DIN", "English", "Deutsch", "Shift"}
_THE_SAME |= {unit.symbol for dimension in EVERY_DIMENSION for unit in dimension.units}


def outside_brackets(text):
    """What of a text stands outside every bracket."""
    before = None
    while before != text:
        before, text = text, re.sub(r"⟦[^⟦⟧]*⟧", " ", text)
    return text


def texts_of(widget):
    """Every text that a widget shows or that is read out for it."""
    if isinstance(widget, QLabel | QAbstractButton):
        yield widget.text()
    if isinstance(widget, QLineEdit):
        yield widget.placeholderText()
    if isinstance(widget, QComboBox):
        yield from (widget.itemText(place) for place in range(widget.count()))
    yield widget.toolTip()
    interface = QAccessible.queryAccessibleInterface(widget)
    if interface is not None:
        yield interface.text(QAccessible.Text.Name)
        yield interface.text(QAccessible.Text.Description)


def words_of(value):
    """The words in a document: what a person typed stays as it is."""
    if isinstance(value, dict):
        for name, each in value.items():
            yield from words_of(name)  # gauges go by their names
            yield from words_of(each)
    elif isinstance(value, list):
        for each in value:
            yield from words_of(each)
    elif isinstance(value, str):
        yield from (word.casefold() for word in re.findall(r"[^\W\d_]+", value))


def unsaid_in(window, job):
    """The texts on the screen that are in no translation, with the kind of widget."""
    typed = set(words_of(job.model_dump(mode="json"))) | _THE_SAME
    found = set()
    for widget in [window, *window.findChildren(QWidget)]:
        for text in texts_of(widget):
            words = re.findall(r"[^\W\d_]{2,}", outside_brackets(text))
            if any(not {word, word.casefold()} & typed for word in words):
                found.add((type(widget).__name__, text))
    for action in window.findChildren(QAction):
        if re.search(r"[^\W\d_]{2,}", outside_brackets(action.text())):
            found.add(("QAction", action.text()))
    return found


@pytest.mark.usefixtures("bracketed")
@pytest.mark.parametrize("stage", list(Stage), ids=lambda stage: stage.value)
@pytest.mark.parametrize("name", [EMPTY, *DEMOS])
def test_every_text_on_a_stage_is_said(qtbot, stage, name):
    job = Job() if name == EMPTY else load_job(demo(f"{name}.job.json"))[0]
    window = MainWindow(theme_for(Appearance.LIGHT), now=Clock())
    qtbot.addWidget(window)
    window.show_job(job)
    window.show()
    window.go_to(stage)
    assert unsaid_in(window, job) == set()


@pytest.mark.usefixtures("bracketed")
@pytest.mark.parametrize("page", ["show_history", "show_preferences", "show_bench"])
def test_every_text_beside_the_stages_is_said(qtbot, window, page):
    getattr(window, page)()
    assert unsaid_in(window, window.open_job.job) == set()
