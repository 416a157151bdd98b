"""The sketch of the adapter and the places of the bolts: geometry, checked by coordinates."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QImage, QPainter

from aligner.drawing.adapter_sketch import AdapterSketch, paint_adapter_sketch, sketch_places
from aligner.drawing.bolt_places import bolt_places, kept_apart
from aligner.drawing.fittings import fittings
from aligner.drawing.front_elevation import FrontProportions, front_elevation
from aligner.drawing.theme import Theme
from aligner.fastening.joints import joint_kinds

ROOM = QRectF(0, 0, 365, 122)
ROOM_FOR_LEGS = QRectF(30, 60, 230, 420)


@given(st.floats(0, 180))
def test_the_angle_drawn_is_the_angle_given_and_all_stays_in_the_room(angle_deg):
    at = sketch_places(ROOM, AdapterSketch("215 mm", "45 mm", angle_deg))

    along = at.fastener - at.drive
    drawn = math.degrees(math.atan2(-along.y(), along.x()))
    assert drawn == pytest.approx(angle_deg, abs=1e-6)
    assert all(ROOM.contains(point) for point in (at.grip, at.drive, at.fastener))


def test_a_concentric_socket_lies_on_the_drive():
    at = sketch_places(ROOM, AdapterSketch("215 mm", "30 mm", 0.0, is_concentric=True))
    assert at.fastener == at.drive


@pytest.mark.parametrize("angle_deg", [0, 45, 90, 135, 180])
def test_the_sketch_can_be_painted_at_any_angle(angle_deg):
    image = QImage(365, 122, QImage.Format.Format_RGB32)
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    paint_adapter_sketch(painter, Theme(), ROOM, AdapterSketch("215 mm", "45 mm", angle_deg))
    painter.end()
    colors = {image.pixel(x, y) for x in range(0, 365, 2) for y in range(0, 122, 2)}
    assert len(colors) > 5


@given(
    st.lists(st.tuples(st.floats(0, 290), st.floats(0, 480)), max_size=40),
)
def test_discs_keep_apart_inside_the_room(places):
    room = QRectF(0, 0, 290, 480)
    found = kept_apart([QPointF(*place) for place in places], 28.0, room)

    assert len(found) == len(places)
    for place, at in enumerate(found):
        for other in found[:place]:
            assert math.hypot(at.x() - other.x(), at.y() - other.y()) > 25.9


def test_every_kind_of_joint_has_its_place_in_the_picture():
    picture = front_elevation(QRectF(30, 60, 230, 380), FrontProportions())
    for kind in joint_kinds():
        for side in ("left", "right", ""):
            for count in (1, 2, 4):
                places = bolt_places(picture, kind, side, count)
                assert len(places) == count
                assert len({(p.x(), p.y()) for p in places}) == count


@pytest.mark.parametrize("kind", ["lower_clamp", "top_clamp", "fork_cap", "brake_caliper"])
def test_left_is_drawn_on_the_left(kind):
    picture = front_elevation(QRectF(30, 60, 230, 380), FrontProportions())
    left = bolt_places(picture, kind, "left", 1)[0]
    right = bolt_places(picture, kind, "right", 1)[0]
    assert left.x() < picture.stem.center().x() < right.x()


@pytest.mark.parametrize("is_upside_down", [False, True])
@pytest.mark.parametrize(
    ("kind", "side", "count"),
    [
        ("brake_caliper", "left", 2),
        ("brake_caliper", "right", 1),
        ("fork_brace", "", 4),
        ("handlebar_clamp_between", "left", 2),
        ("handlebar_clamp_below", "right", 1),
        ("handlebar_clamp_above", "", 4),
        ("handlebar_clamp_above", "right", 2),
        ("axle_nut", "", 1),
    ],
)
def test_every_bolt_stands_on_what_it_holds(kind, side, count, is_upside_down):
    proportions = FrontProportions(is_upside_down=is_upside_down)
    picture = front_elevation(ROOM_FOR_LEGS, proportions, has_fittings=True)
    held = fittings(picture, [(kind, side, count)])
    assert held
    for place in bolt_places(picture, kind, side, count):
        assert any(part.box.contains(place) for part in held)
    for part in held:
        assert ROOM_FOR_LEGS.left() - 1e-6 <= part.box.left()
        assert part.box.right() <= ROOM_FOR_LEGS.right() + 1e-6


def test_handlebars_are_drawn_where_the_sheet_says():
    picture = front_elevation(ROOM_FOR_LEGS, FrontProportions())
    (above,) = bolt_places(picture, "handlebar_clamp_above", "left", 1)
    assert above.y() < picture.top_bracket.top()
    for kind in ("handlebar_clamp_between", "handlebar_clamp_below"):
        (place,) = bolt_places(picture, kind, "left", 1)
        assert picture.top_bracket.bottom() < place.y() < picture.lower_bracket.top()
        assert place.x() == picture.left_tube.center().x()


def test_parts_lie_behind_the_legs_or_before_them_but_clamps_never_under_their_bar():
    joints = [(f"handlebar_clamp_{where}", "left", 1) for where in ("above", "between")]
    held = fittings(front_elevation(ROOM_FOR_LEGS, FrontProportions()), joints)
    assert [part.depth for part in held] == sorted(part.depth for part in held)
    assert {part.depth < 0 for part in held} == {True, False}
    bar_above, bar_between = held[0].box, held[2].box
    assert bar_above.width() > bar_between.width()


def test_the_sliders_take_the_height_left_over_and_no_more():
    short = front_elevation(ROOM_FOR_LEGS, FrontProportions())
    long = front_elevation(ROOM_FOR_LEGS, FrontProportions(), has_fittings=True)
    assert long.left_slider.height() > short.left_slider.height()
    assert long.left_slider.bottom() <= ROOM_FOR_LEGS.bottom() + 1e-6
    flat = QRectF(0, 0, 600, 200)
    assert front_elevation(flat, FrontProportions(), has_fittings=True) == front_elevation(
        flat, FrontProportions()
    )


def test_a_pile_at_one_place_is_spread_round_it_and_what_has_no_room_stays():
    room = QRectF(0, 0, 100, 100)
    place = QPointF(50, 50)

    found = kept_apart([place] * 40, 28.0, room)

    apart = {(round(at.x()), round(at.y())) for at in found}
    assert found[0] == place
    assert 5 <= len(apart) <= 16
    assert all(room.contains(at) for at in found)
