"""The legs' plane by plate, bars and widths: typed, refused, kept through another method."""

import math

import pytest
from PySide6.QtCore import Qt

from aligner.assessment import Stage, Subject
from aligner.job import BarReadings, Job, PlateReadings, SpreadReadings
from aligner.sheet.quantities import Angle, Length
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred
from aligner.window.align.words import METHODS


@pytest.fixture
def card(window):
    window.open_job.start(with_tolerance(window.open_job.job))
    return window.page(Stage.ALIGN).in_line_card


def with_tolerance(job, tolerance=None):
    limits = job.sheet.in_line.with_changes(tolerance=tolerance or Angle.typed("0.3 deg"))
    plate = PlateReadings(method="plate", gauge="caliper")
    return job.with_changes(
        sheet=job.sheet.with_changes(in_line=limits),
        align=job.align.with_changes(in_line=plate),
    )


def press(qtbot, window, *keys):
    for key in keys:
        qtbot.keyClick(window.focusWidget(), key)


def type_walking(qtbot, window, *texts):
    """Type where the keyboard is and press Enter: an empty text is Enter alone."""
    for text in texts:
        cell = window.focusWidget()
        cell.selectAll()
        qtbot.keyClicks(cell, text)
        qtbot.keyClick(cell, Qt.Key.Key_Return)


def choose(qtbot, choice, words):
    """Choose by the arrow keys, and leave by Enter."""
    choice.setFocus()
    for _ in range(choice.count()):
        if choice.currentText().startswith(words):
            break
        qtbot.keyClick(choice, Qt.Key.Key_Down)
    else:
        for _ in range(choice.count()):
            if not choice.currentText().startswith(words):
                qtbot.keyClick(choice, Qt.Key.Key_Up)
    assert choice.currentText().startswith(words)
    qtbot.keyClick(choice, Qt.Key.Key_Return)


def test_a_plate_is_read_from_gap_to_face_by_enter_alone(qtbot, window, card):
    card.go_to_first_box()
    type_walking(qtbot, window, "0.4", "0.4", "0.4", "150")
    assert window.focusWidget() is card.choices["corner"]
    choose(qtbot, card.choices["corner"], "lower left")
    assert window.focusWidget() is card.choices["face"]
    press(qtbot, window, Qt.Key.Key_Return)
    assert window.focusWidget() is window.page(Stage.ALIGN).go_on

    readings = window.open_job.job.align.in_line
    assert [str(gap) for gap in readings.gap] == ["0.4 mm"] * 3
    assert str(readings.height) == "150 mm"
    # sin(phi) = H tan(psi) / W with tan(psi) = g / L, H 190 mm, W 200 mm: mathematics.md 5
    turn = math.degrees(math.asin(190 * (0.4 / 150) / 200))
    assert f"{turn:.2f}°" in card.verdict_words
    assert "twist" in card.verdict_words


def test_bars_are_read_with_their_sign_and_all_their_fields(qtbot, window, card):
    choose(qtbot, card.method, METHODS["bars"])
    assert window.focusWidget() is card.boxes["end_difference"].first_cell
    type_walking(qtbot, window, "-1.2", "-1.3", "-1.2", "400", "25 cm")

    readings = window.open_job.job.align.in_line
    assert isinstance(readings, BarReadings)
    assert [reading.value for reading in readings.end_difference] == [-1.2, -1.3, -1.2]
    assert readings.half_length.value == 400
    assert readings.height.value == 250
    assert "twist" in card.verdict_words
    assert window.focusWidget() is window.page(Stage.ALIGN).go_on


def test_widths_are_read_at_both_heights(qtbot, window, card):
    choose(qtbot, card.method, METHODS["spread"])
    type_walking(qtbot, window, "238.0", "238.0", "238.0", "241.0", "241.0", "241.0", "300")

    readings = window.open_job.job.align.in_line
    assert isinstance(readings, SpreadReadings)
    # kappa = atan((w_low - w_up) / L): mathematics.md 5
    kappa = math.degrees(math.atan(3 / 300))
    assert f"convergence {kappa:.2f}°, wider going down" in card.verdict_words


def test_another_method_brings_its_own_boxes_and_keeps_what_was_read(qtbot, window, card):
    card.go_to_first_box()
    type_walking(qtbot, window, "0.4", "0.5", "0.4", "150")

    choose(qtbot, card.method, METHODS["bars"])

    assert set(card.boxes) == {"end_difference", "half_length", "height"}
    assert "3 readings kept" in card.method.itemText(0)
    assert all(not cell.text() for box in card.boxes.values() for cell in box.cells)
    kept = window.open_job.job.align.in_line_others
    assert [str(gap) for gap in kept[0].gap] == ["0.4 mm", "0.5 mm", "0.4 mm"]

    choose(qtbot, card.method, METHODS["plate"])
    assert [cell.text() for cell in card.boxes["gap"].cells[:3]] == ["0.4", "0.5", "0.4"]
    assert str(window.open_job.job.align.in_line.height) == "150 mm"


