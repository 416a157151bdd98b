"""Edits of a job's findings as pure functions: the job as it is in, the job as it shall be out.

The trap: a new part counts as fitted only while the part is to be replaced. A finding that is
changed takes the tick away with it, so that an old tick cannot answer for a later finding.
"""

from __future__ import annotations

from datetime import date, datetime
from typing import Any

from aligner.job.gauges import Gauge
from aligner.job.inspect import CarriedFinding, Finding, Found, Place
from aligner.job.job import Job
from aligner.sheet.inspection import InspectionLimit
from aligner.sheet.quantities import Length


def with_readings(job: Job, place: Place, readings: tuple[Length, ...]) -> Job:
    """The job with other readings at a place."""
    return _with_found(job, job.inspect.at_place(place).with_changes(readings=readings))


def with_gauge(job: Job, place: Place, name: str, described: Gauge) -> Job:
    """The job with another gauge for a place; one the job does not know yet joins its list."""
    if name not in job.gauges:
        job = job.with_changes(gauges={**job.gauges, name: described})
    return _with_found(job, job.inspect.at_place(place).with_changes(gauge=name))


def with_finding(job: Job, place: Place, finding: Finding | None, at: datetime) -> Job:
    """The job with a person's finding at a place; `None` takes it back."""
    before = job.inspect.at_place(place)
    if before.finding is finding:
        return job
    given_at = at if finding else None
    return _with_found(job, before.with_changes(finding=finding, at=given_at, is_fitted=False))


def with_note(job: Job, place: Place, note: str) -> Job:
    """The job with another note at a place."""
    return _with_found(job, job.inspect.at_place(place).with_changes(note=note.strip()))


def with_photograph(job: Job, place: Place, name: str) -> Job:
    """The job with one more photograph at a place; one that is there already stays once."""
    before = job.inspect.at_place(place)
    if name in before.photographs:
        return job
    return _with_found(job, before.with_changes(photographs=(*before.photographs, name)))


def without_photograph(job: Job, place: Place, name: str) -> Job:
    """The job without a photograph at a place; the file itself stays where it is."""
    before = job.inspect.at_place(place)
    kept = tuple(each for each in before.photographs if each != name)
    return _with_found(job, before.with_changes(photographs=kept))


def with_part_fitted(job: Job, place: Place, is_fitted: bool) -> Job:
    """The job with the new part said to be fitted, or still due."""
    before = job.inspect.at_place(place)
    is_fitted = is_fitted and before.finding is Finding.REPLACE
    return _with_found(job, before.with_changes(is_fitted=is_fitted))


def with_limit(job: Job, key: str, **changes: Any) -> Job:
    """The job with another limit on its own copy of the sheet.

    Args:
        job: the job.
        key: the point's.
        changes: `value` (a length, `None` takes the limit off), `of`, `source`.
    """
    limits = dict(job.sheet.inspection)
    before = limits.pop(key, None)
    if before is not None:
        changes = {"value": before.value, "of": before.of, "source": before.source, **changes}
    if changes.get("value") is not None:
        limits[key] = InspectionLimit(**changes)
    if limits == job.sheet.inspection:
        return job
    return job.with_changes(sheet=job.sheet.with_changes(inspection=limits))


def carried_from(earlier: Job) -> tuple[CarriedFinding, ...]:
    """What a job leaves for the next one on the same bike, oldest first.

    A part that is to be watched comes with everything earlier jobs said of it. A part that was
    to be replaced comes until its new part is fitted. What was found good, or replaced, ends
    there; what was not looked at this time comes again as it came.
    """
    kept: list[CarriedFinding] = []
    for found in earlier.inspect.found:
        if found.finding is Finding.WATCH or is_due(found):
            kept += [*earlier.inspect.carried_at(found.place), _carried(earlier, found)]
    looked_at = {found.place for found in earlier.inspect.found if found.finding}
    kept += [each for each in earlier.inspect.carried if each.place not in looked_at]
    return tuple(sorted(kept, key=CarriedFinding.day))


def with_carried(job: Job, earlier: Job) -> Job:
    """The job with what an earlier job on the same bike left for it."""
    return job.with_changes(inspect=job.inspect.with_changes(carried=carried_from(earlier)))


def is_due(found: Found) -> bool:
    """Whether a part is to be replaced and its new one is not fitted yet."""
    return found.finding is Finding.REPLACE and not found.is_fitted


def _carried(earlier: Job, found: Found) -> CarriedFinding:
    return CarriedFinding(
        on=_day_of(earlier, found),
        point=found.point,
        side=found.side,
        finding=found.finding or Finding.WATCH,
        readings=found.readings,
        note=found.note,
    )


def _day_of(job: Job, found: Found) -> date | None:
    """The day of a finding; where a document lacks it, the day the job was signed off."""
    if found.at is not None:
        return found.at.date()
    return job.prove.sign_off.on if job.prove.sign_off else None


def _with_found(job: Job, found: Found) -> Job:
    before = job.inspect.found
    changed = [found if each.place == found.place else each for each in before]
    if found not in changed:
        changed.append(found)
    kept = tuple(each for each in changed if not each.is_empty or each.gauge)
    if kept == before:
        return job
    return job.with_changes(inspect=job.inspect.with_changes(found=kept))
