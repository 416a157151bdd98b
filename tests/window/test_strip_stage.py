"""The Strip stage with real keys: as found, loosened, out of order, undo, save, reopen."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication

from aligner.assessment import Stage
from aligner.data_files import demo
from aligner.job import Action, AsFound, ticked_steps
from aligner.storage.document_file import load_job
from aligner.window.strip.views import StripView

_ALT = Qt.KeyboardModifier.AltModifier


@pytest.fixture
def fresh():
    return fresh_job("fellside-left-leg-high")


def fresh_job(name):
    job = load_job(demo(f"{name}.job.json"))[0]
    return job.with_changes(as_found=AsFound(), strip=job.strip.with_changes(log=()))


@pytest.fixture
def page(qtbot, window, fresh):
    window.show_job(fresh)
    window.activateWindow()
    window.go_to(Stage.STRIP)
    return window.page(Stage.STRIP)


def focus():
    return QApplication.focusWidget()


def press(qtbot, key, modifier=Qt.KeyboardModifier.NoModifier):
    qtbot.keyClick(focus(), key, modifier)


def type_and_enter(qtbot, *texts):
    for text in texts:
        qtbot.keyClicks(focus(), text)
        press(qtbot, Qt.Key.Key_Return)


def write_heights(qtbot):
    type_and_enter(qtbot, "5.0", "5,1", "0.2 in", "5.0", "5.0", "5.0")


def test_strip_stands_between_bike_and_inspect_and_alt_2_opens_it(qtbot, window, page):
    stages = [stage.value for stage in Stage]
    assert stages[:3] == ["bike", "strip", "inspect"]
    window.go_to(Stage.ALIGN)
    qtbot.keyClick(window, Qt.Key.Key_2, _ALT)
    assert window.sentence.text() == "Read both heights as found."


def test_it_begins_with_the_heights_because_they_cannot_be_read_later(window, page):
    assert page.view is StripView.AS_FOUND
    assert window.sentence.text() == "Read both heights as found."
    assert "while the clamps still hold" in window.detail.text()
    assert focus() is page.as_found.box("protrusion.left").first_cell


def test_enter_walks_through_everything_as_found_and_on_to_loosen(qtbot, window, page):
    write_heights(qtbot)
    assert focus() is page.as_found.fields["protrusion.gauge"]
    assert window.sentence.text() == "The heights are written down."
    press(qtbot, Qt.Key.Key_Down)  # the first gauge of the list
    assert window.open_job.job.as_found.protrusion.gauge
    press(qtbot, Qt.Key.Key_Return)
    type_and_enter(qtbot, "183.2", "183.4", "183.3", "184.2", "184.1", "184.3")
    press(qtbot, Qt.Key.Key_Return)  # past the gauge
    type_and_enter(qtbot, "82 mm from the tube top", "3 rings", "3 rings", "notch in the middle")
    type_and_enter(qtbot, "200", "168", "155")
    assert page.as_found.sag_said.text() == "Static sag 32.0 mm, rider sag 45.0 mm."
    type_and_enter(qtbot, "240 ml", "grey", "0.24 l", "clear")
    assert focus() is page.go_on
    found = window.open_job.job.as_found
    assert [each.text for each in found.protrusion.left] == ["5.0 mm", "5.1 mm", "0.2 in"]
    assert (found.handlebars, found.left.preload) == ("82 mm from the tube top", "3 rings")
    assert (found.steering, found.right.oil_look) == ("notch in the middle", "clear")
    assert (found.left.oil.text, found.right.oil.value) == ("240 ml", 240)
    assert page.as_found.bracket_said.text().startswith("Left 0.90 ± 0.23 mm less than right.")
    press(qtbot, Qt.Key.Key_Return)
    assert page.view is StripView.LOOSEN
    assert focus() is page.loosen.list


def test_the_keyboard_begins_at_what_is_still_to_be_read(qtbot, window, page):
    write_heights(qtbot)
    window.go_to(Stage.BIKE)
    window.go_to(Stage.STRIP)
    assert focus() is page.as_found.box("bracket.left").first_cell
    type_and_enter(qtbot, "183", "", "184", "")
    window.go_to(Stage.BIKE)
    window.go_to(Stage.STRIP)
    assert focus() is page.as_found.line("handlebars")


def test_a_height_below_the_face_is_taken_and_shows_at_align_as_found(qtbot, window, page):
    type_and_enter(qtbot, "-1.5", "", "-1.0", "")
    box = page.as_found.box("protrusion.left")
    assert (box.first_cell.text(), box.trouble) == ("-1.5", "")
    window.go_to(Stage.ALIGN)
    said = window.page(Stage.ALIGN).height_card._as_found.text().replace("\u00a0", " ")
    assert said.startswith("as found: left")
    assert "1.5 mm" in said
    window.go_to(Stage.STRIP)


def test_what_cannot_be_read_stays_and_says_what_would_be_right(qtbot, window, page):
    qtbot.keyClicks(focus(), "5.o")
    press(qtbot, Qt.Key.Key_Tab)
    box = page.as_found.box("protrusion.left")
    assert box.first_cell.text() == "5.o"
    assert "not a unit" in box.trouble
    window.go_to(Stage.BIKE)
    window.go_to(Stage.STRIP)
    assert box.first_cell.text() == "5.o"
    assert window.open_job.job.as_found == AsFound()


def test_without_a_gauge_the_difference_says_that_one_is_wanted(qtbot, window, page):
    write_heights(qtbot)
    assert "Name the gauge" in page.as_found.heights_said.text()


def test_air_pressure_is_asked_for_only_where_the_fork_holds_air(qtbot, window, page):
    assert page.as_found.line("air_pressure").isHidden()
    window.show_job(fresh_job("fellside-air-assist"))
    window.go_to(Stage.STRIP)
    line = page.as_found.line("air_pressure")
    assert not line.isHidden()
    line.setFocus()
    type_and_enter(qtbot, "8 psi in both")
    assert window.open_job.job.as_found.air_pressure == "8 psi in both"


@pytest.mark.parametrize("key", [Qt.Key.Key_Space, Qt.Key.Key_Return], ids=["space", "enter"])
def test_a_key_loosens_the_step_in_hand_with_its_time_and_undo_takes_it_back(
    qtbot, window, page, key
):
    page.views.button(StripView.LOOSEN).click()
    assert page.loosen.card.caution.accessibleName().startswith("Caution: it must stand")
    press(qtbot, key)
    log = window.open_job.job.strip.log
    assert [entry.step for entry in log] == ["act/machine_supported"]
    assert log[0].at.year == 2026
    assert window.open_job.edits.undoText().startswith("Machine supported")
    window.open_job.edits.undo()
    assert window.sentence.text().startswith("Machine supported")
    assert window.open_job.job.strip.log == ()


def test_a_key_held_down_loosens_one_step(qtbot, window, page):
    page.views.button(StripView.LOOSEN).click()
    for _ in range(5):
        held = QKeyEvent(
            QKeyEvent.Type.KeyPress, Qt.Key.Key_Space, Qt.KeyboardModifier.NoModifier, " ", True
        )
        QApplication.sendEvent(page.loosen.list, held)
    assert window.open_job.job.strip.log == ()


def test_out_of_order_asks_for_a_reason_in_place_and_escape_leaves_it(qtbot, window, page):
    page.views.button(StripView.LOOSEN).click()
    press(qtbot, Qt.Key.Key_Down)
    press(qtbot, Qt.Key.Key_Down)
    assert "not its turn yet" in page.loosen.card.elsewhere.text()
    chosen = page.loosen.chosen.step
    press(qtbot, Qt.Key.Key_Space)
    assert focus() is page.loosen.door.reason
    press(qtbot, Qt.Key.Key_Return)
    assert "write a reason" in page.loosen.door.words.text()
    assert window.open_job.job.strip.log == ()
    press(qtbot, Qt.Key.Key_Escape)
    assert focus() is page.loosen.list
    press(qtbot, Qt.Key.Key_Space)
    type_and_enter(qtbot, "it was loose already")
    entry = window.open_job.job.strip.log[-1]
    assert (entry.step, entry.reason) == (chosen.key, "it was loose already")
    assert window.sentence.text().startswith("Machine supported")


def test_an_untick_asks_why_and_both_entries_stay(qtbot, window, page):
    page.views.button(StripView.LOOSEN).click()
    press(qtbot, Qt.Key.Key_Space)
    press(qtbot, Qt.Key.Key_Up)
    assert "done" in page.loosen.card.elsewhere.text()
    press(qtbot, Qt.Key.Key_Space)
    type_and_enter(qtbot, "the stand rocked")
    log = window.open_job.job.strip.log
    assert [entry.action for entry in log] == [Action.TICKED, Action.UNTICKED]
    assert ticked_steps(log) == {}
    press(qtbot, Qt.Key.Key_Escape)
    assert "the stand rocked" in page.loosen.card.reopened.text()


def test_the_step_of_the_heights_leads_to_them_and_cannot_pass_without(qtbot, window, page):
    page.views.button(StripView.LOOSEN).click()
    while page.loosen.chosen.step.reads != "protrusion":
        press(qtbot, Qt.Key.Key_Space)
    assert page.loosen.card.read.text() == "Not written down yet."
    count = len(window.open_job.job.strip.log)
    press(qtbot, Qt.Key.Key_Space)
    assert "not written down yet" in page.loosen.door.words.text()
    assert len(window.open_job.job.strip.log) == count
    press(qtbot, Qt.Key.Key_Escape)
    page.loosen.door.read_again.setFocus()
    press(qtbot, Qt.Key.Key_Space)
    assert focus() is page.as_found.box("protrusion.left").first_cell
    write_heights(qtbot)
    assert focus() is page.as_found.fields["protrusion.gauge"]
    press(qtbot, Qt.Key.Key_L, _ALT)
    qtbot.waitUntil(lambda: page.view is StripView.LOOSEN)
    assert "more than right" in page.loosen.card.read.text()
    press(qtbot, Qt.Key.Key_Space)
    assert page.loosen.chosen.step.reads == "squaring"


def test_the_whole_list_by_space_and_enter_goes_on_to_inspect(qtbot, window, page):
    write_heights(qtbot)
    page.views.button(StripView.LOOSEN).click()
    for _ in range(60):
        if page.loosen.chosen is None:
            break
        press(qtbot, Qt.Key.Key_Space)
    assert window.sentence.text() == "Everything is loosened."
    assert window.stages._rows[Stage.STRIP].accessibleName() == "Strip: all loosened"
    assert focus() is page.loosen.door.done
    press(qtbot, Qt.Key.Key_Return)
    assert window._current is Stage.INSPECT


def test_another_job_begins_at_its_own_beginning(qtbot, window, page):
    qtbot.keyClicks(focus(), "5.o")
    press(qtbot, Qt.Key.Key_Tab)
    page.views.button(StripView.PARTS).click()
    window.show_job(fresh_job("quernbeck-upside-down"))
    window.go_to(Stage.STRIP)
    assert page.view is StripView.AS_FOUND
    assert page.as_found.box("protrusion.left").first_cell.text() == ""
    assert "handlebars cover" in window.detail.text()


def test_a_job_without_fasteners_says_where_to_give_them(qtbot, window, page, fresh):
    window.show_job(fresh.with_changes(sheet=fresh.sheet.with_changes(fasteners=(), rules=())))
    window.go_to(Stage.STRIP)
    page.views.button(StripView.LOOSEN).click()
    assert window.sentence.text() == "There is nothing to loosen yet."
    assert "Bike" in window.detail.text()


def test_saved_and_opened_again_at_every_part_nothing_is_lost(qtbot, window, page, tmp_path):
    path = tmp_path / "strip.job.json"
    write_heights(qtbot)
    page.as_found.line("handlebars").setFocus()
    qtbot.keyClicks(focus(), "82 mm, both ends")
    assert window.save_to(path)
    page.views.button(StripView.LOOSEN).click()
    for _ in range(3):
        press(qtbot, Qt.Key.Key_Space)
    page.views.button(StripView.PARTS).click()
    qtbot.keyClicks(focus(), "Tax disc")
    assert window.save_to(path)
    kept = window.open_job.job
    assert kept.strip.removed[0].name == "Tax disc"
    assert kept.as_found.handlebars == "82 mm, both ends"
    window.open_path(path)
    assert window.open_job.job == kept
    window.go_to(Stage.STRIP)
    assert page.view is StripView.LOOSEN
    assert page.as_found.line("handlebars") is not None
    page.views.button(StripView.AS_FOUND).click()
    assert page.as_found.line("handlebars").text() == "82 mm, both ends"
