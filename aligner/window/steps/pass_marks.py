"""The passes of a clamp as a row of marks, drawn: done, in hand and to come differ in shape."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from aligner.assessment import StepStanding, StepState
from aligner.drawing.theme import Theme, TypeSize
from aligner.language import say
from aligner.window.steps.step_marks import draw_step_mark
from aligner.window.steps.step_words import pass_name, state_words


class PassMarks(QWidget):
    """One box a pass, with its name and its mark; it takes a second row where one is too short."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._passes: tuple[tuple[str, StepState], ...] = ()
        policy = QSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def show_passes(self, mates: tuple[StepStanding, ...]) -> None:
        """Show where each pass of a clamp stands; hidden where there is one only."""
        self._passes = tuple((pass_name(each.step), each.state) for each in mates)
        marks = "; ".join(f"{name}: {state_words(state)}" for name, state in self._passes)
        self.setAccessibleName(say("passes, {marks}", marks=marks) if marks else "")
        self.setVisible(bool(self._passes))
        self.updateGeometry()
        self.update()

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        boxes = self._boxes(width)
        return round(boxes[-1].bottom()) + 2 if boxes else 0

    def sizeHint(self) -> QSize:
        return QSize(self._theme.px(300), self.heightForWidth(max(self.width(), 200)))

    def minimumSizeHint(self) -> QSize:
        return QSize(self._theme.px(120), self.heightForWidth(max(self.width(), 200)))

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = self._theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        mark = theme.px(7)
        boxes = self._boxes(self.width())
        for box, (name, state) in zip(boxes, self._passes, strict=True):
            is_next = state is StepState.NEXT
            is_done = state is StepState.DONE
            painter.setBrush(theme.color("accent_soft") if is_done else Qt.BrushStyle.NoBrush)
            edge = theme.color("accent" if is_next else "line")
            painter.setPen(QPen(edge, 2 if is_next else 1))
            painter.drawRoundedRect(box, 5, 5)
            middle = QPointF(box.left() + theme.px(15), box.center().y())
            draw_step_mark(painter, theme, state, middle, mark)
            painter.setFont(theme.font(TypeSize.SMALL, bold=is_next))
            painter.setPen(theme.color("quiet" if state is StepState.LATER else "ink"))
            text = box.adjusted(theme.px(29), 0, 0, 0)
            painter.drawText(text, Qt.AlignmentFlag.AlignVCenter, name)

    def _boxes(self, width: int) -> list[QRectF]:
        theme = self._theme
        metrics = QFontMetricsF(theme.font(TypeSize.SMALL, bold=True))
        height, gap = theme.px(32), theme.px(6)
        boxes: list[QRectF] = []
        x, y = 1.0, 1.0
        for name, _ in self._passes:
            wide = metrics.horizontalAdvance(name) + theme.px(38)
            if x > 1.0 and x + wide > width - 1:
                x, y = 1.0, y + height + gap
            boxes.append(QRectF(x, y, wide, height))
            x += wide + gap
        return boxes

    def resizeEvent(self, event: object) -> None:
        self.updateGeometry()

    def boxes(self) -> list[QRect]:
        """Where the marks stand, in pixels."""
        return [box.toRect() for box in self._boxes(self.width())]
