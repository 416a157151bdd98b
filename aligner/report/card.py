"""The job card: one job on paper, as found, as left, every step with its torque, signed.

The trap: the card outlives the program. So it says what was specified beside what was done,
in words that need no screen, and it is written whole or not at all.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QPagedPaintDevice, QPageLayout, QPageSize

from aligner.assessment import assess
from aligner.job import Job
from aligner.job.stamps import now_here
from aligner.report.card_drawing import paint_front
from aligner.report.card_photographs import card_photographs, photograph_blocks
from aligner.report.card_rows import card_foot, rows_above, rows_below, rows_beside
from aligner.report.page import Block, Picture, page_count, paint_pages
from aligner.report.pdf import pdf_bytes
from aligner.storage.files import write_whole
from aligner.units.preferred import Preferred

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

_MOST_PAGES = 2  # where it can be
_MARGINS_MM = QMarginsF(15, 12, 15, 10)


def write_card(
    job: Job,
    path: Path,
    show: Preferred | None = None,
    size: QPageSize | None = None,
    kept_in: Path | None = None,
) -> None:
    """Write the job card of a job as a PDF document.

    Args:
        job: of which the card is.
        path: of the document; what stands there is replaced only by a whole new one.
        show: the units to show values in.
        size: of the paper; A4 if left out.
        kept_in: the job's own file, beside which its photographs are.

    Raises:
        SaveFailed: in words; what stood there before is whole.
    """
    write_whole(path, card_bytes(job, show, size, kept_in))


def card_bytes(
    job: Job,
    show: Preferred | None = None,
    size: QPageSize | None = None,
    kept_in: Path | None = None,
) -> bytes:
    """The job card as the bytes of a PDF document. Starts Qt's fonts where no one has yet."""
    return pdf_bytes(
        card_foot(job), size, _MARGINS_MM, lambda device: paint_card(job, device, show, kept_in)
    )


def prepare(printer: QPrinter, job: Job, size: QPageSize) -> None:
    """Set a printer to the card's paper, its margins and its name in the queue."""
    printer.setCreator("Aligner")
    printer.setDocName(card_foot(job))
    printer.setPageSize(size)
    printer.setPageMargins(_MARGINS_MM, QPageLayout.Unit.Millimeter)


def paint_card(
    job: Job,
    device: QPagedPaintDevice,
    show: Preferred | None = None,
    kept_in: Path | None = None,
) -> int:
    """Paint the job card on a printer or into a document. Gives the number of pages.

    Raises:
        OSError: the document could not be begun.
    """
    show = show or Preferred()
    assessment = assess(job, now_here())
    picture = Picture(
        paint=lambda painter, room: paint_front(painter, room, assessment, show),
        width_mm=76,
        height_mm=66,
        beside=rows_beside(assessment, show),
    )

    photographs = photograph_blocks(card_photographs(assessment, show, kept_in))

    def blocks(*, is_tight: bool) -> tuple[Block, ...]:
        below = rows_below(assessment, show, is_tight=is_tight)
        return (*rows_above(assessment), picture, *below, *photographs)

    chosen = blocks(is_tight=False)
    if page_count(device, chosen) > _MOST_PAGES:
        chosen = blocks(is_tight=True)
    return paint_pages(device, chosen, card_foot(job))
