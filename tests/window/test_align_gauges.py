"""The job's gauges: put on the list, described, named for readings; the verdicts follow."""

import pytest
from PySide6.QtCore import Qt

from aligner.assessment import Stage
from aligner.job import Job
from aligner.job.known_gauges import known_gauges
from aligner.storage.document_file import load_job
from aligner.window.align.views import View


@pytest.fixture
def page(window):
    return window.page(Stage.ALIGN)


@pytest.fixture
def gauges(window, page):
    page.go_to_view(View.GAUGES)
    return page.view_page(View.GAUGES)


def press(qtbot, window, key, times=1):
    for _ in range(times):
        qtbot.keyClick(window.focusWidget(), key)


def type_in(qtbot, window, entry, text):
    entry.cell.setFocus()
    entry.cell.selectAll()
    qtbot.keyClicks(entry.cell, text)
    qtbot.keyClick(entry.cell, Qt.Key.Key_Return)


def add(qtbot, window, gauges, name):
    gauges.add_which.setFocus()
    for _ in range(gauges.add_which.count()):
        if gauges.add_which.currentText() == name:
            break
        press(qtbot, window, Qt.Key.Key_Down)
    press(qtbot, window, Qt.Key.Key_Return)
    assert window.focusWidget() is gauges.add_gauge
    press(qtbot, window, Qt.Key.Key_Return)


def test_the_uses_stand_first_with_their_verdicts(window, gauges):
    assert window.focusWidget() is gauges.uses.choices[0]
    assert [choice.currentText() for choice in gauges.uses.choices] == [
        "depth gauge",
        "caliper",
        "not named",
    ]
    assert "out: left 1.6 ± 0.1 mm high" in gauges.uses.words[0]
    assert "out: 2.56 ± 0.17° to the right" in gauges.uses.words[1]


def test_a_gauge_of_the_built_in_list_comes_with_its_values_source_and_how_to(
    qtbot, window, gauges
):
    add(qtbot, window, gauges, "feeler gauges")

    known = known_gauges()["feeler gauges"]
    added = window.open_job.job.gauges["feeler gauges"]
    assert added.limit_of_error == known.limit_of_error
    assert added.source == "common practice, no source"
    fold = gauges.folds["feeler gauges"]
    assert fold.is_open
    assert fold.how_to == known.how_to
    assert window.focusWidget() is fold.entries["name"].cell
    assert "feeler gauges" not in [
        gauges.add_which.itemText(place) for place in range(gauges.add_which.count())
    ]


def test_enter_walks_through_what_is_known_of_a_gauge(qtbot, window, gauges):
    add(qtbot, window, gauges, "another gauge")
    fold = gauges.folds["gauge 1"]
    for text in ("bore gauge", "0.01", "0.02", "0.015", "bench note"):
        cell = window.focusWidget()
        cell.selectAll()
        qtbot.keyClicks(cell, text)
        qtbot.keyClick(cell, Qt.Key.Key_Return)

    made = window.open_job.job.gauges["bore gauge"]
    values = (made.resolution, made.limit_of_error, made.repeatability)
    assert [str(value) for value in values] == ["0.01 mm", "0.02 mm", "0.015 mm"]
    assert made.source == "bench note"
    assert window.focusWidget() is fold.head
    assert gauges.folds["bore gauge"] is fold


def test_a_gauge_of_which_nothing_is_known_says_so_and_breaks_nothing(qtbot, window, gauges):
    add(qtbot, window, gauges, "another gauge")
    fold = gauges.folds["gauge 1"]
    assert "no gauge is exact" in fold.entries["resolution"].said

    uses = gauges.uses.choices[0]
    uses.setFocus()
    press(qtbot, window, Qt.Key.Key_End)
    press(qtbot, window, Qt.Key.Key_Return)
    assert window.open_job.job.align.protrusion.gauge == "gauge 1"
    assert any("no gauge is exact" in notice.text for notice in window.open_job.assessment.notices)

    type_in(qtbot, window, fold.entries["resolution"], "0.1")
    assert window.open_job.assessment.protrusion.difference.standard_uncertainty is not None


def test_a_coarser_gauge_shows_at_once_in_the_verdict(qtbot, window, gauges):
    fold = gauges.folds["depth gauge"]
    fold.set_open(True)
    cell = fold.entries["repeatability"].cell
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, "2")

    assert gauges.uses.words[0].startswith("unsettled")
    assert window.open_job.edits.count() == 0
    press(qtbot, window, Qt.Key.Key_Escape)
    assert gauges.uses.words[0].startswith("out")


