"""A number typed where none is asked for, so that a gauge ticks nothing.

The trap: a gauge types digits and Enter, wherever the keyboard happens to stand. On a list of
steps that Enter would tick the one in hand.
"""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

_ENTERS = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
_NUMBER = "0123456789.,+-−"


class StrayNumber:
    """Knows the keys of such a number, the Enter that ends it among them."""

    def __init__(self) -> None:
        self._is_open = False

    def takes(self, event: QKeyEvent) -> bool:
        """Whether a key that goes down belongs to one."""
        if event.text() and event.text() in _NUMBER:
            self._is_open = True
            return True
        is_its_end = self._is_open and event.key() in _ENTERS
        if is_its_end or event.key() == Qt.Key.Key_Space:
            self._is_open = False
        return is_its_end

    def forget(self) -> None:
        """The keyboard went elsewhere: no Enter belongs to it any more."""
        self._is_open = False
