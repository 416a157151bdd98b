"""Where each kind of joint sits on the front elevation, so that its bolts can be lit there."""

from __future__ import annotations

from PySide6.QtCore import QPointF

from aligner.drawing.front_elevation import FrontElevation

_APART = 28.0


def bolt_places(picture: FrontElevation, kind: str, side: str, count: int) -> tuple[QPointF, ...]:
    """The places of a joint's bolts in the picture.

    A joint without a place of its own stands beside the leg, low down.
    """
    if kind in ("fork_brace", "mudguard") and count > 1:
        return _on_both_sliders(picture, kind, count)
    middle = _middle(picture, kind, side)
    start = middle.y() - (count - 1) / 2 * _APART
    return tuple(QPointF(middle.x(), start + place * _APART) for place in range(count))


def _on_both_sliders(picture: FrontElevation, kind: str, count: int) -> tuple[QPointF, ...]:
    """What ties the sliders together is bolted to both: the first half of its bolts on the left."""
    top = 16.0 if kind == "fork_brace" else 16.0 + 2 * _APART
    on_left = (count + 1) // 2
    places = []
    for place in range(count):
        slider = picture.left_slider if place < on_left else picture.right_slider
        row = place if place < on_left else place - on_left
        places.append(QPointF(slider.center().x(), slider.top() + top + row * _APART))
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
    if kind.startswith("handlebar"):
        x = center + (outward * 40 if side else 0)
        return QPointF(x, picture.top_bracket.top() - 44)
    if kind.startswith("axle_pinch") or kind.startswith("axle_clamp"):
        return QPointF(beside_slider + outward * 14, slider.bottom() - 14)
    if kind.startswith("axle"):
        return QPointF(center, slider.bottom() - 14)
    if kind == "brake_caliper":
        return QPointF(beside_slider + outward * 14, slider.top() + 30)
    if kind in ("fork_brace", "mudguard"):
        return QPointF(center, slider.top() + 14)
    if side:
        return QPointF(beside_slider + outward * 14, slider.top() + 20)
    return QPointF(center, picture.lower_bracket.bottom() + 30)
