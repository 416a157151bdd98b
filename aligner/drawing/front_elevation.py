"""The front end seen from the seat: two legs in two brackets, to the sheet's proportions.

The trap: a difference drawn larger beside an uncertainty that is not would look certain. Both
are drawn larger by one factor, which is chosen so that both fit.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter, QPen

from aligner.drawing.strokes import center_line, outline
from aligner.drawing.theme import Theme
from aligner.drawing.usual import bracket_spacing_mm, leg_spacing_mm, tube_mm

_TOP_PLATE_MM = 26.0
_LOWER_PLATE_MM = 34.0
_STUB_MM = 20.0
_SLIDER_MM = 100.0
_LONGEST_SLIDER_MM = 260.0
_TUBE_BELOW_MM = 26.0
_BOLT_HEAD_MM = 7.5
_HANDLEBAR_ROOM_MM = 122.0
#: How far what is bolted on stands out beside the brackets at most.
FITTINGS_BESIDE_MM = 38.0


@dataclass(frozen=True)
class FrontProportions:
    """What the front elevation is drawn to; mm, `None` where the sheet does not say.

    Attributes:
        leg_spacing_mm: centre to centre.
        bracket_spacing_mm: between the clamps.
        tube_mm: outside diameter of the tubes.
        is_upside_down: whether the thick outer tubes stand in the brackets.
        top_bolts: how many bolts the left and the right top clamp have; 0 where not known.
        lower_bolts: likewise of the lower clamps.
    """

    leg_spacing_mm: float | None = None
    bracket_spacing_mm: float | None = None
    tube_mm: float | None = None
    is_upside_down: bool = False
    top_bolts: tuple[int, int] = (0, 0)
    lower_bolts: tuple[int, int] = (0, 0)


@dataclass(frozen=True)
class FrontElevation:
    """Where each part stands in the picture, in pixels; left is the rider's left.

    Attributes:
        top_bracket, lower_bracket: the brackets' plates.
        stem: the steering stem between and through them.
        left_tube, right_tube: the tubes, their tops at the protrusion drawn.
        left_slider, right_slider: the lower parts.
        scale: pixels a millimetre.
        spread: half the whisker at each tube's top; 0 where there is none. The difference may
            be anything from the lower end of one to the upper end of the other.
        clamp_bolts: middles of the clamps' bolt heads.
        is_upside_down: whether the sliders go up into the tubes, not over them.
    """

    top_bracket: QRectF
    lower_bracket: QRectF
    stem: QRectF
    left_tube: QRectF
    right_tube: QRectF
    left_slider: QRectF
    right_slider: QRectF
    scale: float
    spread: float = 0.0
    clamp_bolts: tuple[QPointF, ...] = ()
    is_upside_down: bool = False


def exaggeration(difference_mm: float | None, uncertainty_mm: float | None = None) -> int:
    """By how much a difference of height is drawn larger, so that it can be seen and fits.

    Args:
        difference_mm: left less right.
        uncertainty_mm: its expanded uncertainty, where that is drawn as well.
    """
    if difference_mm is None:
        return 1
    farthest = abs(difference_mm) + (uncertainty_mm or 0.0)
    for factor in (20, 10, 5, 2):
        if abs(difference_mm) * factor <= 24.0 and farthest * factor <= 2 * _STUB_MM:
            return factor
    return 1


def front_elevation(
    room: QRectF,
    proportions: FrontProportions,
    left_mm: float | None = None,
    right_mm: float | None = None,
    uncertainty_mm: float | None = None,
    *,
    has_fittings: bool = False,
    has_handlebar_above: bool = False,
) -> FrontElevation:
    """Lay the front elevation out in the room there is.

    Args:
        room: in pixels.
        proportions: of the bike.
        left_mm: protrusion of the left tube; `None` where it was not read.
        right_mm: of the right tube.
        uncertainty_mm: expanded uncertainty of their difference; half of it is drawn at each
            tube's top, larger by the same factor as the difference.
        has_fittings: whether room is left beside the legs for what is bolted on, and the
            sliders take what height there is, not a short piece.
        has_handlebar_above: whether room is left for a handlebar over the top bracket, too.
    """
    spacing = leg_spacing_mm(proportions.leg_spacing_mm)
    between = bracket_spacing_mm(proportions.bracket_spacing_mm)
    tube = tube_mm(proportions.tube_mm)
    is_upside_down = proportions.is_upside_down
    slider_across = tube * (0.74 if is_upside_down else 1.3)
    over_the_clamp = 2 * 15.0
    width_mm = spacing + tube + over_the_clamp
    wanted_mm = width_mm + (2 * FITTINGS_BESIDE_MM if has_fittings else 0)
    above_mm = _HANDLEBAR_ROOM_MM if has_handlebar_above else 2 * _STUB_MM + 4
    plates = (_TOP_PLATE_MM + _LOWER_PLATE_MM) / 2
    over_the_sliders = above_mm + between + plates + _TUBE_BELOW_MM
    slider_mm = _SLIDER_MM
    if has_fittings:
        left_over = room.height() / room.width() * wanted_mm - over_the_sliders
        slider_mm = min(max(left_over, _SLIDER_MM), _LONGEST_SLIDER_MM)
    height_mm = over_the_sliders + slider_mm
    scale = min(room.width() / wanted_mm, room.height() / height_mm)
    middle = room.center().x()
    top_face = room.top() + (room.height() - height_mm * scale) / 2 + above_mm * scale
    half = spacing / 2 * scale
    plate = QRectF(middle - width_mm / 2 * scale, top_face, width_mm * scale, _TOP_PLATE_MM * scale)
    lower_top = top_face + (_TOP_PLATE_MM / 2 + between - _LOWER_PLATE_MM / 2) * scale
    lower = QRectF(plate.left(), lower_top, plate.width(), _LOWER_PLATE_MM * scale)
    slider_top = lower.bottom() + _TUBE_BELOW_MM * scale
    foot = slider_top + slider_mm * scale

    def tube_box(side: int, stub_mm: float) -> QRectF:
        x = middle + side * half - tube / 2 * scale
        top = top_face - stub_mm * scale
        end = slider_top + 0.3 * (foot - slider_top) if is_upside_down else foot
        return QRectF(x, top, tube * scale, end - top)

    def slider_box(side: int) -> QRectF:
        return QRectF(
            middle + side * half - slider_across / 2 * scale,
            slider_top,
            slider_across * scale,
            foot - slider_top,
        )

    left_stub, right_stub = _stubs(left_mm, right_mm, uncertainty_mm)
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
        spread=_spread(left_mm, right_mm, uncertainty_mm) * scale,
        clamp_bolts=(
            *_bolts(plate, proportions.top_bolts, scale),
            *_bolts(lower, proportions.lower_bolts, scale),
        ),
        is_upside_down=is_upside_down,
    )


def paint_front_elevation(painter: QPainter, theme: Theme, picture: FrontElevation) -> None:
    """Paint the parts, hindmost first, then what is not certain of the tubes' tops."""
    tubes, sliders = (
        (picture.left_tube, picture.right_tube),
        (picture.left_slider, picture.right_slider),
    )
    if picture.is_upside_down:
        _paint_boxes(painter, theme, "slider", sliders, 3)
        for slider in sliders:
            # The axle's clamp at the foot, without which a thin slider seems to float.
            foot = slider.width() * 0.3
            painter.drawRoundedRect(slider.adjusted(-foot, slider.height() * 0.74, foot, 0), 4, 4)
        _paint_boxes(painter, theme, "tube", tubes, 3)
    else:
        _paint_boxes(painter, theme, "tube", tubes, 3)
        _paint_boxes(painter, theme, "slider", sliders, 4)
    outline(painter, theme, "tube", 1.0)
    painter.drawRoundedRect(picture.stem, 4, 4)
    for bracket in (picture.top_bracket, picture.lower_bracket):
        outline(painter, theme, "bracket")
        painter.drawRoundedRect(bracket, 6, 6)
    for bolt in picture.clamp_bolts:
        outline(painter, theme, "tube", 1.0)
        painter.drawEllipse(
            bolt, _BOLT_HEAD_MM / 2 * picture.scale, _BOLT_HEAD_MM / 2 * picture.scale
        )
    for tube, slider in (
        (picture.left_tube, picture.left_slider),
        (picture.right_tube, picture.right_slider),
    ):
        x = tube.center().x()
        center_line(painter, theme, QPointF(x, tube.top() - 10), QPointF(x, slider.bottom() + 8))
    if picture.spread:
        _paint_whisker(painter, theme, picture.left_tube, picture.spread, 1)
        _paint_whisker(painter, theme, picture.right_tube, picture.spread, -1)


