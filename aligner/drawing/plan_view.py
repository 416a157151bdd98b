"""The lower bracket seen from above, with the frame points it is squared to; forward is up.

The trap: a turn drawn larger beside an uncertainty that is not would look certain. Both are
drawn larger by one factor.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from aligner.drawing.strokes import WIDE, center_line, outline
from aligner.drawing.theme import Theme
from aligner.drawing.usual import BRACKET_OFFSET_MM, kept, leg_spacing_mm, tube_mm

_REACH_MM = 60.0
_BRACKET_HALF_WIDTH_MM = 85.0
_SETBACK_MM = 60.0
_FRAME_HALF_WIDTH_MM = 45.0


@dataclass(frozen=True)
class PlanProportions:
    """What the plan view is drawn to; mm, `None` where it is not known.

    Attributes:
        leg_spacing_mm: centre to centre of the legs.
        bracket_offset_mm: legs' plane ahead of the steering axis.
        tube_mm: outside diameter of the tubes.
        bracket_reach_mm: bracket points ahead of the axis (a).
        bracket_half_width_mm: bracket points either side (b).
        frame_setback_mm: frame points behind the axis (c).
        frame_half_width_mm: frame points either side (w).
    """

    leg_spacing_mm: float | None = None
    bracket_offset_mm: float | None = None
    tube_mm: float | None = None
    bracket_reach_mm: float | None = None
    bracket_half_width_mm: float | None = None
    frame_setback_mm: float | None = None
    frame_half_width_mm: float | None = None


@dataclass(frozen=True)
class PlanView:
    """Where things stand in the picture, in pixels.

    Attributes:
        axis: the steering axis.
        scale: pixels a millimetre.
        turn_deg: of the bracket as drawn, positive to the left.
        left_frame, right_frame: the frame points.
        left_bracket, right_bracket: the bracket points, turned.
        proportions: that it was laid out to.
        spread_deg: half the whisker at each end of the bracket, as drawn; 0 where there is none.
    """

    axis: QPointF
    scale: float
    turn_deg: float
    left_frame: QPointF
    right_frame: QPointF
    left_bracket: QPointF
    right_bracket: QPointF
    proportions: PlanProportions
    spread_deg: float = 0.0


def turn_exaggeration(turn_deg: float | None, uncertainty_deg: float | None = None) -> int:
    """By how much a turn is drawn larger, so that it can be seen and stays a bracket.

    Args:
        turn_deg: positive to the left.
        uncertainty_deg: its expanded uncertainty, where that is drawn as well.
    """
    if turn_deg is None:
        return 1
    farthest = abs(turn_deg) + (uncertainty_deg or 0.0)
    for factor in (20, 10, 5, 2):
        if abs(turn_deg) * factor <= 15.0 and farthest * factor <= 24.0:
            return factor
    return 1


def plan_view(
    room: QRectF,
    proportions: PlanProportions,
    turn_deg: float | None = None,
    uncertainty_deg: float | None = None,
) -> PlanView:
    """Lay the plan view out in the room there is, the bracket turned and exaggerated.

    Args:
        room: in pixels.
        proportions: of the bracket and the frame points.
        turn_deg: of the bracket, positive to the left.
        uncertainty_deg: its expanded uncertainty, drawn as an arc at each end of the bracket.
    """
    p = proportions
    spacing = leg_spacing_mm(p.leg_spacing_mm)
    reach = _reach_mm(p)
    half = kept(p.bracket_half_width_mm, _BRACKET_HALF_WIDTH_MM, 20, 250)
    setback = kept(p.frame_setback_mm, _SETBACK_MM, 10, 300)
    frame_half = kept(p.frame_half_width_mm, _FRAME_HALF_WIDTH_MM, 10, 200)
    factor = turn_exaggeration(turn_deg, uncertainty_deg)
    drawn = max(-40.0, min(40.0, (turn_deg or 0.0) * factor))
    spread = (
        min(40.0, uncertainty_deg * factor) if turn_deg is not None and uncertainty_deg else 0.0
    )
    widest = max(spacing / 2 + 40, half + 10, frame_half + 10)
    if spread:
        widest = max(widest, _arc_radius_mm(p) + 4)
    ahead = max(reach, 60.0) + widest * math.sin(math.radians(min(abs(drawn) + spread, 60.0)))
    scale = min(room.width() / (2 * widest), room.height() / (ahead + setback + 10))
    axis = QPointF(
        room.center().x(),
        room.top() + (room.height() - (ahead + setback) * scale) / 2 + ahead * scale,
    )

    def bracket_point(across: float) -> QPointF:
        return place(axis, scale, drawn, reach, across)

    return PlanView(
        axis=axis,
        scale=scale,
        turn_deg=drawn,
        left_frame=QPointF(axis.x() - frame_half * scale, axis.y() + setback * scale),
        right_frame=QPointF(axis.x() + frame_half * scale, axis.y() + setback * scale),
        left_bracket=bracket_point(half),
        right_bracket=bracket_point(-half),
        proportions=p,
        spread_deg=spread,
    )


def place(axis: QPointF, scale: float, turn_deg: float, ahead_mm: float, left_mm: float) -> QPointF:
    """A point of the bracket in the picture: given ahead of and to the left of the axis."""
    turn = math.radians(turn_deg)
    ahead = ahead_mm * math.cos(turn) - left_mm * math.sin(turn)
    left = left_mm * math.cos(turn) + ahead_mm * math.sin(turn)
    return QPointF(axis.x() - left * scale, axis.y() - ahead * scale)


def paint_plan_view(painter: QPainter, theme: Theme, view: PlanView) -> None:
    """Paint the bracket with its legs and stem, the frame points, and the two distances."""
    ahead = max(_reach_mm(view.proportions), 60.0) + 12
    center_line(
        painter,
        theme,
        QPointF(view.axis.x(), view.axis.y() - ahead * view.scale),
        QPointF(view.axis.x(), view.left_frame.y()),
    )
    _paint_bracket(painter, theme, view)
    if view.spread_deg:
        _paint_whiskers(painter, theme, view)
    for frame, bracket in (
        (view.left_frame, view.left_bracket),
        (view.right_frame, view.right_bracket),
    ):
        painter.setPen(QPen(theme.color("accent"), WIDE))
        painter.drawLine(frame, bracket)
        painter.setBrush(theme.color("ink"))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.drawEllipse(frame, 5, 5)
        painter.setBrush(theme.color("card"))
        painter.setPen(QPen(theme.color("ink"), WIDE))
        painter.drawEllipse(bracket, 4, 4)


def _paint_bracket(painter: QPainter, theme: Theme, view: PlanView) -> None:
    """The lower bracket with its legs and stem, turned as it is drawn."""
    p, s = view.proportions, view.scale
    spacing, offset, tube = leg_spacing_mm(p.leg_spacing_mm), _offset_mm(p), tube_mm(p.tube_mm)
    painter.save()
    painter.translate(view.axis)
    painter.rotate(-view.turn_deg)
    outline(painter, theme, "bracket")
    depth = tube + 22
    body = QRectF(
        -(spacing / 2 + tube / 2 + 12) * s,
        -(offset + depth / 2) * s,
        (spacing + tube + 24) * s,
        depth * s,
    )
    painter.drawRoundedRect(body, 12, 12)
    painter.drawEllipse(QPointF(0, 0), 22 * s, 22 * s)
    outline(painter, theme, "tube")
    for side in (-1, 1):
        painter.drawEllipse(
            QPointF(side * spacing / 2 * s, -offset * s), tube / 2 * s, tube / 2 * s
        )
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawEllipse(QPointF(0, 0), 11 * s, 11 * s)
    painter.restore()


def _paint_whiskers(painter: QPainter, theme: Theme, view: PlanView) -> None:
    """An arc off each end of the bracket, as far as the turn may be one way or the other."""
    p = view.proportions
    ahead = _offset_mm(p)
    radius = _arc_radius_mm(p)
    end = math.sqrt(max(radius * radius - ahead * ahead, 0.0))
    steps = 12
    for side in (1, -1):
        arc = [
            place(
                view.axis,
                view.scale,
                view.turn_deg + view.spread_deg * (2 * step / steps - 1),
                ahead,
                side * end,
            )
            for step in range(steps + 1)
        ]
        painter.setPen(QPen(theme.color("accent"), 2.4))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(QPolygonF(arc))
        for tip in (arc[0], arc[-1]):
            outward = (tip - view.axis) / max(radius * view.scale, 1e-9) * 5.0
            painter.drawLine(tip - outward, tip + outward)


def _arc_radius_mm(p: PlanProportions) -> float:
    """How far from the axis the whiskers are drawn: just off the bracket's ends."""
    spacing = leg_spacing_mm(p.leg_spacing_mm)
    tube = tube_mm(p.tube_mm)
    offset = _offset_mm(p)
    return math.hypot(offset, spacing / 2 + tube / 2 + 12) + 8.0


def _offset_mm(p: PlanProportions) -> float:
    return kept(p.bracket_offset_mm, BRACKET_OFFSET_MM, -20, 80)


def _reach_mm(p: PlanProportions) -> float:
    return kept(p.bracket_reach_mm, _REACH_MM, -100, 200)
