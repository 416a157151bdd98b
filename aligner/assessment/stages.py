"""Where each stage of a job stands, in a word and a line."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum, StrEnum

from aligner.assessment.build import BuildAssessment
from aligner.assessment.correction import Subject
from aligner.assessment.missing import missing_on_sheet, still_to_come
from aligner.assessment.notice import Level
from aligner.assessment.tightening import TighteningAssessment
from aligner.job import Job
from aligner.job.edits_align import has_readings
from aligner.job.final_checks import open_checks
from aligner.language import marked, say, say_count


class Stage(Enum):
    """The stages that a window shows, in their order."""

    BIKE = "bike"
    STRIP = "strip"
    INSPECT = "inspect"
    BUILD = "build"
    ALIGN = "align"
    TIGHTEN = "tighten"
    PROVE = "prove"

    @property
    def title(self) -> str:
        """Its name on the screen."""
        return say(_TITLES[self])


_TITLES = {
    Stage.BIKE: marked("Bike"),
    Stage.STRIP: marked("Strip"),
    Stage.INSPECT: marked("Inspect"),
    Stage.BUILD: marked("Build"),
    Stage.ALIGN: marked("Align"),
    Stage.TIGHTEN: marked("Tighten"),
    Stage.PROVE: marked("Prove"),
}


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
    job: Job,
    subjects: dict[Subject, bool],
    tightening: TighteningAssessment,
    build: BuildAssessment,
) -> tuple[StageStanding, ...]:
    """Where every stage stands.

    Args:
        job: the job.
        subjects: what the alignment asks for on this job, each with whether it is settled
            within its limit.
        tightening: the list.
        build: what is built up.
    """
    align = _align(job, subjects)
    return (
        _bike(job),
        _strip(job),
        _inspect(job),
        _build(build),
        align,
        _tighten(align, tightening),
        _prove(job, tightening),
    )


def _inspect(job: Job) -> StageStanding:
    if not any(found.finding for found in job.inspect.found):
        back = len({carried.place for carried in job.inspect.carried})
        line = say("{count} from last time", count=back) if back else say("not begun")
        return StageStanding(Stage.INSPECT, StageState.OPEN, line)
    from aligner.assessment.inspection import looked_at_of  # late: the window starts without it

    looked_at, total, due = looked_at_of(job)
    line = say("{seen} of {total} seen", seen=looked_at, total=total)
    if looked_at == total:
        line = say("all {total} seen", total=total)
    if due:
        line = say("{seen}, {due} due", seen=line, due=due)
    state = StageState.IN_HAND if due or looked_at < total else StageState.DONE
    return StageStanding(Stage.INSPECT, state, line)


def _bike(job: Job) -> StageStanding:
    missing = missing_on_sheet(job)
    if not job.sheet.fasteners:
        return StageStanding(Stage.BIKE, StageState.OPEN, say("no sheet yet"))
    if missing:
        line = say_count("{count} missing", "{count} missing", missing)
        return StageStanding(Stage.BIKE, StageState.IN_HAND, line)
    line = say("complete but for oil") if still_to_come(job) else say("sheet complete")
    return StageStanding(Stage.BIKE, StageState.DONE, line)


def _strip(job: Job) -> StageStanding:
    if not job.is_strip_begun:
        return StageStanding(Stage.STRIP, StageState.OPEN, say("not begun"))
    from aligner.assessment.strip import assess_strip  # late: the window starts without it

    found = assess_strip(job)
    state = StageState.DONE if found.is_finished else StageState.IN_HAND
    return StageStanding(Stage.STRIP, state, found.line)


def _build(found: BuildAssessment) -> StageStanding:
    if not found.is_begun:
        return StageStanding(Stage.BUILD, StageState.OPEN, say("not begun"))
    state = StageState.DONE if found.is_done else StageState.IN_HAND
    return StageStanding(Stage.BUILD, state, found.line)


def _align(job: Job, subjects: dict[Subject, bool]) -> StageStanding:
    settled = sum(subjects.values())
    line = say("{within} of {total} within", within=settled, total=len(subjects))
    if settled == len(subjects):
        return StageStanding(Stage.ALIGN, StageState.DONE, line)
    if not (has_readings(job.align) or job.attempts):
        return StageStanding(Stage.ALIGN, StageState.OPEN, say("not begun"))
    return StageStanding(Stage.ALIGN, StageState.IN_HAND, line)


def _tighten(align: StageStanding, tightening: TighteningAssessment) -> StageStanding:
    total = len(tightening.steps)
    if not total:
        return StageStanding(Stage.TIGHTEN, StageState.BLOCKED, say("no fasteners"))
    if tightening.is_finished:
        line = say("all {total} steps", total=total)
        return StageStanding(Stage.TIGHTEN, StageState.DONE, line)
    step = tightening.next_step
    here = step.number if step else total
    line = say("step {number} of {total}", number=here, total=total)
    if step is not None and step.waits_for and align.state is not StageState.DONE:
        return StageStanding(Stage.TIGHTEN, StageState.BLOCKED, say("waits for Align"))
    state = StageState.IN_HAND if tightening.done_count else StageState.OPEN
    return StageStanding(Stage.TIGHTEN, state, line)


def _prove(job: Job, tightening: TighteningAssessment) -> StageStanding:
    if job.prove.sign_off:
        if open_since_signed(job, tightening):
            return StageStanding(Stage.PROVE, StageState.IN_HAND, say("signed, open again"))
        line = say("signed {day}", day=job.prove.sign_off.on)
        return StageStanding(Stage.PROVE, StageState.DONE, line)
    if not tightening.is_finished:
        return StageStanding(Stage.PROVE, StageState.BLOCKED, say("waits for Tighten"))
    done = sum(check.done for check in job.prove.checks)
    state = StageState.IN_HAND if done else StageState.OPEN
    line = say("{count} checked", count=done) if done else say("not begun")
    return StageStanding(Stage.PROVE, state, line)


def open_since_signed(job: Job, tightening: TighteningAssessment) -> str:
    """What of a signed job is open, in words; "" where the sign-off holds or there is none."""
    if job.prove.sign_off is None:
        return ""
    found = []
    if not tightening.is_finished:
        left = len(tightening.steps) - tightening.done_count
        steps = say_count(
            "{count} step of the list is open", "{count} steps of the list are open", left
        )
        found.append(steps if left else say("there is no tightening list"))
    waiting = open_checks(job)
    if len(waiting) == 1:
        found.append(say("the final check “{check}” is open", check=say(waiting[0])))
    elif waiting:
        found.append(
            say_count("{count} final check is open", "{count} final checks are open", len(waiting))
        )
    if any(each.where == "log" and each.level is Level.ATTENTION for each in tightening.notices):
        found.append(say("a hold point is ticked that does not stand"))
    return "; ".join(found)


def where_to_begin(job: Job, stages: tuple[StageStanding, ...]) -> Stage:
    """The stage to open a job at: the furthest one begun, or else the first to do.

    A job whose readings were begun before it was stripped is opened at its readings. What of
    the list is done up on the bench, such as the stem nut, belongs to the building up.
    """
    if not job.sheet.fasteners:
        return Stage.BIKE
    if job.prove.sign_off is not None:
        return Stage.PROVE
    begun = [
        standing.stage
        for standing in stages
        if standing.state in (StageState.IN_HAND, StageState.DONE)
        and standing.stage is not Stage.BIKE
    ]
    is_on_the_bench = not any(entry.step.startswith(("act/", "hold/")) for entry in job.log)
    if Stage.BUILD in begun and Stage.TIGHTEN in begun and is_on_the_bench:
        begun.remove(Stage.TIGHTEN)
    return begun[-1] if begun else Stage.STRIP
