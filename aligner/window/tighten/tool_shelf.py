"""The owner's tools of one kind: a line each, with what can be done with it, and one more."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from aligner.drawing.theme import GAP
from aligner.language import say
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.page import wrapping


class ToolShelf(Card):
    """Tools by name.

    Signals:
        change_wanted: the tool of this name is to be changed.
        removed: the tool of this name is to go; Undo brings it back.
        one_more: another tool is to be added.
    """

    change_wanted = Signal(str)
    removed = Signal(str)
    one_more = Signal()

    def __init__(self, title: str, nothing: str, add: str) -> None:
        super().__init__(title)
        self._nothing = wrapping(nothing, "quiet")
        self._rows = QVBoxLayout()
        self._rows.setSpacing(GAP)
        self._shown: dict[str, str] = {}
        self.buttons: dict[str, tuple[QPushButton, QPushButton]] = {}
        self.add = QPushButton(add)
        self.add.clicked.connect(self.one_more)
        self.column.addWidget(self._nothing)
        self.column.addLayout(self._rows)
        self.column.addWidget(self.add, 0, Qt.AlignmentFlag.AlignLeft)

    def show_tools(self, lines: Mapping[str, str]) -> None:
        """Show these tools: name, and the line that describes it."""
        self._nothing.setVisible(not lines)
        if dict(lines) == self._shown and list(lines) == list(self._shown):
            return
        self._shown = dict(lines)
        while (item := self._rows.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        self.buttons = {}
        for name, line in lines.items():
            self._rows.addWidget(self._row(name, line))

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops, as the eye goes."""
        return [*(button for pair in self.buttons.values() for button in pair), self.add]

    def _row(self, name: str, line: str) -> QWidget:
        row = QWidget()
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(label(name, "strong", wraps=True))
        words.addWidget(wrapping(line, "small"))
        change, remove = QPushButton(say("Change")), QPushButton(say("Remove"))
        change.setAccessibleName(say("Change {name}", name=name))
        remove.setAccessibleName(say("Remove {name}", name=name))
        change.clicked.connect(lambda: self.change_wanted.emit(name))
        remove.clicked.connect(lambda: self.removed.emit(name))
        self.buttons[name] = (change, remove)
        across = QHBoxLayout(row)
        across.setContentsMargins(0, 0, 0, 0)
        across.addLayout(words, 1)
        across.addWidget(change)
        across.addWidget(remove)
        return row
