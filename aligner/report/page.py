"""Rows of wrapped text laid out on pages, a PDF document's or a printer's, and painted.

The trap: a name longer than its column must wrap, and a row taller than what is left of the
page must go on overleaf: nothing is ever clipped. Text is drawn as it stands, never as markup.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPagedPaintDevice, QPainter

from aligner.language import say

if TYPE_CHECKING:
    from aligner.report.page_layout import Layout

#: Dots an inch that a document is laid out in; fine enough for even spacing of letters.
RESOLUTION = 1200
_LONGEST_CHAIN = 4


@dataclass(frozen=True)
class Cell:
    """Text in one column.

    Attributes:
        text: of any length.
        width_mm: of the column; what is left of the page where 0.
        points: size of the type.
        bold: whether it is set bold.
        is_attention: whether it is set in the colour of what needs attention; its words say so
            as well.
        is_quiet: whether it is set lighter than the rest.
    """

    text: str
    width_mm: float = 0.0
    points: float = 8.5
    bold: bool = False
    is_attention: bool = False
    is_quiet: bool = False


@dataclass(frozen=True)
class Row:
    """Cells side by side.

    Attributes:
        cells: from left to right.
        above_mm: empty room above it.
        has_rule: whether a fine line is drawn beneath.
        keeps_with_next: whether it must not stand alone at a page's foot.
        heads_table: whether it is set again at the top of each page that its table goes on to.
    """

    cells: tuple[Cell, ...]
    above_mm: float = 0.6
    has_rule: bool = False
    keeps_with_next: bool = False
    heads_table: bool = False


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


Block = Row | Picture


def paint_pages(device: QPagedPaintDevice, blocks: tuple[Block, ...], foot: str) -> int:
    """Lay out and paint all blocks; every page carries its number. Gives the number of pages.

    Raises:
        OSError: the document could not be begun.
    """
    layout = _laid_out(device, blocks)
    painter = QPainter()
    if not painter.begin(device):
        raise OSError(say("the document could not be begun"))
    try:
        total = len(layout.pages)
        for number, page in enumerate(layout.pages, start=1):
            if number > 1:
                device.newPage()
            for part in page:
                part(painter)
            words = say("page {number} of {total}", number=number, total=total)
            layout.paint_foot(painter, foot, words)
    finally:
        painter.end()
    return total


def page_count(device: QPagedPaintDevice, blocks: tuple[Block, ...]) -> int:
    """How many pages the blocks take on a device; nothing is painted."""
    return len(_laid_out(device, blocks).pages)


def _laid_out(device: QPagedPaintDevice, blocks: tuple[Block, ...]) -> Layout:
    from aligner.report.page_layout import Layout

    layout = Layout(device)
    for place, block in enumerate(blocks):
        layout.add(block, blocks[place + 1 : place + 1 + _LONGEST_CHAIN])
    return layout
