"""The points that are looked at in a front end: which there are, why, and how each is measured.

The trap: a job may hold findings on a point that its fork has no longer, because the sheet
was put right, or that a newer list has dropped. Such a finding is never lost: its point
stands behind the others, by the name it went by.
"""

from __future__ import annotations

from enum import StrEnum
from functools import cache

from pydantic import TypeAdapter

from aligner.data_files import resource
from aligner.job.inspect import Place
from aligner.job.job import Job
from aligner.language import begun, marked
from aligner.sheet import ForkKind, Side
from aligner.sheet.model import Part


class LimitKind(StrEnum):
    """Whether a measured value may be at most, or must be at least, the limit."""

    MOST = "most"
    LEAST = "least"


class Takes(StrEnum):
    """What several readings stand for: one place read again, or as many places."""

    MEAN = "mean"
    GREATEST = "greatest"


class Measure(Part):
    """How a point is measured.

    Attributes:
        limit: whether the sheet's limit is the most or the least.
        takes: the mean of readings of one place, or the greatest over several places.
        is_swing: each reading is the pointer's swing, from its lowest to its highest.
        is_halved: what counts is half of the reading (a bend).
        gauge: what it is usually measured with.
        reading: what each reading is, in a few words.
        guide: key of the guide that shows how it is measured.
    """

    limit: LimitKind
    takes: Takes
    is_swing: bool
    is_halved: bool
    gauge: str
    reading: str
    guide: str


class InspectionPoint(Part):
    """One thing to look at; its texts are the English ones, and said where they are shown.

    Attributes:
        key: what findings and limits go by.
        name: on the screen.
        part: what is put on the parts list where it is to be replaced.
        each_leg: whether it is looked at in each leg, or once in the middle.
        kinds: the fork kinds it applies to; every one where it is empty.
        why: the reason to look, in a sentence.
        how: how it is looked at or measured, in two.
        measure: how it is measured, where there is a number to it.
        source: where this comes from.
    """

    key: str
    name: str
    part: str
    each_leg: bool
    kinds: tuple[ForkKind, ...] = ()
    why: str
    how: str
    measure: Measure | None = None
    source: str


@cache
def inspection_points() -> tuple[InspectionPoint, ...]:
    """The points of resources/inspection/points.json, in their order."""
    content = resource("inspection", "points.json").read_bytes()
    return TypeAdapter(tuple[InspectionPoint, ...]).validate_json(content)


@cache
def point_of(key: str) -> InspectionPoint:
    """The point of that key; one that is not on the list stands by its key, without words."""
    for point in inspection_points():
        if point.key == key:
            return point
    name = key.replace("_", " ").strip()
    return InspectionPoint(
        key=key,
        name=begun(name) if name else marked("Unnamed point"),
        part=name or marked("unnamed point"),
        each_leg=False,
        why="",
        how="",
        source=marked("not on this program's list of points"),
    )


@cache
def places_of_kind(kind: ForkKind) -> tuple[Place, ...]:
    """Everything to look at in a fork of one kind: left leg, right leg, then the middle."""
    points = [point for point in inspection_points() if not point.kinds or kind in point.kinds]
    legs = [(point.key, side) for side in Side for point in points if point.each_leg]
    return (*legs, *((point.key, None) for point in points if not point.each_leg))


def places_of(job: Job) -> tuple[Place, ...]:
    """Everything to look at in a job; behind it what has findings but is no longer asked for."""
    asked = places_of_kind(job.sheet.fork.kind)
    known = set(asked)
    others = (found.place for found in job.inspect.found if found.place not in known)
    return (*asked, *others)
