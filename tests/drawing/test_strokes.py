"""Words in a box of a drawing: at their own size where they go in, smaller where they would not."""

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QFontMetricsF, QImage, QPainter

from aligner.drawing.strokes import words
from aligner.drawing.theme import LIGHT, Theme, TypeSize

THEME = Theme(LIGHT)
OWN = THEME.font(TypeSize.SMALL)


def width_of(text):
    return QFontMetricsF(OWN).horizontalAdvance(text)


def points_in(box, text):
    """The size in which a text is painted in a box."""
    image = QImage(400, 200, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    words(painter, THEME, box, text)
    points = painter.font().pointSizeF()
    painter.end()
    return points


@pytest.mark.usefixtures("qapp")
class TestWords:
    def test_that_go_in_keep_their_size(self):
        box = QRectF(0, 0, width_of("Radstand 1450 mm") + 4, 20)
        assert points_in(box, "Radstand 1450 mm") == OWN.pointSizeF()

    def test_that_wrap_where_there_is_room_keep_their_size(self):
        box = QRectF(0, 0, width_of("top bracket") - 10, 60)
        assert points_in(box, "top bracket") == OWN.pointSizeF()

    def test_with_a_word_too_wide_are_set_smaller(self):
        box = QRectF(0, 0, width_of("Normalnachlauf") * 0.9, 40)
        assert OWN.pointSizeF() * 0.8 < points_in(box, "Normalnachlauf") < OWN.pointSizeF()

    def test_with_a_line_too_many_are_set_smaller(self):
        box = QRectF(0, 0, width_of("Nachlauf 118,0 mm") * 0.9, 20)
        assert points_in(box, "Nachlauf 118,0 mm") < OWN.pointSizeF()

    def test_never_become_too_small_to_read(self):
        assert points_in(QRectF(0, 0, 5, 20), "Gabelbrücke") > OWN.pointSizeF() * 0.6
