"""The section through both legs: levels where they belong, and drawn without a stray mark."""

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from aligner.drawing.leg_section import (
    leg_sections,
    level_factor,
    paint_gap,
    paint_leg_sections,
    paint_suction_dimension,
)
from aligner.drawing.theme import Theme

ROOM = QRectF(20, 30, 300, 400)


def test_more_gap_stands_lower_and_less_gap_higher_than_wanted():
    made = leg_sections(ROOM, 221.0, (209.0, 226.0))
    assert made.left.oil_y < made.wanted_y < made.right.oil_y


def test_a_deviation_is_drawn_larger_by_the_factor_that_is_said():
    made = leg_sections(ROOM, 221.0, (220.0, 221.0))
    per_mm = (made.wanted_y - ROOM.top()) / 221.0
    assert made.factor == 10
    assert made.wanted_y - made.left.oil_y == pytest.approx(10 * per_mm)
    assert made.right.oil_y == pytest.approx(made.wanted_y)


@pytest.mark.parametrize(
    ("gaps", "wanted"),
    [((None, None), None), ((0.0, 900.0), 221.0), ((5.0, None), None), ((1.0, 2.0), 9000.0)],
    ids=["nothing known", "far out", "one read, none wanted", "a slip on the sheet"],
)
def test_the_levels_stay_in_the_picture(gaps, wanted):
    made = leg_sections(ROOM, wanted, gaps)
    for leg in (made.left, made.right):
        assert ROOM.top() <= leg.oil_y <= ROOM.bottom()
        assert ROOM.left() <= leg.slider.left()
        assert leg.slider.right() <= ROOM.right()
    assert made.left.slider.right() < made.right.slider.left()


def test_nothing_off_is_drawn_as_it_is():
    assert level_factor((None, None), 221.0) == 1
    assert level_factor((0.0, 0.0), 221.0) == 1


def test_the_section_is_painted_within_the_image_and_leaves_the_margin_blank(application):
    theme = Theme()
    image = QImage(360, 480, QImage.Format.Format_RGB32)
    image.fill(theme.color("card"))
    painter = QPainter(image)
    made = leg_sections(ROOM, 221.0, (209.0, 226.0))
    paint_leg_sections(painter, theme, made)
    paint_gap(painter, theme, made.left, to_the_left=True)
    paint_gap(painter, theme, made.right, to_the_left=False)
    paint_suction_dimension(painter, theme, made, "suction tube 221.0 mm")
    painter.end()
    middle = image.pixelColor(int(made.left.bore.center().x()) + 6, int(made.left.oil_y) + 30)
    assert middle == theme.color("accent_soft")  # oil under the level
    above = image.pixelColor(int(made.left.bore.left()) + 4, int(made.left.oil_y) - 20)
    assert above == theme.color("card")  # air over it
    assert all(image.pixelColor(x, 475) == theme.color("card") for x in range(360))
