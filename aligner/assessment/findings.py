"""The findings in words: rows for the job card, for the parts list and for the screen."""

from __future__ import annotations

from dataclasses import dataclass

from aligner.assessment.inspection import InspectionAssessment, PlaceStanding
from aligner.gauging import Verdict
from aligner.job.inspect import CarriedFinding, Finding
from aligner.job.inspection_points import InspectionPoint, LimitKind
from aligner.language import marked, say
from aligner.sheet.inspection import LimitOf
from aligner.units.preferred import Preferred

#: A limit as the manual prints it: of what is measured, of the bend, of what is indicated.
_LIMITS: dict[tuple[LimitKind, LimitOf | None], str] = {
    (LimitKind.MOST, None): marked("at most {size}"),
    (LimitKind.MOST, LimitOf.BEND): marked("at most {size} bend"),
    (LimitKind.MOST, LimitOf.INDICATED): marked("at most {size} indicated"),
    (LimitKind.LEAST, None): marked("at least {size}"),
    (LimitKind.LEAST, LimitOf.BEND): marked("at least {size} bend"),
    (LimitKind.LEAST, LimitOf.INDICATED): marked("at least {size} indicated"),
}


@dataclass(frozen=True)
class FindingRow:
    """One finding in words.

    Attributes:
        point: its name.
        side: "left leg", "right leg", or "" in the middle.
        finding: "good", "watch", "replace, still due", "replaced, new part fitted", or "not
            looked at" where there are readings or a note but no finding.
        numbers: what was measured and what the limit makes of it; "" if nothing was.
        note: as typed.
        photographs: their names beside the job.
    """

    point: str
    side: str
    finding: str
    numbers: str
    note: str
    photographs: tuple[str, ...]


def findings(inspection: InspectionAssessment, show: Preferred) -> tuple[FindingRow, ...]:
    """Every place that anything was found at, in order."""
    return tuple(
        FindingRow(
            point=say(each.point.name),
            side=each.where,
            finding=finding_words(each) or say("not looked at"),
            numbers=number_words(each, show),
            note=each.found.note,
            photographs=each.found.photographs,
        )
        for each in inspection.places
        if not each.found.is_empty
    )


def finding_words(standing: PlaceStanding) -> str:
    """The finding in words; "" where there is none yet."""
    finding = standing.found.finding
    if finding is None:
        return ""
    if finding is Finding.REPLACE:
        return say("replace, still due") if standing.is_due else say("replaced, new part fitted")
    return say(finding.value)


def number_words(standing: PlaceStanding, show: Preferred) -> str:
    """What was measured: "bend 0.06 ± 0.02 mm (0.12 mm indicated), at most 0.10 mm: within"."""
    measured, measure = standing.measured, standing.point.measure
    if measured is None or measure is None:
        return ""
    spread = measured.judgement.expanded_uncertainty
    size = size_words(standing.point, measured.value_mm, show)
    if spread is not None:
        number, unit = size.split(" ", 1)
        size = f"{number} ± {size_words(standing.point, spread, show).split(' ', 1)[0]} {unit}"
    if measure.is_halved:
        read = size_words(standing.point, measured.read_mm, show)
        size = say("bend {size} ({read} indicated)", size=size, read=read)
    limit = limit_words(standing, show)
    if not limit:
        return say("{size}, limit missing", size=size)
    return f"{size}, {limit}: {say(measured.verdict.value)}"


def limit_words(standing: PlaceStanding, show: Preferred) -> str:
    """The limit as the manual prints it: "at most 0.20 mm indicated"; "" if the sheet has none."""
    limit, measure = standing.limit, standing.point.measure
    if limit is None or measure is None:
        return ""
    size = size_words(standing.point, limit.value.value, show)
    return say(_LIMITS[measure.limit, limit.of if measure.is_halved else None], size=size)


def verdict_advice(standing: PlaceStanding) -> str:
    """What to do about the verdict, in a sentence; "" where it says it all."""
    measured = standing.measured
    if measured is None:
        return ""
    if measured.standard_uncertainty_mm is None or not measured.is_gauge_known:
        return say("Name the gauge: without it nobody knows how sure the number is.")
    match measured.verdict:
        case Verdict.MISSING:
            return say("The limit is missing: take it from the manual.")
        case Verdict.UNSETTLED:
            return say("Too near the limit for this gauge to tell: use a finer one, or watch it.")
        case Verdict.OUT if standing.found.finding is Finding.GOOD:
            return say("It measures out and is marked good: say why in the note.")
        case _:
            return ""


def carried_words(
    point: InspectionPoint, carried: CarriedFinding, value: float | None, show: Preferred
) -> str:
    """What an earlier job said: "Watch, 2025-05-02: 0.12 mm; a slight mark"."""
    finding = say("Not replaced yet") if carried.finding is Finding.REPLACE else say("Watch")
    on = carried.on or say("earlier", meaning="instead of a day")
    number = f": {size_words(point, value, show)}" if value is not None else ""
    noted = f"; {carried.note}" if carried.note else ""
    return f"{finding}, {on}{number}{noted}"


def size_words(point: InspectionPoint, mm: float, show: Preferred) -> str:
    """A value of a point in words, to the decimals its gauge can tell: "0.06 mm"."""
    fine = 1 if point.measure is not None and point.measure.is_swing else 0
    return show.show_length(mm, fine=fine)
