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
