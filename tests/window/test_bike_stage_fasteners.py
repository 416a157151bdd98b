"""Fasteners and rules are edited in place: typed as printed, refused in words, never lost."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from aligner.assessment import Stage
from aligner.sheet import OrderRule, Side
from aligner.window.bike.stage import BikeStage
from tests.window.sheet_typing import focused, type_into


@pytest.fixture
def page(window) -> BikeStage:
    """The Bike stage on the demo bike."""
    window.go_to(Stage.BIKE)
    return window.page(Stage.BIKE)


def test_a_torque_is_typed_as_printed_and_enter_walks_down_the_fasteners(window, page):
    rows = page.fasteners.rows
    left, right = (rows[f"{side} lower clamp"].boxes["torque"] for side in ("left", "right"))
    type_into(left.line, "21-25 Nm (15-18 lb ft)")
    assert left.line.text() == "21 to 25 N·m (15 to 18 lbf·ft)"
    assert focused(window) is right.line
    torque = window.open_job.job.sheet.fasteners[3].torque
    assert (torque.low_nm, torque.high_nm) == (21, 25)
    assert torque.source == "invented for the demo"
    assert window.open_job.edits.undoText() == "left lower clamp, torque as printed"


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        pytest.param("23", "“23” has no unit", id="no unit"),
        pytest.param("25-21 N·m", "runs from 25 N·m down to 21 N·m", id="the wrong way round"),
        pytest.param("31 N·m (17 lbf·ft)", "misprinted or misread", id="two torques"),
    ],
)
def test_what_was_understood_of_a_torque_is_said_beside_it(window, page, typed, said):
    box = page.fasteners.rows["left lower clamp"].boxes["torque"]
    type_into(box.line, typed, enter=False)
    assert said in box.words.text()
    assert box.words.property("tone") == "attention"


def test_a_tolerance_is_worked_out_beside_the_torque(window, page):
    box = page.fasteners.rows["left lower clamp"].boxes["torque"]
    type_into(box.line, "20 N·m ± 10 %", enter=False)
    assert box.words.text() == "aim for 20 N·m, right from 18 N·m to 22 N·m"


def test_every_value_of_a_fastener_is_edited_in_its_opened_row(window, page):
    row = page.fasteners.rows["left lower clamp"]
    row.open_button.setFocus()
    QTest.keyClick(row.open_button, Qt.Key.Key_Return)
    type_into(row.boxes["bolts"].line, "3")
    type_into(row.boxes["strength_class"].line, "10.9")
    type_into(row.boxes["passes"].line, "60, 100")
    type_into(row.boxes["again_after"].line, "60 mi")
    type_into(row.boxes["note"].line, "an invented note")
    row.choices["thread_condition"].setFocus()
    QTest.keyClick(row.choices["thread_condition"], Qt.Key.Key_Down)
    row.choices["pattern"].setFocus()
    QTest.keyClick(row.choices["pattern"], Qt.Key.Key_Down)
    fastener = window.open_job.job.sheet.fasteners[3]
    assert (fastener.bolts, fastener.strength_class, fastener.note) == (
        3,
        "10.9",
        "an invented note",
    )
    assert [share.text for share in fastener.passes] == ["60 %", "100 %"]
    assert fastener.again_after.text == "60 mi"
    assert fastener.thread_condition == "oiled"
    assert fastener.pattern == "crosswise"
    assert row.open_button.text() == "▾ left lower clamp, 3 bolts"


@pytest.mark.parametrize(
    ("field", "typed", "said"),
    [
        pytest.param("bolts", "13", "give 1 to 12", id="too many bolts"),
        pytest.param("passes", "100, 50", "do not fall", id="passes that fall"),
        pytest.param("name", "right lower clamp", "on the sheet already", id="another's name"),
        pytest.param("name", "", "without a name", id="no name"),
    ],
)
def test_what_a_fastener_cannot_have_is_refused_at_its_box(window, page, field, typed, said):
    row = page.fasteners.rows["left lower clamp"]
    row.open_button.click()
    before = window.open_job.job.sheet
    type_into(row.boxes[field].line, typed)
    assert said in row.boxes[field].words.text()
    assert row.boxes[field].line.text() == typed
    assert window.open_job.job.sheet == before


def test_another_name_keeps_the_row_and_what_stands_in_it(window, page):
    row = page.fasteners.rows["left lower clamp"]
    row.open_button.click()
    type_into(row.boxes["torque"].line, "tight", enter=False)
    type_into(row.boxes["name"].line, "near clamp")
    assert page.fasteners.rows["near clamp"] is row
    assert row.boxes["torque"].line.text() == "tight"


def test_a_fastener_is_added_on_both_sides_removed_and_brought_back(window, page):
    card = page.fasteners
    card.new_kind.show_value("damper_rod_bolt")
    assert card.new_side.currentText() == "left and right"
    card.add_button.click()
    assert focused(window) is card.rows["left damper-rod bolt"].boxes["torque"].line
    row = card.rows["right damper-rod bolt"]
    row.open_button.click()
    row.details.remove_button.click()
    assert "right damper-rod bolt" not in card.rows
    assert "Removed: right damper-rod bolt" in page.said.text
    left = card.rows["left damper-rod bolt"]
    left.open_button.click()
    left.details.copy_button.click()
    assert card.rows.keys() >= {"right damper-rod bolt"}
    left.details.copy_button.click()
    assert "on the sheet already" in page.said.text
    for _ in range(3):
        window.open_job.edits.undo()
    assert "left damper-rod bolt" not in card.rows


@pytest.mark.parametrize(
    ("kind", "sides"),
    [
        pytest.param("stem_nut", ["in the middle"], id="never sided"),
        pytest.param("fork_cap", ["left and right", "left", "right"], id="always sided"),
        pytest.param(
            "brake_caliper", ["in the middle", "left and right", "left", "right"], id="either"
        ),
    ],
)
def test_only_the_sides_a_kind_can_have_are_offered(page, kind, sides):
    card = page.fasteners
    card.new_kind.show_value(kind)
    assert [card.new_side.itemText(at) for at in range(card.new_side.count())] == sides


def test_a_rule_is_added_with_its_reason_changed_and_removed(window, page):
    new = page.rules.new
    new.button.click()
    assert "the rule is not complete" in new.refusal
    new.first.show_value("left cap")
    new.kind.show_value("before")
    new.then.show_value("right cap")
    type_into(new.because.line, "An invented reason.", enter=False)
    type_into(new.source.line, "invented p. 5", enter=False)
    new.button.click()
    rule = OrderRule(
        first="left cap", then="right cap", because="An invented reason.", source="invented p. 5"
    )
    assert window.open_job.job.sheet.rules == (rule,)
    row = page.rules.rows[0]
    type_into(row.because.line, "Another reason.")
    assert window.open_job.job.sheet.rules[0].because == "Another reason."
    row.button.click()
    assert window.open_job.job.sheet.rules == ()
    window.open_job.edits.undo()
    assert len(page.rules.rows) == 1


def test_a_rule_that_makes_a_ring_is_refused_and_the_list_stays(window, page):
    steps = len(window.open_job.assessment.tightening.steps)
    for first, then in (("left cap", "right cap"), ("right cap", "left cap")):
        new = page.rules.new
        new.first.show_value(first)
        new.then.show_value(then)
        type_into(new.because.line, "Invented.", enter=False)
        new.button.click()
    assert len(window.open_job.job.sheet.rules) == 1
    assert len(window.open_job.assessment.tightening.steps) == steps
    assert page.rules.new.because.line.text() == "Invented."


def test_the_stem_nut_asks_for_seating_and_back_off_and_no_other_does(page):
    for name, is_asked in (("stem nut", True), ("left cap", False)):
        row = page.fasteners.rows[name]
        row.open_button.click()
        assert row.boxes["seating"].isVisibleTo(row) is is_asked
        assert row.boxes["back_off"].isVisibleTo(row) is is_asked
    assert page.fasteners.rows["stem nut"].boxes["seating"].line.text() == "35 to 45 N·m"
    assert page.fasteners.rows["left cap"].choices["side"].value == Side.LEFT


def test_a_rule_changed_into_a_ring_is_refused_and_stands_as_it_was(window, page):
    rules = tuple(
        OrderRule(first=first, then=then, because="Invented.")
        for first, then in (("left cap", "right cap"), ("right cap", "right lower clamp"))
    )
    window.open_job.edit(
        "rules", lambda job: job.with_changes(sheet=job.sheet.with_changes(rules=rules))
    )
    row = page.rules.rows[1]
    row.then.setFocus()
    QTest.keyClick(row.then, Qt.Key.Key_Down)
    assert row.then.currentText() == "left cap"
    assert "ring" in row.refusal
    assert window.open_job.job.sheet.rules == rules
    assert window.open_job.assessment.tightening.steps
    type_into(row.because.line, "Another reason.")
    assert row.refusal == ""
    assert row.then.value == "right lower clamp"


def test_no_number_stands_in_an_empty_torque_as_if_it_were_the_manuals(page):
    row = page.fasteners.rows["stem nut"]
    row.open_button.click()
    for field in ("torque", "seating"):
        example = row.boxes[field].line.placeholderText()
        assert example == "as printed, with its unit"
