"""A picture finds the largest place that no box of readings lies over."""

from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QRectF

from aligner.drawing.clear_room import clear_room

ROOM = QRectF(10, 20, 500, 400)


def test_without_boxes_it_is_the_whole_room():
    assert clear_room(ROOM, []) == ROOM
    assert clear_room(ROOM, [QRectF(600, 0, 50, 50)]) == ROOM


def test_between_two_boxes_in_the_upper_corners_it_lies_below_them():
    boxes = [QRectF(10, 20, 176, 70), QRectF(334, 20, 176, 70)]
    assert clear_room(ROOM, boxes, margin=4) == QRectF(10, 94, 500, 326)


def test_beside_two_high_boxes_it_stands_between_them():
    boxes = [QRectF(10, 20, 100, 390), QRectF(410, 20, 100, 390)]
    assert clear_room(ROOM, boxes, margin=0) == QRectF(110, 20, 300, 400)


def test_where_all_is_covered_it_is_empty():
    assert clear_room(ROOM, [QRectF(0, 0, 1000, 1000)]).isEmpty()


boxes = st.builds(
    QRectF, st.integers(0, 450), st.integers(0, 380), st.integers(1, 300), st.integers(1, 200)
)


@given(st.lists(boxes, max_size=4))
def test_no_box_reaches_into_it(boxes):
    found = clear_room(ROOM, boxes, margin=0)
    assert ROOM.contains(found) or found.isEmpty()
    for box in boxes:
        shared = box & found
        assert shared.width() <= 1e-9 or shared.height() <= 1e-9
