from __future__ import annotations

import random
import re
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from aligner.fastening.joints import Joint, UnusableJoint
from aligner.fastening.planner import Plan, bolt_numbers, plan
from aligner.fastening.precedence import RingOfRules
from aligner.fastening.rules import Rule, default_rules
from tests.front_end_joints import TORQUE, any_joints, front_end

DEFAULT_ORDER = [
    "Stem nut: seat the bearing, then swing lock to lock",
    "Stem nut: back off by 45°",
    "Stem nut: set the bearing",
    "Top bracket on, its bolts in by hand, its clamps slack",
    "Legs in to their height, lower clamps nipped up",
    "Measure both heights: protrusion equal",
    "Measure both sides: lower bracket square to the frame",
    "Check that the legs are in line",
    "Stem head bolt",
    "Stem pinch bolt",
    "Swing lock to lock: steering free, no play",
    "Left lower clamp, bolts 1 and 2",
    "Right lower clamp, bolts 3 and 4",
    "Preload adjusters, where fitted, at their lowest",
    "Left fork cap",
    "Right fork cap",
    "Left top clamp, bolt 7",
    "Right top clamp, bolt 8",
    "Measure both heights again",
    "Preload adjusters, where fitted, back to their setting, both alike",
    "Left handlebar clamp, bolt 9",
    "Right handlebar clamp, bolt 10",
    "Fork brace in place, its bolts finger-tight",
    "Wheel in, axle hand-tight",
    "Axle",
    "Left caliper, bolts 12 and 13",
    "Right caliper, bolts 14 and 15",
    "Pump the brake lever until it is firm",
    "Pump the fork three times, wheel held by the brake",
    "Axle pinch bolt, bolt 16",
    "Fork brace, bolts 17 to 20",
    "Lock to lock: hoses and cables run free",
]


def titles(found: Plan) -> list[str]:
    return list(dict.fromkeys(step.title for step in found.steps))


def test_the_default_order_sentence_by_sentence():
    assert titles(plan(front_end(), check_in_line=True)) == DEFAULT_ORDER


def test_the_legs_are_checked_in_line_only_when_asked():
    without = [title for title in DEFAULT_ORDER if title != "Check that the legs are in line"]
    assert titles(plan(front_end())) == without


def test_bench_work_is_done_before_the_legs_go_in():
    bench = ("damper_rod_bolt", "anti_dive_unit_bolt", "damping_unit_bolt")
    more = [Joint(kind, kind, "left") for kind in (*bench, "air_manifold_fitting")]
    keys = [step.key for step in plan([*front_end(), *more]).steps]
    legs_in = keys.index("act/legs_in")
    assert all(keys.index(f"{joint.kind}/{joint.name}/pass 1") < legs_in for joint in more)


@pytest.mark.parametrize(
    ("where", "waits"), [("between", True), ("below", True), ("above", False)], ids=str
)
def test_handlebars_under_the_top_bracket_go_on_with_the_legs(where, waits):
    joints = [*front_end(), Joint("left bar", f"handlebar_clamp_{where}", "left")]
    keys = [step.key for step in plan(joints).steps]
    assert ("act/handlebars_slid_on" in keys) is waits
    if waits:
        assert keys.index("act/handlebars_slid_on") + 1 == keys.index("act/legs_in")
    proved = keys.index("hold/protrusion_again")
    assert keys.index(f"handlebar_clamp_{where}/left bar/pass 1") > proved


def test_one_clamp_is_finished_in_its_passes_before_the_next_is_begun():
    clamp = [step for step in plan(front_end()).steps if step.joint_kind == "lower_clamp"]
    assert [(step.joint, step.pass_words, step.target_nm) for step in clamp] == [
        ("left lower clamp", "half", 11.5),
        ("left lower clamp", "full", 23.0),
        ("left lower clamp", "full, until neither moves", 23.0),
        ("right lower clamp", "half", 11.5),
        ("right lower clamp", "full", 23.0),
        ("right lower clamp", "full, until neither moves", 23.0),
    ]
    assert [(step.low_nm, step.high_nm) for step in clamp[:3]] == [
        (None, None),
        (21.0, 25.0),
        (21.0, 25.0),
    ]
    assert clamp[0].key == "lower_clamp/left lower clamp/pass 1"
    assert len({step.reason for step in clamp[:3]}) == 3


@pytest.mark.parametrize(
    ("bolts", "pattern", "turn"),
    [
        (1, "crosswise", (1,)),
        (3, "alternating", (1, 2, 3)),
        (4, "alternating", (1, 2, 3, 4)),
        (4, "crosswise", (1, 3, 2, 4)),
        (5, "crosswise", (1, 3, 5, 2, 4)),
        (6, "crosswise", (1, 4, 2, 5, 3, 6)),
    ],
)
def test_bolts_stand_in_the_turn_in_which_they_go(bolts, pattern, turn):
    joint = Joint("fork brace", "fork_brace", bolts=bolts, pattern=pattern)
    assert bolt_numbers([joint]) == {"fork brace": turn}


