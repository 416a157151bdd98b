"""The whole job by key presses: read, correct, read again, tick to the end, save, reopen."""

import pytest
from PySide6.QtCore import Qt

from aligner.assessment import Stage, StepState
from aligner.job import Job
from aligner.storage.document_file import load_job


def type_readings(qtbot, window, box, texts):
    """Type readings into the cells of a box, Enter after each, as a gauge would."""
    box.first_cell.setFocus()
    for cell, text in zip(box.cells, texts, strict=False):
        cell.selectAll()
        qtbot.keyClicks(cell, text)
        qtbot.keyClick(cell, Qt.Key.Key_Return)


def make_everything_true(qtbot, window):
    for side in ("left", "right"):
        type_readings(
            qtbot,
            window,
            window.page(Stage.ALIGN).height_card.boxes[side],
            ["5.0", "5,0", "5.0 mm"],
        )
    for side in ("left", "right"):
        box = window.page(Stage.ALIGN).square_card.boxes[side]
        type_readings(qtbot, window, box, ["183.3", "183.3", "183.3"])


def test_the_demo_says_what_to_do_first(window):
    assert window.sentence.text() == "Let the left leg down 1.6 mm."
    assert "1.6 ± 0.1 mm high" in window.page(Stage.ALIGN).height_card.accessibleDescription()


def test_the_sentence_follows_each_keystroke_before_the_field_is_left(qtbot, window):
    cell = window.page(Stage.ALIGN).height_card.boxes["left"].first_cell
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, "6.9")

    assert window.sentence.text() == "Let the left leg down 1.7 mm."
    assert window.open_job.edits.count() == 0

    qtbot.keyClick(cell, Qt.Key.Key_Return)
    assert window.open_job.edits.count() == 1
    assert window.open_job.job.align.protrusion.left[0].text == "6.9 mm"


def test_undo_gives_back_the_reading_and_the_sentence(qtbot, window):
    cell = window.page(Stage.ALIGN).height_card.boxes["left"].first_cell
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, "6.9")
    qtbot.keyClick(cell, Qt.Key.Key_Return)

    window.open_job.edits.undo()

    assert window.sentence.text() == "Let the left leg down 1.6 mm."
    assert cell.text() == "6.6"


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        ("abc", "does not begin with a number"),
        ("nan", "does not begin with a number"),
        ("5 Nm", "is a torque where a length belongs"),
        ("1000000000 mm", "is more than"),
        ("1,450", "can be read as"),
    ],
)
def test_what_cannot_be_read_is_explained_at_the_box_and_kept(qtbot, window, typed, words):
    box = window.page(Stage.ALIGN).height_card.boxes["left"]
    box.first_cell.setFocus()
    box.first_cell.selectAll()
    qtbot.keyClicks(box.first_cell, typed)
    qtbot.keyClick(box.first_cell, Qt.Key.Key_Return)

    assert box.first_cell.text() == typed
    assert words in box.first_cell.accessibleDescription()
    assert window.sentence.text().startswith("Let the left leg down")


def test_readings_typed_again_leave_nothing_to_correct(qtbot, window):
    qtbot.keyClick(window.page(Stage.ALIGN).go_on, Qt.Key.Key_Return)
    assert len(window.open_job.job.attempts) == 1
    assert window.sentence.text() == "Measure how far each tube stands up."

    make_everything_true(qtbot, window)

    assert window.sentence.text() == "Nothing left to correct."
    assert "Go on to Tighten" in window.page(Stage.ALIGN).go_on.text()


def test_a_hold_point_does_not_pass_while_its_readings_are_out(qtbot, window):
    window.go_to(Stage.TIGHTEN)
    for _ in range(20):
        qtbot.keyClick(window.page(Stage.TIGHTEN).list, Qt.Key.Key_Space)
        if window.page(Stage.TIGHTEN).reason.isVisible():
            break
    step = window.open_job.assessment.tightening.next_step.step

    assert step.kind == "hold"
    assert step.reads == "protrusion"


def test_a_later_step_is_ticked_only_with_a_reason_that_is_kept(qtbot, window):
    window.go_to(Stage.TIGHTEN)
    steps = window.open_job.assessment.tightening.steps
    top_clamp = next(s for s in steps if s.step.joint_kind == "top_clamp")
    window.page(Stage.TIGHTEN).list.setCurrentRow(top_clamp.number - 1)

    qtbot.keyClick(window.page(Stage.TIGHTEN).list, Qt.Key.Key_Space)
    qtbot.keyClick(window.page(Stage.TIGHTEN).reason, Qt.Key.Key_Return)
    assert window.open_job.job.log == ()

    qtbot.keyClicks(window.page(Stage.TIGHTEN).reason, "cap seized")
    qtbot.keyClick(window.page(Stage.TIGHTEN).reason, Qt.Key.Key_Return)
    assert window.open_job.job.log[0].reason == "cap seized"
    assert window.open_job.job.log[0].step == top_clamp.step.key


