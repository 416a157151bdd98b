"""What the tightening list has to say of the sheet: each question, its place and its words."""

from __future__ import annotations

import pytest

from aligner.assessment import Level, assess
from aligner.assessment.fasteners import fastener_notices
from aligner.job import Job
from aligner.sheet import Fastener, OrderRule, Sheet, Side, TorqueSpecification
from aligner.sheet.printed_torque import printed_torque
from aligner.sheet.quantities import Ratio
from tests.assessment.bench_jobs import fasteners, lengths, ticked_as_far_as, torque, true_job


def told(**fields) -> list[tuple[str, str, str]]:
    part = Fastener(**{"name": "left top clamp", "kind": "top_clamp", "side": Side.LEFT} | fields)
    return [(n.level.value, n.where, n.text) for n in fastener_notices(Sheet(fasteners=(part,)))]


def test_an_ordinary_fastener_has_nothing_to_say():
    found = told(thread="M8x1.25", strength_class="8.8", torque=torque("23 N·m"))
    assert found == []


def test_a_missing_torque_says_where_it_should_come_from():
    ((level, where, text),) = told()
    assert (level, where) == ("attention", "sheet.fasteners.left top clamp.torque")
    assert "maker's manual for this model and year" in text
    assert "never guessed" in text


def test_a_stem_nut_asks_for_seating_and_back_off_too():
    found = told(name="stem nut", kind="stem_nut", side=None, torque=torque())
    assert [where.rpartition(".")[2] for _, where, _ in found] == ["seating", "back_off"]


@pytest.mark.parametrize(
    ("typed", "unit"),
    [
        pytest.param("210 N·m", "lbf·in", id="lbf·in as N·m"),
        pytest.param("2.3 N·m", "kgf·m", id="kgf·m as N·m"),
        pytest.param("23 kgf·m", "N·m", id="N·m as kgf·m"),
    ],
)
def test_a_torque_far_out_names_the_unit_it_would_make_sense_in(typed, unit):
    ((level, where, text),) = told(
        thread="M8x1.25", strength_class="8.8", torque=printed_torque(typed)
    )
    assert (level, where) == ("attention", "sheet.fasteners.left top clamp.torque")
    assert typed in text
    assert unit in text.partition("is it ")[2]


def test_the_far_end_of_a_range_is_questioned():
    ((_, _, text),) = told(
        thread="M8", strength_class="8.8", torque=printed_torque("20 to 210 N·m")
    )
    assert "210 N·m" in text


def test_a_thread_that_cannot_be_read_is_a_note_with_what_would_be_right():
    ((level, where, text),) = told(thread="5/16 BSF", torque=torque())
    assert (level, where) == ("note", "sheet.fasteners.left top clamp.thread")
    assert "“5/16 BSF” is not a metric thread" in text
    assert "“M8x1.25”" in text


@pytest.mark.parametrize(
    ("printed", "level", "said"),
    [
        # 50 N·m is 36.9 lbf·ft, and stands in print beside 36:
        # common practice, no source.
        pytest.param("40 to 50 N·m (29 to 36 lbf·ft)", "note", "cut off", id="cut copy"),
        pytest.param("23 N·m (27 lbf·ft)", "attention", "misprinted", id="misprint"),
    ],
)
def test_two_printed_units_that_disagree_are_told(printed, level, said):
    ((found, where, text),) = told(torque=printed_torque(printed))
    assert (found, where) == (level, "sheet.fasteners.left top clamp.torque.also_printed")
    assert said in text


def test_two_printed_units_that_agree_say_nothing():
    assert told(torque=printed_torque("23 N·m (17 lbf·ft)")) == []
    assert told(torque=printed_torque("40 to 50 N·m (30 to 37 lbf·ft)")) == []


def test_a_sided_joint_without_a_side_and_a_middle_one_with_one():
    ((level, where, text),) = told(side=None, torque=torque())
    assert (level, where) == ("attention", "sheet.fasteners.left top clamp.side")
    assert "rider's left or right" in text
    ((level, _, _),) = told(name="axle", kind="axle", torque=torque())
    assert level == "note"


def job_with(*parts: Fastener, rules: tuple[OrderRule, ...] = ()) -> Job:
    return true_job((*fasteners(), *parts), rules=rules)


def test_an_unknown_kind_stops_the_list_and_names_the_kinds():
    found = assess(job_with(Fastener(name="clip", kind="clip_on", torque=torque()))).tightening
    assert found.steps == ()
    (notice,) = found.notices
    assert notice.where == "sheet.fasteners.clip"
    assert "unknown kind “clip_on”" in notice.text
    assert "lower_clamp" in notice.text


def test_every_fastener_that_stands_in_the_way_is_told_at_once():
    falling = (Ratio.typed("100 %"), Ratio.typed("50 %"))
    found = assess(
        job_with(
            Fastener(name="clip", kind="clip_on", torque=torque()),
            Fastener(name="brace", kind="fork_brace", torque=torque(), passes=falling),
        )
    ).tightening
    assert [n.where for n in found.notices] == ["sheet.fasteners.clip", "sheet.fasteners.brace"]


def test_rules_in_a_ring_are_named_with_their_reasons():
    rules = (
        OrderRule(first="left fork cap", then="right fork cap", because="The left is reached."),
        OrderRule(first="right fork cap", then="left fork cap", because="The right is reached."),
    )
    found = assess(job_with(rules=rules)).tightening
    assert found.steps == ()
    (notice,) = found.notices
    assert (notice.level, notice.where) == (Level.ATTENTION, "sheet.rules")
    assert "The left is reached" in notice.text
    assert "The right is reached" in notice.text


def test_a_rule_that_names_nothing_known_is_told():
    rules = (OrderRule(first="left forkcap", then="axle", because="Why."),)
    (notice,) = assess(job_with(rules=rules)).tightening.notices
    assert "“left forkcap” is not known" in notice.text


def test_a_default_rule_that_gave_way_is_a_note_with_both_reasons():
    rules = (OrderRule(first="top_clamp", then="fork_cap", because="The cap holds the bracket."),)
    found = assess(job_with(rules=rules)).tightening
    assert found.steps
    (notice,) = [n for n in found.notices if n.where == "sheet.rules"]
    assert notice.level is Level.NOTE
    assert "The cap holds the bracket" in notice.text
    assert "squeezes the tube" in notice.text


def test_a_torque_with_a_fraction_is_not_held_against_its_second_unit():
    also = printed_torque("1/2 kgf·m (5 N·m)")
    assert isinstance(also, TorqueSpecification)
    assert told(torque=also) == []


def test_a_hold_point_ticked_on_readings_that_are_out_is_told():
    """As in a document that was changed by another program."""
    job = ticked_as_far_as(true_job(), "stem_head_bolt/stem head bolt/pass 1")
    heights = job.align.protrusion.with_changes(left=lengths("7 mm", "7 mm"))
    job = job.with_changes(align=job.align.with_changes(protrusion=heights))
    (notice,) = [n for n in assess(job).tightening.notices if n.where == "log"]
    assert notice.text.startswith("“Measure both heights: protrusion equal” is ticked")
