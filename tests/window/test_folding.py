"""Rows that fold, wrap and scroll: where their parts stand at a width.

The expected places follow from the widths given here; there is nothing outside to check against.
"""

import pytest
from PySide6.QtWidgets import QApplication, QListWidget, QPushButton, QVBoxLayout, QWidget

from aligner.drawing.theme import Theme
from aligner.window.widgets.folding_grid import FoldingGrid
from aligner.window.widgets.folding_row import FoldingRow
from aligner.window.widgets.part_stack import PartStack
from aligner.window.widgets.whole_scroller import WholeScroller
from aligner.window.widgets.wrapping_row import WrappingRow


def box(width, height=40):
    made = QWidget()
    made.setMinimumSize(width, height)
    return made


def shown(qtbot, widget, width, height=400):
    """The widget at this size, in a window that does not lay it out."""
    window = QWidget()
    qtbot.addWidget(window)
    widget.setParent(window)
    widget.resize(width, height)
    window.show()
    widget.show()
    widget.holder = window  # kept as long as the widget is
    settle()
    return widget


def settle():
    for _ in range(3):
        QApplication.sendPostedEvents()
        QApplication.processEvents()


@pytest.mark.parametrize(
    ("scale", "width", "is_folded"),
    [(1.0, 600, False), (1.0, 599, True), (2.0, 1200, False), (2.0, 1199, True)],
)
def test_a_row_folds_below_the_width_it_wants_at_its_text_size(qtbot, scale, width, is_folded):
    row = FoldingRow(Theme(text_scale=scale), wanted=600)
    for _ in range(2):
        row.add(box(100))
    assert shown(qtbot, row, width).is_folded is is_folded


def test_a_row_folds_where_its_parts_do_not_fit_and_is_never_wider_than_the_widest(qtbot):
    row = FoldingRow(Theme(), wanted=0, spacing=10)
    parts = [box(200), box(300)]
    for part in parts:
        row.add(part)
    shown(qtbot, row, 509)
    assert row.minimumSizeHint().width() == 300
    assert parts[1].y() >= parts[0].geometry().bottom()
    row.resize(510, 400)
    settle()
    assert parts[1].x() == parts[0].width() + 10
    assert parts[0].y() == parts[1].y()


def test_the_last_part_comes_first_where_that_is_asked(qtbot):
    row = FoldingRow(Theme(), last_on_top=True)
    parts = [QListWidget(), box(100)]
    for part in parts:
        row.add(part)
    shown(qtbot, row, 300)
    assert parts[1].y() < parts[0].y()


def test_a_folded_part_that_scrolls_is_shown_whole(qtbot):
    scroller = WholeScroller()
    scroller.setWidget(box(100, 700))
    row = FoldingRow(Theme())
    for part in (scroller, box(100)):
        row.add(part)
    shown(qtbot, row, 300)
    assert row.minimumSizeHint().height() >= 740
    row.resize(900, 400)
    settle()
    assert row.minimumSizeHint().height() < 400


def test_buttons_that_do_not_fit_go_below_and_the_last_stays_at_the_right(qtbot):
    page = QWidget()
    row = WrappingRow(page, spacing=10)
    first, second, last = box(100), box(100), box(80)
    row.add(first)
    row.add(second)
    row.add_room()
    row.add(last)
    shown(qtbot, page, 400)
    assert (first.x(), second.x(), last.geometry().right() + 1) == (0, 110, 400)
    assert row.heightForWidth(300) == 40
    assert row.heightForWidth(299) == 90
    page.resize(299, 400)
    settle()
    assert (second.y(), last.y(), last.geometry().right() + 1) == (0, 50, 299)


def test_a_wrapping_row_is_as_narrow_as_its_widest_button_and_hidden_ones_take_no_room(qtbot):
    page = QWidget()
    row = WrappingRow(page, spacing=10)
    hidden, seen = QPushButton("a long button that is not wanted now"), box(90)
    row.add(hidden)
    row.add(seen)
    hidden.hide()
    shown(qtbot, page, 400)
    assert row.minimumSize().width() == 90
    assert seen.x() == 0


@pytest.mark.parametrize(("width", "columns"), [(424, 3), (423, 2), (280, 2), (279, 1)])
def test_a_grid_has_as_many_columns_as_fit(qtbot, width, columns):
    grid = FoldingGrid(Theme(), 3, spacing=8, least=136)
    parts = [box(20) for _ in range(4)]
    for part in parts:
        grid.add(part)
    shown(qtbot, grid, width)
    assert len({part.x() for part in parts}) == columns


def test_a_part_that_is_not_shown_takes_no_room(qtbot):
    stack = PartStack()
    low, high = box(10, 50), box(10, 900)
    stack.addWidget(low)
    stack.addWidget(high)
    page = QWidget()
    QVBoxLayout(page).addWidget(stack)
    shown(qtbot, page, 200)
    assert stack.currentWidget() is low
    assert stack.minimumSizeHint().height() == 50
    stack.setCurrentWidget(high)
    settle()
    assert stack.minimumSizeHint().height() == 900
    assert not low.isVisible()
