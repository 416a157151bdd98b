"""What was found when the parts were looked at and measured.

The trap: the number and the person may disagree, and each has its reason. Both are kept: the
readings as they were typed, and the finding as it was given.
"""

from __future__ import annotations

from datetime import date, datetime
from enum import StrEnum
from typing import Self

from pydantic import model_validator

from aligner.errors import AlignerError
from aligner.language import marked, say
from aligner.sheet import Side
from aligner.sheet.model import Part
from aligner.sheet.quantities import Length

#: A point by its key, and the leg it is in; `None` for what stands in the middle.
Place = tuple[str, Side | None]


class Finding(StrEnum):
    """What a person makes of a part; its value is a key, and said where it is shown."""

    GOOD = marked("good")
    WATCH = marked("watch")
    REPLACE = marked("replace")


class Found(Part):
    """What was found at one point of one leg, or in the middle.

    Attributes:
        point: the point's key.
        side: the leg; left out for what stands in the middle.
        gauge: name of the gauge on the job's list.
        readings: as typed.
        finding: good, watch or replace; left out where it was not looked at yet.
        at: when the finding was given.
        note: what was seen.
        photographs: by their names beside the job.
        is_fitted: whether the new part is in, where it was to be replaced.
    """

    point: str
    side: Side | None = None
    gauge: str | None = None
    readings: tuple[Length, ...] = ()
    finding: Finding | None = None
    at: datetime | None = None
    note: str = ""
    photographs: tuple[str, ...] = ()
    is_fitted: bool = False

    @property
    def place(self) -> Place:
        """The point and the leg it is in."""
        return self.point, self.side

    @property
    def is_empty(self) -> bool:
        """Whether nothing was typed, given or added here."""
        return not (self.readings or self.finding or self.note or self.photographs)


class CarriedFinding(Part):
    """What an earlier job on the same bike left to be watched, or did not get done.

    Attributes:
        on: the day of that finding; left out where it is not known.
        point: the point's key.
        side: the leg; left out for what stands in the middle.
        finding: watch, or replace where no new part was fitted.
        readings: as typed then.
        note: what was seen then.
    """

    on: date | None = None
    point: str
    side: Side | None = None
    finding: Finding = Finding.WATCH
    readings: tuple[Length, ...] = ()
    note: str = ""

    @property
    def place(self) -> Place:
        """The point and the leg it is in."""
        return self.point, self.side

    def day(self) -> date:
        """What it is sorted by; one without a day comes first."""
        return self.on or date.min


class Inspect(Part):
    """The findings of a job.

    Attributes:
        found: one for each place that has anything to it.
        carried: from earlier jobs, oldest first.
    """

    found: tuple[Found, ...] = ()
    carried: tuple[CarriedFinding, ...] = ()

    @model_validator(mode="after")
    def _holds_each_place_once(self) -> Self:
        seen: set[Place] = set()
        for found in self.found:
            if found.place in seen:
                where = f"{found.point}, {found.side or 'middle'}"
                raise AlignerError(
                    "found",
                    say("“{place}” stands there twice", place=where),
                    say("keep one of the two"),
                )
            seen.add(found.place)
        return self

    def at_place(self, place: Place) -> Found:
        """What was found at a place; nothing yet where the job holds nothing for it."""
        for found in self.found:
            if found.place == place:
                return found
        return Found(point=place[0], side=place[1])

    def carried_at(self, place: Place) -> tuple[CarriedFinding, ...]:
        """What earlier jobs say of a place, oldest first."""
        kept = (each for each in self.carried if each.place == place)
        return tuple(sorted(kept, key=CarriedFinding.day))
