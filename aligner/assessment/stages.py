"""Where each stage of a job stands, in a word and a line."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum, StrEnum

from aligner.assessment.corrections import Subject
from aligner.assessment.tightening import TighteningAssessment
from aligner.job import Job


class Stage(Enum):
    """The stages that a window shows, in their order."""

    BIKE = "bike"
    ALIGN = "align"
    TIGHTEN = "tighten"
    PROVE = "prove"

    @property
    def title(self) -> str:
        """Its name on the screen."""
        return self.value.capitalize()


class StageState(StrEnum):
    """Where a stage stands."""

    DONE = "done"
    IN_HAND = "in hand"
    BLOCKED = "waits"
    OPEN = "not begun"


@dataclass(frozen=True)
class StageStanding:
    """A stage, its state, and one line on it."""

    stage: Stage
    state: StageState
    line: str


def stage_standings(
    job: Job, subjects: dict[Subject, bool], tightening: TighteningAssessment
) -> tuple[StageStanding, ...]:
    """Where every stage stands.

    Args:
        job: the job.
        subjects: what the alignment asks for on this job, each with whether it is settled
            within its limit.
        tightening: the list.
    """
    align = _align(job, subjects)
    return (
        _bike(job),
        align,
        _tighten(align, tightening),
        _prove(job, tightening),
    )


def missing_on_sheet(job: Job) -> int:
    """How many values the sheet lacks that this job asks for: torques and tolerances."""
    sheet = job.sheet
    torques = sum(fastener.torque is None for fastener in sheet.fasteners)
    return torques + (sheet.protrusion.tolerance is None)


def _bike(job: Job) -> StageStanding:
    missing = missing_on_sheet(job)
    if not job.sheet.fasteners:
        return StageStanding(Stage.BIKE, StageState.OPEN, "no sheet yet")
    if missing:
        return StageStanding(Stage.BIKE, StageState.IN_HAND, f"{missing} missing")
    return StageStanding(Stage.BIKE, StageState.DONE, "sheet complete")


def _align(job: Job, subjects: dict[Subject, bool]) -> StageStanding:
    settled = sum(subjects.values())
    line = f"{settled} of {len(subjects)} within"
    if settled == len(subjects):
        return StageStanding(Stage.ALIGN, StageState.DONE, line)
    readings = job.align
    begun = (
        readings.protrusion.left
        or readings.protrusion.right
        or any(pair.left or pair.right for pair in readings.squaring)
        or job.attempts
    )
    if not begun:
        return StageStanding(Stage.ALIGN, StageState.OPEN, "not begun")
    return StageStanding(Stage.ALIGN, StageState.IN_HAND, line)


def _tighten(align: StageStanding, tightening: TighteningAssessment) -> StageStanding:
    total = len(tightening.steps)
    if not total:
        return StageStanding(Stage.TIGHTEN, StageState.BLOCKED, "no fasteners")
    if tightening.is_finished:
        return StageStanding(Stage.TIGHTEN, StageState.DONE, f"all {total} steps")
    step = tightening.next_step
    here = step.number if step else total
    line = f"step {here} of {total}"
    if step is not None and step.waits_for and align.state is not StageState.DONE:
        return StageStanding(Stage.TIGHTEN, StageState.BLOCKED, "waits for Align")
    state = StageState.IN_HAND if tightening.done_count else StageState.OPEN
    return StageStanding(Stage.TIGHTEN, state, line)


def _prove(job: Job, tightening: TighteningAssessment) -> StageStanding:
    if job.prove.sign_off:
        return StageStanding(Stage.PROVE, StageState.DONE, f"signed {job.prove.sign_off.on}")
    if not tightening.is_finished:
        return StageStanding(Stage.PROVE, StageState.BLOCKED, "waits for Tighten")
    done = sum(check.done for check in job.prove.checks)
    state = StageState.IN_HAND if done else StageState.OPEN
    return StageStanding(Stage.PROVE, state, f"{done} checked" if done else "not begun")
