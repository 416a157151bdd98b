"""The Bike stage is walked as a mechanic would: begin, type, Enter, undo, save, open again."""

from datetime import UTC, datetime

import pytest
from PySide6.QtCore import QCoreApplication, QPoint, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel

from aligner.assessment import Stage
from aligner.job import Job, LogEntry
from aligner.sheet import ForkKind
from aligner.sheet.patterns import composed
from aligner.sheet.quantities import Length
from aligner.storage.document_file import load_job, load_sheet, save_sheet
from aligner.window.bike.stage import BikeStage
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.typed_line import ValueLine
from tests.window.sheet_typing import focused, type_into


@pytest.fixture
def page(window) -> BikeStage:
    """The Bike stage on the demo bike."""
    window.go_to(Stage.BIKE)
    return window.page(Stage.BIKE)


@pytest.fixture
def empty(window) -> BikeStage:
    """The Bike stage on nothing."""
    window.show_job(Job())
    window.go_to(Stage.BIKE)
    return window.page(Stage.BIKE)


def press_enter_on(qtbot, link):
    qtbot.waitUntil(link.isVisible)  # the links are made anew when something else is missing
    link.setFocus()
    QTest.keyClick(link, Qt.Key.Key_Return)


def test_nothing_yet_says_what_to_do_first_and_has_the_keyboard_there(window, empty):
    assert empty.sentence()[0] == "Name the bike and choose its pattern."
    assert focused(window) is empty.start_card.name.line
    assert empty.start_card.isVisible()
    assert not empty.fasteners.isVisible()
    assert not empty.missing_card.isVisible()


def test_a_sheet_is_started_by_keyboard_alone(window, empty):
    QTest.keyClicks(focused(window), "an invented bike")
    QTest.keyClick(focused(window), Qt.Key.Key_Return)
    QTest.keyClicks(focused(window), "fork seals")
    QTest.keyClick(focused(window), Qt.Key.Key_Return)
    for key in (Qt.Key.Key_Right, Qt.Key.Key_Right, Qt.Key.Key_Return):  # anti-dive units
        QTest.keyClick(focused(window), key)
    for key in (Qt.Key.Key_Right, Qt.Key.Key_Return):  # two bolts in each lower clamp
        QTest.keyClick(focused(window), key)
    for _ in range(5):
        QTest.keyClick(focused(window), Qt.Key.Key_Return)
    assert focused(window) is empty.start_card.start
    QTest.keyClick(focused(window), Qt.Key.Key_Return)
    sheet = window.open_job.job.sheet
    wanted = composed({"fork": "anti_dive", "lower_clamps": "two"})
    assert sheet == wanted.with_changes(name="an invented bike")
    assert window.open_job.job.title == "fork seals"
    assert sheet.fork.kind is ForkKind.ANTI_DIVE
    assert not empty.start_card.isVisible()
    assert empty.sentence()[0] == "21 values are missing."
    window.open_job.edits.undo()
    assert empty.start_card.isVisible()
    assert window.open_job.job.sheet.name == "an invented bike"


def test_a_sheet_without_a_name_is_not_started_and_says_so(window, empty):
    empty.start_card.start.click()
    assert window.open_job.job.sheet.fasteners == ()
    assert "Name the bike first" in empty.start_card.name.words.text()
    assert focused(window) is empty.start_card.name.line


def test_what_is_missing_is_listed_and_each_leads_to_its_box(qtbot, window, empty):
    window.open_job.edit("start", lambda job: job.with_changes(sheet=composed({})))
    card = empty.missing_card
    assert len(card.links) == 8
    card.more.click()
    names = [link.text() for link in card.links]
    assert len(names) == 19 + 10
    for name, leads_to in (
        ("tolerance of the tubes' height", "tubes' height, tolerance ±"),
        ("left lower clamp", "left lower clamp, torque as printed"),
        ("stem nut: back off", "stem nut, back off"),
        ("wheelbase", "wheelbase"),
    ):
        press_enter_on(qtbot, card.links[names.index(name)])
        assert focused(window).accessibleName() == leads_to
    assert not empty.page.widget().visibleRegion().isEmpty()


def test_a_value_is_typed_in_any_unit_and_enter_walks_down(window, page):
    values = page.dimensions.values
    type_into(values["fork.leg_spacing"].line, "7.5 in")
    assert window.open_job.job.sheet.fork.leg_spacing.text == "7.5 in"
    assert values["fork.leg_spacing"].words.text() == "190.5 mm"
    assert focused(window) is values["fork.bracket_spacing"].line
    type_into(values["fork.bracket_spacing"].line, "185")
    assert values["fork.bracket_spacing"].line.text() == "185 mm"
    assert window.open_job.edits.undoText() == "bracket spacing"
    window.open_job.edits.undo()
    assert window.open_job.edits.undoText() == "leg spacing, centre to centre"
    assert values["fork.bracket_spacing"].line.text() == "190 mm"


