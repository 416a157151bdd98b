"""A card that holds a drawing, with the boxes that stand on it."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPaintEvent, QRegion, QResizeEvent
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
        self._painted: tuple[object, ...] = ()
        self._least = QSize()
        self.setAccessibleName(title)

    def set_theme(self, theme: Theme) -> None:
        """Draw in another theme from now on."""
        self.theme = theme
        self.place_boxes()
        self.update()

    def say_note(self, note: str) -> None:
        """Set the words at the card's upper right."""
        self._note = note

    def paint_if_other(self, *shown: object) -> None:
        """Paint anew where any of what the picture shows is another than it was.

        Args:
            shown: everything that `paint_picture` paints from, as values.
        """
        painted = (self._title, self._note, *shown)
        if painted != self._painted:
            self._painted = painted
            self.update(self._bare())

    def _bare(self) -> QRegion:
        """The card less the boxes that stand on it, which need not be painted with the picture."""
        bare = QRegion(self.rect())
        for child in self.children():
            if isinstance(child, QWidget) and child.isVisible():
                bare -= child.geometry()
        return bare

    def title_width(self) -> float:
        """Width of the title, in pixels."""
        return QFontMetricsF(self.theme.font(TypeSize.TEXT, bold=True)).horizontalAdvance(
            self._title
        )

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

    def least_size(self) -> QSize:
        """The least size, in pixels, at which nothing on the card lies over anything else."""
        return QSize()

    def ask_for_room(self) -> None:
        """Have the page look again at `least_size`, where it is another than it was."""
        least = self.least_size()
        if least != self._least:
            self._least = least
            self.updateGeometry()

    def minimumSizeHint(self) -> QSize:
        return self.least_size()

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
