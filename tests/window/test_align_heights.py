"""The heights' policy, what was found before, and the ways round the Align page."""

import pytest
from PySide6.QtCore import Qt

from aligner.assessment import Stage
from aligner.geometry import Policy
from aligner.job import AsFound, Job
from aligner.sheet.quantities import SignedLength
from aligner.window.align.views import View


@pytest.fixture
def page(window):
    return window.page(Stage.ALIGN)


def press(qtbot, window, key, times=1, modifier=Qt.KeyboardModifier.NoModifier):
    for _ in range(times):
        qtbot.keyClick(window.focusWidget(), key, modifier)


def test_the_policy_is_chosen_by_arrow_keys_and_the_sentence_follows_at_once(qtbot, window, page):
    policy = page.height_card.policy
    assert policy.currentText() == "the left leg to the right one"
    policy.setFocus()
    press(qtbot, window, Qt.Key.Key_Down)
    assert window.sentence.text() == "Push the right leg up 1.6 mm."
    assert window.open_job.edits.count() == 0

    press(qtbot, window, Qt.Key.Key_Down)
    press(qtbot, window, Qt.Key.Key_Return)
    assert window.open_job.job.align.protrusion.policy is Policy.SHARE
    assert window.sentence.text().startswith("Let the left leg down 0.8 mm and push the right")
    assert window.open_job.edits.count() == 1

    window.open_job.edits.undo()
    assert policy.currentText() == "the left leg to the right one"
    assert window.sentence.text() == "Let the left leg down 1.6 mm."


def test_a_policy_that_makes_no_sense_is_shown_with_its_reason_and_passed_over(qtbot, window, page):
    policy = page.height_card.policy
    assert policy.itemText(0) == "both legs to the sheet's height: the sheet gives no height"
    policy.setFocus()
    press(qtbot, window, Qt.Key.Key_Up, times=5)
    press(qtbot, window, Qt.Key.Key_Return)

    # the target stands above the as-found mean in the list and is not to be had
    assert window.open_job.job.align.protrusion.policy is Policy.TO_AS_FOUND


def test_without_readings_as_found_that_policy_says_so(window, page):
    window.open_job.edit("none", lambda job: job.with_changes(as_found=AsFound()))

    assert "not read before stripping" in page.height_card.policy.itemText(1)


def test_a_target_on_the_sheet_opens_its_policy(qtbot, window, page):
    job = window.open_job.job
    limits = job.sheet.protrusion.with_changes(target=SignedLength.typed("5.5 mm"))
    window.open_job.start(job.with_changes(sheet=job.sheet.with_changes(protrusion=limits)))
    page.height_card.policy.setFocus()
    press(qtbot, window, Qt.Key.Key_Up, times=5)
    press(qtbot, window, Qt.Key.Key_Return)

    assert page.height_card.policy.currentText() == "both legs to the sheet's height, 5.5 mm"
    assert window.sentence.text().startswith("Let the left leg down 1.1 mm and push the right")


def test_the_heights_as_found_stand_beside_the_policy(window, page):
    shown = page.height_card.findChildren(type(window.sentence))
    said = [each.text().replace("\u00a0", " ") for each in shown]
    assert "as found: left 5.0 mm, right 5.0 mm" in said

    window.show_job(Job())
    assert not any("as found" in each.text() for each in shown)


def test_a_policy_on_a_job_without_readings_breaks_nothing(qtbot, window, page):
    window.show_job(Job())
    page.height_card.policy.setFocus()
    for key in (Qt.Key.Key_Up, Qt.Key.Key_Up, Qt.Key.Key_Up, Qt.Key.Key_Return):
        press(qtbot, window, key)

    assert window.open_job.job.align.protrusion.policy is Policy.LEFT_TO_RIGHT


def test_tab_walks_the_page_as_the_eye_goes_and_comes_to_the_main_button(qtbot, window, page):
    page.height_card.boxes["left"].first_cell.setFocus()
    seen = []
    for _ in range(30):
        seen.append(window.focusWidget())
        if window.focusWidget() is page.go_on:
            break
        press(qtbot, window, Qt.Key.Key_Tab)

    assert seen[-1] is page.go_on
    left, right = page.height_card.boxes["left"].cells, page.height_card.boxes["right"].cells
    assert seen[:7] == [*left, *right, page.height_card.policy]
    assert seen[13] is page.in_line_card.method
    press(qtbot, window, Qt.Key.Key_Backtab, times=len(seen) - 1)
    assert window.focusWidget() is left[0]

    press(qtbot, window, Qt.Key.Key_Backtab)
    assert not page.isAncestorOf(window.focusWidget())
    page.go_on.setFocus()
    press(qtbot, window, Qt.Key.Key_Tab)
    assert not page.isAncestorOf(window.focusWidget())


