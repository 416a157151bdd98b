"""Edits of what was found and taken off; those that tick a step are in `assessment.ticks`.

The trap: an entry is known by its place in the order. Whoever moves one therefore says where it
went, and what is typed meanwhile goes to the entry it was typed for.
"""

from __future__ import annotations

from datetime import datetime
from typing import Any

from aligner.errors import AlignerError
from aligner.job.job import Job
from aligner.job.listed_gauges import with_gauge_known
from aligner.job.log import Action, LogEntry, ticked_steps
from aligner.job.strip import Removed
from aligner.job.usual_clutter import reminder_for
from aligner.language import say


def without_loosened(job: Job, step: str, at: datetime, reason: str = "") -> Job:
    """The job with a step of the loosening list not done after all; both entries stay.

    Raises:
        AlignerError: the step is not ticked.
    """
    if step not in ticked_steps(job.strip.log):
        raise AlignerError(step, say("it is not ticked"), say("untick a step that is done"))
    entry = LogEntry(step=step, action=Action.UNTICKED, at=at, reason=reason.strip())
    return job.with_changes(strip=job.strip.with_changes(log=(*job.strip.log, entry)))


def with_as_found(job: Job, path: str, value: object) -> Job:
    """The job with another value of how things stood.

    Args:
        job: to be changed.
        path: below `as_found`: "steering", "left.oil", "protrusion.right", "bracket.gauge".
        value: readings, a quantity, words, or the name of a gauge, which goes on the job's list.
    """
    found = job.as_found
    name, _, field = path.partition(".")
    if field == "gauge":
        job = with_gauge_known(job, value if isinstance(value, str) else None)
    part = getattr(found, name).with_changes(**{field: value}) if field else value
    return job.with_changes(as_found=found.with_changes(**{name: part}))


def with_removed(job: Job, name: str, at: datetime) -> Job:
    """The job with one more thing taken off, the last in the order, with its usual reminder.

    Raises:
        AlignerError: it has no name.
    """
    named = _named(name)
    entry = Removed(name=named, off=at, reminder=reminder_for(named))
    return _with_entries(job, (*job.strip.removed, entry))


def with_removed_changed(job: Job, place: int, **changes: Any) -> Job:
    """The job with other words on one thing; another name brings its own reminder.

    Raises:
        AlignerError: there is no such thing, or the name is empty.
    """
    entry = _entry(job, place)
    if "name" in changes:
        name = _named(changes["name"])
        changes = {**changes, "name": name}
        if name != entry.name:
            changes["reminder"] = reminder_for(name)
    return _with_entry(job, place, entry.with_changes(**changes))


def with_removed_moved(job: Job, place: int, by: int) -> Job:
    """The job with one thing earlier (negative) or later in the order; it stops at the ends.

    Raises:
        AlignerError: there is no such thing.
    """
    entry = _entry(job, place)
    others = [*job.strip.removed[:place], *job.strip.removed[place + 1 :]]
    others.insert(moved_to(job, place, by), entry)
    return _with_entries(job, tuple(others))


def moved_to(job: Job, place: int, by: int) -> int:
    """Where a thing stands after it was moved."""
    return min(max(place + by, 0), len(job.strip.removed) - 1)


def without_removed(job: Job, place: int) -> Job:
    """The job without an entry that was a slip.

    Raises:
        AlignerError: there is no such thing.
    """
    _entry(job, place)
    return _with_entries(job, (*job.strip.removed[:place], *job.strip.removed[place + 1 :]))


def with_put_back(job: Job, place: int, at: datetime | None) -> Job:
    """The job with a thing back on its place since then; `None`: it is off after all.

    Raises:
        AlignerError: there is no such thing.
    """
    return _with_entry(job, place, _entry(job, place).with_changes(back=at))


def _entry(job: Job, place: int) -> Removed:
    if not 0 <= place < len(job.strip.removed):
        raise AlignerError(
            "removed",
            say("there is no entry {number}", number=place + 1),
            say("take one of the list"),
        )
    return job.strip.removed[place]


def _named(name: str) -> str:
    named = " ".join(name.split())
    if not named:
        raise AlignerError(say("name"), say("it is empty"), say("say what came off"))
    return named


def _with_entry(job: Job, place: int, entry: Removed) -> Job:
    entries = list(job.strip.removed)
    entries[place] = entry
    return _with_entries(job, tuple(entries))


def _with_entries(job: Job, entries: tuple[Removed, ...]) -> Job:
    return job.with_changes(strip=job.strip.with_changes(removed=entries))
