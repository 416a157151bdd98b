"""A strip that shows a deviation with its uncertainty against what is allowed."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from aligner.drawing.theme import Theme


@dataclass(frozen=True)
class StripPicture:
    """What the strip shows, all in one unit.

    Attributes:
        value: the deviation; positive lies to the left, where the left leg is high.
        expanded_uncertainty: half the whisker's length; `None` if unknown.
        tolerance: half the width of the band.
        is_out: whether the verdict is out.
    """

    value: float
    expanded_uncertainty: float | None
    tolerance: float
    is_out: bool


def paint_strip(painter: QPainter, theme: Theme, box: QRectF, picture: StripPicture) -> None:
    """Paint the band, the middle, and the mark with its whisker.

    The mark is a disc where it is within or unsettled and a square where it is out, so that
    the colour says nothing alone.
    """
    reach = max(
        3.0 * picture.tolerance,
        1.25 * (abs(picture.value) + (picture.expanded_uncertainty or 0.0)),
        1e-9,
    )
    per_unit = box.width() / 2 / reach
    middle = box.center()
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme.color("side"))
    painter.drawRoundedRect(box, 3, 3)
    band = picture.tolerance * per_unit
    painter.setBrush(theme.color("accent_soft"))
    painter.drawRect(QRectF(middle.x() - band, box.top(), 2 * band, box.height()))
    painter.setPen(QPen(theme.color("ink"), 1))
    painter.drawLine(QPointF(middle.x(), box.top() - 4), QPointF(middle.x(), box.bottom() + 4))
    color = theme.color("attention" if picture.is_out else "accent")
    x = middle.x() - picture.value * per_unit
    painter.setPen(QPen(color, 3))
    if picture.expanded_uncertainty is not None:
        half = max(picture.expanded_uncertainty * per_unit, 2.0)
        painter.drawLine(QPointF(x - half, middle.y()), QPointF(x + half, middle.y()))
        painter.setPen(QPen(color, 1.6))
        for end in (x - half, x + half):
            painter.drawLine(QPointF(end, middle.y() - 5), QPointF(end, middle.y() + 5))
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(color)
    if picture.is_out:
        painter.drawRect(QRectF(x - 5.5, middle.y() - 5.5, 11, 11))
    else:
        painter.drawEllipse(QPointF(x, middle.y()), 5.5, 5.5)
