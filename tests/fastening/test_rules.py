from __future__ import annotations

import pytest

from aligner.errors import AlignerError
from aligner.fastening.arrangement import arrangement
from aligner.fastening.joints import Joint, joint_kinds
from aligner.fastening.planner import plan
from aligner.fastening.precedence import RingOfRules
from aligner.fastening.rules import Rule, UnusableRule, default_rules
from aligner.fastening.steps import activities
from tests.front_end_joints import front_end


def joints_in(steps) -> list[str]:
    return list(dict.fromkeys(step.joint for step in steps if step.joint))


def one_of_each_kind() -> list[Joint]:
    return [Joint(kind, kind) for kind in joint_kinds()]


@pytest.mark.parametrize("rule", default_rules(), ids=lambda rule: f"{rule.when}: {rule.name}")
def test_each_default_rule_names_what_is_known_and_gives_reason_and_source(rule):
    groups = {kind.group for kind in joint_kinds().values()}
    known = {*joint_kinds(), *groups, *activities()}
    assert {rule.first, rule.then} <= known
    assert rule.because.endswith(".")
    assert rule.source
    assert bool(rule.because_loosening) == (rule.when == "both")


@pytest.mark.parametrize("work", ["tightening", "loosening"])
def test_the_default_rules_agree_with_each_other_and_with_the_default_sequence(work):
    found = arrangement(one_of_each_kind(), (), work, {"legs_in_line"})
    ranks = [place.rank for place in found.places]
    assert ranks == sorted(ranks)
    assert found.overridden == ()
    assert len(ranks) >= len(joint_kinds())


@pytest.mark.parametrize(
    "rule",
    [
        Rule("before", "left fork cup", "left top clamp", "because"),
        Rule("before", "lower_clamp", "moon_landing", "because"),
    ],
    ids=["first", "then"],
)
def test_a_rule_naming_nothing_known_is_refused_with_the_rule_in_words(rule):
    with pytest.raises(UnusableRule) as refused:
        plan(front_end(), [rule])
    assert refused.value.where == rule.name
    assert isinstance(refused.value, AlignerError)


def test_a_rule_of_a_kind_not_on_this_sheet_binds_nothing():
    rule = Rule("before", "mudguard", "lower_clamp", "because")
    assert plan(front_end(), [rule]).steps == plan(front_end()).steps


def test_an_unknown_kind_of_rule_is_refused():
    with pytest.raises(UnusableRule, match="unknown kind “after”"):
        Rule("after", "a", "b", "because")


def test_a_rule_after_a_hold_point_must_name_a_hold_point():
    rule = Rule("after_hold", "steering_free", "top_clamp", "because")
    with pytest.raises(UnusableRule, match="is no hold point"):
        plan(front_end(), [rule])


def test_a_rule_with_the_same_name_twice_is_refused():
    with pytest.raises(UnusableRule, match="both names are the same"):
        plan(front_end(), [Rule("before", "lower_clamp", "lower_clamp", "because")])


def test_one_clamp_can_be_put_before_all_of_its_kind():
    rule = Rule("before", "right lower clamp", "lower_clamp", "The cable guide is under it.")
    order = joints_in(plan(front_end(), [rule]).steps)
    assert order.index("right lower clamp") + 1 == order.index("left lower clamp")


def test_a_sheet_rule_turns_a_default_rule_round_and_the_plan_tells_it():
    rule = Rule("before", "top_clamp", "fork_cap", "The cap is a bolt through the bracket.", "p. 3")
    found = plan(front_end(), [rule])

    order = joints_in(found.steps)
    assert order.index("right top clamp") < order.index("left fork cap")
    (told,) = [one for one in found.overridden if one.rule.kind == "while_slack"]
    assert (told.rule.first, told.rule.then) == ("fork_cap", "top_clamp")
    assert told.by == (rule,)
    assert told.wholly
    assert str(told) == told.because
    assert rule.because[:-1] in told.because
    assert told.rule.because[:-1] in told.because


def test_a_default_rule_gives_way_to_the_rules_that_turn_it_round_and_to_no_other():
    turning = Rule("before", "top_clamp", "fork_cap", "The cap is a bolt through the bracket.")
    apart = Rule("before", "right lower clamp", "left lower clamp", "The cable guide is under it.")
    for rules in ((turning, apart), (apart, turning)):
        told = [one for one in plan(front_end(), rules).overridden if one.rule.first == "fork_cap"]
        assert told
        assert all(one.by == (turning,) for one in told)


