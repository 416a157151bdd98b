"""Edits of a job's sheet as pure functions: the job as it is in, the job as it shall be out.

The trap: what goes with a value and is not on the screen beside it. A fastener takes the rules
that name it along, and a torque that is cleared leaves its source for the next one.
"""

from __future__ import annotations

from datetime import datetime
from typing import Any

from aligner.errors import AlignerError
from aligner.job.edits_sheet_ticks import with_fastener_renamed, with_sheet
from aligner.job.job import Job
from aligner.language import say
from aligner.sheet import Fastener, OrderRule, Sheet, Side, TorqueSpecification
from aligner.sheet.quantities import Quantity

_OTHER_SIDE = {Side.LEFT: Side.RIGHT, Side.RIGHT: Side.LEFT}


def with_bike_name(job: Job, name: str) -> Job:
    """The job with another name of the bike."""
    return _with_part(job, name=" ".join(name.split()))


def with_job_title(job: Job, title: str) -> Job:
    """The job with another title, which stands beside the bike's name."""
    return job.with_changes(title=" ".join(title.split()))


def with_sheet_note(job: Job, note: str) -> Job:
    """The job with another note on its sheet."""
    return _with_part(job, note=note.strip())


def with_value(job: Job, path: str, value: Quantity | str | None) -> Job:
    """The job with another value of the sheet.

    Args:
        job: to be changed.
        path: in the sheet, such as "fork.leg_spacing".
        value: `None` takes it out.
    """
    name, field = path.split(".")
    part = getattr(job.sheet, name)
    return _with_part(job, **{name: part.with_changes(**{field: value})})


def with_source(job: Job, path: str, source: str) -> Job:
    """The job with another source beside a value of the sheet; "" takes it out."""
    sources = {each: text for each, text in job.sheet.sources.items() if each != path}
    if source.strip():
        sources[path] = source.strip()
    return _with_part(job, sources=sources) if sources != job.sheet.sources else job


def with_fastener(job: Job, place: int, at: datetime, **changes: Any) -> Job:
    """The job with a fastener changed.

    Args:
        job: to be changed.
        place: of the fastener on the sheet, from 0.
        at: the time, for the log where a ticked step opens again.
        changes: its fields; another name goes into the rules and the log as well.

    Raises:
        AlignerError: another fastener has that name, or there is none.
    """
    before = job.sheet.fasteners[place]
    if "name" in changes:
        changes["name"] = _checked_name(job.sheet, changes["name"], place)
    now = before.with_changes(**changes)
    if now == before:
        return job
    if now.name != before.name:
        job = with_fastener_renamed(job, place, now.name)
    fasteners = list(job.sheet.fasteners)
    fasteners[place] = now
    return with_sheet(job, job.sheet.with_changes(fasteners=tuple(fasteners)), at)


def with_torque(
    job: Job, place: int, field: str, torque: TorqueSpecification | None, at: datetime
) -> Job:
    """The job with another torque of a fastener; its source stays beside it, even without one.

    Args:
        job: to be changed.
        place: of the fastener on the sheet, from 0.
        field: "torque" or "seating".
        torque: as printed; `None` takes it out.
        at: the time, for the log where a ticked step opens again.
    """
    fastener = job.sheet.fasteners[place]
    source = torque_source(job.sheet, fastener, field)
    if torque is not None:
        torque = torque.with_changes(source=source)
    job = with_fastener(job, place, at, **{field: torque})
    return with_source(job, _torque_path(fastener, field), source if torque is None else "")


def torque_source(sheet: Sheet, fastener: Fastener, field: str) -> str:
    """Where a fastener's torque comes from, or is to come from while it is missing."""
    torque: TorqueSpecification | None = getattr(fastener, field)
    if torque is not None:
        return torque.source
    return sheet.sources.get(_torque_path(fastener, field), "")


def with_torque_source(job: Job, place: int, field: str, source: str, at: datetime) -> Job:
    """The job with another source of a fastener's torque, which may be missing still."""
    fastener = job.sheet.fasteners[place]
    torque: TorqueSpecification | None = getattr(fastener, field)
    if torque is None:
        return with_source(job, _torque_path(fastener, field), source)
    changed = torque.with_changes(source=source.strip())
    return with_fastener(job, place, at, **{field: changed})