def test_the_whole_job_by_keyboard_saved_and_reopened(qtbot, window, tmp_path):
    qtbot.keyClick(window.page(Stage.ALIGN).go_on, Qt.Key.Key_Return)
    make_everything_true(qtbot, window)
    qtbot.keyClick(window.page(Stage.ALIGN).go_on, Qt.Key.Key_Return)
    assert window.sentence.text().startswith("Stem nut: seat the bearing")

    for _ in range(200):
        tightening = window.open_job.assessment.tightening
        if tightening.is_finished:
            break
        standing = tightening.next_step
        chosen = window.page(Stage.TIGHTEN).list.currentItem().text()
        assert standing.step.title in chosen  # the line lit is the step in hand
        if standing.waits_for:
            window.page(Stage.TIGHTEN).read_again.click()
            for side in ("left", "right"):
                box = window.page(Stage.ALIGN).height_card.boxes[side]
                type_readings(qtbot, window, box, ["5.0", "5.0", "5.0"])
            window.go_to(Stage.TIGHTEN)
        qtbot.keyClick(window.page(Stage.TIGHTEN).list, Qt.Key.Key_Space)

    assert window.open_job.assessment.tightening.is_finished
    assert not any(entry.reason for entry in window.open_job.job.log)
    order = [
        standing.step.joint_kind
        for standing in window.open_job.assessment.tightening.steps
        if standing.state is StepState.DONE
    ]
    last_cap = len(order) - 1 - order[::-1].index("fork_cap")
    assert last_cap < order.index("top_clamp")

    path = tmp_path / "done.job.json"
    assert window.save_to(path)
    assert not window.open_job.has_unsaved_edits
    assert load_job(path)[0] == window.open_job.job


def test_a_broken_file_is_refused_in_a_line_and_the_open_job_stays(window, tmp_path):
    broken = tmp_path / "broken.job.json"
    broken.write_text('{"document": "job", "version": 1, "titel": "x"}')
    before = window.open_job.job

    window.open_path(broken)

    assert "titel" in window.question.text
    assert window.open_job.job is before
    assert broken.read_text() == '{"document": "job", "version": 1, "titel": "x"}'


def test_closing_with_unsaved_edits_asks_in_the_window(qtbot, window):
    window.open_job.edit("title", lambda job: job.with_changes(title="other"))

    window.close()

    assert window.isVisible()
    assert "not saved" in window.question.text
    assert [b.text() for b in window.question.buttons] == ["Save first", "Discard them", "Stay"]


def test_cells_asked_for_once_go_again_when_they_are_not_wanted(qtbot, window):
    box = window.page(Stage.ALIGN).height_card.boxes["left"]
    box.first_cell.setFocus()
    box.first_cell.selectAll()
    qtbot.keyClicks(box.first_cell, "9.6")  # far from its fellows: more readings are asked for
    assert sum(cell.isVisible() for cell in box.cells) > 3

    qtbot.keyClick(box.first_cell, Qt.Key.Key_Escape)

    assert sum(cell.isVisible() for cell in box.cells) == 3


def test_an_attempt_without_a_reading_is_not_put_by(qtbot, window):
    qtbot.keyClick(window.page(Stage.ALIGN).go_on, Qt.Key.Key_Return)
    qtbot.keyClick(window.page(Stage.ALIGN).go_on, Qt.Key.Key_Return)

    assert len(window.open_job.job.attempts) == 1


def test_an_empty_job_offers_nothing_to_tick(window):
    window.show_job(Job())
    window.go_to(Stage.TIGHTEN)

    assert window.sentence.text() == "There is nothing to tighten."
    assert not window.page(Stage.TIGHTEN).done.isVisible()


@pytest.mark.parametrize("side", ["left", "right"])
def test_every_box_shows_its_mean_and_its_cells_whole(qtbot, window, side):
    for card in (window.page(Stage.ALIGN).height_card, window.page(Stage.ALIGN).square_card):
        box = card.boxes[side]
        for cell in box.cells:
            inside = cell.geometry()
            assert box.rect().contains(inside)
            wide = cell.fontMetrics().horizontalAdvance(cell.text())
            assert cell.contentsRect().width() > wide
        assert card.rect().contains(box.geometry())
