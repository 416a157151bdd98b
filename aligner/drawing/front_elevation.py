"""The front end seen from the seat: two legs in two brackets, to the sheet's proportions."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from aligner.drawing.strokes import center_line, outline
from aligner.drawing.theme import Theme

#: Stand-ins where the sheet gives no dimension, so that there is a drawing at all; mm.
_LEG_SPACING_MM = 200.0
_BRACKET_SPACING_MM = 190.0
_TUBE_MM = 38.0

_TOP_PLATE_MM = 26.0
_LOWER_PLATE_MM = 34.0
_STUB_MM = 20.0
_SLIDER_MM = 100.0
_TUBE_BELOW_MM = 26.0


@dataclass(frozen=True)
class FrontProportions:
    """What the front elevation is drawn to; mm, `None` where the sheet does not say.

    Attributes:
        leg_spacing_mm: centre to centre.
        bracket_spacing_mm: between the clamps.
        tube_mm: outside diameter of the tubes.
        is_upside_down: whether the thick outer tubes stand in the brackets.
    """

    leg_spacing_mm: float | None = None
    bracket_spacing_mm: float | None = None
    tube_mm: float | None = None
    is_upside_down: bool = False


@dataclass(frozen=True)
class FrontElevation:
    """Where each part stands in the picture, in pixels; left is the rider's left.

    Attributes:
        top_bracket, lower_bracket: the brackets' plates.
        stem: the steering stem between and through them.
        left_tube, right_tube: the tubes, their tops at the protrusion drawn.
        left_slider, right_slider: the lower parts.
        scale: pixels a millimetre.
    """

    top_bracket: QRectF
    lower_bracket: QRectF
    stem: QRectF
    left_tube: QRectF
    right_tube: QRectF
    left_slider: QRectF
    right_slider: QRectF
    scale: float


def exaggeration(difference_mm: float | None) -> int:
    """By how much a difference of height is drawn larger, so that it can be seen and fits."""
    if difference_mm is None:
        return 1
    for factor in (20, 10, 5, 2):
        if abs(difference_mm) * factor <= 24.0:
            return factor
    return 1


def front_elevation(
    room: QRectF,
    proportions: FrontProportions,
    left_mm: float | None = None,
    right_mm: float | None = None,
) -> FrontElevation:
    """Lay the front elevation out in the room there is.

    Args:
        room: in pixels.
        proportions: of the bike.
        left_mm: protrusion of the left tube; `None` where it was not read.
        right_mm: of the right tube.
    """
    spacing = _sensible(proportions.leg_spacing_mm, _LEG_SPACING_MM, 100.0, 400.0)
    between = _sensible(proportions.bracket_spacing_mm, _BRACKET_SPACING_MM, 80.0, 400.0)
    tube = _sensible(proportions.tube_mm, _TUBE_MM, 22.0, 65.0)
    thick, thin = tube * 1.3, tube
    if proportions.is_upside_down:
        thick, thin = tube * 0.72, tube
    over_the_clamp = 2 * 15.0
    width_mm = spacing + tube + over_the_clamp
    above_mm = 2 * _STUB_MM + 4
    height_mm = above_mm + between + _LOWER_PLATE_MM / 2 + _TUBE_BELOW_MM + _SLIDER_MM
    scale = min(room.width() / width_mm, room.height() / height_mm)
    middle = room.center().x()
    top_face = room.top() + (room.height() - height_mm * scale) / 2 + above_mm * scale
    half = spacing / 2 * scale
    plate = QRectF(middle - width_mm / 2 * scale, top_face, width_mm * scale, _TOP_PLATE_MM * scale)
    lower_top = top_face + (_TOP_PLATE_MM / 2 + between - _LOWER_PLATE_MM / 2) * scale
    lower = QRectF(plate.left(), lower_top, plate.width(), _LOWER_PLATE_MM * scale)
    slider_top = lower.bottom() + _TUBE_BELOW_MM * scale
    foot = slider_top + _SLIDER_MM * scale

    def tube_box(side: int, stub_mm: float) -> QRectF:
        x = middle + side * half - thin / 2 * scale
        top = top_face - stub_mm * scale
        return QRectF(x, top, thin * scale, foot - top)

    def slider_box(side: int) -> QRectF:
        return QRectF(
            middle + side * half - thick / 2 * scale, slider_top, thick * scale, foot - slider_top
        )

    left_stub, right_stub = _stubs(left_mm, right_mm)
    return FrontElevation(
        top_bracket=plate,
        lower_bracket=lower,
        stem=QRectF(
            middle - 13 * scale,
            plate.top() - 9 * scale,
            26 * scale,
            lower.bottom() - plate.top() + 18 * scale,
        ),
        left_tube=tube_box(-1, left_stub),
        right_tube=tube_box(1, right_stub),
        left_slider=slider_box(-1),
        right_slider=slider_box(1),
        scale=scale,
    )


def paint_front_elevation(painter: QPainter, theme: Theme, picture: FrontElevation) -> None:
    """Paint the parts, hindmost first."""
    for tube in (picture.left_tube, picture.right_tube):
        outline(painter, theme, "tube")
        painter.drawRoundedRect(tube, 3, 3)
    for slider in (picture.left_slider, picture.right_slider):
        outline(painter, theme, "slider")
        painter.drawRoundedRect(slider, 4, 4)
    outline(painter, theme, "tube", 1.0)
    painter.drawRoundedRect(picture.stem, 4, 4)
    for bracket in (picture.top_bracket, picture.lower_bracket):
        outline(painter, theme, "bracket")
        painter.drawRoundedRect(bracket, 6, 6)
    for tube, slider in (
        (picture.left_tube, picture.left_slider),
        (picture.right_tube, picture.right_slider),
    ):
        x = tube.center().x()
        center_line(painter, theme, QPointF(x, tube.top() - 10), QPointF(x, slider.bottom() + 8))


def _stubs(left_mm: float | None, right_mm: float | None) -> tuple[float, float]:
    """How far each tube is drawn above the bracket, their difference exaggerated."""
    if left_mm is None or right_mm is None:
        return _STUB_MM, _STUB_MM
    half = (left_mm - right_mm) / 2 * exaggeration(left_mm - right_mm)
    half = max(-_STUB_MM, min(_STUB_MM, half))
    return _STUB_MM + half, _STUB_MM - half


def _sensible(given: float | None, otherwise: float, low: float, high: float) -> float:
    """A dimension to draw by: kept between bounds, so that a slip still leaves a picture."""
    return min(max(given, low), high) if given else otherwise