def test_another_gauge_for_a_pair_is_tried_by_arrow_key_and_kept_by_enter(qtbot, window, gauges):
    add(qtbot, window, gauges, "tape")
    choice = gauges.uses.choices[1]
    choice.setFocus()
    press(qtbot, window, Qt.Key.Key_End)
    assert "± 0.17°" not in gauges.uses.words[1]
    steps = window.open_job.edits.count()
    press(qtbot, window, Qt.Key.Key_Return)

    assert window.open_job.job.align.squaring[0].gauge == "tape"
    assert window.open_job.edits.count() == steps + 1
    window.open_job.edits.undo()
    assert choice.currentText() == "caliper"


def test_the_gauge_in_line_is_named_before_anything_is_read(qtbot, window, gauges):
    gauges.uses.choices[2].setFocus()
    press(qtbot, window, Qt.Key.Key_End)
    press(qtbot, window, Qt.Key.Key_Return)

    assert window.open_job.job.align.in_line.gauge == "caliper"


def test_another_name_follows_wherever_the_gauge_was_used(qtbot, window, page, gauges):
    qtbot.keyClick(page.go_on, Qt.Key.Key_Return)
    page.go_to_view(View.GAUGES)
    fold = gauges.folds["depth gauge"]
    fold.set_open(True)
    type_in(qtbot, window, fold.entries["name"], "depth gauge, red")

    job = window.open_job.job
    assert list(job.gauges) == ["depth gauge, red", "caliper"]
    assert job.align.protrusion.gauge == "depth gauge, red"
    assert job.as_found.protrusion.gauge == "depth gauge, red"
    assert job.attempts[0].align.protrusion.gauge == "depth gauge, red"
    window.open_job.edits.undo()
    assert gauges.folds["depth gauge"] is fold


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        pytest.param("", "a gauge needs a name", id="empty"),
        pytest.param("caliper", "is on the list already", id="taken"),
    ],
)
def test_a_name_that_will_not_do_stays_with_its_reason(qtbot, window, gauges, typed, words):
    fold = gauges.folds["depth gauge"]
    fold.set_open(True)
    entry = fold.entries["name"]
    entry.cell.setFocus()
    entry.cell.selectAll()
    press(qtbot, window, Qt.Key.Key_Delete)
    qtbot.keyClicks(entry.cell, typed)
    press(qtbot, window, Qt.Key.Key_Return)

    assert words in entry.said.lower()
    assert "depth gauge" in window.open_job.job.gauges


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        pytest.param("nan", "does not begin with a number", id="nan"),
        pytest.param("-0.1", "is negative", id="negative"),
        pytest.param("0.1 N", "is a force where", id="force"),
    ],
)
def test_a_value_that_cannot_be_read_is_explained_and_kept(qtbot, window, gauges, typed, words):
    fold = gauges.folds["caliper"]
    fold.set_open(True)
    before = window.open_job.job
    type_in(qtbot, window, fold.entries["limit_of_error"], typed)
    press(qtbot, window, Qt.Key.Key_Tab)

    assert words in fold.entries["limit_of_error"].said
    assert fold.entries["limit_of_error"].cell.text() == typed
    assert window.open_job.job == before


def test_a_gauge_in_use_stays_and_says_for_what(qtbot, window, gauges):
    fold = gauges.folds["depth gauge"]
    assert not fold.remove.isEnabled()
    assert "the heights as found and the heights" in fold.used

    add(qtbot, window, gauges, "tape")
    tape = gauges.folds["tape"]
    tape.remove.setFocus()
    press(qtbot, window, Qt.Key.Key_Return)
    assert "tape" not in window.open_job.job.gauges
    window.open_job.edits.undo()
    assert "tape" in gauges.folds


def test_a_job_without_gauges_offers_the_whole_list(qtbot, window, page):
    window.show_job(Job())
    page.go_to_view(View.GAUGES)
    gauges = page.view_page(View.GAUGES)

    assert gauges.add_which.count() == len(known_gauges()) + 1
    assert gauges.folds == {}


def test_gauges_typed_in_are_saved_and_read_again(qtbot, window, gauges, tmp_path):
    add(qtbot, window, gauges, "steel rule")
    path = tmp_path / "gauges.job.json"

    assert window.save_to(path)
    assert load_job(path)[0].gauges == window.open_job.job.gauges
