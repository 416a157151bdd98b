"""Edits of what is built up, as pure functions: the job as it is in, the job as it shall be out."""

from __future__ import annotations

from datetime import date, datetime
from typing import Any

from aligner.errors import AlignerError
from aligner.job.build import BearingAdjustment, EarlierGaps
from aligner.job.job import Job
from aligner.job.listed_gauges import with_gauge_known
from aligner.job.log import Action, LogEntry, ticked_steps
from aligner.language import say
from aligner.sheet.quantities import Length

SIDES = ("left", "right")


def with_build(job: Job, **changes: Any) -> Job:
    """The job with other fields of its build ("oil", "gauge")."""
    return job.with_changes(build=job.build.with_changes(**changes))


def with_gap_gauge(job: Job, name: str | None) -> Job:
    """The job with the air gaps read with another gauge."""
    return with_build(with_gauge_known(job, name), gauge=name)


def with_leg_oil(job: Job, side: str, **changes: Any) -> Job:
    """The job with another air gap or volume of one leg."""
    return with_build(job, **{side: getattr(job.build, side).with_changes(**changes)})


def with_gaps_to_read_again(job: Job, at: datetime) -> Job:
    """The job with the air gaps put by, and empty boxes for the next readings."""
    build = job.build
    if not (build.left.gap or build.right.gap):
        return job
    put_by = EarlierGaps(closed=at, left=build.left.gap, right=build.right.gap)
    emptied = with_leg_oil(with_leg_oil(job, "left", gap=()), "right", gap=())
    return with_build(emptied, earlier=(*build.earlier, put_by))


def with_blend(job: Job, **changes: Any) -> Job:
    """The job with another oil, viscosity or amount of the blend."""
    return with_build(job, blend=job.build.blend.with_changes(**changes))


def with_spring(job: Job, **changes: Any) -> Job:
    """The job with another length of spring and spacer ("room", "fitted_spacer")."""
    return with_build(job, spring=job.build.spring.with_changes(**changes))


def with_sag_lengths(job: Job, which: str, readings: tuple[Length, ...]) -> Job:
    """The job with other readings of one length of the sag ("extended", "rider_up")."""
    return with_build(job, sag=job.build.sag.with_changes(**{which: readings}))


def with_sag_gauge(job: Job, name: str | None) -> Job:
    """The job with the sag lengths read with another gauge."""
    job = with_gauge_known(job, name)
    return with_build(job, sag=job.build.sag.with_changes(gauge=name))


def with_sag_spacer(job: Job, spacer: Length | None) -> Job:
    """The job with the sag read with another spacer in the legs."""
    return with_build(job, sag=job.build.sag.with_changes(spacer=spacer))


def with_bearing(job: Job, **changes: Any) -> Job:
    """The job with another reading of the head bearing's check."""
    return with_build(job, bearing=job.build.bearing.with_changes(**changes))


def with_another_adjustment(job: Job, on: date) -> Job:
    """The job with one more adjustment of the head bearing, still to be described."""
    made = (*job.build.bearing.adjustments, BearingAdjustment(on=on))
    return with_bearing(job, adjustments=made)


def with_adjustment(job: Job, place: int, **changes: Any) -> Job:
    """The job with other words on one adjustment."""
    made = list(job.build.bearing.adjustments)
    made[place] = made[place].with_changes(**changes)
    return with_bearing(job, adjustments=tuple(made))


def without_adjustment(job: Job, place: int) -> Job:
    """The job without an adjustment that was not made."""
    made = job.build.bearing.adjustments
    return with_bearing(job, adjustments=(*made[:place], *made[place + 1 :]))


def with_legs_value(job: Job, path: str, value: object, source: str) -> Job:
    """The job with another value of the sheet's legs, and where it comes from.

    Args:
        job: to be changed.
        path: below the sheet's legs, such as "bore" or "oil.air_gap".
        value: `None` takes it out.
        source: where it comes from; "" leaves what is said of it.
    """
    sheet = job.sheet
    name, _, field = path.partition(".")
    part: object = value
    if field:
        part = getattr(sheet.legs, name).with_changes(**{field: value})
    legs = sheet.legs.with_changes(**{name: part})
    sources = dict(sheet.sources)
    if value in (None, ""):
        sources.pop(f"legs.{path}", None)
    elif source.strip():
        sources[f"legs.{path}"] = source.strip()
    return job.with_changes(sheet=sheet.with_changes(legs=legs, sources=sources))


def with_build_tick(job: Job, step: str, at: datetime, *, is_done: bool) -> Job:
    """The job with a step of the build list ticked or opened; both stay in the log.

    Raises:
        AlignerError: the step has no name.
    """
    if not step:
        raise AlignerError(say("step"), say("it has no name"), say("take one of the build list"))
    if (step in ticked_steps(job.build.log)) == is_done:
        return job
    action = Action.TICKED if is_done else Action.UNTICKED
    return with_build(job, log=(*job.build.log, LogEntry(step=step, action=action, at=at)))
