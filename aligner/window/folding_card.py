"""A card whose parts stand side by side where it is wide, and below each other where it is not.

The trap: parts that stand below each other may be higher than the card. Then it scrolls, and
the part that takes the keyboard is brought into sight.
"""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QFrame, QScrollArea, QWidget

from aligner.drawing.theme import ROOM, Theme
from aligner.window.labels import Card

_SIDE_BY_SIDE_FROM = 760


class FoldingCard(Card):
    """A card with parts that fold below each other."""

    def __init__(self, theme: Theme, title: str = "") -> None:
        super().__init__(title)
        self.theme = theme
        edge = theme.px(14)
        self.column.setContentsMargins(edge, theme.px(12), edge, theme.px(12))
        self.column.setSpacing(theme.px(6))
        self.parts = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self.parts.setContentsMargins(theme.px(3), theme.px(2), theme.px(4), theme.px(2))
        self.parts.setSpacing(theme.px(ROOM))
        self._scroller = QScrollArea()
        self._scroller.setWidgetResizable(True)
        self._scroller.setFrameShape(QFrame.Shape.NoFrame)
        self._scroller.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._scroller.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroller.setStyleSheet(
            f"QScrollArea:focus {{ border: 2px solid {theme.palette.accent}; border-radius: 5px; }}"
        )
        inside = QWidget()
        inside.setLayout(self.parts)
        self._scroller.setWidget(inside)

    @property
    def is_folded(self) -> bool:
        """Whether the parts stand below each other."""
        return self.parts.direction() is QBoxLayout.Direction.TopToBottom

    @property
    def is_longer_than_the_card(self) -> bool:
        """Whether some of it is out of sight, so that it scrolls."""
        return self._scroller.verticalScrollBar().maximum() > 0

    def add_parts(self) -> None:
        """Put the parts at the end of the card's column."""
        self.column.addWidget(self._scroller, 1)

    def fold(self, is_folded: bool) -> None:
        """Put the parts below each other, or side by side."""
        direction = QBoxLayout.Direction
        self.parts.setDirection(direction.TopToBottom if is_folded else direction.LeftToRight)

    def stops(self) -> list[QWidget]:
        """What the keyboard stops at, as the eye goes; the arrow keys scroll where it is long."""
        self._scroller.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._scroller.setAccessibleName(self.accessibleName())
        return [self._scroller]

    def begin(self) -> None:
        """Put the keyboard at the first stop."""
        self.stops()[0].setFocus(Qt.FocusReason.TabFocusReason)

    def keep_whole(self) -> None:
        """Never become narrower than the widest part, so that no figure is cut off."""
        widest = 0
        for place in range(self.parts.count()):
            item = self.parts.itemAt(place)
            widest = max(widest, item.minimumSize().width() if item else 0)
        bar = self._scroller.verticalScrollBar().sizeHint().width()
        self._scroller.setMinimumWidth(
            widest + bar + self.parts.contentsMargins().right() + self.theme.px(3)
        )

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        is_folded = self.width() < self.theme.px(_SIDE_BY_SIDE_FROM)
        if is_folded is not self.is_folded:
            self.fold(is_folded)
