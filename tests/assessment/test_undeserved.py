"""What must not be called within, done or proved: readings that do not carry it, or are old."""

from __future__ import annotations

from datetime import date

import pytest

from aligner.assessment import Level, assess
from aligner.assessment.correction import Subject
from aligner.assessment.opened_again import with_dependents_opened
from aligner.assessment.stages import Stage, StageState
from aligner.assessment.ticks import TickRefused, with_tick
from aligner.gauging import Verdict
from aligner.geometry import Policy
from aligner.job import Check, Gauge, Job, LogEntry, SquaringPair, TorqueWrench, WrenchChoice
from aligner.job.edits_align import with_attempt_closed, with_distances, with_heights_to_read_again
from aligner.job.edits_prove import with_sign_off
from aligner.job.edits_sheet import with_fastener
from aligner.job.edits_tighten import with_untick
from aligner.job.final_checks import final_checks
from aligner.sheet import Fastener, OrderRule, Side, TurnLimits
from aligner.sheet.quantities import Angle, Length, SignedLength, Torque
from aligner.units.preferred import Preferred
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
LOWER = "lower_clamp/left lower clamp/pass"
LAST_LOWER = "lower_clamp/right lower clamp/pass 3"


def with_heights(job: Job, **changes: object) -> Job:
    heights = job.align.protrusion.with_changes(**changes)
    return job.with_changes(align=job.align.with_changes(protrusion=heights))


def with_pairs(job: Job, *pairs: SquaringPair) -> Job:
    return job.with_changes(align=job.align.with_changes(squaring=pairs))


def with_target(job: Job, text: str) -> Job:
    limits = job.sheet.protrusion.with_changes(target=SignedLength.typed(text))
    return job.with_changes(sheet=job.sheet.with_changes(protrusion=limits))


def asked_of(job: Job) -> list[str]:
    return [notice.text for notice in assess(job).notices if notice.level is Level.ATTENTION]


def noted_of(job: Job) -> list[str]:
    return [notice.text for notice in assess(job).notices if notice.level is Level.NOTE]


def distances(text: str) -> tuple[Length, ...]:
    return (Length.typed(text), Length.typed(text))


def waits(job: Job, key: str) -> str:
    steps = assess(job).tightening.steps
    return next(each.waits_for for each in steps if each.step.key == key)


@pytest.mark.parametrize("policy", [Policy.TO_AS_FOUND, Policy.TO_TARGET])
def test_equal_legs_are_not_within_while_the_height_chosen_is_not_known(policy: Policy):
    job = with_heights(true_job(), policy=policy)
    found = assess(job)
    assert found.protrusion.verdict is Verdict.MISSING
    assert found.correction(Preferred()).subject is Subject.PROTRUSION


@pytest.mark.parametrize("policy", [Policy.SHARE, Policy.LEFT_TO_RIGHT, Policy.RIGHT_TO_LEFT])
def test_equal_legs_far_from_the_target_of_the_sheet_ask_for_attention(policy: Policy):
    job = with_heights(with_target(true_job(), "12 mm"), policy=policy)
    assert any("left 7.0 mm under it, the right 7.0 mm under it" in text for text in asked_of(job))
    assert not assess(job).is_all_within
    assert "12 mm" in assess(job).correction(Preferred()).caution


def test_legs_on_the_target_ask_nothing_whatever_the_choice():
    job = with_heights(with_target(true_job(), "5 mm"), policy=Policy.SHARE)
    assert assess(job).is_all_within


@pytest.mark.parametrize(
    "more",
    [
        pytest.param(SquaringPair(name="b", gauge="gauge"), id="not read"),
        pytest.param(
            SquaringPair(name="b", gauge="gauge", left=distances("180 mm")), id="one side"
        ),
    ],
)
def test_a_pair_not_read_on_both_sides_keeps_the_hold_point_shut(more: SquaringPair):
    job = true_job()
    job = with_pairs(job, *job.align.squaring, more)
    found = assess(job)
    assert not found.is_all_within
    assert found.correction(Preferred()).sentence == "Measure “b” too, both sides."
    assert "missing" in waits(job, SQUARE)


def test_a_pair_added_after_its_hold_point_was_ticked_opens_nothing_before_it_is_out():
    job = ticked_as_far_as(true_job(), SQUARE)
    more = SquaringPair(name="b", gauge="gauge")
    added = with_pairs(job, *job.align.squaring, more)
    assert with_dependents_opened(job, added, minute(99)).log == job.log
    read = with_distances(added, 1, "left", distances("190 mm"), minute(100))
    out = with_distances(read, 1, "right", distances("180 mm"), minute(101))
    opened = with_dependents_opened(read, out, minute(101))
    assert opened.log[-1].step == SQUARE


