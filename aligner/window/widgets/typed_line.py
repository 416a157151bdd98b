"""The lines to type in: Enter goes on, Escape gives back what stood there, leaving keeps.

Three traps. Enter repeats by itself while it is held: what asks first and acts on the next Enter
would then have asked nobody, so a key held down counts once. A line that is being typed in must
not be written over when the job is shown anew. And a menu over a line does not leave it.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QLineEdit

_ENTERS = (Qt.Key.Key_Return, Qt.Key.Key_Enter)


class TypedLine(QLineEdit):
    """A line of text; whoever made it decides what is kept of it.

    Attributes:
        kept_text: what the job holds; Escape gives it back.

    Signals:
        went_on: Enter was pressed, once.
        left: the line is left.
    """

    went_on = Signal()
    left = Signal()

    def __init__(self, name: str, placeholder: str = "") -> None:
        super().__init__()
        self.kept_text = ""
        self.setAccessibleName(name)
        self.setPlaceholderText(placeholder)

    @property
    def is_being_typed(self) -> bool:
        """Whether the line holds what the job does not."""
        return self.text() != self.kept_text

    def show_kept(self, text: str) -> None:
        """Show what the job holds; what is being typed stays."""
        if not self.is_being_typed:
            self.fill(text)

    def fill(self, text: str) -> None:
        """Show what the job holds, whatever was being typed."""
        self.kept_text = text
        if self.text() != text:
            self.setText(text)
            if not self.hasFocus():
                self.setCursorPosition(0)  # a long text shows its beginning

    def end_typing(self) -> None:
        """From here on the line shows what the job holds."""
        self.kept_text = self.text()

    def type_in(self, text: str) -> None:
        """Do as if a person had typed a text."""
        self.setText(text)
        self.textEdited.emit(text)

    def give_back(self) -> None:
        """Put what is kept in place of what is being typed."""
        self.type_in(self.kept_text)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in _ENTERS:
            if not event.isAutoRepeat():
                self.went_on.emit()
        elif event.key() == Qt.Key.Key_Escape and self.is_being_typed:
            self.give_back()
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() == Qt.FocusReason.OtherFocusReason:
            self.end(False)  # put here by the program, the keyboard goes on where the text ends

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() == Qt.FocusReason.PopupFocusReason:
            return
        if event.reason() != Qt.FocusReason.ActiveWindowFocusReason:
            self.setCursorPosition(0)
        self.left.emit()


class ValueLine(TypedLine):
    """A line for a value, marked as a whole when it is entered: the next one replaces it."""

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() != Qt.FocusReason.PopupFocusReason:
            self.selectAll()


class FormLine(TypedLine):
    """A line of a form, to which Escape belongs.

    Signals:
        escaped: Escape was pressed.
    """

    escaped = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.escaped.emit()
        else:
            super().keyPressEvent(event)
