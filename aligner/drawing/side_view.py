"""The bike from the side: wheels, steering axis, rake, trail, normal trail and wheelbase.

The trap: a change of rake by half a degree cannot be seen. So the change against the sheet is
drawn larger by a factor that is written beside it, and the sheet's own axis stands dashed
behind it; the figures are always the true ones. The front end is what matters: where the room
is narrow a piece between the wheels is left out at a break, and the rest is to proportion.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from PySide6.QtCore import QPointF, QRectF

from aligner.drawing.side_bones import (
    ABOVE_THE_STUB_MM,
    STUB_MM,
    SideChange,
    SideProportions,
    bones,
)

#: The least room between the wheels where the view is shortened.
_BETWEEN_WHEELS_MM = 150.0


@dataclass(frozen=True)
class SideView:
    """Where things stand in the picture, in pixels.

    Attributes:
        scale: pixels a millimetre.
        forward: +1 where forward is to the right, seen from the right; -1 seen from the left.
        factor: by how much the change is drawn larger; 1 where there is none to see.
        front_axle, rear_axle: of the wheels.
        front_radius, rear_radius: of the wheels.
        contact: of the front tyre with the ground.
        axis_ground: where the steering axis meets the ground.
        axis_top: the upper end of the steering axis as drawn.
        normal_foot: on the axis, where the normal trail meets it.
        lower_bracket, top_bracket: middles of the brackets, on the steering axis.
        leg_foot, leg_top: ends of the leg's middle line.
        slider_top: where the lower part of the leg ends.
        sheet_axis: the steering axis as the sheet has it, low end and high end.
        is_shortened: whether a piece between the wheels is left out, as at a break (ISO 128-3).
        rake_deg: as drawn.
        rake_arc_radius: of the rake's dimension, about `axis_ground`.
        places: boxes for the words of "rake", "trail", "normal trail", "wheelbase".
        row: y of the dimension lines of wheelbase and trail, one chain.
        proportions: that it was laid out to.
    """

    scale: float
    forward: int
    factor: int
    front_axle: QPointF
    rear_axle: QPointF
    front_radius: float
    rear_radius: float
    contact: QPointF
    axis_ground: QPointF
    axis_top: QPointF
    normal_foot: QPointF
    lower_bracket: QPointF
    top_bracket: QPointF
    leg_foot: QPointF
    leg_top: QPointF
    slider_top: QPointF
    sheet_axis: tuple[QPointF, QPointF]
    is_shortened: bool
    rake_deg: float
    rake_arc_radius: float
    places: dict[str, QRectF]
    row: float
    proportions: SideProportions


def change_exaggeration(change: SideChange | None) -> int:
    """By how much the change is drawn larger, so that it can be seen and stays a bike."""
    if change is None or (abs(change.rake_deg) < 0.005 and abs(change.rise_mm) < 0.05):
        return 1  # as good as none: it would not show in the figures either
    for factor in (20, 10, 5, 2):
        if abs(change.rake_deg) * factor <= 8.0 and abs(change.rise_mm) * factor <= 120.0:
            return factor
    return 1


def side_view(
    room: QRectF,
    proportions: SideProportions,
    change: SideChange | None = None,
    *,
    from_the_right: bool = True,
    text_scale: float = 1.0,
) -> SideView:
    """Lay the side view out in the room there is.

    Args:
        room: in pixels.
        proportions: of the bike, by its sheet.
        change: what the legs' height makes of it, drawn larger by `change_exaggeration`.
        from_the_right: whether it is seen from the rider's right, forward to the right.
        text_scale: of the theme, so that the words have their room.
    """
    change = change or SideChange()
    factor = change_exaggeration(change)
    sheet = bones(proportions, SideChange())
    drawn = bones(
        proportions,
        SideChange(change.rake_deg * factor, change.wheelbase_mm, change.rise_mm * factor),
    )
    below, beside, above = 36.0 * text_scale, 104.0 * text_scale, 10.0 * text_scale
    inner = room.adjusted(4, above, -beside, -below)
    if not from_the_right:
        inner = room.adjusted(beside, above, -4, -below)
    reach = max(sheet.reach, drawn.reach)
    wheels = sheet.rear_radius + sheet.front_radius
    shortest = 2 * wheels + _BETWEEN_WHEELS_MM
    scale = max(min(inner.width() / shortest, inner.height() / reach), 1e-3)
    whole = wheels + max(sheet.wheelbase, drawn.wheelbase)
    long = min(whole, inner.width() / scale)
    cut = whole - long
    forward = 1 if from_the_right else -1
    ground = inner.bottom() - max(0.0, (inner.height() - reach * scale) / 2)
    rear_x = inner.center().x() - forward * (long / 2 - sheet.rear_radius) * scale

    def at(point: tuple[float, float]) -> QPointF:
        return QPointF(rear_x + forward * (point[0] - cut) * scale, ground - point[1] * scale)

    made = SideView(
        scale=scale,
        forward=forward,
        factor=factor,
        front_axle=at(drawn.axle),
        rear_axle=at((cut, drawn.rear_radius)),
        front_radius=drawn.front_radius * scale,
        rear_radius=drawn.rear_radius * scale,
        contact=at((drawn.axle[0], 0.0)),
        axis_ground=at(drawn.ground),
        axis_top=at(drawn.along(drawn.top + STUB_MM + ABOVE_THE_STUB_MM)),
        normal_foot=at(drawn.normal_foot),
        lower_bracket=at(drawn.along(drawn.lower)),
        top_bracket=at(drawn.along(drawn.top)),
        leg_foot=at(drawn.along(0.0, drawn.leg)),
        leg_top=at(drawn.along(drawn.leg_top, drawn.leg)),
        slider_top=at(drawn.along(drawn.slider_top, drawn.leg)),
        sheet_axis=(at(sheet.ground), at(sheet.along(sheet.top + STUB_MM + ABOVE_THE_STUB_MM))),
        is_shortened=cut > 0.5,
        rake_deg=drawn.rake_deg,
        rake_arc_radius=drawn.reach * scale,
        places={},
        row=ground + 26.0 * text_scale,
        proportions=proportions,
    )
    return replace(made, places=_places(made, room, text_scale))


def _places(view: SideView, room: QRectF, text_scale: float) -> dict[str, QRectF]:
    """Where the words stand, each clear of the others and within the room."""
    high, wide = 20.0 * text_scale, 160.0 * text_scale
    ahead = view.forward > 0

    def beside(x: float, middle_y: float, width: float, height: float = high) -> QRectF:
        """From x on in the forward direction, moved back where the room ends."""
        across = width * text_scale
        box = QRectF(x if ahead else x - across, middle_y - height / 2, across, height)
        return _moved_into(box, room)

    wheel_edge = view.front_axle.x() + view.forward * (view.front_radius + 8.0 * text_scale)
    arc_top = view.axis_ground.y() - view.rake_arc_radius
    trail_front = max(view.forward * view.axis_ground.x(), view.forward * view.contact.x())
    middle = (view.rear_axle.x() + view.contact.x()) / 2
    between = min(wide, abs(view.rear_axle.x() - view.contact.x()))
    return {
        "rake": beside(view.axis_ground.x() + view.forward * 8.0, arc_top + high * 0.4, 120.0),
        "trail": beside(view.forward * trail_front + view.forward * 22.0, view.row, 120.0),
        "normal trail": beside(wheel_edge, view.contact.y() - 40.0 * text_scale, 94.0, 2 * high),
        "wheelbase": _moved_into(
            QRectF(middle - between / 2, view.row - high, between, high - 2), room
        ),
    }


def _moved_into(box: QRectF, room: QRectF) -> QRectF:
    """The box, moved so far that it lies in the room."""
    x = max(min(box.left(), room.right() - box.width()), room.left())
    y = max(min(box.top(), room.bottom() - box.height()), room.top())
    return QRectF(x, y, box.width(), box.height())
