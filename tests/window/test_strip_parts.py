"""What came off, with real keys: named, moved, put right, and ticked back on, last off first."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton

from aligner.assessment import Stage
from aligner.window.strip.views import StripView

_ALT = Qt.KeyboardModifier.AltModifier


@pytest.fixture
def parts(qtbot, window):
    window.activateWindow()
    window.go_to(Stage.STRIP)
    page = window.page(Stage.STRIP)
    page.views.button(StripView.PARTS).click()
    return page.parts


def focus():
    return QApplication.focusWidget()


def press(qtbot, key, modifier=Qt.KeyboardModifier.NoModifier):
    qtbot.keyClick(focus(), key, modifier)


def type_and_enter(qtbot, *texts):
    for text in texts:
        qtbot.keyClicks(focus(), text)
        press(qtbot, Qt.Key.Key_Return)


def three_off(qtbot):
    type_and_enter(qtbot, "Front mudguard", "tin 1", "rubbers stay on")
    type_and_enter(qtbot, "Headlamp and bracket", "tin 2", "")
    type_and_enter(qtbot, "Sidecar tug", "pocket", "invented")


def names(window):
    return [each.name for each in window.open_job.job.strip.removed]


def test_enter_walks_from_name_to_fasteners_to_note_and_to_the_next_part(qtbot, window, parts):
    assert focus() is parts.pick.name
    three_off(qtbot)
    assert focus() is parts.pick.name
    removed = window.open_job.job.strip.removed
    assert names(window) == ["Front mudguard", "Headlamp and bracket", "Sidecar tug"]
    assert (removed[0].fasteners, removed[0].note) == ("tin 1", "rubbers stay on")
    assert [bool(each.reminder) for each in removed] == [True, True, False]
    assert [row.name.text() for row in parts.back_rows] == names(window)[::-1]


def test_a_picked_name_goes_into_the_job_in_the_language_spoken(qtbot, window, parts, request):
    request.getfixturevalue("bracketed")
    qtbot.keyClicks(focus(), "horn")
    press(qtbot, Qt.Key.Key_Down)
    press(qtbot, Qt.Key.Key_Return)
    assert names(window) == ["⟦Horn⟧"]
    usual = [parts.pick.usual.item(row).text() for row in range(parts.pick.usual.count())]
    assert "⟦Horn⟧" not in usual
    assert "⟦Fork brace⟧" in usual


def test_a_usual_thing_that_came_off_under_its_english_name_is_not_offered_again(
    qtbot, window, parts, request
):
    type_and_enter(qtbot, "Horn")
    request.getfixturevalue("bracketed")
    parts.refresh()
    usual = [parts.pick.usual.item(row).text() for row in range(parts.pick.usual.count())]
    assert "⟦Horn⟧" not in usual
    assert "⟦Fork brace⟧" in usual


def test_typing_searches_the_usual_things_and_down_enter_takes_one(qtbot, window, parts):
    qtbot.keyClicks(focus(), "calip")
    shown = [parts.pick.usual.item(row).text() for row in range(parts.pick.usual.count())]
    assert shown == ["Left front caliper", "Right front caliper"]
    press(qtbot, Qt.Key.Key_Down)
    press(qtbot, Qt.Key.Key_Down)
    press(qtbot, Qt.Key.Key_Return)
    assert names(window) == ["Right front caliper"]
    assert focus() is parts.off_rows[0].lines["fasteners"]
    assert "not from the hose" in parts.off_rows[0].reminder.text()
    assert parts.pick.name.text() == ""
    shown = [parts.pick.usual.item(row).text() for row in range(parts.pick.usual.count())]
    assert "Right front caliper" not in shown
    assert "Fuel tank" in shown


def test_up_from_the_usual_things_goes_back_to_what_was_typed(qtbot, window, parts):
    qtbot.keyClicks(focus(), "ho")
    press(qtbot, Qt.Key.Key_Down)
    press(qtbot, Qt.Key.Key_Up)
    assert focus() is parts.pick.name
    assert parts.pick.name.text() == "ho"
    press(qtbot, Qt.Key.Key_Escape)
    assert parts.pick.name.text() == ""
    assert names(window) == []


def test_a_name_that_is_typed_and_left_becomes_an_entry(qtbot, window, parts):
    qtbot.keyClicks(focus(), "Windscreen")
    window.go_to(Stage.ALIGN)
    assert names(window) == ["Windscreen"]


def test_an_empty_name_adds_nothing(qtbot, window, parts):
    type_and_enter(qtbot, "   ")
    assert names(window) == []
    assert window.open_job.edits.count() == 0


def test_enter_where_nothing_is_typed_goes_on_to_the_list_of_steps(qtbot, window, parts):
    page = window.page(Stage.STRIP)
    type_and_enter(qtbot, "Horn", "tin 1", "", "")
    assert focus() is page.go_on
    assert page.go_on.text().startswith("Go on to Loosen")
    press(qtbot, Qt.Key.Key_Return)
    assert page.view is StripView.LOOSEN
    assert focus() is page.loosen.list


def test_undo_while_a_line_of_the_part_is_being_typed_in_breaks_nothing(qtbot, window, parts):
    type_and_enter(qtbot, "Horn")
    qtbot.keyClicks(focus(), "tin 1")
    window.open_job.edits.undo()
    assert names(window) == []
    assert parts.off_rows == []
    assert focus() is parts.pick.name
    window.open_job.edits.redo()
    assert names(window) == ["Horn"]
    assert parts.off_rows[0].lines["fasteners"].text() == ""


def test_alt_up_moves_a_part_with_what_is_being_typed_and_the_keyboard_goes_along(
    qtbot, window, parts
):
    three_off(qtbot)
    parts.off_rows[2].lines["note"].setFocus()
    parts.off_rows[2].lines["note"].selectAll()
    qtbot.keyClicks(focus(), "was rusty")
    press(qtbot, Qt.Key.Key_Up, _ALT)
    press(qtbot, Qt.Key.Key_Up, _ALT)
    assert names(window) == ["Sidecar tug", "Front mudguard", "Headlamp and bracket"]
    assert focus() is parts.off_rows[0].lines["note"]
    assert window.open_job.job.strip.removed[0].note == "was rusty"
    assert parts.off_rows[1].lines["note"].text() == "rubbers stay on"
    press(qtbot, Qt.Key.Key_Up, _ALT)  # it is the first: nothing moves
    assert names(window)[0] == "Sidecar tug"
    press(qtbot, Qt.Key.Key_Down, _ALT)
    assert names(window)[1] == "Sidecar tug"


def test_the_buttons_move_and_take_out_and_undo_brings_it_back(qtbot, window, parts):
    three_off(qtbot)
    parts.off_rows[0].down.setFocus()
    press(qtbot, Qt.Key.Key_Space)
    press(qtbot, Qt.Key.Key_Return)
    assert names(window) == ["Headlamp and bracket", "Sidecar tug", "Front mudguard"]
    parts.off_rows[1].out.setFocus()
    press(qtbot, Qt.Key.Key_Return)
    assert names(window) == ["Headlamp and bracket", "Front mudguard"]
    window.open_job.edits.undo()
    assert names(window) == ["Headlamp and bracket", "Sidecar tug", "Front mudguard"]
    assert parts.off_rows[1].lines["note"].text() == "invented"


def test_a_part_keeps_the_name_it_had_where_another_is_not_given(qtbot, window, parts):
    three_off(qtbot)
    line = parts.off_rows[0].lines["name"]
    line.setFocus()
    line.selectAll()
    press(qtbot, Qt.Key.Key_Delete)
    press(qtbot, Qt.Key.Key_Tab)
    assert names(window)[0] == "Front mudguard"
    assert line.text() == "Front mudguard"
    assert "needs a name" in parts.pick.said.text()


def test_refitting_goes_last_off_first_with_its_time_and_can_be_taken_back(qtbot, window, parts):
    three_off(qtbot)
    parts.begin_back()
    press(qtbot, Qt.Key.Key_Space)
    removed = window.open_job.job.strip.removed
    assert [each.back is not None for each in removed] == [False, False, True]
    assert window.open_job.assessment.strip.not_back == ("Headlamp and bracket", "Front mudguard")
    assert window.sentence.text() == "Goes back next: headlamp and bracket."
    assert window.detail.text() == "Fasteners: tin 2."
    assert parts.back_rows[0].how.text().startswith("back 2026-05-02")
    press(qtbot, Qt.Key.Key_Return)
    press(qtbot, Qt.Key.Key_Space)
    assert window.sentence.text() == "Everything that came off is back on."
    assert focus() is window.page(Stage.STRIP).go_on
    parts.back_rows[2].tick.setFocus()
    press(qtbot, Qt.Key.Key_Space)
    assert window.open_job.assessment.strip.not_back == ("Front mudguard",)
    assert window.open_job.edits.undoText() == "off again: Front mudguard"


def test_tab_walks_every_field_in_the_order_of_the_eye_and_each_has_a_name(qtbot, window, parts):
    three_off(qtbot)
    walked = []
    for _ in range(40):
        walked.append(focus())
        press(qtbot, Qt.Key.Key_Tab)
        if focus() is walked[0]:
            break
    inside = [each for each in walked if parts.isAncestorOf(each)]
    rows = [each for row in parts.off_rows for each in row.walk() if each.isEnabled()]
    expected = [parts.pick.name, parts.pick.usual, *rows, *(row.tick for row in parts.back_rows)]
    assert inside == expected
    assert all(each.accessibleName() for each in inside)


def test_every_line_and_button_is_large_enough_for_a_gloved_hand(qtbot, window, parts):
    three_off(qtbot)
    for kind in (QLineEdit, QPushButton):
        for each in parts.findChildren(kind):
            assert each.height() >= 34, each.accessibleName()


def test_twenty_parts_scroll_and_the_one_in_hand_is_in_sight(qtbot, window, parts):
    for number in range(20):
        type_and_enter(qtbot, f"part {number}", "", "")
    parts.off_rows[0].lines["note"].setFocus()
    page = parts.off_page
    top = parts.off_rows[0].mapTo(page.viewport(), parts.off_rows[0].rect().topLeft()).y()
    assert 0 <= top < page.viewport().height()
    assert window.size().width() == 1280
