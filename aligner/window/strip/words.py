"""What the Strip page says: the sentence of each part, and what a step of the list shows large."""

from __future__ import annotations

from aligner.assessment import StepStanding, StepState
from aligner.assessment.as_found import difference_words, has_heights_as_found, mean_words
from aligner.assessment.strip import OffPart, StripAssessment, StripSubject
from aligner.fastening.steps import Step
from aligner.job import Job
from aligner.units.preferred import Preferred
from aligner.window.strip.views import StripView

Said = tuple[str, str, str]


def sentence_words(found: StripAssessment, view: StripView, chosen: StepStanding | None) -> Said:
    """What to do now on one part of the page, its detail, and a caution."""
    match view:
        case StripView.AS_FOUND:
            return _as_found_sentence(found)
        case StripView.PARTS:
            return _parts_sentence(found)
    if chosen is not None:
        return f"{chosen.step.title}.", chosen.step.reason, ""
    if found.subject is StripSubject.LOOSEN:
        return "", "", ""
    return found.sentence


def _as_found_sentence(found: StripAssessment) -> Said:
    if found.subject is StripSubject.HEIGHTS:
        return found.sentence
    if has_heights_as_found(found.job):
        return (
            "The heights are written down.",
            "Note what else will let it go back where it was, then go on to Loosen.",
            "",
        )
    if found.asks_for_heights:
        return (
            "Read both heights as found.",
            "Before a clamp of the brackets is slackened: tube top edge above the bracket.",
            "",
        )
    if not found.steps:
        return "Write down how it stands.", "Before anything is loosened.", ""
    return (
        "The heights as found were not read.",
        "A clamp is slack, so they can no longer be read. If they stand on paper, write them here.",
        "",
    )


def _parts_sentence(found: StripAssessment) -> Said:
    job, ahead = found.job, next(iter(found.to_go_back), None)
    if not found.removed:
        return (
            "Write down each part as it comes off.",
            "Type a name or pick one of the usual things; Enter adds it.",
            "",
        )
    if ahead is None:
        return "Everything that came off is back on.", "", ""
    if job.log or any(each.entry.back for each in found.removed):
        return f"Goes back next: {_lower(ahead.entry.name)}.", back_words(ahead), ""
    count = len(found.to_go_back)
    parts = "1 part is" if count == 1 else f"{count} parts are"
    return "Write down each part as it comes off.", f"{parts} off.", ""


def back_words(part: OffPart) -> str:
    """What lets a part go back as it was: its fasteners and its note."""
    entry = part.entry
    fasteners = f"Fasteners: {entry.fasteners.rstrip('.')}." if entry.fasteners else ""
    note = f"{entry.note[:1].upper()}{entry.note[1:].rstrip('.')}." if entry.note else ""
    return " ".join(words for words in (fasteners, note) if words)


def big_words(step: Step) -> str:
    """The largest words of a step: what is done with the fastener, or what kind of thing it is."""
    if step.kind == "loosen":
        return step.title.split(" ", 1)[0]
    return "Read" if step.reads else "Look" if step.kind == "look" else "Do this"


def object_words(step: Step) -> str:
    """What it is done to."""
    if step.kind != "loosen":
        return step.title
    what = step.title.partition(" ")[2]
    return what[:1].upper() + what[1:]


def read_words(job: Job, step: Step, show: Preferred) -> str:
    """What was read for a step that reads something; "" for the others."""
    found = job.as_found
    pair = {"protrusion": found.protrusion, "squaring": found.bracket}.get(step.reads or "")
    if pair is None:
        return ""
    legs = [
        f"{side} {words}"
        for side in ("left", "right")
        if (words := mean_words(job, getattr(pair, side), pair.gauge, show))
    ]
    if not legs:
        return "Not written down yet."
    unlike = difference_words(job, pair.left, pair.right, pair.gauge, show)
    said = ", ".join(legs)
    return f"{said[:1].upper()}{said[1:]}{f'; {unlike}' if unlike else ''}."


def elsewhere_words(standing: StepStanding, in_hand: StepStanding | None) -> str:
    """Where the step stands, if it is not the one in hand; "" if it is."""
    if in_hand is None or standing.number == in_hand.number:
        return ""
    there = "done" if standing.state is StepState.DONE else "not its turn yet"
    return (
        f"Step {standing.number}, {there}. In hand is step {in_hand.number}, "
        f"{in_hand.step.title}: Escape goes back to it."
    )


def then_words(steps: tuple[StepStanding, ...], standing: StepStanding) -> str:
    """What comes after a step; "" at the end."""
    after = next(
        (
            each
            for each in steps
            if each.number > standing.number and each.state is not StepState.DONE
        ),
        None,
    )
    return f"Then: {_lower(after.step.title)}." if after else "It is the last step."


def _lower(words: str) -> str:
    return words[:1].lower() + words[1:]
