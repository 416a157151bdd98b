"""A button, and how Enter goes from box to box."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QPushButton

from aligner.window.bike.boxes import ValueBox
from aligner.window.widgets.choice import Choice


class PressButton(QPushButton):
    """A button that Enter presses like Space."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.isAutoRepeat():
            self.click()
        else:
            super().keyPressEvent(event)


def walk_down(boxes: Sequence[ValueBox | Choice]) -> None:
    """Let Enter go from each box to the next."""
    for box, following in pairwise(boxes):
        box.went_on.connect(
            lambda following=following: following.setFocus(Qt.FocusReason.TabFocusReason)
        )
