from __future__ import annotations

import random
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.fastening.joints import Joint
from aligner.fastening.planner import plan
from aligner.fastening.precedence import RingOfRules
from aligner.fastening.rules import Rule, UnusableRule
from aligner.fastening.strip import strip
from tests.front_end_joints import any_joints, front_end

LOOSENING_ORDER = [
    "Machine supported upright, its front wheel still on the ground",
    "Undo fork brace, bolts 17 to 20",
    "Slacken axle pinch bolt, bolt 16",
    "Crack axle, wheel still on the ground",
    "Front wheel lifted clear of the ground",
    "Undo left caliper, bolts 12 and 13; hang it from a hook",
    "Undo right caliper, bolts 14 and 15; hang it from a hook",
    "A slip of wood between the pads of each hung caliper",
    "Undo axle",
    "Axle out, wheel out; spacers laid down in their order",
    "Slacken left handlebar clamp, bolt 9",
    "Slacken right handlebar clamp, bolt 10",
    "Handlebars aside, tied up level",
    "Measure and write down both heights as found",
    "Measure and write down both sides of the lower bracket as found",
    "Slacken stem pinch bolt",
    "Crack stem head bolt, a quarter turn",
    "Slacken left top clamp, bolt 7",
    "Slacken right top clamp, bolt 8",
    "Preload adjusters, where fitted, noted and wound to their lowest",
    "Crack left fork cap",
    "Crack right fork cap",
    "Slacken left lower clamp, bolts 1 and 2; draw its leg out",
    "Slacken right lower clamp, bolts 3 and 4; draw its leg out",
    "Legs stood upright, caps up, marked left and right",
    "Undo stem head bolt",
    "Top bracket up and off the stem",
    "Undo stem nut",
]


def order_of(found) -> list[str]:
    """The joints as they are undone; what is only cracked before is no undoing."""
    return [step.joint for step in found.steps if step.joint and step.key.endswith("/loosen")]


def test_the_loosening_order_sentence_by_sentence():
    assert [step.title for step in strip(front_end()).steps] == LOOSENING_ORDER


def test_reasons_are_said_for_loosening():
    steps = strip(front_end()).steps
    reasons = {step.joint: step.reason for step in steps if step.key.endswith("/loosen")}
    assert reasons["left fork cap"] == (
        "The cap is cracked with the top clamp already slack, because a squeezed thread galls; "
        "the lower clamp still holds the tube."
    )
    tightened = {step.reason for step in plan(front_end()).steps}
    assert tightened.isdisjoint(reasons.values())


def test_cautions_stand_where_the_danger_is():
    cautions = {step.key: step.caution for step in strip(front_end()).steps if step.caution}
    assert "press behind this cap" in cautions["fork_cap/left fork cap/loosen"]
    assert "never carries the caliper" in cautions["brake_caliper/left caliper/loosen"]
    assert "drops" in cautions["lower_clamp/left lower clamp/loosen"]
    assert "act/machine_supported" in cautions


def test_bench_work_comes_when_the_legs_are_out():
    steps = strip([*front_end(), Joint("left damper-rod bolt", "damper_rod_bolt", "left")]).steps
    keys = [step.key for step in steps]
    assert keys.index("damper_rod_bolt/left damper-rod bolt/loosen") > keys.index("act/legs_out")


def test_a_sheet_rule_is_turned_round():
    rule = Rule("before", "top_clamp", "fork_cap", "The cap is a bolt through the bracket.")
    found = strip(front_end(), [rule])
    order = order_of(found)
    assert order.index("right fork cap") < order.index("left top clamp")
    assert [one.rule.then for one in found.overridden if one.wholly] == ["top_clamp"]
    (clamp,) = [step for step in found.steps if step.joint == "left top clamp"]
    assert clamp.reason == (
        "Undone in the reverse of the order for tightening, which is “top_clamp” before “fork_cap”."
    )


def test_a_sheet_rule_can_bring_its_own_words_for_loosening():
    rule = Rule(
        "before", "axle", "fork_brace", "x", because_loosening="The brace hides the axle's lock."
    )
    steps = strip(front_end(), [rule]).steps
    (axle,) = [step for step in steps if step.key == "axle/axle/loosen"]
    assert axle.reason == "The brace hides the axle's lock."


def test_a_rule_that_names_an_act_of_loosening_is_followed_as_it_stands():
    rule = Rule("before", "handlebars_aside", "brake_caliper", "The hose is too short.")
    keys = [step.key for step in strip(front_end(), [rule]).steps]
    assert keys.index("act/handlebars_aside") < keys.index("brake_caliper/left caliper/loosen")
    assert plan(front_end(), [rule]).steps == plan(front_end()).steps


def test_what_the_plan_refuses_is_refused_here_too():
    with pytest.raises(UnusableRule):
        strip(front_end(), [Rule("before", "nothing", "axle", "x")])
    with pytest.raises(RingOfRules):
        strip(
            front_end(),
            [
                Rule("before", "axle", "fork_brace", "x"),
                Rule("before", "fork_brace", "axle", "y"),
            ],
        )


@given(any_joints(), st.randoms())
def test_each_joint_is_undone_once_whatever_the_order_of_input(joints, rng):
    found = strip(joints)
    assert sorted(order_of(found)) == sorted(joint.name for joint in joints)
    assert strip(random.Random(rng.random()).sample(joints, len(joints))) == found
    assert found.steps[0].key == "act/machine_supported"


@given(any_joints())
def test_clamps_let_go_from_the_top_and_caps_are_cracked_between(joints):
    kinds = [step.joint_kind for step in strip(joints).steps]
    clamps = [kind for kind in kinds if kind in ("top_clamp", "fork_cap", "lower_clamp")]
    assert clamps == sorted(clamps, key=["top_clamp", "fork_cap", "lower_clamp"].index)


@given(any_joints())
def test_every_step_says_why_and_none_carries_a_torque(joints):
    for step in strip(joints).steps:
        assert step.kind in ("loosen", "act", "look")
        assert re.fullmatch(r"[A-Z].{20,}\.", step.reason), step.key
        assert step.target_nm is None
        assert not step.torque_missing


@given(any_joints())
def test_bolts_carry_the_same_numbers_as_in_the_tightening_plan(joints):
    tightened = {step.joint: step.bolts for step in plan(joints).steps if step.bolts}
    assert {step.joint: step.bolts for step in strip(joints).steps if step.bolts} == tightened


@given(any_joints())
def test_a_step_has_the_bolts_of_its_joint_and_one_without_a_joint_has_none(joints):
    counts = {joint.name: joint.bolts for joint in joints}
    for step in strip(joints).steps:
        assert step.bolt_count == (counts[step.joint] if step.joint else 0), step.key
