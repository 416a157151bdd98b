"""The box in which a value of the sheet is typed.

The trap: nothing typed may be lost. A text that cannot be read stays in its box, marked and
explained; the sheet keeps the value it had, and the box says so.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from aligner.drawing.theme import Theme
from aligner.errors import AlignerError
from aligner.language import begun, say
from aligner.window.widgets.labels import label, set_tone
from aligner.window.widgets.typed_line import ValueLine

#: Reads a text that is not empty; raises an AlignerError in words.
Reads = Callable[[str], object]

HEIGHT = 34


class ValueBox(QWidget):
    """A value with what was understood, or what is wrong with it, in words under it.

    Signals:
        typed: the value, while it can be read; `None` for an empty box.
        spoiled: what is being typed cannot be read (any more).
        kept: the value, when the box is left and holds another one than before.
        went_on: Enter was pressed, and the box holds nothing wrong.
        entered: the box has the keyboard.
    """

    typed = Signal(object)
    spoiled = Signal()
    kept = Signal(object)
    went_on = Signal()
    entered = Signal()

    def __init__(
        self, theme: Theme, name: str, reads: Reads, placeholder: str = "", *, needed: str = ""
    ) -> None:
        """Make a box.

        Args:
            theme: for its size.
            name: of the value, for screen readers.
            reads: from a text to a value.
            placeholder: shown while it is empty.
            needed: what is wrong with it when it is empty; "" if it may be.
        """
        super().__init__()
        self.name = name
        self._reads = reads
        self._needed = needed
        self._understood = ""
        self._tone = ""
        self.line = ValueLine(name, placeholder)
        self.line.setMinimumHeight(theme.px(HEIGHT))
        self.words = label("", "small", wraps=True)
        self.words.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(1)
        column.addWidget(self.line)
        column.addWidget(self.words)
        self.line.textEdited.connect(lambda _: self._say_typed())
        self.line.left.connect(self.keep)
        self.line.went_on.connect(self._go_on)
        self.line.installEventFilter(self)

    def setFocus(self, reason: Qt.FocusReason = Qt.FocusReason.OtherFocusReason) -> None:
        """Put the keyboard in the line; a focus proxy would stop Tab here a second time."""
        self.line.setFocus(reason)

    @property
    def refusal(self) -> str:
        """What is wrong with the text in the box, in words; "" if nothing is."""
        text = self.line.text().strip()
        if text == self.line.kept_text.strip():
            return ""
        if not text:
            return self._needed
        try:
            self._reads(text)
        except AlignerError as error:
            return _sentence(error)
        return ""

    @property
    def is_being_typed(self) -> bool:
        """Whether the box holds what the sheet does not."""
        return self.line.is_being_typed

    def show_value(
        self, text: str, understood: str = "", tone: str = "", *, left_out: str | None = None
    ) -> None:
        """Show what the sheet holds; a text that is being typed, or refused, stays.

        Args:
            text: of the value; "" if there is none.
            understood: words under it.
            tone: of those words: "attention" where something is missing.
            left_out: what stands in the empty box, where that changes.
        """
        if left_out is not None:
            self.line.setPlaceholderText(left_out)
        self._understood, self._tone = understood, tone
        self.line.show_kept(text)
        self._say()

    def end_typing(self) -> None:
        """From here on the box shows what the sheet holds."""
        self.line.end_typing()

    def keep(self) -> None:
        """Keep what was typed, if it can be read."""
        self._say()
        if not self.is_being_typed or self.refusal:
            return
        value = self._value()
        self.end_typing()
        self.kept.emit(value)

    def eventFilter(self, watched: object, event: QEvent) -> bool:
        if watched is self.line and event.type() == QEvent.Type.FocusIn:
            self.entered.emit()
        return False

    def _value(self) -> object:
        text = self.line.text().strip()
        return self._reads(text) if text else None

    def _say_typed(self) -> None:
        if self.refusal:
            self.spoiled.emit()
        else:
            self.typed.emit(self._value())
        self._say()

    def _say(self) -> None:
        refusal = self.refusal
        if refusal and self.line.kept_text:
            still = say("The sheet still has {value}.", value=self.line.kept_text)
            refusal = f"{refusal} {still}"
        set_tone(self.line, "refused", "true" if refusal else "false")
        words = refusal or self._understood
        if self.words.text() != words:
            self.words.setText(words)
        set_tone(self.words, "tone", "attention" if refusal else self._tone)
        self.words.setVisible(bool(words))
        self.line.setAccessibleDescription(words)

    def _go_on(self) -> None:
        self._say()
        if not self.refusal:
            self.keep()
            self.went_on.emit()


def _sentence(error: AlignerError) -> str:
    text = str(error)
    return begun(text).removesuffix(".") + "."
