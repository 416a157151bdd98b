"""The bench view by real keys: a gauge's readings, ticks, the hold point, and what is refused."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from aligner.assessment import Stage
from aligner.data_files import demo
from aligner.drawing.theme import Appearance, scale_to_fit, theme_for
from aligner.job import Job
from aligner.job.edits_align import with_attempt_closed
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred
from aligner.window.bench.view import BenchView
from aligner.window.language import speak_language
from aligner.window.open_job import OpenJob
from aligner.window.setting import Setting
from aligner.window.widgets.style_sheet import style_sheet
from tests.window.conftest import Clock
from tests.window.tighten_jobs import START, at_joint, at_kind, demo_job, ticked_until, true_job

ENTER, SPACE, ESCAPE = Qt.Key.Key_Return, Qt.Key.Key_Space, Qt.Key.Key_Escape

#: Least type that is read from three metres, in pixels of a window of 720: 14 mm of capital is
#: 16 minutes of arc (the least of ISO 9241-303, from memory); a screen half a metre wide.
LEAST = 47


@pytest.fixture
def bench(qtbot):
    """Makes a bench view on a job, shown and with the keyboard in it."""

    def make(job, stage, *, size=(1280, 720), scale=1.0, said=None):
        clock = Clock()
        open_job = OpenJob(job, now=clock)
        theme = theme_for(Appearance.LIGHT, scale)
        made = BenchView(Setting(open_job, theme, Preferred(), clock))
        made.setStyleSheet(style_sheet(theme))
        made.open_job = open_job
        qtbot.addWidget(made)
        made.resize(*size)
        with qtbot.waitActive(made):
            made.show()
            made.activateWindow()
        open_job.changed.connect(made.refresh)  # as the window does for the page it shows
        made.stage_wanted.connect(made.show_stage)
        made.show_stage(stage, said)
        return made

    return make


@pytest.fixture
def german(qapp):
    """German is spoken while the test runs."""
    speak_language("de")
    yield
    speak_language("en")


def keys(qtbot, *presses):
    """Send keys to whatever has the keyboard: a text key by key, or one key."""
    for press in presses:
        where = QApplication.focusWidget()
        assert where is not None, "nothing has the keyboard"
        if isinstance(press, str):
            for letter in press:
                qtbot.keyClicks(QApplication.focusWidget(), letter)
        else:
            qtbot.keyClick(where, press)


def gauge(qtbot, *readings):
    """A gauge that types its number and Enter."""
    for reading in readings:
        keys(qtbot, reading, ENTER)


def demo_of(name):
    return load_job(demo(f"{name}.job.json"))[0]


def emptied():
    return with_attempt_closed(demo_of("fellside-left-leg-high"), START)


def texts(readings):
    return [reading.text for reading in readings]


def test_a_gauge_walks_through_both_legs(qtbot, bench):
    view = bench(emptied(), Stage.ALIGN)
    assert view.align.name.text == "Left leg, reading 1 of 3"

    gauge(qtbot, "6.6", "6.7")
    assert view.align.name.text == "Left leg, reading 3 of 3"
    assert view.align.last.text == "Kept: left leg, 6.7 mm"

    gauge(qtbot, "6.6", "5.0", "5.0", "5.1")
    read = view.open_job.job.align.protrusion
    assert texts(read.left) == ["6.6 mm", "6.7 mm", "6.6 mm"]
    assert texts(read.right) == ["5.0 mm", "5.0 mm", "5.1 mm"]
    assert view.words.text == "Let the left leg down 1.6 mm."
    assert view.open_job.edits.count() == 6


def test_the_reading_is_shown_as_it_was_understood(qtbot, bench):
    view = bench(emptied(), Stage.ALIGN)
    keys(qtbot, "0.2 in")

    assert view.align.value.text == "0.2 in\n= 5.08 mm"  # an inch is 25.4 mm
    assert view.align.value.type_height >= LEAST
    assert view.align.name.type_height >= LEAST


def test_what_cannot_be_read_stays_and_is_explained(qtbot, bench):
    view = bench(emptied(), Stage.ALIGN)
    gauge(qtbot, "1,450")

    assert view.align.cell.text() == "1,450"
    assert "can be read as" in view.align.refusal.text
    assert view.open_job.edits.count() == 0

    keys(qtbot, ESCAPE)
    assert view.align.cell.text() == ""
    gauge(qtbot, "5.0")
    assert texts(view.open_job.job.align.protrusion.left) == ["5.0 mm"]


def test_undo_takes_a_reading_back_and_asks_for_it_again(qtbot, bench):
    view = bench(emptied(), Stage.ALIGN)
    gauge(qtbot, "6.6", "6.7")
    view.open_job.edits.undo()

    assert view.align.name.text == "Left leg, reading 2 of 3"
    assert view.align.last.text == "Kept: left leg, 6.6 mm"


def test_a_second_enter_of_a_gauge_does_nothing(qtbot, bench):
    view = bench(emptied(), Stage.ALIGN)
    gauge(qtbot, "6.6", "", "")

    assert texts(view.open_job.job.align.protrusion.left) == ["6.6 mm"]
    assert view.align.name.text == "Left leg, reading 2 of 3"


def test_enter_measures_again_where_nothing_is_asked_for(qtbot, bench):
    view = bench(demo_of("fellside-left-leg-high"), Stage.ALIGN)
    assert view.align.asked is None

    keys(qtbot, ENTER)

    assert len(view.open_job.job.attempts) == 1
    assert view.align.name.text == "Left leg, reading 1 of 3"
    assert view.align.cell.hasFocus()


def test_a_gauge_at_the_wrong_moment_measures_nothing_again(qtbot, bench):
    view = bench(demo_of("fellside-left-leg-high"), Stage.ALIGN)
    before = view.open_job.job

    gauge(qtbot, "5.02")

    assert view.open_job.job is before
    assert "nothing was kept" in view.align.refusal.text


def test_heights_within_lead_to_the_distances_and_on_to_tighten(qtbot, bench):
    job = demo_of("fellside-true")
    job = with_attempt_closed(job, START)
    view = bench(job, Stage.ALIGN)
    gauge(qtbot, *["5.0"] * 6)
    pairs = len(job.align.squaring)
    assert view.align.asked.subject.value == "squaring"

    for _ in range(6 * pairs):
        gauge(qtbot, "183.3")
    for pair in view.open_job.job.align.squaring:
        assert texts(pair.left) == texts(pair.right) == ["183.3 mm"] * 3
    assert view.words.text == "Nothing left to correct."

    keys(qtbot, ENTER)
    assert view.stage is Stage.TIGHTEN


@pytest.mark.parametrize("press", [SPACE, ENTER], ids=["space", "enter"])
def test_space_and_enter_tick_the_step_in_hand(qtbot, bench, press):
    view = bench(true_job(), Stage.TIGHTEN)
    first = view.open_job.assessment.tightening.next_step

    keys(qtbot, press)

    assert [entry.step for entry in view.open_job.job.log] == [first.step.key]
    assert view.open_job.job.log[0].torque.text == first.tool.setting_text
    assert view.words.text == f"{view.open_job.assessment.tightening.next_step.step.title}."
    assert view.step.panel.hasFocus()


def test_a_torque_typed_at_the_step_is_the_one_seen(qtbot, bench):
    view = bench(ticked_until(true_job(), at_joint("left lower clamp")), Stage.TIGHTEN)
    count = len(view.open_job.job.log)

    keys(qtbot, "11.4")
    assert view.step.seen.text == "Torque seen: 11.4 N·m"
    assert view.step.seen.type_height >= LEAST
    keys(qtbot, ENTER)

    assert len(view.open_job.job.log) == count + 1
    assert view.open_job.job.log[-1].torque.text == "11.4 N·m"
    assert view.step.panel.hasFocus()


def test_a_torque_far_out_is_asked_about_first(qtbot, bench):
    view = bench(ticked_until(true_job(), at_joint("left lower clamp")), Stage.TIGHTEN)
    count = len(view.open_job.job.log)

    gauge(qtbot, "99")
    assert "far over" in view.step.door.words.text()
    assert len(view.open_job.job.log) == count

    keys(qtbot, ENTER)
    assert len(view.open_job.job.log) == count
    qtbot.keyClicks(view.step.door.reason, "new bolts")
    keys(qtbot, ENTER)
    entry = view.open_job.job.log[-1]
    assert (entry.torque.text, entry.reason) == ("99 N·m", "new bolts")


def test_a_hold_point_wants_its_key_twice(qtbot, bench):
    view = bench(ticked_until(true_job(), at_kind("hold")), Stage.TIGHTEN)
    count = len(view.open_job.job.log)

    keys(qtbot, SPACE)
    assert len(view.open_job.job.log) == count
    assert "once more" in view.step.door.words.text()

    keys(qtbot, SPACE)
    assert len(view.open_job.job.log) == count + 1


def test_a_gauge_never_passes_a_hold_point(qtbot, bench):
    view = bench(ticked_until(true_job(), at_kind("hold")), Stage.TIGHTEN)
    before = view.open_job.job

    keys(qtbot, SPACE)
    gauge(qtbot, "5.02", "5.03")

    assert view.open_job.job is before
    assert "takes no reading" in view.step.door.words.text()


def test_a_hold_point_that_is_out_asks_for_a_reason(qtbot, bench):
    view = bench(ticked_until(demo_job(), lambda s: bool(s.waits_for)), Stage.TIGHTEN)
    count = len(view.open_job.job.log)

    keys(qtbot, SPACE, ENTER)
    assert len(view.open_job.job.log) == count
    keys(qtbot, "no more room", ENTER)

    assert view.open_job.job.log[-1].reason == "no more room"


def test_heights_to_read_again_go_back_to_align(qtbot, bench):
    reads = lambda s: s.step.reads == "protrusion" and bool(s.waits_for)  # noqa: E731
    view = bench(ticked_until(demo_job(), reads), Stage.TIGHTEN)

    view.step.door.read_again.setFocus()
    keys(qtbot, SPACE)

    assert view.stage is Stage.ALIGN
    assert view.align.name.text == "Left leg, reading 1 of 3"
    assert view.align.cell.hasFocus()


def test_escape_takes_a_question_back_before_it_leaves(qtbot, bench):
    view = bench(ticked_until(true_job(), at_kind("hold")), Stage.TIGHTEN)
    left = []
    view.left.connect(lambda: left.append(True))

    keys(qtbot, SPACE, ESCAPE)
    assert left == []
    assert view.step.door.words.text() == ""
    keys(qtbot, ESCAPE)
    assert left == [True]


@pytest.mark.parametrize("stage", list(Stage), ids=lambda stage: stage.value)
def test_escape_leaves_every_stage(qtbot, bench, stage):
    view = bench(demo_of("fellside-true"), stage, said=lambda: ("Do this.", "Like that."))
    with qtbot.waitSignal(view.left, timeout=1000):
        keys(qtbot, ESCAPE)


def test_the_other_stages_say_what_their_page_says(bench):
    view = bench(demo_of("fellside-true"), Stage.STRIP, said=lambda: ("Do this.", "Like that."))

    assert view.rest_words.text == "Do this."
    assert view.rest_detail.text == "Like that."
    assert view.rest_words.type_height >= LEAST


def test_a_finished_list_goes_on_to_prove(qtbot, bench):
    view = bench(ticked_until(true_job(), lambda s: False), Stage.TIGHTEN)
    assert view.words.text == "Everything is done up."

    keys(qtbot, ENTER)
    assert view.stage is Stage.PROVE


def test_an_empty_job_ticks_nothing(qtbot, bench):
    view = bench(Job(), Stage.TIGHTEN)
    keys(qtbot, ENTER, SPACE)

    assert view.words.text == "There is nothing to tighten."
    assert view.open_job.job.log == ()


@pytest.mark.parametrize(
    ("size", "scale"), [((1280, 720), 1.0), ((960, 540), 0.75)], ids=["1280", "960"]
)
def test_sentence_and_torque_are_read_from_three_metres_at_every_step(bench, size, scale):
    job = true_job()
    view = bench(job, Stage.TIGHTEN, size=size, scale=scale_to_fit(*size))
    least = LEAST * size[1] / 720 * 0.95  # hinting rounds to whole pixels
    for standing in view.open_job.assessment.tightening.steps:
        job = ticked_until(job, lambda s, key=standing.step.key: s.step.key == key)
        view.open_job.start(job)
        assert view.words.text == f"{standing.step.title}."
        assert view.words.type_height >= least, standing.step.title
        assert view.step.torque.type_height >= least, standing.step.title


def test_nothing_lies_over_anything_else(bench):
    view = bench(ticked_until(true_job(), at_joint("left lower clamp")), Stage.TIGHTEN)
    for page in (view, view.step, view.step.panel, view.step.door):
        shown = [child for child in page.children() if child.isWidgetType() and child.isVisible()]
        for place, one in enumerate(shown):
            assert page.rect().contains(one.geometry()), one.accessibleName()
            for other in shown[place + 1 :]:
                assert not one.geometry().intersects(other.geometry())


def test_another_job_takes_what_was_being_typed_away(qtbot, bench):
    view = bench(emptied(), Stage.ALIGN)
    keys(qtbot, "7.7")
    view.open_job.start(emptied())

    assert view.align.cell.text() == ""
    keys(qtbot, ENTER)
    assert view.open_job.job.align.protrusion.left == ()


@pytest.mark.parametrize("stage", [Stage.ALIGN, Stage.TIGHTEN, Stage.BIKE])
def test_the_largest_text_of_the_longest_words_needs_no_wider_window(bench, german, stage):
    view = bench(true_job(), stage, scale=2.0)
    assert view.minimumSizeHint().width() <= view.width() == 1280


def test_what_comes_next_is_said_once(bench):
    view = bench(true_job(), Stage.TIGHTEN)
    assert view.step.next.text == "Next: Stem nut: back off by 180°"
