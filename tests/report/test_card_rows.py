"""The words on the job card, part by part, before they are laid out."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import pytest

from aligner.assessment import Assessment, assess
from aligner.data_files import demo
from aligner.job import Attempt, Job, LogEntry, SquaringPair
from aligner.job.edits_inspect import with_finding, with_photograph
from aligner.job.inspect import Finding
from aligner.report.card_due import due_rows
from aligner.report.card_photographs import card_photographs
from aligner.report.card_rows import rows_above, rows_below, rows_beside
from aligner.report.page import Row
from aligner.report.verdicts import verdict_lines
from aligner.sheet import Side
from aligner.sheet.quantities import Distance, Length, Torque
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred
from tests.assessment.bench_jobs import fasteners, true_job

AT = datetime(2026, 5, 2, 10, tzinfo=UTC)
SHOW = Preferred()
GERMAN: dict[str, str] = {}


def texts(rows: tuple[Row, ...] | list[Row]) -> list[str]:
    return [cell.text for row in rows for cell in row.cells]


def pair(name: str, left: str, right: str) -> SquaringPair:
    read = {"left": (Length.typed(left),), "right": (Length.typed(right),)}
    return SquaringPair(name=name, gauge="gauge", **read)


def with_pairs(job: Job, *pairs: SquaringPair) -> Job:
    return job.with_changes(align=job.align.with_changes(squaring=pairs))


def test_what_a_pair_read_first_is_not_told_of_another_that_stands_in_its_place_now():
    first = with_pairs(
        true_job(), pair("lugs", "190 mm", "180 mm"), pair("bolts", "92 mm", "90 mm")
    )
    job = with_pairs(first, pair("bolts", "90 mm", "90 mm"), pair("new", "70 mm", "70 mm"))
    job = job.with_changes(attempts=(Attempt(closed=AT, align=first.align),))
    rows = {row.cells[0].text: row.cells[1].text for row in rows_beside(assess(job), SHOW)}
    assert rows["bolts, left less right"] == "2.00 mm"
    assert rows["new, left less right"] == ""


def test_distances_that_are_the_same_are_not_called_shorter():
    (squareness,) = (
        line for line in verdict_lines(assess(true_job()), SHOW) if line.title == "Lower bracket"
    )
    assert squareness.said.startswith("left and right alike")


@pytest.mark.usefixtures("german")
def test_a_torque_checked_again_has_the_decimal_sign_of_the_language():
    job = true_job(fasteners(again_after=Distance.typed("100 km")))
    entry = LogEntry(step="recheck/left fork cap", at=AT, torque=Torque("22.5 N·m", 22.5))
    job = job.with_changes(prove=job.prove.with_changes(rechecks=(entry,)))
    (told,) = (
        text for text in texts(due_rows(assess(job), SHOW)) if "22" in text and "10:00" in text
    )
    assert "22,5 N·m" in told


def demo_with_findings() -> Assessment:
    job = load_job(demo("fellside-left-leg-high.job.json"))[0]
    for place in (("oil_seal", Side.LEFT), ("tube_runout", Side.LEFT)):
        job = with_finding(job, place, Finding.GOOD, AT)
    return assess(with_photograph(job, ("oil_seal", Side.LEFT), "photographs/seal.jpg"))


@pytest.mark.usefixtures("bracketed")
def test_no_text_of_the_card_is_said_twice():
    found = demo_with_findings()
    said = texts((*rows_above(found), *rows_beside(found, SHOW), *rows_below(found, SHOW)))
    assert any("⟦Oil seal⟧" in text for text in said)
    (photograph,) = card_photographs(found, SHOW, Path("/jobs/a.job.json"))
    assert photograph.words == "⟦Oil seal⟧, ⟦left leg⟧"
