"""The attempts card: every attempt in words under its chart, up to date while it is shown."""

from datetime import UTC, datetime

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QLabel

from aligner.assessment import assess
from aligner.data_files import demo
from aligner.drawing.theme import Appearance, theme_for
from aligner.job import Attempt, Job
from aligner.sheet.quantities import SignedLength
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred
from aligner.window.align.attempts_card import AttemptsCard

AT = datetime(2026, 5, 1, 9, 0, tzinfo=UTC)


def heights(job, left):
    typed = tuple(SignedLength.typed(f"{value} mm") for value in left)
    return job.align.with_changes(protrusion=job.align.protrusion.with_changes(left=typed))


@pytest.fixture
def job():
    made = load_job(demo("fellside-true.job.json"))[0]
    first = load_job(demo("fellside-left-leg-high.job.json"))[0].align
    kept = (first, heights(made, (4.6, 4.5, 4.6)))
    return made.with_changes(attempts=tuple(Attempt(closed=AT, align=each) for each in kept))


def shown(qtbot, job, show=None, size=(1000, 460)):
    card = AttemptsCard(theme_for(Appearance.LIGHT), show or Preferred())
    qtbot.addWidget(card)
    card.resize(*size)
    card.show()
    card.show_job(job, assess(job))
    return card


def lines(column):
    return [line.text() for line in column.lines if not line.isHidden()]


def test_each_attempt_stands_in_words_the_newest_first(qtbot, job):
    card = shown(qtbot, job)
    heights_column, square, in_line = card.columns
    assert lines(heights_column) == [
        "3, now: within, 0.0 ± 0.1 mm",
        "2: unsettled, right high 0.5 ± 0.1 mm",
        "1: out, left high 1.6 ± 0.1 mm",
    ]
    assert lines(square)[-1] == "1: out, turned right 2.56 ± 0.17°"
    assert lines(in_line) == [f"{place}: not measured" for place in ("3, now", "2", "1")]
    assert heights_column.allowed.text() == "± 0.5 mm allowed"


def test_a_screen_reader_hears_the_attempts_oldest_first(qtbot, job):
    card = shown(qtbot, job)
    chart = card.columns[0].chart
    assert chart.accessibleName() == "Difference of heights, mm, every attempt"
    assert chart.accessibleDescription() == (
        "1: out, left high 1.6 ± 0.1 mm. 2: unsettled, right high 0.5 ± 0.1 mm. "
        "3, now: within, 0.0 ± 0.1 mm"
    )


def test_pairs_that_disagree_are_said_beside_their_attempt(qtbot):
    job = load_job(demo("fellside-pairs-disagree.job.json"))[0]
    card = shown(qtbot, job)
    assert lines(card.columns[1])[0].endswith("\nthe pairs disagree")


def test_another_reading_is_shown_at_once(qtbot, job):
    card = shown(qtbot, job)
    changed = job.with_changes(align=heights(job, (7, 7, 7.1)))
    card.show_job(changed, assess(changed))
    assert lines(card.columns[0])[0] == "3, now: out, left high 2.0 ± 0.1 mm"
    fewer = changed.with_changes(attempts=())
    card.show_job(fewer, assess(fewer))
    assert lines(card.columns[0]) == ["1, now: out, left high 2.0 ± 0.1 mm"]


def test_in_inches_it_says_inches(qtbot, job):
    card = shown(qtbot, job, Preferred(length="in"))
    column = card.columns[0]
    assert column.title.text() == "Difference of heights, in"
    assert lines(column)[-1] == "1: out, left high 0.063 ± 0.005 in"


def test_an_empty_job_has_charts_without_marks(qtbot):
    card = shown(qtbot, Job())
    assert [lines(column) for column in card.columns] == [["1, now: not measured"]] * 3
    assert not card.grab().isNull()


@pytest.mark.parametrize("width", [480, 1000], ids=["folded", "side by side"])
def test_no_line_is_cut_off(qtbot, job, width):
    card = shown(qtbot, job, size=(width, 460))
    QApplication.processEvents()
    for line in card.findChildren(QLabel):
        if line.isVisible() and line.text() and not line.wordWrap():
            longest = max(line.text().split("\n"), key=len)
            assert line.width() >= line.fontMetrics().horizontalAdvance(longest) - 1, longest


def test_not_shown_nothing_is_worked_out(qtbot, job):
    card = AttemptsCard(theme_for(Appearance.LIGHT), Preferred())
    qtbot.addWidget(card)
    assessment = assess(job)
    card.show_job(job, assessment)
    assert "attempts" not in vars(assessment)
    card.show()
    assert "attempts" in vars(assessment)


def test_the_arrow_keys_scroll_what_does_not_fit(qtbot, job):
    card = shown(qtbot, job, size=(480, 300))
    QApplication.processEvents()
    card.begin()
    stop = card.stops()[0]
    assert stop.accessibleName() == "Attempts"
    before = card.columns[0].mapTo(card, QPoint(0, 0)).y()
    qtbot.keyClick(stop, Qt.Key.Key_Down)
    assert card.columns[0].mapTo(card, QPoint(0, 0)).y() < before
