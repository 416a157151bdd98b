"""The manual in every language: the same pages, and those of the language spoken are shown."""

import re

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QApplication

from aligner.assessment import Stage
from aligner.data_files import resource
from aligner.drawing.theme import Appearance, theme_for
from aligner.language import speak
from aligner.window.language import speak_language
from aligner.window.main_window import MainWindow
from aligner.window.manual_page import ORDER, manual_pages

ENGLISH = resource("manual")
LANGUAGES = sorted(folder.name for folder in ENGLISH.iterdir() if folder.is_dir())
NAMES = sorted(path.stem for path in ENGLISH.glob("*.md"))


def page(name, language=""):
    return (ENGLISH / language / f"{name}.md").read_text(encoding="utf-8")


def lines_by_kind(text):
    """How many headings of each depth, rows of tables and points of lists it has."""
    return {
        kind: len(re.findall(pattern, text, re.MULTILINE))
        for kind, pattern in {
            "title": r"^# ",
            "heading": r"^## ",
            "row": r"^\|",
            "point": r"^(?:-|\d+\.) ",
            "picture": r"^!\[[^]]+\]\(",
        }.items()
    }


def test_german_is_there():
    assert "de" in LANGUAGES


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_language_has_exactly_the_pages_of_the_english_manual(language):
    assert sorted(path.stem for path in (ENGLISH / language).glob("*.md")) == NAMES
    speak(language)
    assert list(manual_pages()) == list(ORDER)
    assert {path.parent.name for path in manual_pages().values()} == {language}


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("language", LANGUAGES)
def test_a_page_is_built_like_the_english_one(language, name):
    assert lines_by_kind(page(name, language)) == lines_by_kind(page(name))


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_keys_of_the_figures_are_those_of_the_english_page(language):
    keys = [re.findall(r"^\| `([^`]+)` \|", page("figures", of), re.M) for of in ("", language)]
    assert keys[0] == keys[1]


def test_a_language_without_a_manual_shows_the_english_one():
    speak("fr")
    assert {path.parent for path in manual_pages().values()} == {ENGLISH}


def test_the_manual_opens_in_the_language_spoken(qtbot, window):
    window.go_to(Stage.TIGHTEN)
    speak("de")
    qtbot.keyClick(window, Qt.Key.Key_F1)
    assert QApplication.focusWidget().toPlainText().startswith("Anziehen")


@pytest.fixture
def speaking():
    yield speak_language
    speak_language("en")


@pytest.mark.parametrize("language", ["", *LANGUAGES])
def test_the_keys_given_for_an_entry_of_a_menu_are_those_of_the_menu(qtbot, speaking, language):
    speaking(language or "en")
    window = MainWindow(theme_for(Appearance.LIGHT))
    qtbot.addWidget(window)
    keys = {
        re.sub(r"&(?=\w)", "", action.text()).rstrip("."): action.shortcuts()
        for action in window.findChildren(QAction)
    }
    text = "".join(page(name, language) for name in NAMES)
    given = re.findall(r"\*\*([^*]+)\*\* \(`([^`]+)`\)", text)
    assert len(given) >= 3
    for name, key in given:
        key = key.replace("Strg", "Ctrl").replace("Umschalt", "Shift")
        assert QKeySequence(key) in keys[name], name
