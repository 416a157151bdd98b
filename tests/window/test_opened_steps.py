"""Every edit goes through one door, and there what it takes the ground from is opened again."""

from __future__ import annotations

from aligner.assessment import StepState
from aligner.job import ticked_steps
from aligner.job.edits_tighten import with_untick
from aligner.window.open_job import OpenJob
from tests.assessment.bench_jobs import lengths, minute, ticked_as_far_as, true_job

TOP = "top_clamp/right top clamp/pass 1"
LOWER = "lower_clamp/left lower clamp/pass 1"


def test_a_reading_changed_after_the_clamps_opens_them_and_undo_gives_them_back(qtbot):
    job = ticked_as_far_as(true_job(), TOP)
    open_job = OpenJob(job, now=lambda: minute(300))
    heights = job.align.protrusion.with_changes(left=lengths("6.5 mm", "6.5 mm"))
    open_job.edit(
        "left reading",
        lambda job: job.with_changes(align=job.align.with_changes(protrusion=heights)),
    )
    states = {each.step.key: each.state for each in open_job.assessment.tightening.steps}
    assert states["hold/protrusion_equal"] is StepState.NEXT
    assert states[LOWER] is StepState.LATER
    assert open_job.job.log[-1].at == minute(300)
    assert open_job.edits.count() == 1, "the reading and what it opened are one step to undo"
    open_job.edits.undo()
    assert open_job.job == job
    open_job.edits.redo()
    assert LOWER not in ticked_steps(open_job.job.log)
    open_job.edits.setClean()


def test_a_clamp_unticked_takes_the_top_clamps_with_it(qtbot):
    open_job = OpenJob(ticked_as_far_as(true_job(), TOP), now=lambda: minute(300))
    open_job.edit("untick", lambda job: with_untick(job, LOWER, minute(299), "it slipped"))
    assert TOP not in ticked_steps(open_job.job.log)
    open_job.edits.setClean()
