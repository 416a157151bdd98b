"""What is done on a ground that an edit takes away is open again, and says why."""

from __future__ import annotations

from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from aligner.assessment import StepState, assess
from aligner.assessment.opened_again import with_dependents_opened
from aligner.assessment.ticks import TickRefused
from aligner.job import Action, Job, ticked_steps
from aligner.job.edits_align import with_heights_to_read_again
from aligner.job.edits_sheet import with_torque
from aligner.job.edits_tighten import with_untick
from aligner.sheet import OrderRule, ProtrusionLimits
from aligner.sheet.quantities import Length
from tests.assessment.bench_jobs import (
    fasteners,
    lengths,
    minute,
    ticked,
    ticked_as_far_as,
    torque,
    true_job,
)

HOLD = "hold/protrusion_equal"
SQUARE = "hold/lower_bracket_square"
AGAIN = "hold/protrusion_again"
LOWER = [
    f"lower_clamp/{side} lower clamp/pass {n}" for side in ("left", "right") for n in (1, 2, 3)
]
CAPS = [f"fork_cap/{side} fork cap/pass 1" for side in ("left", "right")]
TOPS = [f"top_clamp/{side} top clamp/pass 1" for side in ("left", "right")]
BARS = [f"handlebar_clamp_above/{side} bar/pass 1" for side in ("left", "right")]
FELT = "look/steering_free"
HEAD = "stem_head_bolt/stem head bolt/pass 1"
AT = minute(500)


def opened(job: Job) -> dict[str, str]:
    """The steps whose newest entry opened them again, with the reason."""
    last = {entry.step: entry for entry in job.log}
    return {k: e.reason for k, e in last.items() if e.action is Action.OPENED_AGAIN}


def with_left(job: Job, *texts: str) -> Job:
    heights = job.align.protrusion.with_changes(left=lengths(*texts))
    return job.with_changes(align=job.align.with_changes(protrusion=heights))


def edited(before: Job, after: Job) -> Job:
    return with_dependents_opened(before, after, AT)


@pytest.fixture(scope="module")
def clamped() -> Job:
    """Everything up to the second top clamp is ticked."""
    return ticked_as_far_as(true_job(), TOPS[1])


@pytest.fixture(scope="module")
def proved(clamped) -> Job:
    """The heights were measured again after the clamps, and the handlebars are on."""
    job = with_heights_to_read_again(clamped, minute(200))
    job = with_left(job, "5.0 mm", "5.0 mm")
    heights = job.align.protrusion.with_changes(right=lengths("5.0 mm", "5.0 mm"))
    job = job.with_changes(align=job.align.with_changes(protrusion=heights))
    number = 201
    while (step := assess(job).tightening.next_step) and step.step.key != "look/hoses_free":
        job = ticked(job, step, number)
        number += 1
    assert BARS[1] in ticked_steps(job.log)
    return job


@pytest.mark.parametrize(
    ("texts", "said"),
    [
        pytest.param(("6.5 mm", "6.5 mm"), "are out", id="out"),
        pytest.param(("5.2 mm", "5.7 mm"), "cannot tell", id="unsettled"),
        pytest.param((), "missing", id="struck out"),
    ],
)
def test_a_reading_changed_after_its_hold_point_opens_it_and_what_relied_on_it(
    clamped, texts, said
):
    after = edited(clamped, with_left(clamped, *texts))
    why = opened(after)
    assert {HOLD, SQUARE, HEAD, *LOWER, *TOPS} <= why.keys()
    assert said in why[HOLD]
    assert "Measure both heights: protrusion equal" in why[LOWER[0]]
    assert all(reason.endswith(".") for reason in why.values())
    standings = {each.step.key: each for each in assess(after).tightening.steps}
    assert standings[HOLD].state is StepState.NEXT
    assert standings[LOWER[0]].state is StepState.LATER


def test_the_stem_nut_and_the_legs_stay_done_when_a_height_changes(clamped):
    after = edited(clamped, with_left(clamped, "6.5 mm"))
    still = ticked_steps(after.log)
    assert {"stem_nut/stem nut/set", "act/legs_in", "act/top_bracket_on"} <= still.keys()


