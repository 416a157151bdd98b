"""Type on the pages of the job card: its fonts, its lines, and how they are painted.

The trap: Qt joins "fi" into one sign that no search finds, and breaks no word longer than its
column. Letters are set one by one here, and a line is broken wherever it must be.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QPointF
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QGuiApplication,
    QPagedPaintDevice,
    QPainter,
    QPen,
    QTextLayout,
    QTextOption,
)

from aligner.drawing.theme import LIGHT

#: Spacing of letters, in dots; any keeps Qt from joining "fi" into a sign no search finds.
UNJOINED = 0.05

Part = Callable[[QPainter], None]


def wrapped(text: str, font: QFont, width: float, device: QPagedPaintDevice) -> tuple[str, ...]:
    """Text broken into lines no wider than given (dots): at words, or within one too long."""
    layout = QTextLayout(text, font, device)
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


def picture_font() -> QFont:
    """The type inside the card's pictures, which are drawn in pixels of 96 an inch."""
    font = page_font(9.0)
    font.setPixelSize(9)
    return font


def text_part(
    lines: tuple[str, ...],
    font: QFont,
    color: QColor,
    left: float,
    top: float,
    metrics: QFontMetricsF,
) -> Part:
    """Paints lines one under the other from a place in dots."""

    def paint(painter: QPainter) -> None:
        painter.setFont(font)
        painter.setPen(color)
        for place, line in enumerate(lines):
            baseline = top + metrics.ascent() + place * metrics.lineSpacing()
            painter.drawText(QPointF(left, baseline), line)

    return paint


def rule_part(left: float, right: float, y: float, thick: float) -> Part:
    """Paints a fine line across; all in dots."""

    def paint(painter: QPainter) -> None:
        painter.setPen(QPen(QColor(LIGHT.line), thick))
        painter.drawLine(QPointF(left, y), QPointF(right, y))

    return paint
