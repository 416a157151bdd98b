"""Pairs of points: named, measured out, known unlike, added, taken off, gone to by key."""

import pytest
from PySide6.QtCore import Qt

from aligner.assessment import Stage
from aligner.job import Job
from aligner.storage.document_file import load_job
from aligner.window.align.views import View


@pytest.fixture
def page(window):
    return window.page(Stage.ALIGN)


@pytest.fixture
def points(window, page):
    page.go_to_view(View.POINTS)
    return page.view_page(View.POINTS)


def press(qtbot, window, key, times=1):
    for _ in range(times):
        qtbot.keyClick(window.focusWidget(), key)


def type_walking(qtbot, window, *texts):
    for text in texts:
        cell = window.focusWidget()
        cell.selectAll()
        qtbot.keyClick(cell, Qt.Key.Key_Delete)
        qtbot.keyClicks(cell, text)
        qtbot.keyClick(cell, Qt.Key.Key_Return)


def type_in(qtbot, window, entry, text):
    entry.cell.setFocus()
    type_walking(qtbot, window, text)


def test_the_only_pair_opens_with_the_keyboard_on_its_name(window, points):
    fold = points.folds[0]
    assert fold.is_open
    assert window.focusWidget() is fold.entries["name"].cell
    assert fold.entries["bracket_reach"].cell.text() == "60"
    assert "turned 2.56 ± 0.17° to the right" in fold.about


def test_enter_walks_from_the_name_to_the_last_value(qtbot, window, points):
    fold = points.folds[0]
    type_walking(qtbot, window, "crash bar lugs")
    assert window.focusWidget() is fold.gauge
    press(qtbot, window, Qt.Key.Key_Return)
    type_walking(qtbot, window, "61", "86", "41", "31", "-0.4", "0.2")

    pair = window.open_job.job.align.squaring[0]
    assert pair.name == "crash bar lugs"
    assert [
        str(value)
        for value in (
            pair.bracket_reach,
            pair.bracket_half_width,
            pair.frame_setback,
            pair.frame_half_width,
            pair.frame_asymmetry,
            pair.frame_asymmetry_uncertainty,
        )
    ] == ["61 mm", "86 mm", "41 mm", "31 mm", "-0.4 mm", "0.2 mm"]
    assert window.open_job.edits.count() == 7
    assert window.focusWidget() is fold.head


def test_a_dimension_changes_the_turn_while_it_is_typed(qtbot, window, points):
    fold = points.folds[0]
    reach = fold.entries["bracket_reach"].cell
    reach.setFocus()
    reach.selectAll()
    qtbot.keyClicks(reach, "120")

    assert "turned 2.56" not in fold.about
    assert window.open_job.edits.count() == 0
    press(qtbot, window, Qt.Key.Key_Escape)
    assert "turned 2.56" in fold.about


def test_the_frames_own_difference_is_taken_off(qtbot, window, points):
    fold = points.folds[0]
    type_in(qtbot, window, fold.entries["frame_asymmetry"], "2.53")

    assert "turned 0.0" in fold.about


def test_a_difference_of_the_frame_that_counts_as_exact_is_told_at_the_box(qtbot, window, points):
    fold = points.folds[0]
    type_in(qtbot, window, fold.entries["frame_asymmetry"], "2.53")
    how_well = fold.entries["frame_asymmetry_uncertainty"]
    assert "counts as exact" in how_well.said
    assert how_well.cell.property("refused") != "true"
    type_in(qtbot, window, how_well, "0.3")
    assert "Standard uncertainty of that difference" in how_well.said


def test_without_dimensions_the_millimetres_are_given(qtbot, window, page, points):
    fold = points.folds[0]
    for field in ("bracket_reach", "bracket_half_width", "frame_setback", "frame_half_width"):
        type_in(qtbot, window, fold.entries[field], "")

    assert "left 2.5 mm more than right" in fold.about
    pair = window.open_job.job.align.squaring[0]
    assert pair.bracket_reach is None
    press(qtbot, window, Qt.Key.Key_Escape)
    assert window.open_job.assessment.squaring.pairs[0].turn_deg is None


