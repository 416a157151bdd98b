"""The card that shows what unlike air gaps do to the two legs near full stroke."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter

from aligner.assessment.build_force import ForceAssessment
from aligner.drawing.force_plot import ForcePoint, paint_force_plot
from aligner.drawing.strokes import words
from aligner.drawing.theme import Theme, TypeSize
from aligner.language import say
from aligner.window.build.results import force_words
from aligner.window.widgets.drawing_card import DrawingCard


class ForceCard(DrawingCard):
    """Both legs' air-spring force over the travel, and the difference in words."""

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme, say("Air force of both legs, fast stroke"))
        self._points: tuple[ForcePoint, ...] = ()
        self._said = ""
        self.setMinimumHeight(theme.px(280))

    def show_force(self, found: ForceAssessment) -> None:
        """Show the forces."""
        self._points = tuple(
            ForcePoint(point.stroke_mm, point.left_n, point.right_n) for point in found.points
        )
        self._said = force_words(found)
        self.setAccessibleDescription(self._said)
        self.update()

    def paint_picture(self, painter: QPainter) -> None:
        room = self.room()
        if not self._points:
            middle = QRectF(room).adjusted(self.theme.px(20), 0, -self.theme.px(20), 0)
            words(painter, self.theme, middle, self._said, size=TypeSize.TEXT)
            return
        said = self.theme.px(62)
        paint_force_plot(painter, self.theme, room.adjusted(0, 0, 0, -said), self._points)
        under = QRectF(room.left(), room.bottom() - said, room.width(), said)
        words(
            painter,
            self.theme,
            under,
            self._said,
            size=TypeSize.TEXT,
            align=Qt.AlignmentFlag.AlignLeft,
        )
