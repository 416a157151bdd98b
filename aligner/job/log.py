"""What was done at the bench, in the order it was done: the log of ticks.

Nothing is ever taken out of the log: an untick is an entry of its own. What is ticked now
is worked out from the log, so the two cannot disagree.
"""

from __future__ import annotations

from datetime import datetime
from enum import StrEnum

from aligner.language import marked
from aligner.sheet.model import Part
from aligner.sheet.quantities import Torque


class Action(StrEnum):
    """What an entry of the log records; its value is a key, and said where it is shown."""

    TICKED = marked("ticked")
    UNTICKED = marked("unticked")
    OPENED_AGAIN = marked("opened again")


class LogEntry(Part):
    """One thing done to one step of the tightening list.

    Attributes:
        step: the step's key, which the planner keeps stable.
        action: ticked, unticked, or opened again by a changed reading.
        at: when, with the offset from UTC.
        torque: the value the wrench was set to or showed; left out where none applies.
        wrench: name of the wrench.
        reason: why it was done out of order, unticked, or opened again.
    """

    step: str
    action: Action = Action.TICKED
    at: datetime
    torque: Torque | None = None
    wrench: str = ""
    reason: str = ""


def recheck_key(fastener: str) -> str:
    """What the row of a fastener that is checked again on the road is called in its log."""
    return f"recheck/{fastener}"


def ticked_steps(log: tuple[LogEntry, ...]) -> dict[str, LogEntry]:
    """The steps that stand ticked after the whole log, each with the entry that ticked it."""
    ticked: dict[str, LogEntry] = {}
    for entry in log:
        if entry.action is Action.TICKED:
            ticked[entry.step] = entry
        else:
            ticked.pop(entry.step, None)
    return ticked
