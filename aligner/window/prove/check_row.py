"""One final check on the screen: a tick, how it is done, and room for what was noticed."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from aligner.drawing.theme import GAP, ROOM
from aligner.job import Check
from aligner.job.final_checks import FinalCheck
from aligner.language import inside, say
from aligner.window.widgets.labels import Caution
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.tick import Tick


class CheckRow(QWidget):
    """A check with its tick and its note.

    Signals:
        ticked: the check's name, and whether it is done now.
        typed: the note is being typed.
        left: the note's field is left.
    """

    ticked = Signal(str, bool)
    typed = Signal()
    left = Signal()

    def __init__(self, name: str, about: FinalCheck | None) -> None:
        super().__init__()
        title = say(name)
        self.tick = Tick(title)
        self.tick.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.tick.setAccessibleName(title)
        self.note = QLineEdit()
        self.note.setPlaceholderText(say("what was noticed"))
        self.note.setAccessibleName(say("Note on: {name}", name=title))
        line = QHBoxLayout()
        line.setSpacing(ROOM)
        line.addWidget(self.tick, 1)
        line.addWidget(self.note, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, GAP)
        column.setSpacing(4)
        column.addLayout(line)
        if about is not None:
            how = say(about.how)
            self.tick.setAccessibleDescription(how)
            column.addWidget(wrapping(how, "quiet"))
            if about.caution:
                column.addWidget(Caution(inside(say(about.caution))))
        self.tick.clicked.connect(lambda is_done: self.ticked.emit(name, is_done))
        self.note.textEdited.connect(lambda _: self.typed.emit())
        self.note.editingFinished.connect(self.left)

    def show_check(self, check: Check, *, is_signed: bool) -> None:
        """Show a check; a note that is being typed stays as it is typed."""
        self.tick.setChecked(check.done)
        self.tick.setEnabled(not is_signed)
        if not self.is_being_typed and self.note.text() != check.note:
            self.note.setText(check.note)
        self.note.setReadOnly(is_signed)

    @property
    def is_being_typed(self) -> bool:
        """Whether the note holds what was typed and is not kept yet."""
        return self.note.isModified()

    def end_typing(self) -> None:
        """From here on the note shows what the job holds."""
        self.note.setModified(False)