def test_the_drawing_follows_what_is_being_typed(window, page):
    before = page.drawing.grab().toImage()
    type_into(page.dimensions.values["fork.leg_spacing"].line, "150 mm", enter=False)
    assert "leg spacing 150 mm" in page.drawing.accessibleDescription()
    assert page.drawing.grab().toImage() != before
    assert window.open_job.edits.count() == 0


def test_a_source_stands_beside_its_value(window, page):
    type_into(page.dimensions.sources["steering.rake"].line, "manual p. 6-14")
    assert window.open_job.job.sheet.sources["steering.rake"] == "manual p. 6-14"
    assert focused(window) is page.dimensions.sources["steering.offset"].line


def test_a_mistake_is_marked_at_the_box_and_neither_text_nor_value_is_lost(window, page):
    box = page.dimensions.values["fork.leg_spacing"]
    type_into(box.line, "20 kg")
    assert focused(window) is box.line
    assert box.line.property("refused") == "true"
    assert "“kg” is not a unit" in box.words.text()
    assert "still has 200 mm" in box.words.text()
    assert box.line.accessibleDescription() == box.words.text()
    page.limits.values["protrusion.target"].line.setFocus()
    type_into(page.limits.values["protrusion.target"].line, "5 mm")
    assert box.line.text() == "20 kg"
    assert window.open_job.job.sheet.fork.leg_spacing == Length.typed("200 mm")
    window.go_to(Stage.ALIGN)
    window.go_to(Stage.BIKE)
    assert box.line.text() == "20 kg"
    box.line.setFocus()
    QTest.keyClick(box.line, Qt.Key.Key_Escape)
    assert box.line.text() == "200 mm"
    assert box.line.property("refused") == "false"


def test_what_can_no_longer_be_read_is_not_shown_as_if_it_could(window, page):
    box = page.dimensions.values["fork.leg_spacing"]
    type_into(box.line, "150 mm", enter=False)
    assert window.open_job.job.sheet.fork.leg_spacing.text == "150 mm"
    QTest.keyClicks(box.line, "x")
    assert window.open_job.job.sheet.fork.leg_spacing.text == "200 mm"
    assert "leg spacing 200 mm" in page.drawing.accessibleDescription()


def test_a_refused_text_outlives_a_save_but_not_another_job(window, page, demo_path, tmp_path):
    box = page.dimensions.values["fork.leg_spacing"]
    type_into(box.line, "20 kg", enter=False)
    assert window.save_to(tmp_path / "kept.job.json")
    assert box.line.text() == "20 kg"
    window.open_path(demo_path)
    window.go_to(Stage.BIKE)
    assert box.line.text() == "200 mm"


def test_a_sheet_goes_to_a_file_and_comes_from_one(window, page, tmp_path):
    path = tmp_path / "passed on"
    page.save_sheet_as(path)
    saved, _ = load_sheet(tmp_path / "passed on.sheet.json")
    assert saved == window.open_job.job.sheet
    assert "saved in passed on.sheet.json" in page.said.text
    other = composed({"fork": "cartridge"}).with_changes(name="another invented bike")
    save_sheet(other, tmp_path / "other.sheet.json")
    page.take_over(tmp_path / "other.sheet.json")
    assert window.open_job.job.sheet == other
    assert page.bike_card.name.line.text() == "another invented bike"
    window.open_job.edits.undo()
    assert window.open_job.job.sheet == saved


def test_a_sheet_is_taken_over_from_an_earlier_job_on_nothing(window, empty, demo_path):
    empty.take_over(demo_path)
    assert window.open_job.job.sheet == load_job(demo_path)[0].sheet
    assert not empty.start_card.isVisible()


def test_a_file_that_is_no_sheet_is_refused_in_words_and_nothing_changes(window, page, tmp_path):
    before = window.open_job.job
    (tmp_path / "letter.json").write_text("Dear rider", encoding="utf-8")
    page.take_over(tmp_path / "letter.json")
    assert "letter.json was not taken over" in page.said.text
    page.take_over(tmp_path / "gone.json")
    assert "gone.json was not taken over" in page.said.text
    assert window.open_job.job == before


