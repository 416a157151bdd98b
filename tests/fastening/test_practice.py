"""What a careful mechanic does between the bolts, sentence by sentence, off and on again.

Common practice, no source: caliper hung as it comes off; air out first and in last; lines that
tie the legs parted before they drop; what turns with its part cracked while something holds it.
"""

from __future__ import annotations

import re
from itertools import pairwise

import pytest
from hypothesis import given

from aligner.fastening.joints import Joint, joint_kinds
from aligner.fastening.planner import plan
from aligner.fastening.rules import Rule, default_rules
from aligner.fastening.steps import activities
from aligner.fastening.strip import strip
from tests.front_end_joints import any_joints, front_end

SIDES = ("left", "right")
AIR = [Joint(f"{side} air fitting", "air_manifold_fitting", side) for side in SIDES]
UNITS = [Joint(f"{side} anti-dive unit", "anti_dive_unit_bolt", side) for side in SIDES]
RODS = [Joint(f"{side} damper-rod bolt", "damper_rod_bolt", side) for side in SIDES]


def off(more=(), **given_) -> list[str]:
    return [step.key for step in strip([*front_end(), *more], **given_).steps]


def on(more=(), **given_) -> list[str]:
    return [step.key for step in plan([*front_end(), *more], **given_).steps]


def stand_in_this_order(keys: list[str], *wanted: str) -> bool:
    """Whether each of some keys, or beginnings of keys, stands wholly before the next."""
    spans = []
    for start in wanted:
        at = [place for place, key in enumerate(keys) if key.startswith(start)]
        assert at, f"{start} is not on the list"
        spans.append((at[0], at[-1]))
    return all(one[1] < other[0] for one, other in pairwise(spans))


def test_each_caliper_is_hung_in_the_same_breath_as_it_is_undone():
    calipers = [s for s in strip(front_end()).steps if s.joint_kind == "brake_caliper"]
    assert len(calipers) == 2
    for step in calipers:
        assert step.title.endswith("; hang it from a hook")
        assert "never carries the caliper" in step.caution
    assert stand_in_this_order(off(), "brake_caliper", "act/calipers_hung", "act/wheel_out")


def test_the_air_is_let_out_before_anything_of_the_legs_is_loosened():
    keys = off(AIR)
    assert keys[:2] == ["act/machine_supported", "act/air_let_out"]
    (step,) = [s for s in strip([*front_end(), *AIR]).steps if s.key == "act/air_let_out"]
    assert "before anything of the legs" in step.reason
    assert step.caution.startswith("Read the pressure first")


@pytest.mark.parametrize("later", ["axle_pinch", "fork_brace", "fork_cap", "top_clamp", "axle"])
def test_the_air_goes_first_even_where_the_sheet_brings_a_joint_of_the_legs_forward(later):
    rule = Rule("before", "brake_caliper", later, "So the manual.")
    keys = [step.key for step in strip([*front_end(), *AIR], [rule]).steps]
    assert stand_in_this_order(keys, "act/air_let_out", f"{later}/")


def test_the_kind_of_the_fork_lets_the_air_out_even_where_no_fitting_is_on_the_sheet():
    assert "act/air_let_out" in off(fork="air_assisted")
    assert "act/air_let_out" not in off(fork="damper_rod")
    assert on(fork="air_assisted")[-1] == "act/air_in"


def test_the_air_goes_in_last_at_the_pressure_of_the_manual():
    steps = plan([*front_end(), *AIR]).steps
    assert steps[-1].key == "act/air_in"
    assert "to the pressure the manual gives" in steps[-1].title
    assert "hand pump only" in steps[-1].caution
    assert not {"act/air_in", "act/air_line_joined"} & set(on())


def test_the_air_line_is_parted_before_a_leg_can_drop_and_joined_when_both_are_in():
    assert stand_in_this_order(off(AIR), "act/air_let_out", "act/air_line_parted", "lower_clamp/")
    assert stand_in_this_order(
        on(AIR), "act/legs_in", "hold/protrusion_again", "act/air_line_joined", "act/air_in"
    )


def test_a_fitting_in_the_leg_itself_stays_bench_work():
    assert stand_in_this_order(off(AIR), "act/legs_out", "act/legs_drained", "air_manifold_fitting")
    assert stand_in_this_order(on(AIR), "air_manifold_fitting", "act/legs_in")


def test_the_brake_line_of_an_anti_dive_unit_is_parted_and_capped_before_a_leg_can_drop():
    steps = strip([*front_end(), *UNITS]).steps
    assert stand_in_this_order(
        [step.key for step in steps],
        "act/calipers_hung",
        "act/anti_dive_lines_parted",
        "lower_clamp/",
        "act/legs_out",
        "act/legs_drained",
        "anti_dive_unit_bolt",
    )
    (step,) = [s for s in steps if s.key == "act/anti_dive_lines_parted"]
    assert "capped" in step.title
    assert "Brake fluid" in step.caution


