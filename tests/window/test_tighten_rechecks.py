"""The card of fasteners that are checked again on the road, by itself."""

import pytest
from PySide6.QtCore import Qt

from aligner.drawing.theme import Theme
from aligner.job import Job
from aligner.units.preferred import Preferred
from aligner.window.open_job import OpenJob
from aligner.window.prove.recheck_card import RecheckCard
from aligner.window.setting import Setting
from tests.window.conftest import Clock
from tests.window.tighten_jobs import never, ticked_until, true_job, without_torque

CLAMP = "recheck/left lower clamp"


@pytest.fixture
def card(qtbot):
    """Makes the card on a job."""

    def made(job):
        open_job = OpenJob(job)
        card = RecheckCard(Setting(open_job, Theme(), Preferred(), Clock()))
        qtbot.addWidget(card)
        open_job.changed.connect(lambda: card.show_job(open_job.job, open_job.assessment))
        card.show_job(open_job.job, open_job.assessment)
        card.resize(700, 900)
        card.show()
        return card, open_job

    return made


def type_value(qtbot, row, text):
    row.value.setFocus()
    row.value.selectAll()
    qtbot.keyClicks(row.value, text)
    qtbot.keyClick(row.value, Qt.Key.Key_Return)


def test_the_rows_are_what_the_sheet_asks_for_again(card):
    shown, open_job = card(ticked_until(true_job(), never))

    wanted = [each.name for each in open_job.job.sheet.fasteners if each.again_after]

    assert sorted(shown.rows) == sorted(f"recheck/{name}" for name in wanted)
    assert "0 of 7" in shown.words.text()


@pytest.mark.parametrize("key", [Qt.Key.Key_Space, Qt.Key.Key_Return])
def test_a_tick_keeps_value_wrench_and_time(qtbot, card, key):
    shown, open_job = card(true_job())

    qtbot.keyClick(shown.rows[CLAMP].tick, key)

    entry = open_job.job.prove.rechecks[-1]
    assert (entry.step, str(entry.torque), entry.wrench) == (CLAMP, "23.0 N·m", "small")
    assert shown.rows[CLAMP].tick.isChecked()
    assert "Checked 2026-05-02" in shown.rows[CLAMP].about.text()
    assert "1 of 7" in shown.words.text()


def test_a_value_typed_over_is_kept_and_one_far_out_asks_first(qtbot, card):
    shown, open_job = card(true_job())
    row = shown.rows[CLAMP]

    type_value(qtbot, row, "23 lbf ft")
    assert open_job.job.prove.rechecks == ()
    assert "Is it 23 N·m?" in row.words.text()

    type_value(qtbot, row, "22 N·m")
    assert str(open_job.job.prove.rechecks[-1].torque) == "22 N·m"


@pytest.mark.parametrize("typed", ["22 N·m", "abc"])
def test_a_value_seen_does_not_follow_into_another_job_on_the_same_bike(qtbot, card, typed):
    shown, open_job = card(true_job())
    row = shown.rows[CLAMP]
    row.value.setFocus()
    row.value.selectAll()
    qtbot.keyClicks(row.value, typed)
    open_job.start(true_job().with_changes(title="next year"))
    assert shown.rows[CLAMP].value.text() == "23.0 N·m"


@pytest.mark.parametrize("typed", ["abc", "23 lb"])
def test_what_cannot_be_read_stays_with_its_reason(qtbot, card, typed):
    shown, open_job = card(true_job())
    row = shown.rows[CLAMP]

    type_value(qtbot, row, typed)

    assert open_job.job.prove.rechecks == ()
    assert row.value.text() == typed
    assert row.words.isVisible()
    assert not row.tick.isChecked()


def test_unticking_keeps_both_entries_and_undo_gives_the_tick_back(qtbot, card):
    shown, open_job = card(true_job())
    row = shown.rows[CLAMP]
    qtbot.keyClick(row.tick, Qt.Key.Key_Space)
    qtbot.keyClick(row.tick, Qt.Key.Key_Space)

    assert len(open_job.job.prove.rechecks) == 2
    assert not row.tick.isChecked()
    open_job.edits.undo()
    assert row.tick.isChecked()


def test_a_missing_torque_is_not_ticked_without_a_value(qtbot, card):
    shown, open_job = card(without_torque(true_job(), "left lower clamp"))
    row = shown.rows[CLAMP]
    assert "missing" in row.about.text()

    qtbot.keyClick(row.tick, Qt.Key.Key_Space)
    assert open_job.job.prove.rechecks == ()

    type_value(qtbot, row, "23")
    assert str(open_job.job.prove.rechecks[-1].torque) == "23 N·m"


def test_a_sheet_that_asks_for_nothing_again_says_so(card):
    shown, _ = card(Job())
    assert shown.rows == {}
    assert "Bike stage" in shown.words.text()
