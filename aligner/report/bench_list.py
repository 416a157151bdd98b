"""The lists for the bench wall: tightening and loosening on paper, in type read from a distance.

The trap: paper does not know what the program knows. So it carries the readings to write down
at each hold point, says where a torque is missing, and tells what was ticked when it was made.
"""

from __future__ import annotations

import re
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QMarginsF
from PySide6.QtGui import QGuiApplication, QPageLayout, QPageSize, QPdfWriter

from aligner.assessment import Assessment, StepStanding, StepState, assess
from aligner.job import Job
from aligner.language import marked, say, say_count
from aligner.report.page import RESOLUTION, Cell, Row, paint_pages
from aligner.report.printable import printable
from aligner.storage.files import write_whole
from aligner.units.preferred import Preferred

_NUMBER_MM, _BOX_MM, _TORQUE_MM, _SETTING_MM = 11.0, 11.0, 30.0, 42.0
_BIG, _MIDDLE, _SMALL = 14.0, 12.0, 9.5
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
    application = QGuiApplication.instance() or QGuiApplication(["aligner"])
    assessment = assess(job)
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(RESOLUTION)
    writer.setPageSize(page_size or QPageSize(QPageSize.PageSizeId.A4))
    writer.setPageMargins(QMarginsF(14, 12, 12, 10), QPageLayout.Unit.Millimeter)
    writer.setCreator("Aligner")
    foot = _foot(job)
    writer.setTitle(foot)
    width_mm = writer.width() * 25.4 / RESOLUTION
    paint_pages(writer, rows_of(assessment, show or Preferred(), width_mm), foot)
    del application  # kept until the last text is painted
    buffer.close()
    return bytes(buffer.data().data())


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
    step, tool = standing.step, standing.tool
    is_hold = step.kind == "hold"
    title = printable(step.title) + (f", {step.pass_words}" if step.pass_words else "")
    title = say("HOLD POINT: {step}", step=title) if is_hold else title
    box = _DONE if standing.state is StepState.DONE else _OPEN
    beside: tuple[Cell, ...] = ()
    wrench: tuple[Cell, ...] = ()
    text_mm = width_mm - _NUMBER_MM - _BOX_MM
    if step.target_nm is not None or step.torque_missing:
        text_mm -= _TORQUE_MM + _SETTING_MM
        torque = "________" if step.target_nm is None else show.show_torque(step.target_nm)
        setting = tool.setting_text if tool else ""
        beside = (
            Cell(torque, _TORQUE_MM, _BIG, bold=True, is_attention=step.torque_missing),
            Cell(setting, _SETTING_MM, _BIG, bold=True),
        )
        wrench = (
            Cell("", _TORQUE_MM, _SMALL),
            Cell(printable(tool.words) if tool and setting else "", _SETTING_MM, _SMALL),
        )
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
    said = [reason]
    if step.torque_missing:
        said.append(say("Torque missing: write in the one from the maker's manual."))
    if tool is not None and not tool.can_be_set:
        said.append(say("No wrench on the list can do it."))
    if caution:
        said.append(say("CAUTION: {caution}", caution=caution))
    words = Cell(printable(" ".join(part for part in said if part)), text_mm, _SMALL)
    rows.append(Row((indent, words, *wrench), above_mm=0.0, has_rule=True))
    return rows


def _short(reason: str) -> str:
    """A reason as far as its first colon or semicolon, if that says enough."""
    found = _CUT.match(reason)
    return f"{found.group(1)}." if found else reason


def _foot(job: Job) -> str:
    names = [name for name in (printable(job.sheet.name), printable(job.title)) if name]
    if not names:
        return say("Bench list: unnamed")
    return say("Bench list: {names}", names=", ".join(names))
