"""The Build stage with real keys: read, set, tick, undo, save, reopen; nothing typed is lost."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest
from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QApplication

from aligner.assessment import Stage
from aligner.data_files import demo
from aligner.job import Job
from aligner.job.build import FallAway
from aligner.job.edits_build import with_legs_value
from aligner.sheet.quantities import Length, Volume
from aligner.storage.document_file import load_job

_AT = datetime(2026, 5, 4, 9, 30, tzinfo=UTC)


@pytest.fixture
def air_assist():
    return load_job(demo("fellside-air-assist.job.json"))[0]


@pytest.fixture
def page(qtbot, window, air_assist):
    window.show_job(air_assist)
    window.activateWindow()
    window.go_to(Stage.BUILD)
    return window.page(Stage.BUILD)


def retype(qtbot, cell, text, key=Qt.Key.Key_Return):
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, text)
    qtbot.keyClick(cell, key)


def focus():
    return QApplication.focusWidget()


def test_the_demo_says_what_to_draw_off_and_where_the_suction_tube_stands(window, page):
    assert window.sentence.text() == "Draw 12 ml off the left leg."
    assert "212.0 mm" in window.detail.text()
    assert focus() is page.oil_card.boxes["left"].first_cell
    said = page.oil_card.accessibleDescription()
    assert "left leg: air gap 200.2 mm, out" in said
    assert "right leg: air gap 212.2 mm, within" in said


def test_the_sentence_follows_each_keystroke_and_leaving_is_one_step(qtbot, window, page):
    cell = page.oil_card.boxes["left"].first_cell
    cell.selectAll()
    qtbot.keyClicks(cell, "250")
    assert window.sentence.text() != "Draw 12 ml off the left leg."
    assert window.open_job.edits.count() == 0
    qtbot.keyClick(cell, Qt.Key.Key_Return)
    assert window.open_job.edits.count() == 1
    assert window.open_job.edits.undoText() == "air gap of the left leg"
    window.open_job.edits.undo()
    assert window.sentence.text() == "Draw 12 ml off the left leg."
    assert cell.text() == "200"


def test_read_again_puts_the_gaps_by_and_enter_walks_both_legs(qtbot, window, page):
    page.fill_card.again.setFocus()
    qtbot.keyClick(page.fill_card.again, Qt.Key.Key_Space)
    build = window.open_job.job.build
    assert (build.left.gap, build.right.gap) == ((), ())
    assert build.earlier[0].left[0].text == "200 mm"
    assert focus() is page.oil_card.boxes["left"].first_cell
    for text in ("212", "212,5", "212 mm", "212", "211.5", "212"):
        qtbot.keyClicks(focus(), text)
        qtbot.keyClick(focus(), Qt.Key.Key_Return)
    assert focus() is page.fill_card.oil
    assert window.sentence.text() == "In, from the bottom up: spring, seat, spacer: both legs."
    page.begin()
    assert focus() is page.steps_card.ticks["left/spring_order"]


@pytest.mark.parametrize("key", [Qt.Key.Key_Space, Qt.Key.Key_Return], ids=["space", "enter"])
def test_a_key_ticks_a_step_goes_on_to_the_next_and_undo_opens_it(qtbot, window, page, key):
    tick = page.steps_card.ticks["left/spring_order"]
    tick.setFocus()
    assert "washer" in page.steps_card.why.text()
    qtbot.keyClick(tick, key)
    assert tick.isChecked()
    assert window.open_job.job.build.log[-1].step == "left/spring_order"
    assert focus() is page.steps_card.ticks["right/spring_order"]
    window.open_job.edits.undo()
    assert not tick.isChecked()


def test_the_caution_of_a_step_stands_where_the_danger_is(page):
    page.steps_card.ticks["left/cap_turned_in"].setFocus()
    assert "face and hand" in page.steps_card.caution.accessibleName()


def test_what_cannot_be_read_stays_in_its_box_and_says_what_would_be_right(qtbot, window, page):
    cell = page.oil_card.boxes["left"].first_cell
    retype(qtbot, cell, "2o9", Qt.Key.Key_Tab)
    assert cell.text() == "2o9"
    assert "“o9” is not a unit" in page.oil_card.boxes["left"].trouble
    assert [gap.text for gap in window.open_job.job.build.left.gap] == ["200.5 mm", "200 mm"]
    page.refresh()
    assert cell.text() == "2o9"


@pytest.mark.parametrize("typed", ["-5", "abc", "12 Nm", "9e9", "1,450"])
def test_garbage_gets_a_sentence_and_breaks_nothing(qtbot, window, page, typed):
    for box in (
        page.oil_card.boxes["right"],
        page.fill_card.volumes["left"],
        page.bearing_card.pull,
        page.bearing_card.radius,
        page.sag_card.boxes["extended"],
        page.blend_card.boxes["wanted"],
        page.sheet_card.boxes["bore"],
        page.sheet_card.boxes["sag.rider_low"],
    ):
        retype(qtbot, box.first_cell, typed, Qt.Key.Key_Tab)
        assert box.trouble, box.accessibleName()
    assert window.sentence.text()


@pytest.mark.parametrize(
    ("path", "typed"),
    [("bore", "0 mm"), ("rod", "36 mm"), ("travel", "0"), ("oil.air_gap", "0")],
)
def test_a_sheet_that_cannot_be_is_answered_in_words(qtbot, window, page, path, typed):
    retype(qtbot, page.sheet_card.boxes[path].first_cell, typed)
    assert window.sentence.text()
    assert page.force_card.accessibleDescription()


def test_words_and_volumes_are_drafts_while_typed_and_steps_when_left(qtbot, window, page):
    line = page.fill_card.oil
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, "another oil ")
    assert window.open_job.job.build.oil == "another oil"
    assert line.text() == "another oil "
    assert window.open_job.edits.count() == 0
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert window.open_job.edits.count() == 1
    retype(qtbot, page.fill_card.volumes["left"].first_cell, "270")
    assert window.open_job.job.build.left.volume == Volume.typed("270 ml")
    assert "20 ml more than the manual's" in page.fill_card.said.text()
    window.open_job.edits.undo()
    window.open_job.edits.undo()
    assert line.text() == "an invented 15-weight fork oil"


def test_a_stem_nut_step_is_ticked_in_the_tightening_list_only_in_its_turn(qtbot, window, page):
    card = page.bearing_card
    key = next(iter(card.nut_ticks))
    qtbot.keyClick(card.nut_ticks[key], Qt.Key.Key_Space)
    assert "come before it" in card.nut_said.text()
    assert window.open_job.job.log == ()
    assert not card.nut_ticks[key].isChecked()


def test_where_the_stem_nut_comes_first_its_tick_is_the_lists_own(qtbot, window, demo_path):
    window.show_job(load_job(demo_path)[0])
    window.go_to(Stage.BUILD)
    card = window.page(Stage.BUILD).bearing_card
    key = next(iter(card.nut_ticks))
    qtbot.keyClick(card.nut_ticks[key], Qt.Key.Key_Space)
    assert [entry.step for entry in window.open_job.job.log] == [key]
    assert card.nut_ticks[key].isChecked()


def test_the_pull_is_read_and_what_was_felt_is_chosen_by_keyboard(qtbot, window, page):
    card = page.bearing_card
    card.pull.go_to_first_empty()
    for text in ("12", "1.3 kgf", ""):
        qtbot.keyClicks(focus(), text)
        qtbot.keyClick(focus(), Qt.Key.Key_Return)
    assert focus() is card.radius.first_cell
    qtbot.keyClick(focus(), Qt.Key.Key_Return)
    assert focus() is card.felt
    assert card.said.text().startswith("Within: 12.4 N is a drag of 4.33 N·m")
    qtbot.keyClick(card.felt, Qt.Key.Key_Down)
    assert window.open_job.job.build.bearing.fall_away is FallAway.FREE


def test_adjustments_are_typed_in_place_and_survive_save_and_reopen(qtbot, window, page, tmp_path):
    made = page.bearing_card.adjustments
    qtbot.mouseClick(made.add, Qt.MouseButton.LeftButton)
    assert focus() is made.line(0, "what")
    qtbot.keyClicks(focus(), "nut 1/16 turn tighter")
    qtbot.keyClick(focus(), Qt.Key.Key_Return)
    qtbot.keyClicks(focus(), "knock on braking")
    path = tmp_path / "one.job.json"
    window.save_to(path)
    kept = load_job(path)[0].build.bearing.adjustments[0]
    assert (kept.what, kept.why) == ("nut 1/16 turn tighter", "knock on braking")
    window.show_job(Job())
    window.go_to(Stage.BUILD)
    window.open_path(path)
    window.go_to(Stage.BUILD)
    assert made.line(0, "why").text() == "knock on braking"


def test_the_sag_is_read_by_enter_and_its_preload_said(qtbot, window, page):
    card = page.sag_card
    card.gauge.setFocus()
    card.gauge.chosen.emit("tape")
    card.boxes["rider_down"].go_to_first_empty()
    for box, text in (("extended", "200"), ("rider_down", "135"), ("rider_up", "145")):
        for cell in card.boxes[box].cells[:2]:
            retype(qtbot, cell, text)
    assert "60.0 mm, 40 % of the travel" in card.rider.text()
    assert "more preload on each leg, spring and air counted" in card.rider.text()
    assert window.open_job.job.build.sag.gauge == "tape"


def test_the_blend_is_worked_out_as_it_is_typed(qtbot, window, page):
    card = page.blend_card
    for name, text in (("first", "22"), ("second", "46"), ("wanted", "32"), ("amount", "520")):
        retype(qtbot, card.boxes[name].first_cell, text)
    assert card.said.text().startswith("243 ml of first oil (47 %) and 277 ml of second oil")
    retype(qtbot, card.boxes["wanted"].first_cell, "60")
    assert "cannot be mixed" in card.said.text()
    assert card.said.property("tone") == "attention"


def test_a_value_from_the_manual_is_kept_on_the_sheet_with_its_source(qtbot, window, page):
    card = page.sheet_card
    retype(qtbot, card.source, "manual p. 13-4")
    retype(qtbot, card.boxes["oil.air_gap"].first_cell, "200")
    sheet = window.open_job.job.sheet
    assert sheet.legs.oil.air_gap == Length.typed("200 mm")
    assert sheet.sources["legs.oil.air_gap"] == "manual p. 13-4"
    assert focus() is card.boxes["oil.air_gap_tolerance"].first_cell
    assert window.sentence.text() == "Add 12 ml to the right leg."
    retype(qtbot, card.boxes["sag.rider_low"].first_cell, "40 mm")
    retype(qtbot, card.boxes["sag.rider_high"].first_cell, "33")
    sag = window.open_job.job.sheet.legs.sag
    assert (sag.rider_low.text, sag.rider_high.text) == ("40 mm", "33 %")


def test_without_a_bore_the_sentence_gives_the_level_and_the_suction_tube(window, page):
    window.open_job.edit("bore", lambda job: with_legs_value(job, "bore", None, ""))
    assert window.sentence.text() == "The left leg holds too much oil by 11.8 mm of level."
    assert "suction tube set to 212.0 mm" in window.detail.text()
    assert "bore of the tube" in page.force_card.accessibleDescription()


def test_all_ticked_and_read_the_button_goes_on_to_the_alignment(qtbot, window, page):
    for cell in page.oil_card.boxes["left"].cells:
        retype(qtbot, cell, "212")
    page.begin()
    for _ in range(40):
        if not hasattr(focus(), "reached"):
            break
        if focus().isChecked():
            break
        qtbot.keyClick(focus(), Qt.Key.Key_Space)
    assert page.bearing_card.ticks["bearing_greased"].isChecked()
    for cell in page.bearing_card.pull.cells:
        retype(qtbot, cell, "12")
    page.bearing_card.felt.setFocus()
    qtbot.keyClick(page.bearing_card.felt, Qt.Key.Key_Down)
    assert window.sentence.text() == "The legs and the head bearing are built."
    page.begin()
    assert focus() is page.go_on
    qtbot.keyClick(page.go_on, Qt.Key.Key_Return)
    assert focus() is not page.go_on
    assert not page.isVisible()


def test_every_input_has_a_name_and_tab_walks_the_cards_from_the_top(page):
    order, widget = [], page.page
    for _ in range(600):
        widget = widget.nextInFocusChain()
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus and page.isAncestorOf(widget):
            order.append(widget)
        if widget is page.page:
            break
    inputs = [each for each in order if each is not page.page]
    assert all(each.accessibleName() or getattr(each, "text", str)() for each in inputs)
    cards = (
        page.oil_card,
        page.steps_card,
        page.fill_card,
        page.blend_card,
        page.spring_card,
        page.bearing_card,
        page.sag_card,
        page.sheet_card,
    )
    seen = [next((c for c in cards if c.isAncestorOf(each)), None) for each in inputs]
    first = [seen.index(card) for card in cards]
    assert first == sorted(first)


def test_what_the_keyboard_reaches_is_brought_into_view(page):
    box = page.sheet_card.boxes["sag.rider_high"]
    box.go_to_first_empty()
    QCoreApplication.processEvents()  # the page is laid out first
    view = page.page.viewport()
    top = box.mapTo(view, box.rect().topLeft()).y()
    assert 0 <= top <= view.height() - box.height() + 60


def test_without_a_gauge_its_name_is_asked_for_and_chosen_by_keyboard(qtbot, window, page):
    page.fill_card.gauge_chosen.emit(None)
    for side in ("left", "right"):
        for cell in page.oil_card.boxes[side].cells[:3]:
            retype(qtbot, cell, "212")
    assert focus() is page.fill_card.gauge
    assert window.sentence.text() == "Name the gauge the air gaps were read with."
    page.begin()
    assert focus() is page.fill_card.gauge
    qtbot.keyClick(focus(), Qt.Key.Key_Down)
    assert window.open_job.job.build.gauge is not None


def test_what_was_typed_does_not_follow_into_another_job(qtbot, window, page):
    cell = page.oil_card.boxes["left"].first_cell
    retype(qtbot, cell, "2o9", Qt.Key.Key_Tab)
    qtbot.keyClicks(page.fill_card.oil, " and more")
    window.open_job.start(Job(title="another"))
    assert cell.text() == ""
    assert page.oil_card.boxes["left"].trouble == ""
    assert page.fill_card.oil.text() == ""
    assert window.open_job.job.build == Job().build


def test_another_job_of_the_same_bike_shows_its_sheet_and_readings(window, page, air_assist):
    window.open_job.start(air_assist.with_changes(title="the next one"))
    assert page.sheet_card.boxes["bore"].first_cell.text() == "36"
    assert page.oil_card.boxes["left"].first_cell.text() == "200"
    assert page.fill_card.oil.text() == "an invented 15-weight fork oil"


def test_saving_loses_nothing_that_cannot_be_read(qtbot, window, page, tmp_path):
    cell = page.oil_card.boxes["left"].first_cell
    retype(qtbot, cell, "2o9", Qt.Key.Key_Tab)
    window.save_to(tmp_path / "one.job.json")
    assert cell.text() == "2o9"


def test_every_stage_of_the_work_is_kept_by_the_file(qtbot, window, page, tmp_path):
    retype(qtbot, page.sag_card.boxes["extended"].first_cell, "7.5 in")
    retype(qtbot, page.bearing_card.pull.first_cell, "3 lbf")
    retype(qtbot, page.blend_card.boxes["first"].first_cell, "22 mm2/s")
    qtbot.keyClick(page.steps_card.ticks["left/spring_order"], Qt.Key.Key_Space)
    path = tmp_path / "one.job.json"
    window.save_to(path)
    build = load_job(path)[0].build
    assert build == window.open_job.job.build
    assert build.sag.extended[0].text == "7.5 in"
    assert build.bearing.pull[0].text == "3 lbf"
    assert build.log[-1].step == "left/spring_order"


def test_a_volume_in_fluid_ounces_is_understood(qtbot, window, page):
    retype(qtbot, page.fill_card.volumes["left"].first_cell, "9 US fl oz")
    assert window.open_job.job.build.left.volume.value == pytest.approx(266.2, abs=0.05)
    retype(qtbot, page.fill_card.volumes["right"].first_cell, "9 fl oz", Qt.Key.Key_Tab)
    assert "write US fl oz or imp fl oz" in page.fill_card.volumes["right"].trouble


def test_what_the_sheet_lacks_of_the_oil_is_listed_on_bike_and_leads_to_its_box(
    qtbot, window, air_assist
):
    window.show_job(with_legs_value(air_assist, "oil.air_gap_tolerance", None, ""))
    window.activateWindow()
    window.go_to(Stage.BIKE)
    bike = window.page(Stage.BIKE)
    assert window.sentence.text() == "1 value is missing."
    (link,) = [each for each in bike.missing_card.links if each.text().startswith("tolerance of")]
    link.setFocus()
    qtbot.keyClick(link, Qt.Key.Key_Return)
    box = window.page(Stage.BUILD).sheet_card.boxes["oil.air_gap_tolerance"]
    assert focus() is box.first_cell
    retype(qtbot, focus(), "2 mm")
    window.go_to(Stage.BIKE)
    assert window.sentence.text() == "Sheet complete."


def test_where_the_sheet_lacks_the_travel_the_plot_says_so_in_its_place(window, page, air_assist):
    card = page.force_card
    plotted = card.grab().toImage()
    window.show_job(with_legs_value(air_assist, "travel", None, ""))
    assert "Still needed for this: travel. The sheet's values" in card.accessibleDescription()
    told = card.grab().toImage()
    assert told != plotted
    room = card.room().toRect()
    ground = told.pixel(room.left(), room.bottom())
    inked = [
        (across, down)
        for down in range(room.top(), room.bottom())
        for across in range(room.left(), room.right(), 2)
        if told.pixel(across, down) != ground
    ]
    assert len(inked) > 100, "the reason is painted, not only told to a screen reader"
