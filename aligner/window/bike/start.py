"""Where a sheet begins: the bike's name, a pattern in a few plain choices, or a file.

The trap: a program that opens on nothing and waits. This card says what to do first, and
every choice already stands on something ordinary.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QPushButton, QWidget

from aligner.drawing.theme import ROOM, Theme
from aligner.job import Job
from aligner.language import marked, say
from aligner.window.bike.boxes import HEIGHT, ValueBox
from aligner.window.bike.pattern_rows import ChoiceRows
from aligner.window.widgets.labels import Card, label, main_button
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.wrapping_row import WrappingRow

_NAME_IT = marked("Name the bike first: its sheet and its jobs are kept under this name.")
_MANUAL_FIRST = marked(
    "A pattern brings the fasteners and their order. It brings no torque and no dimension: "
    "those come from the maker's manual."
)


class StartCard(Card):
    """What a bike without fasteners begins with; its buttons are a foot for the page it is on.

    Signals:
        named: the bike's name was typed and left.
        titled: the job's title was typed and left.
        started: the choices, once the bike has a name.
        file_wanted: a sheet is to be taken over from a file.
    """

    named = Signal(object)
    titled = Signal(object)
    started = Signal(object)
    file_wanted = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__(say("A new sheet"))
        self._was_refused = False
        self.name = ValueBox(theme, say("Name of the bike"), str, say("as you call it"))
        self.title = ValueBox(theme, say("This job"), str, say("what it is for: front end refit"))
        self.rows = ChoiceRows(theme, self.name, self.title)
        self.start = main_button(say("Start this sheet"))
        self.from_file = QPushButton(say("Take over a sheet from a file or an earlier job..."))
        self.from_file.setMinimumHeight(theme.px(HEIGHT))
        self.foot = QWidget()
        buttons = WrappingRow(self.foot, spacing=ROOM)
        buttons.add_room()
        buttons.add(self.from_file)
        buttons.add(label(say("or", meaning="between two buttons"), "quiet"))
        buttons.add(self.start)
        self.column.addWidget(self.rows)
        self.column.addWidget(wrapping(say(_MANUAL_FIRST), "small"))
        self.name.kept.connect(self.named)
        self.name.went_on.connect(self.title.setFocus)
        self.title.kept.connect(self.titled)
        self.title.went_on.connect(self.rows.go_to_first)
        self.rows.went_on.connect(lambda: self.start.setFocus(Qt.FocusReason.TabFocusReason))
        self.start.clicked.connect(self._start)
        self.from_file.clicked.connect(self.file_wanted)

    def show_job(self, job: Job) -> None:
        """Show the name the sheet has, and the job's title."""
        sheet = job.sheet
        self.title.show_value(job.title)
        is_wanted = self._was_refused and not sheet.name
        self.name.show_value(sheet.name, say(_NAME_IT) if is_wanted else "", "attention")

    def stops(self) -> list[QWidget]:
        """Where Tab stops, in order."""
        answers = [each for row in self.rows.answers.values() for each in row.values()]
        return [self.name.line, self.title.line, *answers, self.from_file, self.start]

    def _start(self) -> None:
        self.name.keep()
        if not self.name.line.text().strip():
            self._was_refused = True
            self.name.show_value("", say(_NAME_IT), "attention")
            self.name.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        self.started.emit(self.rows.choices)
