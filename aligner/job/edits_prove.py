"""Edits of a job's proof as pure functions: the job as it is in, the job as it shall be out."""

from __future__ import annotations

from datetime import date

from aligner.errors import AlignerError
from aligner.job.final_checks import checks_of
from aligner.job.job import Job, SignOff
from aligner.language import say


def with_check(job: Job, name: str, is_done: bool) -> Job:
    """The job with a final check ticked, or open again.

    Raises:
        AlignerError: there is no check of that name.
    """
    return _with_check(job, name, done=is_done)


def with_check_note(job: Job, name: str, note: str) -> Job:
    """The job with another note on a final check.

    Raises:
        AlignerError: there is no check of that name.
    """
    return _with_check(job, name, note=note.strip())


def with_road_test(job: Job, note: str) -> Job:
    """The job with another note on the road test."""
    return _with_proof(job, road_test=note.strip())


def with_sign_off(job: Job, name: str, on: date) -> Job:
    """The job signed off.

    Raises:
        AlignerError: no name is given.
    """
    if not name.strip():
        raise AlignerError(
            say("name"), say("nobody signs"), say("give the name of who did the work")
        )
    return _with_proof(job, sign_off=SignOff(name=name.strip(), on=on))


def without_sign_off(job: Job) -> Job:
    """The job open again; checks and notes stay as they are."""
    return _with_proof(job, sign_off=None)


def _with_check(job: Job, name: str, **changes: object) -> Job:
    before = {check.name: check for check in checks_of(job)}
    if name not in before:
        raise AlignerError(name, say("there is no such final check"), say("take one of the list"))
    changed = before[name].with_changes(**changes)
    if changed == before[name]:
        return job
    checks = {**before, name: changed}
    return _with_proof(job, checks=tuple(checks.values()))


def _with_proof(job: Job, **changes: object) -> Job:
    return job.with_changes(prove=job.prove.with_changes(**changes))