def test_a_change_that_leaves_the_readings_within_opens_nothing(clamped):
    after = with_left(clamped, "5.1 mm", "5.0 mm", "5.1 mm")
    assert edited(clamped, after) == after


def test_a_smaller_tolerance_opens_like_a_reading(clamped):
    heights = with_left(clamped, "5.2 mm", "5.2 mm")
    assert opened(edited(clamped, heights)) == {}
    limits = ProtrusionLimits(tolerance=Length.typed("0.1 mm"))
    after = heights.with_changes(sheet=heights.sheet.with_changes(protrusion=limits))
    assert {HOLD, *LOWER} <= opened(edited(heights, after)).keys()


def test_a_coarser_gauge_opens_like_a_reading(clamped):
    gauge = clamped.gauges["gauge"].with_changes(
        resolution=Length.typed("1 mm"), repeatability=Length.typed("1 mm")
    )
    after = clamped.with_changes(gauges={"gauge": gauge})
    assert "cannot tell" in opened(edited(clamped, after))[HOLD]


def test_a_distance_to_the_frame_opens_its_own_hold_point_and_not_the_heights(clamped):
    pair = clamped.align.squaring[0].with_changes(left=(Length.typed("184 mm"),))
    after = clamped.with_changes(align=clamped.align.with_changes(squaring=(pair,)))
    why = opened(edited(clamped, after))
    assert {SQUARE, HEAD, *LOWER} <= why.keys()
    assert HOLD not in why


def test_putting_readings_by_to_measure_again_opens_nothing(clamped):
    after = with_heights_to_read_again(clamped, minute(200))
    assert edited(clamped, after) == after
    begun = with_left(after, "5.0 mm")
    assert edited(after, begun) == begun


def test_a_second_measurement_that_is_out_opens_what_was_clamped_on_the_first(clamped):
    again = with_heights_to_read_again(clamped, minute(200))
    heights = again.align.protrusion.with_changes(
        left=lengths("6.5 mm", "6.5 mm"), right=lengths("5.0 mm", "5.0 mm")
    )
    after = again.with_changes(align=again.align.with_changes(protrusion=heights))
    assert {HOLD, *LOWER, *TOPS} <= opened(edited(again, after)).keys()


def test_once_proved_a_doubtful_reading_opens_the_last_measurement_only(proved):
    after = edited(proved, with_left(proved, "5.2 mm", "5.7 mm"))
    why = opened(after)
    assert {AGAIN, *BARS} <= why.keys()
    assert not {HOLD, *LOWER, *TOPS} & why.keys()


def test_a_clamp_that_is_unticked_opens_what_must_be_slack_and_what_was_measured_after(proved):
    after = edited(proved, with_untick(proved, LOWER[0], minute(400), "the leg slipped"))
    why = opened(after)
    assert {*LOWER[1:], HOLD, SQUARE, HEAD, FELT, *TOPS, AGAIN, *BARS} == why.keys()
    assert "slack while “Left lower clamp" in why[TOPS[0]]
    assert "may have moved" in why[AGAIN]
    assert "relies on “Measure both heights again”" in why[BARS[0]]
    assert not set(CAPS) & why.keys(), "a cap that is torqued stays torqued"
    assert "comes after" in why[LOWER[1]]
    assert "relies on" in why[LOWER[3]], "the other leg was clamped on heights to be read again"


def test_a_lower_clamp_let_go_opens_the_hold_points_before_it_and_asks_for_new_readings(clamped):
    after = edited(clamped, with_untick(clamped, LOWER[2], minute(400), "the leg slipped"))
    why = opened(after)
    assert "“Left lower clamp, bolts 1 and 2” kept it" in why[HOLD]
    assert "kept it in place, and is open again" in why[SQUARE]
    standings = {each.step.key: each for each in assess(after).tightening.steps}
    assert "measure again" in standings[HOLD].waits_for
    assert "measure again" in standings[SQUARE].waits_for
    again = with_heights_to_read_again(after, minute(401))
    again = with_left(again, "5.0 mm", "5.0 mm")
    heights = again.align.protrusion.with_changes(right=lengths("5.0 mm", "5.0 mm"))
    again = again.with_changes(align=again.align.with_changes(protrusion=heights))
    standings = {each.step.key: each for each in assess(again).tightening.steps}
    assert standings[HOLD].waits_for == ""
    assert "measure again" in standings[SQUARE].waits_for, "the distances were not read again"


