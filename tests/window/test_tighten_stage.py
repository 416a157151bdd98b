"""The Tighten stage by key presses: what is ticked, what is asked first, what is kept."""

from datetime import UTC, datetime

import pytest
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QScrollArea

from aligner.assessment import Stage, StepState
from aligner.drawing.theme import Appearance, theme_for
from aligner.job import Action, Job
from aligner.storage.document_file import load_job
from aligner.window.main_window import MainWindow
from aligner.window.widgets.tick import Tick
from tests.window.tighten_jobs import (
    at_joint,
    at_kind,
    demo_job,
    never,
    ticked_until,
    true_job,
    without_torque,
)


@pytest.fixture
def tighten(window):
    """Opens a job on the Tighten stage and gives its page."""

    def opened(job):
        window.show_job(job)
        window.go_to(Stage.TIGHTEN)
        return window.page(Stage.TIGHTEN)

    return opened


def press(widget, key, *, repeats=False):
    """One press of a key, as the desktop sends it; `repeats` for one that is held down."""
    down = QKeyEvent(QEvent.Type.KeyPress, key, Qt.KeyboardModifier.NoModifier, "", repeats)
    up = QKeyEvent(QEvent.Type.KeyRelease, key, Qt.KeyboardModifier.NoModifier, "", repeats)
    QApplication.sendEvent(widget, down)
    QApplication.sendEvent(widget, up)


def in_hand(window):
    return window.open_job.assessment.tightening.next_step


def type_value(qtbot, page, text):
    page.door.value.setFocus()
    page.door.value.selectAll()
    qtbot.keyClicks(page.door.value, text)
    qtbot.keyClick(page.door.value, Qt.Key.Key_Return)


def test_the_card_says_torque_setting_wrench_and_what_is_delivered(tighten):
    page = tighten(ticked_until(true_job(), at_joint("axle nut")))

    assert page.card.big.text == "60 N·m"
    assert page.card.setting.text == "Set 44.5 lbf·ft"
    assert page.card.tool.text() == "on the large"
    assert page.card.delivered.text().startswith("Delivers 58.0 to 62.8 N·m, inside 54 to 66")
    assert page.card.setting.width() > 0


def test_space_ticks_with_the_setting_the_wrench_and_the_time(qtbot, window, tighten):
    page = tighten(ticked_until(true_job(), at_joint("axle nut")))

    qtbot.keyClick(page.list, Qt.Key.Key_Space)

    entry = window.open_job.job.log[-1]
    assert (str(entry.torque), entry.wrench, entry.reason) == ("44.5 lbf·ft", "large", "")
    assert entry.at.tzinfo is not None


@pytest.mark.parametrize("key", [Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter])
def test_a_key_held_down_ticks_once(window, tighten, key):
    page = tighten(ticked_until(true_job(), at_joint("left lower clamp")))
    before = len(window.open_job.job.log)

    press(page.list, key)
    for _ in range(40):
        press(page.list, key, repeats=True)

    assert len(window.open_job.job.log) == before + 1


def test_a_value_typed_over_is_kept_as_typed(qtbot, window, tighten):
    page = tighten(ticked_until(true_job(), at_joint("axle nut")))

    type_value(qtbot, page, "6,1 kgf m")

    assert str(window.open_job.job.log[-1].torque) == "6.1 kgf·m"


def test_a_value_in_the_wrong_unit_is_asked_about_in_place_before_it_is_kept(
    qtbot, window, tighten
):
    page = tighten(ticked_until(true_job(), at_joint("left lower clamp", 2)))
    before = len(window.open_job.job.log)

    type_value(qtbot, page, "23 lbf ft")

    assert len(window.open_job.job.log) == before
    assert "Is it 23 N·m?" in page.door.words.text()
    assert page.door.value.text() == "23 lbf ft"
    press(page.door.value, Qt.Key.Key_Return, repeats=True)
    assert len(window.open_job.job.log) == before

    qtbot.keyClick(page.door.value, Qt.Key.Key_Return)
    assert len(window.open_job.job.log) == before
    assert page.door.reason.hasFocus()
    qtbot.keyClicks(page.door.reason, "as the new bolts ask")
    qtbot.keyClick(page.door.reason, Qt.Key.Key_Return)
    entry = window.open_job.job.log[-1]
    assert (str(entry.torque), entry.reason) == ("23 lbf·ft", "as the new bolts ask")


