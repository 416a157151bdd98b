"""A tick is refused where the list forbids it: no path from a screen to the log goes round."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from aligner.assessment import StepState, assess
from aligner.assessment.ticks import TickRefused, with_loosened, with_recheck, with_tick
from aligner.job import Job, ticked_steps
from aligner.job.edits_strip import without_loosened
from aligner.job.edits_tighten import with_untick, without_recheck
from aligner.sheet import Fastener, Side
from aligner.sheet.quantities import Distance, Torque
from tests.assessment.bench_jobs import (
    fasteners,
    lengths,
    minute,
    ticked,
    ticked_as_far_as,
    torque,
    true_job,
)

CAP = "fork_cap/left fork cap/pass 1"
TOP = "top_clamp/left top clamp/pass 1"
LOWER = "lower_clamp/left lower clamp/pass 1"
HOLD = "hold/protrusion_equal"


def test_the_step_in_hand_is_ticked_with_value_wrench_and_time():
    job = true_job()
    key = assess(job).tightening.steps[0].step.key
    seen = Torque.typed("33 lbf·ft")
    after = with_tick(job, key, minute(1), torque=seen, wrench=" large wrench with hook ")
    (entry,) = after.log
    assert (entry.step, entry.at, entry.torque) == (key, minute(1), seen)
    assert entry.wrench == "large wrench with hook"


@pytest.mark.parametrize(
    ("reached", "key"),
    [
        pytest.param("hold/lower_bracket_square", TOP, id="a top clamp before its cap"),
        pytest.param("act/legs_in", LOWER, id="a clamp before its hold point"),
        pytest.param("act/legs_in", CAP, id="a cap before the lower clamps"),
    ],
)
def test_a_step_out_of_its_order_is_refused_without_a_reason(reached, key):
    job = ticked_as_far_as(true_job(), reached)
    seen = Torque.typed("23 N·m")
    for empty in ("", "   "):
        with pytest.raises(TickRefused, match="out of its order"):
            with_tick(job, key, minute(60), torque=seen, reason=empty)
    after = with_tick(job, key, minute(60), torque=seen, reason=" the bolt was in the way ")
    assert after.log[-1].reason == "the bolt was in the way"


@pytest.mark.parametrize(
    ("left", "said"),
    [((), "missing"), (("7.0 mm", "7.0 mm"), "out"), (("5.3 mm", "5.6 mm"), "cannot tell")],
    ids=["missing", "out", "unsettled"],
)
def test_a_hold_point_whose_readings_do_not_stand_is_refused_without_a_reason(left, said):
    job = ticked_as_far_as(true_job(), "act/legs_in")
    heights = job.align.protrusion.with_changes(left=lengths(*left))
    job = job.with_changes(align=job.align.with_changes(protrusion=heights))
    with pytest.raises(TickRefused, match=said):
        with_tick(job, HOLD, minute(60))
    assert HOLD in ticked_steps(with_tick(job, HOLD, minute(60), reason="gauge is out").log)


def test_the_heights_must_be_measured_after_the_clamps_to_pass_again():
    job = ticked_as_far_as(true_job(), "top_clamp/right top clamp/pass 1")
    with pytest.raises(TickRefused, match="measure again"):
        with_tick(job, "hold/protrusion_again", minute(60))


def test_a_torque_that_is_missing_must_be_typed_and_no_reason_stands_in_for_it():
    parts = tuple(
        part.with_changes(torque=None) if part.name == "stem head bolt" else part
        for part in fasteners()
    )
    job = ticked_as_far_as(true_job(parts), "hold/lower_bracket_square")
    key = "stem_head_bolt/stem head bolt/pass 1"
    for reason in ("", "no manual"):
        with pytest.raises(TickRefused, match="torque is missing"):
            with_tick(job, key, minute(60), reason=reason)
    with pytest.raises(TickRefused, match="a torque of 0 N·m"):
        with_tick(job, key, minute(60), torque=Torque.typed("0 N·m"))
    after = with_tick(job, key, minute(60), torque=Torque.typed("66 lbf·ft"))
    assert str(after.log[-1].torque) == "66 lbf·ft"


def test_a_step_is_not_ticked_twice_nor_one_that_is_not_on_the_list():
    job = ticked_as_far_as(true_job(), "act/legs_in")
    with pytest.raises(TickRefused, match="ticked already"):
        with_tick(job, "act/legs_in", minute(60), reason="once more")
    with pytest.raises(TickRefused, match="no such step"):
        with_tick(job, "act/nothing", minute(60), reason="why not")


@settings(max_examples=40, deadline=None)
@given(st.data())
def test_whatever_is_tried_no_clamp_is_ticked_before_its_ground_without_a_reason(data):
    """Taps on any steps, with and without reasons, readings struck out now and then."""
    job: Job = true_job()
    for number in range(1, 14):
        tightening = assess(job).tightening
        if data.draw(st.integers(0, 5)) == 0:
            left = lengths(*data.draw(st.sampled_from([(), ("5.0 mm", "5.0 mm"), ("9 mm",)])))
            heights = job.align.protrusion.with_changes(left=left)
            job = job.with_changes(align=job.align.with_changes(protrusion=heights))
            continue
        is_next = data.draw(st.booleans())
        chosen = (
            tightening.next_step
            if is_next and tightening.next_step
            else data.draw(st.sampled_from(tightening.steps))
        )
        reason = data.draw(st.sampled_from(["", " ", "in the way"]))
        waits = assess(job).tightening.steps[chosen.number - 1].waits_for
        in_order = chosen.state is StepState.NEXT and not waits
        try:
            job = ticked(job, chosen, number, reason)
        except TickRefused:
            assert chosen.state is StepState.DONE or (not in_order and not reason.strip())
        else:
            assert in_order or job.log[-1].reason
    unreasoned = {key for key, entry in ticked_steps(job.log).items() if not entry.reason}
    order = [each.step.key for each in assess(job).tightening.steps]
    done = [key for key in order if key in ticked_steps(job.log)]
    for key in unreasoned:
        before = order[: order.index(key)]
        assert set(before) <= set(done), f"{key} was ticked before what comes before it"


def test_the_loosening_list_is_ticked_in_its_order_or_with_a_reason():
    job = true_job()
    with pytest.raises(TickRefused, match="out of its order"):
        with_loosened(job, "fork_cap/left fork cap/loosen", minute(1))
    job = with_loosened(job, "act/machine_supported", minute(1))
    assert assess(job).strip.done_count == 1
    assert job.log == ()
    job = without_loosened(job, "act/machine_supported", minute(2))
    assert assess(job).strip.done_count == 0
    assert len(job.strip.log) == 2


def test_the_heights_as_found_are_written_down_before_a_clamp_is_slackened():
    job = true_job()
    number = 1
    while (step := assess(job).strip.next_step) and step.step.reads != "protrusion":
        job = with_loosened(job, step.step.key, minute(number))
    with pytest.raises(TickRefused, match="not written down yet"):
        with_loosened(job, step.step.key, minute(2))
    found = job.as_found.with_changes(protrusion=job.align.protrusion)
    job = with_loosened(job.with_changes(as_found=found), step.step.key, minute(2))
    assert job.strip.log[-1].step == "look/heights_as_found"


def test_what_is_checked_again_has_its_own_ticks():
    part = Fastener(
        name="left caliper",
        kind="brake_caliper",
        side=Side.LEFT,
        bolts=2,
        torque=torque(),
        again_after=Distance.typed("100 km"),
    )
    bare = part.with_changes(name="right caliper", side=Side.RIGHT, torque=None)
    job = true_job((part, bare))
    left, right = assess(job).rechecks
    assert (left.fastener, left.after_km, left.torque.target_nm) == ("left caliper", 100.0, 23.0)
    assert left.title == "Left caliper, bolts 1 and 2"
    assert right.torque is None
    with pytest.raises(TickRefused, match="torque is missing"):
        with_recheck(job, right.key, minute(1))
    job = with_recheck(job, left.key, minute(1), torque=Torque.typed("23 N·m"), wrench="w")
    assert [row.is_done for row in assess(job).rechecks] == [True, False]
    assert job.log == ()
    with pytest.raises(TickRefused, match="ticked already"):
        with_recheck(job, left.key, minute(2))
    with pytest.raises(TickRefused, match="not to be checked"):
        with_recheck(job, "recheck/nothing", minute(2))
    job = without_recheck(job, left.key, minute(3), "it moved")
    assert [row.is_done for row in assess(job).rechecks] == [False, False]
    assert len(job.prove.rechecks) == 2


def test_an_untick_needs_a_tick_and_a_reason():
    job = ticked_as_far_as(true_job(), "act/legs_in")
    with pytest.raises(ValueError, match="none is given"):
        with_untick(job, "act/legs_in", minute(60), " ")
    with pytest.raises(ValueError, match="not ticked"):
        with_untick(job, LOWER, minute(60), "why")
    after = with_untick(job, "act/legs_in", minute(60), "a leg slipped")
    assert len(after.log) == len(job.log) + 1
    assert "act/legs_in" not in ticked_steps(after.log)


def _begun_at(moment) -> Job:
    job = true_job()
    return job.with_changes(align=job.align.with_changes(begun=moment))


@pytest.mark.parametrize(
    ("ahead", "is_told"),
    [
        pytest.param(timedelta(minutes=-30), False, id="read before now"),
        pytest.param(timedelta(minutes=4), False, id="two clocks that differ"),
        pytest.param(timedelta(minutes=6), True, id="a clock that is wrong"),
        pytest.param(timedelta(days=400), True, id="a wrong year"),
    ],
)
def test_readings_dated_ahead_of_now_pass_no_hold_point_and_are_told(ahead, is_told):
    now = minute(100)
    job = ticked_as_far_as(_begun_at(now + ahead), "act/legs_in")
    found = assess(job, now)
    standing = found.tightening.next_step
    assert standing.step.key == "hold/protrusion_equal"
    told = [notice for notice in found.notices if notice.where == "align.begun"]
    assert bool(told) is is_told
    assert ("dated later than now" in standing.waits_for) is is_told
    if is_told:
        assert "04 May 2026 10:40" in told[0].text, "the time now"
        with pytest.raises(TickRefused, match="dated later than now"):
            with_tick(job, standing.step.key, now)
        job = with_tick(job, standing.step.key, now, reason="the clock was set wrong")
    else:
        job = with_tick(job, standing.step.key, now)
    assert standing.step.key in ticked_steps(job.log)


def test_without_a_time_nothing_is_said_of_readings_dated_ahead():
    job = _begun_at(minute(10_000_000))
    assert not [each for each in assess(job).notices if each.where == "align.begun"]


def test_a_time_without_its_offset_is_held_against_one_with_it():
    job = _begun_at(datetime(2036, 1, 1, 9, 0))
    assert [each for each in assess(job, minute(0)).notices if each.where == "align.begun"]
