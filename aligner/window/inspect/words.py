"""What the Inspect stage says: what to do now, and how each place stands."""

from __future__ import annotations

from aligner.assessment.findings import finding_words
from aligner.assessment.inspection import InspectionAssessment, PlaceStanding
from aligner.job.inspect import Finding
from aligner.language import inside, say, say_count


def given_words(finding: Finding) -> str:
    """What a person makes of a part, in a word."""
    match finding:
        case Finding.GOOD:
            return say("good", meaning="a part")
        case Finding.WATCH:
            return say("watch", meaning="a part")
        case Finding.REPLACE:
            return say("replace", meaning="a part")


def headline(standing: PlaceStanding) -> str:
    """The place in hand: what to look at, or what was found there."""
    name = inside(standing.title)
    found = finding_words(standing)
    if found:
        return f"{standing.title}: {found}."
    if standing.point.measure is not None and not standing.found.readings:
        return say("Measure the {name}.", name=name)
    return say("Look at the {name}.", name=name)


def count_words(inspection: InspectionAssessment) -> str:
    """How far it is: "7 of 32 looked at, 2 to replace"."""
    total = len(inspection.places)
    line = [say("{done} of {total} looked at", done=inspection.looked_at, total=total)]
    due, watch = len(inspection.open_parts), len(inspection.to_watch)
    line += [say("{count} to replace", count=due)] if due else []
    line += [say("{count} to watch", count=watch)] if watch else []
    return ", ".join(line)


def whole_words(inspection: InspectionAssessment) -> tuple[str, str]:
    """The sentence over the parts list, and its detail."""
    due = inspection.open_parts
    ahead = inspection.next_place
    if ahead is not None:
        following = say("Next: {title}.", title=ahead.title)
        return say("The parts list, so far."), f"{count_words(inspection)}. {following}"
    if due:
        return (
            say_count(
                "All looked at. One part is still to be fitted.",
                "All looked at. {count} parts are still to be fitted.",
                len(due),
            ),
            say("Tick “new part fitted” on its point once the new one is in."),
        )
    return say("All looked at, nothing left to fit."), f"{count_words(inspection)}."


def row_state(standing: PlaceStanding) -> str:
    """How a place stands, in the word its row ends with; "" where nobody looked yet."""
    if standing.found.finding is Finding.REPLACE and not standing.is_due:
        return say("fitted", meaning="a new part")
    if standing.found.finding is not None:
        return given_words(standing.found.finding)
    return say("watch last time") if standing.carried else ""