def test_a_value_asked_about_and_then_changed_is_asked_about_again(qtbot, window, tighten):
    page = tighten(ticked_until(true_job(), at_joint("axle nut")))
    before = len(window.open_job.job.log)

    type_value(qtbot, page, "600 N·m")
    type_value(qtbot, page, "700 N·m")

    assert len(window.open_job.job.log) == before
    qtbot.keyClick(page.door.value, Qt.Key.Key_Escape)
    assert page.door.value.text() == "44.5 lbf·ft"
    assert not page.door.words.isVisible()


@pytest.mark.parametrize("typed", ["", "abc", "23 lb", "4 mm"])
def test_a_value_that_cannot_be_read_ticks_nothing_and_stays(qtbot, window, tighten, typed):
    page = tighten(ticked_until(true_job(), at_joint("axle nut")))
    before = window.open_job.job.log

    type_value(qtbot, page, typed) if typed else page.door.value.clear()
    qtbot.keyClick(page.list, Qt.Key.Key_Space)

    assert window.open_job.job.log == before
    assert page.door.value.text() == typed
    said = "not understood" if typed else "Type the value seen."
    assert said in page.door.words.text()


def test_a_missing_torque_cannot_be_ticked_without_one_typed(qtbot, window, tighten):
    page = tighten(ticked_until(without_torque(true_job(), "left cap"), at_joint("left cap")))
    before = window.open_job.job.log
    assert page.card.big.text == "Torque missing"

    qtbot.keyClick(page.list, Qt.Key.Key_Space)
    assert window.open_job.job.log == before
    assert "maker's manual" in page.door.words.text()

    type_value(qtbot, page, "30")
    assert str(window.open_job.job.log[-1].torque) == "30 N·m"


def test_one_press_does_not_pass_a_hold_point_and_two_do(qtbot, window, tighten):
    page = tighten(ticked_until(true_job(), at_kind("hold")))
    key = in_hand(window).step.key

    qtbot.keyClick(page.list, Qt.Key.Key_Space)
    assert in_hand(window).step.key == key
    assert "press Space once more" in page.door.words.text()

    qtbot.keyClick(page.list, Qt.Key.Key_Space)
    assert window.open_job.job.log[-1].step == key
    assert window.open_job.job.log[-1].reason == ""


def test_a_hold_point_is_passed_by_holding_the_key_though_not_by_its_repeats(
    qtbot, window, tighten
):
    page = tighten(ticked_until(true_job(), at_kind("hold")))
    key = in_hand(window).step.key
    page.door.hold_key.set_times(held_ms=1, again_ms=60_000)

    qtbot.keyPress(page.list, Qt.Key.Key_Space)
    for _ in range(30):
        press(page.list, Qt.Key.Key_Space, repeats=True)
    assert in_hand(window).step.key == key

    with qtbot.waitSignal(window.open_job.changed, timeout=2000):
        pass
    assert window.open_job.job.log[-1].step == key


def test_a_second_press_that_comes_too_late_is_a_first_one_again(qtbot, window, tighten):
    page = tighten(ticked_until(true_job(), at_kind("hold")))
    key = in_hand(window).step.key
    page.door.hold_key.set_times(held_ms=60_000, again_ms=1)

    with qtbot.waitSignal(page.door.hold_key.forgotten, timeout=2000):
        qtbot.keyClick(page.list, Qt.Key.Key_Space)
    page.door.hold_key.set_times(held_ms=60_000, again_ms=60_000)
    qtbot.keyClick(page.list, Qt.Key.Key_Space)

    assert in_hand(window).step.key == key


def test_a_first_press_is_forgotten_when_another_step_is_looked_at(qtbot, window, tighten):
    page = tighten(ticked_until(true_job(), at_kind("hold")))
    key = in_hand(window).step.key

    qtbot.keyClick(page.list, Qt.Key.Key_Space)
    qtbot.keyClick(page.list, Qt.Key.Key_Up)
    qtbot.keyClick(page.list, Qt.Key.Key_Down)
    qtbot.keyClick(page.list, Qt.Key.Key_Space)

    assert in_hand(window).step.key == key


