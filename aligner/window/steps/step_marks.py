"""The marks of steps, told apart by shape.

A disc is a step, a square a hold point; filled with a tick it is done, half filled in hand,
empty to come.
"""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from aligner.assessment import StageState, StepState
from aligner.drawing.theme import Theme
from aligner.window.stage_list import draw_mark, draw_tick

_AS_STAGE = {
    StepState.DONE: StageState.DONE,
    StepState.NEXT: StageState.IN_HAND,
    StepState.LATER: StageState.OPEN,
}


def draw_step_mark(
    painter: QPainter,
    theme: Theme,
    state: StepState,
    middle: QPointF,
    radius: float,
    *,
    is_hold: bool = False,
) -> None:
    """The mark of one step at a place."""
    if not is_hold:
        draw_mark(painter, theme, _AS_STAGE[state], middle, radius)
        return
    box = QRectF(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius)
    accent = theme.color("accent")
    if state is StepState.DONE:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(accent)
        painter.drawRect(box)
        draw_tick(painter, middle, radius, theme.color("on_accent"))
        return
    is_next = state is StepState.NEXT
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(accent if is_next else theme.color("ink"), 2 if is_next else 1.5))
    painter.drawRect(box)
    if is_next:
        half = QRectF(middle.x(), box.top(), radius, box.height())
        painter.fillRect(half, accent)
