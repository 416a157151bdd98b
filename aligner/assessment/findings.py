"""The findings in words: rows for the job card, for the parts list and for the screen."""

from __future__ import annotations

from dataclasses import dataclass

from aligner.assessment.inspection import InspectionAssessment, PlaceStanding
from aligner.gauging import Verdict
from aligner.job.inspect import CarriedFinding, Finding
from aligner.job.inspection_points import InspectionPoint, LimitKind
from aligner.sheet.inspection import LimitOf
from aligner.units.preferred import Preferred

FINDING_WORDS = {Finding.GOOD: "good", Finding.WATCH: "watch", Finding.REPLACE: "replace"}


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
            point=each.point.name,
            side=each.where,
            finding=finding_words(each) or "not looked at",
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
        return "replace, still due" if standing.is_due else "replaced, new part fitted"
    return FINDING_WORDS[finding]


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
        size = f"bend {size} ({size_words(standing.point, measured.read_mm, show)} indicated)"
    limit = limit_words(standing, show)
    if not limit:
        return f"{size}, limit missing"
    return f"{size}, {limit}: {measured.verdict.value}"


def limit_words(standing: PlaceStanding, show: Preferred) -> str:
    """The limit as the manual prints it: "at most 0.20 mm indicated"; "" if the sheet has none."""
    limit, measure = standing.limit, standing.point.measure
    if limit is None or measure is None:
        return ""
    way = "at most" if measure.limit is LimitKind.MOST else "at least"
    of = ""
    if measure.is_halved:
        of = " bend" if limit.of is LimitOf.BEND else " indicated"
    return f"{way} {size_words(standing.point, limit.value.value, show)}{of}"


def verdict_advice(standing: PlaceStanding) -> str:
    """What to do about the verdict, in a sentence; "" where it says it all."""
    measured = standing.measured
    if measured is None:
        return ""
    if measured.standard_uncertainty_mm is None:
        return "Name the gauge: without it nobody knows how sure the number is."
    match measured.verdict:
        case Verdict.MISSING:
            return "The limit is missing: take it from the manual."
        case Verdict.UNSETTLED:
            return "Too near the limit for this gauge to tell: use a finer one, or watch it."
        case Verdict.OUT if standing.found.finding is Finding.GOOD:
            return "It measures out and is marked good: say why in the note."
        case _:
            return ""


def carried_words(
    point: InspectionPoint, carried: CarriedFinding, value: float | None, show: Preferred
) -> str:
    """What an earlier job said: "Watch, 2025-05-02: 0.12 mm; a slight mark"."""
    finding = "Not replaced yet" if carried.finding is Finding.REPLACE else "Watch"
    on = f", {carried.on}" if carried.on else ", earlier"
    number = f": {size_words(point, value, show)}" if value is not None else ""
    said = f"; {carried.note}" if carried.note else ""
    return f"{finding}{on}{number}{said}"


def size_words(point: InspectionPoint, mm: float, show: Preferred) -> str:
    """A value of a point in words, to the decimals its gauge can tell: "0.06 mm"."""
    fine = 1 if point.measure is not None and point.measure.is_swing else 0
    return show.show_length(mm, fine=fine)
