"""Ticking a step of a list: edits that look at the whole list first, and refuse what it forbids.

The trap: a screen that forgets to ask. A step out of its order, a hold point that waits, or a
missing torque is therefore refused here, and no path from the keyboard to the log goes round.
"""

from __future__ import annotations

from datetime import datetime

from aligner.assessment.assess import assess
from aligner.assessment.rechecks import assess_rechecks
from aligner.assessment.strip import assess_strip
from aligner.assessment.tightening import StepStanding, StepState
from aligner.errors import AlignerError
from aligner.job import Job, LogEntry
from aligner.language import say
from aligner.sheet.quantities import Torque


class TickRefused(AlignerError):
    """A step must not be ticked like this."""


def with_tick(
    job: Job,
    step: str,
    at: datetime,
    *,
    torque: Torque | None = None,
    wrench: str = "",
    reason: str = "",
) -> Job:
    """The job with a step of the tightening list ticked, as the log's newest entry.

    Args:
        job: as it is.
        step: the step's key.
        at: when.
        torque: the value seen on the wrench; must be given where the sheet has none.
        wrench: wrench and adapter in words (`ToolForStep.words`).
        reason: why it is done out of its order or although it waits.

    Raises:
        TickRefused: there is no such step, it is ticked already, it is out of its order or
            waits and no reason is given, or its torque is missing and none was typed.
    """
    standing = _standing(assess(job, at).tightening.steps, step)
    _check_order(standing, reason)
    _check_torque(standing.step.title, torque, is_missing=standing.step.torque_missing)
    entry = LogEntry(step=step, at=at, torque=torque, wrench=wrench.strip(), reason=reason.strip())
    return job.with_changes(log=(*job.log, entry))


def with_loosened(job: Job, step: str, at: datetime, reason: str = "") -> Job:
    """The job with a step of the loosening list ticked, as that log's newest entry.

    Raises:
        TickRefused: there is no such step, it is ticked already, or it is out of its order or
            waits and no reason is given.
    """
    standing = _standing(assess_strip(job).steps, step)
    _check_order(standing, reason)
    entry = LogEntry(step=step, at=at, reason=reason.strip())
    return job.with_changes(strip=job.strip.with_changes(log=(*job.strip.log, entry)))


def with_recheck(
    job: Job,
    key: str,
    at: datetime,
    *,
    torque: Torque | None = None,
    wrench: str = "",
    reason: str = "",
) -> Job:
    """The job with a fastener checked again after the road test.

    Args:
        job: as it is.
        key: of the row (`RecheckStanding.key`).
        at: when.
        torque: the value seen on the wrench; must be given where the sheet has none.
        wrench: wrench and adapter in words.
        reason: what was noticed, if anything.

    Raises:
        TickRefused: there is no such row, it is ticked already, or its torque is missing and
            none was typed.
    """
    rows = {row.key: row for row in assess_rechecks(job, assess(job).tightening)}
    row = rows.get(key)
    if row is None:
        raise TickRefused(key, say("it is not to be checked again"), say("take one of the list"))
    if row.is_done:
        raise _ticked_already(row.title)
    _check_torque(row.title, torque, is_missing=row.torque is None)
    entry = LogEntry(step=key, at=at, torque=torque, wrench=wrench.strip(), reason=reason.strip())
    prove = job.prove.with_changes(rechecks=(*job.prove.rechecks, entry))
    return job.with_changes(prove=prove)


def _standing(steps: tuple[StepStanding, ...], key: str) -> StepStanding:
    found = next((each for each in steps if each.step.key == key), None)
    if found is None:
        raise TickRefused(
            key, say("there is no such step on the list"), say("take one of the list")
        )
    return found


def _ticked_already(title: str) -> TickRefused:
    return TickRefused(title, say("it is ticked already"), say("untick it first to do it again"))


def _check_order(standing: StepStanding, reason: str) -> None:
    title = standing.step.title
    if standing.state is StepState.DONE:
        raise _ticked_already(title)
    if reason.strip():
        return
    if standing.state is StepState.LATER:
        raise TickRefused(
            title, say("it is out of its order"), say("do the step in hand, or give a reason")
        )
    if standing.waits_for:
        raise TickRefused(title, standing.waits_for, say("or give a reason to go on all the same"))


def _check_torque(title: str, torque: Torque | None, *, is_missing: bool) -> None:
    if torque is None and is_missing:
        raise TickRefused(
            title,
            say("its torque is missing"),
            say("type the one in the maker's manual; none is guessed"),
        )
    if torque is not None and not torque.value > 0:
        raise TickRefused(
            title,
            say("a torque of {torque}", torque=torque.said),
            say("type the value seen on the wrench"),
        )
