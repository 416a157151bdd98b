"""A drop-down list whose name a screen reader gets on every desktop.

The trap: on Linux the name of a drop-down list is what is chosen in it; what is asked is only
told through a label that belongs to it. So the name stands in such a label, which is not shown.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import (
    QComboBox,
    QLabel,
    QStyle,
    QStyleOptionComboBox,
    QStylePainter,
)


class SpokenChoice(QComboBox):
    """A drop-down list with a label for screen readers beside it in the tree of widgets."""

    def __init__(self) -> None:
        super().__init__()
        self._spoken = QLabel()
        self._spoken.setBuddy(self)
        self._spoken.hide()
        self.destroyed.connect(self._spoken.deleteLater)

    def setAccessibleName(self, name: str) -> None:
        """Give it a name."""
        super().setAccessibleName(name)
        self._spoken.setText(name.replace("&", "&&"))

    def paintEvent(self, event: QPaintEvent) -> None:
        """What is too long for the room ends in dots, not in half a letter."""
        painter = QStylePainter(self)
        option = QStyleOptionComboBox()
        self.initStyleOption(option)
        if self.currentIndex() < 0:  # Qt itself shows it only where it paints the choice
            option.currentText = self.placeholderText()
        style = QStyle.SubControl.SC_ComboBoxEditField
        room = self.style().subControlRect(QStyle.ComplexControl.CC_ComboBox, option, style, self)
        end = Qt.TextElideMode.ElideRight
        option.currentText = self.fontMetrics().elidedText(option.currentText, end, room.width())
        painter.drawComplexControl(QStyle.ComplexControl.CC_ComboBox, option)
        painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ParentChange:
            self._spoken.setParent(self.parentWidget())
        return super().event(event)