def test_a_hold_point_that_is_out_asks_why_and_keeps_the_reason(qtbot, window, tighten):
    page = tighten(ticked_until(demo_job(), at_kind("hold")))
    key = in_hand(window).step.key
    assert "Cannot pass" in page.card.hold.text()

    for _ in range(3):
        qtbot.keyClick(page.list, Qt.Key.Key_Space)
    qtbot.keyClick(page.reason, Qt.Key.Key_Return)
    assert in_hand(window).step.key == key

    qtbot.keyClicks(page.reason, "measured with a rule")
    qtbot.keyClick(page.reason, Qt.Key.Key_Return)
    assert window.open_job.job.log[-1].reason == "measured with a rule"


def test_readings_dated_ahead_of_the_clock_pass_no_hold_point(qtbot, window, tighten):
    job = ticked_until(true_job(), at_kind("hold"))
    ahead = job.align.with_changes(begun=datetime(2036, 5, 2, 9, 0, tzinfo=UTC))
    page = tighten(job.with_changes(align=ahead))
    assert "dated later than now" in page.card.hold.text()
    before = len(window.open_job.job.log)
    for _ in range(2):
        qtbot.keyClick(page.list, Qt.Key.Key_Space)
    assert len(window.open_job.job.log) == before
    assert page.door.reason.isVisible()


def test_unticking_asks_why_and_both_entries_stay(qtbot, window, tighten):
    page = tighten(ticked_until(true_job(), at_joint("stem pinch")))
    qtbot.keyClick(page.list, Qt.Key.Key_Up)
    before = window.open_job.job.log
    key = window.open_job.assessment.tightening.steps[page.list.currentRow()].step.key

    qtbot.keyClick(page.list, Qt.Key.Key_Space)
    assert window.open_job.job.log == before
    qtbot.keyClicks(page.reason, "washer forgotten")
    qtbot.keyClick(page.reason, Qt.Key.Key_Return)

    entry = window.open_job.job.log[len(before)]
    assert window.open_job.job.log[: len(before)] == before
    assert (entry.step, entry.action, entry.reason) == (key, Action.UNTICKED, "washer forgotten")
    assert in_hand(window).step.key == key
    assert "washer forgotten" in page.card.reopened.text()


def test_escape_takes_a_question_back_and_then_goes_to_the_step_in_hand(qtbot, window, tighten):
    page = tighten(ticked_until(true_job(), at_joint("stem pinch")))
    here = page.list.currentRow()
    for _ in range(3):
        qtbot.keyClick(page.list, Qt.Key.Key_Down)
    qtbot.keyClick(page.list, Qt.Key.Key_Space)
    assert page.reason.isVisible()
    assert "In hand is step" in page.card.elsewhere.text()

    qtbot.keyClick(page.reason, Qt.Key.Key_Escape)
    assert not page.reason.isVisible()
    assert page.list.currentRow() != here

    qtbot.keyClick(page.list, Qt.Key.Key_Escape)
    assert page.list.currentRow() == here


def test_undo_takes_a_tick_back_and_the_step_is_in_hand_again(qtbot, window, tighten):
    page = tighten(ticked_until(true_job(), at_joint("stem pinch")))
    key = in_hand(window).step.key

    qtbot.keyClick(page.list, Qt.Key.Key_Space)
    window.open_job.edits.undo()

    assert in_hand(window).step.key == key
    assert window.sentence.text() == f"{in_hand(window).step.title}."
    window.open_job.edits.redo()
    assert window.open_job.job.log[-1].step == key


def test_ticks_and_their_values_are_there_again_after_saving(qtbot, window, tighten, tmp_path):
    page = tighten(ticked_until(true_job(), at_joint("axle nut")))
    type_value(qtbot, page, "43.5 lbf ft")
    path = tmp_path / "job.job.json"

    assert window.save_to(path)

    again = load_job(path)[0]
    assert again == window.open_job.job
    assert str(again.log[-1].torque) == "43.5 lbf·ft"


def test_the_passes_are_told_in_words_for_a_screen_reader(tighten):
    page = tighten(ticked_until(true_job(), at_joint("left lower clamp", 2)))

    said = page.card.passes.accessibleName()

    assert said == "passes, half: done; full: in hand; full, until neither moves: to come"
    assert len(page.card.passes.boxes()) == 3
    assert all(page.card.passes.rect().contains(box) for box in page.card.passes.boxes())


