"""What the plans say is said in the language spoken; their keys and the sheet's words stay."""

import re

import pytest

from aligner.fastening.bolt_limits import question_torque
from aligner.fastening.joints import UnusableJoint
from aligner.fastening.planner import plan
from aligner.fastening.rules import Rule
from aligner.fastening.strip import strip
from aligner.fastening.thread import parse_thread
from aligner.fastening.wrench import Wrench
from tests.front_end_joints import front_end

GERMAN = {"{verb} {joint}": "{verb}: {joint}"}
OWN_RULE = Rule("before", "fork_cap", "lower_clamp", "The maker wants it so.", "manual, p. 7")


def texts_of(step):
    return (step.title, step.reason, step.source, step.caution, step.pass_words)


@pytest.mark.parametrize("made_by", [plan, strip])
def test_every_text_of_a_step_is_said_once_and_its_key_stays(made_by, request):
    english = made_by(front_end()).steps
    request.getfixturevalue("bracketed")
    said = made_by(front_end()).steps
    assert [step.key for step in said] == [step.key for step in english]
    for before, after in zip(english, said, strict=True):
        for plain, bracketed in zip(texts_of(before), texts_of(after), strict=True):
            is_own_name = plain.casefold() == (before.joint or "").casefold()
            assert not plain or is_own_name or "⟦" in bracketed
            assert plain.casefold() == re.sub("[⟦⟧]", "", bracketed).casefold()


@pytest.mark.usefixtures("bracketed")
def test_what_the_sheet_says_of_its_own_rules_stays_as_it_was_written():
    made = plan(front_end(), [OWN_RULE])
    told = [step for step in made.steps if step.reason == OWN_RULE.because]
    assert told
    assert {step.source for step in told} == {OWN_RULE.source}
    assert any(OWN_RULE.because.rstrip(".") in one.because for one in made.overridden)


@pytest.mark.usefixtures("german")
def test_a_language_may_put_the_joint_behind_and_keeps_its_letters():
    steps = {step.key: step for step in strip(front_end()).steps}
    clamp = steps["top_clamp/left top clamp/loosen"]
    assert clamp.title.startswith("Slacken: Left top clamp")
    assert (clamp.deed, clamp.upon) == ("Slacken", clamp.title.removeprefix("Slacken: "))


@pytest.mark.usefixtures("german")
def test_a_pitch_has_the_decimal_sign_of_the_language():
    asked = question_torque(140.0, "N·m", parse_thread("M10x1.25"), "8.8")
    assert "M10x1,25 class 8.8" in str(asked)


def test_what_is_done_and_what_it_is_done_to_are_given_apart():
    for step in strip(front_end()).steps:
        if step.kind == "loosen":
            assert step.title == f"{step.deed} {step.upon[0].lower()}{step.upon[1:]}"
        else:
            assert step.deed == step.upon == ""


@pytest.mark.usefixtures("bracketed")
def test_numbers_take_the_decimal_sign_of_the_language():
    wrench = Wrench("click wrench", 5.0, 25.0, 0.5)
    assert wrench.setting_text(22.5) == "22,5 N·m"
    asked = question_torque(180.5, "N·m", parse_thread("M6"), "8.8")
    assert "180,5 N·m" in str(asked)
    assert "8.8" in str(asked)
    with pytest.raises(UnusableJoint, match="0,5"):
        type(front_end()[0])("left axle pinch", "axle_pinch", passes=(1.0, 0.5))
