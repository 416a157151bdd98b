"""The tightening list of a job: what the planner says, and what the log says was done.

The trap: a step that was done relies on readings taken before it. If those are changed
afterwards, the step is open again, and says why.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from functools import lru_cache

from aligner.assessment.fasteners import fastener_notices, joints_of, rules_of, unplanned
from aligner.assessment.freshness import clock_notices, why_stale
from aligner.assessment.log_questions import log_notices
from aligner.assessment.notice import Notice, attention, note
from aligner.assessment.the_very import TheVery
from aligner.assessment.wrenches import ToolForStep, Tools, tools_of
from aligner.errors import AlignerError
from aligner.fastening.joints import Joint, UnusableJoint
from aligner.fastening.planner import Plan, Recheck, plan
from aligner.fastening.rules import Rule
from aligner.fastening.steps import Step
from aligner.gauging import Verdict
from aligner.job import Job, LogEntry, ticked_steps
from aligner.language import marked, say, spoken
from aligner.sheet import Sheet


class StepState(StrEnum):
    """Where one step stands."""

    DONE = "done"
    NEXT = "next"
    LATER = "later"


@dataclass(frozen=True)
class StepStanding:
    """A step of the list, and where it stands.

    Attributes:
        number: its place in the list, from 1.
        step: what the planner says of it.
        state: done, next, or later.
        entry: the log entry that ticked it.
        waits_for: what keeps it from being ticked now, in words; "" if nothing does.
        tool: what it is tightened with; `None` where it has no torque to set, or the job
            lists no wrench.
    """

    number: int
    step: Step
    state: StepState
    entry: LogEntry | None = None
    waits_for: str = ""
    tool: ToolForStep | None = None


@dataclass(frozen=True)
class TighteningAssessment:
    """The whole list.

    Attributes:
        steps: in their order.
        notices: what to know, such as a torque that is missing.
        rechecks: what is checked again on the road, the nearest first.
    """

    steps: tuple[StepStanding, ...] = ()
    notices: tuple[Notice, ...] = ()
    rechecks: tuple[Recheck, ...] = ()

    @property
    def next_step(self) -> StepStanding | None:
        """The step in hand: the first that is not done."""
        return next((step for step in self.steps if step.state is StepState.NEXT), None)

    @property
    def done_count(self) -> int:
        """How many steps are done."""
        return sum(step.state is StepState.DONE for step in self.steps)

    @property
    def is_finished(self) -> bool:
        """Whether every step is done, and there is one."""
        return bool(self.steps) and self.done_count == len(self.steps)


def assess_tightening(
    job: Job,
    verdicts: dict[str, Verdict],
    *,
    asks_for_in_line: bool,
    now: datetime | None = None,
) -> TighteningAssessment:
    """The tightening list of a job.

    Args:
        job: of which the sheet gives the joints and the log what was done.
        verdicts: of the readings that hold points ask for, by "protrusion", "squaring",
            "in_line"; one that is not asked for on this job is left out.
        asks_for_in_line: whether the plan holds for the legs being in line.
        now: the time, by which readings dated ahead of it are told; `None` if not known.
    """
    told = _about_fasteners(TheVery(job.sheet), spoken())
    try:
        made = plan_for(job.sheet, asks_for_in_line=asks_for_in_line)
    except UnusableJoint as error:
        reasons = unplanned(job.sheet) or (attention("sheet.fasteners", f"{error}."),)
        return TighteningAssessment(notices=(*reasons, *told))
    except AlignerError as error:
        text = say("There is no list until the rules agree: {error}.", error=error)
        return TighteningAssessment(notices=(attention("sheet.rules", text), *told))
    tools = tools_of(job)
    standings = _standings(job, made, tools, verdicts, now)
    notices = (
        *told,
        *clock_notices(job, now),
        *log_notices(job, [(each.step, each.tool) for each in standings], verdicts),
        *(
            note("wrenches", say("The wrench “{name}” is not chosen: {why}.", name=name, why=why))
            for name, why in tools.refused.items()
        ),
        *_about_wrenches(standings),
        *(note("sheet.rules", str(text)) for text in made.overridden),
    )
    return TighteningAssessment(tuple(standings), notices, made.rechecks)


def _standings(
    job: Job, made: Plan, tools: Tools, verdicts: dict[str, Verdict], now: datetime | None
) -> list[StepStanding]:
    """Where each step of a plan stands by the log, and with what it is tightened."""
    specified = {step.joint: step for step in made.steps if step.low_nm is not None}
    done = ticked_steps(job.log)
    standings: list[StepStanding] = []
    has_next = False
    done_since: dict[str, list[LogEntry]] = {}
    for number, step in enumerate(made.steps, start=1):
        entry = done.get(step.key)
        state = StepState.DONE if entry else StepState.LATER if has_next else StepState.NEXT
        has_next = has_next or entry is None
        waits_for = _waits_for(job, step, made.steps, verdicts, done_since, now)
        tool = _tool_for(tools, step, step if step.fraction == 1 else specified.get(step.joint))
        standings.append(StepStanding(number, step, state, entry, waits_for, tool))
        if step.kind == "hold" and step.reads is not None:
            done_since[step.reads] = []
        elif step.kind == "torque" and entry is not None:
            for entries in done_since.values():
                entries.append(entry)
    return standings


def _tool_for(tools: Tools, step: Step, full: Step | None) -> ToolForStep | None:
    """The tool of a step that has a torque; `full` is the full pass of the same joint."""
    if step.joint is None or full is None or step.target_nm is None or full.target_nm is None:
        return None
    low_nm = full.low_nm if full.low_nm is not None else full.target_nm
    high_nm = full.high_nm if full.high_nm is not None else full.target_nm
    return tools.for_torque(step.joint, full.target_nm, low_nm, high_nm, step.fraction)


def _about_wrenches(standings: list[StepStanding]) -> list[Notice]:
    """Steps still to do that no wrench on hand can, one notice for each joint."""
    found: dict[str, Notice] = {}
    for standing in standings:
        tool, step = standing.tool, standing.step
        joint = step.joint or ""
        where = f"wrench_choices.{joint}"
        if tool is None or standing.state is StepState.DONE:
            continue
        problems = " ".join(tool.problems)
        if tool.lost:
            # Without the adapter that was meant the setting is another one.
            text = say("Until then the {joint} is set without.", joint=joint)
            found[joint] = attention(where, f"{tool.lost} {text}")
            continue
        if tool.setting_nm is None and step.fraction < 1:
            text = say(
                "No wrench on the list goes down to the first pass of the {joint}: bring it up "
                "evenly by hand, well short of the full torque.",
                joint=joint,
            )
            found.setdefault(joint, note(where, text))
        elif tool.setting_nm is None:
            text = say("No wrench on the list can do the {joint}.", joint=joint)
            found[joint] = attention(where, f"{text} {problems}")
        elif tool.is_inside is False:
            text = say(
                "The wrench for the {joint} can deliver a torque outside what is specified.",
                joint=joint,
            )
            found[joint] = attention(where, f"{text} {problems}")
    return list(found.values())


_WAITS_FOR = {
    Verdict.OUT: marked("the readings are out: correct, then measure again"),
    Verdict.UNSETTLED: marked("the readings cannot tell yet"),
    Verdict.MISSING: marked("the readings are missing"),
}


def _waits_for(
    job: Job,
    step: Step,
    steps: tuple[Step, ...],
    verdicts: dict[str, Verdict],
    done_since: dict[str, list[LogEntry]],
    now: datetime | None,
) -> str:
    """Why a hold point cannot pass now.

    One that measures again what an earlier one measured needs readings from after everything
    that was tightened since, and every one of them from after what was opened again before it.
    """
    if step.kind != "hold" or step.reads is None or step.reads not in verdicts:
        return ""
    verdict = verdicts[step.reads]
    if verdict is not Verdict.WITHIN:
        return say(_WAITS_FOR[verdict])
    return why_stale(job, step, steps, done_since.get(step.reads, ()), now)


@lru_cache(maxsize=2)
def _about_fasteners(of: TheVery, _language: str) -> tuple[Notice, ...]:
    """What there is to ask about the fasteners, in the language spoken."""
    return fastener_notices(of.sheet)


def plan_for(sheet: Sheet, *, asks_for_in_line: bool) -> Plan:
    """The planner's list for a sheet; the same sheet is planned once.

    Raises:
        AlignerError: rules that cannot all be kept, or that name what is not there.
    """
    return _plan_for(TheVery(sheet), asks_for_in_line, spoken())


@lru_cache(maxsize=2)
def _plan_for(of: TheVery, asks_for_in_line: bool, language: str) -> Plan:
    joints, rules, fork = joints_of(of.sheet), rules_of(of.sheet), of.sheet.fork.kind.value
    return _planned(joints, rules, asks_for_in_line, fork, language)


@lru_cache(maxsize=16)
def _planned(
    joints: tuple[Joint, ...],
    rules: tuple[Rule, ...],
    asks_for_in_line: bool,
    fork: str,
    _language: str,
) -> Plan:
    """The list in the language spoken, which is what the last one is for."""
    return plan(joints, rules, check_in_line=asks_for_in_line, fork=fork)
