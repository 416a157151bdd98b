"""A torque wrench with its adapter, seen from above: where L, E and the angle are measured.

The trap: L ends at the middle of the grip, where the hand pulls, and the angle is that between
adapter and wrench: 0 straight out, 90 square, 180 folded back. The sketch is not to scale; its
angle is true.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from aligner.drawing.strokes import (
    NARROW,
    center_line,
    dimension_line,
    narrow_line,
    outline,
    words,
)
from aligner.drawing.theme import Theme, TypeSize
from aligner.language import say, written

#: Lengths as drawn, in parts of the sketch: the real ones differ too much to be seen together.
_HANDLE = 200.0
_ADAPTER = 84.0
_MARGIN = 40.0


@dataclass(frozen=True)
class AdapterSketch:
    """What the sketch shows.

    Attributes:
        grip_length: L in words ("215 mm"); "" where it is not known.
        effective_length: E in words.
        angle_deg: between adapter and wrench, 0 to 180.
        is_concentric: whether the fastener lies in line with the drive, as in a socket.
    """

    grip_length: str
    effective_length: str
    angle_deg: float = 0.0
    is_concentric: bool = False


@dataclass(frozen=True)
class SketchPlaces:
    """Where its points stand, in pixels.

    Attributes:
        grip: the middle of the grip.
        drive: the middle of the drive's square.
        fastener: the middle of the fastener.
        scale: pixels a part of the sketch.
    """

    grip: QPointF
    drive: QPointF
    fastener: QPointF
    scale: float


def sketch_places(room: QRectF, sketch: AdapterSketch) -> SketchPlaces:
    """Lay the sketch out in the room there is, pixels; the wrench lies level, its grip at left."""
    angle = math.radians(min(max(sketch.angle_deg, 0.0), 180.0))
    reach = 0.0 if sketch.is_concentric else _ADAPTER * math.cos(angle)
    rise = 0.0 if sketch.is_concentric else _ADAPTER * math.sin(angle)
    width = _HANDLE + max(reach, 0.0) + 2 * _MARGIN
    height = rise + 2 * _MARGIN
    scale = min(room.width() / width, room.height() / height)
    left = room.left() + (room.width() - width * scale) / 2
    top = room.top() + (room.height() - height * scale) / 2
    grip = QPointF(left + _MARGIN * scale, top + (_MARGIN + rise) * scale)
    drive = grip + QPointF(_HANDLE * scale, 0)
    return SketchPlaces(grip, drive, drive + QPointF(reach, -rise) * scale, scale)


def paint_adapter_sketch(
    painter: QPainter, theme: Theme, room: QRectF, sketch: AdapterSketch
) -> None:
    """Paint wrench, adapter and fastener, with L, E and the angle."""
    at = sketch_places(room, sketch)
    _paint_wrench(painter, theme, at)
    if not sketch.is_concentric:
        _paint_adapter(painter, theme, at)
    _paint_fastener(painter, theme, at)
    _paint_drive(painter, theme, at)
    _dimension_grip(painter, theme, at, sketch)
    if not sketch.is_concentric:
        _dimension_adapter(painter, theme, at, sketch)
        _dimension_angle(painter, theme, at, sketch)


def _paint_wrench(painter: QPainter, theme: Theme, at: SketchPlaces) -> None:
    s = at.scale
    outline(painter, theme, "tube", 1.2)
    shaft = QRectF(at.grip, at.drive).adjusted(0, -5 * s, 0, 5 * s)
    painter.drawRect(shaft)
    painter.drawEllipse(at.drive, 14 * s, 14 * s)
    outline(painter, theme, "slider", 1.2)
    painter.drawRoundedRect(
        QRectF(at.grip.x() - 26 * s, at.grip.y() - 8 * s, 52 * s, 16 * s), 6 * s, 6 * s
    )


def _paint_adapter(painter: QPainter, theme: Theme, at: SketchPlaces) -> None:
    s = at.scale
    painter.save()
    painter.translate(at.drive)
    painter.rotate(-math.degrees(_turn(at)))
    outline(painter, theme, "bracket", 1.2)
    painter.drawRoundedRect(QRectF(-9 * s, -6 * s, _ADAPTER * s + 9 * s, 12 * s), 5 * s, 5 * s)
    painter.drawEllipse(QPointF(_ADAPTER * s, 0), 15 * s, 15 * s)
    painter.restore()


def _paint_fastener(painter: QPainter, theme: Theme, at: SketchPlaces) -> None:
    painter.setPen(QPen(theme.color("accent"), 1.5))
    painter.setBrush(theme.color("accent_soft"))
    radius = 10 * at.scale
    corners = [
        at.fastener
        + QPointF(math.cos(math.radians(60 * n)), math.sin(math.radians(60 * n))) * radius
        for n in range(6)
    ]
    painter.drawPolygon(QPolygonF(corners))


def _paint_drive(painter: QPainter, theme: Theme, at: SketchPlaces) -> None:
    if at.drive == at.fastener:
        return
    half = 5 * at.scale
    outline(painter, theme, "card", 1.2)
    painter.drawRect(QRectF(at.drive.x() - half, at.drive.y() - half, 2 * half, 2 * half))


def _dimension_grip(
    painter: QPainter, theme: Theme, at: SketchPlaces, sketch: AdapterSketch
) -> None:
    below = at.grip.y() + 24 * at.scale
    for x in (at.grip.x(), at.drive.x()):
        narrow_line(painter, theme, QPointF(x, at.grip.y()), QPointF(x, below + 4))
    dimension_line(painter, theme, QPointF(at.grip.x(), below), QPointF(at.drive.x(), below))
    text = f"L {sketch.grip_length}" if sketch.grip_length else say("L not measured")
    middle = QPointF((at.grip.x() + at.drive.x()) / 2, below)
    _on_ground(painter, theme, middle, text, "ink" if sketch.grip_length else "attention")


def _dimension_adapter(
    painter: QPainter, theme: Theme, at: SketchPlaces, sketch: AdapterSketch
) -> None:
    turn = _turn(at)
    # On the side away from the angle's arc, and never across the wrench.
    across = turn + math.pi / 2 if turn <= math.pi / 2 + 0.01 else turn - math.pi / 2
    away = QPointF(math.cos(across), -math.sin(across))
    start, end = at.drive + away * (24 * at.scale), at.fastener + away * (24 * at.scale)
    narrow_line(painter, theme, at.drive, start + away * 4)
    narrow_line(painter, theme, at.fastener, end + away * 4)
    dimension_line(painter, theme, start, end)
    text = f"E {sketch.effective_length}"
    wide, high = _extent(painter, theme, text)
    clear = (abs(away.x()) * wide + abs(away.y()) * high) / 2
    _on_ground(painter, theme, (start + end) / 2 + away * clear, text, "ink")


def _dimension_angle(
    painter: QPainter, theme: Theme, at: SketchPlaces, sketch: AdapterSketch
) -> None:
    """The wrench's axis drawn on beyond the drive, and the arc from it to the adapter."""
    turn = math.degrees(_turn(at))
    beyond = at.drive + QPointF(max(_ADAPTER * 0.55, 40) * at.scale, 0)
    if turn < 1:
        return
    center_line(painter, theme, at.drive, beyond)
    radius = 34 * at.scale
    painter.setPen(QPen(theme.color("ink"), NARROW))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    circle = QRectF(at.drive.x() - radius, at.drive.y() - radius, 2 * radius, 2 * radius)
    painter.drawArc(circle, 0, round(turn * 16))
    middle = math.radians(min(turn / 2, 40.0))
    out = radius + theme.px(16)
    place = at.drive + QPointF(math.cos(middle) * out, -math.sin(middle) * out)
    _on_ground(painter, theme, place, f"{written(sketch.angle_deg)}°", "ink")


def _turn(at: SketchPlaces) -> float:
    """The adapter's angle in radians, counted up from the wrench's axis."""
    along = at.fastener - at.drive
    return math.atan2(-along.y(), along.x()) if along != QPointF() else 0.0


def _extent(painter: QPainter, theme: Theme, text: str) -> tuple[float, float]:
    """How wide and high words are with the ground round them."""
    painter.setFont(theme.font(TypeSize.SMALL, bold=True))
    metrics = painter.fontMetrics()
    return metrics.horizontalAdvance(text) + 8.0, float(metrics.height())


def _on_ground(painter: QPainter, theme: Theme, middle: QPointF, text: str, role: str) -> None:
    """Words that break the line they stand on, as a dimension's do."""
    wide, high = _extent(painter, theme, text)
    box = QRectF(middle.x() - wide / 2, middle.y() - high / 2, wide, high)
    painter.fillRect(box, theme.color("card"))
    centred = Qt.AlignmentFlag.AlignHCenter
    words(painter, theme, box, text, role=role, bold=True, align=centred)
