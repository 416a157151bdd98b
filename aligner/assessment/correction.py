"""A correction in words, and the first thing that a list of notices asks to be seen to."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from aligner.assessment.notice import Level, Notice


class Subject(StrEnum):
    """What a correction is about."""

    PROTRUSION = "protrusion"
    SQUARING = "squaring"
    IN_LINE = "in_line"
    NOTHING = "nothing"


@dataclass(frozen=True)
class Correction:
    """What to do now.

    Attributes:
        subject: what it is about.
        sentence: what to do, in one sentence.
        detail: what must be slack, what must hold, what comes after.
        caution: where the danger is, if there is any.
    """

    subject: Subject
    sentence: str
    detail: str = ""
    caution: str = ""


def first_attention(notices: tuple[Notice, ...]) -> str:
    """The text of the first notice that asks for attention; "" if none does."""
    return next((each.text for each in notices if each.level is Level.ATTENTION), "")
