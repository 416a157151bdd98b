"""No path through the window goes out of order without a reason: real keys, at random."""

import random

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication

from aligner.assessment import Stage, assess
from aligner.gauging import Verdict
from aligner.job import Action
from tests.window.tighten_jobs import at_joint, demo_job, ticked_until, true_job, without_torque

KEYS = (
    (Qt.Key.Key_Space, 10),
    (Qt.Key.Key_Return, 6),
    (Qt.Key.Key_Down, 5),
    (Qt.Key.Key_Up, 4),
    (Qt.Key.Key_Escape, 2),
    (Qt.Key.Key_Left, 1),
    (Qt.Key.Key_Right, 1),
    (Qt.Key.Key_PageDown, 1),
    (Qt.Key.Key_Home, 1),
    (Qt.Key.Key_End, 1),
    (Qt.Key.Key_Tab, 2),
    (Qt.Key.Key_Backspace, 1),
)
LETTERS = "abc 0123456789.,N·mlbf"


def entries_without_leave(job, before):
    """Ticks out of order, or of a hold point that did not pass, that have no reason.

    Worked out from the plan and the log alone, not from what the window shows.
    """
    order = [each.step for each in assess(job).tightening.steps]
    by_key = {step.key: step for step in order}
    verdicts = {"protrusion": assess(job).protrusion.verdict}
    verdicts["squaring"] = assess(job).squaring.verdict
    ticked = set()
    found = []
    for place, entry in enumerate(job.log):
        if entry.action is not Action.TICKED:
            ticked.discard(entry.step)
            continue
        step = by_key[entry.step]
        first_open = next(each for each in order if each.key not in ticked)
        waits = step.kind == "hold" and verdicts.get(step.reads) is not Verdict.WITHIN
        if place >= before and not entry.reason and (first_open.key != step.key or waits):
            found.append(entry)
        ticked.add(entry.step)
    return found


def test_the_check_itself_finds_a_top_clamp_before_its_cap():
    job = ticked_until(true_job(), at_joint("left cap"))
    top = next(s for s in assess(job).tightening.steps if s.step.joint_kind == "top_clamp")
    entry = job.log[-1].with_changes(step=top.step.key, reason="")
    assert entries_without_leave(job.with_changes(log=(*job.log, entry)), 0) == [entry]
    excused = entry.with_changes(reason="cap seized")
    assert not entries_without_leave(job.with_changes(log=(*job.log, excused)), 0)


def test_the_check_itself_finds_a_hold_point_that_did_not_pass():
    job = demo_job()
    job = ticked_until(job, lambda standing: standing.step.kind == "hold")
    hold = assess(job).tightening.next_step
    entry = job.log[-1].with_changes(step=hold.step.key, reason="")
    assert entries_without_leave(job.with_changes(log=(*job.log, entry)), 0) == [entry]


def press_at_random(qtbot, window, page, chance, presses):
    keys, weights = zip(*KEYS, strict=True)
    for _ in range(presses):
        focus = QApplication.focusWidget() or page.list
        if window.page(Stage.TIGHTEN) is not page or not page.isVisible():
            window.go_to(Stage.TIGHTEN)
        if not page.isAncestorOf(focus):
            focus = page.list
        what = chance.random()
        if what < 0.62:
            qtbot.keyClick(focus, chance.choices(keys, weights)[0])
        elif what < 0.72:
            qtbot.keyClicks(focus, chance.choice(LETTERS))
        elif what < 0.88:
            row = chance.randrange(page.list.viewport().height())
            place = QPoint(chance.randrange(5, 200), row)
            qtbot.mouseClick(page.list.viewport(), Qt.MouseButton.LeftButton, pos=place)
        elif what < 0.92:
            row = chance.randrange(page.list.viewport().height())
            qtbot.mouseDClick(page.list.viewport(), Qt.MouseButton.LeftButton, pos=QPoint(60, row))
        elif what < 0.96:
            qtbot.mouseClick(page.done, Qt.MouseButton.LeftButton)
        else:
            window.open_job.edits.undo()


@pytest.mark.parametrize("seed", range(4))
@pytest.mark.parametrize(
    "job",
    [
        pytest.param(ticked_until(demo_job(), at_joint("stem nut")), id="from the start, out"),
        pytest.param(
            ticked_until(without_torque(true_job(), "right cap"), at_joint("left lower clamp", 2)),
            id="in the middle, within",
        ),
    ],
)
def test_random_keys_and_clicks_never_go_out_of_order_without_a_reason(qtbot, window, job, seed):
    window.show_job(job)
    window.go_to(Stage.TIGHTEN)
    page = window.page(Stage.TIGHTEN)

    press_at_random(qtbot, window, page, random.Random(seed), presses=120)

    after = window.open_job.job
    assert entries_without_leave(after, len(job.log)) == []
    for entry in after.log:
        assert entry.action is Action.TICKED or entry.reason


def test_random_presses_do_tick_something(qtbot, window):
    """So that the test above is not true of a window that does nothing."""
    job = ticked_until(true_job(), at_joint("left lower clamp"))
    window.show_job(job)
    window.go_to(Stage.TIGHTEN)

    press_at_random(qtbot, window, window.page(Stage.TIGHTEN), random.Random(1), presses=160)

    assert len(window.open_job.job.log) > len(job.log)


@pytest.mark.parametrize("kind", ["top_clamp", "lower_clamp"])
def test_a_clamp_before_its_turn_is_ticked_by_no_key_without_a_reason(qtbot, window, kind):
    window.show_job(demo_job())
    window.go_to(Stage.TIGHTEN)
    page = window.page(Stage.TIGHTEN)
    steps = window.open_job.assessment.tightening.steps
    clamp = next(each for each in steps if each.step.joint_kind == kind)
    page.list.setCurrentRow(clamp.number - 1)

    for key in (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter):
        page.list.setFocus()
        qtbot.keyClick(page.list, key)
        qtbot.keyClick(page.reason, Qt.Key.Key_Return)
        qtbot.keyClicks(page.reason, "   ")
        qtbot.keyClick(page.reason, Qt.Key.Key_Return)
        qtbot.keyClick(page.reason, Qt.Key.Key_Escape)
        qtbot.keyClick(page.done, key)
    assert window.open_job.job.log == ()

    page.list.setCurrentRow(clamp.number - 1)
    qtbot.keyClick(page.list, Qt.Key.Key_Space)
    qtbot.keyClicks(page.reason, "bolt in the way")
    qtbot.keyClick(page.reason, Qt.Key.Key_Return)
    assert window.open_job.job.log[-1].reason == "bolt in the way"
