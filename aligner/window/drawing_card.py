"""A card that holds a drawing, with the boxes that stand on it."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QFrame, QWidget

from aligner.drawing.strokes import words
from aligner.drawing.theme import Theme, TypeSize


class DrawingCard(QFrame):
    """A card with a title, a note at its right, and a painted picture under both.

    Subclasses paint in `paint_picture` and put their boxes in `place_boxes`; they hold no
    rules and no numbers of their own.
    """

    def __init__(self, theme: Theme, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.theme = theme
        self._title = title
        self._note = ""
        self.setAccessibleName(title)

    def set_theme(self, theme: Theme) -> None:
        """Draw in another theme from now on."""
        self.theme = theme
        self.place_boxes()
        self.update()

    def say_note(self, note: str) -> None:
        """Set the words at the card's upper right."""
        self._note = note

    def head_height(self) -> int:
        """Height of the line with title and note, in pixels."""
        return self.theme.px(34)

    def room(self) -> QRectF:
        """Where the picture may be, in pixels."""
        edge = self.theme.px(14)
        return QRectF(self.rect()).adjusted(edge, self.head_height(), -edge, -edge)

    def paint_picture(self, painter: QPainter) -> None:
        """Paint what stands under the title."""

    def place_boxes(self) -> None:
        """Put the boxes where they stand on the picture."""

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.place_boxes()

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        head = QRectF(self.rect()).adjusted(16, 6, -16, 0)
        head.setHeight(self.head_height() - 6)
        words(painter, self.theme, head, self._title, size=TypeSize.TEXT, bold=True)
        title = painter.fontMetrics().horizontalAdvance(self._title)
        beside = head.adjusted(title + 12, 0, 0, 0)
        words(
            painter, self.theme, beside, self._note, role="quiet", align=Qt.AlignmentFlag.AlignRight
        )
        self.paint_picture(painter)
