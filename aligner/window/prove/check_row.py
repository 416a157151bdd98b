"""One final check on the screen: a tick, how it is done, and room for what was noticed."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QCheckBox,
    QHBoxLayout,
    QLineEdit,
    QStyle,
    QStyleOptionButton,
    QVBoxLayout,
    QWidget,
)

from aligner.drawing.theme import GAP, ROOM
from aligner.job import Check
from aligner.job.final_checks import FinalCheck
from aligner.language import inside, say
from aligner.window.widgets.labels import Caution
from aligner.window.widgets.page import wrapping


class Tick(QCheckBox):
    """A box that Space or Enter ticks; a mark stands in it, for colour alone says nothing."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Tick by Enter as by Space."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.isAutoRepeat():
            self.click()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if not self.isChecked():
            return
        option = QStyleOptionButton()
        self.initStyleOption(option)
        box = QRectF(
            self.style().subElementRect(QStyle.SubElement.SE_CheckBoxIndicator, option, self)
        )
        mark = [(0.24, 0.52), (0.43, 0.71), (0.77, 0.31)]
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self.palette().highlightedText(), box.width() / 9))
        painter.drawPolyline(
            [QPointF(box.x() + x * box.width(), box.y() + y * box.height()) for x, y in mark]
        )


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