def test_a_sheet_rule_by_name_leaves_the_default_rule_for_the_other_joints():
    rule = Rule("before", "left top clamp", "left fork cap", "So the manual.")
    found = plan(front_end(), [rule])

    order = joints_in(found.steps)
    assert order.index("left top clamp") < order.index("left fork cap")
    assert order.index("right fork cap") < order.index("left top clamp")
    assert order.index("right fork cap") < order.index("right top clamp")
    assert [one.wholly for one in found.overridden] == [False]


def test_a_sheet_rule_is_the_reason_of_the_joint_it_binds():
    rule = Rule("before", "top_clamp", "fork_cap", "The cap is a bolt through the bracket.", "p. 3")
    (cap,) = [s for s in plan(front_end(), [rule]).steps if s.joint == "left fork cap"]
    assert (cap.reason, cap.source) == (rule.because, "p. 3")


def test_a_ring_through_default_rules_is_opened_where_they_are_least_firm():
    rule = Rule("before", "handlebar_clamp_above", "lower_clamp", "Bars carry the harness.")
    found = plan(front_end(), [rule])

    order = joints_in(found.steps)
    assert order.index("right handlebar clamp") < order.index("left lower clamp")
    assert order.index("right lower clamp") < order.index("left fork cap")
    assert order.index("right fork cap") < order.index("left top clamp")
    assert {one.rule.then for one in found.overridden} == {"handlebar_clamps"}
    assert all(one.by == (rule,) for one in found.overridden)


def test_a_ring_of_sheet_rules_alone_names_them_with_their_reasons():
    ring = [
        Rule("before", "left caliper", "right caliper", "Left has the union."),
        Rule("while_slack", "right caliper", "axle", "Centres the disc."),
        Rule("before", "axle", "left caliper", "Carries the bracket."),
    ]
    aside = Rule("before", "stem_pinch", "fork_brace", "It is hidden later.")
    with pytest.raises(RingOfRules) as refused:
        plan(front_end(), [*ring, aside])
    assert set(refused.value.rules) == set(ring)
    for rule in ring:
        assert rule.name in str(refused.value)
        assert rule.because[:-1] in str(refused.value)
    assert aside.name not in str(refused.value)


def test_a_sheet_rule_that_repeats_a_default_one_changes_nothing_of_the_order():
    usual = default_rules()[0]
    found = plan(front_end(), [usual, Rule("before", usual.first, usual.then, "As the manual.")])
    assert [s.key for s in found.steps] == [s.key for s in plan(front_end()).steps]
    assert found.overridden == ()


def test_a_joint_is_gone_over_once_more_behind_another():
    rule = Rule(
        "again_after", "fork_brace", "left top clamp", "The brace draws the leg in.", "p. 9"
    )
    steps = plan(front_end(), [rule]).steps
    keys = [step.key for step in steps]
    at = keys.index("top_clamp/left top clamp/again after fork_brace/pass 1")
    assert steps[at - 1].joint == "fork brace"
    assert steps[at].reason == rule.because
    assert steps[at].title == "Left top clamp, bolt 7, once more"
    assert "top_clamp/left top clamp/pass 1" in keys[:at]


def test_a_hold_point_is_measured_once_more_behind_a_joint():
    rule = Rule("again_after", "fork_brace", "lower_bracket_square", "The brace can pull it.")
    steps = plan(front_end(), [rule]).steps
    at = [step.key for step in steps].index("hold/lower_bracket_square/again after fork_brace")
    assert steps[at - 1].joint == "fork brace"
    assert steps[at].reads == "squaring"


def test_asking_for_the_repetition_that_comes_anyway_adds_no_second_one():
    rule = Rule("again_after", "top_clamp", "protrusion_equal", "So the manual.")
    found = plan(front_end(), [rule]).steps
    assert [step.key for step in found] == [step.key for step in plan(front_end()).steps]
    (again,) = [step for step in found if step.key == "hold/protrusion_again"]
    assert again.reason == "So the manual."


def test_a_sheet_rule_that_names_an_optional_hold_point_asks_for_it():
    rule = Rule("after_hold", "legs_in_line", "fork_brace", "So the manual.")
    steps = plan(front_end(), [rule]).steps
    (brace, *_) = [step for step in steps if step.joint == "fork brace"]
    assert "hold/legs_in_line" in [step.key for step in steps]
    assert "hold/legs_in_line" in brace.relies_on
