"""Whether the readings a hold point waits for were taken after all that may have moved them.

The trap: readings that were right and are old. A clamp was slackened, a leg slipped, only one of
two distances was read again: what stands in the boxes is still within, and says nothing any more.

And a clock that was wrong: readings dated later than now would pass as newer than every clamp
that is tightened until that day. They do not count as read after anything, and it is said.
"""

from __future__ import annotations

from collections.abc import Container, Iterable, Sequence
from datetime import datetime

from aligner.assessment.let_go import can_move_what_was_measured, is_taken_back, let_go_by
from aligner.assessment.log_questions import moment_words
from aligner.assessment.notice import Notice, attention
from aligner.fastening.steps import Step
from aligner.job import Action, Align, Job, LogEntry, ticked_steps
from aligner.language import say

#: How far readings may be dated ahead of now, in seconds: two machines' clocks differ by some
#: minutes where nothing sets them. Chosen, no source.
_SKEW = 300.0
_NEVER_MOVES = ("hold", "look")


def begun_at(job: Job, reads: str) -> datetime | None:
    """When the readings that a hold point asks for were begun; `None` if that is not known.

    Heights alone can be put by and read again; the others then stand from before, and are no
    newer than they were. Readings of which only some were taken again are as old as the rest.

    Args:
        job: as it is.
        reads: "protrusion", "squaring" or "in_line".
    """
    begun = job.align.begun
    if reads == "protrusion":
        return begun
    for attempt in reversed(job.attempts):
        stand = begun == attempt.closed and _stand_since(attempt.align, job.align, reads)
        if not stand:
            break
        begun = attempt.align.begun
    return begun


def is_ahead(at: datetime | None, now: datetime | None) -> bool:
    """Whether a time is later than now by more than clocks differ; not where now is not known."""
    return at is not None and now is not None and at.timestamp() - now.timestamp() > _SKEW


def clock_notices(job: Job, now: datetime | None) -> tuple[Notice, ...]:
    """What there is to ask about the time of the readings in hand."""
    begun = job.align.begun
    if begun is None or now is None or not is_ahead(begun, now):
        return ()
    text = say(
        "The readings are dated {then}, and it is {now}: whether they were taken after the clamps "
        "cannot be told. Set the clock, then measure once more.",
        then=moment_words(begun),
        now=moment_words(now),
    )
    return (attention("align.begun", text),)


def why_stale(
    job: Job,
    step: Step,
    steps: Sequence[Step],
    ticked_since: Iterable[LogEntry],
    now: datetime | None = None,
) -> str:
    """Why a hold point cannot pass on its readings, though they are within; "" if it can.

    Args:
        job: as it is.
        step: the hold point.
        steps: the whole list.
        ticked_since: what was tightened since the same was measured by an earlier hold point.
        now: the time, where it is known.
    """
    begun = begun_at(job, step.reads or "")
    if is_ahead(begun, now):
        return say("the readings are dated later than now: set the clock, then measure again")
    for entry in ticked_since:
        if _is_after(entry, begun):
            return say("the readings are from before the clamps were tightened: measure again")
    if all(entry.action is Action.TICKED for entry in job.log):
        return ""
    before = {each.key for each in _up_to(steps, step) if each.kind not in _NEVER_MOVES}
    standing_on_it = {each.key for each in steps if step.key in each.relies_on}
    titles = {each.key: each.title for each in steps}
    for place, entry in enumerate(job.log):
        if entry.action is Action.TICKED or not _is_after(entry, begun):
            continue
        is_slackened = entry.action is Action.UNTICKED and (
            _lets_move(job.log, place, steps, standing_on_it)
        )
        if entry.step in before or is_slackened:
            return say(
                "the readings are from before “{step}” was opened again: measure again",
                step=titles[entry.step],
            )
    return ""


def _lets_move(
    log: tuple[LogEntry, ...], place: int, steps: Sequence[Step], standing_on_it: Container[str]
) -> bool:
    """Whether an untick let go of what keeps the measured where it was."""
    unticked = next((each for each in steps if each.key == log[place].step), None)
    if unticked is None or is_taken_back(log, place, steps):
        return False
    ticked = ticked_steps(log[:place])
    return unticked.key in standing_on_it or any(
        can_move_what_was_measured(each, steps, ticked)
        for each in let_go_by(unticked, steps, ticked)
    )


def _up_to(steps: Sequence[Step], step: Step) -> Iterable[Step]:
    for each in steps:
        if each.key == step.key:
            return
        yield each


def _is_after(entry: LogEntry, begun: datetime | None) -> bool:
    return begun is None or begun.timestamp() < entry.at.timestamp()  # one may lack its offset


def _stand_since(earlier: Align, now: Align, reads: str) -> bool:
    """Whether any reading of an attempt still stands in the next."""
    if reads == "squaring":
        known = {pair.name: pair for pair in earlier.squaring}
        return any(
            _is_kept(getattr(known[pair.name], side), getattr(pair, side))
            for pair in now.squaring
            if pair.name in known
            for side in ("left", "right")
        )
    parts = {part.method: part for part in (earlier.in_line, *earlier.in_line_others) if part}
    return any(
        _is_kept(getattr(parts[part.method], name, ()), getattr(part, name, ()))
        for part in (now.in_line, *now.in_line_others)
        if part and part.method in parts
        for name in ("gap", "end_difference", "upper", "lower")
    )


def _is_kept(earlier: tuple[object, ...], now: tuple[object, ...]) -> bool:
    return bool(earlier) and any(reading in earlier for reading in now)
