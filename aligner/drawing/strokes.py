"""Lines, arrows and dimension marks in the manner of ISO 128 and ISO 129-1."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen, QPolygonF

from aligner.drawing.theme import Theme, TypeSize

#: Widths of lines in pixels at 100 % text: outlines are wide, all else is narrow (ISO 128-2).
WIDE = 1.5
NARROW = 0.9

#: Length of a dimension line's arrowhead, pixels.
_HEAD = 8.0

#: How much smaller than its own size a text is set at least, to go into its box.
_LEAST_SHARE = 0.7


def outline(painter: QPainter, theme: Theme, fill: str, width: float = WIDE) -> None:
    """Set pen and brush for a visible edge round an area filled with a palette role."""
    painter.setPen(QPen(theme.color("ink"), width))
    painter.setBrush(theme.color(fill))


def center_line(painter: QPainter, theme: Theme, start: QPointF, end: QPointF) -> None:
    """A narrow long-dashed dotted line: an axis."""
    pen = QPen(theme.color("quiet"), NARROW)
    pen.setDashPattern([10, 3, 1.5, 3])
    painter.setPen(pen)
    painter.drawLine(start, end)


def narrow_line(
    painter: QPainter, theme: Theme, start: QPointF, end: QPointF, role: str = "quiet"
) -> None:
    """A narrow continuous line: extension and leader lines."""
    painter.setPen(QPen(theme.color(role), NARROW))
    painter.drawLine(start, end)


def dimension_line(painter: QPainter, theme: Theme, start: QPointF, end: QPointF) -> None:
    """A narrow line with a filled arrowhead at each end; heads go outside where it is short."""
    painter.setPen(QPen(theme.color("ink"), NARROW))
    length = math.hypot(end.x() - start.x(), end.y() - start.y())
    if length < 1e-6:
        return
    along = QPointF((end.x() - start.x()) / length, (end.y() - start.y()) / length)
    if length >= 3 * _HEAD:
        painter.drawLine(start, end)
        arrowhead(painter, theme, start, -along)
        arrowhead(painter, theme, end, along)
    else:
        painter.drawLine(start - along * 2 * _HEAD, end + along * 2 * _HEAD)
        arrowhead(painter, theme, start, along)
        arrowhead(painter, theme, end, -along)


def arrowhead(painter: QPainter, theme: Theme, tip: QPointF, along: QPointF) -> None:
    """A filled head at the end of a dimension line, the way that `along` points."""
    across = QPointF(-along.y(), along.x()) * (_HEAD * 0.18)
    back = tip - along * _HEAD
    painter.setBrush(theme.color("ink"))
    painter.drawPolygon(QPolygonF([tip, back + across, back - across]))


def arrow(painter: QPainter, color: QColor, start: QPointF, end: QPointF, width: float) -> None:
    """A broad open arrow: something that is to be moved."""
    length = math.hypot(end.x() - start.x(), end.y() - start.y())
    if length < 1e-6:
        return
    along = QPointF((end.x() - start.x()) / length, (end.y() - start.y()) / length)
    across = QPointF(-along.y(), along.x())
    head = max(3.2 * width, 8.0)
    path = QPainterPath(start)
    path.lineTo(end)
    path.moveTo(end - along * head + across * head * 0.75)
    path.lineTo(end)
    path.lineTo(end - along * head - across * head * 0.75)
    painter.setPen(_round_pen(color, width))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(path)


def turn_arrow(
    painter: QPainter, color: QColor, box: QRectF, *, to_the_left: bool, width: float
) -> None:
    """A flat arc over the middle of a plan view with its head to the left or to the right."""
    start_x, end_x = (box.right(), box.left()) if to_the_left else (box.left(), box.right())
    path = QPainterPath(QPointF(start_x, box.bottom()))
    path.quadTo(QPointF(box.center().x(), box.top() - box.height()), QPointF(end_x, box.bottom()))
    inward = 1 if to_the_left else -1
    head = max(4.0 * width, 10.0)
    path.moveTo(end_x + inward * head * 0.55, box.bottom() - head)
    path.lineTo(end_x, box.bottom())
    path.lineTo(end_x + inward * head * 1.05, box.bottom() + head * 0.1)
    painter.setPen(_round_pen(color, width))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(path)


def words(
    painter: QPainter,
    theme: Theme,
    box: QRectF,
    text: str,
    *,
    role: str = "ink",
    size: TypeSize = TypeSize.SMALL,
    bold: bool = False,
    align: Qt.AlignmentFlag = Qt.AlignmentFlag.AlignLeft,
) -> None:
    """Text in a box, upright between its edges, wrapped where the box is narrow.

    What would be cut off even so, as longer words of another language may be, is set smaller.
    """
    flags = int(align | Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap)
    font = theme.font(size, bold=bold)
    points, least = font.pointSizeF(), font.pointSizeF() * _LEAST_SHARE
    while _is_cut_off(font, box, flags, text) and points > least:
        points -= 0.5
        font.setPointSizeF(points)
    painter.setFont(font)
    painter.setPen(theme.color(role))
    painter.drawText(box, flags, text)


def bubble(
    painter: QPainter, theme: Theme, middle: QPointF, text: str, *, is_lit: bool, is_done: bool
) -> None:
    """A numbered disc at a bolt: filled where it is the one in hand, ringed twice once done."""
    radius = theme.px(13)
    disc = QRectF(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius)
    painter.setBrush(theme.color("accent" if is_lit else "card"))
    painter.setPen(QPen(theme.color("accent" if is_lit or is_done else "quiet"), 2))
    painter.drawEllipse(disc)
    if is_done and not is_lit:
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(disc.adjusted(3.5, 3.5, -3.5, -3.5))
    painter.setFont(theme.font(TypeSize.SMALL, bold=True))
    painter.setPen(theme.color("on_accent" if is_lit else "ink"))
    painter.drawText(disc, int(Qt.AlignmentFlag.AlignCenter), text)


def _is_cut_off(font: QFont, box: QRectF, flags: int, text: str) -> bool:
    """Whether a text does not go into a box: a word too wide, or a line too many."""
    metrics = QFontMetricsF(font)
    needed = metrics.boundingRect(box, flags, text)
    lines = text.count("\n") + 1
    is_wrapped = needed.height() > (lines + 0.5) * metrics.lineSpacing()
    return needed.width() > box.width() or (is_wrapped and needed.height() > box.height() + 1)


def _round_pen(color: QColor, width: float) -> QPen:
    pen = QPen(color, width)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    return pen