def test_a_method_chosen_by_mistake_is_one_undo_step(qtbot, window, card):
    card.go_to_first_box()
    type_walking(qtbot, window, "0.4", "", "150")
    before = window.open_job.job
    steps = window.open_job.edits.count()

    choose(qtbot, card.method, METHODS["spread"])  # past the bars by arrow key
    assert window.open_job.edits.count() == steps + 1

    window.open_job.edits.undo()
    assert window.open_job.job == before
    assert card.boxes["gap"].first_cell.text() == "0.4"


def test_what_cannot_be_read_stays_with_its_method(qtbot, window, card):
    card.go_to_first_box()
    type_walking(qtbot, window, "0.4 furlongs")
    choose(qtbot, card.method, METHODS["bars"])
    choose(qtbot, card.method, METHODS["plate"])

    assert card.boxes["gap"].first_cell.text() == "0.4 furlongs"
    assert "is not a unit known here" in card.boxes["gap"].trouble


@pytest.mark.parametrize(
    ("method", "field", "typed", "words"),
    [
        pytest.param("plate", "gap", "nan", "does not begin with a number", id="plate-nan"),
        pytest.param("plate", "gap", "1000000000 mm", "is more than", id="plate-too-long"),
        pytest.param("plate", "gap", "3 N·m", "is a torque where", id="plate-torque"),
        pytest.param("plate", "gap", "-0.2", "is negative", id="plate-negative"),
        pytest.param("plate", "height", "inf", "does not begin", id="height-inf"),
        pytest.param("bars", "end_difference", "4 ml", "is a volume where", id="bars-volume"),
        pytest.param("bars", "half_length", "-400", "is negative", id="bars-negative"),
        pytest.param("spread", "upper", "1e9", "is not a unit", id="widths-exponent"),
        pytest.param("spread", "lower", "2 deg", "is an angle where", id="widths-angle"),
    ],
)
def test_garbage_is_explained_at_its_box_and_kept(qtbot, window, card, method, field, typed, words):
    choose(qtbot, card.method, METHODS[method])
    before = window.open_job.job
    card.boxes[field].first_cell.setFocus()
    type_walking(qtbot, window, typed)

    assert words in card.boxes[field].trouble
    assert card.boxes[field].first_cell.text() == typed
    assert window.focusWidget() is card.boxes[field].first_cell
    press(qtbot, window, Qt.Key.Key_Tab)
    assert card.boxes[field].first_cell.text() == typed
    assert window.open_job.job == before


def test_a_gap_longer_than_the_height_is_refused_at_the_gap_and_kept(qtbot, window, card):
    card.go_to_first_box()
    type_walking(qtbot, window, "200", "", "150")
    choose(qtbot, card.choices["corner"], "upper left")

    assert "not shorter than the height between the contact lines" in card.boxes["gap"].trouble
    assert str(window.open_job.job.align.in_line.gap[0]) == "200 mm"
    assert window.open_job.assessment.in_line.verdict.value == "missing"


def test_ends_further_apart_than_the_bars_are_long_are_refused_at_the_box(qtbot, window, card):
    choose(qtbot, card.method, METHODS["bars"])
    type_walking(qtbot, window, "-300", "", "200", "150")

    assert "the bars' half length" in card.boxes["end_difference"].trouble


def test_a_height_of_nothing_is_refused_at_its_box(qtbot, window, card):
    card.go_to_first_box()
    type_walking(qtbot, window, "0.4", "", "0")

    assert "without it nothing follows" in card.boxes["height"].trouble


def test_one_width_alone_says_which_is_missing(qtbot, window, card):
    choose(qtbot, card.method, METHODS["spread"])
    type_walking(qtbot, window, "238", "")
    card.boxes["height"].first_cell.setFocus()
    type_walking(qtbot, window, "300")

    assert "lower width is not measured" in card.verdict_words


def test_a_sheet_with_zero_leg_spacing_is_named_and_nothing_breaks(qtbot, window, card):
    job = window.open_job.job
    fork = job.sheet.fork.with_changes(leg_spacing=Length.typed("0 mm"))
    window.open_job.start(job.with_changes(sheet=job.sheet.with_changes(fork=fork)))
    card.go_to_first_box()
    type_walking(qtbot, window, "0.4", "", "150")
    choose(qtbot, card.choices["corner"], "upper left")

    assert "sheet's leg spacing: 0 mm is no length" in card.verdict_words
    assert card.boxes["gap"].first_cell.text() == "0.4"


