"""Boxes in columns, fewer of them where the page is too narrow for all.

The trap: a box that is squeezed still takes the keyboard, but what was typed in it cannot be read.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from aligner.drawing.theme import GAP, Theme

#: The least width of a column, at 100 % text.
_LEAST = 130


class FoldingGrid(QWidget):
    """Things side by side in columns of one width, in the order in which they were added."""

    def __init__(
        self, theme: Theme, columns: int, *, spacing: int = GAP, least: int = _LEAST
    ) -> None:
        """Make an empty grid.

        Args:
            theme: sizes.
            columns: how many there are at most.
            spacing: between the columns, in pixels.
            least: width of a column in pixels at 100 % text.
        """
        super().__init__()
        self._theme = theme
        self._least = least
        self._most = columns
        self._columns = columns
        self._parts: list[tuple[QWidget, int]] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setSpacing(spacing)

    def add(self, part: QWidget, wide: int = 1) -> None:
        """Put something after the others.

        Args:
            part: what stands there.
            wide: over how many columns, where there are as many.
        """
        self._parts.append((part, wide))
        self._place()

    def minimumSizeHint(self) -> QSize:
        """As narrow as its widest part: there is one column before that is cut off."""
        return QSize(self._widest(), super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fold_where_narrow()

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.LayoutRequest:  # a part wants another width
            self._fold_where_narrow()
        return super().event(event)

    def _fold_where_narrow(self) -> None:
        gap = self._grid.horizontalSpacing()
        least = max(self._theme.px(self._least), self._widest())
        columns = min(max((self.width() + gap) // (least + gap), 1), self._most)
        if columns != self._columns:
            self._columns = columns
            self._place()

    def _widest(self) -> int:
        one_wide = (part for part, wide in self._parts if wide == 1)
        least = (part.minimumSizeHint().expandedTo(part.minimumSize()) for part in one_wide)
        return max((size.width() for size in least), default=0)

    def _place(self) -> None:
        place = 0
        for part, wide in self._parts:
            wide = min(wide, self._columns)
            if place % self._columns + wide > self._columns:
                place += self._columns - place % self._columns
            self._grid.removeWidget(part)
            row, column = divmod(place, self._columns)
            self._grid.addWidget(part, row, column, 1, wide, Qt.AlignmentFlag.AlignTop)
            place += wide
        for column in range(self._most):
            self._grid.setColumnStretch(column, 1 if column < self._columns else 0)


def titled(title: QLabel, part: QWidget) -> QWidget:
    """A part with its title above it."""
    made = QWidget()
    column = QVBoxLayout(made)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(4)
    column.addWidget(title)
    column.addWidget(part)
    return made
