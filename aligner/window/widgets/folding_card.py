"""A card whose parts stand side by side where it is wide, and below each other where it is not.

The trap: parts that stand below each other may be higher than the card. Then it scrolls, and
the part that takes the keyboard is brought into sight.
"""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from aligner.drawing.theme import ROOM, Theme
from aligner.window.widgets.folding_row import FoldingRow
from aligner.window.widgets.labels import Card
from aligner.window.widgets.whole_scroller import WholeScroller

_SIDE_BY_SIDE_FROM = 760


class FoldingCard(Card):
    """A card with parts that fold below each other."""

    def __init__(self, theme: Theme, title: str = "", *, spacing: int = ROOM) -> None:
        super().__init__(title)
        self.theme = theme
        edge = theme.px(14)
        self.column.setContentsMargins(edge, theme.px(12), edge, theme.px(12))
        self.column.setSpacing(theme.px(6))
        self.parts = FoldingRow(theme, wanted=_SIDE_BY_SIDE_FROM, spacing=spacing)
        self.parts.setContentsMargins(theme.px(3), theme.px(2), theme.px(4), theme.px(2))
        self._scroller = WholeScroller()
        self._scroller.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._scroller.setStyleSheet(
            f"QScrollArea:focus {{ border: 2px solid {theme.palette.accent}; border-radius: 5px; }}"
        )
        self._scroller.setWidget(self.parts)

    @property
    def is_longer_than_the_card(self) -> bool:
        """Whether some of it is out of sight, so that it scrolls."""
        return self._scroller.verticalScrollBar().maximum() > 0

    def add_parts(self) -> None:
        """Put the parts at the end of the card's column."""
        self.column.addWidget(self._scroller, 1)

    def stops(self) -> list[QWidget]:
        """What the keyboard stops at, as the eye goes; the arrow keys scroll where it is long."""
        self._scroller.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._scroller.setAccessibleName(self.accessibleName())
        return [self._scroller]

    def begin(self) -> None:
        """Put the keyboard at the first stop."""
        self.stops()[0].setFocus(Qt.FocusReason.TabFocusReason)
