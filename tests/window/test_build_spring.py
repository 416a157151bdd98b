"""Spring and spacer with real keys: typed in its order, worked out, refused, undone, saved."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from aligner.assessment import Stage
from aligner.data_files import demo
from aligner.job import Job
from aligner.job.edits_build import with_sag_gauge, with_sag_lengths
from aligner.sheet.quantities import Length
from aligner.storage.document_file import load_job

#: In the order of the boxes: the sheet's preload of 18 mm is wanted, so the fourth stays empty.
TYPED = ("380", "480", "3", "", "110", "200", "115")


@pytest.fixture
def page(window):
    window.show_job(load_job(demo("fellside-air-assist.job.json"))[0])
    window.activateWindow()
    window.go_to(Stage.BUILD)
    return window.page(Stage.BUILD)


@pytest.fixture
def card(page):
    return page.spring_card


def focus():
    return QApplication.focusWidget()


def type_in(qtbot, cell, text, key=Qt.Key.Key_Return):
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, text)
    qtbot.keyClick(cell, key)


def type_all(qtbot, card, texts=TYPED):
    card.boxes["free_length"].first_cell.setFocus()
    for text in texts:
        qtbot.keyClicks(focus(), text)
        qtbot.keyClick(focus(), Qt.Key.Key_Return)


def said(card):
    return "\n".join(each.text() for each in (card.cut, card.lines) if not each.isHidden())


def read_sag(window):
    def edited(job):
        for name, text in (("extended", "200"), ("rider_down", "135"), ("rider_up", "145")):
            job = with_sag_lengths(job, name, (Length.typed(f"{text} mm"),) * 3)
        return with_sag_gauge(job, "tape")

    window.open_job.edit("sag", edited)


def test_nothing_is_said_before_anything_is_typed(card):
    assert said(card) == ""
    assert card.boxes["wanted_preload"].accessibleName() == "wanted preload: 18 mm"


def test_enter_walks_the_boxes_and_what_is_still_needed_is_named(qtbot, card):
    type_all(qtbot, card, TYPED[:1])
    assert focus() is card.boxes["room"].first_cell
    assert (
        card.cut.text()
        == "Still needed: room for spring and spacer, washers and seats (0 for none)."
    )


def test_the_spacer_is_said_as_it_is_typed_and_the_old_one_beside_it(qtbot, card):
    type_all(qtbot, card, TYPED[:-1])
    assert focus() is card.boxes["fitted_spacer"].first_cell
    assert said(card).splitlines() == [
        "Cut both spacers to 115.0 mm, for the 18.0 mm of preload on the sheet.",
        "The spacer as it was gave 13.0 mm of preload.",
        "The sheet's spacer would give 18.0 mm of preload.",
        "At full travel 12.0 mm is left before the coils touch.",
    ]


def test_once_it_is_in_nothing_is_left_to_cut_and_the_keyboard_goes_on(qtbot, page, card):
    type_all(qtbot, card)
    assert card.cut.isHidden()
    assert "The spacer that went in gives 18.0 mm of preload." in said(card)
    assert focus() is not None
    assert not card.isAncestorOf(focus())


def test_a_wanted_preload_goes_before_the_sheets(qtbot, card):
    type_all(qtbot, card, ("380", "480", "3", "15"))
    assert card.cut.text() == "Cut both spacers to 112.0 mm, for 15.0 mm of preload."


def test_what_cannot_be_is_said_at_its_box_and_mended_there(qtbot, card):
    type_all(qtbot, card, TYPED[:5])
    type_in(qtbot, card.boxes["solid_length"].first_cell, "400")
    assert "not shorter than the free length" in card.boxes["solid_length"].trouble
    assert card.cut.isHidden()
    type_in(qtbot, card.boxes["solid_length"].first_cell, "200")
    assert card.boxes["solid_length"].trouble == ""
    assert card.cut.text().startswith("Cut both spacers to 115.0 mm")


def test_coils_that_touch_need_attention_on_the_card_and_in_the_job(qtbot, window, card):
    type_all(qtbot, card, ("380", "480", "3", "", "110", "225"))
    told = "The coils touch 13.0 mm before the leg is right in"
    assert told in card.notices.text()
    assert any(told in notice.text for notice in window.open_job.assessment.notices)


@pytest.mark.parametrize("typed", ["-5", "abc", "12 Nm", "9e9", "1,450"])
def test_garbage_stays_in_its_box_with_a_sentence(qtbot, window, card, typed):
    for box in (*card.boxes.values(), window.page(Stage.BUILD).sag_card.spacer):
        type_in(qtbot, box.first_cell, typed, Qt.Key.Key_Tab)
        assert box.trouble, box.accessibleName()
        assert box.first_cell.text() == typed


def test_each_box_is_a_step_to_undo_and_a_keystroke_is_a_draft(qtbot, window, card):
    cell = card.boxes["free_length"].first_cell
    cell.setFocus()
    qtbot.keyClicks(cell, "380")
    assert window.open_job.job.build.spring.free_length == Length.typed("380 mm")
    assert window.open_job.edits.count() == 0
    qtbot.keyClick(cell, Qt.Key.Key_Return)
    assert window.open_job.edits.undoText() == "spring and spacer"
    window.open_job.edits.undo()
    assert window.open_job.job.build.spring.free_length is None
    assert cell.text() == ""


def test_it_is_kept_by_the_file_as_it_was_typed(qtbot, window, page, card, tmp_path):
    type_all(qtbot, card, ("14 15/16 in", "480", "0", "", "110", "200", "115"))
    type_in(qtbot, page.sag_card.spacer.first_cell, "4.5 in")
    window.save_to(tmp_path / "one.job.json")
    build = load_job(tmp_path / "one.job.json")[0].build
    assert build == window.open_job.job.build
    assert build.spring.free_length.text == "14 15/16 in"
    assert build.sag.spacer.text == "4.5 in"


def test_what_was_typed_does_not_follow_into_another_job(qtbot, window, card):
    type_in(qtbot, card.boxes["room"].first_cell, "48o", Qt.Key.Key_Tab)
    window.open_job.start(Job(title="another"))
    assert card.boxes["room"].first_cell.text() == ""
    assert window.open_job.job.build == Job().build


def test_the_sag_and_the_spring_name_one_new_spacer(qtbot, window, page, card):
    type_all(qtbot, card, TYPED[:5])
    read_sag(window)
    sag = page.sag_card
    asked = "Type the spacer that was in while the sag was read, and the new one is said."
    assert sag.new_spacer.text() == card.by_sag.text() == asked
    sag.boxes["rider_up"].cells[-1].setFocus()
    qtbot.keyClick(focus(), Qt.Key.Key_Return)
    assert focus() is sag.spacer.first_cell
    qtbot.keyClicks(focus(), "115")
    qtbot.keyClick(focus(), Qt.Key.Key_Return)
    change = window.open_job.assessment.build.sag.rider.change_mm
    new = f"By the sag: new spacers of {115 + change:.1f} mm, 115.0 mm and {change:.1f} mm more."
    assert sag.new_spacer.text() == card.by_sag.text() == new
    assert card.cut.isHidden(), "two lengths to cut to are one too many"
    type_in(qtbot, card.boxes["fitted_spacer"].first_cell, "140")
    assert "The spacer of 140.0 mm that went in is not counted." in sag.new_spacer.text()
    type_in(qtbot, card.boxes["fitted_spacer"].first_cell, f"{115 + change:.1f}")
    assert "read the sag again with it" in card.by_sag.text()


def test_the_caution_stands_on_the_card_where_the_spring_is(card):
    assert "face and hand out of its line" in card.caution.accessibleName()
    assert not card.caution.isHidden()
