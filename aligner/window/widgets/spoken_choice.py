"""A drop-down list whose name a screen reader gets on every desktop.

The trap: on Linux the name of a drop-down list is what is chosen in it; what is asked is only
told through a label that belongs to it. So the name stands in such a label, which is not shown.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QComboBox, QLabel


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

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ParentChange:
            self._spoken.setParent(self.parentWidget())
        return super().event(event)
