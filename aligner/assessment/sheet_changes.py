"""What a changed sheet did to a job: ticked steps that are open again, and a list that cannot be.

The trap: a list that changes under the mechanic's hands without a word.
"""

from __future__ import annotations

from aligner.assessment.tightening import plan_for
from aligner.errors import AlignerError
from aligner.job import Action, Job
from aligner.job.edits_sheet_ticks import what_of_the_sheet
from aligner.language import say_count
from aligner.sheet import Sheet


def opened_by_the_sheet(job: Job) -> str:
    """Which ticked steps a change of the sheet has opened again, in a sentence; "" if none.

    The steps that stand on those are counted with them: the log has them right behind.
    """
    last = {entry.step: place for place, entry in enumerate(job.log)}
    reasons: list[str] = []
    count = 0
    is_by_the_sheet = False
    for place, entry in enumerate(job.log):
        is_opened = entry.action is Action.OPENED_AGAIN
        what = what_of_the_sheet(entry.reason) if is_opened else None
        is_by_the_sheet = is_opened and (what is not None or is_by_the_sheet)
        if is_by_the_sheet and last[entry.step] == place:
            count += 1
            if what is not None and what not in reasons:
                reasons.append(what)
    if not reasons:
        return ""
    return say_count(
        "{count} ticked step is open again, because the sheet was changed: {reasons}.",
        "{count} ticked steps are open again, because the sheet was changed: {reasons}.",
        count,
        reasons="; ".join(reasons),
    )


def refusal_of(sheet: Sheet) -> AlignerError | None:
    """Why no list can be made from a sheet; `None` where it can."""
    try:
        plan_for(sheet, asks_for_in_line=False)
    except AlignerError as error:
        return error
    return None
