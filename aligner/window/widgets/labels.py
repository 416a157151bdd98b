"""Labels and cards in the theme's few forms, so that no screen invents another."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from aligner.drawing.theme import GAP, ROOM
from aligner.language import say
from aligner.window.widgets.stray_number import StrayNumber
from aligner.window.widgets.unbroken import as_written, unbroken


class Words(QLabel):
    """A text on the screen, never read as markup, its values never parted by the end of a line."""

    def __init__(self, text: str = "") -> None:
        super().__init__()
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setText(text)

    def setText(self, text: str) -> None:
        super().setText(unbroken(text))

    def text(self) -> str:
        return as_written(super().text())


def label(text: str = "", size: str = "text", *, wraps: bool = False, tone: str = "") -> QLabel:
    """A label of one of the theme's sizes."""
    made = Words(text)
    made.setProperty("typeSize", size)
    if tone:
        made.setProperty("tone", tone)
    if wraps:
        made.setWordWrap(True)
        made.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
    return made


#: What the style sheet has no rule for.
_AS_IF_UNSET = ("", "false")


def set_tone(widget: QWidget, name: str, value: str) -> None:
    """Set a property the style sheet looks at, and have it looked at again."""
    was = widget.property(name)
    if was != value and not (was is None and value in _AS_IF_UNSET):
        widget.setProperty(name, value)
        widget.style().unpolish(widget)
        widget.style().polish(widget)


class MainButton(QPushButton):
    """The one button of a screen that says what comes next; Enter presses it like Space."""

    def __init__(self, text: str) -> None:
        super().__init__(text)
        self._stray = StrayNumber()
        self.setProperty("main", True)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._stray.takes(event):
            return
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.isAutoRepeat():
            self.click()
        else:
            super().keyPressEvent(event)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A double click counts once: the second would answer what stands there by then."""
        event.accept()


def main_button(text: str) -> MainButton:
    """A button that says what comes next."""
    return MainButton(text)


class Card(QFrame):
    """A card with a title, on which other things stand in a column."""

    def __init__(self, title: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(ROOM, ROOM - 4, ROOM, ROOM - 4)
        self.column.setSpacing(GAP)
        if title:
            self.column.addWidget(label(title, "strong"))


def caution_words(text: str) -> str:
    """A caution with the word itself before it; "" for none."""
    return say("Caution: {text}", text=text) if text else ""


class Caution(QFrame):
    """A caution where the danger is: the word itself, and what to mind."""

    def __init__(self, text: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("caution")
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 6, 12, 6)
        self._text = label(wraps=True)
        column.addWidget(self._text)
        self.say(text)

    def say(self, text: str) -> None:
        """Show this caution; hidden when there is none."""
        self._text.setText(caution_words(text))
        self.setAccessibleName(self._text.text())
        if not text or self.parentWidget() is not None:  # alone it would open as a window
            self.setVisible(bool(text))