@pytest.mark.parametrize(
    ("ticked_to", "seconds", "is_let_go"),
    [
        pytest.param(LOWER[0], 30, False, id="half a torque, at once: the wrong step was ticked"),
        pytest.param(LOWER[0], 300, True, id="half a torque, later: the clamp was nipped up"),
        pytest.param(LOWER[0], -30, True, id="the clock was set back: nothing can be told"),
        pytest.param(LOWER[1], 30, True, id="full torque: the clamp was at its torque"),
        pytest.param(LOWER[2], 30, True, id="full torque once more"),
        pytest.param(LOWER[3], 30, False, id="half a torque on the other leg"),
    ],
)
def test_a_tick_taken_back_at_once_keeps_the_measurements_unless_the_clamp_was_at_torque(
    ticked_to, seconds, is_let_go
):
    job = ticked_as_far_as(true_job(), ticked_to)
    at = job.log[-1].at + timedelta(seconds=seconds)
    after = edited(job, with_untick(job, ticked_to, at, "the wrong step"))
    assert ({HOLD, SQUARE} <= opened(after).keys()) is is_let_go


def test_an_untick_at_once_of_another_step_than_the_newest_lets_the_clamp_go():
    job = ticked_as_far_as(true_job(), LOWER[3])
    at = job.log[-1].at + timedelta(seconds=30)
    assert HOLD in opened(edited(job, with_untick(job, LOWER[2], at, "it slipped")))


def test_a_tick_taken_back_does_not_make_the_readings_old():
    job = ticked_as_far_as(true_job(), LOWER[0])
    at = job.log[-1].at + timedelta(seconds=30)
    job = with_untick(job, LOWER[0], at, "the wrong step")
    job = with_untick(job, HOLD, at, "looked at once more")
    standings = {each.step.key: each for each in assess(job).tightening.steps}
    assert standings[HOLD].waits_for == ""


def test_a_top_clamp_carries_the_leg_only_where_no_lower_clamp_grips_it(proved):
    why = opened(edited(proved, with_untick(proved, TOPS[0], minute(400), "forgotten")))
    assert AGAIN in why
    assert not {HOLD, SQUARE, *LOWER} & why.keys()
    rule = OrderRule(kind="before", first="top_clamp", then="lower_clamp", because="as printed")
    job = ticked_as_far_as(true_job(rules=(rule,)), TOPS[1])
    assert not set(LOWER) & ticked_steps(job.log).keys()
    why = opened(edited(job, with_untick(job, TOPS[0], minute(400), "the leg slipped")))
    assert "may have moved" in why[HOLD]


def test_a_stem_head_done_again_lets_the_lower_clamps_go_and_so_the_heights(proved):
    why = opened(edited(proved, with_untick(proved, HEAD, minute(400), "it was slack")))
    assert "lower clamp" in why[HOLD]
    assert "kept it in place" in why[HOLD]


def test_a_stem_head_that_is_unticked_before_the_clamps_close_leaves_the_heights():
    job = ticked_as_far_as(true_job(), HEAD)
    why = opened(edited(job, with_untick(job, HEAD, minute(400), "it was slack")))
    assert HOLD not in why


@pytest.mark.parametrize(("printed", "is_let_go"), [("31 N·m", False), ("15 N·m", True)])
def test_a_smaller_torque_on_the_sheet_lets_a_clamp_go_and_a_greater_does_not(
    proved, printed, is_let_go
):
    place = [part.name for part in fasteners()].index("left lower clamp")
    after = edited(proved, with_torque(proved, place, "torque", torque(printed), minute(400)))
    assert (HOLD in opened(after)) is is_let_go


def test_a_cap_that_is_unticked_opens_the_top_clamps(proved):
    why = opened(edited(proved, with_untick(proved, CAPS[0], minute(400), "it was forgotten")))
    assert set(TOPS) <= why.keys()
    assert not set(LOWER) & why.keys()


def test_a_hold_point_that_is_unticked_opens_what_relied_on_it(proved):
    why = opened(edited(proved, with_untick(proved, HOLD, minute(400), "misread")))
    assert {SQUARE, *LOWER, *TOPS, AGAIN, *BARS} <= why.keys()


