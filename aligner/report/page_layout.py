"""Blocks put on pages from the top down.

The trap: a heading alone at a page's foot, and a table whose columns nobody can name overleaf.
So a heading goes with what follows it, and the head of a table is set again on every page.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QFontMetricsF, QPagedPaintDevice, QPainter

from aligner.drawing.theme import LIGHT
from aligner.report.page import Block, Cell, Picture, Row
from aligner.report.page_text import Part, page_font, rule_part, text_part, wrapped

_FOOT_MM = 8.0
_COLUMN_GAP_MM = 2.0
_RULE_MM = 0.15
_UNDER_MM = 0.5  # room between text and the rule beneath it


@dataclass(frozen=True)
class _Lines:
    cell: Cell
    left: float
    lines: tuple[str, ...]


class Layout:
    """The pages as they fill; all measures inside are in the device's dots.

    Attributes:
        pages: what paints each page, part by part.
    """

    def __init__(self, device: QPagedPaintDevice) -> None:
        self._device = device
        self._per_mm = device.logicalDpiX() / 25.4
        self._width = float(device.width())
        self._bottom = device.height() - _FOOT_MM * self._per_mm
        self._y = 0.0
        self._head: Row | None = None
        self.pages: list[list[Part]] = [[]]

    def add(self, block: Block, following: tuple[Block, ...]) -> None:
        """Put a block where the last one ended, or overleaf."""
        if isinstance(block, Picture):
            self._head = None
            self._add_picture(block)
            return
        columns = self._columns(block, 0.0, self._width)
        needed = self._least_height(block)
        before: Block = block
        for each in following:
            if not (isinstance(before, Row) and before.keeps_with_next):
                break
            needed += self._least_height(each)
            before = each
        if block.heads_table:
            self._head = None  # not twice on the page it begins on
        elif block.keeps_with_next:
            self._head = None
        if self._y + needed > self._bottom and needed <= self._bottom and self._y > 0:
            self._turn_over()
        if self._y > 0:
            self._y += block.above_mm * self._per_mm
        while columns := self._place_some(columns, block):
            self._turn_over()
        if block.heads_table:
            self._head = block

    def paint_foot(self, painter: QPainter, foot: str, number: str) -> None:
        """Paint the line at the foot of a page."""
        font = page_font(7.5)
        metrics = QFontMetricsF(font, self._device)
        baseline = self._device.height() - metrics.descent()
        painter.setFont(font)
        painter.setPen(QColor(LIGHT.quiet))
        number_width = metrics.horizontalAdvance(number)
        room = self._width - number_width - 4 * self._per_mm
        line = wrapped(foot, font, room, self._device)[0]
        painter.drawText(QPointF(0, baseline), line)
        painter.drawText(QPointF(self._width - number_width, baseline), number)

    def _least_height(self, block: Block) -> float:
        if isinstance(block, Picture):
            return block.height_mm * self._per_mm
        rule_mm = _UNDER_MM if block.has_rule else 0.0
        text = self._height(self._columns(block, 0.0, self._width))
        return text + (block.above_mm + rule_mm) * self._per_mm

    def _add_picture(self, picture: Picture) -> None:
        left = (picture.width_mm + 6) * self._per_mm
        rows = [(row, self._columns(row, left, self._width)) for row in picture.beside]
        text_height = sum(
            self._height(columns) + row.above_mm * self._per_mm for row, columns in rows
        )
        height = max(picture.height_mm * self._per_mm, text_height)
        if self._y + height > self._bottom and self._y > 0:
            self._turn_over()
        top = self._y + 2 * self._per_mm
        per_pixel = self._device.logicalDpiX() / 96
        size = (picture.width_mm * 96 / 25.4, picture.height_mm * 96 / 25.4)

        def paint(painter: QPainter) -> None:
            painter.save()
            painter.translate(0, top)
            painter.scale(per_pixel, per_pixel)
            picture.paint(painter, QRectF(0, 0, *size))
            painter.restore()

        self.pages[-1].append(paint)
        self._y = top
        for row, columns in rows:
            self._y += row.above_mm * self._per_mm
            while columns := self._place_some(columns, row, from_left=left):
                self._turn_over()
                top = self._y - height  # what is under the picture begins overleaf too
        self._y = max(self._y, top + height)

    def _place_some(self, columns: list[_Lines], row: Row, from_left: float = 0.0) -> list[_Lines]:
        """Place as many lines as the page takes; what is left over comes back."""
        rest: list[_Lines] = []
        lowest = top = self._y
        is_at_top = top == 0
        for column in columns:
            font = page_font(column.cell.points, bold=column.cell.bold)
            metrics = QFontMetricsF(font, self._device)
            fitting = max(int((self._bottom - top) / metrics.lineSpacing()), 1 if is_at_top else 0)
            now, later = column.lines[:fitting], column.lines[fitting:]
            color = _color(column.cell)
            self.pages[-1].append(text_part(now, font, color, column.left, top, metrics))
            lowest = max(lowest, top + len(now) * metrics.lineSpacing())
            if later:
                rest.append(_Lines(column.cell, column.left, later))
        self._y = lowest
        if row.has_rule and not rest:
            self._y += _UNDER_MM * self._per_mm
            thick = _RULE_MM * self._per_mm
            self.pages[-1].append(rule_part(from_left, self._width, self._y, thick))
        return rest

    def _columns(self, row: Row, left: float, right: float) -> list[_Lines]:
        columns: list[_Lines] = []
        x = left
        for cell in row.cells:
            width = cell.width_mm * self._per_mm if cell.width_mm else right - x
            font = page_font(cell.points, bold=cell.bold)
            room = width - _COLUMN_GAP_MM * self._per_mm
            columns.append(_Lines(cell, x, wrapped(cell.text, font, room, self._device)))
            x += width
        return columns

    def _height(self, columns: list[_Lines]) -> float:
        return max(
            len(column.lines)
            * QFontMetricsF(
                page_font(column.cell.points, bold=column.cell.bold), self._device
            ).lineSpacing()
            for column in columns
        )

    def _turn_over(self) -> None:
        self.pages.append([])
        self._y = 0.0
        head, self._head = self._head, None
        if head is not None:
            self._place_some(self._columns(head, 0.0, self._width), head)
            self._head = head


def _color(cell: Cell) -> QColor:
    if cell.is_attention:
        return QColor(LIGHT.attention)
    return QColor(LIGHT.quiet if cell.is_quiet else LIGHT.ink)
