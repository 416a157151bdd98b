"""The button that says what is next stays on the screen, at each size of text and in German."""

from itertools import product

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetricsF
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QComboBox, QLabel

from aligner.assessment import Stage
from aligner.data_files import demo
from aligner.storage.document_file import load_job
from aligner.window.align.views import View
from aligner.window.language import speak_language
from aligner.window.widgets.labels import MainButton
from aligner.window.widgets.large_words import LargeWords
from tests.window.test_text_size import SIZES, faults, holder_of, let_go, settle, window_at

CASES = list(product(SIZES, ("en", "de")))


@pytest.fixture(scope="module", params=CASES, ids=lambda case: f"{case[0]} %, {case[1]}")
def window(request, qapp):
    size, language = request.param
    speak_language(language)
    made = window_at(size)
    yield made
    let_go(made)
    speak_language("en")


def show(window, name, stage):
    window.show_job(load_job(demo(f"{name}.job.json"))[0])
    window.go_to(stage)
    settle()
    return window.page(stage)


def is_whole(widget):
    return widget.visibleRegion().boundingRect() == widget.rect()


@pytest.mark.parametrize("name", ["fellside-true", "fellside-left-leg-high"])
def test_each_step_shows_its_largest_words_and_the_button_that_ticks(window, name):
    page = show(window, name, Stage.TIGHTEN)
    steps = window.open_job.assessment.tightening.steps
    kinds = {each.step.kind: row for row, each in reversed(list(enumerate(steps)))}
    assert len(kinds) > 3
    for kind, row in kinds.items():
        page.list.setCurrentRow(row)
        settle()
        assert is_whole(page.done), kind
        for words in page.findChildren(LargeWords):
            if words.isVisible():
                wide = QFontMetricsF(words.fitted_font()).horizontalAdvance(words.text)
                assert wide < words.width(), kind
        assert is_whole(page.card.big), kind


def test_a_question_leaves_the_button_on_the_screen(window):
    page = show(window, "fellside-true", Stage.TIGHTEN)
    page.list.setCurrentRow(5)  # not its turn
    page.done.click()
    settle()
    assert page.reason.isVisible()
    assert is_whole(page.done)
    page.door.leave()


@pytest.mark.parametrize("view", View)
@pytest.mark.parametrize(
    "name", ["fellside-true", "fellside-left-leg-high", "fellside-pairs-disagree"]
)
def test_every_view_of_align_keeps_its_main_button_on_the_screen(window, name, view):
    page = show(window, name, Stage.ALIGN)
    page.go_to_view(view)
    settle()
    (button,) = (each for each in page.findChildren(MainButton) if each.isVisible())
    assert is_whole(button)
    assert faults(holder_of(page)) == []
    page.go_to_view(View.READINGS)


@pytest.mark.parametrize("name", ["quernbeck-upside-down", "fellside-pairs-disagree"])
def test_what_is_chosen_on_align_is_not_cut_off(window, name):
    page = show(window, name, Stage.ALIGN)
    for choice in page.findChildren(QComboBox):
        if choice.isVisible():
            needed = QFontMetricsF(choice.font()).horizontalAdvance(choice.currentText())
            assert needed < choice.width(), choice.currentText()


def test_the_forms_for_tools_are_whole(window):
    page = show(window, "fellside-true", Stage.TIGHTEN)
    page.door.wrenches.click()
    for shelf, form in (
        (page.wrench_card.wrenches, page.wrench_card.wrench_form),
        (page.wrench_card.adapters, page.wrench_card.adapter_form),
    ):
        shelf.add.click()
        settle()
        assert form.isVisible()
        assert faults(holder_of(page)) == []
        assert is_whole(page.done)
        form.leave()
    page.door.wrenches.click()


def test_a_click_on_what_the_tick_of_an_adapter_says_ticks_it(window):
    page = show(window, "fellside-true", Stage.TIGHTEN)
    page.door.wrenches.click()
    page.wrench_card.adapters.add.click()
    form = page.wrench_card.adapter_form
    (words,) = (each for each in form.findChildren(QLabel) if each.buddy() is form.tick)
    QTest.mouseClick(words, Qt.MouseButton.LeftButton)
    assert form.tick.isChecked()
    assert form.tick.accessibleName() == words.text()
    form.leave()
    page.door.wrenches.click()
