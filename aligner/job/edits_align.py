"""Edits of the alignment: readings, points, method and policy; attempts put by.

The trap: a method or an attempt that is changed must take no reading with it. Readings by
the method that is left are kept beside the new one, and an attempt is closed only whole.
"""

from __future__ import annotations

from datetime import datetime
from typing import Any

from aligner.geometry import Policy
from aligner.job.align import (
    Align,
    BarReadings,
    InLineReadings,
    PlateReadings,
    ProtrusionReadings,
    SpreadReadings,
    SquaringPair,
)
from aligner.job.job import Attempt, Job
from aligner.language import say
from aligner.sheet.quantities import Quantity

Readings = tuple[Quantity, ...]

_READ = ("gap", "end_difference", "upper", "lower")


def with_protrusion(job: Job, side: str, readings: Readings, at: datetime) -> Job:
    """The job with other readings of one leg's height."""
    protrusion = job.align.protrusion.with_changes(**{side: readings})
    return _with_readings(job, at, protrusion=protrusion)


def with_policy(job: Job, policy: Policy) -> Job:
    """The job with another choice of which leg goes where."""
    protrusion = job.align.protrusion.with_changes(policy=policy)
    return _with_align(job, protrusion=protrusion)


def with_heights_gauge(job: Job, gauge: str | None) -> Job:
    """The job with the heights read with another gauge."""
    return _with_align(job, protrusion=job.align.protrusion.with_changes(gauge=gauge))


def with_distances(job: Job, place: int, side: str, readings: Readings, at: datetime) -> Job:
    """The job with other distances on one side of one pair; one that has gone takes none."""
    if place >= len(job.align.squaring):
        return job
    pair = job.align.squaring[place].with_changes(**{side: readings})
    return _with_readings(job, at, squaring=_replaced(job, place, pair))


def with_pair(job: Job, place: int, **changes: Any) -> Job:
    """The job with other particulars of one pair: its name, gauge, dimensions or asymmetry.

    A pair that was undone while it was being typed takes none.
    """
    if place >= len(job.align.squaring):
        return job
    pair = job.align.squaring[place].with_changes(**changes)
    return _with_align(job, squaring=_replaced(job, place, pair))


def with_another_pair(job: Job) -> Job:
    """The job with one more pair of distances to the frame."""
    pairs = job.align.squaring
    gauge = pairs[-1].gauge if pairs else job.align.protrusion.gauge
    taken = {pair.name for pair in pairs}
    names = (say("pair {number}", number=n) for n in range(len(pairs) + 1, 2 * len(pairs) + 2))
    name = next(each for each in names if each not in taken)
    return _with_align(job, squaring=(*pairs, SquaringPair(name=name, gauge=gauge)))


def without_pair(job: Job, place: int) -> Job:
    """The job with one pair of distances taken off, its readings with it."""
    pairs = job.align.squaring
    return _with_align(job, squaring=(*pairs[:place], *pairs[place + 1 :]))


def with_in_line(job: Job, method: str, at: datetime, **changes: Any) -> Job:
    """The job with other readings or dimensions by one method, whether or not it is in use.

    What was typed for a method that is left meanwhile is kept with that method.
    """
    align = job.align
    present = align.in_line
    known = [part for part in (present, *align.in_line_others) if part and part.method == method]
    before = known[0] if known else _begun_by(method, None)
    changed = before.with_changes(**changes)
    if changed == before:
        return job
    fields: dict[str, Any] = {"in_line": changed}
    if present is not None and present.method != method:
        others = (other for other in align.in_line_others if other.method != method)
        fields = {"in_line_others": (*others, changed)}
    if any(name in _READ for name in changes):
        return _with_readings(job, at, **fields)
    return _with_align(job, **fields)


def with_in_line_gauge(job: Job, gauge: str | None) -> Job:
    """The job with the legs' plane read with another gauge, by the method in use."""
    readings = job.align.in_line or PlateReadings(method="plate")
    return _with_align(job, in_line=readings.with_changes(gauge=gauge))


def with_in_line_method(job: Job, method: str) -> Job:
    """The job with the legs' plane read by another method; what was read is kept beside it.

    Readings by a method that was left come back when it is chosen again.
    """
    present = job.align.in_line
    if present is not None and present.method == method:
        return job
    others = [other for other in job.align.in_line_others if other.method != method]
    kept = next((other for other in job.align.in_line_others if other.method == method), None)
    if present is not None:
        others.append(present)
    gauge = present.gauge if present is not None else None
    chosen = kept or _begun_by(method, gauge)
    return _with_align(job, in_line=chosen, in_line_others=tuple(others))


def has_readings(align: Align) -> bool:
    """Whether anything was read in an attempt."""
    return bool(
        align.protrusion.left
        or align.protrusion.right
        or any(pair.left or pair.right for pair in align.squaring)
        or any(readings_by(part) for part in (align.in_line, *align.in_line_others) if part)
    )


def readings_by(readings: InLineReadings) -> int:
    """How many readings there are by one method of telling whether the legs are in line."""
    return sum(len(getattr(readings, name, ())) for name in _READ)


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


def _begun_by(method: str, gauge: str | None) -> InLineReadings:
    match method:
        case "plate":
            return PlateReadings(method="plate", gauge=gauge)
        case "bars":
            return BarReadings(method="bars", gauge=gauge)
        case "spread":
            return SpreadReadings(method="spread", gauge=gauge)
    raise ValueError(f"no method {method!r}")


def _replaced(job: Job, place: int, pair: SquaringPair) -> tuple[SquaringPair, ...]:
    pairs = list(job.align.squaring)
    pairs[place] = pair
    return tuple(pairs)


def _with_readings(job: Job, at: datetime, **changes: Any) -> Job:
    """The job with other readings; the first of an attempt sets when it was begun."""
    if all(getattr(job.align, name) == value for name, value in changes.items()):
        return job
    return _with_align(job, begun=job.align.begun or at, **changes)


def _with_align(job: Job, **changes: Any) -> Job:
    return job.with_changes(align=job.align.with_changes(**changes))


def _emptied(align: Align) -> Align:
    """The same gauges, points, dimensions, method and policy, without readings."""
    return Align(
        protrusion=ProtrusionReadings(gauge=align.protrusion.gauge, policy=align.protrusion.policy),
        squaring=tuple(pair.with_changes(left=(), right=()) for pair in align.squaring),
        in_line=_without_readings(align.in_line) if align.in_line else None,
        in_line_others=tuple(_without_readings(other) for other in align.in_line_others),
    )


def _without_readings(readings: InLineReadings) -> InLineReadings:
    changes: dict[str, Any] = {name: () for name in _READ if hasattr(readings, name)}
    if isinstance(readings, PlateReadings):
        changes["corner"] = None  # after a correction the gap may stand at another one
    return readings.with_changes(**changes)
