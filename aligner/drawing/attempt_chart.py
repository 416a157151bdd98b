"""A small chart of attempts: each with its whisker, closing on nought within what is allowed.

The trap: an attempt that was not measured is not one that came to nought. It keeps its place
and shows a dash.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from aligner.drawing.strokes import NARROW, narrow_line, words
from aligner.drawing.theme import Theme


@dataclass(frozen=True)
class ChartPoint:
    """One attempt.

    Attributes:
        name: what stands under it ("1", "now").
        value: the deviation; `None` where it was not measured.
        spread: half the whisker, the expanded uncertainty; `None` where it is not known.
        verdict: "within", "out", "unsettled" or "missing"; gives the mark its shape.
    """

    name: str
    value: float | None
    spread: float | None
    verdict: str


@dataclass(frozen=True)
class ChartPicture:
    """What a chart shows, all in one unit.

    Attributes:
        points: the attempts, oldest first.
        tolerance: allowed either way; `None` where it is not known.
        upward: what a value above the middle means ("left high").
        downward: what one below it means.
        scale_words: the value that either edge of the scale stands for, in words.
    """

    points: tuple[ChartPoint, ...]
    tolerance: float | None
    upward: str
    downward: str
    scale_words: str = ""


@dataclass(frozen=True)
class ChartPlaces:
    """Where things stand in the chart, in pixels.

    Attributes:
        plot: the area between the scale's ends.
        nought: y of the middle.
        per_unit: pixels for one unit of the value.
        x: of each attempt.
    """

    plot: QRectF
    nought: float
    per_unit: float
    x: tuple[float, ...]

    def y(self, value: float) -> float:
        """Where a value stands; kept within the plot."""
        y = self.nought - value * self.per_unit
        return min(max(y, self.plot.top()), self.plot.bottom())


def chart_reach(points: tuple[ChartPoint, ...], tolerance: float | None) -> float:
    """The value at the scale's upper edge: room for every whisker and for the band."""
    farthest = max(
        (abs(point.value) + (point.spread or 0.0) for point in points if point.value is not None),
        default=0.0,
    )
    return max(1.12 * farthest, 2.0 * (tolerance or 0.0), 1e-6)


def chart_places(box: QRectF, picture: ChartPicture, text_scale: float = 1.0) -> ChartPlaces:
    """Lay a chart out in the room there is: names below, the scale within."""
    plot = box.adjusted(2, 4 * text_scale, -2, -22 * text_scale)
    reach = chart_reach(picture.points, picture.tolerance)
    count = max(len(picture.points), 1)
    gutter = 86.0 * text_scale  # where it is written what up and down mean
    step = min((plot.width() - gutter - 6.0 * text_scale) / count, 84.0 * text_scale)
    first = plot.left() + gutter + step / 2
    return ChartPlaces(
        plot=plot,
        nought=plot.center().y(),
        per_unit=plot.height() / 2 / reach,
        x=tuple(first + step * place for place in range(count)),
    )


def paint_attempts(painter: QPainter, theme: Theme, box: QRectF, picture: ChartPicture) -> None:
    """Paint the band, the middle, the attempts and what up and down mean."""
    places = chart_places(box, picture, theme.text_scale)
    plot = places.plot
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme.color("side"))
    painter.drawRoundedRect(plot, 3, 3)
    if picture.tolerance is not None:
        top, bottom = places.y(picture.tolerance), places.y(-picture.tolerance)
        painter.setBrush(theme.color("accent_soft"))
        painter.drawRect(QRectF(plot.left(), top, plot.width(), bottom - top))
        for y in (top, bottom):
            narrow_line(painter, theme, QPointF(plot.left(), y), QPointF(plot.right(), y), "accent")
    middle = places.nought
    narrow_line(painter, theme, QPointF(plot.left(), middle), QPointF(plot.right(), middle), "ink")
    _paint_scale(painter, theme, places, picture)
    _paint_way(painter, theme, places, picture)
    for x, point in zip(places.x, picture.points, strict=False):
        _paint_point(painter, theme, places, x, point)
    high = theme.px(20)
    step = places.x[1] - places.x[0] if len(places.x) > 1 else 0.0
    wide = max(step, theme.px(34))
    for x, point in zip(places.x, picture.points, strict=False):
        if len(places.x) > 1 and point is picture.points[-2] and step < theme.px(24):
            continue  # the last one's name is longer, and needs the room
        below = QRectF(x - wide / 2, plot.bottom() + 2, wide, high)
        words(
            painter,
            theme,
            below,
            point.name,
            role="ink",
            bold=point is picture.points[-1],
            align=Qt.AlignmentFlag.AlignHCenter,
        )


def _paint_scale(
    painter: QPainter, theme: Theme, places: ChartPlaces, picture: ChartPicture
) -> None:
    plot = places.plot
    has_room = plot.height() >= theme.px(110)
    high = theme.px(34 if has_room else 18)
    for top, way in (
        (plot.top() + 2, picture.upward),
        (plot.bottom() - high - 2, picture.downward),
    ):
        beside = QRectF(plot.left() + 5, top, theme.px(84), high)
        said = f"{way}\n{picture.scale_words}" if has_room else way
        words(painter, theme, beside, said, role="quiet")


def _paint_way(painter: QPainter, theme: Theme, places: ChartPlaces, picture: ChartPicture) -> None:
    """A narrow line from each attempt that was measured to the next."""
    reached = [
        QPointF(x, places.y(point.value))
        for x, point in zip(places.x, picture.points, strict=False)
        if point.value is not None
    ]
    painter.setPen(QPen(theme.color("quiet"), NARROW))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolyline(QPolygonF(reached))


def _paint_point(
    painter: QPainter, theme: Theme, places: ChartPlaces, x: float, point: ChartPoint
) -> None:
    half = theme.px(5)
    color = theme.color("attention" if point.verdict == "out" else "accent")
    if point.value is None:
        painter.setPen(QPen(theme.color("quiet"), 2))
        painter.drawLine(QPointF(x - half, places.nought), QPointF(x + half, places.nought))
        return
    y = places.y(point.value)
    if point.spread is not None:
        ends = (places.y(point.value + point.spread), places.y(point.value - point.spread))
        painter.setPen(QPen(color, 2))
        painter.drawLine(QPointF(x, ends[0]), QPointF(x, ends[1]))
        for end in ends:
            painter.drawLine(QPointF(x - half, end), QPointF(x + half, end))
    _paint_mark(painter, theme, color, QPointF(x, y), point.verdict)


def _paint_mark(painter: QPainter, theme: Theme, color: QColor, at: QPointF, verdict: str) -> None:
    """A disc is within, a square out, a ring unsettled, a cross without a limit to hold it to."""
    half = theme.px(5)
    painter.setPen(QPen(color, 2))
    painter.setBrush(color)
    if verdict == "out":
        painter.drawRect(QRectF(at.x() - half, at.y() - half, 2 * half, 2 * half))
    elif verdict == "within":
        painter.drawEllipse(at, half, half)
    elif verdict == "unsettled":
        painter.setBrush(theme.color("card"))
        painter.drawEllipse(at, half, half)
    else:
        painter.drawLine(at + QPointF(-half, -half), at + QPointF(half, half))
        painter.drawLine(at + QPointF(-half, half), at + QPointF(half, -half))