def test_a_pair_whose_distances_no_turn_can_make_is_not_passed_by_another():
    refused = SquaringPair(
        name="b",
        gauge="gauge",
        left=distances("400 mm"),
        right=distances("180 mm"),
        bracket_reach=SignedLength.typed("1 mm"),
        bracket_half_width=Length.typed("85 mm"),
        frame_setback=SignedLength.typed("2 mm"),
        frame_half_width=Length.typed("60 mm"),
    )
    job = with_pairs(true_job(), *true_job().align.squaring, refused)
    found = assess(job)
    assert found.squaring.verdict is Verdict.MISSING
    assert "differ by 220 mm" in found.correction(Preferred()).detail


def test_a_pair_without_dimensions_is_not_passed_by_an_angle_of_another():
    job = true_job()
    limits = TurnLimits(tolerance=Angle.typed("1 deg"))
    job = job.with_changes(sheet=job.sheet.with_changes(squaring=limits))
    straight = job.align.squaring[0].with_changes(
        bracket_reach=SignedLength.typed("60 mm"),
        bracket_half_width=Length.typed("85 mm"),
        frame_setback=SignedLength.typed("40 mm"),
        frame_half_width=Length.typed("30 mm"),
    )
    assert assess(with_pairs(job, straight)).squaring.verdict is Verdict.WITHIN
    off = SquaringPair(name="b", gauge="gauge", left=distances("190 mm"), right=distances("180 mm"))
    job = with_pairs(job, straight, off)
    assert assess(job).squaring.verdict is Verdict.MISSING
    assert any("“b” is read, but the tolerance is an angle" in text for text in asked_of(job))


def test_on_a_frame_known_to_be_unlike_the_two_sides_are_not_set_alike():
    unlike = (
        true_job()
        .align.squaring[0]
        .with_changes(
            left=distances("190 mm"), right=distances("180 mm"), frame_asymmetry=lengths("4 mm")[0]
        )
    )
    # Straight, left less right is 4 mm; without dimensions each side goes half way (derived).
    detail = assess(with_pairs(true_job(), unlike)).correction(Preferred()).detail
    assert "reads 187.0 mm left and 183.0 mm right" in detail


@pytest.mark.parametrize(
    ("changes", "is_told"),
    [
        pytest.param({}, False, id="none is known"),
        pytest.param({"frame_asymmetry": "4 mm"}, True, id="known, and not how well"),
        pytest.param({"frame_asymmetry": "0 mm"}, True, id="said to be none"),
        pytest.param(
            {"frame_asymmetry": "4 mm", "frame_asymmetry_uncertainty": "0.3 mm"}, False, id="known"
        ),
        pytest.param(
            {"frame_asymmetry": "4 mm", "frame_asymmetry_uncertainty": "0 mm"},
            False,
            id="said to be exact",
        ),
    ],
)
def test_a_frames_own_difference_without_its_uncertainty_is_said_to_count_as_exact(
    changes, is_told
):
    kinds = {"frame_asymmetry": SignedLength, "frame_asymmetry_uncertainty": Length}
    typed = {name: kinds[name].typed(text) for name, text in changes.items()}
    pair = true_job().align.squaring[0]
    pair = pair.with_changes(**typed)
    job = with_pairs(true_job(), pair)
    where = "align.squaring[0].frame_asymmetry_uncertainty"
    told = [notice.text for notice in assess(job).notices if notice.where == where]
    assert bool(told) is is_told
    if told:
        assert "counts as exact" in told[0]
        assert "0.6 a" in told[0]


def test_a_hold_point_that_was_opened_by_a_slip_of_the_legs_wants_new_readings():
    job = ticked_as_far_as(true_job(), LAST_LOWER)
    slipped = with_untick(job, "act/legs_in", minute(100), "the left leg slipped")
    job = with_dependents_opened(job, slipped, minute(100))
    job = with_tick(job, "act/legs_in", minute(101))
    with pytest.raises(TickRefused, match="measure again"):
        with_tick(job, HOLD, minute(102))
    fresh = with_heights_to_read_again(job, minute(103))
    fresh = with_heights(fresh, left=lengths("5.0 mm"), right=lengths("5.0 mm"))
    assert waits(fresh, HOLD) == ""
    assert "measure again" in waits(fresh, SQUARE)  # those distances stand from before


