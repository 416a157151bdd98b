"""The build list: what is done to each leg and to the head bearing, by kind of fork.

The trap: a step that belongs to another fork is worse than none, so each names the kinds it is
for. What the sheet says (which way up, how long) stands in the step's words; where the sheet is
silent the step says that, and gives no value of its own.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Literal

from pydantic import TypeAdapter

from aligner.data_files import resource
from aligner.job.job import Job
from aligner.job.log import LogEntry, ticked_steps
from aligner.language import say
from aligner.sheet import ForkKind, Sheet
from aligner.sheet.legs import Way
from aligner.sheet.model import Part
from aligner.sheet.quantities import Quantity

Phase = Literal["leg", "oil", "spring", "cap", "bearing"]
PHASES: tuple[Phase, ...] = ("leg", "oil", "spring", "cap", "bearing")
BOTH = ("left", "right")


class BuildStepRow(Part):
    """A row of resources/build/steps.json.

    Attributes:
        key: names the step for good in a job's log.
        phase: which part of the work it belongs to.
        title: what to do; may hold {value}.
        value: what of the sheet stands in for {value}: "closer_coils", "order", "spacer"; "".
        title_without: what to do where the sheet does not say; "" leaves the step out.
        reason: why it is done, and why here.
        caution: where the danger is; "" if none.
        kinds: of fork; empty for every kind.
        needs_adjuster: only where the sheet says that the cap holds a preload adjuster.
        source: where it comes from.
    """

    key: str
    phase: Phase
    title: str
    value: str = ""
    title_without: str = ""
    reason: str
    caution: str = ""
    kinds: tuple[str, ...] = ()
    needs_adjuster: bool = False
    source: str


@dataclass(frozen=True)
class BuildStep:
    """One step for one bike, its words in the language spoken.

    Attributes:
        key: of the row.
        phase: of the work.
        title: with the sheet's values in it.
        reason: why.
        caution: "" if none.
        sides: "left" and "right", or "" alone where it is done once.
        done: the log entry that ticked it, by side.
    """

    key: str
    phase: Phase
    title: str
    reason: str
    caution: str
    sides: tuple[str, ...]
    done: dict[str, LogEntry]

    @property
    def open_sides(self) -> tuple[str, ...]:
        """The sides on which it is not done."""
        return tuple(side for side in self.sides if side not in self.done)


@cache
def build_step_rows() -> tuple[BuildStepRow, ...]:
    """The rows of resources/build/steps.json, in their order."""
    content = resource("build", "steps.json").read_bytes()
    return TypeAdapter(tuple[BuildStepRow, ...]).validate_json(content)


def log_key(key: str, side: str) -> str:
    """What a step is called in the log: "left/cap_turned_in", "bearing_greased"."""
    return f"{side}/{key}" if side else key


def build_steps(job: Job) -> tuple[BuildStep, ...]:
    """The build list of a job's bike, each step with what is ticked."""
    ticked = ticked_steps(job.build.log)
    steps = []
    for row in build_step_rows():
        title = _title(row, job.sheet)
        if not title:
            continue
        sides = ("",) if row.phase == "bearing" else BOTH
        entries = {side: ticked.get(log_key(row.key, side)) for side in sides}
        done = {side: entry for side, entry in entries.items() if entry is not None}
        reason, caution = say(row.reason), say(row.caution)
        steps.append(BuildStep(row.key, row.phase, title, reason, caution, sides, done))
    return tuple(steps)


def _title(row: BuildStepRow, sheet: Sheet) -> str:
    if row.kinds and sheet.fork.kind.value not in row.kinds:
        return ""
    if row.needs_adjuster and not sheet.legs.spring.has_adjuster:
        return ""
    if not row.value:
        return say(row.title)
    value = getattr(sheet.legs.spring, row.value)
    if not value:
        return say(row.title_without)
    return say(row.title, value=_words(value))


def _words(value: object) -> str:
    """A quantity as a person reads it, an order as typed, a way as its word."""
    if value is Way.UP:
        return say("up", meaning="closer coils")
    if value is Way.DOWN:
        return say("down", meaning="closer coils")
    return value.said if isinstance(value, Quantity) else str(value)


KINDS = frozenset(kind.value for kind in ForkKind)
"""What a row may name in `kinds`."""
