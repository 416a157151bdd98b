"""The drawing on the job card: the legs as they were left, with their heights beside them."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter

from aligner.assessment import Assessment
from aligner.drawing.front_elevation import (
    exaggeration,
    front_elevation,
    paint_front_elevation,
)
from aligner.drawing.proportions import front_proportions
from aligner.drawing.theme import Theme
from aligner.language import say
from aligner.report.card_rows import with_uncertainty
from aligner.report.page_text import picture_font
from aligner.units.preferred import Preferred

_WORDS_HEIGHT = 14.0
_TO_THE_TABLE = 18.0  # of the room between the drawing and the table, in pixels


def paint_front(painter: QPainter, box: QRectF, assessment: Assessment, show: Preferred) -> None:
    """Paint the front elevation and its words into a box given in pixels of 96 an inch."""
    theme = Theme()
    found = assessment.protrusion
    left = found.left.value_mm if found.left else None
    right = found.right.value_mm if found.right else None
    spread = _spread(assessment)
    painter.setFont(picture_font())
    caption = _caption(left, right, spread)
    # No wider than to the table at its right.
    foot = box.adjusted(0, box.height() / 2, _TO_THE_TABLE, -1)
    flags = int(Qt.AlignmentFlag.AlignBottom | Qt.TextFlag.TextWordWrap)
    foot_height = painter.boundingRect(foot, flags, caption).height()
    below = max(2.2 * _WORDS_HEIGHT, foot_height + 1.2 * _WORDS_HEIGHT)
    room = box.adjusted(0, _WORDS_HEIGHT, 0, -below)
    picture = front_elevation(room, front_proportions(assessment.job), left, right, spread)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    paint_front_elevation(painter, theme, picture)
    painter.setFont(picture_font())
    painter.setPen(theme.color("ink"))
    words_left = say("left {height}", height=with_uncertainty(found.left, show))
    words_right = say("right {height}", height=with_uncertainty(found.right, show))
    for text, tube in ((words_left, picture.left_tube), (words_right, picture.right_tube)):
        width = painter.fontMetrics().horizontalAdvance(text)
        middle = picture.left_tube.center().x() / 2 + picture.right_tube.center().x() / 2
        is_left = tube.center().x() < middle
        # Towards the outside, so that two long ones do not meet in the middle.
        place = (
            min(tube.center().x() - width / 2, middle - width - 6)
            if is_left
            else max(tube.center().x() - width / 2, middle + 6)
        )
        painter.drawText(int(place), int(box.top() + _WORDS_HEIGHT - 5), text)
    painter.drawText(foot, flags, caption)


def _spread(assessment: Assessment) -> float | None:
    """Expanded uncertainty of the difference, where it is known."""
    judged = assessment.protrusion.difference
    return judged.judgement.expanded_uncertainty if judged else None


def _caption(left: float | None, right: float | None, spread: float | None) -> str:
    factor = exaggeration(left - right, spread) if left is not None and right is not None else 1
    if factor == 1:
        return say("Seen from the seat.")
    return say("Seen from the seat; difference and its ± drawn {factor} times.", factor=factor)
