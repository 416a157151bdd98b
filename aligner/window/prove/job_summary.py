"""A job in a few lines: how the readings came out, how far the list is, what was out of order."""

from __future__ import annotations

from aligner.assessment import Assessment, StepState
from aligner.assessment.corrections import asks_for_in_line, asks_for_squaring
from aligner.gauging import Verdict
from aligner.units.preferred import Preferred
from aligner.window.widgets.page import Cell
from aligner.window.widgets.pictures import height_words, in_line_words, square_words

_NOT_ASKED: Cell = ("not asked for on this job", "")


def summary_rows(found: Assessment, show: Preferred) -> list[list[Cell]]:
    """Each line's name and its words; what is not as it should be asks for attention."""
    job, tightening = found.job, found.tightening
    heights = _judged(height_words(found.protrusion, show), found.protrusion.verdict)
    square, in_line = _NOT_ASKED, _NOT_ASKED
    if asks_for_squaring(job):
        square = _judged(square_words(found.squaring, show), found.squaring.verdict)
    if asks_for_in_line(job):
        in_line = _judged(in_line_words(found.in_line, show), found.in_line.verdict)
    ticked = f"{tightening.done_count} of {len(tightening.steps)} steps ticked"
    rows: list[list[Cell]] = [
        [("heights", ""), heights],
        [("lower bracket square", ""), square],
        [("legs in line", ""), in_line],
        [("tightening", ""), (ticked, "" if tightening.is_finished else "attention")],
    ]
    for standing in tightening.steps:
        entry = standing.entry
        if standing.state is StepState.DONE and entry is not None and entry.reason:
            what = f"step {standing.number}, {standing.step.title}: {entry.reason}"
            rows.append([("out of order", ""), (what, "")])
    return rows


def _judged(words: str, verdict: Verdict) -> Cell:
    return words, "" if verdict is Verdict.WITHIN else "attention"
