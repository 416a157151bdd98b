"""The photographs of the findings on the job card, three beside each other with their words.

The trap: a photograph of twelve megapixels in a small frame makes a card of many megabytes. So
each is read at the size it is printed in, and one that is gone says so in its frame.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QImage, QImageReader, QPainter, QPen

from aligner.assessment import Assessment
from aligner.assessment.findings import findings
from aligner.drawing.theme import Theme
from aligner.errors import AlignerError
from aligner.language import say
from aligner.report.page import Block, Picture
from aligner.report.page_text import picture_font
from aligner.report.printable import printable
from aligner.report.row_forms import heading
from aligner.units.preferred import Preferred

_IN_A_ROW = 3
_WIDTH_MM, _HEIGHT_MM = 180.0, 50.0
_CAPTION = 13.0  # height of the words, in pixels of 96 an inch
_GAP = 10.0
_DOTS_A_PIXEL = 2  # 192 dots an inch: finer than the eye sees at arm's length


@dataclass(frozen=True)
class CardPhotograph:
    """One photograph and what it shows.

    Attributes:
        words: the point it belongs to.
        path: where it is kept.
    """

    words: str
    path: Path


def card_photographs(
    assessment: Assessment, show: Preferred, job_path: Path | None
) -> tuple[CardPhotograph, ...]:
    """The photographs of a job that is kept in a file; a job without one has none yet."""
    if job_path is None:
        return ()
    from aligner.storage.photographs import photograph_path

    found: list[CardPhotograph] = []
    for row in findings(assessment.inspection, show):
        words = f"{row.point}, {row.side}" if row.side else row.point
        for name in row.photographs:
            try:
                found.append(CardPhotograph(printable(words), photograph_path(job_path, name)))
            except AlignerError:
                continue  # a name that leads out of the job's folder is no photograph of it
    return tuple(found)


def photograph_blocks(photographs: tuple[CardPhotograph, ...]) -> tuple[Block, ...]:
    """Rows of photographs under a heading; nothing where there is none."""
    if not photographs:
        return ()
    rows = [
        _row(photographs[place : place + _IN_A_ROW])
        for place in range(0, len(photographs), _IN_A_ROW)
    ]
    return (heading(say("Photographs")), *rows)


def _row(photographs: tuple[CardPhotograph, ...]) -> Picture:
    return Picture(
        paint=lambda painter, box: _paint_row(painter, box, photographs),
        width_mm=_WIDTH_MM,
        height_mm=_HEIGHT_MM,
    )


def _paint_row(painter: QPainter, box: QRectF, photographs: tuple[CardPhotograph, ...]) -> None:
    width = (box.width() - (_IN_A_ROW - 1) * _GAP) / _IN_A_ROW
    for place, photograph in enumerate(photographs):
        frame = QRectF(
            box.left() + place * (width + _GAP), box.top(), width, box.height() - _CAPTION - 4
        )
        _paint_one(painter, frame, photograph)


def _paint_one(painter: QPainter, frame: QRectF, photograph: CardPhotograph) -> None:
    theme = Theme()
    painter.setFont(picture_font())
    image = _read(photograph.path, frame)
    if image is None:
        painter.setPen(QPen(theme.color("line"), 0.8))
        painter.drawRect(frame)
        painter.setPen(theme.color("attention"))
        painter.drawText(frame, Qt.AlignmentFlag.AlignCenter, say("this photograph is missing"))
    else:
        size = QRectF(image.rect()).size().scaled(frame.size(), Qt.AspectRatioMode.KeepAspectRatio)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawImage(QRectF(frame.topLeft(), size), image)
    painter.setPen(theme.color("ink"))
    words = painter.fontMetrics().elidedText(
        photograph.words, Qt.TextElideMode.ElideMiddle, int(frame.width())
    )
    painter.drawText(QPointF(frame.left(), frame.bottom() + _CAPTION - 2), words)


def _read(path: Path, frame: QRectF) -> QImage | None:
    """The photograph at the size it is printed in; `None` where it cannot be read."""
    reader = QImageReader(str(path))
    reader.setAutoTransform(True)
    whole = reader.size()
    if whole.isValid():
        most = QSize(round(frame.width() * _DOTS_A_PIXEL), round(frame.width() * _DOTS_A_PIXEL))
        fitting = whole.scaled(most, Qt.AspectRatioMode.KeepAspectRatio)
        if fitting.width() < whole.width():
            reader.setScaledSize(fitting)
    image = reader.read()
    return None if image.isNull() else image
