"""Undo: each step has its name, a field left is one step, and there is no end to it."""

import pytest
from PySide6.QtCore import Qt

from aligner.assessment import Stage

CONTROL = Qt.KeyboardModifier.ControlModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def active(qtbot, window):
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    return window


def cell_of(window, side="left"):
    return window.page(Stage.ALIGN).height_card.boxes[side].first_cell


def retype(qtbot, cell, text):
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, text)


def edit_words(window):
    menu = next(one.menu() for one in window.menuBar().actions() if "Edit" in one.text())
    return [action.text() for action in menu.actions()[:2]]


def test_a_field_left_is_one_step_however_many_keys_it_took(qtbot, active):
    before = active.open_job.job

    retype(qtbot, cell_of(active), "6.5432")
    assert active.open_job.edits.count() == 0
    cell_of(active, "right").setFocus()

    assert active.open_job.edits.count() == 1
    active.open_job.edits.undo()
    assert active.open_job.job == before


def test_the_edit_menu_says_what_is_undone_and_done_again(qtbot, active):
    retype(qtbot, cell_of(active), "6.5")
    cell_of(active).clearFocus()
    name = active.open_job.edits.undoText()

    assert name
    assert edit_words(active)[0] == f"Undo {name}"
    active.open_job.edits.undo()
    assert edit_words(active)[1] == f"Redo {name}"


def test_a_field_left_as_it_was_is_no_step(qtbot, active):
    cell = cell_of(active)
    retype(qtbot, cell, cell.text())
    cell.clearFocus()

    assert active.open_job.edits.count() == 0
    assert not active.open_job.has_unsaved_edits


def test_ctrl_z_goes_back_to_the_beginning_and_ctrl_y_to_the_end(qtbot, active):
    first = active.open_job.job
    for number in range(300):
        active.open_job.edit(
            f"title {number}", lambda job, number=number: job.with_changes(title=str(number))
        )
    last = active.open_job.job
    assert active.open_job.edits.undoLimit() == 0  # none

    active.stages.setFocus()
    for _ in range(300):
        qtbot.keyClick(active, Qt.Key.Key_Z, CONTROL)
    assert active.open_job.job == first
    assert not active.open_job.has_unsaved_edits

    shift = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    for number in range(300):
        if number % 2:
            qtbot.keyClick(active, Qt.Key.Key_Y, Qt.KeyboardModifier.ControlModifier)
        else:
            qtbot.keyClick(active, Qt.Key.Key_Z, shift)
    assert active.open_job.job == last


def test_undoing_a_saved_step_is_an_edit_to_be_saved(active, tmp_path):
    active.open_job.edit("title", lambda job: job.with_changes(title="a"))
    assert active.save_to(tmp_path / "a.job.json")

    active.open_job.edits.undo()

    assert active.open_job.has_unsaved_edits


def test_the_undo_key_undoes_the_last_step_from_the_next_box(qtbot, active):
    before = active.open_job.job
    retype(qtbot, cell_of(active), "6.5")
    qtbot.keyClick(cell_of(active), Qt.Key.Key_Return)
    following = active.focusWidget()
    assert following is not cell_of(active)

    qtbot.keyClick(following, Qt.Key.Key_Z, CONTROL)
    assert active.open_job.job == before

    qtbot.keyClick(active.focusWidget(), Qt.Key.Key_Z, CONTROL | SHIFT)
    assert active.open_job.job.align.protrusion.left[0].text == "6.5 mm"


def test_the_undo_key_takes_back_what_is_being_typed_first(qtbot, active):
    retype(qtbot, cell_of(active), "6.5")
    qtbot.keyClick(cell_of(active), Qt.Key.Key_Return)
    following = active.focusWidget()
    shown = following.text()
    qtbot.keyClicks(following, "9")

    qtbot.keyClick(following, Qt.Key.Key_Z, CONTROL)

    assert following.text() == shown
    assert active.open_job.job.align.protrusion.left[0].text == "6.5 mm"
