"""Where a sheet begins: the bike's name, a pattern in a few plain choices, or a file.

The trap: a program that opens on nothing and waits. This card says what to do first, and
every choice already stands on something ordinary.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout

from aligner.drawing.theme import GAP, ROOM, Theme
from aligner.sheet import Sheet
from aligner.window.labels import Card, label, main_button
from aligner.window.page import wrapping
from aligner.window.pattern_rows import ChoiceRows
from aligner.window.sheet_boxes import HEIGHT, ValueBox
from aligner.window.sheet_choices import PressButton

_NAME_IT = "Name the bike first: its sheet and its jobs are kept under this name."
_MANUAL_FIRST = (
    "A pattern brings the fasteners and their order. It brings no torque and no dimension: "
    "those come from the maker's manual."
)


class StartCard(Card):
    """What a bike without fasteners begins with.

    Signals:
        named: the bike's name was typed and left.
        started: the choices, once the bike has a name.
        file_wanted: a sheet is to be taken over from a file.
    """

    named = Signal(object)
    started = Signal(object)
    file_wanted = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__("A new sheet")
        self._was_refused = False
        self.name = ValueBox(theme, "Name of the bike", str, "as you call it")
        self.name.setFixedWidth(theme.px(420))
        self.rows = ChoiceRows(theme)
        self.start = main_button("Start this sheet")
        self.from_file = PressButton("Take over a sheet from a file or an earlier job...")
        self.from_file.setMinimumHeight(theme.px(HEIGHT))
        name = QGridLayout()
        name.setHorizontalSpacing(ROOM)
        name.addWidget(label("Name of the bike"), 0, 0, Qt.AlignmentFlag.AlignTop)
        name.addWidget(self.name, 0, 1)
        name.setColumnMinimumWidth(0, theme.px(133))
        name.setColumnStretch(2, 1)
        buttons = QHBoxLayout()
        buttons.setSpacing(ROOM)
        buttons.addWidget(self.start)
        buttons.addWidget(label("or", "quiet"))
        buttons.addWidget(self.from_file)
        buttons.addStretch(1)
        self.column.addLayout(name)
        self.column.addWidget(self.rows)
        self.column.addWidget(wrapping(_MANUAL_FIRST, "small"))
        self.column.addSpacing(GAP)
        self.column.addLayout(buttons)
        self.name.kept.connect(self.named)
        self.name.went_on.connect(self.rows.go_to_first)
        self.rows.went_on.connect(lambda: self.start.setFocus(Qt.FocusReason.TabFocusReason))
        self.start.clicked.connect(self._start)
        self.from_file.clicked.connect(self.file_wanted)

    def show_sheet(self, sheet: Sheet) -> None:
        """Show the name the sheet has."""
        is_wanted = self._was_refused and not sheet.name
        self.name.show_value(sheet.name, _NAME_IT if is_wanted else "", "attention")

    def _start(self) -> None:
        self.name.keep()
        if not self.name.line.text().strip():
            self._was_refused = True
            self.name.show_value("", _NAME_IT, "attention")
            self.name.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        self.started.emit(self.rows.choices)
