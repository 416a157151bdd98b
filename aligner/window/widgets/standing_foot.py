"""A page's parts over a foot that stays on the screen, where the button is that says what is next.

The trap: with large text the parts are higher than the window. If the whole page scrolls, the
button is below the fold, and each step of a list costs a scroll down and one up again.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QSize, Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from aligner.drawing.theme import Theme

#: The least height of the parts, at 100 % text.
_LEAST = 60


class StandingFoot(QVBoxLayout):
    """A page's layout: the parts, which scroll where they must, and the foot below them."""

    def __init__(self, page: QWidget, theme: Theme, parts: QWidget, foot: QWidget) -> None:
        """Lay out a page.

        Args:
            page: that is laid out.
            theme: sizes.
            parts: what scrolls.
            foot: what stays.
        """
        super().__init__(page)
        self.setContentsMargins(0, 0, 0, 0)
        self._parts = _Parts(theme, parts)
        self.addWidget(self._parts, 1)
        self.addWidget(foot)

    def go_to_top(self) -> None:
        """Show the parts from their beginning."""
        self._parts.verticalScrollBar().setValue(0)


class _Parts(QScrollArea):
    """The parts; as wide as they must be, and low where the window is."""

    def __init__(self, theme: Theme, parts: QWidget) -> None:
        super().__init__()
        self._theme = theme
        self._least = QSize()
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setWidgetResizable(True)
        self.setWidget(parts)

    def sizeHint(self) -> QSize:
        """No more than it must have: the page is asked for its height with what it holds."""
        return self.minimumSizeHint()

    def minimumSizeHint(self) -> QSize:
        """As wide as the parts, so that nothing is cut off at their right."""
        least = self.widget().minimumSizeHint()
        bar = self.verticalScrollBar().sizeHint().width()
        return QSize(least.width() + bar, self._theme.px(_LEAST))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.LayoutRequest and watched is self.widget():
            least = self.minimumSizeHint()
            if least != self._least:
                self._least = least
                self.updateGeometry()
        return super().eventFilter(watched, event)
