"""The Prove stage ticks checks, keeps notes, and signs off only what is finished."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest
from PySide6.QtCore import QPoint, Qt

from aligner.assessment.ticks import with_tick
from aligner.drawing.theme import Theme
from aligner.errors import AlignerError
from aligner.job import Check, Job, Prove
from aligner.job.edits_prove import with_check, with_check_note, with_sign_off
from aligner.job.edits_tighten import with_untick
from aligner.job.final_checks import checks_of, final_checks, open_checks
from aligner.sheet import Fastener, Sheet, Side
from aligner.sheet.quantities import Torque
from aligner.units.preferred import Preferred
from aligner.window.open_job import OpenJob
from aligner.window.prove.stage import ProveStage
from aligner.window.setting import Setting

_DAY = date(2026, 5, 4)
_AT = datetime(2026, 5, 4, 9, 30, tzinfo=UTC)
_TORQUE = Torque.typed("23 N·m")
_NAMES = [check.name for check in final_checks()]
_FASTENERS = (
    Fastener(name="left lower clamp", kind="lower_clamp", side=Side.LEFT, bolts=2),
    Fastener(name="right lower clamp", kind="lower_clamp", side=Side.RIGHT, bolts=2),
)


def _job() -> Job:
    return Job(sheet=Sheet(name="an invented bike", fasteners=_FASTENERS))


def _with_list_ticked(job: Job, reason: str = "") -> Job:
    for standing in OpenJob(job).assessment.tightening.steps:
        torque = _TORQUE if standing.step.torque_missing else None
        why = reason or standing.waits_for
        job = with_tick(job, standing.step.key, _AT, torque=torque, reason=why)
    return job


def _with_checks_done(job: Job) -> Job:
    for name in _NAMES:
        job = with_check(job, name, True)
    return job


@pytest.fixture
def open_job():
    return OpenJob(_job())


@pytest.fixture
def stage(qtbot, open_job):
    made = ProveStage(Setting(open_job, Theme(), Preferred(), lambda: _AT))
    qtbot.addWidget(made)
    open_job.changed.connect(made.refresh)
    made.show()
    return made


def _start(stage: ProveStage, open_job: OpenJob, job: Job) -> None:
    open_job.start(job)
    assert open_job.job == job


def test_brakes_come_first_and_every_check_says_how_and_where_it_is_from():
    assert _NAMES[0] == "Brake lever pumped and held"
    assert "before the first metre" in final_checks()[0].caution
    assert all(check.how and check.source for check in final_checks())
    assert len(set(_NAMES)) == len(_NAMES)


def test_checks_stand_in_the_lists_order_and_an_unknown_one_of_an_older_job_is_kept():
    job = Job(prove=Prove(checks=(Check(name="an older check", done=True), Check(name=_NAMES[2]))))
    assert [check.name for check in checks_of(job)] == [*_NAMES, "an older check"]
    assert open_checks(job) == tuple(_NAMES)


def test_a_check_that_is_not_on_the_list_is_refused_by_name():
    with pytest.raises(AlignerError, match="no such thing"):
        with_check(Job(), "no such thing", True)


def test_a_tick_keeps_the_note_and_a_note_keeps_the_tick():
    job = with_check_note(with_check(Job(), _NAMES[3], True), _NAMES[3], "  tight at left  ")
    kept = next(check for check in checks_of(job) if check.name == _NAMES[3])
    assert (kept.done, kept.note) == (True, "tight at left")


def test_nobody_cannot_sign():
    with pytest.raises(AlignerError, match="name"):
        with_sign_off(Job(), "  ", _DAY)


@pytest.mark.parametrize("key", [Qt.Key.Key_Space, Qt.Key.Key_Return], ids=["space", "enter"])
def test_a_key_ticks_a_check_and_undo_opens_it_again(qtbot, stage, open_job, key):
    row = stage.rows[_NAMES[0]]
    qtbot.keyClick(row.tick, key)
    assert _NAMES[0] not in open_checks(open_job.job)
    assert row.tick.isChecked()
    open_job.edits.undo()
    assert _NAMES[0] in open_checks(open_job.job)
    assert not row.tick.isChecked()


@pytest.mark.parametrize("key", [Qt.Key.Key_Space, Qt.Key.Key_Return], ids=["space", "enter"])
def test_the_key_that_ticks_goes_on_to_the_next_open_check_and_unticks_nothing(
    qtbot, stage, open_job, key
):
    open_job.edit("check", lambda job: with_check(job, _NAMES[1], True))
    stage.begin()
    for _ in _NAMES[1:]:
        qtbot.keyClick(stage.focusWidget(), key)
    assert not open_checks(open_job.job)
    assert stage.focusWidget() is stage.rows[_NAMES[-1]].tick  # the list is open: no name yet


def test_a_click_beside_the_words_of_a_check_ticks_it(qtbot, stage, open_job):
    tick = stage.rows[_NAMES[4]].tick
    tick.resize(480, 30)
    beside = QPoint(tick.width() - 8, tick.height() // 2)
    qtbot.mouseClick(tick, Qt.MouseButton.LeftButton, pos=beside)
    assert _NAMES[4] not in open_checks(open_job.job)


def test_a_note_is_shown_while_typed_and_kept_by_one_step_when_left(qtbot, stage, open_job):
    field = stage.rows[_NAMES[1]].note
    qtbot.keyClicks(field, "fluid at the upper mark ")
    stage.refresh()
    assert field.text() == "fluid at the upper mark "
    assert checks_of(open_job.job)[1].note == "fluid at the upper mark"
    assert open_job.edits.count() == 0
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert open_job.edits.count() == 1
    open_job.edits.undo()
    assert checks_of(open_job.job)[1].note == ""
    assert field.text() == ""


def test_a_tick_elsewhere_loses_nothing_that_is_being_typed(qtbot, stage, open_job):
    qtbot.keyClicks(stage.rows[_NAMES[1]].note, "worn")
    qtbot.keyClicks(stage.road_test, "round the block")
    qtbot.keyClick(stage.rows[_NAMES[0]].tick, Qt.Key.Key_Space)
    assert checks_of(open_job.job)[0].done
    assert checks_of(open_job.job)[1].note == "worn"
    assert open_job.job.prove.road_test == "round the block"


def test_what_was_typed_does_not_follow_into_another_job(qtbot, stage, open_job):
    qtbot.keyClicks(stage.rows[_NAMES[1]].note, "worn")
    qtbot.keyClicks(stage.road_test, "round the block")
    qtbot.keyClicks(stage.sign_off_card.name, "A. Person")
    _start(stage, open_job, Job(title="another"))
    assert stage.sign_off_card.name.text() == ""
    assert stage.rows[_NAMES[1]].note.text() == ""
    assert stage.road_test.toPlainText() == ""
    qtbot.keyClick(stage.rows[_NAMES[0]].tick, Qt.Key.Key_Space)
    assert checks_of(open_job.job)[1].note == ""


def test_sign_off_is_refused_in_words_while_checks_and_steps_are_open(qtbot, stage, open_job):
    qtbot.keyClicks(stage.sign_off_card.name, "A. Person")
    qtbot.keyClick(stage.sign_off_card.button, Qt.Key.Key_Return)
    assert open_job.job.prove.sign_off is None
    said = stage.sign_off_card.refusal.text()
    assert "brake lever pumped and held" in said
    assert f"0 of {len(open_job.assessment.tightening.steps)} steps" in said
    assert stage.sign_off_card.refusal.property("tone") == "attention"
    assert stage.sentence()[0] == "Finish the tightening list first."


def test_sign_off_is_refused_for_the_list_alone(qtbot, stage, open_job):
    _start(stage, open_job, _with_checks_done(_job()))
    qtbot.keyClicks(stage.sign_off_card.name, "A. Person")
    qtbot.keyClick(stage.sign_off_card.button, Qt.Key.Key_Space)
    assert open_job.job.prove.sign_off is None
    assert "the list is open" in stage.sign_off_card.refusal.text()
    assert "final checks" not in stage.sign_off_card.refusal.text()


def test_sign_off_is_refused_without_a_name(qtbot, stage, open_job):
    _start(stage, open_job, _with_list_ticked(_with_checks_done(_job())))
    qtbot.keyClick(stage.sign_off_card.button, Qt.Key.Key_Return)
    assert open_job.job.prove.sign_off is None
    assert "give the name" in stage.sign_off_card.refusal.text()


def test_a_finished_job_is_signed_and_opened_again_and_undone(qtbot, stage, open_job):
    _start(stage, open_job, _with_list_ticked(_with_checks_done(_job())))
    assert stage.sentence()[0] == "Ready to sign off."
    qtbot.keyClicks(stage.sign_off_card.name, "A. Person")
    qtbot.keyClick(stage.sign_off_card.button, Qt.Key.Key_Return)
    signed = open_job.job.prove.sign_off
    assert signed is not None
    assert (signed.name, signed.on) == ("A. Person", _DAY)
    assert stage.sign_off_card.who.text() == "Signed off by A. Person on 2026-05-04"
    assert stage.sign_off_card.who.isVisible()
    assert not stage.sign_off_card.button.isVisible()
    assert not stage.rows[_NAMES[0]].tick.isEnabled()
    assert stage.sentence()[0] == "Signed off."
    qtbot.keyClick(stage.sign_off_card.open_again, Qt.Key.Key_Space)
    assert open_job.job.prove.sign_off is None
    assert stage.sign_off_card.button.isVisible()
    assert stage.rows[_NAMES[0]].tick.isChecked()
    open_job.edits.undo()
    assert open_job.job.prove.sign_off == signed


def test_a_sign_off_says_when_it_no_longer_holds(qtbot, stage, open_job):
    _start(stage, open_job, with_sign_off(_with_checks_done(_job()), "A. Person", _DAY))
    assert "no longer holds" in stage.sign_off_card.refusal.text()
    assert stage.sign_off_card.refusal.isVisible()


def test_the_first_sentence_says_that_a_sign_off_no_longer_holds(qtbot, stage, open_job):
    job = with_sign_off(_with_checks_done(_with_list_ticked(_job())), "An Owner", _DAY)
    _start(stage, open_job, job)
    assert stage.sentence()[0] == "Signed off."
    slackened = job.log[-1].step
    open_job.edit("untick", lambda job: with_untick(job, slackened, _AT, "found slack"))
    sentence, detail = stage.sentence()
    assert sentence == "The sign-off does not hold any more."
    assert "steps)" in detail


def test_sign_off_is_refused_while_a_hold_point_stands_on_missing_readings(qtbot, stage, open_job):
    job = _with_checks_done(_with_list_ticked(_job()))
    log = tuple(
        entry.with_changes(reason="") if entry.step.startswith("hold/") else entry
        for entry in job.log
    )
    _start(stage, open_job, job.with_changes(log=log))
    qtbot.keyClicks(stage.sign_off_card.name, "An Owner")
    qtbot.keyClick(stage.sign_off_card.name, Qt.Key.Key_Return)
    assert open_job.job.prove.sign_off is None
    assert "its readings are missing" in stage.sign_off_card.refusal.text()


def test_the_next_check_is_named_once_the_list_is_ticked(qtbot, stage, open_job):
    _start(stage, open_job, _with_list_ticked(_job()))
    headline, detail = stage.sentence()
    assert headline == "Next check: brake lever pumped and held."
    assert detail == final_checks()[0].how


def test_the_summary_counts_the_steps_and_gives_reasons_out_of_order(qtbot, stage, open_job):
    def said() -> list[str]:
        place = stage.summary_place.itemAt(0).widget()
        return [child.accessibleName() for child in place.children() if child.isWidgetType()]

    assert "heights: not measured yet" in said()
    _start(stage, open_job, _with_list_ticked(_job(), reason="the bolt was in the way"))
    count = len(open_job.assessment.tightening.steps)
    assert count > 0
    assert f"tightening: {count} of {count} steps ticked" in said()
    assert any("the bolt was in the way" in each for each in said())
    assert f"{count} of {count} steps" in stage.list_ticked.text()


def test_the_keyboard_walks_from_the_first_tick_to_the_button(stage):
    order, widget = [], stage.page
    for _ in range(200):
        widget = widget.nextInFocusChain()
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus and stage.isAncestorOf(widget):
            order.append(widget)
        if widget is stage.page:
            break
    wanted = []
    for row in stage.rows.values():
        wanted += [row.tick, row.note]
    wanted += [stage.road_test, stage.sign_off_card.name, stage.sign_off_card.button]
    assert [each for each in order if each in wanted] == wanted
    assert all(each.accessibleName() for each in wanted)
