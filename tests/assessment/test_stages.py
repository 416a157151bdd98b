"""At which stage a job is opened, and what the last stage says of it."""

from datetime import date

import pytest

from aligner.assessment import Stage, StageState, assess
from aligner.assessment.stages import StageStanding, where_to_begin
from aligner.job import Align, Job
from aligner.job.edits_build import with_build
from aligner.job.edits_prove import with_check, with_sign_off
from aligner.job.final_checks import checks_of
from aligner.sheet import Sheet
from tests.assessment.bench_jobs import BEGUN, minute, ticked, ticked_as_far_as, true_job


def opened_at(job: Job) -> Stage:
    return where_to_begin(job, assess(job).stages)


def standing(job: Job, stage: Stage) -> StageStanding:
    (found,) = (each for each in assess(job).stages if each.stage is stage)
    return found


def unread() -> Job:
    return true_job().with_changes(align=Align(begun=BEGUN))


def finished() -> Job:
    """Everything on the list ticked; what waits is given a reason."""
    job, number = true_job(), 1
    while (step := assess(job).tightening.next_step) is not None:
        job = ticked(job, step, number, "for the test" if step.waits_for else "")
        number += 1
    return job


FIRST = assess(true_job()).tightening.steps[0].step.key


@pytest.mark.parametrize(
    ("job", "stage"),
    [
        pytest.param(Job(sheet=Sheet(name="empty")), Stage.BIKE, id="no sheet yet"),
        pytest.param(unread(), Stage.STRIP, id="nothing begun"),
        pytest.param(with_build(unread(), oil="fork oil"), Stage.BUILD, id="oil chosen"),
        pytest.param(true_job(), Stage.ALIGN, id="readings"),
        pytest.param(ticked_as_far_as(true_job(), FIRST), Stage.TIGHTEN, id="first step ticked"),
        pytest.param(
            with_build(ticked_as_far_as(unread(), FIRST), oil="fork oil"),
            Stage.BUILD,
            id="the stem nut done up on the bench",
        ),
        pytest.param(
            with_sign_off(true_job(), "A. Person", date(2026, 5, 4)), Stage.PROVE, id="signed"
        ),
    ],
)
def test_a_job_is_opened_at_the_furthest_stage_begun(job, stage):
    assert opened_at(job) is stage


def test_the_last_stage_waits_for_the_list_and_is_in_hand_from_the_first_check():
    before = standing(true_job(), Stage.PROVE)
    assert (before.state, before.line) == (StageState.BLOCKED, "waits for Tighten")
    job = finished()
    ready = standing(job, Stage.PROVE)
    assert (ready.state, ready.line) == (StageState.OPEN, "not begun")
    begun = standing(with_check(job, checks_of(job)[0].name, True), Stage.PROVE)
    assert (begun.state, begun.line) == (StageState.IN_HAND, "1 checked")


def test_the_list_counts_from_one_and_is_in_hand_from_the_first_tick():
    job = true_job()
    total = len(assess(job).tightening.steps)
    untouched = standing(job, Stage.TIGHTEN)
    assert (untouched.state, untouched.line) == (StageState.OPEN, f"step 1 of {total}")
    step = assess(job).tightening.next_step
    assert step is not None
    begun = standing(ticked(job, step, 1), Stage.TIGHTEN)
    assert (begun.state, begun.line) == (StageState.IN_HAND, f"step 2 of {total}")
    done = standing(finished(), Stage.TIGHTEN)
    assert (done.state, done.line) == (StageState.DONE, f"all {total} steps")


def test_a_signature_over_open_checks_does_not_make_the_last_stage_done():
    signed = with_sign_off(finished(), "A. Person", minute(600).date())
    found = standing(signed, Stage.PROVE)
    assert (found.state, found.line) == (StageState.IN_HAND, "signed, open again")