@pytest.mark.parametrize(
    ("field", "typed", "words"),
    [
        pytest.param("bracket_reach", "nan", "does not begin with a number", id="nan"),
        pytest.param("bracket_half_width", "-85", "is negative", id="negative-width"),
        pytest.param("frame_setback", "4 N·m", "is a torque where", id="torque"),
        pytest.param("frame_half_width", "1000000000", "is more than", id="too-long"),
        pytest.param("frame_asymmetry", "left", "does not begin with a number", id="a-word"),
    ],
)
def test_a_dimension_that_cannot_be_read_is_explained_at_its_box(
    qtbot, window, points, field, typed, words
):
    before = window.open_job.job
    entry = points.folds[0].entries[field]
    type_in(qtbot, window, entry, typed)
    assert words in entry.said
    assert window.focusWidget() is entry.cell

    press(qtbot, window, Qt.Key.Key_Tab)
    assert entry.cell.text() == typed
    assert window.open_job.job == before


@pytest.mark.parametrize(
    ("field", "typed", "words"),
    [
        pytest.param("frame_setback", "400", "longer than the", id="setback-too-long"),
        pytest.param("frame_asymmetry", "5 m", "as long as the distances", id="asymmetry"),
    ],
)
def test_a_dimension_that_cannot_be_right_is_refused_at_its_box_and_kept(
    qtbot, window, points, field, typed, words
):
    entry = points.folds[0].entries[field]
    type_in(qtbot, window, entry, typed)

    assert words in entry.said
    assert entry.cell.property("refused") == "true"
    assert getattr(window.open_job.job.align.squaring[0], field) is not None


def test_dimensions_without_a_lever_are_refused_before_anything_is_read(qtbot, window, page):
    window.show_job(Job())
    window.go_to(Stage.ALIGN)
    page.go_to_view(View.POINTS)
    points = page.view_page(View.POINTS)
    press(qtbot, window, Qt.Key.Key_Return)  # add a pair
    fold = points.folds[0]
    for field, text in (
        ("bracket_reach", "0"),
        ("bracket_half_width", "80"),
        ("frame_setback", "0"),
        ("frame_half_width", "30"),
    ):
        type_in(qtbot, window, fold.entries[field], text)

    assert "no turn changes these distances" in fold.entries["bracket_reach"].said


@pytest.mark.parametrize(
    ("name", "words"),
    [
        pytest.param("  ", "a pair needs a name", id="empty"),
        pytest.param("frame lugs", "another pair is called", id="taken"),
    ],
)
def test_a_name_that_will_not_do_is_refused_at_its_box(qtbot, window, points, name, words):
    points.add_pair.setFocus()
    press(qtbot, window, Qt.Key.Key_Return)
    entry = points.folds[1].entries["name"]
    assert window.focusWidget() is entry.cell
    type_walking(qtbot, window, name)

    assert words.lower() in entry.said.lower()
    assert window.open_job.job.align.squaring[1].name == "pair 2"


def test_a_pair_is_added_gone_to_and_taken_off_by_key(qtbot, window, page, points):
    points.add_pair.setFocus()
    press(qtbot, window, Qt.Key.Key_Return)
    points.add_pair.setFocus()
    press(qtbot, window, Qt.Key.Key_Return)
    names = [pair.name for pair in window.open_job.job.align.squaring]
    assert names == ["frame lugs", "pair 2", "pair 3"]
    press(qtbot, window, Qt.Key.Key_Escape)

    choice = page.square_card.pair_choice
    choice.setFocus()
    press(qtbot, window, Qt.Key.Key_End)
    press(qtbot, window, Qt.Key.Key_Return)
    assert page.square_card.place == 2
    assert window.focusWidget() is page.square_card.boxes["left"].first_cell
    type_walking(qtbot, window, "150.1")
    assert str(window.open_job.job.align.squaring[2].left[0]) == "150.1 mm"

    page.go_to_view(View.POINTS)
    last = points.folds[2]
    assert last.remove.text() == "Remove this pair and its reading"
    last.set_open(True)
    last.remove.setFocus()
    press(qtbot, window, Qt.Key.Key_Return)
    assert len(points.folds) == 2
    window.open_job.edits.undo()
    assert str(window.open_job.job.align.squaring[2].left[0]) == "150.1 mm"
    assert len(points.folds) == 3


