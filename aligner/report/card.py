"""The job card: one job on paper, as found, as left, every step with its torque, signed.

The trap: the card outlives the program. So it says what was specified beside what was done,
in words that need no screen, and it is written whole or not at all.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QMarginsF, QRectF
from PySide6.QtGui import QFont, QGuiApplication, QPageLayout, QPageSize, QPainter, QPdfWriter

from aligner.assessment import Assessment, assess
from aligner.drawing.front_elevation import (
    exaggeration,
    front_elevation,
    paint_front_elevation,
)
from aligner.drawing.proportions import front_proportions
from aligner.drawing.theme import Theme
from aligner.job import Job
from aligner.report.card_rows import card_foot, rows_above, rows_below, rows_beside
from aligner.report.page import RESOLUTION, UNJOINED, Picture, Row, paint_pages
from aligner.storage.files import write_whole
from aligner.units.preferred import Preferred


def write_card(job: Job, path: Path, show: Preferred | None = None) -> None:
    """Write the job card of a job as a PDF document, A4.

    Args:
        job: of which the card is.
        path: of the document; what stands there is replaced only by a whole new one.
        show: the units to show values in.

    Raises:
        SaveFailed: in words; what stood there before is whole.
    """
    write_whole(path, card_bytes(job, show))


def card_bytes(job: Job, show: Preferred | None = None) -> bytes:
    """The job card as the bytes of a PDF document. Starts Qt's fonts where no one has yet."""
    application = QGuiApplication.instance() or QGuiApplication(["aligner"])
    show = show or Preferred()
    assessment = assess(job)
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(RESOLUTION)
    writer.setPageSize(QPageSize(QPageSize.PageSizeId.A4))
    writer.setPageMargins(QMarginsF(15, 12, 15, 10), QPageLayout.Unit.Millimeter)
    writer.setCreator("Aligner")
    writer.setTitle(card_foot(job))
    picture = Picture(
        paint=lambda painter, room: _paint_front(painter, room, assessment, show),
        width_mm=76,
        height_mm=66,
        beside=rows_beside(assessment, show),
    )
    blocks: tuple[Row | Picture, ...] = (
        *rows_above(assessment),
        picture,
        *rows_below(assessment, show),
    )
    paint_pages(writer, blocks, card_foot(job))
    del application  # kept until the last text is painted
    buffer.close()
    return bytes(buffer.data().data())


def _paint_front(painter: QPainter, box: QRectF, assessment: Assessment, show: Preferred) -> None:
    theme = Theme()
    found = assessment.protrusion
    left = found.left.value_mm if found.left else None
    right = found.right.value_mm if found.right else None
    words_height = 14.0
    room = box.adjusted(0, words_height, 0, -2.2 * words_height)
    picture = front_elevation(room, front_proportions(assessment.job), left, right)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    paint_front_elevation(painter, theme, picture)
    font = QFont(QGuiApplication.font())
    font.setPixelSize(9)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    font.setLetterSpacing(QFont.SpacingType.AbsoluteSpacing, UNJOINED)
    painter.setFont(font)
    painter.setPen(theme.color("ink"))
    for side, tube, value in (
        ("left", picture.left_tube, left),
        ("right", picture.right_tube, right),
    ):
        text = f"{side} {show.show_length(value)}" if value is not None else f"{side} not read"
        place = tube.center().x() - painter.fontMetrics().horizontalAdvance(text) / 2
        painter.drawText(int(place), int(box.top() + words_height - 5), text)
    factor = exaggeration(left - right) if left is not None and right is not None else 1
    caption = (
        "Seen from the seat."
        if factor == 1
        else (f"Seen from the seat; difference drawn {factor} times larger.")
    )
    painter.drawText(int(box.left()), int(box.bottom() - 3), caption)
