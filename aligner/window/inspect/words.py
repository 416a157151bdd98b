"""What the Inspect stage says: what to do now, and how each place stands."""

from __future__ import annotations

from aligner.assessment.findings import finding_words
from aligner.assessment.inspection import InspectionAssessment, PlaceStanding
from aligner.job.inspect import Finding


def headline(standing: PlaceStanding) -> str:
    """The place in hand: what to look at, or what was found there."""
    name = standing.title[:1].lower() + standing.title[1:]
    found = finding_words(standing)
    if found:
        return f"{standing.title}: {found}."
    if standing.point.measure is not None and not standing.found.readings:
        return f"Measure the {name}."
    return f"Look at the {name}."


def count_words(inspection: InspectionAssessment) -> str:
    """How far it is: "7 of 32 looked at, 2 to replace"."""
    line = f"{inspection.looked_at} of {len(inspection.places)} looked at"
    due, watch = len(inspection.open_parts), len(inspection.to_watch)
    line += f", {due} to replace" if due else ""
    return line + (f", {watch} to watch" if watch else "")


def whole_words(inspection: InspectionAssessment) -> tuple[str, str]:
    """The sentence over the parts list, and its detail."""
    due = inspection.open_parts
    ahead = inspection.next_place
    if ahead is not None:
        return "The parts list, so far.", f"{count_words(inspection)}. Next: {ahead.title}."
    if due:
        count = "One part is" if len(due) == 1 else f"{len(due)} parts are"
        return (
            f"All looked at. {count} still to be fitted.",
            "Tick “new part fitted” on its point once the new one is in.",
        )
    return "All looked at, nothing left to fit.", f"{count_words(inspection)}."


def row_state(standing: PlaceStanding) -> str:
    """How a place stands, in the word its row ends with; "" where nobody looked yet."""
    if standing.found.finding is Finding.REPLACE:
        return "replace" if standing.is_due else "fitted"
    if standing.found.finding is not None:
        return standing.found.finding.value
    return "watch last time" if standing.carried else ""
