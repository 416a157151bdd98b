"""Paints the side view: the parts, then its dimensions in the manner of ISO 129-1."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from aligner.drawing.side_view import SideView
from aligner.drawing.strokes import (
    NARROW,
    WIDE,
    arrowhead,
    center_line,
    dimension_line,
    narrow_line,
    outline,
    words,
)
from aligner.drawing.theme import Theme
from aligner.drawing.usual import tube_mm

#: A dimension shorter than this has no room for two heads within, in pixels.
_ROOM_FOR_HEADS = 24.0


@dataclass(frozen=True)
class DimensionWords:
    """What stands at a dimension.

    Attributes:
        text: name and figure ("trail 118.2 mm"), or that it is missing.
        is_missing: whether there is no figure.
    """

    text: str
    is_missing: bool = False


def paint_side_view(
    painter: QPainter, theme: Theme, view: SideView, dimensions: Mapping[str, DimensionWords]
) -> None:
    """Paint the whole view.

    Args:
        painter: to paint with.
        theme: colours and type.
        view: laid out by `side_view`.
        dimensions: the words at "rake", "trail", "normal trail" and "wheelbase"; one that is
            left out is not dimensioned.
    """
    _paint_ground_and_wheels(painter, theme, view)
    _paint_front_end(painter, theme, view)
    if view.factor > 1:
        _paint_sheet_axis(painter, theme, view)
    beyond = _toward(view.axis_ground, view.axis_top, -10.0)
    center_line(painter, theme, beyond, view.axis_top)
    _paint_rake(painter, theme, view)
    _paint_lengths(painter, theme, view)
    align = Qt.AlignmentFlag.AlignLeft if view.forward > 0 else Qt.AlignmentFlag.AlignRight
    for name, said in dimensions.items():
        words(
            painter,
            theme,
            view.places[name],
            said.text,
            role="attention" if said.is_missing else "ink",
            bold=not said.is_missing,
            align=Qt.AlignmentFlag.AlignHCenter if name == "wheelbase" else align,
        )


def _paint_ground_and_wheels(painter: QPainter, theme: Theme, view: SideView) -> None:
    ground = view.contact.y()
    ends = (
        view.rear_axle.x() - view.forward * view.rear_radius,
        view.front_axle.x() + view.forward * view.front_radius,
    )
    painter.setPen(QPen(theme.color("ink"), WIDE))
    painter.drawLine(QPointF(min(ends), ground), QPointF(max(ends), ground))
    for axle, radius in (
        (view.rear_axle, view.rear_radius),
        (view.front_axle, view.front_radius),
    ):
        outline(painter, theme, "card")
        painter.drawEllipse(axle, radius, radius)
        painter.setPen(QPen(theme.color("quiet"), NARROW))
        painter.drawEllipse(axle, radius * 0.76, radius * 0.76)
        cross = radius * 0.16
        for along in (QPointF(cross, 0), QPointF(0, cross)):
            center_line(painter, theme, axle - along, axle + along)


def _paint_front_end(painter: QPainter, theme: Theme, view: SideView) -> None:
    scale = view.scale
    tube = tube_mm(view.proportions.tube_mm) * scale
    thick, thin = tube * 1.3, tube
    if view.proportions.is_upside_down:
        thick, thin = tube * 0.74, tube
    below_axle = _toward(view.leg_foot, view.leg_top, -16.0 * scale)
    if view.proportions.is_upside_down:
        _band(painter, theme, "slider", below_axle, view.slider_top, thick)
        _band(painter, theme, "tube", view.slider_top, view.leg_top, thin)
    else:
        _band(painter, theme, "tube", view.leg_foot, view.leg_top, thin)
        _band(painter, theme, "slider", below_axle, view.slider_top, thick)
    outline(painter, theme, "slider", 1.0)
    painter.drawEllipse(view.front_axle, 13 * scale, 13 * scale)
    stem = 26 * scale
    _band(painter, theme, "bracket", view.lower_bracket, view.top_bracket, stem, width=1.0)
    turn = math.degrees(
        math.atan2(
            view.axis_top.y() - view.axis_ground.y(), view.axis_top.x() - view.axis_ground.x()
        )
    )
    leg = math.hypot(
        view.leg_foot.x() - _foot_on_axis(view).x(), view.leg_foot.y() - _foot_on_axis(view).y()
    )
    for middle, depth in ((view.lower_bracket, 34.0), (view.top_bracket, 24.0)):
        painter.save()
        painter.translate(middle)
        painter.rotate(turn + 90.0)
        outline(painter, theme, "bracket")
        ahead = leg + tube / 2 + 12 * scale
        back = 24 * scale
        left = -back if view.forward > 0 else -ahead
        painter.drawRoundedRect(QRectF(left, -depth / 2 * scale, ahead + back, depth * scale), 3, 3)
        painter.restore()


def _paint_sheet_axis(painter: QPainter, theme: Theme, view: SideView) -> None:
    pen = QPen(theme.color("quiet"), NARROW, Qt.PenStyle.DashLine)
    painter.setPen(pen)
    painter.drawLine(*view.sheet_axis)


def _paint_rake(painter: QPainter, theme: Theme, view: SideView) -> None:
    """The angle between the vertical and the axis, about where the axis meets the ground."""
    foot, radius = view.axis_ground, view.rake_arc_radius
    narrow_line(painter, theme, foot, QPointF(foot.x(), foot.y() - radius - 6))
    arc = QRectF(foot.x() - radius, foot.y() - radius, 2 * radius, 2 * radius)
    painter.setPen(QPen(theme.color("ink"), NARROW))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    start = 90.0 if view.forward > 0 else 90.0 - view.rake_deg
    painter.drawArc(arc, round(start * 16), round(view.rake_deg * 16))
    e = math.radians(view.rake_deg)
    upright = QPointF(foot.x(), foot.y() - radius)
    leaning = QPointF(
        foot.x() - view.forward * radius * math.sin(e), foot.y() - radius * math.cos(e)
    )
    back = QPointF(float(view.forward), 0.0)
    down = QPointF(-view.forward * math.cos(e), math.sin(e))
    for tip, along in ((upright, back), (leaning, down)):
        arrowhead(painter, theme, tip, along)


def _paint_lengths(painter: QPainter, theme: Theme, view: SideView) -> None:
    stops = (view.rear_axle.x(), view.contact.x(), view.axis_ground.x())
    for x in stops:
        narrow_line(painter, theme, QPointF(x, view.contact.y() + 3), QPointF(x, view.row + 5))
    rear, contact, ground = (QPointF(x, view.row) for x in stops)
    dimension_line(painter, theme, rear, contact)
    if abs(ground.x() - contact.x()) >= _ROOM_FOR_HEADS:
        dimension_line(painter, theme, contact, ground)
    else:
        # Two heads would not go between: a dot takes one's place, the other stands outside.
        ahead = QPointF(math.copysign(1.0, ground.x() - contact.x()), 0.0)
        painter.setPen(QPen(theme.color("ink"), NARROW))
        painter.drawLine(contact, ground + ahead * 18)
        arrowhead(painter, theme, ground, -ahead)
        painter.drawEllipse(contact, 2.2, 2.2)
    if view.is_shortened:
        _paint_break(painter, theme, view)
    painter.setPen(QPen(theme.color("accent"), WIDE))
    painter.drawLine(view.contact, view.normal_foot)
    square = 6.0
    along = _unit(view.normal_foot, view.contact)
    up = _unit(view.normal_foot, view.axis_top)
    corner = [view.normal_foot + along * square, view.normal_foot + (along + up) * square]
    painter.setPen(QPen(theme.color("accent"), NARROW))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolyline(QPolygonF([*corner, view.normal_foot + up * square]))
    place = view.places["normal trail"]
    near = place.left() - 3 if view.forward > 0 else place.right() + 3
    middle = (view.contact + view.normal_foot) / 2
    narrow_line(painter, theme, middle, QPointF(near, place.center().y()), "accent")


def _paint_break(painter: QPainter, theme: Theme, view: SideView) -> None:
    """Two zigzag lines where a piece is left out; the dimension line stays whole (ISO 129-1)."""
    rear = view.rear_axle.x() + view.forward * view.rear_radius
    front = view.front_axle.x() - view.forward * view.front_radius
    middle, y = (rear + front) / 2, view.contact.y()
    painter.fillRect(QRectF(middle - 3, y - 2, 6, 4), theme.color("card"))
    painter.setPen(QPen(theme.color("ink"), NARROW))
    for x in (middle - 3, middle + 3):
        turns = ((0, -9), (0, -3), (3, -1.5), (-3, 1.5), (0, 3), (0, 6))
        painter.drawPolyline(QPolygonF([QPointF(x + across, y + down) for across, down in turns]))


def _band(
    painter: QPainter,
    theme: Theme,
    fill: str,
    start: QPointF,
    end: QPointF,
    across: float,
    *,
    width: float = WIDE,
) -> None:
    """A tube seen from the side: a rectangle about its middle line."""
    along = _unit(start, end)
    side = QPointF(-along.y(), along.x()) * (across / 2)
    outline(painter, theme, fill, width)
    painter.drawPolygon(QPolygonF([start + side, end + side, end - side, start - side]))


def _foot_on_axis(view: SideView) -> QPointF:
    """The point of the axis that the leg's foot is square to."""
    up = _unit(view.axis_ground, view.axis_top)
    reach = view.leg_foot - view.axis_ground
    return view.axis_ground + up * (reach.x() * up.x() + reach.y() * up.y())


def _unit(start: QPointF, end: QPointF) -> QPointF:
    length = math.hypot(end.x() - start.x(), end.y() - start.y())
    return (end - start) / length if length > 1e-9 else QPointF(0.0, -1.0)


def _toward(start: QPointF, end: QPointF, pixels: float) -> QPointF:
    """From a point so many pixels toward another; negative goes the other way."""
    return start + _unit(start, end) * pixels
