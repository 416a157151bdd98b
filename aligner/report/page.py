"""Rows of wrapped text laid out on pages of a PDF document, and painted.

The trap: a name longer than its column must wrap, and a row taller than what is left of the
page must go on overleaf: nothing is ever clipped. Text is drawn as it stands, never as markup.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QGuiApplication,
    QPainter,
    QPdfWriter,
    QPen,
    QTextLayout,
    QTextOption,
)

from aligner.drawing.theme import LIGHT

#: Dots an inch that the document is laid out in; fine enough for even spacing of letters.
RESOLUTION = 1200
_PER_MM = RESOLUTION / 25.4
#: Spacing of letters, in dots; any keeps Qt from joining "fi" into a sign no search finds.
UNJOINED = 0.05
_FOOT_MM = 8.0
_COLUMN_GAP_MM = 2.0


@dataclass(frozen=True)
class Cell:
    """Text in one column.

    Attributes:
        text: of any length.
        width_mm: of the column; what is left of the page where 0.
        points: size of the type.
        bold: whether it is set bold.
        is_attention: whether it is set in the colour of what needs attention.
    """

    text: str
    width_mm: float = 0.0
    points: float = 8.5
    bold: bool = False
    is_attention: bool = False


@dataclass(frozen=True)
class Row:
    """Cells side by side.

    Attributes:
        cells: from left to right.
        above_mm: empty room above it.
        has_rule: whether a fine line is drawn beneath.
        keeps_with_next: whether it must not stand alone at a page's foot.
    """

    cells: tuple[Cell, ...]
    above_mm: float = 0.6
    has_rule: bool = False
    keeps_with_next: bool = False


@dataclass(frozen=True)
class Picture:
    """A drawing at the left with short rows at its right.

    Attributes:
        paint: paints it into a box given in pixels of 96 an inch.
        width_mm: of the drawing.
        height_mm: of the drawing, at least.
        beside: rows at its right.
    """

    paint: Callable[[QPainter, QRectF], None]
    width_mm: float
    height_mm: float
    beside: tuple[Row, ...] = ()


@dataclass
class _Page:
    """What one page holds: each painter of a part, in order."""

    parts: list[Callable[[QPainter], None]] = field(default_factory=list)


@dataclass(frozen=True)
class _Lines:
    cell: Cell
    left: float
    lines: tuple[str, ...]


def paint_pages(writer: QPdfWriter, blocks: tuple[Row | Picture, ...], foot: str) -> int:
    """Lay out and paint all blocks; every page carries its number. Gives the number of pages.

    Raises:
        OSError: the document could not be begun.
    """
    layout = _Layout(writer)
    for place, block in enumerate(blocks):
        following = blocks[place + 1] if place + 1 < len(blocks) else None
        layout.add(block, following)
    painter = QPainter()
    if not painter.begin(writer):
        raise OSError("the PDF document could not be begun")
    try:
        total = len(layout.pages)
        for number, page in enumerate(layout.pages, start=1):
            if number > 1:
                writer.newPage()
            for part in page.parts:
                part(painter)
            layout.paint_foot(painter, foot, f"page {number} of {total}")
    finally:
        painter.end()
    return total


class _Layout:
    """Puts blocks on pages from the top down; all measures inside are in dots."""

    def __init__(self, writer: QPdfWriter) -> None:
        self._writer = writer
        self._width = float(writer.width())
        self._bottom = writer.height() - _FOOT_MM * _PER_MM
        self._y = 0.0
        self.pages = [_Page()]

    def add(self, block: Row | Picture, following: Row | Picture | None) -> None:
        if isinstance(block, Picture):
            self._add_picture(block)
            return
        columns = self._columns(block, 0.0, self._width)
        needed = self._height(columns) + block.above_mm * _PER_MM
        with_next = needed
        if block.keeps_with_next and isinstance(following, Row):
            with_next += self._height(self._columns(following, 0.0, self._width))
        elif block.keeps_with_next and isinstance(following, Picture):
            with_next += following.height_mm * _PER_MM
        if self._y + with_next > self._bottom and with_next <= self._bottom and self._y > 0:
            self._turn_over()
        if self._y > 0:
            self._y += block.above_mm * _PER_MM
        while True:
            columns = self._place_some(columns, block)
            if not columns:
                break
            self._turn_over()

    def paint_foot(self, painter: QPainter, foot: str, number: str) -> None:
        font = page_font(7.5)
        metrics = QFontMetricsF(font, self._writer)
        baseline = self._writer.height() - metrics.descent()
        painter.setFont(font)
        painter.setPen(QColor(LIGHT.quiet))
        room = self._width - metrics.horizontalAdvance(number) - 4 * _PER_MM
        line = wrapped(foot, font, room, self._writer)[0]
        painter.drawText(QPointF(0, baseline), line)
        painter.drawText(QPointF(self._width - metrics.horizontalAdvance(number), baseline), number)

    def _add_picture(self, picture: Picture) -> None:
        left = (picture.width_mm + 6) * _PER_MM
        rows = [(row, self._columns(row, left, self._width)) for row in picture.beside]
        text_height = sum(self._height(columns) + row.above_mm * _PER_MM for row, columns in rows)
        height = max(picture.height_mm * _PER_MM, text_height)
        if self._y + height > self._bottom and self._y > 0:
            self._turn_over()
        top = self._y + 2 * _PER_MM
        per_pixel = RESOLUTION / 96
        size = (picture.width_mm * _PER_MM / per_pixel, picture.height_mm * _PER_MM / per_pixel)

        def paint(painter: QPainter) -> None:
            painter.save()
            painter.translate(0, top)
            painter.scale(per_pixel, per_pixel)
            picture.paint(painter, QRectF(0, 0, *size))
            painter.restore()

        self.pages[-1].parts.append(paint)
        self._y = top
        for row, columns in rows:
            self._y += row.above_mm * _PER_MM
            self._place_some(columns, row, from_left=left)
        self._y = max(self._y, top + height)

    def _place_some(self, columns: list[_Lines], row: Row, from_left: float = 0.0) -> list[_Lines]:
        """Place as many lines as the page takes; what is left over comes back."""
        rest: list[_Lines] = []
        lowest = top = self._y
        for column in columns:
            font = page_font(column.cell.points, bold=column.cell.bold)
            metrics = QFontMetricsF(font, self._writer)
            fitting = max(int((self._bottom - top) / metrics.lineSpacing()), 0)
            if fitting == 0 and top == 0:
                fitting = 1
            now, later = column.lines[:fitting], column.lines[fitting:]
            role = LIGHT.attention if column.cell.is_attention else LIGHT.ink
            self.pages[-1].parts.append(
                _text_part(now, font, QColor(role), column.left, top, metrics)
            )
            lowest = max(lowest, top + len(now) * metrics.lineSpacing())
            if later:
                rest.append(_Lines(column.cell, column.left, later))
        self._y = lowest
        if row.has_rule and not rest:
            self._y += 0.5 * _PER_MM
            self.pages[-1].parts.append(_rule_part(from_left, self._width, self._y))
        return rest

    def _columns(self, row: Row, left: float, right: float) -> list[_Lines]:
        columns: list[_Lines] = []
        x = left
        for cell in row.cells:
            width = cell.width_mm * _PER_MM if cell.width_mm else right - x
            font = page_font(cell.points, bold=cell.bold)
            lines = wrapped(cell.text, font, width - _COLUMN_GAP_MM * _PER_MM, self._writer)
            columns.append(_Lines(cell, x, lines))
            x += width
        return columns

    def _height(self, columns: list[_Lines]) -> float:
        return max(
            len(column.lines)
            * QFontMetricsF(
                page_font(column.cell.points, bold=column.cell.bold), self._writer
            ).lineSpacing()
            for column in columns
        )

    def _turn_over(self) -> None:
        self.pages.append(_Page())
        self._y = 0.0


def wrapped(text: str, font: QFont, width: float, writer: QPdfWriter) -> tuple[str, ...]:
    """Text broken into lines no wider than given (dots): at words, or within one too long."""
    layout = QTextLayout(text, font, writer)
    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    layout.setTextOption(option)
    units = text.encode("utf-16-le")  # Qt counts in these, not in letters
    lines: list[str] = []
    layout.beginLayout()
    while (line := layout.createLine()).isValid():
        line.setLineWidth(width)
        start, length = line.textStart(), line.textLength()
        part = units[2 * start : 2 * (start + length)]
        lines.append(part.decode("utf-16-le", errors="replace").rstrip())
    layout.endLayout()
    return tuple(lines) or ("",)


def page_font(points: float, *, bold: bool = False) -> QFont:
    """The card's type in a size, its letters set one by one."""
    font = QFont(QGuiApplication.font())
    font.setPointSizeF(points)
    font.setBold(bold)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    font.setLetterSpacing(QFont.SpacingType.AbsoluteSpacing, UNJOINED)
    return font


def _text_part(
    lines: tuple[str, ...],
    font: QFont,
    color: QColor,
    left: float,
    top: float,
    metrics: QFontMetricsF,
) -> Callable[[QPainter], None]:
    def paint(painter: QPainter) -> None:
        painter.setFont(font)
        painter.setPen(color)
        for place, line in enumerate(lines):
            baseline = top + metrics.ascent() + place * metrics.lineSpacing()
            painter.drawText(QPointF(left, baseline), line)

    return paint


def _rule_part(left: float, right: float, y: float) -> Callable[[QPainter], None]:
    def paint(painter: QPainter) -> None:
        painter.setPen(QPen(QColor(LIGHT.line), 0.15 * _PER_MM))
        painter.drawLine(QPointF(left, y), QPointF(right, y))

    return paint
