"""Edits of a job as pure functions: the job as it is in, the job as it shall be out."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from aligner.job.align import Align, PlateReadings, ProtrusionReadings, SquaringPair
from aligner.job.job import Attempt, Job
from aligner.job.log import Action, LogEntry, ticked_steps
from aligner.sheet.quantities import Quantity, Torque

Readings = tuple[Quantity, ...]


def with_protrusion(job: Job, side: str, readings: Readings, at: datetime) -> Job:
    """The job with other readings of one leg's height."""
    protrusion = job.align.protrusion.with_changes(**{side: readings})
    return _with_align(job, at, protrusion=protrusion)


def with_distances(job: Job, place: int, side: str, readings: Readings, at: datetime) -> Job:
    """The job with other distances on one side of one pair."""
    pairs = list(job.align.squaring)
    pairs[place] = pairs[place].with_changes(**{side: readings})
    return _with_align(job, at, squaring=tuple(pairs))


def with_another_pair(job: Job, at: datetime) -> Job:
    """The job with one more pair of distances to the frame."""
    gauge = job.align.squaring[-1].gauge if job.align.squaring else job.align.protrusion.gauge
    pair = SquaringPair(name=f"pair {len(job.align.squaring) + 1}", gauge=gauge)
    return _with_align(job, at, squaring=(*job.align.squaring, pair))


def with_plate(job: Job, at: datetime, **changes: Any) -> Job:
    """The job with other plate readings; begins them where there are none."""
    readings = job.align.in_line
    if not isinstance(readings, PlateReadings):
        readings = PlateReadings(method="plate")
    return _with_align(job, at, in_line=readings.with_changes(**changes))


def has_readings(align: Align) -> bool:
    """Whether anything was read in an attempt."""
    in_line = align.in_line
    kinds = ("gap", "end_difference", "upper", "lower")
    return bool(
        align.protrusion.left
        or align.protrusion.right
        or any(pair.left or pair.right for pair in align.squaring)
        or any(getattr(in_line, kind, ()) for kind in kinds)
    )


def with_attempt_closed(job: Job, at: datetime) -> Job:
    """The job with the present readings put by as an attempt, and empty boxes for the next."""
    if not has_readings(job.align):
        return job
    attempt = Attempt(closed=at, align=job.align)
    return job.with_changes(attempts=(*job.attempts, attempt), align=_emptied(job.align))


def with_heights_to_read_again(job: Job, at: datetime) -> Job:
    """The job with the heights put by and to be read again; the other readings stand."""
    attempt = Attempt(closed=at, align=job.align)
    align = job.align.with_changes(
        begun=at,
        protrusion=job.align.protrusion.with_changes(left=(), right=()),
    )
    return job.with_changes(attempts=(*job.attempts, attempt), align=align)


def with_tick(
    job: Job,
    step: str,
    at: datetime,
    *,
    torque: Torque | None = None,
    wrench: str = "",
    reason: str = "",
) -> Job:
    """The job with a step ticked, as the log's newest entry."""
    entry = LogEntry(step=step, at=at, torque=torque, wrench=wrench, reason=reason)
    return job.with_changes(log=(*job.log, entry))


def with_untick(job: Job, step: str, at: datetime, reason: str) -> Job:
    """The job with a step unticked; both entries stay in the log."""
    entry = LogEntry(step=step, action=Action.UNTICKED, at=at, reason=reason)
    return job.with_changes(log=(*job.log, entry))


def with_steps_opened(job: Job, steps: tuple[str, ...], at: datetime, reason: str) -> Job:
    """The job with ticked steps opened again because what they rely on has changed."""
    ticked = ticked_steps(job.log)
    entries = [
        LogEntry(step=step, action=Action.OPENED_AGAIN, at=at, reason=reason)
        for step in steps
        if step in ticked
    ]
    return job.with_changes(log=(*job.log, *entries)) if entries else job


def _with_align(job: Job, at: datetime, **changes: Any) -> Job:
    begun = job.align.begun or at
    return job.with_changes(align=job.align.with_changes(begun=begun, **changes))


def _emptied(align: Align) -> Align:
    """The same gauges, points and policy, without readings."""
    in_line = align.in_line
    if in_line is not None:
        empty: dict[str, Any] = {
            name: ()
            for name in ("gap", "end_difference", "upper", "lower")
            if hasattr(in_line, name)
        }
        in_line = in_line.with_changes(**empty)
    return Align(
        protrusion=ProtrusionReadings(gauge=align.protrusion.gauge, policy=align.protrusion.policy),
        squaring=tuple(pair.with_changes(left=(), right=()) for pair in align.squaring),
        in_line=in_line,
    )
