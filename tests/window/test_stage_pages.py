"""Pages of the stages beside Align and Tighten: what is next is in sight, no word is cut off."""

from itertools import product

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QFontMetricsF, QPalette
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit

from aligner.assessment import Stage
from aligner.data_files import demo
from aligner.drawing.theme import Theme
from aligner.job import Job
from aligner.sheet import Side
from aligner.storage.document_file import load_job
from aligner.storage.history import JobState
from aligner.window.history.page import HistoryPage
from aligner.window.language import speak_language
from aligner.window.strip.views import StripView
from aligner.window.widgets.labels import MainButton
from tests.window.test_text_size import SIZES, faults, holder_of, let_go, settle, window_at

CASES = list(product(SIZES, ("en", "de")))
TUBE = ("tube_runout", Side.LEFT)


@pytest.fixture(scope="module", params=CASES, ids=lambda case: f"{case[0]} %, {case[1]}")
def window(request, qapp):
    size, language = request.param
    speak_language(language)
    made = window_at(size)
    made.activateWindow()
    yield made
    let_go(made)
    speak_language("en")


def job_of(name):
    return load_job(demo(f"{name}.job.json"))[0]


def show(window, job, stage):
    window.show_job(job)
    window.go_to(stage)
    settle()
    return window.page(stage)


def is_whole(widget):
    return widget.visibleRegion().boundingRect() == widget.rect()


def advance(widget, words):
    return QFontMetricsF(widget.font()).horizontalAdvance(words)


# The next action is in sight


@pytest.mark.parametrize("view", StripView)
@pytest.mark.parametrize("name", ["fellside-left-leg-high", "quernbeck-upside-down"])
def test_every_view_of_strip_keeps_its_main_button_on_the_screen(window, name, view):
    page = show(window, job_of(name), Stage.STRIP)
    page.views.button(view).click()
    settle()
    button = page.loosen.door.done if view is StripView.LOOSEN else page.go_on
    assert is_whole(button)
    assert faults(holder_of(page)) == []


def test_a_question_at_a_step_to_loosen_leaves_the_button_on_the_screen(window):
    page = show(window, job_of("fellside-left-leg-high"), Stage.STRIP)
    page.views.button(StripView.LOOSEN).click()
    page.loosen.list.setCurrentRow(4)  # not its turn
    page.loosen.door.done.click()
    settle()
    assert page.loosen.door.reason.isVisible()
    assert is_whole(page.loosen.door.done)
    assert is_whole(page.loosen.card.big)
    page.loosen.door.leave()


def test_the_button_that_starts_a_sheet_is_on_the_screen(window):
    page = show(window, Job(), Stage.BIKE)
    assert is_whole(page.start_card.start)
    assert page.start_card.name.visibleRegion().boundingRect() == page.start_card.name.rect()


def test_the_preferences_keep_the_way_back_on_the_screen(window):
    window.show_preferences()
    settle()
    (button,) = (each for each in window.findChildren(MainButton) if each.isVisible())
    assert is_whole(button)


def test_without_fasteners_the_loosening_leads_to_the_bike(window):
    page = show(window, Job(), Stage.STRIP)
    page.views.button(StripView.LOOSEN).click()
    settle()
    assert is_whole(page.go_on)
    assert QApplication.focusWidget() is page.go_on
    QTest.keyClick(page.go_on, Qt.Key.Key_Return)
    assert window.page(Stage.BIKE).isVisible()


def test_inspect_keeps_its_main_button_on_the_screen(window):
    page = show(window, job_of("fellside-left-leg-high"), Stage.INSPECT)
    for standing in window.open_job.assessment.inspection.places:
        page.list.chosen.emit(standing.place)
        settle()
        assert is_whole(page.next), standing.title
        assert faults(holder_of(page)) == [], standing.title


def test_what_is_refused_at_a_point_pushes_nothing_over_anything(window):
    page = show(window, job_of("fellside-left-leg-high"), Stage.INSPECT)
    page.list.chosen.emit(TUBE)
    cell = page.panels[TUBE].number.box.first_cell
    cell.setFocus()
    QTest.keyClicks(cell, "0.1x")
    QTest.keyClick(cell, Qt.Key.Key_Tab)
    settle()
    assert page.panels[TUBE].has_refused_text
    assert faults(holder_of(page)) == []
    cell.clear()


def test_a_name_that_is_missing_pushes_nothing_over_anything(window):
    page = show(window, Job(), Stage.BIKE)
    page.start_card.start.click()
    settle()
    assert page.start_card.name.words.isVisible()
    assert faults(holder_of(page)) == []


def test_build_shows_its_main_button_once_all_is_built_and_its_top_with_it(window):
    page = show(window, job_of("fellside-air-assist"), Stage.BUILD)
    assert not page.go_on.isVisible()
    page = show(window, job_of("history/2024-head-bearing"), Stage.BUILD)
    assert is_whole(page.go_on)
    assert QApplication.focusWidget() is page.go_on
    assert page.page.verticalScrollBar().value() == 0


