"""A drawing is painted when what it shows is another than it was, and only then."""

import pytest
from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from aligner.assessment import Stage


class Paints(QObject):
    """Counts how often a widget is painted."""

    def __init__(self, widget):
        super().__init__()
        self.count = 0
        widget.installEventFilter(self)

    def eventFilter(self, _watched, event):
        self.count += event.type() == QEvent.Type.Paint
        return False


@pytest.fixture
def page(window):
    window.go_to(Stage.ALIGN)
    settle()
    return window.page(Stage.ALIGN)


def settle():
    """Until everything that waits to be painted is painted."""
    for _ in range(3):
        QApplication.sendPostedEvents()
        QApplication.processEvents()


def test_a_height_typed_paints_the_legs_anew_and_leaves_the_bracket_alone(page, qtbot):
    cell = page.height_card.boxes["left"].first_cell
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, "6")
    settle()
    legs, bracket = Paints(page.height_card), Paints(page.square_card)

    qtbot.keyClicks(cell, ".9")
    settle()

    assert legs.count > 0
    assert bracket.count == 0


def test_a_distance_typed_paints_the_bracket_anew(page, qtbot):
    cell = page.square_card.boxes["left"].first_cell
    cell.setFocus()
    cell.selectAll()
    bracket = Paints(page.square_card)

    qtbot.keyClicks(cell, "182.4")
    settle()

    assert bracket.count > 0


def test_another_dimension_on_the_sheet_paints_both_anew(window, page):
    legs, bracket = Paints(page.height_card), Paints(page.square_card)
    job = window.open_job.job
    fork = job.sheet.fork.with_changes(leg_spacing=type(job.sheet.fork.leg_spacing).typed("240 mm"))

    window.open_job.edit(
        "leg spacing", lambda job: job.with_changes(sheet=job.sheet.with_changes(fork=fork))
    )
    settle()

    assert legs.count > 0
    assert bracket.count > 0


def as_image(picture):
    return picture.toImage().convertToFormat(QImage.Format.Format_RGB32)


def test_a_height_typed_leaves_the_box_of_the_other_leg_alone(page, qtbot):
    cell = page.height_card.boxes["left"].first_cell
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, "6.9")
    settle()
    other = Paints(page.height_card.boxes["right"].first_cell)

    qtbot.keyClicks(cell, "1")
    settle()

    assert other.count == 0


@pytest.mark.parametrize("card", ["height_card", "square_card"])
def test_what_stands_on_the_screen_is_what_a_whole_painting_gives(window, page, qtbot, card):
    """What is not painted anew with a drawing was right before, whatever was typed."""
    cell = getattr(page, card).boxes["left"].first_cell
    cell.setFocus()
    cell.selectAll()

    for key in "6.9x":
        qtbot.keyClicks(cell, key)
        settle()
        on_the_screen = as_image(window.screen().grabWindow(window.winId()))
        assert on_the_screen == as_image(window.grab())
