"""Edits of a job's wrenches, adapters and choices, and of what the logs say, as pure functions.

The trap: a tick must look at the whole list first, which this folder does not know. So the
edits that tick stand in `aligner.assessment.ticks`, and what is here only takes away or tells.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from datetime import datetime
from typing import NamedTuple, TypeVar

from aligner.errors import AlignerError
from aligner.job.job import Job
from aligner.job.log import Action, LogEntry, ticked_steps
from aligner.job.wrenches import Adapter, TorqueWrench, WrenchChoice
from aligner.language import marked, say

Tool = TypeVar("Tool", TorqueWrench, Adapter)


class _Words(NamedTuple):
    """What is said of one kind of tool where its name will not do; marked texts."""

    what: str
    call_it: str
    is_taken: str


_WRENCH = _Words(
    marked("wrench"),
    marked("call the wrench what you call it"),
    marked("another wrench has that name"),
)
_ADAPTER = _Words(
    marked("adapter"),
    marked("call the adapter what you call it"),
    marked("another adapter has that name"),
)
_NOT_LISTED = {
    "fastener": marked("there is no such fastener on the list"),
    "wrench": marked("there is no such wrench on the list"),
    "adapter": marked("there is no such adapter on the list"),
}


def with_wrench(job: Job, old_name: str | None, new_name: str, wrench: TorqueWrench) -> Job:
    """The job with a wrench added, changed or given another name; choices follow the name.

    Args:
        job: as it is.
        old_name: of the wrench it takes the place of; `None` or "" for one more.
        new_name: what its owner calls it.
        wrench: what is known of it.

    Raises:
        AlignerError: no name, or one that another wrench has.
    """
    wrenches = _placed(job.wrenches, old_name, new_name, wrench, _WRENCH)
    choices = {
        joint: choice.with_changes(wrench=new_name.strip())
        if old_name and choice.wrench == old_name
        else choice
        for joint, choice in job.wrench_choices.items()
    }
    return _with(job, wrenches=wrenches, wrench_choices=choices)


def without_wrench(job: Job, name: str) -> Job:
    """The job without a wrench; where it was chosen, the best of the others is again."""
    wrenches = {other: each for other, each in job.wrenches.items() if other != name}
    choices = {
        joint: choice.with_changes(wrench=None) if choice.wrench == name else choice
        for joint, choice in job.wrench_choices.items()
    }
    return _with(job, wrenches=wrenches, wrench_choices=_meant(choices))


def with_adapter(job: Job, old_name: str | None, new_name: str, adapter: Adapter) -> Job:
    """The job with an adapter added, changed or given another name; choices follow the name.

    Args:
        job: as it is.
        old_name: of the adapter it takes the place of; `None` or "" for one more.
        new_name: what its owner calls it.
        adapter: what is known of it.

    Raises:
        AlignerError: no name, or one that another adapter has.
    """
    adapters = _placed(job.adapters, old_name, new_name, adapter, _ADAPTER)
    choices = {
        joint: choice.with_changes(adapter=new_name.strip())
        if old_name and choice.adapter == old_name
        else choice
        for joint, choice in job.wrench_choices.items()
    }
    return _with(job, adapters=adapters, wrench_choices=choices)


def without_adapter(job: Job, name: str) -> Job:
    """The job without an adapter; where it was chosen, a plain socket is again."""
    adapters = {other: each for other, each in job.adapters.items() if other != name}
    choices = {
        joint: choice.with_changes(adapter=None) if choice.adapter == name else choice
        for joint, choice in job.wrench_choices.items()
    }
    return _with(job, adapters=adapters, wrench_choices=_meant(choices))


def with_wrench_choice(job: Job, joint: str, wrench: str | None, adapter: str | None = None) -> Job:
    """The job with the wrench and adapter a person chose for one joint.

    Args:
        job: as it is.
        joint: the fastener's name on the sheet.
        wrench: its name on the list; `None` or "" for the best of them.
        adapter: its name on the list; `None` or "" for a plain socket.

    Raises:
        AlignerError: a name that is on no list.
    """
    for what, name, known in (
        ("fastener", joint, [fastener.name for fastener in job.sheet.fasteners]),
        ("wrench", wrench, list(job.wrenches)),
        ("adapter", adapter, list(job.adapters)),
    ):
        if name and name not in known:
            raise AlignerError(name, say(_NOT_LISTED[what]), _any_of(known))
    choice = WrenchChoice(wrench=wrench or None, adapter=adapter or None)
    return _with(job, wrench_choices=_meant({**job.wrench_choices, joint: choice}))


def with_untick(job: Job, step: str, at: datetime, reason: str) -> Job:
    """The job with a step unticked, that is loosened or not done; both entries stay in the log.

    What else is open again because of it is added by
    `aligner.assessment.opened_again.with_dependents_opened`.

    Raises:
        AlignerError: the step is not ticked, or no reason is given.
    """
    if step not in ticked_steps(job.log):
        raise AlignerError(step, say("it is not ticked"), say("untick a step that is done"))
    if not reason.strip():
        raise AlignerError(say("reason"), say("none is given"), say("say why the step is unticked"))
    entry = LogEntry(step=step, action=Action.UNTICKED, at=at, reason=reason.strip())
    return job.with_changes(log=(*job.log, entry))


def with_steps_opened(job: Job, steps: Collection[str], at: datetime, reason: str) -> Job:
    """The job with ticked steps opened again because what they rely on has changed."""
    ticked = ticked_steps(job.log)
    entries = [
        LogEntry(step=step, action=Action.OPENED_AGAIN, at=at, reason=reason)
        for step in steps
        if step in ticked
    ]
    return job.with_changes(log=(*job.log, *entries)) if entries else job


def without_recheck(job: Job, key: str, at: datetime, reason: str = "") -> Job:
    """The job with a fastener to be checked again after all; both entries stay.

    Args:
        job: as it is.
        key: of the row (`aligner.assessment.rechecks`).
        at: now.
        reason: why.

    Raises:
        AlignerError: it is not ticked.
    """
    if key not in ticked_steps(job.prove.rechecks):
        raise AlignerError(key, say("it is not ticked"), say("untick one that is"))
    entry = LogEntry(step=key, action=Action.UNTICKED, at=at, reason=reason.strip())
    prove = job.prove.with_changes(rechecks=(*job.prove.rechecks, entry))
    return job.with_changes(prove=prove)


def _placed(
    tools: Mapping[str, Tool], old_name: str | None, new_name: str, tool: Tool, words: _Words
) -> dict[str, Tool]:
    """The list with one of its tools in its old place under its new name, or at the end."""
    name = new_name.strip()
    if not name:
        raise AlignerError(say(words.what), say("it has no name"), say(words.call_it))
    if name != old_name and name in tools:
        raise AlignerError(name, say(words.is_taken), say("give each its own name"))
    if old_name and old_name in tools:
        return {name if key == old_name else key: tools[key] for key in tools} | {name: tool}
    return {**tools, name: tool}


def _meant(choices: Mapping[str, WrenchChoice]) -> dict[str, WrenchChoice]:
    return {joint: each for joint, each in choices.items() if each.wrench or each.adapter}


def _any_of(known: list[str]) -> str:
    if not known:
        return say("add it first")
    return say("take one of {names}", names=", ".join(say("“{name}”", name=name) for name in known))


def _with(job: Job, **changes: object) -> Job:
    return job.with_changes(**changes)