@given(any_joints())
def test_bolt_numbers_run_through_the_plan_without_a_gap(joints):
    numbers = [n for step in plan(joints).steps for n in sorted(step.bolts)]
    first_met = list(dict.fromkeys(numbers))
    assert first_met == list(range(1, len(first_met) + 1))


def test_only_a_joint_has_bolts_and_each_of_its_passes_as_many():
    steps = plan(front_end(), check_in_line=True).steps
    for step in steps:
        wanted = {joint.name: joint.bolts for joint in front_end()}.get(step.joint, 0)
        assert step.bolt_count == wanted, step.key


def test_a_missing_torque_stays_a_step_and_is_shown_as_missing():
    joints = [replace(joint, torque=None, seating=None) for joint in front_end()]
    found = plan(joints)
    assert titles(found) == titles(plan(front_end()))
    for step in found.steps:
        assert step.target_nm is None
        assert step.torque_missing is (step.kind in ("torque", "seat"))


def test_no_torque_is_taken_from_the_other_side():
    joints = [
        replace(joint, torque=None) if joint.name == "left top clamp" else joint
        for joint in front_end()
    ]
    missing = [step.joint for step in plan(joints).steps if step.torque_missing]
    assert missing == ["left top clamp"]


def test_the_stem_nut_is_seated_backed_off_by_its_turn_and_set():
    nut = Joint("stem nut", "stem_nut", torque=None, seating=TORQUE, back_off_deg=180.0)
    seat, turn, final = plan([nut]).steps[:3]
    assert (seat.kind, seat.target_nm, seat.torque_missing) == ("seat", 23.0, False)
    assert (turn.kind, turn.turn_deg, turn.target_nm) == ("turn", 180.0, None)
    assert (final.kind, final.target_nm, final.torque_missing) == ("torque", None, True)


def test_a_turn_that_is_not_known_is_left_to_the_manual():
    turn = plan([Joint("stem nut", "stem_nut")]).steps[1]
    assert turn.turn_deg is None
    assert turn.title == "Stem nut: back off by the turn the manual gives"


def test_steps_say_which_hold_points_they_rely_on():
    relies = {step.joint: step.relies_on for step in plan(front_end(), check_in_line=True).steps}
    assert relies["left lower clamp"] == ("hold/protrusion_equal", "hold/lower_bracket_square")
    assert relies["stem pinch bolt"] == ("hold/legs_in_line",)
    assert relies["left top clamp"] == ("hold/protrusion_equal", "hold/legs_in_line")
    assert relies["left handlebar clamp"] == ("hold/protrusion_again",)
    assert relies["axle"] == ()


def test_hold_points_read_what_the_alignment_measures():
    reads = {s.key: s.reads for s in plan(front_end(), check_in_line=True).steps if s.reads}
    assert reads == {
        "hold/protrusion_equal": "protrusion",
        "hold/lower_bracket_square": "squaring",
        "hold/legs_in_line": "in_line",
        "hold/protrusion_again": "protrusion",
    }


def test_what_is_checked_again_on_the_road_comes_nearest_first():
    joints = [
        replace(joint, recheck_km={"axle": 500.0, "left top clamp": 100.0}[joint.name])
        if joint.name in ("axle", "left top clamp")
        else joint
        for joint in front_end()
    ]
    found = plan(joints).rechecks
    assert [(one.joint, one.bolts, one.after_km, one.torque) for one in found] == [
        ("left top clamp", (7,), 100.0, TORQUE),
        ("axle", (11,), 500.0, TORQUE),
    ]


def test_two_joints_of_one_name_are_refused():
    with pytest.raises(UnusableJoint, match="stands there twice"):
        plan([Joint("axle", "axle"), Joint("axle", "axle_nut")])


def test_without_joints_there_is_nothing_to_do():
    assert plan([]) == Plan(())


@given(any_joints(), st.randoms())
def test_the_plan_does_not_depend_on_the_order_of_input(joints, rng):
    shuffled = random.Random(rng.random()).sample(joints, len(joints))
    assert plan(shuffled) == plan(joints)


@given(any_joints())
def test_no_top_clamp_comes_before_a_cap_and_no_cap_before_a_lower_clamp(joints):
    kinds = [step.joint_kind for step in plan(joints).steps]
    for earlier, later in (("fork_cap", "top_clamp"), ("lower_clamp", "fork_cap")):
        if earlier in kinds and later in kinds:
            last = len(kinds) - 1 - kinds[::-1].index(earlier)
            assert last < kinds.index(later)


@given(any_joints(), any_joints())
def test_keys_are_each_their_own_and_stay_when_joints_are_added(joints, more):
    more = [replace(joint, name=f"new {joint.name}") for joint in more]
    keys = [step.key for step in plan(joints).steps]
    all_keys = {step.key for step in plan([*joints, *more]).steps}
    assert len(set(keys)) == len(keys)
    assert set(keys) <= all_keys


