"""A sheet is edited without losing a tick that still holds, or keeping one that does not."""

from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.assessment.opened_again import with_dependents_opened
from aligner.assessment.sheet_changes import opened_by_the_sheet
from aligner.assessment.tightening import plan_for
from aligner.errors import AlignerError
from aligner.job import Action, Job, LogEntry, ticked_steps
from aligner.job.edits_sheet import (
    torque_source,
    with_bike_name,
    with_fastener,
    with_fastener_on_other_side,
    with_new_fastener,
    with_new_rule,
    with_rule,
    with_source,
    with_torque,
    with_torque_source,
    with_value,
    without_fastener,
    without_rule,
)
from aligner.job.edits_sheet_ticks import is_step_of, with_sheet
from aligner.job.log import recheck_key
from aligner.job.wrenches import WrenchChoice
from aligner.sheet import Fastener, OrderRule, Sheet, Side
from aligner.sheet.patterns import composed
from aligner.sheet.printed_torque import printed_torque
from aligner.sheet.quantities import Length, Ratio

AT = datetime(2026, 5, 2, 9, 0, tzinfo=UTC)


def with_tick(job, step, at):
    """The job with a step ticked, whatever the list says of it."""
    return job.with_changes(log=(*job.log, LogEntry(step=step, at=at)))


@pytest.fixture
def job():
    """An invented bike with every torque given, and every step of its list ticked."""
    torque = printed_torque("23 N·m ± 10 %", "invented p. 3")
    sheet = composed({"lower_clamps": "two"})
    fasteners = tuple(
        each.with_changes(torque=torque, **({"seating": torque} if each.kind == "stem_nut" else {}))
        for each in sheet.fasteners
    )
    made = Job(sheet=sheet.with_changes(name="an invented bike", fasteners=fasteners))
    for step in plan_for(made.sheet, asks_for_in_line=False).steps:
        made = with_tick(made, step.key, AT)
    return made


def place_of(job, name):
    return [each.name for each in job.sheet.fasteners].index(name)


def opened(before, after):
    return set(ticked_steps(before.log)) - set(ticked_steps(after.log))


def steps_of(job, name):
    return {
        step.key for step in plan_for(job.sheet, asks_for_in_line=False).steps if step.joint == name
    }


@pytest.mark.parametrize(
    "changes",
    [
        pytest.param({"bolts": 3}, id="bolts"),
        pytest.param({"passes": (Ratio.typed("100 %"),)}, id="passes"),
        pytest.param({"torque": printed_torque("25 N·m")}, id="torque"),
        pytest.param({"torque": None}, id="no torque any more"),
        pytest.param({"torque": printed_torque("23 N·m ± 5 %")}, id="tolerance"),
    ],
)
def test_steps_done_by_something_else_are_open_again_and_the_log_says_why(job, changes):
    after = with_fastener(job, place_of(job, "left lower clamp"), AT, **changes)
    assert opened(job, after) == steps_of(job, "left lower clamp")
    assert after.log[-1].action is Action.OPENED_AGAIN
    assert after.log[-1].reason.startswith("the sheet was changed: the ")
    assert after.log[: len(job.log)] == job.log
    assert "ticked steps are open again" in opened_by_the_sheet(after)
    assert "of the left lower clamp" in opened_by_the_sheet(after)


@pytest.mark.parametrize(
    "changes",
    [
        pytest.param({"note": "minded"}, id="note"),
        pytest.param({"thread": "M8"}, id="thread"),
        pytest.param({"strength_class": "8.8"}, id="class"),
        pytest.param(
            {"torque": printed_torque("23 N·m ± 10 % (17 lbf·ft)", "invented p. 4")},
            id="the same torque, printed in two units",
        ),
        pytest.param({"torque": printed_torque("23 N·m ± 2.3 N·m")}, id="the same bounds"),
    ],
)
def test_ticks_stay_where_the_work_is_the_same(job, changes):
    after = with_fastener(job, place_of(job, "left lower clamp"), AT, **changes)
    assert after.log == job.log
    assert opened_by_the_sheet(after) == ""


