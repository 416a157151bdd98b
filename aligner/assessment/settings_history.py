"""What was set on one bike, job after job: the same value laid side by side over the years.

The trap: a job that was begun and not finished says nothing of how the bike was left. Only
what was read counts, and each value stands at the last day of its own job.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from aligner.assessment.assess import assess
from aligner.job import Job
from aligner.language import say


@dataclass(frozen=True)
class SettingSeries:
    """One thing that was set, each time.

    Attributes:
        name: of it ("left air gap"), in the language spoken.
        unit: "mm", "ml", "%", "N·m".
        points: day and value in that unit, oldest first.
    """

    name: str
    unit: str
    points: tuple[tuple[date, float], ...]


def settings_history(jobs: Sequence[Job]) -> tuple[SettingSeries, ...]:
    """Every setting of a bike over its jobs, in the order in which they are first met."""
    found: dict[tuple[str, str], list[tuple[date, float]]] = {}
    for day, job in sorted(((last_day(job), job) for job in jobs), key=_by_day):
        if day is None:
            continue
        for name, unit, value in _settings(job):
            found.setdefault((name, unit), []).append((day, value))
    return tuple(SettingSeries(name, unit, tuple(points)) for (name, unit), points in found.items())


def last_day(job: Job) -> date | None:
    """The last day that anything was done on a job; `None` where nothing bears a date."""
    logs = (*job.log, *job.strip.log, *job.build.log, *job.prove.rechecks)
    days = [entry.at.date() for entry in logs]
    days += [found.at.date() for found in job.inspect.found if found.at is not None]
    days += [attempt.closed.date() for attempt in job.attempts]
    if job.align.begun is not None:
        days.append(job.align.begun.date())
    if job.prove.sign_off is not None:
        days.append(job.prove.sign_off.on)
    return max(days, default=None)


def _by_day(each: tuple[date | None, Job]) -> date:
    return each[0] or date.min


def _settings(job: Job) -> list[tuple[str, str, float]]:
    """Heights as they were left, then what was set while building up."""
    assessment = assess(job)
    heights = assessment.protrusion
    rows = []
    if heights.left is not None:
        rows.append((say("left height"), "mm", heights.left.value_mm))
    if heights.right is not None:
        rows.append((say("right height"), "mm", heights.right.value_mm))
    rows += [
        (each.name, each.unit, each.value)
        for each in assessment.build.settings
        if each.value is not None
    ]
    return rows
