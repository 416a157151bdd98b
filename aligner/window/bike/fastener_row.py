"""One fastener of the sheet in a row: what the manual prints of it, and the rest when opened."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from aligner.drawing.theme import GAP, Theme
from aligner.job.edits_sheet import torque_source
from aligner.language import marked, say
from aligner.sheet import Sheet
from aligner.units.preferred import Preferred
from aligner.window.bike.boxes import HEIGHT, ValueBox
from aligner.window.bike.fastener_boxes import FastenerBoxes
from aligner.window.bike.fastener_details import FastenerDetails
from aligner.window.bike.words import fastener_words, torque_understood
from aligner.window.open_job import OpenJob
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.labels import label

#: Widths of the row's columns, as shares.
WIDTHS = (6, 8, 6, 4)
#: The boxes of the row: the field, its name, what may be typed.
_BOXES = (
    ("torque", marked("torque as printed"), marked("as printed, with its unit")),
    ("source", marked("source of the torque"), marked("manual page")),
    ("thread", marked("thread"), marked("e.g. M8x1.25")),
)


class FastenerRow(QFrame):
    """A fastener: its torque as printed, the source and the thread; opened, all the rest.

    Signals:
        went_on: Enter was pressed in a box of a column ("torque", "source", "thread").
        walked_through: Enter was pressed in the last of the other boxes.
        opened: the row's other boxes are there now.
        copy_wanted: a copy on the other side is wanted.
        removed: it is to go.
    """

    went_on = Signal(str)
    walked_through = Signal()
    opened = Signal()
    copy_wanted = Signal()
    removed = Signal()

    def __init__(
        self, open_job: OpenJob, theme: Theme, show: Preferred, now: Callable[[], datetime]
    ) -> None:
        super().__init__()
        self._of = FastenerBoxes(open_job, theme, show, now)
        self._of.kept.connect(self._show_again)
        self._shown: tuple[object, ...] = ()
        self.details: FastenerDetails | None = None
        self.open_button = QPushButton("")
        self.open_button.setCheckable(True)
        self.open_button.setMinimumHeight(theme.px(HEIGHT))
        self.open_button.setStyleSheet("text-align: left;")
        self.open_button.toggled.connect(self._open)
        self._line = QGridLayout()
        self._line.setHorizontalSpacing(GAP)
        self._line.setVerticalSpacing(1)
        self._names: dict[str, QLabel] = {}
        for field, name, example in _BOXES:
            box = self._of.add_box(field, say(name), say(example))
            box.went_on.connect(lambda field=field: self.went_on.emit(field))
            self._names[field] = label(say(name), "small")
            self._names[field].hide()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(4)
        self._column.addLayout(self._line)
        self.fold(is_folded=False)

    @property
    def place(self) -> int:
        """Where the fastener stands on the sheet, from 0."""
        return self._of.place

    @property
    def boxes(self) -> dict[str, ValueBox]:
        """The boxes, by field; those inside only once the row was opened."""
        return self._of.boxes

    @property
    def choices(self) -> dict[str, Choice]:
        """The choices, by field; they are all inside."""
        return self._of.choices

    def show_fastener(self, sheet: Sheet, place: int) -> None:
        """Show a fastener of the sheet; what is being typed stays."""
        self._of.place = place
        fastener = sheet.fasteners[place]
        is_open = self.open_button.isChecked()
        sources = [torque_source(sheet, fastener, which) for which in ("torque", "seating")]
        shown = (fastener, *sources, is_open)
        if shown == self._shown:
            return
        self._shown = shown
        words = fastener_words(fastener)
        self.open_button.setText(f"{'▾' if is_open else '▸'} {words}")
        opened, closed = (
            say("{fastener}, opened", fastener=words),
            say("{fastener}, open it", fastener=words),
        )
        self.open_button.setAccessibleName(opened if is_open else closed)
        doubts = self._of.doubts()
        understood = torque_understood(fastener.torque, doubts.get("torque", ""), self._of.show)
        self._of.show_text("torque", *understood)
        self._of.show_text("source")
        self._of.show_text("thread", doubts.get("thread", ""))
        for field, name, _ in _BOXES:
            self.boxes[field].line.setAccessibleName(f"{fastener.name}, {say(name)}")
        if self.details is not None:
            self.details.show_fastener()

    def fold(self, *, is_folded: bool) -> None:
        """Put the boxes beside the name, or below it, each then under its own."""
        top = Qt.AlignmentFlag.AlignTop
        shares = WIDTHS[1:] if is_folded else WIDTHS
        self._line.addWidget(self.open_button, 0, 0, 1, len(_BOXES) if is_folded else 1, top)
        for column, (field, _, _) in enumerate(_BOXES):
            if is_folded:
                self._line.addWidget(self._names[field], 1, column)
                self._line.addWidget(self.boxes[field], 2, column, top)
            else:
                self._line.addWidget(self.boxes[field], 0, column + 1, top)
            self._names[field].setVisible(is_folded)
        for column in range(len(WIDTHS)):
            self._line.setColumnStretch(column, shares[column] if column < len(shares) else 0)

    def box_at(self, field: str) -> ValueBox:
        """The box of a field; opens the row where it stands inside."""
        if field not in {name for name, _, _ in _BOXES}:
            self.open_button.setChecked(True)
        return self.boxes[field]

    def stops(self) -> list[QWidget]:
        """Where Tab stops, in order."""
        inside = self.details.stops if self.details else []
        return [self.open_button, *(self.boxes[name].line for name, _, _ in _BOXES), *inside]

    def end_typing(self) -> None:
        """From here on every box shows what the sheet holds."""
        self._shown = ()
        for box in self.boxes.values():
            box.end_typing()

    def _open(self, is_open: bool) -> None:
        if is_open and self.details is None:
            self.details = FastenerDetails(self._of)
            self.details.copy_wanted.connect(self.copy_wanted)
            self.details.removed.connect(self.removed)
            self.details.went_on.connect(self.walked_through)
            self._column.addWidget(self.details)
            self.opened.emit()
        if self.details is not None:
            self.details.setVisible(is_open)
        self.show_fastener(self._of.sheet, self.place)

    def _show_again(self) -> None:
        """What is kept is shown as the sheet writes it, even where it says the same."""
        self._shown = ()
