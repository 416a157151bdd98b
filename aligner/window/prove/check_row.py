"""One final check on the screen: a tick, how it is done, and room for what was noticed."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from aligner.drawing.theme import GAP, ROOM, Theme
from aligner.job import Check
from aligner.job.final_checks import FinalCheck
from aligner.language import inside, say
from aligner.window.widgets.labels import Caution
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.tick import Tick
from aligner.window.widgets.word_line import WordLine


class CheckRow(QWidget):
    """A check with its tick and its note.

    Signals:
        ticked: the check's name, and whether it is done now.
        typed, kept: the check's name, and its note.
    """

    ticked = Signal(str, bool)
    typed = Signal(str, str)
    kept = Signal(str, str)

    def __init__(self, theme: Theme, name: str, about: FinalCheck | None) -> None:
        super().__init__()
        title = say(name)
        self.tick = Tick(title)
        self.tick.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.tick.setAccessibleName(title)
        about_note = say("Note on: {name}", name=title)
        self.note = WordLine(theme, about_note, say("what was noticed"))
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
        self.note.typed.connect(lambda note: self.typed.emit(name, note))
        self.note.kept.connect(lambda note: self.kept.emit(name, note))

    def show_check(self, check: Check, *, is_signed: bool) -> None:
        """Show a check; a note that is being typed stays as it is typed."""
        self.tick.setChecked(check.done)
        self.tick.setEnabled(not is_signed)
        self.note.show_kept(check.note)
        self.note.setReadOnly(is_signed)
