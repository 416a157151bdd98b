"""Nothing that is drawn lies under a box of readings: no part, no arrow, no word.

The card is painted without its boxes; where they stand, only the card's own ground may be.
"""

import pytest
from PySide6.QtCore import QPoint, QRect
from PySide6.QtGui import QImage, QRegion
from PySide6.QtWidgets import QApplication, QWidget

from aligner.assessment import assess
from aligner.data_files import demo
from aligner.drawing.theme import Appearance, scale_to_fit, theme_for
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred
from aligner.window.align.height_card import HeightCard
from aligner.window.align.square_card import SquareCard
from aligner.window.widgets.style_sheet import style_sheet


def shown(qtbot, kind, name, size, theme):
    card = kind(theme, Preferred())
    card.setStyleSheet(style_sheet(theme))
    qtbot.addWidget(card)
    card.resize(*size)
    card.show()
    job = load_job(demo(f"fellside-{name}.job.json"))[0]
    card.show_job(job, assess(job))
    QApplication.processEvents()
    return card


def drawn_under(card, box: QRect):
    """How many pixels under a box are not the card's ground."""
    image = QImage(card.size(), QImage.Format.Format_RGB32)
    ground = card.theme.color("card")
    image.fill(ground)
    card.render(image, QPoint(), QRegion(), QWidget.RenderFlag.DrawWindowBackground)
    inside = box.adjusted(1, 1, -1, -1)
    return sum(
        image.pixel(x, y) != ground.rgb()
        for x in range(inside.left(), inside.right() + 1)
        for y in range(inside.top(), inside.bottom() + 1)
    )


LARGE, SMALL = (1.0, 546, 496), (0.75, 402, 370)
SQUARE_LARGE, SQUARE_SMALL = (1.0, 496, 324), (0.75, 366, 246)


@pytest.mark.parametrize("name", ["left-leg-high", "unsettled", "true"])
@pytest.mark.parametrize("size", [LARGE, SMALL], ids=["large", "small"])
def test_the_front_elevation_stays_clear_of_the_boxes(qtbot, name, size):
    theme = theme_for(Appearance.LIGHT, scale_to_fit(960, 540) if size is SMALL else 1.0)
    card = shown(qtbot, HeightCard, name, size[1:], theme)
    for box in card.boxes.values():
        assert drawn_under(card, box.geometry()) == 0


@pytest.mark.parametrize("name", ["left-leg-high", "unsettled", "pairs-disagree"])
@pytest.mark.parametrize("size", [SQUARE_LARGE, SQUARE_SMALL], ids=["large", "small"])
def test_the_plan_view_stays_clear_of_the_boxes(qtbot, name, size):
    theme = theme_for(Appearance.DARK, scale_to_fit(960, 540) if size is SQUARE_SMALL else 1.0)
    card = shown(qtbot, SquareCard, name, size[1:], theme)
    for box in (*card.boxes.values(), card.pair_choice):
        if box.isVisible():
            assert drawn_under(card, box.geometry()) == 0


def test_a_refusal_that_makes_a_box_grow_moves_the_drawing_out_of_its_way(qtbot):
    card = shown(qtbot, HeightCard, "left-leg-high", LARGE[1:], theme_for(Appearance.LIGHT))
    box = card.boxes["left"]
    before = box.height()
    qtbot.keyClicks(box.cells[2], "x")
    QApplication.processEvents()
    assert box.height() > before
    assert drawn_under(card, box.geometry()) == 0
