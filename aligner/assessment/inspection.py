"""The findings of a job: what each measurement says of its limit, what is due, what comes next.

The trap: what a person finds and what the gauge finds are two things. Neither overrules the
other here: where they part, that is said, and a part that is to be replaced stays due until
its new one is said to be fitted.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from aligner.assessment.notice import Notice, attention, note
from aligner.assessment.readings import gauge_notices, gauge_of, proved
from aligner.gauging import Estimate, Judgement, Verdict, estimate
from aligner.gauging.one_sided import judge_at_least, judge_at_most
from aligner.job import Job
from aligner.job.edits_inspect import is_due
from aligner.job.inspect import CarriedFinding, Finding, Found, Place
from aligner.job.inspection_points import (
    InspectionPoint,
    LimitKind,
    Measure,
    Takes,
    places_of,
    point_of,
)
from aligner.language import marked, say
from aligner.legs.wear import bend_mm, swing_uncertainty_mm
from aligner.sheet import Side
from aligner.sheet.inspection import InspectionLimit, LimitOf
from aligner.sheet.quantities import Length

_LEG = {Side.LEFT: marked("left leg"), Side.RIGHT: marked("right leg")}
_POINT_AND_LEG = {
    Side.LEFT: marked("{point}, left leg"),
    Side.RIGHT: marked("{point}, right leg"),
}


@dataclass(frozen=True)
class Measured:
    """What the readings of one place say.

    Attributes:
        read_mm: the reading that counts, or the mean of all, in mm.
        value_mm: what is held against the limit: half of that for a bend, in mm.
        standard_uncertainty_mm: of the value; `None` if it is unknown.
        limit_mm: in the terms of the value; `None` where the sheet has none.
        judgement: the verdict with its figures.
        is_gauge_known: whether anything is known of what it was read with.
    """

    read_mm: float
    value_mm: float
    standard_uncertainty_mm: float | None
    limit_mm: float | None
    judgement: Judgement
    is_gauge_known: bool

    @property
    def verdict(self) -> Verdict:
        """Within, out, unsettled or missing."""
        return self.judgement.verdict


@dataclass(frozen=True)
class PlaceStanding:
    """One point of one leg, or in the middle, and how it stands.

    Attributes:
        point: what is looked at.
        side: the leg; `None` in the middle.
        found: what the job holds on it.
        limit: of the sheet, where the point has a number and the sheet a limit.
        measured: what the readings say; `None` where there are none.
        carried: what earlier jobs left, oldest first.
        history: day and value in mm of every earlier number, and of the present one.
        notices: what to know about it.
    """

    point: InspectionPoint
    side: Side | None
    found: Found
    limit: InspectionLimit | None
    measured: Measured | None
    carried: tuple[CarriedFinding, ...]
    history: tuple[tuple[date, float], ...]
    notices: tuple[Notice, ...]

    @property
    def place(self) -> Place:
        """The point's key and the leg."""
        return self.point.key, self.side

    @property
    def where(self) -> str:
        """The leg in words; "" in the middle."""
        return say(_LEG[self.side]) if self.side else ""

    @property
    def title(self) -> str:
        """The point and the leg in words: "Tube runout, left leg"."""
        point = say(self.point.name)
        return say(_POINT_AND_LEG[self.side], point=point) if self.side else point

    @property
    def is_due(self) -> bool:
        """Whether the part is to be replaced and its new one is not fitted yet."""
        return is_due(self.found)


@dataclass(frozen=True)
class InspectionAssessment:
    """All findings of a job.

    Attributes:
        places: everything to look at, in order.
    """

    places: tuple[PlaceStanding, ...]

    def at_place(self, place: Place) -> PlaceStanding | None:
        """How a place stands; `None` if it is not looked at in this job."""
        return next((each for each in self.places if each.place == place), None)

    @property
    def looked_at(self) -> int:
        """How many places have a finding."""
        return sum(each.found.finding is not None for each in self.places)

    @property
    def next_place(self) -> PlaceStanding | None:
        """The first place without a finding; one that an earlier job left comes before others."""
        waiting = [each for each in self.places if each.found.finding is None]
        return next((each for each in waiting if each.carried), waiting[0] if waiting else None)

    @property
    def open_parts(self) -> tuple[PlaceStanding, ...]:
        """The parts that are to be replaced and whose new one is not fitted yet."""
        return tuple(each for each in self.places if each.is_due)

    @property
    def to_watch(self) -> tuple[PlaceStanding, ...]:
        """What is to be looked at again at the next job."""
        return tuple(each for each in self.places if each.found.finding is Finding.WATCH)

    @property
    def notices(self) -> tuple[Notice, ...]:
        """What to know about the findings, place by place."""
        return tuple(notice for each in self.places for notice in each.notices)


