"""The final checks of a job: which there are, how each is done, and which are still open.

The trap: a job that was proved by an older list keeps its own checks; one that is no longer
on the list stands behind the others and is never dropped.
"""

from __future__ import annotations

from functools import cache

from pydantic import TypeAdapter

from aligner.data_files import resource
from aligner.job.job import Check, Job
from aligner.sheet.model import Part


class FinalCheck(Part):
    """A check that every job ends with.

    Attributes:
        name: what has been seen to once it is ticked; a job's checks go by it, in English
            whatever is spoken, and it is said where it is shown.
        how: how it is done, and what is right.
        caution: where the danger is; "" if there is none of its own.
        source: where it comes from.
    """

    name: str
    how: str
    caution: str = ""
    source: str


@cache
def final_checks() -> tuple[FinalCheck, ...]:
    """The checks of resources/final_checks.json, in their order."""
    content = resource("final_checks.json").read_bytes()
    return TypeAdapter(tuple[FinalCheck, ...]).validate_json(content)


def checks_of(job: Job) -> tuple[Check, ...]:
    """Every check of a job in the list's order, with those not touched yet still open."""
    kept = {check.name: check for check in job.prove.checks}
    listed = tuple(kept.pop(each.name, Check(name=each.name)) for each in final_checks())
    return (*listed, *kept.values())


def open_checks(job: Job) -> tuple[str, ...]:
    """The names of the checks that are not done."""
    return tuple(check.name for check in checks_of(job) if not check.done)