def test_a_variant_is_made_and_says_what_it_dropped(window, page):
    page.files.variant_button.click()
    card = page.variant_card
    assert card.isVisible()
    type_into(card.name.line, "Fellside 650, next year", enter=False)
    card.rows.answers["handlebars"]["above"].click()
    card.rows.answers["fork"]["cartridge"].click()
    assert "Dropped: left handlebar clamp, right handlebar clamp" in card.said.text()
    card.use.click()
    sheet = window.open_job.job.sheet
    assert sheet.name == "Fellside 650, next year"
    assert sheet.fork.kind is ForkKind.CARTRIDGE
    kept = next(each for each in sheet.fasteners if each.name == "left lower clamp")
    assert kept.torque.source.endswith("(from the sheet of Fellside 650)")
    assert "Dropped: left handlebar clamp" in page.said.text
    assert not card.isVisible()
    window.open_job.edits.undo()
    assert window.open_job.job.sheet.name == "Fellside 650"


def test_a_changed_sheet_says_which_ticked_steps_are_open_again(window, page):
    step = next(
        each.step
        for each in window.open_job.assessment.tightening.steps
        if each.step.joint == "left lower clamp"
    )
    at = datetime(2026, 5, 2, 9, 0, tzinfo=UTC)
    ticked = (LogEntry(step=step.key, at=at),)
    window.open_job.edit("tick", lambda job: job.with_changes(log=ticked))
    type_into(page.fasteners.rows["left lower clamp"].boxes["torque"].line, "25 N·m")
    assert "1 ticked step is open again" in page.sentence()[2]
    assert "the torque of the left lower clamp" in window.caution.accessibleName()
    window.open_job.edits.undo()
    assert page.sentence()[2] == ""


def test_what_was_typed_is_there_after_save_and_opening_again(window, page, tmp_path):
    type_into(page.bike_card.name.line, "Fellside 650 S")
    type_into(page.fasteners.rows["left cap"].boxes["torque"].line, "22 lbf ft (30 N·m)")
    type_into(page.fasteners.rows["left cap"].boxes["source"].line, "invented p. 7")
    type_into(page.limits.values["in_line.tolerance"].line, "0.3 deg")
    path = tmp_path / "bike.job.json"
    assert window.save_to(path)
    window.show_job(Job())
    window.open_path(path)
    window.go_to(Stage.BIKE)
    assert page.bike_card.name.line.text() == "Fellside 650 S"
    assert page.fasteners.rows["left cap"].boxes["torque"].line.text() == "22 lbf·ft (30 N·m)"
    assert page.fasteners.rows["left cap"].boxes["source"].line.text() == "invented p. 7"
    assert page.limits.values["in_line.tolerance"].line.text() == "0.3 deg"


def test_the_fork_and_the_handlebars_are_chosen_by_keyboard(window, page):
    page.bike_card.fork.setFocus()
    QTest.keyClick(page.bike_card.fork, Qt.Key.Key_Down)
    assert window.open_job.job.sheet.fork.kind is ForkKind.AIR_ASSISTED
    QTest.keyClick(page.bike_card.fork, Qt.Key.Key_Return)
    assert focused(window) is page.bike_card.handlebars


def test_every_box_and_choice_has_a_name_and_can_be_reached(page):
    page.fasteners.rows["stem nut"].open_button.click()
    boxes = [*page.findChildren(ValueLine), *page.findChildren(Choice)]
    assert len(boxes) > 90
    for widget in boxes:
        assert widget.accessibleName(), widget
        assert widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        assert widget.minimumHeight() >= 34


def test_tab_goes_as_the_eye_does(window, page):
    page.fasteners.rows["stem head bolt"].open_button.click()
    page.bike_card.name.line.setFocus()
    names = []
    for _ in range(60):
        names.append(focused(window).accessibleName() or focused(window).text())
        QTest.keyClick(focused(window), Qt.Key.Key_Tab)
    start = names.index("stem nut, open it")
    assert names[:5] == ["name", "fork", "handlebars", "this job", "note"]
    assert names[5:7] == list(_FIRST_DIMENSION)
    assert names[start - 1] == "legs in line, tolerance ±, source"
    assert names[start + 1 : start + 4] == [
        "stem nut, torque as printed",
        "stem nut, source of the torque",
        "stem nut, thread",
    ]
    assert names[start + 8 : start + 10] == ["stem head bolt, name", "stem head bolt, kind"]
    inside = names[start + 8 :]
    remove = inside.index("stem head bolt, remove this fastener")
    assert remove + 1 == inside.index("stem pinch, open it")


