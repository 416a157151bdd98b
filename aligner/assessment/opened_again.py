"""Steps that are opened again because what they stand on has changed, each with its reason.

The trap: a clamp stays ticked while the reading it was closed on has been struck out, or while
another clamp was slackened under it. What opens a step again:

1. A hold point that was passed, and whose outcome an edit has changed for the worse (a reading,
   a gauge, a tolerance, a dimension), is open again with all that relies on it. A change that
   leaves the readings within changes no outcome and opens nothing. Readings that were put by
   for a new measurement still stand for what was proved with them; the new ones count against
   an earlier hold point once they are out, not while they are incomplete.
2. A step that was unticked is taken as loosened or undone. That opens the later passes of the
   same joint, what has to be slack while it is done again, and the hold points and looks
   behind it, because what was measured or seen there may have changed; then whatever relies
   on those.

A step that the edit itself has opened (`edits_sheet`, for another torque) is followed like one
that was unticked. Undo gives back the job as it was before the edit, and with it the ticks.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime

from aligner.assessment.assess import Assessment, assess
from aligner.assessment.corrections import asks_for_in_line, asks_for_squaring
from aligner.assessment.let_go import (
    can_move_what_was_measured,
    is_taken_back,
    let_go_by,
    must_be_slack,
)
from aligner.fastening.steps import Step
from aligner.gauging import Verdict
from aligner.job import Action, Align, Job, LogEntry, ticked_steps
from aligner.language import marked, say

_WORDS = {
    Verdict.OUT: marked("The readings that it passed on, or those taken since, are out."),
    Verdict.UNSETTLED: marked("The readings that it passed on cannot tell any more."),
    Verdict.MISSING: marked("The readings that it passed on are missing now."),
}


def with_dependents_opened(before: Job, after: Job, at: datetime) -> Job:
    """The job after an edit, with every ticked step opened again that the edit took its ground.

    Pure, and the same job where nothing is to be opened.

    Args:
        before: the job before the edit.
        after: the job after it.
        at: when.
    """
    standing_ticks = ticked_steps(after.log)
    new_entries = after.log[len(before.log) :]
    has_loosened = any(entry.action is not Action.TICKED for entry in new_entries)
    if not standing_ticks or not (has_loosened or _is_ground_changed(before, after)):
        return after
    now = assess(after)
    steps = tuple(each.step for each in now.tightening.steps)
    found = _Opened(steps, standing_ticks)
    for key, why in _roots(before, after, now, steps):
        found.open(key, why)
    by_key = {step.key: step for step in steps}
    for key in _let_go(before, after, steps):
        found.let_go_of(by_key[key])
    loosened = [
        by_key[entry.step]
        for entry in new_entries
        if entry.action is not Action.TICKED and entry.step in by_key
    ]
    found.follow_all(loosened)
    entries = tuple(
        LogEntry(step=step.key, action=Action.OPENED_AGAIN, at=at, reason=found.why[step.key])
        for step in steps
        if step.key in found.why
    )
    return after.with_changes(log=(*after.log, *entries)) if entries else after


def _let_go(before: Job, after: Job, steps: tuple[Step, ...]) -> Iterator[str]:
    """The steps whose joint the edit lets go of."""
    known = {step.key for step in steps}
    for place in range(len(before.log), len(after.log)):
        entry = after.log[place]
        is_untick = entry.action is Action.UNTICKED and entry.step in known
        if is_untick and not is_taken_back(after.log, place, steps):
            yield entry.step
    if before.sheet is after.sheet:
        return
    earlier = {each.step.key: each.step.target_nm for each in assess(before).tightening.steps}
    ticked = ticked_steps(before.log)
    for step in steps:
        was_nm, is_nm = earlier.get(step.key), step.target_nm
        if step.key in ticked and was_nm is not None and is_nm is not None and is_nm < was_nm:
            yield step.key


_KEPT = marked(
    "What was measured here may have moved: “{step}” kept it in place, and is open again."
)
_SEEN = {
    "hold": marked("What was measured here may have moved: “{step}” is open again."),
    "look": marked("What was looked at here may have changed: “{step}” is open again."),
}


class _Opened:
    """Which steps are opened, and why; grows as one opens another."""

    def __init__(self, steps: tuple[Step, ...], ticked: dict[str, LogEntry]) -> None:
        self._steps = steps
        self._place = {step.key: place for place, step in enumerate(steps)}
        self._ticked = ticked
        self._to_follow: list[Step] = []
        self.why: dict[str, str] = {}

    def open(self, key: str, why: str) -> None:
        """Open a step, if it is ticked; `follow_all` then opens all that stands on it."""
        if key in self._ticked and key in self._place and key not in self.why:
            self.why[key] = why
            self._to_follow.append(self._steps[self._place[key]])

    def let_go_of(self, step: Step) -> None:
        """Open what was measured before a joint that is let go, where that can have moved."""
        for gone in let_go_by(step, self._steps, self._ticked):
            if can_move_what_was_measured(gone, self._steps, self._ticked):
                for other in self._steps[: self._place[gone.key]]:
                    if other.kind == "hold":
                        self.open(other.key, say(_KEPT, step=gone.title))

    def follow_all(self, loosened: list[Step]) -> None:
        """Open what stands on steps that are open, nearest first, so that its reason is near."""
        self._to_follow = [*loosened, *self._to_follow]
        for step in self._to_follow:
            self._follow(step)

    def _follow(self, step: Step) -> None:
        relies = say("It relies on “{step}”, which is open again.", step=step.title)
        comes_after = say("It comes after “{step}”, which is open again.", step=step.title)
        slack = say("It has to be slack while “{step}” is done again.", step=step.title)
        for other in self._steps:
            if step.key in other.relies_on:
                self.open(other.key, relies)
        later = self._steps[self._place[step.key] + 1 :]
        for other in later:
            if step.joint is not None and other.joint == step.joint:
                self.open(other.key, comes_after)
        for other in must_be_slack(step, self._steps):
            self.open(other.key, slack)
        for other in later:
            if step.kind != "look" and other.kind in _SEEN:
                self.open(other.key, say(_SEEN[other.kind], step=step.title))


def _roots(
    before: Job, after: Job, now: Assessment, steps: tuple[Step, ...]
) -> Iterator[tuple[str, str]]:
    """The steps whose own ground has gone, and why."""
    earlier = assess(before)
    passed = ticked_steps(before.log)
    was, is_now = _verdicts(earlier), _verdicts(now)
    is_put_by = before.attempts != after.attempts
    for step in steps:
        entry = passed.get(step.key)
        if entry is None or step.kind != "hold" or step.reads is None or step.reads not in was:
            continue
        old, new = was[step.reads], is_now.get(step.reads, Verdict.MISSING)
        if old is new or new is Verdict.WITHIN:
            continue
        is_struck = (
            old is Verdict.WITHIN and not is_put_by and _stands_on_these(before, entry, step.reads)
        )
        if new is Verdict.OUT or is_struck:
            yield step.key, say(_WORDS[new])


def _verdicts(found: Assessment) -> dict[str, Verdict]:
    verdicts = {"protrusion": found.protrusion.verdict}
    if asks_for_squaring(found.job):
        verdicts["squaring"] = found.squaring.verdict
    if asks_for_in_line(found.job):
        verdicts["in_line"] = found.in_line.verdict
    return verdicts


def _stands_on_these(job: Job, passed: LogEntry, reads: str) -> bool:
    """Whether a hold point was passed on the readings now in the job, or on some put by since.

    The heights are always taken anew when readings are put by; the others may have stayed.
    """
    begun = job.align.begun
    if begun is None or begun.timestamp() <= passed.at.timestamp() or not job.attempts:
        return True
    if reads == "protrusion":
        return False
    return _readings(job.attempts[-1].align, reads) == _readings(job.align, reads)


def _readings(align: Align, reads: str) -> object:
    return getattr(align, reads)


def _is_ground_changed(before: Job, after: Job) -> bool:
    return not (
        before.align == after.align
        and before.sheet == after.sheet
        and before.gauges == after.gauges
        and before.attempts == after.attempts
    )