def test_the_line_is_joined_with_new_rings_and_the_brake_bled_before_the_lever_is_trusted():
    steps = plan([*front_end(), *UNITS]).steps
    assert stand_in_this_order(
        [step.key for step in steps],
        "anti_dive_unit_bolt",
        "act/legs_in",
        "top_clamp/",
        "act/anti_dive_lines_joined",
        "brake_caliper/",
        "act/brake_bled",
        "act/lever_firm",
        "act/fork_pumped",
    )
    (step,) = [s for s in steps if s.key == "act/anti_dive_lines_joined"]
    assert "new sealing rings" in step.title
    assert "act/brake_bled" not in on()


def test_the_damper_rod_bolt_is_cracked_while_cap_and_spring_still_hold_the_rod():
    assert stand_in_this_order(
        off(RODS),
        "act/wheel_out",
        "damper_rod_bolt/left damper-rod bolt/cracked",
        "act/preload_lowered",
        "fork_cap/",
        "act/legs_out",
        "act/legs_drained",
        "damper_rod_bolt/left damper-rod bolt/loosen",
    )
    cracked = [s for s in strip(RODS).steps if s.key.endswith("/cracked")]
    assert [step.title for step in cracked] == [
        "Crack left damper-rod bolt, a quarter turn",
        "Crack right damper-rod bolt, a quarter turn",
    ]


@pytest.mark.parametrize("kind", ["axle", "axle_nut", "axle_in_clamp_caps"])
def test_the_axle_is_cracked_with_nothing_gripping_it_and_the_wheel_on_the_ground(kind):
    joints = [joint for joint in front_end() if joint.kind != "axle"]
    joints += [Joint("it", kind), Joint("left cap under it", "axle_clamp_cap", "left")]
    keys = [step.key for step in strip(joints).steps]
    order = ["axle_pinch/", f"{kind}/it/cracked", "act/front_lifted", f"{kind}/it/loosen"]
    assert stand_in_this_order(keys, "act/machine_supported", *order, "act/wheel_out")
    assert stand_in_this_order(keys, "axle_clamp_cap/", f"{kind}/it/cracked")


def test_the_stem_head_is_cracked_while_the_legs_still_hold_both_brackets():
    head = "stem_head_bolt/stem head bolt"
    assert stand_in_this_order(
        off(), "look/", "stem_pinch/", f"{head}/cracked", "top_clamp/", "act/legs_out", head + "/lo"
    )


def test_handlebars_on_the_tubes_are_tied_up_before_a_leg_can_drop():
    bar = Joint("left bar", "handlebar_clamp_between", "left")
    assert stand_in_this_order(off([bar]), "handlebar_clamp_b", "act/handlebars_held", "lower_cl")


def test_each_leg_is_drawn_as_its_clamp_lets_go():
    clamps = [s for s in strip(front_end()).steps if s.joint_kind == "lower_clamp"]
    assert len(clamps) == 2
    assert all(step.title.endswith("; draw its leg out") for step in clamps)


def test_no_reason_calls_the_stem_head_a_bolt_or_speaks_of_a_pinch_an_axle_may_not_have():
    """The joint at the very top is a bolt on one bike and a nut on another; so with the axle."""
    texts = [(rule.then, rule.because + rule.because_loosening) for rule in default_rules()]
    texts += [(one.activity, one.reason + one.caution) for one in activities().values()]
    texts += [
        (kind.kind, kind.reason + kind.reason_loosening + kind.caution + kind.caution_loosening)
        for kind in joint_kinds().values()
    ]
    for where, text in texts:
        assert not re.search(r"[Hh]ead (bolt|nut)", text), where
        assert "its pinch" not in text, where


@given(any_joints())
def test_what_is_cracked_is_undone_later_and_left_behind_by_that(joints):
    steps = strip(joints).steps
    keys = [step.key for step in steps]
    assert len(set(keys)) == len(keys)
    for place, step in enumerate(steps):
        if step.key.endswith("/cracked"):
            assert step.done_with == (step.key.removesuffix("cracked") + "loosen",)
        for later in step.done_with:
            assert keys.index(later) > place


@given(any_joints())
def test_each_reason_and_caution_is_told_in_sentences_and_titles_are_filled_in(joints):
    for step in strip(joints, fork="air_assisted").steps:
        assert "{" not in step.title + step.reason
        assert not step.caution or step.caution.endswith(".")