def test_another_name_keeps_the_ticks_and_goes_into_rules_and_sources(job):
    rule = OrderRule(first="left lower clamp", then="fork_cap", because="An invented reason.")
    job = with_source(with_new_rule(job, rule), "fasteners.left lower clamp.torque", "p. 9")
    after = with_fastener(job, place_of(job, "left lower clamp"), AT, name="near clamp")
    keys = {step.key for step in plan_for(after.sheet, asks_for_in_line=False).steps}
    assert set(ticked_steps(after.log)) == keys
    assert after.sheet.rules[-1].first == "near clamp"
    assert after.sheet.sources == {"fasteners.near clamp.torque": "p. 9"}


def test_a_name_goes_into_the_key_of_a_step_done_once_more_after_it():
    rule = OrderRule(kind="again_after", first="stem", then="top_clamp", because="Invented.")
    job = Job(
        sheet=Sheet(
            fasteners=(
                Fastener(name="stem", kind="stem_head_bolt"),
                Fastener(name="left", kind="top_clamp", side=Side.LEFT),
            ),
            rules=(rule,),
        )
    )
    for step in plan_for(job.sheet, asks_for_in_line=False).steps:
        job = with_tick(job, step.key, AT)
    after = with_fastener(job, 0, AT, name="head bolt")
    keys = {step.key for step in plan_for(after.sheet, asks_for_in_line=False).steps}
    assert set(ticked_steps(after.log)) == keys


def test_a_fastener_taken_off_and_put_on_again_is_not_ticked(job):
    place = place_of(job, "left lower clamp")
    fastener = job.sheet.fasteners[place]
    steps = steps_of(job, "left lower clamp")
    without = without_fastener(job, place, AT)
    again = with_new_fastener(without, fastener)
    assert again.sheet.fasteners[place_of(again, "left lower clamp")] == fastener
    assert not steps & set(ticked_steps(again.log))


def test_a_fastener_goes_with_the_rules_that_name_it(job):
    named = OrderRule(first="left lower clamp", then="fork_cap", because="Invented.")
    other = OrderRule(first="top_clamp", then="fork_cap", because="Invented.")
    job = with_new_rule(with_new_rule(job, named), other)
    after = without_fastener(job, place_of(job, "left lower clamp"), AT)
    assert after.sheet.rules == (other,)


def test_a_copy_goes_to_the_other_side_with_all_that_is_on_it(job):
    job = without_fastener(job, place_of(job, "right fork cap"), AT)
    after = with_fastener_on_other_side(job, place_of(job, "left fork cap"))
    left, right = (
        after.sheet.fasteners[place_of(after, f"{side} fork cap")] for side in ("left", "right")
    )
    assert right == left.with_changes(name="right fork cap", side=Side.RIGHT)


@pytest.mark.parametrize(
    ("name", "understood"),
    [
        pytest.param("stem nut", "stands in the middle", id="no side"),
        pytest.param("left fork cap", "on the sheet already", id="both are there"),
    ],
)
def test_what_cannot_be_copied_says_why(job, name, understood):
    with pytest.raises(AlignerError, match=understood):
        with_fastener_on_other_side(job, place_of(job, name))


@pytest.mark.parametrize(
    ("name", "understood"),
    [
        pytest.param("  ", "without a name", id="none"),
        pytest.param("right lower clamp", "on the sheet already", id="another's"),
    ],
)
def test_a_name_that_cannot_be_is_refused(job, name, understood):
    with pytest.raises(AlignerError, match=understood):
        with_fastener(job, place_of(job, "left lower clamp"), AT, name=name)


