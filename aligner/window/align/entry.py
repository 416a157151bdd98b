"""One-line entries of the Align page: Enter goes on, and nothing typed is lost.

The trap: a text that cannot be read, or a name that is taken, must stay where it was typed,
with a sentence; the job keeps what it had.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QWidget

from aligner.drawing.theme import Theme
from aligner.errors import AlignerError
from aligner.language import begun
from aligner.sheet.quantities import Quantity
from aligner.window.widgets.labels import label, set_tone
from aligner.window.widgets.typed_line import ValueLine

Reader = Callable[[str], object]


class Entry(QWidget):
    """One value on one line: its name, the box, and under both what it is or what is wrong.

    Signals:
        typed: the value as it is being typed, where it can be read.
        kept: the value when the box is left, where it is another than it was.
        went_on: Enter was pressed.
    """

    typed = Signal(object)
    kept = Signal(object)
    went_on = Signal()

    def __init__(
        self, theme: Theme, name: str, read: Reader, about: str = "", unit: str = ""
    ) -> None:
        super().__init__()
        self._read = read
        self._about = about
        self._trouble = self._told = ""
        self.cell = ValueLine(name, unit)
        self.cell.setAccessibleDescription(about)
        self.cell.setMinimumWidth(theme.px(90))
        self._name = label(name)
        self._below = label(about, "small", wraps=True)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(theme.px(10))
        grid.setVerticalSpacing(1)
        grid.addWidget(self._name, 0, 0)
        grid.addWidget(self.cell, 0, 1)
        grid.addWidget(self._below, 1, 0, 1, 2)
        self._below.setVisible(bool(about))
        grid.setColumnStretch(0, 5)
        grid.setColumnStretch(1, 4)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        self.cell.textEdited.connect(self._say_typed)
        self.cell.left.connect(self._keep)
        self.cell.went_on.connect(self._go_on)

    @property
    def said(self) -> str:
        """What stands under the box."""
        return self._below.text() if not self._below.isHidden() else ""

    def say_whose(self, whose: str) -> None:
        """Tell a screen reader whose value it is, where others have the same name."""
        self.cell.setAccessibleName(f"{self._name.text()}, {whose}")

    def show_text(self, text: str, trouble: str = "", told: str = "") -> None:
        """Show what the job holds, why it cannot be right, or else what to know of it.

        A text in hand stays.
        """
        self._trouble = trouble
        self._told = told
        self.cell.show_kept(text)
        self._mark()

    def forget_typing(self) -> None:
        """From here on the box shows what the job holds."""
        self.cell.end_typing()

    def _refusal(self) -> str:
        return self._refusal_of(self.cell.text())

    def _refusal_of(self, text: str) -> str:
        try:
            self._read(text.strip())
        except AlignerError as refusal:
            return str(refusal)
        return ""

    def _mark(self) -> None:
        refusal = self._refusal() or self._trouble
        set_tone(self.cell, "refused", "true" if refusal else "false")
        set_tone(self._below, "tone", "attention" if refusal else "")
        text = begun(refusal) or self._told or self._about
        self._below.setText(text)
        self._below.setVisible(bool(text))
        self.cell.setAccessibleDescription(text)

    def _say_typed(self) -> None:
        for text in (self.cell.text(), self.cell.kept_text):
            if not self._refusal_of(text):  # or what was kept counts until it can be read
                self.typed.emit(self._read(text.strip()))
                break
        self._mark()

    def _keep(self) -> None:
        if self.cell.is_being_typed and not self._refusal():
            self.cell.end_typing()
            self.kept.emit(self._read(self.cell.text().strip()))
        self._mark()

    def _go_on(self) -> None:
        if self._refusal():
            self._mark()
        else:
            self.went_on.emit()


def reads(kind: type[Quantity], unit: str) -> Reader:
    """Reads a quantity; nothing typed is none, and a bare number takes the unit."""

    def read(text: str) -> Quantity | None:
        return kind.typed(text, unit) if text else None

    return read