def test_a_finished_list_has_a_place_of_its_own_and_goes_on(qtbot, window, tighten):
    page = tighten(ticked_until(demo_job(), never))
    count = len(window.open_job.assessment.tightening.steps)

    assert page.rest.isVisible()
    assert page.rest.big.text == f"{count} of {count}"
    assert "invented" in page.rest.more.text()  # the reason given for a hold point
    assert window.sentence.text() == "Everything is done up."
    with qtbot.waitSignal(page.finished):
        qtbot.keyClick(page.done, Qt.Key.Key_Return)


def test_a_finished_list_can_still_be_looked_at_and_unticked(qtbot, window, tighten):
    page = tighten(ticked_until(true_job(), never))
    qtbot.keyClick(page.list, Qt.Key.Key_End)
    assert page.card.isVisible()
    assert page.card.entry.text().startswith("Done 2026-05-02")

    qtbot.keyClick(page.list, Qt.Key.Key_Space)
    qtbot.keyClicks(page.reason, "hose caught")
    qtbot.keyClick(page.reason, Qt.Key.Key_Return)

    assert not window.open_job.assessment.tightening.is_finished
    assert any(each.state is StepState.NEXT for each in window.open_job.assessment.tightening.steps)


def test_an_empty_list_says_what_is_missing_and_where_to_give_it(qtbot, window, tighten):
    page = tighten(Job())

    assert page.rest.isVisible()
    assert "fasteners" in page.rest.first.text()
    assert "Bike stage" in page.rest.more.text()
    assert not page.list.isVisible()
    with qtbot.waitSignal(page.sheet_wanted):
        qtbot.keyClick(page.rest.go, Qt.Key.Key_Space)


def test_a_hold_point_on_the_heights_sends_to_read_them_again(qtbot, window, tighten):
    page = tighten(ticked_until(demo_job(), at_kind("hold")))

    with qtbot.waitSignal(page.heights_wanted):
        qtbot.keyClick(page.read_again, Qt.Key.Key_Space)

    assert window.open_job.job.align.protrusion.left == ()


def test_reading_after_the_hold_point_opens_it_again_and_the_card_says_why(window, tighten):
    job = ticked_until(true_job(), at_joint("stem pinch"))
    page = tighten(job)
    out = demo_job().align

    window.open_job.edit("readings", lambda job: job.with_changes(align=out))

    assert in_hand(window).step.kind == "hold"
    assert page.card.reopened.text().startswith("Opened again")
    assert "because" in page.card.reopened.text()


def test_every_field_and_button_has_a_name_and_a_large_target(window, tighten):
    page = tighten(ticked_until(true_job(), at_joint("axle nut")))
    for widget in (page.door.value, page.door.wrench, page.door.done, page.door.wrenches):
        assert widget.accessibleName() or widget.text()
        assert widget.height() >= 34
    assert page.list.accessibleName() == "tightening list"


def test_what_is_typed_for_a_step_stands_there_again_after_looking_elsewhere(
    qtbot, window, tighten
):
    page = tighten(ticked_until(true_job(), at_joint("axle nut")))
    page.door.value.setFocus()
    page.door.value.selectAll()
    qtbot.keyClicks(page.door.value, "61 N m")

    qtbot.keyClick(page.list, Qt.Key.Key_Up)
    qtbot.keyClick(page.list, Qt.Key.Key_Down)

    assert page.door.value.text() == "61 N m"
    qtbot.keyClick(page.list, Qt.Key.Key_Space)
    assert str(window.open_job.job.log[-1].torque) == "61 N·m"


def test_nothing_typed_for_one_job_is_left_over_for_another(qtbot, window, tighten):
    job = ticked_until(true_job(), at_joint("axle nut"))
    page = tighten(job)
    page.door.value.selectAll()
    qtbot.keyClicks(page.door.value, "61 N m")

    page = tighten(job)

    assert page.door.value.text() == "44.5 lbf·ft"


def test_tab_goes_from_the_list_to_the_value_the_wrench_and_the_buttons(window, tighten):
    page = tighten(ticked_until(true_job(), at_joint("axle nut")))
    found, widget = [], page.list
    for _ in range(80):
        widget = widget.nextInFocusChain()
        can_tab = widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        if can_tab and widget.isVisible() and page.isAncestorOf(widget):
            found.append(widget)
        if widget is page.list:
            break
    door = page.door
    assert found[:4] == [door.value, door.wrench, door.wrenches, door.done]


