"""What the Strip page says: the sentence of each part, and what a step of the list shows large."""

from __future__ import annotations

from aligner.assessment import StepStanding, StepState
from aligner.assessment.as_found import difference_words, has_heights_as_found, mean_words
from aligner.assessment.strip import OffPart, StripAssessment, StripSubject
from aligner.fastening.steps import Step
from aligner.job import Job
from aligner.language import begun, inside, say, say_count
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
            say("The heights are written down."),
            say("Note what else will let it go back where it was, then go on to Loosen."),
            "",
        )
    if found.asks_for_heights:
        return (
            say("Read both heights as found."),
            say("Before a clamp of the brackets is slackened: tube top edge above the bracket."),
            "",
        )
    if not found.steps:
        return say("Write down how it stands."), say("Before anything is loosened."), ""
    return (
        say("The heights as found were not read."),
        say(
            "A clamp is slack, so they can no longer be read. "
            "If they stand on paper, write them here."
        ),
        "",
    )


def _parts_sentence(found: StripAssessment) -> Said:
    job, ahead = found.job, next(iter(found.to_go_back), None)
    if not found.removed:
        return (
            say("Write down each part as it comes off."),
            say("Type a name or pick one of the usual things; Enter adds it."),
            "",
        )
    if ahead is None:
        return say("Everything that came off is back on."), "", ""
    if job.log or any(each.entry.back for each in found.removed):
        what = say("Goes back next: {name}.", name=inside(ahead.entry.name))
        return what, back_words(ahead), ""
    parts = say_count("{count} part is off.", "{count} parts are off.", len(found.to_go_back))
    return say("Write down each part as it comes off."), parts, ""


def back_words(part: OffPart) -> str:
    """What lets a part go back as it was: its fasteners and its note."""
    entry = part.entry
    where = entry.fasteners.rstrip(".")
    fasteners = say("Fasteners: {where}.", where=where) if where else ""
    note = f"{begun(entry.note).rstrip('.')}." if entry.note else ""
    return " ".join(words for words in (fasteners, note) if words)


def big_words(step: Step) -> str:
    """The largest words of a step: what is done with the fastener, or what kind of thing it is."""
    if step.kind == "loosen":
        return begun(step.deed)
    if step.reads:
        return say("Read", meaning="a step of the loosening list")
    if step.kind == "look":
        return say("Look", meaning="a step of the loosening list")
    return say("Do this")


def object_words(step: Step) -> str:
    """What it is done to."""
    return begun(step.upon) if step.kind == "loosen" else step.title


def read_words(job: Job, step: Step, show: Preferred) -> str:
    """What was read for a step that reads something; "" for the others."""
    found = job.as_found
    pair = {"protrusion": found.protrusion, "squaring": found.bracket}.get(step.reads or "")
    if pair is None:
        return ""
    left, right = (
        mean_words(job, readings, pair.gauge, show) for readings in (pair.left, pair.right)
    )
    legs = [say("left {size}", size=left)] if left else []
    legs += [say("right {size}", size=right)] if right else []
    if not legs:
        return say("Not written down yet.")
    unlike = difference_words(job, pair.left, pair.right, pair.gauge, show)
    said = ", ".join(legs)
    return f"{begun(said)}{f'; {unlike}' if unlike else ''}."


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
    if after is None:
        return say("It is the last step.")
    return say("Then: {title}.", title=inside(after.step.title))
