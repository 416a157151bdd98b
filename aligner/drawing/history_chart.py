"""A small chart of one value over the years: what it was at each job, and its limit.

The trap: points drawn at equal steps make a slow change look quick. Each stands at its date.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from aligner.drawing.strokes import NARROW, narrow_line, words
from aligner.drawing.theme import Theme, TypeSize

_LINE_PX = 20  # height of a line of small type


@dataclass(frozen=True)
class HistoryPoint:
    """One value and its day."""

    on: date
    value: float


@dataclass(frozen=True)
class HistoryLimit:
    """A limit to draw across the chart.

    Attributes:
        value: in the unit of the points.
        is_most: whether values above it are out; below it where this is false.
    """

    value: float
    is_most: bool = True

    def is_out(self, value: float) -> bool:
        """Whether a value lies on the wrong side."""
        return value > self.value if self.is_most else value < self.value


def paint_history(
    painter: QPainter,
    theme: Theme,
    box: QRectF,
    points: Sequence[HistoryPoint],
    limit: HistoryLimit | None,
    in_words: Callable[[float], str],
) -> None:
    """Paint values by their date, joined, with the first and the last day and the last value.

    A value within is a disc, one beyond the limit a square, so that the colour says nothing
    alone; the limit is a dashed line with its words.

    Args:
        painter: on anything.
        theme: colours and sizes.
        box: where.
        points: in any order; nothing is drawn where there is none.
        limit: `None` where there is none.
        in_words: a value as a person reads it ("0.12 mm").
    """
    in_order = sorted(points, key=lambda point: point.on)
    if not in_order:
        return
    line = theme.px(_LINE_PX)
    beside = max(theme.px(70), _widest(painter, theme, in_order, limit, in_words))
    field = box.adjusted(8, line * 0.6, -beside - 8, -line - 4)
    places = _places(field, in_order, limit)
    narrow_line(painter, theme, field.bottomLeft(), field.bottomRight())
    last_y = places[-1].y()
    if limit is not None:
        y = _height(field, _span(in_order, limit), limit.value)
        painter.setPen(QPen(theme.color("ink"), NARROW, Qt.PenStyle.DashLine))
        painter.drawLine(QPointF(field.left(), y), QPointF(field.right() + 4, y))
        last_y, limit_y = _apart(last_y, y, line, box)
        _say_beside(painter, theme, field, limit_y, beside, in_words(limit.value), "quiet")
    painter.setPen(QPen(theme.color("quiet"), NARROW))
    painter.drawPolyline(QPolygonF(places))
    for point, place in zip(in_order, places, strict=True):
        _mark(painter, theme, place, is_out=limit is not None and limit.is_out(point.value))
    is_out = limit is not None and limit.is_out(in_order[-1].value)
    last = in_words(in_order[-1].value)
    role = "attention" if is_out else "ink"
    _say_beside(painter, theme, field, last_y, beside, last, role, bold=True)
    _say_days(
        painter,
        theme,
        QRectF(field.left() - 8, field.bottom() + 4, box.width(), line),
        field,
        in_order,
    )


def _widest(
    painter: QPainter,
    theme: Theme,
    points: Sequence[HistoryPoint],
    limit: HistoryLimit | None,
    in_words: Callable[[float], str],
) -> int:
    painter.setFont(theme.font(TypeSize.SMALL, bold=True))
    texts = [in_words(points[-1].value)] + ([in_words(limit.value)] if limit else [])
    return max(painter.fontMetrics().horizontalAdvance(text) for text in texts) + 8


def _span(points: Sequence[HistoryPoint], limit: HistoryLimit | None) -> tuple[float, float]:
    values = [point.value for point in points] + ([limit.value] if limit else [])
    low, high = min(values), max(values)
    room = 0.12 * (high - low) or 0.05 * abs(high) or 1.0
    return low - room, high + room


def _height(field: QRectF, span: tuple[float, float], value: float) -> float:
    return field.bottom() - (value - span[0]) / (span[1] - span[0]) * field.height()


def _places(
    field: QRectF, points: Sequence[HistoryPoint], limit: HistoryLimit | None
) -> list[QPointF]:
    first, days = points[0].on, (points[-1].on - points[0].on).days
    span = _span(points, limit)
    return [
        QPointF(
            field.left() + ((point.on - first).days / days if days else 1.0) * field.width(),
            _height(field, span, point.value),
        )
        for point in points
    ]


def _apart(y: float, other_y: float, line: float, box: QRectF) -> tuple[float, float]:
    """Where the words of the last value and of the limit stand clear of each other."""
    short_by = line - abs(y - other_y)
    if short_by <= 0:
        return y, other_y
    way = -1 if y < other_y else 1
    y += way * short_by
    over = max(box.top() + line / 2 - min(y, other_y), 0.0)
    return y + over, other_y + over


def _mark(painter: QPainter, theme: Theme, place: QPointF, *, is_out: bool) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme.color("attention" if is_out else "accent"))
    half = theme.px(8) / 2
    if is_out:
        painter.drawRect(QRectF(place.x() - half, place.y() - half, 2 * half, 2 * half))
    else:
        painter.drawEllipse(place, half, half)


def _say_beside(
    painter: QPainter,
    theme: Theme,
    field: QRectF,
    y: float,
    width: float,
    text: str,
    role: str,
    *,
    bold: bool = False,
) -> None:
    line = theme.px(_LINE_PX)
    box = QRectF(field.right() + 8, y - line / 2, width + 8, line)
    words(painter, theme, box, text, role=role, bold=bold)


def _say_days(
    painter: QPainter, theme: Theme, line: QRectF, field: QRectF, points: Sequence[HistoryPoint]
) -> None:
    words(painter, theme, line, f"{points[0].on}", role="quiet")
    if points[-1].on != points[0].on and field.width() > theme.px(170):
        to_field = QRectF(line.left(), line.top(), field.right() - line.left() + 8, line.height())
        right = Qt.AlignmentFlag.AlignRight
        words(painter, theme, to_field, f"{points[-1].on}", role="quiet", align=right)
