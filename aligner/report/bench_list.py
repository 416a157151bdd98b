"""The lists for the bench wall: tightening and loosening on paper, in type read from a distance.

The trap: paper does not know what the program knows. So it carries the readings to write down
at each hold point, says where a torque is missing, and tells what was ticked when it was made.
"""

from __future__ import annotations

import re
from pathlib import Path

from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QPageSize, QPdfWriter

from aligner.assessment import Assessment, StepStanding, StepState, assess
from aligner.job import Job
from aligner.language import marked, say, say_count
from aligner.report.page import RESOLUTION, Cell, Row, paint_pages
from aligner.report.pdf import pdf_bytes
from aligner.report.printable import printable
from aligner.storage.files import write_whole
from aligner.units.preferred import Preferred

_NUMBER_MM, _BOX_MM, _TORQUE_MM, _SETTING_MM = 11.0, 11.0, 30.0, 42.0
_BIG, _MIDDLE, _SMALL = 14.0, 12.0, 9.5
_MARGINS_MM = QMarginsF(14, 12, 12, 10)
_OPEN, _DONE = "☐", "☑"
_TO_WRITE = {
    "protrusion": marked("left ________   right ________"),
    "squaring": marked("left ________   right ________"),
    "in_line": marked("gap ________   corner ________"),
}
#: A reason is cut here, if what stands before it says enough.
_CUT = re.compile(r"^(.{30,}?)[:;] .*$")


def bench_list(
    job: Job, path: Path, page_size: QPageSize | None = None, show: Preferred | None = None
) -> None:
    """Write both lists of a job for the bench wall as one PDF document.

    Args:
        job: of which the lists are.
        path: of the document; what stands there is replaced only by a whole new one.
        page_size: of the paper; A4 if left out.
        show: the units to show values in.

    Raises:
        SaveFailed: in words; what stood there before is whole.
    """
    write_whole(path, bench_list_bytes(job, page_size, show))


def bench_list_bytes(
    job: Job, page_size: QPageSize | None = None, show: Preferred | None = None
) -> bytes:
    """The lists as the bytes of a PDF document. Starts Qt's fonts where no one has yet."""
    assessment, foot = assess(job), _foot(job)

    def paint(writer: QPdfWriter) -> None:
        width_mm = writer.width() * 25.4 / RESOLUTION
        paint_pages(writer, rows_of(assessment, show or Preferred(), width_mm), foot)

    return pdf_bytes(foot, page_size, _MARGINS_MM, paint)


def rows_of(assessment: Assessment, show: Preferred, width_mm: float) -> tuple[Row, ...]:
    """Everything on paper whose margins leave so much width, row by row."""
    tightening, strip = assessment.tightening.steps, assessment.strip.steps
    grave = [notice.text for notice in assessment.tightening.notices if not tightening]
    bike = printable(assessment.job.sheet.name) or say("Bike not named")
    rows = [Row((Cell(bike, points=20, bold=True),))]
    for title, steps, above_mm in (
        (
            say_count("Tightening: {count} step", "Tightening: {count} steps", len(tightening)),
            tightening,
            0.0,
        ),
        (
            say_count("Taking apart: {count} step", "Taking apart: {count} steps", len(strip)),
            strip,
            14.0,
        ),
    ):
        heading = Cell(title, points=16, bold=True)
        rows.append(Row((heading,), above_mm, has_rule=True, keeps_with_next=True))
        told = ("", "")
        for standing in steps:
            reason, caution = _short(standing.step.reason), standing.step.caution
            said = ("" if reason == told[0] else reason, "" if caution == told[1] else caution)
            rows += _step(standing, show, width_mm, *said)
            told = (reason, caution)
    rows += [Row((Cell(printable(text), points=_MIDDLE, is_attention=True),)) for text in grave]
    manual = say("The maker's manual and local rules come first.")
    rows.append(Row((Cell(manual, points=_SMALL),), above_mm=4.0))
    return tuple(rows)


def _step(
    standing: StepStanding, show: Preferred, width_mm: float, reason: str, caution: str
) -> list[Row]:
    """One step: what is done and to what torque; under it the reason, the wrench, the caution."""
    step = standing.step
    is_hold = step.kind == "hold"
    title = printable(step.title) + (f", {step.pass_words}" if step.pass_words else "")
    title = say("HOLD POINT: {step}", step=title) if is_hold else title
    box = _DONE if standing.state is StepState.DONE else _OPEN
    beside, wrench = _torque_cells(standing, show)
    text_mm = width_mm - _NUMBER_MM - _BOX_MM - sum(cell.width_mm for cell in beside)
    rows = [
        Row(
            (
                Cell(str(standing.number), _NUMBER_MM, _BIG, bold=True),
                Cell(box, _BOX_MM, _BIG),
                Cell(title, text_mm, _BIG, bold=is_hold),
                *beside,
            ),
            above_mm=3.5 if is_hold else 1.2,
            keeps_with_next=True,
        )
    ]
    indent = Cell("", _NUMBER_MM + _BOX_MM, _SMALL)
    if is_hold and step.reads:
        to_write = Cell(say(_TO_WRITE[step.reads]), text_mm, _MIDDLE)
        rows.append(Row((indent, to_write), above_mm=1.6, keeps_with_next=True))
    words = Cell(printable(_under(standing, reason, caution)), text_mm, _SMALL)
    rows.append(Row((indent, words, *wrench), above_mm=0.0, has_rule=True))
    return rows


def _torque_cells(
    standing: StepStanding, show: Preferred
) -> tuple[tuple[Cell, ...], tuple[Cell, ...]]:
    """Torque and setting beside a step, and under them the wrench; none where none is tightened."""
    step, tool = standing.step, standing.tool
    if step.target_nm is None and not step.torque_missing:
        return (), ()
    torque = "________" if step.target_nm is None else show.show_torque(step.target_nm)
    setting = tool.setting_text if tool else ""
    wrench = printable(tool.words) if tool and setting else ""
    return (
        (
            Cell(torque, _TORQUE_MM, _BIG, bold=True, is_attention=step.torque_missing),
            Cell(setting, _SETTING_MM, _BIG, bold=True),
        ),
        (Cell("", _TORQUE_MM, _SMALL), Cell(wrench, _SETTING_MM, _SMALL)),
    )


def _under(standing: StepStanding, reason: str, caution: str) -> str:
    """What stands under a step: why it is done here, what is missing for it, the danger."""
    said, tool = [reason], standing.tool
    if standing.step.torque_missing:
        said.append(say("Torque missing: write in the one from the maker's manual."))
    if tool is not None and not tool.can_be_set:
        said.append(say("No wrench on the list can do it."))
    if caution:
        said.append(say("CAUTION: {caution}", caution=caution))
    return " ".join(part for part in said if part)


def _short(reason: str) -> str:
    """A reason as far as its first colon or semicolon, if that says enough."""
    found = _CUT.match(reason)
    return f"{found.group(1)}." if found else reason


def _foot(job: Job) -> str:
    names = [name for name in (printable(job.sheet.name), printable(job.title)) if name]
    if not names:
        return say("Bench list: unnamed")
    return say("Bench list: {names}", names=", ".join(names))
