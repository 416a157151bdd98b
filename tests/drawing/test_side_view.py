"""The side view is to proportion: angles and lengths are measured back out of the picture."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from aligner.drawing.side_bones import SideChange, SideProportions
from aligner.drawing.side_painting import DimensionWords, paint_side_view
from aligner.drawing.side_view import change_exaggeration, side_view
from aligner.drawing.theme import DARK, LIGHT, Theme
from aligner.geometry import SteeringGeometry, normal_trail_mm, raised, trail_mm

ROOM = QRectF(0, 0, 520, 380)
BIKE = SideProportions(27.0, 40.0, 320.0, 310.0, 1450.0, 35.0, 560.0, 190.0, 38.0)


def apart(one, other):
    return math.hypot(one.x() - other.x(), one.y() - other.y())


def lean_deg(low, high, forward):
    """From the vertical, positive with the top to the rear."""
    return math.degrees(math.atan2(-forward * (high.x() - low.x()), low.y() - high.y()))


rakes = st.floats(15, 40)
offsets = st.floats(0, 80)
radii = st.floats(250, 360)


@given(rakes, offsets, radii, st.booleans())
def test_the_axis_is_drawn_at_the_rake_and_meets_the_ground_at_the_trail(
    rake, offset, radius, from_the_right
):
    proportions = SideProportions(rake, offset, radius, 310.0, 1450.0)
    view = side_view(ROOM, proportions, from_the_right=from_the_right)
    assert lean_deg(view.axis_ground, view.axis_top, view.forward) == pytest.approx(rake, abs=1e-6)
    drawn = view.forward * (view.axis_ground.x() - view.contact.x()) / view.scale
    assert drawn == pytest.approx(trail_mm(rake, offset, radius), abs=1e-6)
    normal = apart(view.contact, view.normal_foot) / view.scale
    assert normal == pytest.approx(abs(normal_trail_mm(rake, offset, radius)), abs=1e-6)


@given(rakes, offsets, radii)
def test_the_axle_stands_ahead_of_the_axis_by_the_offset(rake, offset, radius):
    view = side_view(ROOM, SideProportions(rake, offset, radius, 310.0, 1450.0))
    along = view.axis_top - view.axis_ground
    reach = view.front_axle - view.axis_ground
    across = (along.x() * reach.y() - along.y() * reach.x()) / math.hypot(along.x(), along.y())
    assert across / view.scale == pytest.approx(offset, abs=1e-6)


def test_seen_from_the_left_it_is_the_mirror_image():
    right = side_view(ROOM, BIKE)
    left = side_view(ROOM, BIKE, from_the_right=False)
    assert (right.forward, left.forward) == (1, -1)
    for name in ("front_axle", "rear_axle", "contact", "axis_ground", "leg_top", "top_bracket"):
        one, other = getattr(right, name), getattr(left, name)
        assert one.x() + other.x() == pytest.approx(ROOM.width())
        assert one.y() == pytest.approx(other.y())


def test_in_a_wide_room_the_wheelbase_is_to_proportion_and_in_a_narrow_one_it_is_broken():
    wide = side_view(QRectF(0, 0, 2000, 400), BIKE)
    assert not wide.is_shortened
    assert (wide.contact.x() - wide.rear_axle.x()) / wide.scale == pytest.approx(1450.0)
    narrow = side_view(ROOM, BIKE)
    assert narrow.is_shortened
    gap = apart(narrow.front_axle, narrow.rear_axle) - narrow.front_radius - narrow.rear_radius
    assert gap > 20


def test_a_change_is_drawn_larger_by_the_factor_it_says():
    geometry = SteeringGeometry(27.0, 40.0, 320.0, 310.0, 1450.0)
    found = raised(geometry, 5.0)
    change = SideChange(found.rake_change_deg, found.wheelbase_mm - 1450.0, 5.0)
    view = side_view(ROOM, BIKE, change)
    assert view.factor == change_exaggeration(change) == 20
    drawn = lean_deg(view.axis_ground, view.axis_top, view.forward)
    assert drawn == pytest.approx(27.0 + 20 * found.rake_change_deg, abs=1e-6)
    sheet = lean_deg(*view.sheet_axis, view.forward)
    assert sheet == pytest.approx(27.0, abs=1e-6)


def test_raised_legs_stand_higher_above_the_top_bracket():
    plain, up = side_view(ROOM, BIKE), side_view(ROOM, BIKE, SideChange(-0.2, -2.0, 5.0))
    stub = apart(plain.leg_top, plain.top_bracket) / plain.scale
    assert apart(up.leg_top, up.top_bracket) / up.scale > stub + 50


@pytest.mark.parametrize(
    ("change", "factor"),
    [
        pytest.param(None, 1, id="nothing to show"),
        pytest.param(SideChange(), 1, id="no change"),
        pytest.param(SideChange(-0.03, -0.4, 0.8), 20, id="small"),
        pytest.param(SideChange(-0.7, -9.0, 20.0), 5, id="as far as the slider goes"),
        pytest.param(SideChange(6.0, 40.0, -150.0), 1, id="large enough as it is"),
    ],
)
def test_the_factor_fits_the_change(change, factor):
    assert change_exaggeration(change) == factor


rooms = st.builds(QRectF, st.just(0), st.just(0), st.floats(360, 1100), st.floats(200, 560))
bikes = st.builds(
    SideProportions,
    *[
        st.none() | numbers
        for numbers in (
            st.floats(0, 89),
            st.floats(-1e4, 1e4),
            st.floats(0, 1e9),
            st.floats(0, 1e9),
            st.floats(0, 1e9),
            st.floats(-1e4, 1e4),
            st.floats(0, 1e9),
            st.floats(0, 1e9),
            st.floats(0, 1e9),
        )
    ],
    is_upside_down=st.booleans(),
)


@given(rooms, bikes, st.booleans())
def test_whatever_the_sheet_says_the_words_lie_in_the_room_and_clear_of_each_other(
    room, proportions, from_the_right
):
    view = side_view(room, proportions, from_the_right=from_the_right)
    places = list(view.places.values())
    for place in places:
        assert room.contains(place), (place, room)
        assert place.width() >= 40
    for number, one in enumerate(places):
        assert not any(one.intersects(other) for other in places[number + 1 :])


def test_what_the_sheet_lacks_is_named():
    assert SideProportions(rake_deg=27.0, tube_mm=38.0).stand_ins == (
        "offset of the axle",
        "front wheel radius",
        "rear wheel radius",
        "wheelbase",
        "bracket offset",
        "lower bracket to axle",
        "bracket spacing",
    )
    assert BIKE.stand_ins == ()


@pytest.mark.parametrize("palette", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize("is_upside_down", [False, True], ids=["plain", "upside down"])
def test_it_paints_ink_on_the_card(palette, is_upside_down):
    theme = Theme(palette)
    picture = QImage(520, 380, QImage.Format.Format_RGB32)
    picture.fill(theme.color("card"))
    painter = QPainter(picture)
    view = side_view(ROOM, SideProportions(is_upside_down=is_upside_down), SideChange(-0.2, 0, 5))
    paint_side_view(painter, theme, view, {"rake": DimensionWords("rake: missing", True)})
    painter.end()
    colors = {picture.pixel(x, y) for x in range(0, 520, 2) for y in range(0, 380, 2)}
    assert theme.color("ink").rgb() in colors
    assert theme.color("tube").rgb() in colors
