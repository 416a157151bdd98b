"""What is bolted on round the legs, in narrow line, so that a bolt stands on what it holds.

The trap: none of it is to measure, since the sheet does not give it. It says where, not how large.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter, QPen

from aligner.drawing.bolt_places import bolt_places
from aligner.drawing.front_elevation import FITTINGS_BESIDE_MM, FrontElevation
from aligner.drawing.strokes import NARROW
from aligner.drawing.theme import Theme

_CLAMPED_ON_THE_TUBES = ("handlebar_clamp_between", "handlebar_clamp_below")
_AXLES = ("axle", "axle_nut", "axle_in_clamp_caps")
_AXLE_MM = 17.0
_HANDLEBAR_MM = 22.0
_BAND_MM = 15.0
#: From one bolt of a part to the next, and how far the part stands out beyond them.
_APART_MM = 36.0
_EDGE_MM = 28.0


@dataclass(frozen=True)
class Fitting:
    """One part that is bolted on.

    Attributes:
        box: its outline, pixels.
        depth: what is deeper is painted first; below 0 it lies behind the legs and brackets.
    """

    box: QRectF
    depth: int


def fittings(
    picture: FrontElevation, joints: Iterable[tuple[str, str, int]]
) -> tuple[Fitting, ...]:
    """The parts that a bike's joints hold, hindmost first; what is drawn already is left out.

    Args:
        picture: the front elevation as it was laid out.
        joints: kind, side ("left", "right" or "") and number of bolts of each.
    """
    found = []
    for kind, side, count in sorted(joints):  # alike every time, where one hides another
        places = bolt_places(picture, kind, side, count, _APART_MM * picture.scale)
        found += _held_by(kind, side, picture, places)
    return tuple(sorted(found, key=lambda part: part.depth))


def paint_fittings(painter: QPainter, theme: Theme, parts: Iterable[Fitting]) -> None:
    """Paint them, in the order given."""
    painter.setPen(QPen(theme.color("quiet"), NARROW))
    painter.setBrush(theme.color("bracket"))
    for part in parts:
        painter.drawRoundedRect(part.box, 4, 4)


def _held_by(
    kind: str, side: str, picture: FrontElevation, places: tuple[QPointF, ...]
) -> list[Fitting]:
    scale = picture.scale
    if kind in _AXLES:
        return [Fitting(_axle(picture, places[0]), -2)]
    if kind == "brake_caliper":
        return [Fitting(_round(places, scale), -1)]
    if kind == "fork_brace" and len(places) > 1:
        left, right = _halves(places, scale)
        return [Fitting(_bridge(left, right, scale), 1), Fitting(left, 2), Fitting(right, 2)]
    if kind in _CLAMPED_ON_THE_TUBES:
        clamp = _round(places, scale)
        return [Fitting(_grip(picture, clamp), 1), Fitting(clamp, 2)]
    if kind == "handlebar_clamp_above":
        is_both = not side and len(places) > 1
        risers = _halves(places, scale) if is_both else (_round(places, scale),)
        bar = _across(picture, risers[0].center().y())
        for riser in risers:
            riser.setBottom(picture.top_bracket.top())
        return [Fitting(bar, -2), *(Fitting(riser, -1) for riser in risers)]
    return []


def _round(places: tuple[QPointF, ...], scale: float) -> QRectF:
    """The box about some bolts."""
    across = [place.x() for place in places]
    down = [place.y() for place in places]
    box = QRectF(QPointF(min(across), min(down)), QPointF(max(across), max(down)))
    edge = _EDGE_MM * scale
    return box.adjusted(-edge, -edge, edge, edge)


def _halves(places: tuple[QPointF, ...], scale: float) -> tuple[QRectF, QRectF]:
    """The boxes about the first half of some bolts, on the left, and the second, on the right."""
    half = (len(places) + 1) // 2
    return _round(places[:half], scale), _round(places[half:], scale)


def _axle(picture: FrontElevation, place: QPointF) -> QRectF:
    """Through both legs, and out beyond them at either end."""
    half = _AXLE_MM / 2 * picture.scale
    beyond = 2 * half
    return QRectF(
        QPointF(picture.left_slider.left() - beyond, place.y() - half),
        QPointF(picture.right_slider.right() + beyond, place.y() + half),
    )


def _bridge(left: QRectF, right: QRectF, scale: float) -> QRectF:
    """What ties two pads together across the wheel, at their upper end."""
    return QRectF(left.topLeft(), QPointF(right.right(), right.top() + _BAND_MM * scale))


def _across(picture: FrontElevation, y: float) -> QRectF:
    """A handlebar from side to side."""
    half, beyond = _HANDLEBAR_MM / 2 * picture.scale, FITTINGS_BESIDE_MM * picture.scale
    return QRectF(
        QPointF(picture.top_bracket.left() - beyond, y - half),
        QPointF(picture.top_bracket.right() + beyond, y + half),
    )


def _grip(picture: FrontElevation, clamp: QRectF) -> QRectF:
    """The half of a handlebar that stands out from its clamp, away from the middle."""
    bar = _across(picture, clamp.center().y())
    if clamp.center().x() < picture.stem.center().x():
        bar.setRight(clamp.center().x())
    else:
        bar.setLeft(clamp.center().x())
    return bar
