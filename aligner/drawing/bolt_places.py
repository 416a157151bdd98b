"""Where each kind of joint sits on the front elevation, so that its bolts can be lit there."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from PySide6.QtCore import QPointF, QRectF

from aligner.drawing.front_elevation import FrontElevation

#: From one bolt's disc to the next of the same joint, pixels at 100 % text.
APART = 28.0
#: How far down its slider a brake caliper sits, as a share of what is drawn of it.
_CALIPER = 0.55
#: Where a disc goes whose place is taken, nearest first, in discs.
_OFFSETS = sorted(
    (QPointF(x / 2, y / 2) for x in range(-8, 9) for y in range(-8, 9)),
    key=lambda offset: (math.hypot(offset.x(), offset.y()), -offset.y(), offset.x()),
)


def bolt_places(
    picture: FrontElevation, kind: str, side: str, count: int, apart: float = APART
) -> tuple[QPointF, ...]:
    """The places of a joint's bolts in the picture.

    A joint without a place of its own stands beside the leg, low down.

    Args:
        picture: the front elevation as it was laid out.
        kind: of the joint ("lower_clamp").
        side: the rider's "left" or "right"; "" for what stands in the middle.
        count: how many bolts it has.
        apart: from one bolt to the next, pixels.
    """
    if kind in ("fork_brace", "mudguard") and count > 1:
        return _on_both_sliders(picture, kind, count, apart)
    if kind == "handlebar_clamp_above" and not side and count > 1:
        on_left = (count + 1) // 2
        return (
            *bolt_places(picture, kind, "left", on_left, apart),
            *bolt_places(picture, kind, "right", count - on_left, apart),
        )
    middle = _middle(picture, kind, side)
    start = middle.y() - (count - 1) / 2 * apart
    return tuple(QPointF(middle.x(), start + place * apart) for place in range(count))


def kept_apart(wanted: Sequence[QPointF], apart: float, room: QRectF) -> tuple[QPointF, ...]:
    """The same places moved as little as need be, so that no two discs cover each other.

    A disc for which there is no room round its place stays where it belongs.

    Args:
        wanted: where each disc belongs, in the order in which they are given their place.
        apart: least distance from disc to disc, pixels.
        room: they stay inside it.
    """
    inside = room.adjusted(apart / 2, apart / 2, -apart / 2, -apart / 2)
    taken: dict[tuple[int, int], list[QPointF]] = {}  # by squares as wide as a disc
    tries: dict[tuple[float, float], Iterator[QPointF]] = {}  # what is taken once stays taken
    placed: list[QPointF] = []
    for place in wanted:
        tried = tries.setdefault((place.x(), place.y()), _round(place, apart))
        found = next(
            (at for at in tried if inside.contains(at) and _is_free(at, taken, apart)), None
        )
        if found is not None:
            taken.setdefault(_square(found, apart), []).append(found)
        placed.append(place if found is None else found)
    return tuple(placed)


def _round(place: QPointF, apart: float) -> Iterator[QPointF]:
    """The place itself, then those round it, nearest first."""
    return (place + offset * apart for offset in _OFFSETS)


def _is_free(at: QPointF, taken: dict[tuple[int, int], list[QPointF]], apart: float) -> bool:
    column, row = _square(at, apart)
    near = (
        other
        for x in (column - 1, column, column + 1)
        for y in (row - 1, row, row + 1)
        for other in taken.get((x, y), ())
    )
    return all(math.hypot(at.x() - p.x(), at.y() - p.y()) > apart - 2.0 for p in near)


def _square(at: QPointF, apart: float) -> tuple[int, int]:
    return math.floor(at.x() / apart), math.floor(at.y() / apart)


def _on_both_sliders(
    picture: FrontElevation, kind: str, count: int, apart: float
) -> tuple[QPointF, ...]:
    """What ties the sliders together is bolted to both: the first half of its bolts on the left."""
    top = 16.0 if kind == "fork_brace" else 16.0 + 2 * apart
    on_left = (count + 1) // 2
    places = []
    for place in range(count):
        slider = picture.left_slider if place < on_left else picture.right_slider
        row = place if place < on_left else place - on_left
        places.append(QPointF(slider.center().x(), slider.top() + top + row * apart))
    return tuple(places)


def _middle(picture: FrontElevation, kind: str, side: str) -> QPointF:
    is_left = side == "left"
    tube = picture.left_tube if is_left else picture.right_tube
    slider = picture.left_slider if is_left else picture.right_slider
    outward = -1 if is_left else 1
    bracket_end = picture.top_bracket.left() if is_left else picture.top_bracket.right()
    center = picture.stem.center().x()
    beside_slider = slider.left() if is_left else slider.right()
    if kind == "lower_clamp":
        return QPointF(bracket_end + outward * 4, picture.lower_bracket.center().y())
    if kind == "top_clamp":
        return QPointF(bracket_end + outward * 4, picture.top_bracket.center().y())
    if kind == "fork_cap":
        return QPointF(tube.center().x(), tube.top() - 12)
    if kind == "stem_head_bolt":
        return QPointF(center, picture.stem.top() - 8)
    if kind == "stem_pinch":
        return QPointF(center + 34, picture.top_bracket.center().y())
    if kind == "stem_nut":
        return QPointF(center, picture.top_bracket.bottom() + 22)
    if kind == "handlebar_clamp_above":
        x = center + (outward * 52 * picture.scale if side else 0)
        return QPointF(x, picture.top_bracket.top() - 76 * picture.scale)
    if kind.startswith("handlebar"):
        return QPointF(tube.center().x(), picture.top_bracket.bottom() + 40 * picture.scale)
    if kind.startswith("axle_pinch") or kind.startswith("axle_clamp"):
        return QPointF(beside_slider + outward * 14, slider.bottom() - 10)
    if kind.startswith("axle"):
        return QPointF(center, slider.bottom() - 10)
    low = slider.top() + _CALIPER * slider.height()
    if kind == "brake_caliper":
        return QPointF(beside_slider + outward * 18 * picture.scale, low)
    if kind == "anti_dive_unit_bolt":
        return QPointF(slider.center().x(), low)
    if kind in ("damper_rod_bolt", "damping_unit_bolt"):  # from below, through the slider's foot
        return QPointF(slider.center().x(), slider.bottom())
    if kind in ("fork_brace", "mudguard"):
        return QPointF(center, slider.top() + 14)
    if side:
        return QPointF(beside_slider + outward * 14, slider.top() + 20)
    return QPointF(center, picture.lower_bracket.bottom() + 30)
