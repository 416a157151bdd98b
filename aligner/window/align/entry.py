"""Choices and one-line entries of the Align page: Enter goes on, and nothing typed is lost.

The trap: a text that cannot be read, or a name that is taken, must stay where it was typed,
with a sentence; the job keeps what it had.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QStandardItemModel, QWheelEvent
from PySide6.QtWidgets import QComboBox, QGridLayout, QSizePolicy, QWidget

from aligner.drawing.theme import Theme
from aligner.errors import AlignerError
from aligner.language import begun
from aligner.sheet.quantities import Quantity
from aligner.window.widgets.labels import label, set_tone
from aligner.window.widgets.reading_box import ReadingCell
from aligner.window.widgets.spoken_choice import SpokenChoice

Reader = Callable[[str], object]


class Choice(SpokenChoice):
    """One of a few in words; Enter goes on, and the mouse wheel never changes it.

    Signals:
        tried: another one is looked at by the arrow keys; nothing is kept yet.
        kept: it is left, or picked from the list.
        went_on: Enter was pressed.
    """

    tried = Signal(object)
    kept = Signal(object)
    went_on = Signal()

    def __init__(self, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.setMinimumContentsLength(6)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self._values: list[object] = []  # Qt would make plain text of an enumeration
        self._kept: object = None
        self._by_key = False
        self.activated.connect(self._say_activated)

    @property
    def value(self) -> object:
        """What is chosen now; `None` where nothing is."""
        place = self.currentIndex()
        return self._values[place] if 0 <= place < len(self._values) else None

    def go_to_first_empty(self) -> None:
        """Put the keyboard on it, as on a box of readings."""
        self.setFocus(Qt.FocusReason.TabFocusReason)

    def offer(self, choices: Iterable[tuple[object, str, str]], chosen: object) -> None:
        """Offer choices and show the one that is kept.

        Args:
            choices: the value, its words, and why it cannot be chosen ("" if it can).
            chosen: the value that the job holds.
        """
        rows = list(choices)
        shown = [f"{words}: {refusal}" if refusal else words for _, words, refusal in rows]
        if shown != [self.itemText(place) for place in range(self.count())]:
            self.clear()
            model = self.model()
            for place, (_, _, refusal) in enumerate(rows):
                self.addItem(shown[place])
                if isinstance(model, QStandardItemModel):
                    model.item(place).setEnabled(not refusal)
        self._values = [value for value, _, _ in rows]
        if not self._by_key:
            self._kept = chosen
        self.setCurrentIndex(self._values.index(chosen) if chosen in self._values else -1)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._keep()
            self.went_on.emit()
            return
        self._by_key = True
        super().keyPressEvent(event)
        self._by_key = self.value != self._kept

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Leave the choice alone: a wheel turned over it is meant for the page."""
        event.ignore()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() != Qt.FocusReason.PopupFocusReason:
            self._keep()

    def _say_activated(self, _place: int) -> None:
        if self._by_key:
            self.tried.emit(self.value)
        else:
            self._keep()

    def _keep(self) -> None:
        self._by_key = False
        chosen = self.value
        if self.currentIndex() >= 0 and chosen != self._kept:
            self._kept = chosen
            self.kept.emit(chosen)


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
        self.cell = ReadingCell(name)
        self.cell.setAlignment(Qt.AlignmentFlag.AlignLeft)
        self.cell.setAccessibleDescription(about)
        self.cell.setMinimumWidth(theme.px(90))
        self.cell.setPlaceholderText(unit)
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
        if self.cell.text() == self.cell.kept_text:
            self.cell.kept_text = text
            if self.cell.text() != text:
                self.cell.setText(text)
        self._mark()

    def forget_typing(self) -> None:
        """From here on the box shows what the job holds."""
        self.cell.kept_text = self.cell.text()

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
        if self.cell.text() != self.cell.kept_text and not self._refusal():
            self.cell.kept_text = self.cell.text()
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