def _paint_boxes(
    painter: QPainter, theme: Theme, fill: str, boxes: Sequence[QRectF], corner: int
) -> None:
    outline(painter, theme, fill)
    for box in boxes:
        painter.drawRoundedRect(box, corner, corner)


def _paint_whisker(
    painter: QPainter, theme: Theme, tube: QRectF, spread: float, inward: int
) -> None:
    """A whisker about the tube's top, beside its middle line, toward the bike's middle."""
    x = tube.center().x() + inward * tube.width() * 0.27
    painter.setPen(QPen(theme.color("accent"), 2.4))
    ends = (tube.top() - spread, tube.top() + spread)
    painter.drawLine(QPointF(x, ends[0]), QPointF(x, ends[1]))
    for y in ends:
        painter.drawLine(QPointF(x - 5, y), QPointF(x + 5, y))


def _bolts(plate: QRectF, counts: tuple[int, int], scale: float) -> tuple[QPointF, ...]:
    """Bolt heads at the outer end of each clamp, one above the other."""
    places = []
    for count, x in zip(counts, (plate.left() + 7 * scale, plate.right() - 7 * scale), strict=True):
        shown = min(count, 3)
        apart = plate.height() / max(shown, 2)
        first = plate.center().y() - apart * (shown - 1) / 2
        places += [QPointF(x, first + apart * place) for place in range(shown)]
    return tuple(places)


def _spread(left_mm: float | None, right_mm: float | None, uncertainty_mm: float | None) -> float:
    """Half the whisker at a tube's top, drawn larger like the difference; mm of the drawing."""
    if left_mm is None or right_mm is None or uncertainty_mm is None:
        return 0.0
    half = uncertainty_mm / 2 * exaggeration(left_mm - right_mm, uncertainty_mm)
    return min(half, 2 * _STUB_MM)


def _stubs(
    left_mm: float | None, right_mm: float | None, uncertainty_mm: float | None
) -> tuple[float, float]:
    """How far each tube is drawn above the bracket, their difference exaggerated."""
    if left_mm is None or right_mm is None:
        return _STUB_MM, _STUB_MM
    half = (left_mm - right_mm) / 2 * exaggeration(left_mm - right_mm, uncertainty_mm)
    half = max(-_STUB_MM, min(_STUB_MM, half))
    return _STUB_MM + half, _STUB_MM - half
