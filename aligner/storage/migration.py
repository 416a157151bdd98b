"""Bringing a document of an older version up to the present one, a version at a time.

The trap: a change to the models makes every document already on people's disks unreadable.
So each new version comes with one step here and a sample of the old one in
tests/storage/samples/, and both stay for good. A job holds a copy of its sheet, so the step
for sheets is also taken inside jobs.

A change that only adds fields with defaults is a minor version: no step, an older program
goes on working on the document and keeps the fields that it does not know.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any

Fields = dict[str, Any]
Change = Callable[[Fields], Fields]

#: The version this program writes.
VERSION = 1
#: Raised by one with every release that only adds fields; 0 where a document does not say.
#: 1: wrenches, strip, inspect, build. 2: build.spring, build.sag.spacer.
MINOR = 2


def _as_it_is(fields: Fields) -> Fields:
    return fields


@dataclass(frozen=True)
class Step:
    """From one version to the next.

    Attributes:
        from_version: the version it starts from; it leads to the one after.
        because: what changed, in a sentence.
        job: the change to a job's own fields (its sheet is seen to by `sheet`).
        sheet: the change to a sheet's fields, alone or in a job.
    """

    from_version: int
    because: str
    job: Change = _as_it_is
    sheet: Change = _as_it_is


#: Every step there is, oldest first; version 1 is the first version there was.
STEPS: tuple[Step, ...] = ()


def oldest_version(steps: Iterable[Step] = STEPS) -> int:
    """The oldest version that can still be read."""
    return min((step.from_version for step in steps), default=VERSION)


def migrated(fields: Fields, kind: str, steps: tuple[Step, ...] = STEPS) -> Fields:
    """A document's fields as the present version has them; those given stay as they are.

    Args:
        fields: the whole document as parsed JSON, its "version" checked already.
        kind: "job" or "sheet".
        steps: oldest first.
    """
    version = fields["version"]
    for step in steps:
        if step.from_version == version:
            fields = _taken(step, fields, kind)
            version += 1
    return fields


def _taken(step: Step, fields: Fields, kind: str) -> Fields:
    change = step.job if kind == "job" else step.sheet
    after = {**change(fields), "version": step.from_version + 1}
    sheet = after.get("sheet")
    if kind == "job" and isinstance(sheet, dict):
        after["sheet"] = {**step.sheet(sheet), "version": step.from_version + 1}
    return after
