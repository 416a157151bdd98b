"""Parts of a page of which one is shown; those that are not take no room.

The trap: Qt's own stacked widget is as large as the largest of its pages, also where that one
is not on the screen, so that a short part would scroll as far as a long one.
"""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget


class PartStack(QWidget):
    """One part at a time, as wide and as high as the part itself."""

    def __init__(self) -> None:
        super().__init__()
        self._current: QWidget | None = None
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)

    def addWidget(self, part: QWidget) -> None:
        """Put a part among the others; the first is shown."""
        part.setVisible(False)
        self._column.addWidget(part)
        if self._current is None:
            self.setCurrentWidget(part)

    def removeWidget(self, part: QWidget) -> None:
        """Take a part out; another must be shown first if it is the one on the screen."""
        self._column.removeWidget(part)
        part.hide()

    def setCurrentWidget(self, part: QWidget) -> None:
        """Show a part in place of the one before."""
        before, self._current = self._current, part
        if part is not before:
            part.setGeometry(self.rect())  # at once: it may be looked at before it is laid out
            part.setVisible(True)
            if before is not None:
                before.setVisible(False)

    def currentWidget(self) -> QWidget | None:
        """The part that is shown."""
        return self._current
