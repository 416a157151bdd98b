"""A section through both legs as the air gap is read: spring out, leg fully compressed.

The trap: the gap is drawn from the tube's top edge down. What it is off by is drawn larger, so that
it can be seen, and the factor is for the card to say.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen

from aligner.drawing.strokes import (
    NARROW,
    center_line,
    dimension_line,
    narrow_line,
    outline,
    words,
)
from aligner.drawing.theme import Theme

_DRAWN_GAP_MM = 150.0
"""Drawn where neither leg is read and the sheet gives none."""
_BELOW_SHARE = 0.62
"""How much of the leg shows below the wanted level, against the gap."""
_MOST_OFF = 0.3
"""The most an oil level is drawn away from the wanted one, against the gap."""


@dataclass(frozen=True)
class LegSection:
    """One leg laid out, in pixels.

    Attributes:
        tube: the fork tube's outside, from its top edge down to the break.
        bore: its inside.
        slider: the slider's outside, which the tube has gone into.
        oil_y: the oil's surface.
        is_read: whether that is from readings.
    """

    tube: QRectF
    bore: QRectF
    slider: QRectF
    oil_y: float
    is_read: bool


@dataclass(frozen=True)
class LegSections:
    """Both legs, and the level that is wanted.

    Attributes:
        left: the rider's left leg.
        right: the rider's right leg.
        wanted_y: where the oil should stand; `None` where it is not known.
        factor: by how much a deviation is drawn larger.
    """

    left: LegSection
    right: LegSection
    wanted_y: float | None
    factor: int


def level_factor(off_mm: tuple[float | None, float | None], gap_mm: float) -> int:
    """By how much deviations are drawn larger: seen, and still in the picture."""
    known = [abs(off) for off in off_mm if off is not None]
    most = max(known, default=0.0)
    if most <= 0:
        return 1
    for factor in (10, 5, 2):
        if most * factor <= _MOST_OFF * gap_mm:
            return factor
    return 1


def leg_sections(
    room: QRectF,
    wanted_mm: float | None,
    gaps_mm: tuple[float | None, float | None],
    *,
    is_upside_down: bool = False,
) -> LegSections:
    """Lay both sections out.

    Args:
        room: in pixels, for both legs.
        wanted_mm: the air gap wanted; `None` where it is not known.
        gaps_mm: left and right as read; `None` where not read.
        is_upside_down: the outer tube stands above.
    """
    read = [gap for gap in gaps_mm if gap is not None]
    base_mm = wanted_mm or (sum(read) / len(read) if read else _DRAWN_GAP_MM) or _DRAWN_GAP_MM
    offs = tuple(None if gap is None else gap - base_mm for gap in gaps_mm)
    factor = level_factor((offs[0], offs[1]), base_mm)
    per_mm = room.height() / (base_mm * (1 + _BELOW_SHARE))
    level = room.top() + base_mm * per_mm

    def leg(middle_x: float, off: float | None) -> LegSection:
        width = room.width() * 0.2
        wall = max(width * 0.11, 4.0)
        tube = QRectF(middle_x - width / 2, room.top(), width, room.height())
        bore = tube.adjusted(wall, 0, -wall, 0)
        slider = tube.adjusted(-wall * 1.6, base_mm * per_mm * 0.34, wall * 1.6, 0)
        if is_upside_down:
            slider = tube.adjusted(-wall, 0, wall, -room.height() * 0.18)
        most = _MOST_OFF * base_mm
        drawn = max(-most, min(most, (off or 0.0) * factor))
        return LegSection(tube, bore, slider, level + drawn * per_mm, off is not None)

    return LegSections(
        left=leg(room.left() + room.width() * 0.23, offs[0]),
        right=leg(room.right() - room.width() * 0.23, offs[1]),
        wanted_y=level if wanted_mm else None,
        factor=factor,
    )


def paint_leg_sections(painter: QPainter, theme: Theme, sections: LegSections) -> None:
    """Paint both: slider and tube cut through and hatched, the oil, the suction tube in it."""
    for leg in (sections.left, sections.right):
        _paint_leg(painter, theme, leg)
        if sections.wanted_y is not None:
            _paint_wanted(painter, theme, leg, sections.wanted_y)
            _paint_suction_tube(painter, theme, leg, sections.wanted_y)
        x = leg.tube.center().x()
        center_line(
            painter, theme, QPointF(x, leg.tube.top() - 10), QPointF(x, leg.tube.bottom() + 4)
        )


def paint_gap(painter: QPainter, theme: Theme, leg: LegSection, *, to_the_left: bool) -> None:
    """The air gap's dimension line, beside the tube on the side of its box."""
    if not leg.is_read:
        return
    edge = (
        min(leg.slider.left(), leg.tube.left())
        if to_the_left
        else max(leg.slider.right(), leg.tube.right())
    )
    x = edge + (-1 if to_the_left else 1) * theme.px(16)
    far = x + (-6 if to_the_left else 6)
    start = leg.tube.left() if to_the_left else leg.tube.right()
    wall = leg.bore.left() if to_the_left else leg.bore.right()
    narrow_line(painter, theme, QPointF(start, leg.tube.top()), QPointF(far, leg.tube.top()))
    narrow_line(painter, theme, QPointF(wall, leg.oil_y), QPointF(far, leg.oil_y))
    dimension_line(painter, theme, QPointF(x, leg.tube.top()), QPointF(x, leg.oil_y))


