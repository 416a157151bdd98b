"""Every pattern gives a sheet that can be ordered at once, and not one value of it is guessed."""

from itertools import product

import pytest

from aligner.assessment.fasteners import fastener_notices
from aligner.assessment.tightening import plan_for
from aligner.fastening.joints import joint_kinds
from aligner.fastening.rules import default_rules
from aligner.sheet import ForkKind, HandlebarPlace, Sheet
from aligner.sheet.patterns import (
    UnknownChoice,
    choices_like,
    composed,
    kinds_of_patterns,
    questions,
)

NAMES = [question.question for question in questions()]
EVERY_COMBINATION = [
    dict(zip(NAMES, chosen, strict=True))
    for chosen in product(*([option.name for option in each.options] for each in questions()))
]


def test_every_combination_can_be_ordered_and_lacks_only_what_the_manual_gives():
    assert len(EVERY_COMBINATION) == 5 * 3 * 2 * 3 * 4 * 4 * 2
    for choices in EVERY_COMBINATION:
        sheet = composed(choices)
        plan = plan_for(sheet, asks_for_in_line=True)
        assert not plan.overridden, choices
        assert {step.joint for step in plan.steps if step.joint} == {
            fastener.name for fastener in sheet.fasteners
        }, choices
        assert all(step.torque_missing for step in plan.steps if step.kind in ("torque", "seat"))


def test_every_combination_says_of_its_fasteners_only_that_values_are_missing():
    for choices in EVERY_COMBINATION[::7]:  # every option of every question is among them
        texts = [notice.text for notice in fastener_notices(composed(choices))]
        assert texts
        assert all(" is missing" in text for text in texts), texts


def test_no_pattern_brings_a_value():
    for choices in EVERY_COMBINATION:
        sheet = composed(choices)
        fork = sheet.fork.model_dump(exclude={"kind", "handlebars"})
        assert set(fork.values()) == {None}
        for fastener in sheet.fasteners:
            told = fastener.model_dump(exclude={"name", "kind", "side", "bolts", "pattern", "note"})
            assert not any(told.values()), fastener
            assert not any(letter.isdigit() for letter in fastener.note), fastener


def test_every_kind_of_joint_is_known_and_on_a_side_it_can_have():
    assert kinds_of_patterns() <= joint_kinds().keys()
    for choices in EVERY_COMBINATION:
        for fastener in composed(choices).fasteners:
            sided = joint_kinds()[fastener.kind].sided
            assert (fastener.side is None) in {"always": [False], "never": [True]}.get(
                sided, [True, False]
            ), fastener


def test_a_rule_of_a_pattern_gives_its_reason_and_is_not_a_usual_one_again():
    usual = {(rule.kind, rule.first, rule.then) for rule in default_rules()}
    rules = [rule for each in questions() for option in each.options for rule in option.rules]
    assert rules
    for rule in rules:
        assert rule.because.endswith(".")
        assert rule.source == "common practice, no source"
        assert (rule.kind, rule.first, rule.then) not in usual


def test_the_choices_can_be_told_from_the_sheet_they_made():
    for choices in EVERY_COMBINATION:
        assert choices_like(composed(choices)) == choices


@pytest.mark.parametrize("kind", list(ForkKind), ids=lambda kind: kind.value)
def test_there_is_a_pattern_for_each_kind_of_fork(kind):
    assert composed({"fork": kind.value}).fork.kind is kind


@pytest.mark.parametrize("place", list(HandlebarPlace), ids=lambda place: place.value)
def test_there_is_a_pattern_for_each_place_of_the_handlebars(place):
    sheet = composed({"handlebars": place.value})
    assert sheet.fork.handlebars is place
    kinds = [each.kind for each in sheet.fasteners if each.kind.startswith("handlebar")]
    assert kinds == [f"handlebar_clamp_{place.value}"] * 2


@pytest.mark.parametrize("bolts", [1, 2, 3])
def test_the_lower_clamps_have_the_bolts_that_were_chosen(bolts):
    sheet = composed({"lower_clamps": ("one", "two", "three")[bolts - 1]})
    assert [each.bolts for each in sheet.fasteners if each.kind == "lower_clamp"] == [bolts] * 2


def test_a_pattern_keeps_the_name_and_the_dimensions_that_are_there():
    before = Sheet.model_validate({"name": "an invented bike", "fork": {"leg_spacing": "190 mm"}})
    sheet = composed({"fork": "cartridge"}, before)
    assert sheet.name == "an invented bike"
    assert sheet.fork.leg_spacing == before.fork.leg_spacing
    assert sheet.fork.kind is ForkKind.CARTRIDGE


def test_a_choice_that_does_not_exist_is_refused_with_those_that_do():
    with pytest.raises(UnknownChoice, match="“springer” is no choice; take one of damper_rod"):
        composed({"fork": "springer"})
