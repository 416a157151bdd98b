"""A job in a few lines: how the readings came out, how far the list is, what was out of order."""

from __future__ import annotations

from aligner.assessment import Assessment, StepState
from aligner.assessment.corrections import asks_for_in_line, asks_for_squaring
from aligner.gauging import Verdict
from aligner.language import say
from aligner.units.preferred import Preferred
from aligner.window.widgets.page import Cell
from aligner.window.widgets.pictures import height_words, in_line_words, square_words


def summary_rows(found: Assessment, show: Preferred) -> list[list[Cell]]:
    """Each line's name and its words; what is not as it should be asks for attention."""
    job, tightening = found.job, found.tightening
    heights = _judged(height_words(found.protrusion, show), found.protrusion.verdict)
    square = in_line = (say("not asked for on this job"), "")
    if asks_for_squaring(job):
        square = _judged(square_words(found.squaring, show), found.squaring.verdict)
    if asks_for_in_line(job):
        in_line = _judged(in_line_words(found.in_line, show), found.in_line.verdict)
    total = len(tightening.steps)
    ticked = say("{done} of {total} steps ticked", done=tightening.done_count, total=total)
    rows: list[list[Cell]] = [
        [(say("heights"), ""), heights],
        [(say("lower bracket square"), ""), square],
        [(say("legs in line"), ""), in_line],
        [(say("tightening"), ""), (ticked, "" if tightening.is_finished else "attention")],
    ]
    for standing in tightening.steps:
        entry = standing.entry
        if standing.state is StepState.DONE and entry is not None and entry.reason:
            what = say("step {number}, {title}", number=standing.number, title=standing.step.title)
            rows.append([(say("out of order"), ""), (f"{what}: {entry.reason}", "")])
    return rows


def _judged(words: str, verdict: Verdict) -> Cell:
    return words, "" if verdict is Verdict.WITHIN else "attention"