def test_a_leg_slackened_while_its_hold_point_is_open_wants_new_readings():
    job = ticked_as_far_as(true_job(), f"{LOWER} 1")
    job = with_untick(job, f"{LOWER} 1", minute(50), "slackened to move the leg")
    job = with_untick(job, HOLD, minute(51), "the leg was moved")
    assert "measure again" in waits(job, HOLD)


def test_a_tick_taken_back_before_anything_was_read_asks_for_nothing():
    job = ticked_as_far_as(true_job(), HOLD)
    job = job.with_changes(align=job.align.with_changes(begun=minute(70)))
    job = with_untick(job, "act/legs_in", minute(60), "legs out once more")
    job = with_untick(job, HOLD, minute(61), "legs out once more")
    assert waits(job, HOLD) == ""


def test_distances_measured_twice_are_not_made_new_by_reading_the_heights_again():
    rule = OrderRule(
        kind="again_after",
        first="lower_clamp",
        then="lower_bracket_square",
        because="the manual wants it looked at again",
    )
    job = ticked_as_far_as(true_job(rules=(rule,)), LAST_LOWER)
    again = f"{SQUARE}/again after lower_clamp"
    assert "measure again" in waits(job, again)
    job = with_heights_to_read_again(job, minute(90))
    job = with_heights(job, left=lengths("5.0 mm"), right=lengths("5.0 mm"))
    assert "measure again" in waits(job, again)
    job = with_attempt_closed(job, minute(91))
    job = with_heights(job, left=lengths("5.0 mm"), right=lengths("5.0 mm"))
    for side in ("left", "right"):
        job = with_distances(job, 0, side, distances("180 mm"), minute(92))
    assert waits(job, again) == ""


@pytest.mark.parametrize(
    ("logged", "is_asked"),
    [
        pytest.param("14 N·m", False, id="as specified"),
        pytest.param("15.4 N·m", False, id="at the limit"),
        pytest.param("14 lbf·ft", True, id="another unit"),
        pytest.param("90 N·m", True, id="far over"),
        pytest.param("5 N·m", True, id="far under"),
    ],
)
def test_a_torque_far_out_ticked_without_a_reason_is_asked_about(logged: str, is_asked: bool):
    key = "stem_nut/stem nut/set"
    job = ticked_as_far_as(true_job(), "stem_nut/stem nut/backed off")
    seen = Torque.typed(logged)
    job = with_tick(job, key, minute(9), torque=seen)
    assert any(f"ticked at {logged}" in text for text in asked_of(job)) is is_asked
    if is_asked:
        reasoned = job.log[-1].with_changes(reason="the manual's supplement says so")
        assert not asked_of(job.with_changes(log=(*job.log[:-1], reasoned)))


def test_a_log_with_ticks_out_of_order_and_no_reason_says_so():
    job = true_job()
    early = LogEntry(step=f"{LOWER} 1", at=minute(1))
    assert any(
        "before" in text and "without a reason" in text
        for text in noted_of(job.with_changes(log=(early,)))
    )
    reasoned = early.with_changes(reason="could not get at it later")
    assert not any(
        "without a reason" in text for text in noted_of(job.with_changes(log=(reasoned,)))
    )
    assert not any(
        "without a reason" in text for text in noted_of(ticked_as_far_as(job, LAST_LOWER))
    )


def test_a_log_whose_times_run_backwards_says_so():
    job = ticked_as_far_as(true_job(), HOLD)
    assert not any("run backwards" in text for text in noted_of(job))
    earlier = job.log[-1].with_changes(at=minute(-90))
    text = next(
        t for t in noted_of(job.with_changes(log=(*job.log[:-1], earlier))) if "run backwards" in t
    )
    assert "04 May 2026" in text


@pytest.mark.parametrize(
    ("left", "why"),
    [pytest.param((), "are missing", id="none"), pytest.param(lengths("5.3 mm"), "tell", id="few")],
)
def test_a_hold_point_ticked_on_no_readings_asks_for_attention(left: tuple[object, ...], why: str):
    coarse = {"gauge": true_job().gauges["gauge"].with_changes(resolution=Length.typed("1 mm"))}
    job = ticked_as_far_as(true_job(), HOLD).with_changes(gauges=coarse)
    job = with_heights(job, left=left)
    assert any("is ticked, but its readings" in text and why in text for text in asked_of(job))


def test_a_clamp_that_changes_sides_is_not_done_any_more():
    part = Fastener(name="clamp", kind="lower_clamp", side=Side.LEFT, bolts=1, torque=torque())
    job = ticked_as_far_as(true_job((*fasteners(), part)), "lower_clamp/clamp/pass 1")
    place = len(job.sheet.fasteners) - 1
    after = with_fastener(job, place, minute(99), side=Side.RIGHT)
    assert after.log[-1].step == "lower_clamp/clamp/pass 1"
    assert "the side of the clamp" in after.log[-1].reason


