"""What is said of spring and spacer: the length to cut, each preload, what is left at the end.

Nothing is worked out here: values are picked from the assessment and put into words.
"""

from __future__ import annotations

from aligner.assessment.build import BuildAssessment
from aligner.assessment.build_spacer_change import SpacerChange
from aligner.assessment.build_spring import LITTLE_MM, SpringAssessment
from aligner.language import say
from aligner.units.preferred import Preferred


def cut_words(build: BuildAssessment, show: Preferred) -> str:
    """What to cut both spacers to, or what is still needed for it.

    Nothing where the spacer is in, or where the sag, read since, asks for another.
    """
    found, change = build.spring, build.spacer_change
    if found.missing:
        return say("Still needed: {values}.", values=", ".join(found.missing))
    if found.cut_mm is None or found.wanted_mm is None or found.is_cut:
        return ""
    if change is not None and change.length_mm is not None:
        return ""
    preload = show.show_length(found.wanted_mm)
    if found.cut_mm == 0:
        return say("No spacer: the spring alone has {preload} of preload.", preload=preload)
    length = show.show_length(found.cut_mm)
    if found.is_by_sheet:
        return say(
            "Cut both spacers to {length}, for the {preload} of preload on the sheet.",
            length=length,
            preload=preload,
        )
    return say(
        "Cut both spacers to {length}, for {preload} of preload.", length=length, preload=preload
    )


def preload_lines(found: SpringAssessment, show: Preferred) -> tuple[str, ...]:
    """The preload that each spacer at hand gives, and what is left before the coils touch."""
    lines = []
    if found.old_preload_mm is not None:
        size = show.show_length(found.old_preload_mm)
        lines.append(say("The spacer as it was gave {size} of preload.", size=size))
    if found.fitted_preload_mm is not None:
        size = show.show_length(found.fitted_preload_mm)
        lines.append(say("The spacer that went in gives {size} of preload.", size=size))
    if found.sheet_preload_mm is not None:
        size = show.show_length(found.sheet_preload_mm)
        lines.append(say("The sheet's spacer would give {size} of preload.", size=size))
    if found.margin_mm is not None and found.margin_mm >= LITTLE_MM:
        size = show.show_length(found.margin_mm)
        lines.append(say("At full travel {size} is left before the coils touch.", size=size))
    elif found.stack is not None and found.missing_for_margin:
        needed = ", ".join(found.missing_for_margin)
        lines.append(say("Still needed for what is left at full travel: {values}.", values=needed))
    return tuple(lines)


def change_words(found: BuildAssessment, show: Preferred) -> str:
    """What the sag asks of the spacer; "" where it asks for nothing."""
    change = found.spacer_change
    if change is None:
        return ""
    if change.was_mm is None:
        return say("Type the spacer that was in while the sag was read, and the new one is said.")
    if change.length_mm is None:
        return " ".join(notice.text for notice in change.notices)
    if change.is_in:
        return say(
            "The spacer of {length} that the sag asked for is in: read the sag again with it.",
            length=show.show_length(change.length_mm),
        )
    return _new_spacer_words(change, change.length_mm, show)


def change_tone(found: BuildAssessment) -> str:
    """Whether that needs attention."""
    change = found.spacer_change
    return "attention" if change is not None and change.notices else ""


def _new_spacer_words(change: SpacerChange, length_mm: float, show: Preferred) -> str:
    sizes = {
        "length": show.show_length(length_mm),
        "was": show.show_length(change.was_mm or 0.0),
        "size": show.show_length(abs(change.change_mm)),
    }
    said = (
        say("By the sag: new spacers of {length}, {was} and {size} more.", **sizes)
        if change.change_mm > 0
        else say("By the sag: new spacers of {length}, {was} less {size}.", **sizes)
    )
    parts = [said]
    if change.not_counted_mm is not None:
        fitted = show.show_length(change.not_counted_mm)
        parts.append(say("The spacer of {size} that went in is not counted.", size=fitted))
    parts += [notice.text for notice in change.notices]
    if change.margin_mm is not None and not change.notices:
        left = show.show_length(change.margin_mm)
        parts.append(say("At full travel {size} is left before the coils touch.", size=left))
    return " ".join(parts)