_FIRST_DIMENSION = ("leg spacing, centre to centre", "leg spacing, centre to centre, source")


def test_the_wheel_over_a_choice_changes_nothing(window, page):
    before = window.open_job.job
    for choice in (page.bike_card.fork, page.rules.new.kind):
        at = choice.rect().center().toPointF()
        down = QPoint(0, -120)
        event = QWheelEvent(
            at,
            choice.mapToGlobal(at),
            QPoint(),
            down,
            Qt.MouseButton.NoButton,
            Qt.KeyboardModifier.NoModifier,
            Qt.ScrollPhase.NoScrollPhase,
            False,
        )
        shown = choice.currentIndex()
        QCoreApplication.sendEvent(choice, event)
        assert choice.currentIndex() == shown
    assert window.open_job.job == before


def test_a_sheet_is_filled_in_from_nothing_to_complete_by_keyboard(qtbot, window, empty):
    type_into(empty.start_card.name.line, "an invented bike")
    empty.start_card.start.setFocus()
    QTest.keyClick(empty.start_card.start, Qt.Key.Key_Return)
    QTest.keyClick(focused(window), Qt.Key.Key_Return)  # the first link: the tolerance
    for text in ("0.5 mm", "0.4 deg", "0.4 deg"):
        QTest.keyClicks(focused(window), text)
        QTest.keyClick(focused(window), Qt.Key.Key_Return)
    assert focused(window).accessibleName() == "stem nut, torque as printed"
    for _ in window.open_job.job.sheet.fasteners:
        QTest.keyClicks(focused(window), "23 N·m ± 10 %")
        QTest.keyClick(focused(window), Qt.Key.Key_Return)
    assert [link.text() for link in empty.missing_card.links[:2]] == [
        "stem nut: seating torque",
        "stem nut: back off",
    ]
    press_enter_on(qtbot, empty.missing_card.links[0])
    for text in ("40-50 N·m", "1/4 turn"):  # value to value, past the source
        QTest.keyClicks(focused(window), text)
        QTest.keyClick(focused(window), Qt.Key.Key_Return)
    assert empty.sentence()[0] == "Sheet complete."
    assert focused(window) is empty.go_on  # not a torque that is there already
    notices = window.open_job.assessment.tightening.notices
    assert not [notice for notice in notices if "missing" in notice.text]


def test_another_job_never_shows_what_was_asked_about_the_one_before(window, empty, demo_path):
    type_into(empty.start_card.name.line, "an invented bike")
    empty.start_card.start.click()
    window.open_path(demo_path)
    window.go_to(Stage.BIKE)
    said = [row.boxes["torque"].words.text() for row in empty.fasteners.rows.values()]
    assert not [words for words in said if "missing" in words]


def test_what_an_answer_means_is_said_under_its_question(window, empty):
    rows = empty.start_card.rows
    shown = {text.text() for text in rows.findChildren(QLabel) if text.isVisible()}
    assert "The axle screws into one leg." in shown
    assert "A drum, or something not bolted to the legs." not in shown

    rows.answers["axle"]["nut_and_pinch"].click()
    rows.answers["brake"]["none"].click()
    shown = {text.text() for text in rows.findChildren(QLabel) if text.isVisible()}
    assert "A nut at one end; the other leg closes round the axle." in shown
    assert "A drum, or something not bolted to the legs." in shown


def test_torques_typed_for_the_left_are_taken_for_the_right_in_one_step(window, empty):
    type_into(empty.start_card.name.line, "an invented bike")
    empty.start_card.start.click()
    assert not empty.missing_card.other_side.isVisible()
    for name, row in empty.fasteners.rows.items():
        if not name.startswith("right"):
            type_into(row.boxes["torque"].line, "23 N·m")
    pairs = [name for name in empty.fasteners.rows if name.startswith("right")]
    assert empty.missing_card.other_side.text() == f"Take {len(pairs)} torques from the other side"

    empty.fasteners.rows[list(empty.fasteners.rows)[-1]].boxes["torque"].line.setFocus()
    QTest.keyClick(focused(window), Qt.Key.Key_Return)
    assert focused(window) is empty.missing_card.other_side
    QTest.keyClick(focused(window), Qt.Key.Key_Return)
    assert {row.boxes["torque"].line.text() for row in empty.fasteners.rows.values()} == {"23 N·m"}
    assert not empty.missing_card.other_side.isVisible()
    assert focused(window).text() == empty.missing_card.links[0].text()  # missing besides

    window.open_job.edits.undo()
    right = empty.fasteners.rows[pairs[0]].boxes["torque"].line
    assert right.text() == ""
