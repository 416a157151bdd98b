"""A choice of a few words that the mouse wheel never changes unseen."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QWheelEvent

from aligner.window.widgets.spoken_choice import SpokenChoice


class QuietChoice(SpokenChoice):
    """A drop-down list; the wheel scrolls the page instead."""

    def __init__(self, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()
