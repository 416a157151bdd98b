"""Both legs' air-spring force over the travel, as two lines with their difference at the end.

The trap: two lines that differ by colour alone are one line to many eyes. The left is drawn full,
the right dashed, and each is named at its end.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import floor, log10

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from aligner.drawing.strokes import NARROW, dimension_line, narrow_line, words
from aligner.drawing.theme import Theme
from aligner.language import say, written

_TICKS = 5


@dataclass(frozen=True)
class ForcePoint:
    """The forces at one stroke.

    Attributes:
        stroke_mm: from full extension.
        left_n: the left leg's.
        right_n: the right leg's.
    """

    stroke_mm: float
    left_n: float
    right_n: float


def round_step(span: float, parts: int = _TICKS) -> float:
    """A step of 1, 2 or 5 times a power of ten that divides a span into at most so many parts."""
    if span <= 0:
        return 1.0
    raw = span / parts
    power = 10.0 ** floor(log10(raw))
    return next((step * power for step in (1.0, 2.0, 5.0) if step * power >= raw), 10.0 * power)


def paint_force_plot(
    painter: QPainter, theme: Theme, room: QRectF, points: Sequence[ForcePoint]
) -> None:
    """Paint axes, both lines and their names; nothing where there are no points."""
    if len(points) < 2:
        return
    plot = room.adjusted(theme.px(52), theme.px(8), -theme.px(78), -theme.px(38))
    most_mm = points[-1].stroke_mm
    forces = [force for point in points for force in (point.left_n, point.right_n)]
    step_n = round_step(max(*forces, 1.0) - min(*forces, 0.0))
    low_n = floor(min(*forces, 0.0) / step_n) * step_n
    high_n = max(*forces, 1.0) * 1.04

    def at(stroke_mm: float, force_n: float) -> QPointF:
        x = plot.left() + stroke_mm / most_mm * plot.width()
        return QPointF(x, plot.bottom() - (force_n - low_n) / (high_n - low_n) * plot.height())

    _paint_axes(painter, theme, plot, most_mm, (low_n, high_n, step_n))
    for is_left in (True, False):
        pen = QPen(theme.color("accent" if is_left else "ink"), 2.4)
        if not is_left:
            pen.setDashPattern([5, 3])
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        line = [at(each.stroke_mm, each.left_n if is_left else each.right_n) for each in points]
        painter.drawPolyline(QPolygonF(line))
    _paint_names(
        painter,
        theme,
        plot,
        at(most_mm, points[-1].left_n).y(),
        at(most_mm, points[-1].right_n).y(),
    )


def _paint_axes(
    painter: QPainter,
    theme: Theme,
    plot: QRectF,
    most_mm: float,
    scale: tuple[float, float, float],
) -> None:
    low_n, high_n, step_n = scale
    right = Qt.AlignmentFlag.AlignRight
    middle = Qt.AlignmentFlag.AlignHCenter
    force = low_n
    while force <= high_n:
        y = plot.bottom() - (force - low_n) / (high_n - low_n) * plot.height()
        narrow_line(painter, theme, QPointF(plot.left(), y), QPointF(plot.right(), y), "line")
        box = QRectF(plot.left() - theme.px(54), y - theme.px(9), theme.px(48), theme.px(18))
        words(painter, theme, box, written(force), role="quiet", align=right)
        force += step_n
    step_mm = round_step(most_mm)
    stroke = 0.0
    while stroke <= most_mm * 1.0001:
        x = plot.left() + stroke / most_mm * plot.width()
        narrow_line(painter, theme, QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + 4))
        box = QRectF(x - theme.px(30), plot.bottom() + 3, theme.px(60), theme.px(17))
        words(painter, theme, box, written(stroke), role="quiet", align=middle)
        stroke += step_mm
    painter.setPen(QPen(theme.color("ink"), NARROW))
    painter.drawLine(plot.bottomLeft(), plot.bottomRight())
    painter.drawLine(plot.bottomLeft(), plot.topLeft())
    under = QRectF(plot.left(), plot.bottom() + theme.px(19), plot.width(), theme.px(18))
    words(
        painter,
        theme,
        under,
        say("stroke in mm from full extension, force in N"),
        role="quiet",
        align=middle,
    )


def _paint_names(
    painter: QPainter, theme: Theme, plot: QRectF, left_y: float, right_y: float
) -> None:
    """The legs' names at the ends of their lines, kept apart where the lines meet."""
    apart = theme.px(18)
    upper, lower = sorted((left_y, right_y))
    short = max(apart - (lower - upper), 0.0) / 2
    upper, lower = upper - short, lower + short
    is_left_upper = left_y <= right_y
    for name, role, y in (
        (say("left"), "accent", upper if is_left_upper else lower),
        (say("right"), "ink", lower if is_left_upper else upper),
    ):
        box = QRectF(plot.right() + theme.px(18), y - apart / 2, theme.px(60), apart)
        words(painter, theme, box, name, role=role, bold=True)
    if abs(left_y - right_y) >= 3:
        x = plot.right() + theme.px(9)
        dimension_line(painter, theme, QPointF(x, left_y), QPointF(x, right_y))
