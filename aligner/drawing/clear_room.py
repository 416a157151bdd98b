"""Where a picture may stand so that no box of readings lies over it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRectF


def clear_room(room: QRectF, boxes: Sequence[QRectF], margin: float = 6.0) -> QRectF:
    """The largest upright rectangle of a room that no box reaches into.

    Args:
        room: in pixels.
        boxes: that stand on the card, wherever they are.
        margin: kept between the picture and a box, in pixels.

    Returns:
        The room itself where no box lies in it; an empty rectangle where all of it is covered.
    """
    kept = [box.adjusted(-margin, -margin, margin, margin) & room for box in boxes]
    kept = [box for box in kept if not box.isEmpty()]
    lefts = sorted({room.left(), *(box.right() for box in kept)})
    rights = sorted({room.right(), *(box.left() for box in kept)})
    tops = sorted({room.top(), *(box.bottom() for box in kept)})
    bottoms = sorted({room.bottom(), *(box.top() for box in kept)})
    largest = QRectF()
    for left in lefts:
        for right in (edge for edge in rights if edge > left):
            for top in tops:
                for bottom in (edge for edge in bottoms if edge > top):
                    found = QRectF(left, top, right - left, bottom - top)
                    area = found.width() * found.height()
                    if area <= largest.width() * largest.height():
                        continue
                    if not any(_overlap(found, box) for box in kept):
                        largest = found
    return largest


def _overlap(one: QRectF, other: QRectF) -> bool:
    """Whether they share more than an edge."""
    shared = one & other
    return shared.width() > 1e-9 and shared.height() > 1e-9