def paint_suction_dimension(
    painter: QPainter, theme: Theme, sections: LegSections, text: str
) -> None:
    """The suction tube's length between the legs, its words along the line (ISO 129-1)."""
    if sections.wanted_y is None:
        return
    left, right = sections.left, sections.right
    top = left.tube.top()
    x = (left.slider.right() + right.slider.left()) / 2 + theme.px(9)
    for y in (top, sections.wanted_y):
        start, end = QPointF(left.tube.right() + 2, y), QPointF(right.tube.left() - 2, y)
        narrow_line(painter, theme, start, end)
    dimension_line(painter, theme, QPointF(x, top), QPointF(x, sections.wanted_y))
    length = sections.wanted_y - top
    painter.save()
    painter.translate(x, sections.wanted_y)
    painter.rotate(-90)  # read from the right, the words above the line
    box = QRectF(0, -theme.px(22), length, theme.px(20))
    words(painter, theme, box, text, align=Qt.AlignmentFlag.AlignHCenter)
    painter.restore()


def _paint_leg(painter: QPainter, theme: Theme, leg: LegSection) -> None:
    oil = QRectF(leg.bore.left(), leg.oil_y, leg.bore.width(), leg.bore.bottom() - leg.oil_y)
    for outside, fill, inside, slant in (
        (leg.slider, "slider", leg.tube, -1),
        (leg.tube, "tube", leg.bore, 1),
    ):
        for wall in (
            QRectF(outside.topLeft(), QPointF(inside.left(), outside.bottom())),
            QRectF(QPointF(inside.right(), outside.top()), outside.bottomRight()),
        ):
            painter.fillRect(wall, theme.color(fill))
            _hatch(painter, theme, wall, slant)
            outline(painter, theme, fill, 1.2)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawLine(wall.topLeft(), wall.bottomLeft())
            painter.drawLine(wall.topRight(), wall.bottomRight())
            painter.drawLine(wall.topLeft(), wall.topRight())
    painter.fillRect(oil, theme.color("accent_soft"))
    painter.setPen(
        QPen(
            theme.color("accent"),
            2.2,
            Qt.PenStyle.SolidLine if leg.is_read else Qt.PenStyle.DashLine,
        )
    )
    painter.drawLine(oil.topLeft(), oil.topRight())
    _break_line(painter, theme, leg)


def _paint_wanted(painter: QPainter, theme: Theme, leg: LegSection, y: float) -> None:
    pen = QPen(theme.color("ink"), NARROW)
    pen.setDashPattern([6, 3])
    painter.setPen(pen)
    painter.drawLine(QPointF(leg.bore.left(), y), QPointF(leg.bore.right(), y))


def _paint_suction_tube(painter: QPainter, theme: Theme, leg: LegSection, y: float) -> None:
    """A thin tube down the bore to the wanted level, its stop across the tube's edge."""
    x = leg.bore.left() + leg.bore.width() * 0.7
    half = max(leg.bore.width() * 0.045, 1.6)
    top = leg.tube.top() - theme.px(14)
    outline(painter, theme, "card", 1.0)
    painter.drawRect(QRectF(x - half, top, 2 * half, y - top))
    stop = QRectF(
        leg.tube.left() - 3, leg.tube.top() - theme.px(5), leg.tube.width() + 6, theme.px(5)
    )
    outline(painter, theme, "bracket", 1.0)
    painter.drawRect(stop)


def _hatch(painter: QPainter, theme: Theme, wall: QRectF, slant: int) -> None:
    """Narrow lines at 45 degrees over a cut face (ISO 128-3); unlike ways for unlike parts."""
    painter.save()
    painter.setClipRect(wall)
    painter.setPen(QPen(theme.color("quiet"), 0.7))
    step = 7.0
    y = wall.top() - wall.width()
    while y < wall.bottom() + wall.width():
        low, high = (y, y + wall.width()) if slant > 0 else (y + wall.width(), y)
        painter.drawLine(QLineF(wall.left(), low, wall.right(), high))
        y += step
    painter.restore()


def _break_line(painter: QPainter, theme: Theme, leg: LegSection) -> None:
    """A narrow freehand line across the foot: the leg goes on (ISO 128-2, line 01.1)."""
    left = min(leg.slider.left(), leg.tube.left()) - 4
    right = max(leg.slider.right(), leg.tube.right()) + 4
    y = leg.tube.bottom()
    third = (right - left) / 3
    path = QPainterPath(QPointF(left, y))
    path.cubicTo(left + third, y - 7, left + 2 * third, y + 7, right, y)
    painter.setPen(QPen(theme.color("quiet"), NARROW))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(path)