def test_enter_walks_through_every_pair_and_on(qtbot, window, page, points):
    points.add_pair.setFocus()
    press(qtbot, window, Qt.Key.Key_Return)
    press(qtbot, window, Qt.Key.Key_Escape)
    page.square_card.go_to_first_box()
    type_walking(qtbot, window, *["184.6"] * 3, *["182.0"] * 3)

    assert page.square_card.place == 1
    type_walking(qtbot, window, *["150.2"] * 3, *["148.1"] * 3)
    assert window.focusWidget() is page.in_line_card.boxes["gap"].first_cell
    assert [str(each) for each in window.open_job.job.align.squaring[1].right] == ["148.1 mm"] * 3


def test_what_cannot_be_read_stays_with_its_pair(qtbot, window, page, points):
    points.add_pair.setFocus()
    press(qtbot, window, Qt.Key.Key_Return)
    press(qtbot, window, Qt.Key.Key_Escape)
    first = page.square_card.boxes["left"].first_cell
    first.setFocus()
    type_walking(qtbot, window, "18x.6")
    page.square_card.pair_choice.setFocus()
    press(qtbot, window, Qt.Key.Key_End)
    press(qtbot, window, Qt.Key.Key_Return)

    assert page.square_card.boxes["left"].first_cell.text() == ""
    page.square_card.pair_choice.setFocus()
    press(qtbot, window, Qt.Key.Key_Home)
    press(qtbot, window, Qt.Key.Key_Return)
    assert page.square_card.boxes["left"].first_cell.text() == "18x.6"
    assert window.open_job.job.align.squaring[1].left == ()


def test_a_pair_set_out_by_key_is_saved_and_read_again(qtbot, window, points, tmp_path):
    type_in(qtbot, window, points.folds[0].entries["frame_asymmetry"], "-0,4")
    path = tmp_path / "points.job.json"

    assert window.save_to(path)
    assert str(load_job(path)[0].align.squaring[0].frame_asymmetry) == "-0.4 mm"


def test_where_more_readings_would_settle_it_there_are_cells_for_them(qtbot, window, page):
    box = page.square_card.boxes["left"]
    assert sum(cell.isVisible() for cell in box.cells) == 3
    page.square_card.go_to_first_box()
    type_walking(qtbot, window, "183.0", "183.4", "183.5", "182.6", "183.0", "182.7")

    advice = window.open_job.assessment.squaring.advice
    assert advice is not None
    assert advice.readings_needed > 3
    assert sum(cell.isVisible() for cell in box.cells) == min(advice.readings_needed, 6)


def test_a_dimension_that_could_not_be_read_does_not_follow_into_another_job(qtbot, window, points):
    entry = points.folds[0].entries["bracket_reach"]
    type_in(qtbot, window, entry, "sixty")
    other = window.open_job.job.with_changes(title="other")
    window.open_job.start(other)

    assert entry.cell.text() == "60"
    assert "does not begin" not in entry.said


def test_undo_while_a_new_pair_is_being_typed_breaks_nothing(qtbot, window, page, points):
    points.add_pair.setFocus()
    press(qtbot, window, Qt.Key.Key_Return)
    reach = points.folds[1].entries["bracket_reach"].cell
    reach.setFocus()
    qtbot.keyClicks(reach, "12")
    window.open_job.edits.undo()
    press(qtbot, window, Qt.Key.Key_Tab)

    assert len(points.folds) == 1
    assert str(window.open_job.job.align.squaring[0].bracket_reach) == "60 mm"