def assess_inspection(job: Job) -> InspectionAssessment:
    """What the findings of a job amount to."""
    found = {each.place: each for each in job.inspect.found}
    return InspectionAssessment(
        tuple(
            _standing(job, place, found.get(place) or Found(point=place[0], side=place[1]))
            for place in places_of(job)
        )
    )


def looked_at_of(job: Job) -> tuple[int, int, int]:
    """How many places have a finding, of how many, and how many parts are due."""
    found = job.inspect.found
    looked_at = sum(each.finding is not None for each in found)
    return looked_at, len(places_of(job)), sum(is_due(each) for each in found)


def measured_value_mm(measure: Measure, readings: Iterable[Length]) -> float | None:
    """What some readings come to, in mm: mean or greatest, halved for a bend; `None` if none."""
    lengths = [reading.value for reading in readings]
    if not lengths:
        return None
    read = max(lengths) if measure.takes is Takes.GREATEST else estimate(lengths, None).value_mm
    return bend_mm(read) if measure.is_halved else read


def limit_in_terms_mm(measure: Measure, limit: InspectionLimit | None) -> float | None:
    """A limit put in the terms of the value: one printed for what is indicated is halved."""
    if limit is None:
        return None
    if measure.is_halved and limit.of is LimitOf.INDICATED:
        return bend_mm(limit.value.value)
    return limit.value.value


def _standing(job: Job, place: Place, found: Found) -> PlaceStanding:
    point = point_of(place[0])
    limit = job.sheet.inspection.get(point.key) if point.measure else None
    measured = _measured(job, point.measure, found, limit) if point.measure else None
    carried = job.inspect.carried_at(place) if job.inspect.carried else ()
    standing = PlaceStanding(
        point, place[1], found, limit, measured, carried, _history(point, found, carried), ()
    )
    notices = tuple(_notices(job, standing))
    return PlaceStanding(**{**standing.__dict__, "notices": notices}) if notices else standing


def _measured(
    job: Job, measure: Measure, found: Found, limit: InspectionLimit | None
) -> Measured | None:
    if not found.readings:
        return None
    lengths = [reading.value for reading in found.readings]
    if measure.takes is Takes.GREATEST:
        lengths = [max(lengths)]  # other places; a scatter between them is no scatter of the gauge
    gauge = gauge_of(job, found.gauge)
    read = estimate(lengths, gauge)
    share = 0.5 if measure.is_halved else 1.0
    spread = _spread_mm(measure, read)
    value, u = share * read.value_mm, None if spread is None else share * spread
    allowed = limit_in_terms_mm(measure, limit)
    judged = judge_at_most if measure.limit is LimitKind.MOST else judge_at_least
    judgement = proved(judged(value, u, read.degrees_of_freedom, allowed), gauge)
    return Measured(read.value_mm, value, u, allowed, judgement, gauge is not None)


def _spread_mm(measure: Measure, read: Estimate) -> float | None:
    if not measure.is_swing or read.type_a_mm is None:
        return read.standard_uncertainty_mm
    return swing_uncertainty_mm(read.type_a_mm, read.resolution_part_mm, read.limit_part_mm)


def _history(
    point: InspectionPoint, found: Found, carried: tuple[CarriedFinding, ...]
) -> tuple[tuple[date, float], ...]:
    if point.measure is None:
        return ()
    present = found.at.date() if found.at else None
    days = [*((each.on, each.readings) for each in carried), (present, found.readings)]
    numbers = ((on, measured_value_mm(point.measure, readings)) for on, readings in days)
    return tuple((on, value) for on, value in numbers if on is not None and value is not None)


def _notices(job: Job, standing: PlaceStanding) -> Iterable[Notice]:
    found, measured = standing.found, standing.measured
    where = f"inspect.{standing.point.key}" + (f".{standing.side}" if standing.side else "")
    point = standing.title
    if measured is not None:
        yield from gauge_notices(job, found.gauge, where)
        if measured.limit_mm is None:
            text = say("{point}: no limit on the sheet. Take it from the manual.", point=point)
            yield note(where, text)
        if measured.verdict is Verdict.OUT and found.finding is Finding.GOOD:
            if found.note:
                text = say(
                    "{point} measures out and is marked good; its note says why.", point=point
                )
                yield note(where, text)
            else:
                text = say(
                    "{point} measures out and is marked good: say why in its note, or mark it to "
                    "be replaced.",
                    point=point,
                )
                yield attention(where, text)
        is_near = measured.verdict is Verdict.UNSETTLED and measured.is_gauge_known
        if is_near and found.finding is Finding.GOOD:
            text = say("{point}: too near its limit for this gauge to tell.", point=point)
            yield note(where, text)
    if standing.is_due:
        text = say("{point}: to be replaced, and no new part is fitted yet.", point=point)
        yield attention(where, text)