def with_new_fastener(job: Job, fastener: Fastener) -> Job:
    """The job with one more fastener, behind those of its kind; its name is made its own."""
    name, number = fastener.name, 2
    taken = {each.name for each in job.sheet.fasteners}
    while name in taken:
        name, number = f"{fastener.name} {number}", number + 1
    fasteners = list(job.sheet.fasteners)
    alike = [at for at, each in enumerate(fasteners) if each.kind == fastener.kind]
    fasteners.insert(alike[-1] + 1 if alike else len(fasteners), fastener.with_changes(name=name))
    return _with_part(job, fasteners=tuple(fasteners))


def with_fastener_on_other_side(job: Job, place: int) -> Job:
    """The job with a copy of a fastener on the other side.

    Raises:
        AlignerError: it has no side.
    """
    copied = job.sheet.fasteners[place]
    if copied.side is None:
        raise AlignerError(copied.name, say("it stands in the middle"), say("give it a side first"))
    side = _OTHER_SIDE[copied.side]
    name = _name_on_side(copied.name, side)
    if name in {each.name for each in job.sheet.fasteners}:
        raise AlignerError(name, say("it is on the sheet already"), say("change that one"))
    return with_new_fastener(job, copied.with_changes(name=name, side=side))


def without_fastener(job: Job, place: int, at: datetime) -> Job:
    """The job without a fastener, and without the rules that name it."""
    gone = job.sheet.fasteners[place]
    fasteners = (*job.sheet.fasteners[:place], *job.sheet.fasteners[place + 1 :])
    rules = tuple(rule for rule in job.sheet.rules if gone.name not in (rule.first, rule.then))
    ours = f"fasteners.{gone.name}."
    sources = {path: text for path, text in job.sheet.sources.items() if not path.startswith(ours)}
    sheet = job.sheet.with_changes(fasteners=fasteners, rules=rules, sources=sources)
    return with_sheet(job, sheet, at)


def with_rule(job: Job, place: int, **changes: Any) -> Job:
    """The job with a rule of the maker's changed."""
    rules = list(job.sheet.rules)
    rules[place] = rules[place].with_changes(**changes)
    return _with_part(job, rules=tuple(rules))


def with_new_rule(job: Job, rule: OrderRule) -> Job:
    """The job with one more rule of the maker's."""
    return _with_part(job, rules=(*job.sheet.rules, rule))


def without_rule(job: Job, place: int) -> Job:
    """The job without a rule of the maker's."""
    return _with_part(job, rules=(*job.sheet.rules[:place], *job.sheet.rules[place + 1 :]))


def _with_part(job: Job, **changes: Any) -> Job:
    return job.with_changes(sheet=job.sheet.with_changes(**changes))


def _torque_path(fastener: Fastener, field: str) -> str:
    return f"fasteners.{fastener.name}.{field}"


def _name_on_side(name: str, side: Side) -> str:
    """A fastener's name with the words for its side changed to those for this one."""
    # In a language that bends them there are several: "links:rechts linker:rechter".
    pairs = say("left:right", meaning="words for the sides in the names of fasteners")
    to_other: dict[str, str] = {}
    for pair in ("left:right", *pairs.split()):
        left, _, right = pair.partition(":")
        one, other = (left, right) if side is Side.RIGHT else (right, left)
        to_other |= {one: other, one.capitalize(): other.capitalize()}
    turned = " ".join(to_other.get(word, word) for word in name.split())
    if turned != name:
        return turned
    if side is Side.LEFT:
        return say("left {fastener}", fastener=name)
    return say("right {fastener}", fastener=name)


def _checked_name(sheet: Sheet, typed: str, place: int) -> str:
    name = " ".join(typed.split())
    if not name:
        raise AlignerError(
            "", say("a fastener without a name"), say("name it as the checklist shall")
        )
    if any(each.name == name for at, each in enumerate(sheet.fasteners) if at != place):
        raise AlignerError(
            "", say("“{name}” is on the sheet already", name=name), say("give each its own name")
        )
    return name