@given(any_joints())
def test_every_step_says_why_it_stands_where_it_stands(joints):
    for step in plan(joints, check_in_line=True).steps:
        assert re.fullmatch(r"[A-Z].{20,}\.", step.reason), step.key
        assert step.source
        assert "{" not in step.title


@settings(max_examples=150)
@given(any_joints(), st.data())
def test_random_rules_that_run_in_no_ring_are_all_kept(joints, data):
    order = data.draw(st.permutations(joints))
    pairs = data.draw(
        st.lists(st.tuples(st.integers(0, 13), st.integers(0, 13)), min_size=1, max_size=20)
    )
    rules = [
        Rule("before", order[min(pair)].name, order[max(pair)].name, "So the manual.")
        for pair in pairs
        if pair[0] != pair[1] and max(pair) < len(order)
    ]

    found = plan(joints, rules)
    shuffled = plan(joints[::-1], rules[::-1])

    assert found == shuffled
    first = {step.joint: n for n, step in reversed(list(enumerate(found.steps)))}
    last = {step.joint: n for n, step in enumerate(found.steps)}
    for rule in rules:
        assert last[rule.first] < first[rule.then]
    given_way = {one.rule for one in found.overridden}
    by_kind: dict[str, list[int]] = {}
    for number, step in enumerate(found.steps):
        by_kind.setdefault(step.joint_kind or step.key.partition("/")[2], []).append(number)
    for rule in default_rules():
        if rule.when != "loosening" and rule not in given_way:
            before, after = by_kind.get(rule.first), by_kind.get(rule.then)
            if before and after:
                assert max(before) < min(after), rule.name


@given(any_joints(8), st.data())
def test_rules_in_a_ring_are_refused_by_exactly_these_names(joints, data):
    ring = data.draw(st.permutations(joints))
    if len(ring) < 2:
        return
    names = [joint.name for joint in ring]
    rules = [
        Rule("before", one, other, f"Because of {one}.")
        for one, other in zip(names, [*names[1:], names[0]], strict=True)
    ]
    with pytest.raises(RingOfRules) as refused:
        plan(joints, rules)
    assert set(refused.value.rules) == set(rules)


def test_the_fork_is_pumped_with_the_brake_on_before_anything_pinches_the_axle():
    keys = [step.key for step in plan(front_end()).steps]
    order = ["axle/axle/pass 1", "brake_caliper/left caliper/pass 1", "act/lever_firm"]
    order += ["act/fork_pumped", "axle_pinch/axle pinch bolt/pass 1"]
    assert [key for key in keys if key in order] == order


def test_a_fork_with_a_drum_brake_is_pumped_without_a_lever_to_make_firm():
    joints = [joint for joint in front_end() if joint.kind != "brake_caliper"]
    keys = [step.key for step in plan(joints).steps]
    assert "act/lever_firm" not in keys
    assert keys.index("act/fork_pumped") < keys.index("axle_pinch/axle pinch bolt/pass 1")


@pytest.mark.parametrize(
    ("step", "slack"),
    [
        pytest.param("fork_cap/left fork cap/pass 1", {"top_clamp"}, id="cap"),
        pytest.param("lower_clamp/left lower clamp/pass 2", {"top_clamp"}, id="lower clamp"),
        pytest.param(
            "stem_head_bolt/stem head bolt/pass 1",
            {"lower_clamp", "top_clamp", "stem_pinch"},
            id="stem head bolt",
        ),
        pytest.param("stem_nut/stem nut/set", {"stem_head_bolt"}, id="stem nut"),
        pytest.param("axle/axle/pass 1", {"axle_pinch"}, id="axle"),
        pytest.param("act/fork_pumped", {"axle_pinch", "fork_brace"}, id="pumping"),
        pytest.param("top_clamp/left top clamp/pass 1", set(), id="top clamp"),
    ],
)
def test_a_step_knows_what_must_be_slack_while_it_is_done(step, slack):
    found = {each.key: each for each in plan(front_end()).steps}
    places = {place for shared in found[step].slack for place in shared}
    assert {place.partition("/")[0] for place in places} == slack


def test_a_rule_to_go_over_a_joint_again_is_no_reason_for_its_first_time():
    rule = Rule("again_after", "top_clamp", "lower_clamp", "The top clamps ease the lower ones.")
    told = [step.title for step in plan(front_end(), [rule]).steps if step.reason == rule.because]
    assert told == [
        "Left lower clamp, bolts 1 and 2, once more",
        "Right lower clamp, bolts 3 and 4, once more",
    ]


def test_the_brace_ties_the_sliders_only_when_they_have_settled_on_the_axle():
    steps = plan(front_end()).steps
    keys = [step.key for step in steps]
    assert keys.index("act/brace_on") < keys.index("act/wheel_in")
    brace = keys.index("fork_brace/fork brace/pass 1")
    assert keys.index("axle_pinch/axle pinch bolt/pass 1") < brace
    assert steps[brace].reason == (
        "The sliders have found their own place along the axle; tied together before that, "
        "they could not."
    )