def test_a_signed_job_begins_at_the_fastener_that_is_checked_again(window):
    page = show(window, job_of("history/2026-front-end-refit"), Stage.PROVE)
    first = next(iter(page.recheck_card.rows.values()))
    assert QApplication.focusWidget() is first.tick
    assert is_whole(first.tick)


def test_a_signed_job_with_nothing_due_begins_at_the_top(window):
    show(window, job_of("history/2026-front-end-refit"), Stage.PROVE)
    page = show(window, job_of("history/2024-head-bearing"), Stage.PROVE)
    assert page.page.verticalScrollBar().value() == 0
    assert faults(holder_of(page)) == []


# No page scrolls on into nothing


@pytest.mark.parametrize("stage", [Stage.BIKE, Stage.BUILD, Stage.PROVE])
def test_a_page_ends_where_its_last_card_does(window, stage):
    page = show(window, job_of("fellside-left-leg-high"), stage)
    inside = page.page.widget()
    cards = [inside.layout().itemAt(place).widget() for place in range(inside.layout().count())]
    ends = [card.geometry().bottom() for card in cards if card is not None and card.isVisible()]
    assert inside.height() - max(ends) <= 2


# No word is cut off


def test_what_stands_in_the_row_of_a_fastener_can_be_read(window):
    page = show(window, job_of("fellside-left-leg-high"), Stage.BIKE)
    for name, row in page.fasteners.rows.items():
        for box in row.boxes.values():
            assert advance(box.line, box.line.text()) < box.line.contentsRect().width(), name


def test_choices_of_bike_and_build_are_not_cut_off(window):
    bike = show(window, job_of("fellside-left-leg-high"), Stage.BIKE).fasteners
    build = show(window, job_of("fellside-air-assist"), Stage.BUILD)
    for choice in (bike.new_kind, bike.new_side, build.sag_card.gauge, build.fill_card.gauge):
        assert advance(choice, choice.currentText()) < choice.width(), choice.currentText()


def test_a_name_too_long_for_a_line_takes_two_among_the_places_to_look_at(qtbot):
    speak_language("de")
    window = window_at(100)
    qtbot.addWidget(window)
    page = show(window, job_of("fellside-left-leg-high"), Stage.INSPECT)
    high = {}
    for row in range(page.list.count()):
        item = page.list.item(row)
        high.setdefault(item.text(), page.list.visualItemRect(item).height())
    speak_language("en")
    let_go(window)
    assert high["Gewinde der Verschlussschraube"] > high["Staubkappe"]


def test_a_row_in_hand_stays_in_sight_as_the_words_over_the_list_grow(window):
    page = show(window, job_of("fellside-left-leg-high"), Stage.INSPECT)
    for standing in window.open_job.assessment.inspection.places:
        page.list.chosen.emit(standing.place)
        settle()
        row = page.list.visualItemRect(page.list.currentItem())
        assert page.list.viewport().rect().contains(row), standing.title


def test_hints_in_empty_lines_have_their_own_colour_of_the_theme(qtbot):
    window = window_at(100)
    qtbot.addWidget(window)
    page = show(window, Job(), Stage.STRIP)
    hint = Theme().color("hint")
    lines = [line for line in page.findChildren(QLineEdit) if line.placeholderText()]
    assert lines
    for line in lines:
        line.ensurePolished()
        assert line.palette().color(QPalette.ColorRole.PlaceholderText) == hint
    let_go(window)


def test_the_usual_things_that_come_off_are_not_cut_off(window):
    page = show(window, job_of("fellside-left-leg-high"), Stage.STRIP)
    page.views.button(StripView.PARTS).click()
    settle()
    usual = page.parts.pick.usual
    assert usual.sizeHintForColumn(0) <= usual.viewport().width()
    assert faults(holder_of(page)) == []


# The history


def read_history(qtbot, window, folder):
    window.show_history()
    (page,) = (each for each in window.findChildren(HistoryPage) if each.isVisible())
    with qtbot.waitSignal(page.read_all):
        page.read(folder)
    settle()
    return page


def test_what_stands_in_a_row_of_the_history_is_not_cut_off(qtbot, window):
    page = read_history(qtbot, window, demo("history"))
    table = page.table
    (due,) = (each for each in page.model.rows if each.state is JobState.DUE)
    row = page.model.rows.index(due)
    for column in range(page.model.columnCount()):
        words = page.model.index(row, column).data()
        room = QRect(0, 0, table.columnWidth(column) - 6, 1000)
        needed = table.fontMetrics().boundingRect(room, Qt.TextFlag.TextWordWrap, words)
        assert needed.width() <= room.width(), words
        assert needed.height() <= table.rowHeight(row), words
    assert is_whole(page.open_button)


def test_another_folder_leaves_nothing_of_the_one_before(qtbot, window, tmp_path):
    page = read_history(qtbot, window, demo("history"))
    page.table.selectRow(0)
    assert page.open_button.isEnabled()
    assert page.settings.isVisible()
    with qtbot.waitSignal(page.read_all):
        page.read(tmp_path)
    assert not page.open_button.isEnabled()
    assert not page.settings.isVisible()
