"""A box for the readings of one length: it stands on the drawing where the gauge stands.

The trap: nothing typed may be lost. A text that cannot be read stays in its cell, marked and
explained, and the readings that can be read go on counting.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from typing import TypeVar

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QSizePolicy, QVBoxLayout

from aligner.drawing.theme import Theme
from aligner.language import begun, say, spoken
from aligner.sheet.quantities import Quantity
from aligner.units import UnreadableQuantity
from aligner.window.measuring.guides import measured_by
from aligner.window.widgets.labels import label, set_tone
from aligner.window.widgets.typed_line import ValueLine

Kind = TypeVar("Kind", bound=Quantity)

FEWEST_CELLS = 3
_IN_A_ROW = 3


class ReadingBox(QFrame):
    """The readings of one length, their mean in large type above them.

    Signals:
        typed: the readings that can be read, while a cell is being typed in.
        kept: the same, when a cell is left.
        went_on: Enter was pressed in the last cell, or in an empty one.
        resized: a refusal came or went, so the box wants another height.
    """

    typed = Signal(object)
    kept = Signal(object)
    went_on = Signal()
    resized = Signal()

    def __init__(
        self,
        theme: Theme,
        name: str,
        kind: type[Quantity],
        unit: str,
        cells: int = FEWEST_CELLS,
        guide: str = "",
    ) -> None:
        super().__init__()
        measured_by(self, guide)
        self.setObjectName("card")
        self._theme = theme
        self._kind = kind
        self._unit = unit
        self._name = name
        self._cells: list[ValueLine] = []
        self._fewest = cells
        self._trouble = ""
        self._mean = label("", "value")
        self._where = label(name, "small", wraps=True)
        self._where.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._where.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        self._refusal = label("", "small", wraps=True, tone="attention")
        self._refusal.hide()
        self._rows = QGridLayout()
        self._rows.setSpacing(3)
        head = QHBoxLayout()
        head.addWidget(self._mean)
        head.addWidget(self._where, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 4, 8, 6)
        column.setSpacing(3)
        column.addLayout(head)
        column.addLayout(self._rows)
        column.addWidget(self._refusal)
        self._grow_to(cells)

    @property
    def first_cell(self) -> ValueLine:
        """Where typing begins."""
        return self._cells[0]

    @property
    def cells(self) -> tuple[ValueLine, ...]:
        """The cells, in the order Enter walks them."""
        return tuple(self._cells)

    def height_at(self, width: int) -> int:
        """How high the box wants to be at a width, in pixels, with what it has to say."""
        layout = self.layout()
        if layout is not None:
            layout.activate()  # cells that have just come or gone count at once
            return layout.totalHeightForWidth(width)
        return max(self.sizeHint().height(), self.minimumSizeHint().height())

    @property
    def has_refused_text(self) -> bool:
        """Whether a cell holds something that cannot be read."""
        return any(self._refusal_of(cell) for cell in self._cells)

    def show_readings(self, readings: Sequence[Quantity], mean: str, *, cells: int = 0) -> None:
        """Show what the job holds; cells that cannot be read keep their text.

        Args:
            readings: as they stand in the job.
            mean: of them, in words, or what to say where there is none.
            cells: how many readings are wanted, where more than usual.
        """
        self._mean.setText(mean)
        self.setAccessibleName(f"{self._name}: {mean}")
        wanted = max(self._fewest, len(readings), cells)
        self._grow_to(wanted)
        for place, cell in enumerate(self._cells):
            cell.setVisible(place < wanted or bool(cell.text()) or cell.hasFocus())
        if self.has_refused_text or self._is_being_typed():
            return
        for cell, reading in zip(self._cells, readings, strict=False):
            cell.fill(reading.said.removesuffix(f" {self._unit}"))
        for cell in self._cells[len(readings) :]:
            cell.fill("")

    def say_trouble(self, text: str) -> None:
        """Say at the box why its readings cannot be right; "" where they can."""
        if text != self._trouble:
            self._trouble = text
            self._mark_refusals()

    @property
    def trouble(self) -> str:
        """What is said at the box: a refusal of what was typed, or why it cannot be right."""
        return self._refusal.text() if not self._refusal.isHidden() else ""

    def forget_typing(self) -> None:
        """Empty every cell: what was typed was meant for another job."""
        for cell in self._cells:
            cell.fill("")
        self._mark_refusals()

    def lay_by(self) -> tuple[str, ...] | None:
        """The texts that cannot be read, each at its place; `None` where all can."""
        texts = tuple(cell.text() if self._refusal_of(cell) else "" for cell in self._cells)
        return texts if any(texts) else None

    def take_up(self, laid_by: object) -> None:
        """Put such texts among the readings again, where they cannot be read here either."""
        if not isinstance(laid_by, tuple):
            return
        self._grow_to(len(laid_by))
        readings = iter([cell.text() for cell in self._cells if cell.text()])
        for cell, text in zip(self._cells, laid_by, strict=False):
            if _refusal(self._kind, text, self._unit, spoken()):
                cell.kept_text = ""
                cell.setText(text)
            else:
                cell.fill(next(readings, ""))
        self._mark_refusals()

    def go_to_first_empty(self) -> None:
        """Put the keyboard in the first cell without a reading, or in the first."""
        empty = (c for c in self._cells if not c.isHidden() and not c.text().strip())
        next(empty, self._cells[0]).setFocus(Qt.FocusReason.TabFocusReason)

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Wheel:
            return False
        return super().event(event)

    def _is_being_typed(self) -> bool:
        return any(cell.is_being_typed for cell in self._cells)

    def _grow_to(self, count: int) -> None:
        while len(self._cells) < count:
            number = len(self._cells) + 1
            cell = ValueLine(
                say("{name}, reading {number}", name=self._name, number=number),
                self._unit if not self._cells else "",
            )
            cell.setAlignment(Qt.AlignmentFlag.AlignHCenter)
            cell.setMinimumWidth(self._theme.px(40))
            cell.setTextMargins(-3, 0, -3, 0)
            cell.textEdited.connect(self._say_typed)
            cell.left.connect(self._keep)
            cell.went_on.connect(lambda cell=cell: self._go_on_from(cell))
            self._cells.append(cell)
            row, column = divmod(len(self._cells) - 1, _IN_A_ROW)
            self._rows.addWidget(cell, row, column)

    def _readings(self) -> tuple[Quantity, ...]:
        readings = []
        for cell in self._cells:
            if cell.text().strip() and not self._refusal_of(cell):
                readings.append(self._kind.typed(cell.text(), self._unit))
        return tuple(readings)

    def _refusal_of(self, cell: ValueLine) -> str:
        return _refusal(self._kind, cell.text(), self._unit, spoken())

    def _say_typed(self) -> None:
        self._mark_refusals()
        self.typed.emit(self._readings())

    def _keep(self) -> None:
        self._mark_refusals()
        if not self._is_being_typed():
            return
        readings = self._readings()
        for cell in self._cells:
            if not self._refusal_of(cell):
                cell.end_typing()
        self.kept.emit(readings)

    def _mark_refusals(self) -> None:
        refusals = []
        for cell in self._cells:
            refusal = self._refusal_of(cell)
            refusal = refusal or (self._trouble if cell.text().strip() else "")
            set_tone(cell, "refused", "true" if refusal else "false")
            cell.setAccessibleDescription(refusal)
            refusals.append(refusal)
        first = next((refusal for refusal in refusals if refusal), self._trouble)
        self._refusal.setText(begun(first))
        self._refusal.setVisible(bool(first))
        self.resized.emit()

    def _go_on_from(self, cell: ValueLine) -> None:
        place = self._cells.index(cell)
        if self._refusal_of(cell):
            self._mark_refusals()
            return
        is_last = place + 1 == len(self._cells) or self._cells[place + 1].isHidden()
        if is_last or not cell.text().strip():
            self._keep()
            self.went_on.emit()
        else:
            self._cells[place + 1].setFocus(Qt.FocusReason.TabFocusReason)


def one_of(found: Sequence[Kind]) -> Kind | None:
    """The reading of a box that takes one; `None` where it is empty."""
    return found[0] if found else None


@lru_cache(maxsize=256)
def _refusal(kind: type[Quantity], text: str, unit: str, _language: str) -> str:
    """Why a text is no reading, in the language spoken; asked of every cell at every key."""
    if not text.strip():
        return ""
    try:
        kind.typed(text, unit)
    except UnreadableQuantity as refusal:
        return str(refusal)
    return ""
