"""Which reading is wanted next, where one is asked for at a time.

The trap: a reading that goes into another box than the one asked for. So what is asked for
follows from the job alone, and a reading is put where the same job asks for it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from aligner.assessment.assess import Assessment
from aligner.assessment.correction import Subject
from aligner.gauging import Verdict
from aligner.job import Job, PlateReadings
from aligner.job.edits_align import with_distances, with_in_line, with_protrusion
from aligner.language import marked, say
from aligner.sheet.quantities import Length, Quantity, SignedLength

#: Readings of each length before any verdict asks for more, and the most that are asked for.
FEWEST, MOST = 3, 8

_FIELDS: dict[str, tuple[tuple[str, str, type[Quantity], bool], ...]] = {
    "plate": (
        ("gap", marked("gap at the plate"), Length, True),
        ("height", marked("height of the plate on the tubes"), Length, False),
    ),
    "bars": (
        ("end_difference", marked("lower bar's end ahead"), SignedLength, True),
        ("half_length", marked("half length of the bars"), Length, False),
        ("height", marked("height between the bars"), Length, False),
    ),
    "spread": (
        ("upper", marked("upper width"), Length, True),
        ("lower", marked("lower width"), Length, True),
        ("height", marked("height between the widths"), Length, False),
    ),
}
_LEG = {"left": marked("left leg"), "right": marked("right leg")}
_SIDE = {"left": marked("left side"), "right": marked("right side")}
_PAIR_AND_SIDE = {"left": marked("{pair}, left"), "right": marked("{pair}, right")}


@dataclass(frozen=True)
class ReadingPlace:
    """A length that is read, once or several times.

    Attributes:
        subject: what it is read for.
        name: of the length: "left leg".
        kind: of quantity.
        readings: taken so far in this attempt.
        wanted: how many are asked for in all.
        field: "left", "right", or the field of the readings in line.
        pair: which pair of distances, from nought.
    """

    subject: Subject
    name: str
    kind: type[Quantity]
    readings: tuple[Quantity, ...]
    wanted: int
    field: str
    pair: int = 0

    @property
    def asked_words(self) -> str:
        """What is asked for now: "left leg, reading 2 of 3"."""
        if self.wanted < 2:
            return self.name
        return say(
            "{length}, reading {number} of {wanted}",
            length=self.name,
            number=len(self.readings) + 1,
            wanted=self.wanted,
        )

    @property
    def step_name(self) -> str:
        """Name of the undoable step that adds a reading."""
        return say("reading, {length}", length=self.name)


def reading_places(job: Job, assessment: Assessment) -> tuple[ReadingPlace, ...]:
    """Every length that is read on a job, in the order in which it is corrected."""
    return (*_heights(job, assessment), *_distances(job, assessment), *_in_line(job, assessment))


def asked_reading(job: Job, assessment: Assessment, subject: Subject) -> ReadingPlace | None:
    """The length to read next for what is corrected now; `None` where nothing more is wanted.

    Args:
        job: as it is.
        assessment: of that job.
        subject: what is corrected now; a later subject is not asked for before its turn, and
            the second of two sides is read as often as the first though it be settled sooner.
    """
    places = reading_places(job, assessment)
    for place in places:
        taken = len(place.readings)
        other = (len(each.readings) for each in places if _is_other_side(each, place))
        if taken < min(next(other, 0), FEWEST):
            return place
        if place.subject is subject and taken < place.wanted:
            return place
    return None


def last_reading(
    job: Job, assessment: Assessment, asked: ReadingPlace | None, subject: Subject
) -> tuple[str, Quantity] | None:
    """The reading taken before the one that is asked for, with the name of its length."""
    places = reading_places(job, assessment)
    if asked is not None:
        places = places[: places.index(asked) + 1]
    elif subject is not Subject.NOTHING:
        last = max((n for n, each in enumerate(places) if each.subject is subject), default=-1)
        places = places[: last + 1]
    taken = (each for each in reversed(places) if each.readings)
    latest = next(taken, None)
    return (latest.name, latest.readings[-1]) if latest is not None else None


def with_reading(job: Job, place: ReadingPlace, reading: Quantity, at: datetime) -> Job:
    """The job with one more reading of a length."""
    readings = (*place.readings, reading)
    match place.subject:
        case Subject.PROTRUSION:
            return with_protrusion(job, place.field, readings, at)
        case Subject.SQUARING:
            return with_distances(job, place.pair, place.field, readings, at)
        case Subject.IN_LINE:
            present = job.align.in_line
            method = present.method if present else "plate"
            is_single = place.wanted == 1
            return with_in_line(
                job, method, at, **{place.field: reading if is_single else readings}
            )
        case Subject.NOTHING:
            return job


def _is_other_side(one: ReadingPlace, other: ReadingPlace) -> bool:
    """Whether one is the left and the other the right of the same."""
    return (
        (one.subject, one.pair) == (other.subject, other.pair)
        and other.field == "right"
        and one.field == "left"
    )


def _wanted(advised: int | None, verdict: Verdict) -> int:
    if advised is None or verdict is not Verdict.UNSETTLED:
        return FEWEST
    return max(FEWEST, min(advised, MOST))


def _heights(job: Job, assessment: Assessment) -> Iterator[ReadingPlace]:
    found = assessment.protrusion
    wanted = _wanted(found.advice.readings_needed if found.advice else None, found.verdict)
    for side in ("left", "right"):
        readings = getattr(job.align.protrusion, side)
        yield ReadingPlace(
            Subject.PROTRUSION, say(_LEG[side]), SignedLength, readings, wanted, field=side
        )


def _distances(job: Job, assessment: Assessment) -> Iterator[ReadingPlace]:
    found = assessment.squaring
    wanted = _wanted(found.advice.readings_needed if found.advice else None, found.verdict)
    several = len(job.align.squaring) > 1
    for place, pair in enumerate(job.align.squaring):
        for side in ("left", "right"):
            name = say(_PAIR_AND_SIDE[side], pair=pair.name) if several else say(_SIDE[side])
            readings = getattr(pair, side)
            yield ReadingPlace(
                Subject.SQUARING, name, Length, readings, wanted, field=side, pair=place
            )


def _in_line(job: Job, assessment: Assessment) -> Iterator[ReadingPlace]:
    found = assessment.in_line
    readings = job.align.in_line or PlateReadings(method="plate")
    wanted = _wanted(found.advice.readings_needed if found.advice else None, found.verdict)
    for field, name, kind, is_repeated in _FIELDS[readings.method]:
        held = getattr(readings, field)
        if is_repeated:
            yield ReadingPlace(Subject.IN_LINE, say(name), kind, held, wanted, field=field)
        elif held is None and found.geometry is None:
            yield ReadingPlace(Subject.IN_LINE, say(name), kind, (), 1, field=field)
