"""A part of a page that scrolls by itself where it is low, or is whole where the page scrolls.

The trap: a scrolling part within a scrolling page hides what it holds twice over.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget


class FlowingContent(QWidget):
    """What a scroller holds, as high as its lines need at the width it has, and no higher.

    The trap: Qt takes the height at the least width for the least height. Lines break far more
    often there, so that a wide page would scroll on into an empty part.
    """

    def minimumSizeHint(self) -> QSize:
        least = super().minimumSizeHint()
        return QSize(least.width(), 0) if self.hasHeightForWidth() else least


class WholeScroller(QScrollArea):
    """A scroll area without a frame that never scrolls sideways."""

    def __init__(self) -> None:
        super().__init__()
        self._is_whole = False
        self._least = QSize()
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    def show_whole(self, is_whole: bool) -> None:
        """Be as high as what it holds, or as low as the page wants."""
        if is_whole is not self._is_whole:
            self._is_whole = is_whole
            self._ask_for_room()

    def minimumSizeHint(self) -> QSize:
        """As wide as what it holds, so that nothing is cut off at its right."""
        inside = self.widget()
        if inside is None:
            return super().minimumSizeHint()
        least = inside.minimumSizeHint().expandedTo(inside.minimumSize())
        bar = self.verticalScrollBar().sizeHint().width()
        high = super().minimumSizeHint().height()
        if self._is_whole:
            wide = self.viewport().width()
            high = inside.heightForWidth(wide) if inside.hasHeightForWidth() else 0
            high = max(high, least.height())
        return QSize(least.width() + bar, high)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self._ask_for_room()  # its lines break elsewhere, so it wants another height

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.LayoutRequest and watched is self.widget():
            self._ask_for_room()
        return super().eventFilter(watched, event)

    def _ask_for_room(self) -> None:
        """Have the page lay it out again, where it wants another least size than before."""
        least = self.minimumSizeHint()
        if least != self._least:
            self._least = least
            self.updateGeometry()
