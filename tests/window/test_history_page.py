"""The list of all jobs, driven by keys over a folder of real files."""

import shutil

import pytest
from PySide6.QtCore import Qt

from aligner.data_files import demo
from aligner.drawing.theme import Appearance, theme_for
from aligner.job import LogEntry
from aligner.storage.document_file import load_job, save_job
from aligner.window.history.page import HistoryPage
from tests.window.conftest import Clock


@pytest.fixture
def folder(tmp_path):
    """Two jobs on one bike, one on another, and a file that is damaged."""
    job = load_job(demo("fellside-true.job.json"))[0]
    clock = Clock()
    other = job.with_changes(title="bearings", sheet=job.sheet.with_changes(name="Garth 250"))
    for name, each in (("a", job), ("b", with_tick_of_first(job, clock)), ("c", other)):
        save_job(each, tmp_path / f"{name}.job.json")
    (tmp_path / "d.job.json").write_text("{", encoding="utf-8")
    return tmp_path


def with_tick_of_first(job, clock):
    return job.with_changes(title="second refit", log=(LogEntry(step="bench", at=clock()),))


@pytest.fixture
def page(qtbot, folder):
    made = HistoryPage(theme_for(Appearance.LIGHT), folder)
    qtbot.addWidget(made)
    made.resize(1050, 560)
    made.show()
    with qtbot.waitSignal(made.read_all):
        made.begin()
    return made


def names(page):
    return sorted(row.path.name[0] for row in page.model.rows)


def test_every_file_is_a_row_and_a_damaged_one_says_so(page):
    assert names(page) == ["a", "b", "c", "d"]
    assert "damaged" in next(row.due for row in page.model.rows if row.path.name[0] == "d")
    assert page.sentence()[0] == "4 jobs."


def test_typing_narrows_the_list_and_enter_opens_the_first(qtbot, page, folder):
    qtbot.keyClicks(page.search, "fellside second")
    assert names(page) == ["b"]
    qtbot.keyClick(page.search, Qt.Key.Key_Return)
    assert page.table.hasFocus()
    with qtbot.waitSignal(page.open_wanted) as opened:
        qtbot.keyClick(page.table, Qt.Key.Key_Return)
    assert opened.args == [folder / "b.job.json"]


def test_the_chosen_job_stays_chosen_while_the_list_is_sorted_and_searched(qtbot, page):
    page.table.selectRow(0)
    path = page.chosen.path
    page.table.horizontalHeader().setSortIndicator(1, Qt.SortOrder.AscendingOrder)
    assert [row.title for row in page.model.rows] == sorted(row.title for row in page.model.rows)
    qtbot.keyClicks(page.search, page.chosen.bike[:3])
    assert page.chosen.path == path


def test_the_next_job_cannot_be_begun_from_a_damaged_file(qtbot, page):
    place = next(n for n, row in enumerate(page.model.rows) if row.path.name[0] == "d")
    page.table.selectRow(place)
    assert not page.next_button.isEnabled()
    qtbot.keyClicks(page.search, "garth")
    page.table.selectRow(0)
    with qtbot.waitSignal(page.next_wanted) as wanted:
        qtbot.mouseClick(page.next_button, Qt.MouseButton.LeftButton)
    assert wanted.args[0].name == "c.job.json"


def test_what_was_set_on_the_bike_is_charted_under_the_list(qtbot, page):
    qtbot.keyClicks(page.search, "second")
    page.table.selectRow(0)
    assert page.settings.isVisible()
    charts = [chart.accessibleName() for chart in page.settings.charts]
    assert any(name.startswith("left height: 2026-05-02: ") for name in charts)


def test_an_empty_folder_says_what_will_stand_here(qtbot, page, tmp_path):
    shutil.rmtree(tmp_path)
    with qtbot.waitSignal(page.read_all):
        page.read()
    assert page.sentence()[0] == "No jobs in this folder yet."
    assert not page.open_button.isEnabled()
