"""One of a few, chosen from a list of words.

Three traps. On Linux the name of a drop-down list is what is chosen in it; what is asked is only
told through a label that belongs to it, so the name stands in such a label, which is not shown.
The wheel over a list would change it unseen while the page is scrolled. And Qt makes plain text of
an enumeration that it holds, so the values are held here.
"""

from __future__ import annotations

from collections.abc import Container, Iterable

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPaintEvent, QStandardItemModel, QWheelEvent
from PySide6.QtWidgets import (
    QComboBox,
    QLabel,
    QStyle,
    QStyleOptionComboBox,
    QStylePainter,
)

#: What is chosen, and its words.
Row = tuple[object, str]


class Choice(QComboBox):
    """A drop-down list of values in words; the wheel passes over it, and Enter goes on.

    Signals:
        chosen: the value that a person took.
        went_on: Enter was pressed.
    """

    chosen = Signal(object)
    went_on = Signal()

    def __init__(self, name: str, rows: Iterable[Row] = (), *, letters: int | None = None) -> None:
        """Make a choice; nothing is chosen yet.

        Args:
            name: what is asked, for screen readers.
            rows: what there is to choose from.
            letters: how many it has room for at least, longer words ending in dots; room for
                the longest words if left out.
        """
        super().__init__()
        self._spoken = QLabel()
        self._spoken.setBuddy(self)
        self._spoken.hide()
        self.destroyed.connect(self._spoken.deleteLater)
        self.setAccessibleName(name)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        if letters is not None:
            narrow = QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            self.setSizeAdjustPolicy(narrow)
            self.setMinimumContentsLength(letters)
        self._values: list[object] = []
        self._offered: list[tuple[str, bool]] = []
        self.offer(rows)
        self.activated.connect(lambda _: self._take())

    @property
    def value(self) -> object:
        """What is chosen now; `None` where nothing is."""
        place = self.currentIndex()
        return self._values[place] if 0 <= place < len(self._values) else None

    def offer(self, rows: Iterable[Row], closed: Container[object] = ()) -> None:
        """Offer these; what is shown stays where it is still among them.

        Args:
            rows: each value and its words.
            closed: the values that can be read in the list and not be taken.
        """
        listed = list(rows)
        offered = [(words, value in closed) for value, words in listed]
        shown, self._values = self.value, [value for value, _ in listed]
        if offered == self._offered:
            return
        self._offered = offered
        self.clear()
        model = self.model()
        for place, (words, is_closed) in enumerate(offered):
            self.addItem(words)
            if isinstance(model, QStandardItemModel):
                model.item(place).setEnabled(not is_closed)
        self._show(shown)

    def show_value(self, value: object) -> None:
        """Show a value without taking it; nothing is chosen where it is not offered."""
        self._show(value)

    def setAccessibleName(self, name: str) -> None:
        """Give it a name."""
        super().setAccessibleName(name)
        self._spoken.setText(name.replace("&", "&&"))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.went_on.emit()
        else:
            super().keyPressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Leave the choice alone: a wheel turned over it is meant for the page."""
        event.ignore()

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

    def _show(self, value: object) -> None:
        place = self._values.index(value) if value in self._values else -1
        if self.currentIndex() != place:
            self.setCurrentIndex(place)

    def _take(self) -> None:
        self.chosen.emit(self.value)
