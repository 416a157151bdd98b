"""A box to tick, by Space or by Enter."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QCheckBox, QStyle, QStyleOptionButton


class Tick(QCheckBox):
    """A box that Space or Enter ticks; a mark stands in it, for colour alone says nothing."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Tick by Enter as by Space."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.isAutoRepeat():
            self.click()
        else:
            super().keyPressEvent(event)

    def hitButton(self, place: QPoint) -> bool:
        """All of it ticks, as far as the ring round it reaches, not its words alone."""
        return self.rect().contains(place)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A double click counts once, or it would take its own tick back."""
        event.accept()

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if not self.isChecked():
            return
        option = QStyleOptionButton()
        self.initStyleOption(option)
        box = QRectF(
            self.style().subElementRect(QStyle.SubElement.SE_CheckBoxIndicator, option, self)
        )
        mark = [(0.24, 0.52), (0.43, 0.71), (0.77, 0.31)]
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self.palette().highlightedText(), box.width() / 9))
        painter.drawPolyline(
            [QPointF(box.x() + x * box.width(), box.y() + y * box.height()) for x, y in mark]
        )