def test_a_stem_head_bolt_that_is_unticked_asks_to_feel_the_steering_again(proved):
    why = opened(edited(proved, with_untick(proved, HEAD, minute(400), "it was slack")))
    assert why["look/steering_free"].startswith("What was looked at here may have changed")


def test_a_look_that_is_unticked_opens_nothing(proved):
    key = "look/steering_free"
    after = with_untick(proved, key, minute(400), "not felt")
    assert opened(edited(proved, after)) == {}


def test_another_torque_on_the_sheet_is_followed_like_an_untick(proved):
    names = [part.name for part in fasteners()]
    place = names.index("left lower clamp")
    after = edited(proved, with_torque(proved, place, "torque", torque("31 N·m"), minute(400)))
    why = opened(after)
    assert {*LOWER[:3], *TOPS, AGAIN} <= why.keys()
    assert why[LOWER[0]].startswith("the sheet was changed")


def test_a_step_passed_with_a_reason_is_left_alone_until_the_readings_are_out():
    job = with_left(true_job())
    job = ticked_as_far_as(job, LOWER[0], reason="the gauge is away")
    unsettled = with_left(job, "5.2 mm", "5.7 mm")
    assert edited(job, unsettled) == unsettled
    out = with_left(unsettled, "6.5 mm", "6.5 mm")
    assert HOLD in opened(edited(unsettled, out))


def test_undo_gives_the_ticks_back(clamped):
    """Undo puts the job before the edit in place of the one after it: a job is a value."""
    after = edited(clamped, with_left(clamped, "6.5 mm"))
    assert HOLD not in ticked_steps(after.log)
    assert HOLD in ticked_steps(clamped.log)
    assert after.log[: len(clamped.log)] == clamped.log, "nothing is taken out of the log"


def test_a_job_without_ticks_is_returned_as_it_is():
    job = true_job()
    after = with_left(job, "9 mm")
    assert edited(job, after) is after


readings = st.sampled_from(
    [(), ("5.0 mm", "5.0 mm"), ("5.1 mm",), ("5.2 mm", "5.7 mm"), ("6.5 mm", "6.5 mm")]
)


@settings(max_examples=40, deadline=None)
@given(data=st.data())
def test_whatever_is_edited_nothing_stays_ticked_on_ground_that_is_gone(clamped, data):
    """Properties of any chain of edits, reached step by step from a job that is all clamped."""
    job = clamped
    for number in range(300, 306):
        before = job
        kind = data.draw(st.sampled_from(["read", "untick", "tick", "read again"]))
        if kind == "read":
            after = with_left(before, *data.draw(readings))
        elif kind == "read again":
            after = with_heights_to_read_again(before, minute(number))
        elif kind == "untick":
            done = sorted(ticked_steps(before.log))
            after = with_untick(before, data.draw(st.sampled_from(done)), minute(number), "why")
        else:
            step = assess(before).tightening.next_step
            if step is None:
                continue
            try:
                after = ticked(before, step, number)
            except TickRefused:
                continue
        job = with_dependents_opened(before, after, minute(number))

        assert job.log[: len(after.log)] == after.log
        assert job.with_changes(log=after.log) == after, "only the log grows"
        assert with_dependents_opened(before, job, minute(number)) == job, "once is enough"
        assert with_dependents_opened(job, job, minute(number)) is job
        now = ticked_steps(job.log)
        steps = {each.step.key: each.step for each in assess(job).tightening.steps}
        fresh = {entry.step for entry in job.log[len(before.log) :]} - now.keys()
        for key in now.keys() & steps.keys():
            step = steps[key]
            assert not fresh & set(step.relies_on), f"{key} relies on what was opened"
            for gone in fresh & steps.keys():
                other = steps[gone]
                assert not any(step.place in places for places in other.slack)
                if other.joint and other.joint == step.joint:
                    keys = list(steps)
                    assert keys.index(key) < keys.index(gone)
        assert all(entry.reason for entry in job.log[len(after.log) :])
        if assess(job).protrusion.verdict.value == "out" and (
            assess(before).protrusion.verdict.value != "out"
        ):
            assert HOLD not in now