@pytest.mark.parametrize(
    "sizes",
    [pytest.param((1280, 720, 1.0), id="at 100 %"), pytest.param((960, 540, 0.75), id="at 200 %")],
)
def test_every_step_of_the_demo_fits_its_card_without_scrolling(qtbot, sizes):
    width, height, scale = sizes
    window = MainWindow(theme_for(Appearance.DARK, scale))
    qtbot.addWidget(window)
    window.resize(width, height)
    window.show_job(true_job())
    window.go_to(Stage.TIGHTEN)
    window.show()
    qtbot.waitExposed(window)
    page = window.page(Stage.TIGHTEN)
    for row in range(page.list.count()):
        page.list.setCurrentRow(row)
        QApplication.sendPostedEvents()
        QApplication.processEvents()
        bars = [each.verticalScrollBar() for each in page.card.findChildren(QScrollArea)]
        assert [bar.maximum() for bar in bars] == [0], page.list.item(row).text()


def double_click(widget):
    """As a hand does it: press and release twice, the second press being a double click."""
    place = QPoint(12, widget.height() // 2)
    left, none = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    QTest.mouseClick(widget, left, none, place)
    QTest.mouseDClick(widget, left, none, place)
    QTest.mouseRelease(widget, left, none, place)


def test_a_double_click_ticks_one_step_and_passes_no_hold_point(window):
    window.show_job(true_job())
    window.go_to(Stage.TIGHTEN)
    page = window.page(Stage.TIGHTEN)
    for _ in range(40):
        before = len(window.open_job.job.log)
        is_hold = window.open_job.assessment.tightening.next_step.step.kind == "hold"
        double_click(page.door.done)
        assert len(window.open_job.job.log) == before + (0 if is_hold else 1)
        if is_hold:
            return
    raise AssertionError("there was no hold point")


def test_a_double_click_leaves_a_tick_ticked(window):
    window.go_to(Stage.BUILD)
    tick = window.page(Stage.BUILD).findChild(Tick)
    double_click(tick)
    assert tick.isChecked()
    assert len(window.open_job.job.build.log) == 1


def gauge(number):
    """What a gauge with a cable types, wherever the keyboard stands."""
    QTest.keyClicks(QApplication.focusWidget(), number)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)


@pytest.mark.parametrize("stage", [Stage.TIGHTEN, Stage.STRIP])
def test_a_gauge_at_a_step_that_takes_no_reading_ticks_nothing(window, tighten, stage):
    page = tighten(ticked_until(true_job(), lambda standing: standing.step.kind == "act"))
    window.go_to(stage)
    before = window.open_job.job
    for number in ("5.02", "5.03", "5.02"):
        gauge(number)
    assert window.open_job.job is before
    if stage is Stage.TIGHTEN:
        assert "takes no reading" in page.door.words.text()


def test_a_gauge_at_a_bolt_is_asked_about_before_it_counts_as_the_torque_seen(window, tighten):
    page = tighten(ticked_until(true_job(), at_joint("axle nut")))
    before = window.open_job.job
    gauge("5.02")
    gauge("5.03")
    gauge("5.02")
    assert window.open_job.job is before
    assert page.door.words.text()


def test_a_gauge_gives_no_reason_for_passing_a_hold_point(window, tighten, qtbot):
    page = tighten(ticked_until(demo_job(), lambda standing: bool(standing.waits_for)))
    before = window.open_job.job
    qtbot.keyClick(page.list, Qt.Key.Key_Space)
    assert page.door.reason.hasFocus()
    gauge("5.02")
    gauge("5.03")
    assert window.open_job.job is before
    assert "write a reason" in page.door.words.text()


def test_after_a_stray_number_the_next_key_acts_again(window, tighten, qtbot):
    page = tighten(ticked_until(true_job(), lambda standing: standing.step.kind == "act"))
    count = len(window.open_job.job.log)
    gauge("5.02")
    qtbot.keyClick(page.list, Qt.Key.Key_Return)
    assert len(window.open_job.job.log) == count + 1
    assert page.door.words.text() == ""


def test_a_gauge_does_not_press_the_main_button(window, tighten, qtbot):
    page = tighten(ticked_until(true_job(), lambda standing: standing.step.kind == "act"))
    before = window.open_job.job
    page.door.done.setFocus()
    gauge("5.02")
    assert window.open_job.job is before
