"""Edits of the job's list of gauges, and where each of them was used.

The trap: readings know their gauge by its name. A gauge that gets another name must get it
everywhere at once, earlier attempts included, and one that was used anywhere must not go:
those readings would lose what is known of them.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any, TypeVar

from aligner.errors import AlignerError
from aligner.job.gauges import Gauge
from aligner.job.job import Job
from aligner.language import listed, marked, say
from aligner.sheet.model import Part

PartType = TypeVar("PartType", bound=Part)

#: Where readings stand in a job, by the beginning of their path, with the words for it.
_PLACES = (
    ("as_found.protrusion", marked("the heights as found")),
    ("as_found", marked("the readings as found")),
    ("align.protrusion", marked("the heights")),
    ("align.in_line_others", marked("readings kept in line")),
    ("align.in_line", marked("the legs in line")),
    ("inspect", marked("Inspect")),
    ("build", marked("Build")),
)


def with_gauge(job: Job, name: str, gauge: Gauge) -> Job:
    """The job with a gauge put on its list, under a name of its own.

    Raises:
        AlignerError: the name is empty or taken.
    """
    checked = free_gauge_name(job, name)
    return job.with_changes(gauges={**job.gauges, checked: gauge})


def with_gauge_changed(job: Job, name: str, **changes: Any) -> Job:
    """The job with other values of one gauge; every verdict by it follows.

    A gauge that was undone while it was being typed takes none.
    """
    if name not in job.gauges:
        return job
    changed = job.gauges[name].with_changes(**changes)
    return job.with_changes(gauges={**job.gauges, name: changed})


def with_gauge_renamed(job: Job, name: str, new: str) -> Job:
    """The job with a gauge under another name, wherever it was used.

    Raises:
        AlignerError: the new name is empty or taken.
    """
    if new == name:
        return job
    checked = free_gauge_name(job, new)
    gauges = {checked if each == name else each: gauge for each, gauge in job.gauges.items()}
    renamed = _renamed(job, name, checked)
    return renamed.with_changes(gauges=gauges)


def without_gauge(job: Job, name: str) -> Job:
    """The job with a gauge taken off its list.

    Raises:
        AlignerError: it was used; the sentence says for what.
    """
    uses = gauge_uses(job, name)
    if uses:
        raise AlignerError(
            "",
            say("“{gauge}” was used for {uses}", gauge=name, uses=listed(uses)),
            say("name another gauge there first, or leave it on the list"),
        )
    return job.with_changes(
        gauges={each: gauge for each, gauge in job.gauges.items() if each != name}
    )


def free_gauge_name(job: Job, name: str, *, but: str = "") -> str:
    """A name for a gauge, as it is kept.

    Args:
        job: the job whose list it goes on.
        name: as it was typed.
        but: the name the gauge has now, if it has one; that one is free.

    Raises:
        AlignerError: it is empty or taken.
    """
    kept = " ".join(name.split())
    if not kept:
        raise AlignerError("", say("a gauge needs a name"), say("such as “depth gauge”"))
    if kept in job.gauges and kept != but:
        raise AlignerError(
            "",
            say("“{name}” is on the list already", name=kept),
            say("call this one something else"),
        )
    return kept


def gauge_uses(job: Job, name: str) -> tuple[str, ...]:
    """What a gauge was used for, in words, each said once."""
    found: dict[str, None] = {}
    for path, gauge in _gauges_named(job, ""):
        if gauge == name:
            found.setdefault(_words(job, path))
    return tuple(found)


def _words(job: Job, path: str) -> str:
    if path.startswith("align.squaring["):
        place = int(path.removeprefix("align.squaring[").split("]")[0])
        return say("“{name}”", name=job.align.squaring[place].name)
    if path.startswith("attempts["):
        number = int(path.removeprefix("attempts[").split("]")[0]) + 1
        return say("attempt {number}", number=number)
    return next((say(words) for begin, words in _PLACES if path.startswith(begin)), path)


def _gauges_named(part: Part, path: str) -> Iterator[tuple[str, str]]:
    for field in sorted(part.model_fields_set, key=list(type(part).model_fields).index):
        value = getattr(part, field)
        here = f"{path}.{field}" if path else field
        if field == "gauge" and isinstance(value, str):
            yield path, value
        elif isinstance(value, Part):
            yield from _gauges_named(value, here)
        elif isinstance(value, tuple):
            for place, each in enumerate(value):
                if isinstance(each, Part):
                    yield from _gauges_named(each, f"{here}[{place}]")


def _renamed(part: PartType, old: str, new: str) -> PartType:
    changes: dict[str, Any] = {}
    for field in part.model_fields_set:
        value = getattr(part, field)
        if field == "gauge" and value == old:
            changes[field] = new
        elif isinstance(value, Part):
            changes[field] = _renamed(value, old, new)
        elif isinstance(value, tuple) and any(isinstance(each, Part) for each in value):
            changes[field] = tuple(
                _renamed(each, old, new) if isinstance(each, Part) else each for each in value
            )
    return part.with_changes(**changes) if changes else part
