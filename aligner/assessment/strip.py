"""Taking apart: the loosening list with what the log says was undone, what came off, what is next.

The trap: the heights as found cannot be read once a clamp is slack. So they come first, before the
first step, and the list asks for them again before the first clamp.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache

from aligner.assessment.as_found import AsFoundRow, as_found_rows, has_heights_as_found
from aligner.assessment.fasteners import joints_of, rules_of
from aligner.assessment.notice import Notice, attention, note
from aligner.assessment.the_very import TheVery
from aligner.assessment.tightening import StepStanding, StepState
from aligner.errors import AlignerError
from aligner.fastening.joints import Joint
from aligner.fastening.planner import Plan
from aligner.fastening.rules import Rule
from aligner.fastening.steps import Step
from aligner.fastening.strip import strip
from aligner.job import Job, LogEntry, ticked_steps
from aligner.job.strip import Removed
from aligner.language import say, say_count, spoken
from aligner.sheet import HandlebarPlace
from aligner.units.preferred import Preferred


class StripSubject(StrEnum):
    """What is to be done next."""

    SHEET = "sheet"
    HEIGHTS = "heights"
    LOOSEN = "loosen"
    DONE = "done"


@dataclass(frozen=True)
class OffPart:
    """Something that was taken off, and its place in the order (0: the first off)."""

    place: int
    entry: Removed


@dataclass(frozen=True)
class StripAssessment:
    """The whole of the taking apart.

    Attributes:
        job: it is of.
        steps: in their order; none of them carries a torque or a tool.
        notices: what to know.
    """

    job: Job
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

    @property
    def is_begun(self) -> bool:
        """Whether anything was read, loosened or taken off."""
        return self.job.is_strip_begun

    @property
    def removed(self) -> tuple[OffPart, ...]:
        """Everything that was taken off, in the order it came off, what is back with it."""
        return tuple(OffPart(place, each) for place, each in enumerate(self.job.strip.removed))

    @property
    def to_go_back(self) -> tuple[OffPart, ...]:
        """What is still off, the last off first."""
        return tuple(each for each in reversed(self.removed) if each.entry.back is None)

    @property
    def not_back(self) -> tuple[str, ...]:
        """The names of what is still off, the last off first."""
        return tuple(each.entry.name for each in self.to_go_back)

    @property
    def asks_for_heights(self) -> bool:
        """Whether the heights as found are still to be read, and still can be."""
        step = next((each for each in self.steps if each.step.reads == "protrusion"), None)
        if step is None or has_heights_as_found(self.job) or step.state is StepState.DONE:
            return False
        clamps = [each for each in self.steps if each.step.joint_kind in _CLAMPS]
        return all(each.state is not StepState.DONE for each in clamps)

    @property
    def subject(self) -> StripSubject:
        """What is to be done next."""
        if not self.steps:
            return StripSubject.SHEET
        if self.is_finished:
            return StripSubject.DONE
        if self.asks_for_heights and not self.done_count:
            return StripSubject.HEIGHTS
        return StripSubject.LOOSEN

    @property
    def sentence(self) -> tuple[str, str, str]:
        """What to do next, its detail, and the caution that belongs to it."""
        match self.subject:
            case StripSubject.SHEET:
                none = say("The sheet lists no fasteners.")
                text = self.notices[0].text if self.notices else none
                return say("There is nothing to loosen yet."), text, ""
            case StripSubject.HEIGHTS:
                return say("Read both heights as found."), _heights_words(self.job), ""
            case StripSubject.DONE:
                return say("Everything is loosened."), self._parts_words(), ""
        standing = self.next_step
        assert standing is not None
        return f"{standing.step.title}.", standing.step.reason, standing.step.caution

    @property
    def line(self) -> str:
        """Where it stands, in a line: "4 of 17 loosened", "all loosened, 3 parts off"."""
        if not self.is_begun:
            return say("not begun")
        off = len(self.not_back)
        if self.is_finished:
            if off:
                return say_count(
                    "all loosened, {count} part off", "all loosened, {count} parts off", off
                )
            is_back = bool(self.job.strip.removed)
            return say("all loosened, all back") if is_back else say("all loosened")
        if self.done_count:
            total = len(self.steps)
            return say("{done} of {total} loosened", done=self.done_count, total=total)
        if off:
            return say_count("{count} part off", "{count} parts off", off)
        return say("as found read") if has_heights_as_found(self.job) else say("as found begun")

    def as_found_rows(self, show: Preferred | None = None) -> tuple[AsFoundRow, ...]:
        """How things stood before, as rows of a name and words."""
        return as_found_rows(self.job, show or Preferred())

    def _parts_words(self) -> str:
        off = self.not_back
        if not off:
            return say("Go on to Inspect, part by part while it is off.")
        return say_count(
            "{count} part is off, to go back last off first. Go on to Inspect.",
            "{count} parts are off, to go back last off first. Go on to Inspect.",
            len(off),
        )


_CLAMPS = ("top_clamp", "lower_clamp")


def assess_strip(job: Job) -> StripAssessment:
    """The loosening list of a job, and what came off."""
    if not job.sheet.fasteners:
        text = say("Give the fasteners on Bike first.")
        return StripAssessment(job, notices=(attention("sheet.fasteners", text),))
    try:
        found = _plan_for(TheVery(job.sheet), spoken())
    except AlignerError as error:
        return StripAssessment(job, notices=(attention("sheet.fasteners", f"{error}."),))
    done = ticked_steps(job.strip.log)
    has_heights = has_heights_as_found(job)
    standings: list[StepStanding] = []
    has_next = False
    for number, step in enumerate(_asked_for(found, done), start=1):
        entry = done.get(step.key)
        state = StepState.DONE if entry else StepState.LATER if has_next else StepState.NEXT
        has_next = has_next or entry is None
        waits_for = ""
        if step.reads == "protrusion" and not has_heights:
            waits_for = say("the heights as found are not written down yet")
        standings.append(StepStanding(number, step, state, entry, waits_for))
    notices = tuple(note("sheet.rules", str(text)) for text in found.overridden)
    return StripAssessment(job, tuple(standings), notices)


@lru_cache(maxsize=2)
def _plan_for(of: TheVery, language: str) -> Plan:
    return _planned(joints_of(of.sheet), rules_of(of.sheet), of.sheet.fork.kind.value, language)


@lru_cache(maxsize=16)
def _planned(joints: tuple[Joint, ...], rules: tuple[Rule, ...], fork: str, _language: str) -> Plan:
    """The list in the language spoken, which is what the last one is for."""
    return strip(joints, rules, fork=fork)


def _asked_for(found: Plan, done: dict[str, LogEntry]) -> Iterator[Step]:
    """The steps less those nobody ticked that a later tick has left behind.

    A nut that is off is not to be cracked any more. So a list ticked before such a step was
    known stays whole, and nothing is said to be done that nobody ticked.
    """
    for step in found.steps:
        if step.key in done or done.keys().isdisjoint(step.done_with):
            yield step


def _heights_words(job: Job) -> str:
    words = say(
        "They can be read only while the clamps still hold: tube top edge above the bracket."
    )
    if job.sheet.fork.handlebars is HandlebarPlace.ABOVE:
        covered = say("Where the handlebars cover the tubes, go on to Loosen: the list asks again.")
        return f"{words} {covered}"
    return words