def test_a_source_is_kept_while_its_torque_comes_and_goes(job):
    place = place_of(job, "left lower clamp")
    gone = with_torque(job, place, "torque", None, AT)
    assert torque_source(gone.sheet, gone.sheet.fasteners[place], "torque") == "invented p. 3"
    other = with_torque_source(gone, place, "torque", "invented p. 9", AT)
    back = with_torque(other, place, "torque", printed_torque("24 N·m"), AT)
    assert back.sheet.fasteners[place].torque.source == "invented p. 9"
    assert back.sheet.sources == {}


def test_values_and_sources_come_and_go(job):
    after = with_value(job, "fork.leg_spacing", Length.typed("190 mm"))
    after = with_source(after, "fork.leg_spacing", " measured ")
    assert after.sheet.fork.leg_spacing.value == 190
    assert after.sheet.sources == {"fork.leg_spacing": "measured"}
    after = with_source(with_value(after, "fork.leg_spacing", None), "fork.leg_spacing", "")
    assert after == job
    assert with_bike_name(job, " two  words ").sheet.name == "two words"


def test_rules_come_change_and_go(job):
    rule = OrderRule(first="top_clamp", then="fork_cap", because="Invented.")
    place = len(job.sheet.rules)
    after = with_rule(with_new_rule(job, rule), place, because="Another.")
    assert after.sheet.rules[place].because == "Another."
    assert without_rule(after, place).sheet == job.sheet


def test_another_sheet_opens_what_it_does_otherwise_and_keeps_the_rest(job):
    sheet = job.sheet.with_changes(
        fasteners=tuple(
            each.with_changes(torque=printed_torque("30 N·m")) if each.kind == "fork_cap" else each
            for each in job.sheet.fasteners
            if each.name != "stem pinch bolt"
        )
    )
    after = with_sheet(job, sheet, AT)
    names = ("left fork cap", "right fork cap", "stem pinch bolt")
    assert opened(job, after) == set().union(*(steps_of(job, name) for name in names))


@given(st.lists(st.text("ab/ ", min_size=1, max_size=6), min_size=1, max_size=5, unique=True))
def test_a_step_belongs_to_one_fastener_even_where_names_hold_strokes(names):
    fasteners = tuple(Fastener(name=name, kind="fork_cap") for name in names)
    for fastener in fasteners:
        owners = [
            each
            for each in fasteners
            if is_step_of(f"fork_cap/{fastener.name}/pass 1", each, fasteners)
        ]
        assert owners == [fastener]


def test_what_was_checked_again_on_the_road_follows_the_name_and_opens_with_the_torque(job):
    key = recheck_key("left lower clamp")
    prove = job.prove.with_changes(rechecks=(LogEntry(step=key, at=AT),))
    job = job.with_changes(prove=prove)
    place = place_of(job, "left lower clamp")
    renamed = with_fastener(job, place, AT, name="near clamp")
    assert set(ticked_steps(renamed.prove.rechecks)) == {recheck_key("near clamp")}
    changed = with_fastener(job, place, AT, torque=printed_torque("25 N·m"))
    assert not ticked_steps(changed.prove.rechecks)


def test_the_wrench_chosen_for_a_fastener_follows_its_name(job):
    job = job.with_changes(wrench_choices={"left lower clamp": WrenchChoice(wrench="long one")})
    after = with_fastener(job, place_of(job, "left lower clamp"), AT, name="near clamp")
    assert after.wrench_choices == {"near clamp": WrenchChoice(wrench="long one")}


def test_what_stands_on_an_opened_step_is_counted_with_it(job):
    after = with_fastener(
        job, place_of(job, "left lower clamp"), AT, torque=printed_torque("25 N·m")
    )
    all_of_them = with_dependents_opened(job, after, AT)
    count = len(opened(job, all_of_them))
    assert count > len(steps_of(job, "left lower clamp"))
    assert opened_by_the_sheet(all_of_them).startswith(f"{count} ticked steps are open again")
    done = with_tick(after, "fork_cap/left fork cap/pass 1", AT)
    assert opened_by_the_sheet(done) == opened_by_the_sheet(after)