def test_cells_that_came_later_are_walked_where_they_stand(qtbot, window, page):
    box = page.height_card.boxes["left"]
    box.first_cell.setFocus()
    box.first_cell.selectAll()
    qtbot.keyClicks(box.first_cell, "9.6")
    shown = [cell for cell in box.cells if cell.isVisible()]
    assert len(shown) > 3
    press(qtbot, window, Qt.Key.Key_Tab, times=3)

    assert window.focusWidget() is shown[3]


@pytest.mark.parametrize("view", [View.POINTS, View.GAUGES], ids=lambda view: view.words)
def test_every_view_opens_from_its_button_by_enter_and_the_heights_stay(qtbot, window, page, view):
    page.view_row.button(View.READINGS).setFocus()
    for _ in range(len(View)):
        if window.focusWidget() is page.view_row.button(view):
            break
        press(qtbot, window, Qt.Key.Key_Right)
    press(qtbot, window, Qt.Key.Key_Return)

    assert page.view is view
    assert page.view_page(view).isVisible()
    assert page.height_card.isVisible()
    assert not page.square_card.isVisible()
    assert page.view_row.button(view).text().startswith("✓")

    page.height_card.boxes["left"].first_cell.setFocus()
    press(qtbot, window, Qt.Key.Key_Escape)
    assert page.square_card.isVisible()


def test_a_view_opens_by_its_letter_with_the_keyboard_in_it(qtbot, window, page):
    page.height_card.boxes["left"].first_cell.setFocus()
    press(qtbot, window, Qt.Key.Key_G, modifier=Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: page.view is View.GAUGES)

    assert window.focusWidget() is page.view_page(View.GAUGES).uses.choices[0]


def test_what_is_being_typed_is_kept_when_another_view_opens(qtbot, window, page):
    cell = page.square_card.boxes["left"].first_cell
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, "190")
    page.view_row.button(View.POINTS).setFocus()
    press(qtbot, window, Qt.Key.Key_Return)

    assert str(window.open_job.job.align.squaring[0].left[0]) == "190 mm"
    assert window.open_job.edits.count() == 1


def test_enter_after_the_heights_brings_the_readings_back(qtbot, window, page):
    page.open_view(View.GAUGES)
    page.height_card.boxes["right"].cells[2].setFocus()
    press(qtbot, window, Qt.Key.Key_Return)

    assert page.view is View.READINGS
    assert window.focusWidget() is page.square_card.boxes["left"].first_cell


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        pytest.param("nan", "does not begin with a number", id="nan"),
        pytest.param("1000000000 mm", "is more than", id="too-long"),
        pytest.param("-3", "is negative", id="negative"),
        pytest.param("20 N·m", "is a torque where", id="torque"),
    ],
)
def test_a_distance_that_cannot_be_read_is_explained_and_kept(qtbot, window, page, typed, words):
    before = window.open_job.job
    cell = page.square_card.boxes["right"].first_cell
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, typed)
    press(qtbot, window, Qt.Key.Key_Return)

    assert words in page.square_card.boxes["right"].trouble
    assert cell.text() == typed
    assert window.open_job.edits.count() == 0 or window.open_job.job != before
    press(qtbot, window, Qt.Key.Key_Escape)
    assert cell.text() == "182.0"


def test_a_distance_of_nothing_is_refused_at_its_box(qtbot, window, page):
    box = page.square_card.boxes["left"]
    for cell in box.cells:
        cell.setFocus()
        cell.selectAll()
        qtbot.keyClicks(cell, "0")
        press(qtbot, window, Qt.Key.Key_Return)

    assert "The left distance: 0 mm is no length" in box.trouble
    assert window.open_job.assessment.squaring.verdict.value == "missing"


def test_one_leg_alone_asks_for_the_other(qtbot, window, page):
    qtbot.keyClick(page.go_on, Qt.Key.Key_Return)
    cell = page.height_card.boxes["left"].first_cell
    qtbot.keyClicks(cell, "5.2")
    press(qtbot, window, Qt.Key.Key_Return)

    assert window.sentence.text() == "Now measure the right leg's height."


def test_what_could_not_be_read_does_not_follow_into_another_job(qtbot, window, page):
    for cell in (
        page.height_card.boxes["left"].first_cell,
        page.square_card.boxes["left"].first_cell,
        page.in_line_card.boxes["gap"].first_cell,
    ):
        cell.setFocus()
        cell.selectAll()
        qtbot.keyClicks(cell, "4.x")
        press(qtbot, window, Qt.Key.Key_Return)
    window.open_job.edits.setClean()
    window.show_job(Job())

    assert page.height_card.boxes["left"].trouble == ""
    cells = (*page.height_card.boxes["left"].cells, *page.in_line_card.boxes["gap"].cells)
    assert not any(cell.text() for cell in cells)
    assert window.open_job.job == Job()


def test_a_reading_mistyped_by_far_is_looked_for_rather_than_outvoted(qtbot, window, page):
    cell = page.height_card.boxes["left"].first_cell
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, ".5")  # among 6.7 and 6.6

    assert window.sentence.text() == (
        "The heights are not settled yet: look for a reading that is wrong."
    )
    assert window.detail.text().startswith("0.5 mm stands off from its fellows")
