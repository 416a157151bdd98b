"""Where the keyboard is, to put it back there after something else had it.

The trap: a box marks its whole text when it is entered, and the next key would then replace
what stands in it. So in a line the cursor goes back as well, and what was marked. A box that
is left also tidies its text: of "4." half typed it makes "4", and the next key would write "46".
"""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QWidget
from shiboken6 import isValid


class KeyboardPlace:
    """A widget that had the keyboard, with its cursor where it is a line."""

    def __init__(self, widget: QWidget | None) -> None:
        self._widget = widget
        self._text = ""
        self._cursor = 0
        self._marked = (-1, 0)
        if isinstance(widget, QLineEdit):
            self._text = widget.text()
            self._cursor = widget.cursorPosition()
            self._marked = (widget.selectionStart(), len(widget.selectedText()))

    def go_back(self) -> None:
        """Give the keyboard back, if what had it is still there to be seen."""
        widget = self._widget
        if widget is None or not isValid(widget) or not widget.isVisible():
            return
        widget.setFocus(Qt.FocusReason.OtherFocusReason)
        if isinstance(widget, QLineEdit):
            self._untidy(widget)
            start, length = self._marked
            if start >= 0:
                widget.setSelection(start, length)
            else:
                widget.deselect()
                widget.setCursorPosition(self._cursor)

    def _untidy(self, line: QLineEdit) -> None:
        """Bring back what was only trimmed off the end of the text."""
        left = line.text()
        if left and left != self._text and self._text.startswith(left):
            line.setText(self._text)
            line.setModified(True)
