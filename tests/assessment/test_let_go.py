"""When an untick takes back a slip of the finger, and when something was let go."""

from datetime import timedelta

import pytest

from aligner.assessment import assess
from aligner.assessment.let_go import can_move_what_was_measured, is_taken_back
from aligner.fastening.steps import Step
from aligner.job import Action, LogEntry
from tests.assessment.bench_jobs import BEGUN, true_job

STEPS = tuple(each.step for each in assess(true_job()).tightening.steps)
FIRST_PASS = "lower_clamp/left lower clamp/pass 1"
FULL_PASS = "lower_clamp/left lower clamp/pass 2"


def step(key: str) -> Step:
    return next(each for each in STEPS if each.key == key)


def log_of(*entries: tuple[str, Action, float]) -> list[LogEntry]:
    return [
        LogEntry(step=key, action=action, at=BEGUN + timedelta(seconds=seconds), reason="slip")
        for key, action, seconds in entries
    ]


@pytest.mark.parametrize(
    ("seconds", "is_slip"),
    [(0, True), (5, True), (120, True), (121, False), (3600, False), (-1, False)],
)
def test_two_minutes_are_long_enough_to_see_the_wrong_row_and_too_short_for_a_pass(
    seconds, is_slip
):
    log = log_of((FIRST_PASS, Action.TICKED, 0), (FIRST_PASS, Action.UNTICKED, seconds))
    assert is_taken_back(log, 1, STEPS) is is_slip


@pytest.mark.parametrize(
    "log",
    [
        pytest.param(
            log_of((FULL_PASS, Action.TICKED, 0), (FULL_PASS, Action.UNTICKED, 5)),
            id="it was at its torque",
        ),
        pytest.param(
            log_of((FIRST_PASS, Action.TICKED, 0), (FULL_PASS, Action.UNTICKED, 5)),
            id="of another step",
        ),
        pytest.param(
            log_of((FIRST_PASS, Action.UNTICKED, 0), (FIRST_PASS, Action.UNTICKED, 5)),
            id="after an untick",
        ),
        pytest.param(
            log_of((FIRST_PASS, Action.TICKED, 0), (FIRST_PASS, Action.TICKED, 5)),
            id="no untick at all",
        ),
    ],
)
def test_what_is_not_plainly_a_slip_counts_as_let_go(log):
    assert not is_taken_back(log, 1, STEPS)


def test_the_first_entry_of_a_log_takes_nothing_back():
    assert not is_taken_back(log_of((FIRST_PASS, Action.UNTICKED, 0)), 0, STEPS)


@pytest.mark.parametrize(("side", "other"), [("left", "right"), ("right", "left")])
def test_a_top_clamp_holds_its_leg_until_the_lower_clamp_of_its_own_side_is_tight(side, other):
    top = step(f"top_clamp/{side} top clamp/pass 1")
    mine, theirs = (
        {each.key for each in STEPS if each.joint == f"{which} lower clamp" and each.fraction == 1}
        for which in (side, other)
    )
    assert can_move_what_was_measured(top, STEPS, ())
    assert can_move_what_was_measured(top, STEPS, theirs)
    assert not can_move_what_was_measured(top, STEPS, mine)
    assert all(can_move_what_was_measured(top, STEPS, mine - {key}) for key in mine)


@pytest.mark.parametrize("side", ["left", "right"])
def test_a_lower_clamp_always_holds_and_a_cap_never(side):
    everything = {each.key for each in STEPS}
    lower = step(f"lower_clamp/{side} lower clamp/pass 2")
    cap = step(f"fork_cap/{side} fork cap/pass 1")
    for ticked in ((), everything):
        assert can_move_what_was_measured(lower, STEPS, ticked)
        assert not can_move_what_was_measured(cap, STEPS, ticked)
