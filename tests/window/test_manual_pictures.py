"""The pictures in the manual: there, in the window's colours, and no wider than the page."""

import re

import pytest
from PySide6.QtCore import QUrl
from PySide6.QtGui import QImage, QTextDocument
from PySide6.QtWidgets import QApplication

from aligner.assessment import Stage
from aligner.data_files import resource
from aligner.drawing.theme import Appearance
from aligner.language import speak
from aligner.window.manual_page import ManualPage, manual_pages
from aligner.window.preferences import Preferences

PAGES = sorted(resource("manual").rglob("*.md"))
IMAGE = QTextDocument.ResourceType.ImageResource


def named_in(page):
    return re.findall(r"^!\[[^]]+\]\(([^)]+)\)$", page.read_text(encoding="utf-8"), re.MULTILINE)


def manual(window):
    """The page of the manual on the Tighten stage, as it is shown."""
    window.go_to(Stage.TIGHTEN)
    window.show_manual()
    return window.findChildren(ManualPage)[-1].text


def picture_in(browser):
    """The picture as the page was given it."""
    return browser.document().resource(IMAGE.value, QUrl("tighten-light.png"))


@pytest.mark.parametrize("page", PAGES, ids=lambda path: f"{path.parent.name}-{path.stem}")
def test_every_picture_named_is_there_in_light_and_in_dark_colours(page):
    for name in named_in(page):
        assert name.endswith("-light.png")
        for wanted in (name, name.replace("-light", "-dark")):
            assert not QImage(str(page.parent / wanted)).isNull(), wanted


def test_the_page_of_every_stage_shows_it():
    for stage in Stage:
        page = resource("manual") / f"{stage.value}.md"
        assert named_in(page) == [f"{stage.value}-light.png"]


@pytest.mark.parametrize("width", [1280, 1100, 1600])
def test_a_picture_is_as_wide_as_the_page_at_most_and_nothing_scrolls_sideways(window, width):
    browser = manual(window)
    window.resize(width, 720)
    picture = picture_in(browser)
    assert 0 < picture.deviceIndependentSize().width() <= browser.viewport().width()
    assert browser.horizontalScrollBar().maximum() == 0


@pytest.mark.parametrize("appearance", [Appearance.LIGHT, Appearance.DARK])
def test_a_picture_has_the_colours_of_the_window(window, appearance):
    window.take_preferences(Preferences(appearance))
    window.go_back()
    picture = picture_in(manual(window))
    is_dark = picture.pixelColor(2, 2).lightness() < 128
    assert is_dark is (appearance is Appearance.DARK)


def test_the_place_on_the_page_is_kept_when_the_window_becomes_narrower(window):
    browser = manual(window)
    bar = browser.verticalScrollBar()
    bar.setValue(bar.maximum() // 2)
    window.resize(1100, 720)
    assert 0.3 < bar.value() / bar.maximum() < 0.7


@pytest.mark.parametrize("language", ["en", "de"])
def test_no_page_has_to_be_scrolled_sideways(window, language):
    speak(language)
    window.show_manual()
    manual_page = window.findChildren(ManualPage)[-1]
    for name in manual_pages():
        manual_page.open_at(name)
        QApplication.processEvents()
        assert manual_page.text.horizontalScrollBar().maximum() == 0, name
