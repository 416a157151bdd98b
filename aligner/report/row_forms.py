"""The few forms that rows of the job card have, so that no part of it invents another."""

from __future__ import annotations

from collections.abc import Sequence

from aligner.gauging import Verdict
from aligner.language import begun, say
from aligner.report.page import Cell, Row

TEXT_POINTS = 8.5
TABLE_POINTS = 7.5
_TITLE_MM = 34.0
_PAIR_TITLE_MM, _PAIR_MM = 34.0, 56.0
_VERDICT_MM, _LETTER_MM, _GAP_MM = 20.0, 1.9, 2.0  # the letter is one of the bold type


def line(
    text: str,
    *,
    points: float = TEXT_POINTS,
    bold: bool = False,
    above_mm: float = 0.6,
    is_quiet: bool = False,
) -> Row:
    """A line across the page."""
    return Row((Cell(text, points=points, bold=bold, is_quiet=is_quiet),), above_mm)


def heading(text: str) -> Row:
    """The heading of a part."""
    cell = Cell(text, points=10.5, bold=True)
    return Row((cell,), above_mm=4.0, has_rule=True, keeps_with_next=True)


def titled(title: str, text: str, *, title_mm: float = _TITLE_MM, above_mm: float = 0.8) -> Row:
    """A title, and what there is to say of it."""
    return Row((Cell(title, title_mm, is_quiet=True), Cell(text)), above_mm)


def signature(signed: str) -> list[Row]:
    """Who signs, and a line to sign on; they stay on one page."""
    who = (Cell(say("Signed off by"), _TITLE_MM, is_quiet=True), Cell(signed, bold=True))
    where = (Cell(say("Signature, date"), is_quiet=True),)
    return [Row(who, 0.8, keeps_with_next=True), Row(where, 9.0, has_rule=True)]


def judged(title: str, verdict: str, said: str) -> Row:
    """A title, a verdict in bold, and the figures behind it; one of the two may be ""."""
    if not (verdict and said):
        return titled(title, verdict or said)
    longest = max(len(say(each.value)) for each in Verdict)
    cells = (
        Cell(title, _TITLE_MM, is_quiet=True),
        Cell(verdict, max(_VERDICT_MM, longest * _LETTER_MM + _GAP_MM), bold=True),
        Cell(begun(said)),
    )
    return Row(cells, above_mm=0.8)


def pairs(entries: Sequence[tuple[str, str]]) -> list[Row]:
    """Short entries two to a row, down the left column first; long ones in a row of their own."""
    short = [entry for entry in entries if len(entry[0]) <= 24 and len(entry[1]) <= 34]
    half = (len(short) + 1) // 2
    rows = []
    for place in range(half):
        title, text = short[place]
        cells = [Cell(title, _PAIR_TITLE_MM, is_quiet=True), Cell(text, _PAIR_MM)]
        if half + place < len(short):
            title, text = short[half + place]
            cells += [Cell(title, _PAIR_TITLE_MM, is_quiet=True), Cell(text)]
        rows.append(Row(tuple(cells), above_mm=0.8))
    return rows + [titled(*entry) for entry in entries if entry not in short]


def three(title: str, before: str, after: str, *, bold: bool = False) -> Row:
    """A row of the table beside the drawing."""
    cells = (
        Cell(title, 34, bold=bold, is_quiet=not bold),
        Cell(before, 30, bold=bold),
        Cell(after, bold=bold),
    )
    return Row(cells, above_mm=1.2, has_rule=True)


def under(text: str, indent_mm: float) -> Row:
    """A line that belongs to the table row above it."""
    cells = (Cell("", indent_mm, TABLE_POINTS), Cell(text, points=TABLE_POINTS))
    return Row(cells, above_mm=0.2)
