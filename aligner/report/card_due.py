"""What is due after the job: fasteners to check again, parts to replace, parts to watch."""

from __future__ import annotations

from itertools import groupby

from aligner.assessment import Assessment
from aligner.assessment.rechecks import RecheckStanding
from aligner.language import say
from aligner.report.page import Row
from aligner.report.parts_list import parts_to_replace, parts_to_watch, row_text
from aligner.report.printable import printable
from aligner.report.row_forms import heading, titled
from aligner.units.preferred import Preferred


def due_rows(assessment: Assessment, show: Preferred) -> list[Row]:
    """What is due and when; nothing where nothing is."""
    rows: list[Row] = []
    for after_km, group in groupby(assessment.rechecks, key=lambda each: each.after_km):
        rows += _rechecks(
            say("After {distance}", distance=show.show_distance(after_km)), list(group), show
        )
    for title, parts in (
        (say("To replace"), parts_to_replace(assessment.inspection, show)),
        (say("To watch"), parts_to_watch(assessment.inspection, show)),
    ):
        rows += [titled(title, printable(row_text(part))) for part in parts]
    return [heading(say("Due, and when")), *_told_once(rows)] if rows else []


def _rechecks(after: str, rechecks: list[RecheckStanding], show: Preferred) -> list[Row]:
    """Those still open in one row, each one that was done in a row of its own."""
    waiting = [_fastener(each, show) for each in rechecks if each.entry is None]
    rows = (
        [titled(after, say("check again: {fasteners}", fasteners="; ".join(waiting)))]
        if waiting
        else []
    )
    for each in rechecks:
        if each.entry is not None:
            at = each.entry.at.isoformat(sep=" ", timespec="minutes")
            torque = f", {each.entry.torque.said}" if each.entry.torque else ""
            words = say(
                "checked again {at}: {fastener}", at=f"{at}{torque}", fastener=_fastener(each, show)
            )
            rows.append(titled(after, words))
    return rows


def _fastener(recheck: RecheckStanding, show: Preferred) -> str:
    words = printable(recheck.title)
    if recheck.torque is None:
        return say("{fastener}, torque missing", fastener=words)
    return f"{words}, {show.show_torque(recheck.torque.target_nm)}"


def _told_once(rows: list[Row]) -> list[Row]:
    """The rows with a title only where it is another than the one above."""
    told: list[Row] = []
    before = ""
    for row in rows:
        title = row.cells[0].text
        told.append(titled("" if title == before else title, row.cells[1].text))
        before = title
    return told
