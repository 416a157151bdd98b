"""What a changed sheet does to the ticks of a job.

The trap: a step ticked at one torque that stays ticked when the sheet is corrected to another.
Whatever a ticked step was done by opens that step again when it changes, and the log says why.
A fastener that only gets another name keeps its ticks.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from aligner.job.edits_tighten import with_steps_opened
from aligner.job.job import Job
from aligner.job.log import Action, LogEntry, recheck_key, ticked_steps
from aligner.language import marked, say
from aligner.language.every_language import is_called
from aligner.sheet import Fastener, Sheet

#: How the reason of a log entry begins where the sheet's change is the reason; it is said when
#: it is written (`what_of_the_sheet` finds it again).
SHEET_CHANGED = marked("the sheet was changed")


def with_sheet(job: Job, sheet: Sheet, at: datetime) -> Job:
    """The job with another sheet; ticked steps that were done by something else open again."""
    after = {fastener.name: fastener for fastener in sheet.fasteners}
    for before in job.sheet.fasteners:
        now = after.get(before.name)
        if now is None or now.kind != before.kind:
            job = _opened(job, before, at, say("{fastener} taken off", fastener=before.name))
        elif (what := _done_otherwise(before, now)) is not None:
            job = _opened(job, before, at, say(what, fastener=before.name))
    return job.with_changes(sheet=sheet)


def what_of_the_sheet(reason: str) -> str | None:
    """What of the sheet was changed, from the reason of a log entry; `None` if it is another.

    A reason stays in the language it was written in, and is found in every one there is.
    """
    begin, mark, what = reason.partition(": ")
    return what if mark and is_called(begin, SHEET_CHANGED) else None


def with_fastener_renamed(job: Job, place: int, name: str) -> Job:
    """The job with a fastener's name changed wherever it is spoken of."""
    before = job.sheet.fasteners[place]
    fasteners = list(job.sheet.fasteners)
    fasteners[place] = before.with_changes(name=name)
    rules = tuple(
        rule.with_changes(
            first=name if rule.first == before.name else rule.first,
            then=name if rule.then == before.name else rule.then,
        )
        for rule in job.sheet.rules
    )

    ours, theirs = f"fasteners.{before.name}.", f"fasteners.{name}."
    sources = {
        theirs + path.removeprefix(ours) if path.startswith(ours) else path: text
        for path, text in job.sheet.sources.items()
    }

    def renamed(log: tuple[LogEntry, ...]) -> tuple[LogEntry, ...]:
        return tuple(entry.with_changes(step=renamed_step(entry.step)) for entry in log)

    def renamed_step(step: str) -> str:
        if step == recheck_key(before.name):
            return recheck_key(name)
        if is_step_of(step, before, job.sheet.fasteners):
            step = f"{_stem(fasteners[place])}{step.removeprefix(_stem(before))}"
        head, mark, tail = step.partition(f"/again after {before.name}")
        return f"{head}/again after {name}{tail}" if mark and tail[:1] in ("", "/") else step

    choices = {
        name if joint == before.name else joint: choice
        for joint, choice in job.wrench_choices.items()
    }
    return job.with_changes(
        sheet=job.sheet.with_changes(fasteners=tuple(fasteners), rules=rules, sources=sources),
        log=renamed(job.log),
        strip=job.strip.with_changes(log=renamed(job.strip.log)),
        prove=job.prove.with_changes(rechecks=renamed(job.prove.rechecks)),
        wrench_choices=choices,
    )


def is_step_of(step: str, fastener: Fastener, all_of_them: tuple[Fastener, ...]) -> bool:
    """Whether a step's key is one of a fastener's; a longer name that fits too goes first."""
    stem = _stem(fastener)
    if not _begins(step, stem):
        return False
    return not any(
        len(_stem(other)) > len(stem) and _begins(step, _stem(other)) for other in all_of_them
    )


def _opened(job: Job, fastener: Fastener, at: datetime, what: str) -> Job:
    reason = f"{say(SHEET_CHANGED)}: {what}"
    steps = tuple(
        step for step in ticked_steps(job.log) if is_step_of(step, fastener, job.sheet.fasteners)
    )
    job = with_steps_opened(job, steps, at, reason)
    key = recheck_key(fastener.name)
    if key not in ticked_steps(job.prove.rechecks):
        return job
    entry = LogEntry(step=key, action=Action.OPENED_AGAIN, at=at, reason=reason)
    prove = job.prove.with_changes(rechecks=(*job.prove.rechecks, entry))
    return job.with_changes(prove=prove)


def _done_otherwise(before: Fastener, now: Fastener) -> str | None:
    """What of a fastener's work is another than it was, a marked text; `None` if nothing is."""
    differences: tuple[tuple[str, Callable[[Fastener], object]], ...] = (
        (marked("the torque of the {fastener}"), lambda each: _bounds(each, "torque")),
        (marked("the seating torque of the {fastener}"), lambda each: _bounds(each, "seating")),
        (
            marked("the back-off of the {fastener}"),
            lambda each: each.back_off.value if each.back_off else None,
        ),
        (marked("the number of bolts of the {fastener}"), lambda each: each.bolts),
        (
            marked("the passes of the {fastener}"),
            lambda each: tuple(share.value for share in each.passes),
        ),
        (marked("the thread condition of the {fastener}"), lambda each: each.thread_condition),
        (marked("the side of the {fastener}"), lambda each: each.side),
        (
            marked("the pattern of the {fastener}"),
            lambda each: each.pattern if each.bolts > 2 else None,
        ),
    )
    return next((what for what, of in differences if of(before) != of(now)), None)


def _bounds(fastener: Fastener, field: str) -> tuple[float, float, float] | None:
    torque = getattr(fastener, field)
    return (torque.target_nm, torque.low_nm, torque.high_nm) if torque else None


def _stem(fastener: Fastener) -> str:
    return f"{fastener.kind}/{fastener.name}"


def _begins(step: str, stem: str) -> bool:
    return step == stem or step.startswith(f"{stem}/")