def finished_job() -> Job:
    job, number = true_job(), 1
    while (standing := assess(job).tightening.next_step) is not None:
        if standing.waits_for:
            job = with_heights_to_read_again(job, minute(number))
            job = with_heights(job, left=lengths("5.0 mm"), right=lengths("5.0 mm"))
            standing = assess(job).tightening.next_step
            assert standing is not None
        job, number = ticked(job, standing, number + 1), number + 1
    checks = tuple(Check(name=each.name, done=True) for each in final_checks())
    job = job.with_changes(prove=job.prove.with_changes(checks=checks))
    return with_sign_off(job, "the one who did it", date(2026, 5, 4))


def test_a_signed_job_holds_while_nothing_is_open():
    job = finished_job()
    assert assess(job).stages[-1].state is StageState.DONE
    assert not any("sign-off" in text for text in asked_of(job))


def test_a_signed_job_with_a_step_opened_again_is_not_done():
    before = finished_job()
    job = with_untick(before, LAST_LOWER, minute(300), "found slack")
    job = with_dependents_opened(before, job, minute(300))
    (prove,) = (each for each in assess(job).stages if each.stage is Stage.PROVE)
    assert (prove.state, prove.line) == (StageState.IN_HAND, "signed, open again")
    assert any("the sign-off does not hold: " in t and "open" in t for t in asked_of(job))
    assert not assess(job).is_all_within


def test_a_job_signed_by_hand_with_checks_open_is_not_done():
    job = finished_job()
    checks = (job.prove.checks[0].with_changes(done=False), *job.prove.checks[1:])
    job = job.with_changes(prove=job.prove.with_changes(checks=checks))
    assert any("“Brake lever pumped and held” is open" in text for text in asked_of(job))


def test_a_clamp_put_on_the_sheet_and_tightened_after_the_last_measurement_asks_for_it_again():
    job = finished_job()
    part = Fastener(name="spare", kind="top_clamp", side=Side.LEFT, bolts=1, torque=torque())
    job = job.with_changes(sheet=job.sheet.with_changes(fasteners=(*job.sheet.fasteners, part)))
    standing = assess(job).tightening.next_step
    assert standing is not None
    assert standing.step.joint == "spare"
    job = ticked(job, standing, 400)
    assert assess(job).tightening.is_finished
    assert any("spare” was tightened after it" in text for text in asked_of(job)) or any(
        "Spare" in text and "was tightened after it" in text for text in asked_of(job)
    )


def test_a_chosen_adapter_that_is_on_the_list_no_more_asks_for_attention():
    wrench = TorqueWrench(
        low=Torque.typed("5 N·m"), high=Torque.typed("100 N·m"), graduation=Torque.typed("0.5 N·m")
    )
    job = true_job(wrenches={"wrench": wrench})
    assert not any("choose again" in text for text in asked_of(job))
    choice = WrenchChoice(wrench="wrench", adapter="crow's foot")
    job = job.with_changes(wrench_choices={"left lower clamp": choice})
    assert any("“crow's foot” is not on the list" in text for text in asked_of(job))


@pytest.mark.parametrize("name", [None, "one that is on no list"])
def test_readings_by_a_gauge_nothing_is_known_of_are_never_within(name: str | None):
    job = with_heights(true_job(), gauge=name, left=lengths("5.00 mm", "5.01 mm", "4.99 mm"))
    job = with_heights(job, right=lengths("5.00 mm", "5.01 mm", "4.99 mm"))
    found = assess(job)
    assert found.protrusion.verdict is Verdict.UNSETTLED
    assert "name the gauge" in found.correction(Preferred()).sentence
    scattered = tuple(Length.typed(text) for text in ("180.00 mm", "180.01 mm", "179.99 mm"))
    pair = SquaringPair(name="lugs", gauge=name, left=scattered, right=scattered)
    assert assess(with_pairs(true_job(), pair)).squaring.verdict is Verdict.UNSETTLED


def test_a_gauge_of_which_only_its_limit_of_error_is_known_proves_no_difference():
    # The limit of error drops out of a difference by one gauge (GUM F.1.2.3); nothing is left.
    only = Gauge(limit_of_error=Length.typed("30 mm"))
    job = true_job().with_changes(gauges={"gauge": only})
    assert assess(job).protrusion.verdict is Verdict.UNSETTLED
    assert any("has no repeatability" in text for text in noted_of(job))
