"""A variant of the sheet: another name, another pattern, and what would be dropped in words."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QPushButton, QWidget

from aligner.drawing.theme import ROOM, Theme
from aligner.language import say
from aligner.sheet import Sheet
from aligner.sheet.patterns import choices_like
from aligner.sheet.variant import Variant, variant_of
from aligner.window.bike.boxes import ValueBox
from aligner.window.bike.pattern_rows import ChoiceRows
from aligner.window.widgets.labels import Card, main_button
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.wrapping_row import WrappingRow


class VariantCard(Card):
    """A copy of the sheet under another name and with another pattern.

    Signals:
        taken: the variant, to be this job's sheet.
        save_wanted: the variant, to be saved as a file of its own.
        closed: it is not wanted.
    """

    taken = Signal(object)
    save_wanted = Signal(object)
    closed = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__(say("A variant of this sheet"))
        self._sheet = Sheet()
        self.name = ValueBox(theme, say("Name of the variant"), str, say("another name"))
        self.rows = ChoiceRows(theme, self.name)
        self.said = wrapping("")
        self.use = main_button(say("Use it for this job"))
        self.save = QPushButton(say("Save it as a sheet file..."))
        self.leave = QPushButton(say("Leave it"))
        line = WrappingRow(spacing=ROOM)
        for button in (self.use, self.save, self.leave):
            line.add(button)
        self.column.addWidget(self.rows)
        self.column.addWidget(self.said)
        self.column.addLayout(line)
        self.name.went_on.connect(self.rows.go_to_first)
        self.name.typed.connect(lambda _: self._say())
        self.rows.changed.connect(self._say)
        self.rows.went_on.connect(lambda: self.use.setFocus(Qt.FocusReason.TabFocusReason))
        self.use.clicked.connect(lambda: self.taken.emit(self.variant()))
        self.save.clicked.connect(lambda: self.save_wanted.emit(self.variant()))
        self.leave.clicked.connect(self.closed)

    def begin(self, sheet: Sheet) -> None:
        """Begin with what the sheet is like."""
        self._sheet = sheet
        self.name.end_typing()
        self.name.show_value(_named_after(sheet).strip())
        self.rows.show_choices(choices_like(sheet))
        self._say()
        self.name.setFocus(Qt.FocusReason.OtherFocusReason)

    def show_sheet(self, sheet: Sheet) -> None:
        """Copy from the sheet as it is now."""
        if sheet != self._sheet:
            self._sheet = sheet
            self._say()

    def stops(self) -> list[QWidget]:
        """Where Tab stops, in order."""
        answers = [each for row in self.rows.answers.values() for each in row.values()]
        return [self.name.line, *answers, self.use, self.save, self.leave]

    def variant(self) -> Variant:
        """The variant as chosen."""
        name = self.name.line.text().strip() or _named_after(self._sheet)
        return variant_of(self._sheet, name, self.rows.choices)

    def _say(self) -> None:
        self.said.setText(self.variant().words)


def _named_after(sheet: Sheet) -> str:
    return say("{bike} variant", bike=sheet.name)
