"""A torque that the manual prints once for both sides, taken over where it was typed for one.

The trap: this must never guess. It is only ever asked for by a person, and only between two
fasteners of one kind and one number of bolts, one on each side, of which one has its torque. Where
both have a thread, a strength class or a condition and they differ, the torque differs too.
"""

from __future__ import annotations

from datetime import datetime

from aligner.job.edits_sheet import torque_source, with_fastener, with_torque, with_torque_source
from aligner.job.job import Job
from aligner.sheet import Fastener, Sheet

_DECIDES = ("thread", "strength_class", "thread_condition")


def lacking_on_one_side(sheet: Sheet) -> tuple[tuple[int, int], ...]:
    """Where a torque stands on one side alone: the place that lacks it, and the one that has it."""
    return tuple(
        (place, twin)
        for place, fastener in enumerate(sheet.fasteners)
        if fastener.side is not None and fastener.torque is None
        for twin in _twins(sheet, fastener)
        if sheet.fasteners[twin].torque is not None and _agree(fastener, sheet.fasteners[twin])
    )


def with_torques_of_the_other_side(job: Job, at: datetime) -> Job:
    """The job with every torque that stands on one side alone on both.

    The source goes with it, and the thread and its condition where they are not given.

    Args:
        job: to be changed.
        at: the time, for the log where a ticked step opens again.
    """
    for place, twin in lacking_on_one_side(job.sheet):
        lacking, known = job.sheet.fasteners[place], job.sheet.fasteners[twin]
        source = torque_source(job.sheet, lacking, "torque")
        job = with_torque(job, place, "torque", known.torque, at)
        if not source:
            source = torque_source(job.sheet, known, "torque")
            job = with_torque_source(job, place, "torque", source, at)
        wanted = {
            field: getattr(known, field)
            for field in ("thread", "thread_condition")
            if not getattr(lacking, field)
        }
        job = with_fastener(job, place, at, **wanted)
    return job


def _agree(one: Fastener, other: Fastener) -> bool:
    """Whether nothing that is given of both speaks against one torque for them."""
    given = ((getattr(one, field), getattr(other, field)) for field in _DECIDES)
    return all(mine == theirs for mine, theirs in given if mine and theirs)


def _twins(sheet: Sheet, fastener: Fastener) -> tuple[int, ...]:
    """The place of the one like it on the other side; none where there are several of a kind."""
    alike = [
        (place, each.side)
        for place, each in enumerate(sheet.fasteners)
        if (each.kind, each.bolts) == (fastener.kind, fastener.bolts) and each.side is not None
    ]
    if len(alike) != 2 or alike[0][1] == alike[1][1]:
        return ()
    return tuple(place for place, side in alike if side is not fastener.side)
