"""The tightening list of a job: what the planner says, and what the log says was done.

The trap: a step that was done relies on readings taken before it. If those are changed
afterwards, the step is open again, and says why.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache

from aligner.assessment.notice import Notice, attention, note
from aligner.errors import AlignerError
from aligner.fastening.joints import Joint, TorqueRange
from aligner.fastening.planner import Plan, plan
from aligner.fastening.rules import Rule
from aligner.fastening.steps import Step
from aligner.gauging import Verdict
from aligner.job import Job, LogEntry, ticked_steps
from aligner.sheet import Fastener, Sheet


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
    """

    number: int
    step: Step
    state: StepState
    entry: LogEntry | None = None
    waits_for: str = ""


@dataclass(frozen=True)
class TighteningAssessment:
    """The whole list.

    Attributes:
        steps: in their order.
        notices: what to know, such as a torque that is missing.
    """

    steps: tuple[StepStanding, ...] = ()
    notices: tuple[Notice, ...] = ()

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
    job: Job, verdicts: dict[str, Verdict], *, asks_for_in_line: bool
) -> TighteningAssessment:
    """The tightening list of a job.

    Args:
        job: of which the sheet gives the joints and the log what was done.
        verdicts: of the readings that hold points ask for, by "protrusion", "squaring",
            "in_line"; one that is not asked for on this job is left out.
        asks_for_in_line: whether the plan holds for the legs being in line.
    """
    notices: list[Notice] = []
    try:
        made = plan_for(job.sheet, asks_for_in_line=asks_for_in_line)
    except AlignerError as error:
        return TighteningAssessment(notices=(attention("sheet.rules", f"{error}."),))
    done = ticked_steps(job.log)
    standings: list[StepStanding] = []
    has_next = False
    done_since: dict[str, list[LogEntry]] = {}
    for number, step in enumerate(made.steps, start=1):
        entry = done.get(step.key)
        if entry is not None:
            state = StepState.DONE
        else:
            state = StepState.LATER if has_next else StepState.NEXT
            has_next = True
        waits_for = _waits_for(job, step, verdicts, done_since)
        standings.append(StepStanding(number, step, state, entry, waits_for))
        if step.kind == "hold" and step.reads is not None:
            done_since[step.reads] = []
        elif step.kind == "torque" and entry is not None:
            for entries in done_since.values():
                entries.append(entry)
    for name in sorted({step.joint or "" for step in made.steps if step.torque_missing}):
        notices.append(
            attention(
                "sheet.fasteners",
                f"The torque of the {name} is missing: take it from the maker's manual. "
                "It is never guessed here.",
            )
        )
    for text in made.overridden:
        notices.append(note("sheet.rules", str(text)))
    return TighteningAssessment(tuple(standings), tuple(notices))


def _waits_for(
    job: Job, step: Step, verdicts: dict[str, Verdict], done_since: dict[str, list[LogEntry]]
) -> str:
    """Why a hold point cannot pass now.

    One that measures again what an earlier one measured
    needs readings from after everything that was tightened since.
    """
    if step.kind != "hold" or step.reads is None or step.reads not in verdicts:
        return ""
    verdict = verdicts[step.reads]
    if verdict is not Verdict.WITHIN:
        return {
            Verdict.OUT: "the readings are out: correct, then measure again",
            Verdict.UNSETTLED: "the readings cannot tell yet",
            Verdict.MISSING: "the readings are missing",
        }[verdict]
    begun = job.align.begun
    for entry in done_since.get(step.reads, ()):
        if begun is None or begun < entry.at:
            return "the readings are from before the clamps were tightened: measure again"
    return ""


def plan_for(sheet: Sheet, *, asks_for_in_line: bool) -> Plan:
    """The planner's list for a sheet; the same sheet is planned once.

    Raises:
        AlignerError: rules that cannot all be kept, or that name what is not there.
    """
    return _planned(
        tuple(joint_of(fastener) for fastener in sheet.fasteners),
        tuple(
            Rule(rule.kind, rule.first, rule.then, rule.because, rule.source)
            for rule in sheet.rules
        ),
        asks_for_in_line,
    )


def joint_of(fastener: Fastener) -> Joint:
    """A fastener of the sheet as the planner takes it."""
    return Joint(
        name=fastener.name,
        kind=fastener.kind,
        side=fastener.side.value if fastener.side else "",
        bolts=fastener.bolts,
        torque=_range_of(fastener),
        passes=tuple(share.value / 100 for share in fastener.passes) or None,
        pattern=fastener.pattern.value,
        back_off_deg=fastener.back_off.value if fastener.back_off else None,
        seating=(
            TorqueRange(
                fastener.seating.target_nm, fastener.seating.low_nm, fastener.seating.high_nm
            )
            if fastener.seating
            else None
        ),
        recheck_km=fastener.again_after.value if fastener.again_after else None,
    )


def _range_of(fastener: Fastener) -> TorqueRange | None:
    torque = fastener.torque
    return TorqueRange(torque.target_nm, torque.low_nm, torque.high_nm) if torque else None


@lru_cache(maxsize=16)
def _planned(joints: tuple[Joint, ...], rules: tuple[Rule, ...], asks_for_in_line: bool) -> Plan:
    return plan(joints, rules, check_in_line=asks_for_in_line)