def make_the_rest_true(qtbot, window):
    page = window.page(Stage.ALIGN)
    qtbot.keyClick(page.go_on, Qt.Key.Key_Return)
    for card, text in ((page.height_card, "5.0"), (page.square_card, "183.3")):
        for side in ("left", "right"):
            for cell in card.boxes[side].cells[:3]:
                cell.setFocus()
                type_walking(qtbot, window, text)


def test_the_sentence_tells_a_twist_from_a_convergence(qtbot, window, card):
    make_the_rest_true(qtbot, window)
    assert window.focusWidget() is card.boxes["gap"].first_cell
    type_walking(qtbot, window, "3", "3", "3", "150")
    choose(qtbot, card.choices["corner"], "lower left")
    assert window.sentence.text().startswith("Turn the top bracket to the left")
    assert "twist between the brackets, cured at the top one" in window.detail.text()

    choose(qtbot, card.method, METHODS["spread"])
    type_walking(qtbot, window, *["238"] * 3, *["235"] * 3, "300")
    assert window.sentence.text() == "The legs are not parallel: no turning cures that."
    assert "convergence and no twist" in window.detail.text()
    assert "bent tube or a bent bracket" in window.detail.text()


def test_widths_alone_never_call_the_legs_true(qtbot, window, card):
    make_the_rest_true(qtbot, window)
    choose(qtbot, card.method, METHODS["spread"])
    type_walking(qtbot, window, *["238"] * 6, "300")

    assert window.open_job.assessment.in_line.verdict.value == "unsettled"
    assert window.sentence.text() == "The legs are parallel; now check for a twist."
    assert "they cannot tell a twist" in window.detail.text()


def test_widths_that_are_out_are_not_forgotten_when_the_plate_is_within(qtbot, window, card):
    make_the_rest_true(qtbot, window)
    choose(qtbot, card.method, METHODS["spread"])
    type_walking(qtbot, window, *["238"] * 3, *["235"] * 3, "300")
    choose(qtbot, card.method, METHODS["plate"])
    type_walking(qtbot, window, "0", "0", "0", "150")

    found = window.open_job.assessment
    assert found.in_line.is_convergence
    assert found.correction(Preferred()).subject is Subject.IN_LINE
    assert "not parallel" in window.sentence.text()


def test_an_attempt_puts_by_every_method_and_asks_for_the_corner_again(qtbot, window, card):
    card.go_to_first_box()
    type_walking(qtbot, window, "0.4", "", "150")
    choose(qtbot, card.choices["corner"], "upper left")
    choose(qtbot, card.method, METHODS["spread"])
    type_walking(qtbot, window, "238", "")
    qtbot.keyClick(window.page(Stage.ALIGN).go_on, Qt.Key.Key_Return)

    job = window.open_job.job
    assert job.attempts[0].align.in_line.upper[0].value == 238
    assert job.attempts[0].align.in_line_others[0].gap[0].value == 0.4
    assert job.align.in_line.upper == ()
    plate = job.align.in_line_others[0]
    assert plate.gap == ()
    assert plate.corner is None
    assert str(plate.height) == "150 mm"


def test_kept_methods_are_saved_and_read_again(qtbot, window, card, tmp_path):
    card.go_to_first_box()
    type_walking(qtbot, window, "0.4", "", "150")
    choose(qtbot, card.method, METHODS["bars"])
    path = tmp_path / "kept.job.json"

    assert window.save_to(path)
    assert load_job(path)[0].align.in_line_others == window.open_job.job.align.in_line_others


def test_an_empty_job_takes_a_plate_reading(qtbot, window):
    window.show_job(Job())
    window.go_to(Stage.ALIGN)
    card = window.page(Stage.ALIGN).in_line_card
    card.go_to_first_box()
    type_walking(qtbot, window, "0.4", "")

    assert isinstance(window.open_job.job.align.in_line, PlateReadings)
    assert "height between the plate's contact lines" in card.verdict_words


def test_undo_of_the_method_while_it_is_being_typed_breaks_nothing(qtbot, window, card):
    choose(qtbot, card.method, METHODS["spread"])
    cell = card.boxes["upper"].first_cell
    qtbot.keyClicks(cell, "238")
    window.open_job.edits.undo()
    press(qtbot, window, Qt.Key.Key_Tab)

    job = window.open_job.job
    assert job.align.in_line.method == "plate"
    choose(qtbot, card.method, METHODS["spread"])
    assert card.boxes["upper"].first_cell.text() == "238"
