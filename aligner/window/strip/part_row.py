"""One part that came off: its name, where its fasteners went, a note; and one that goes back.

The trap: a row shows the entry in its place, and another entry stands there after a move. What is
being typed is therefore kept before anything moves.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from aligner.assessment.strip import OffPart
from aligner.drawing.theme import GAP, Theme
from aligner.language import marked, say
from aligner.window.strip.part_line import PartLine
from aligner.window.strip.words import back_words
from aligner.window.widgets.folding_grid import FoldingGrid
from aligner.window.widgets.labels import label
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.tick import Tick

#: The least width, at 100 % text, of the line where its fasteners went, and of its note.
_LINE = 190
_FIELDS = {
    "name": marked("what came off"),
    "fasteners": marked("where its fasteners went"),
    "note": marked("note"),
}


class OffRow(QFrame):
    """An entry of what came off.

    Signals:
        typed, kept: field and words.
        moved: -1 or 1, and the field the keyboard is in ("" for a button).
        unwanted: it was a slip.
        emptied: its name was taken away; the one it had stays.
        went_on: Enter in the last line.
    """

    typed = Signal(str, str)
    kept = Signal(str, str)
    moved = Signal(int, str)
    unwanted = Signal()
    emptied = Signal()
    went_on = Signal()

    def __init__(self, theme: Theme, number: int) -> None:
        super().__init__()
        self.setObjectName("card")
        self.lines: dict[str, PartLine] = {}
        for field, hint in _FIELDS.items():
            about = say("part {number}: {name}", number=number, name=say(hint))
            line = PartLine(theme, about, say(hint), needs_words=field == "name")
            line.typed.connect(lambda text, field=field: self.typed.emit(field, text))
            line.kept.connect(lambda text, field=field: self.kept.emit(field, text))
            line.moved.connect(lambda by, field=field: self.moved.emit(by, field))
            self.lines[field] = line
        self.lines["name"].emptied.connect(self.emptied)
        self.lines["name"].went_on.connect(lambda: self.go_to("fasteners"))
        self.lines["fasteners"].went_on.connect(lambda: self.go_to("note"))
        self.lines["note"].went_on.connect(self.went_on)
        self.up, self.down = QPushButton("↑"), QPushButton("↓")
        self.out = QPushButton(say("Take out"))
        for button, name, tip in (
            (self.up, say("Part {number} came off earlier", number=number), say("Alt+Up")),
            (self.down, say("Part {number} came off later", number=number), say("Alt+Down")),
            (self.out, say("Take out part {number}", number=number), say("it was a slip")),
        ):
            button.setAccessibleName(name)
            button.setToolTip(tip)
            button.setMinimumHeight(theme.px(34))
        for button in (self.up, self.down):
            button.setFixedWidth(theme.px(40))
            button.setStyleSheet("padding-left: 2px; padding-right: 2px;")
        self.up.clicked.connect(lambda: self.moved.emit(-1, ""))
        self.down.clicked.connect(lambda: self.moved.emit(1, ""))
        self.out.clicked.connect(self.unwanted)
        self.reminder = wrapping("", "small")
        head = QHBoxLayout()
        head.setSpacing(GAP)
        head.addWidget(label(str(number), "strong"))
        head.addWidget(self.lines["name"], 1)
        for button in (self.up, self.down):
            head.addWidget(button)
        under = FoldingGrid(theme, 2, least=_LINE)
        for field in ("fasteners", "note"):
            under.add(self.lines[field])
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 6, 10, 6)
        column.setSpacing(5)
        column.addLayout(head)
        column.addWidget(under)
        foot = QHBoxLayout()
        foot.setSpacing(GAP)
        foot.addWidget(self.reminder, 1)
        foot.addWidget(self.out, 0, Qt.AlignmentFlag.AlignTop)
        column.addLayout(foot)

    def show_part(self, part: OffPart, last: int) -> None:
        """Show an entry; what is being typed stays."""
        entry = part.entry
        for field, line in self.lines.items():
            line.show_kept(getattr(entry, field))
        off = f"{entry.off:%Y-%m-%d %H:%M}"
        if entry.back:
            when = say("Off {off}, back {back}.", off=off, back=f"{entry.back:%Y-%m-%d %H:%M}")
        else:
            when = say("Off {off}.", off=off)
        self.reminder.setText(f"{when} {entry.reminder}".strip())
        self.up.setEnabled(part.place > 0)
        self.down.setEnabled(part.place < last)
        about = say("part {number}: {name}", number=part.place + 1, name=entry.name)
        self.setAccessibleName(f"{about}. {self.reminder.text()}")

    def go_to(self, field: str) -> None:
        """Put the keyboard in a line, or on the button that moves down where it is ""."""
        place: QWidget = self.lines[field] if field else self.down
        place.setFocus(Qt.FocusReason.TabFocusReason)

    def walk(self) -> list[QWidget]:
        """What the keyboard can reach, as the eye goes."""
        lines = self.lines
        return [lines["name"], self.up, self.down, lines["fasteners"], lines["note"], self.out]


class BackRow(QWidget):
    """A part with the tick that it is back.

    Signals:
        ticked: whether it is back now.
    """

    ticked = Signal(bool)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.tick = Tick("")
        self.tick.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.tick.setMinimumSize(theme.px(34), theme.px(34))
        self.name = wrapping("", "strong")
        self.how = wrapping("", "small")
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 4)
        grid.setHorizontalSpacing(GAP)
        grid.setVerticalSpacing(1)
        grid.setColumnStretch(1, 1)
        grid.addWidget(self.tick, 0, 0, Qt.AlignmentFlag.AlignTop)
        grid.addWidget(self.name, 0, 1, Qt.AlignmentFlag.AlignVCenter)
        grid.addWidget(self.how, 1, 1)
        self.tick.clicked.connect(self.ticked)

    def show_part(self, part: OffPart, *, is_next: bool) -> None:
        """Show whether a part is back, and what lets it go back."""
        entry = part.entry
        self.tick.setChecked(entry.back is not None)
        self.name.setText(entry.name)
        if entry.back:
            how = say("back {at}", at=f"{entry.back:%Y-%m-%d %H:%M}")
        else:
            how = f"{say('Next.') if is_next else ''} {back_words(part)}".strip()
        self.how.setText(how)
        self.how.setVisible(bool(how))
        state = say("back", meaning="a part") if entry.back else say("to go back")
        self.tick.setAccessibleName(f"{entry.name}, {state}")
        self.tick.setAccessibleDescription(f"{how} {entry.reminder}".strip())
