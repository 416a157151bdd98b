"""Something a person should know about a job: how grave, where, and in words."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from aligner.errors import AlignerError
from aligner.language import begun


class Level(StrEnum):
    """How grave a notice is: `ATTENTION` needs something done, `NOTE` is to be known."""

    ATTENTION = "attention"
    NOTE = "note"


@dataclass(frozen=True)
class Notice:
    """One notice.

    Attributes:
        level: how grave.
        where: the field's path in the job ("align.protrusion.left").
        text: a sentence.
    """

    level: Level
    where: str
    text: str


def attention(where: str, text: str) -> Notice:
    """A notice of something that needs to be done."""
    return Notice(Level.ATTENTION, where, text)


def note(where: str, text: str) -> Notice:
    """A notice of something to be known."""
    return Notice(Level.NOTE, where, text)


def refused(where: str, error: AlignerError) -> Notice:
    """What a computation refused, as a notice on the field it concerns."""
    text = str(error)
    return attention(where, begun(text) + ".")
