"""The small drawings: each can be painted, keeps to its field, and is used by a guide."""

import pytest
from PySide6.QtCore import QRect, QRectF
from PySide6.QtGui import QImage, QPainter

from aligner.drawing.measuring_sketch import paint_sketch, sketches
from aligner.drawing.theme import Appearance, theme_for
from aligner.window.measuring.guides import guides

NAMES = sorted(sketches())
ROOM = QRect(60, 40, 360, 240)


def painted(name, appearance):
    theme = theme_for(appearance)
    picture = QImage(480, 320, QImage.Format.Format_RGB32)
    picture.fill(theme.color("card"))
    painter = QPainter(picture)
    paint_sketch(painter, theme, QRectF(ROOM), name)
    painter.end()
    return picture, theme.color("card").rgb()


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("appearance", [Appearance.LIGHT, Appearance.DARK])
def test_a_drawing_is_seen_and_keeps_to_its_room(name, appearance):
    picture, ground = painted(name, appearance)
    marked = [
        (x, y)
        for x in range(0, picture.width(), 2)
        for y in range(0, picture.height(), 2)
        if picture.pixel(x, y) != ground
    ]
    assert len(marked) > 300
    assert all(ROOM.contains(x, y) for x, y in marked)


def test_every_drawing_belongs_to_a_guide_and_every_guide_has_one():
    assert {guide.sketch for guide in guides().values()} == set(NAMES)


def shapes(name, kind):
    return [given for each, *given in sketches()[name] if each == kind]


def test_the_wheel_touches_the_ground_behind_the_steering_axis():
    (from_x, _, to_x, _) = shapes("rake", "push")[0]
    (axis_on_the_ground_x, *_) = shapes("rake", "axis")[0]
    (_, wheel_x, _, _) = shapes("rake", "disc")[0]
    assert to_x < from_x, "ahead is to the left"
    assert wheel_x > axis_on_the_ground_x


def test_the_axle_offset_goes_from_the_steering_axis_to_the_axle():
    (from_x, _, to_x, _) = shapes("axle_offset", "size")[0]
    (_, axle_x, _, _) = shapes("axle_offset", "disc")[-1]
    (axis_x, *_) = shapes("axle_offset", "axis")[0]
    assert {from_x, to_x} == {axle_x, axis_x}


def test_the_lower_bar_is_drawn_ahead_where_that_reads_plus():
    upper, lower = shapes("bars", "disc")
    assert lower[1] < upper[1]
