"""Where the keyboard is, to put it back there after something else had it.

The trap: a box marks its whole text when it is entered, and the next key would then replace
what stands in it. So in a line the cursor goes back as well, and what was marked.
"""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QWidget
from shiboken6 import isValid


class KeyboardPlace:
    """A widget that had the keyboard, with its cursor where it is a line."""

    def __init__(self, widget: QWidget | None) -> None:
        self._widget = widget
        self._cursor = 0
        self._marked = (-1, 0)
        if isinstance(widget, QLineEdit):
            self._cursor = widget.cursorPosition()
            self._marked = (widget.selectionStart(), len(widget.selectedText()))

    def go_back(self) -> None:
        """Give the keyboard back, if what had it is still there to be seen."""
        widget = self._widget
        if widget is None or not isValid(widget) or not widget.isVisible():
            return
        widget.setFocus(Qt.FocusReason.OtherFocusReason)
        if isinstance(widget, QLineEdit):
            start, length = self._marked
            if start >= 0:
                widget.setSelection(start, length)
            else:
                widget.deselect()
                widget.setCursorPosition(self._cursor)
