"""The list at a glance: what folds, what is never folded, and what the keys do there."""

import pytest
from PySide6.QtCore import Qt

from aligner.assessment import Stage, StepState, assess
from aligner.units.preferred import Preferred
from aligner.window.steps.step_lines import step_lines
from tests.window.tighten_jobs import at_joint, never, ticked_until, true_job

SHOW = Preferred()


def lines_of(job, chosen="", opened=""):
    return step_lines(assess(job).tightening.steps, chosen, opened, SHOW)


@pytest.fixture
def page(window):
    window.show_job(ticked_until(true_job(), at_joint("left cap")))
    window.go_to(Stage.TIGHTEN)
    return window.page(Stage.TIGHTEN)


@pytest.mark.parametrize(
    "job",
    [
        pytest.param(true_job(), id="nothing done"),
        pytest.param(ticked_until(true_job(), at_joint("fork brace", 2)), id="in the middle"),
        pytest.param(ticked_until(true_job(), never), id="all done"),
    ],
)
def test_every_step_stands_in_one_line_and_in_its_order(job):
    steps = assess(job).tightening.steps

    assert [each for line in lines_of(job) for each in line.steps] == list(steps)


def test_done_clamps_fold_into_one_line_with_all_their_bolts():
    folded = [line for line in lines_of(ticked_until(true_job(), never)) if line.is_folded]

    assert ("Lower clamps, bolts 1 to 4", "6 done") in [(x.title, x.beside) for x in folded]
    assert ("Caps, bolts 5 and 6", "2 done") in [(x.title, x.beside) for x in folded]
    assert all("done" in line.spoken for line in folded)


@pytest.mark.parametrize("until", [at_joint("left lower clamp", 2), never], ids=["middle", "end"])
def test_a_hold_point_always_has_a_line_of_its_own(until):
    job = ticked_until(true_job(), until)
    holds = [each for each in assess(job).tightening.steps if each.step.kind == "hold"]

    alone = [line.steps[0] for line in lines_of(job) if line.is_hold and len(line.steps) == 1]

    assert alone == holds


def test_the_step_in_hand_is_never_folded_and_its_passes_stand_beside_it():
    job = ticked_until(true_job(), at_joint("left lower clamp", 2))

    line = next(line for line in lines_of(job) if line.state is StepState.NEXT)

    assert line.stands_for == assess(job).tightening.next_step
    assert line.passes == (StepState.DONE, StepState.NEXT, StepState.LATER)


def test_what_is_chosen_is_never_folded_away():
    job = ticked_until(true_job(), never)
    for each in assess(job).tightening.steps:
        shown = [line.stands_for.step.key for line in lines_of(job, chosen=each.step.key)]
        assert each.step.key in shown


def test_the_rows_on_the_screen_are_the_lines_and_none_is_cut_short(page):
    visible = [row for row in range(page.list.count()) if not page.list.item(row).isHidden()]

    assert visible == [line.stands_for.number - 1 for line in page.list.lines]
    assert len(visible) < page.list.count()
    width = page.list.viewport().width()
    for row in visible:
        rect = page.list.visualItemRect(page.list.item(row))
        assert rect.height() >= page.list.sizeHintForRow(row)
        assert rect.width() <= width


def test_space_on_a_folded_line_opens_it_and_unticks_nothing(qtbot, window, page):
    log = window.open_job.job.log
    while not page.list.line_at(page.list.currentRow()).is_folded:
        qtbot.keyClick(page.list, Qt.Key.Key_Up)
    row, shown = page.list.currentRow(), len(page.list.lines)

    qtbot.keyClick(page.list, Qt.Key.Key_Space)

    assert window.open_job.job.log == log
    assert not page.reason.isVisible()
    assert len(page.list.lines) > shown
    assert page.list.currentRow() == row
    qtbot.keyClick(page.list, Qt.Key.Key_Left)
    assert len(page.list.lines) == shown


def test_what_was_opened_folds_again_when_the_choice_moves_on(qtbot, page):
    while not page.list.line_at(page.list.currentRow()).is_folded:
        qtbot.keyClick(page.list, Qt.Key.Key_Up)
    shown = len(page.list.lines)
    qtbot.keyClick(page.list, Qt.Key.Key_Right)

    qtbot.keyClick(page.list, Qt.Key.Key_End)

    assert len(page.list.lines) == shown


def test_the_step_in_hand_is_in_view_on_every_step_of_the_way(qtbot, window, page):
    for _ in range(60):
        if window.open_job.assessment.tightening.is_finished:
            break
        row = window.open_job.assessment.tightening.next_step.number - 1
        rect = page.list.visualItemRect(page.list.item(row))
        assert page.list.viewport().rect().contains(rect)
        qtbot.keyClick(page.list, Qt.Key.Key_Space)
        if page.reason.isVisible():
            qtbot.keyClicks(page.reason, "as the test asks")
            qtbot.keyClick(page.reason, Qt.Key.Key_Return)
    assert window.open_job.assessment.tightening.is_finished


def test_letters_in_the_list_move_nothing(qtbot, page):
    row = page.list.currentRow()
    qtbot.keyClicks(page.list, "righttopclamp3")
    assert page.list.currentRow() == row


def test_every_row_on_the_screen_names_itself_and_its_state(page):
    for line in page.list.lines:
        item = page.list.item(line.stands_for.number - 1)
        said = item.data(Qt.ItemDataRole.AccessibleTextRole)
        assert any(word in said for word in ("done", "in hand", "to come"))
