"""A form in place for one wrench or one adapter: Enter walks down it and keeps it at the end.

The trap: nothing typed is lost. A line that cannot be read keeps its text, is marked, and says
why; the form stays until it is kept or left.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton, QWidget

from aligner.drawing.theme import GAP, Theme
from aligner.errors import AlignerError
from aligner.language import begun, say
from aligner.window.measuring.guides import measured_by
from aligner.window.tighten.wrench_fields import Field, FieldRefused
from aligner.window.widgets.labels import Card, label, main_button, set_tone
from aligner.window.widgets.tick import Tick
from aligner.window.widgets.typed_line import FormLine

Keep = Callable[[dict[str, str], bool], None]


class ToolForm(Card):
    """The lines of one tool.

    Signals:
        typed: something was typed or ticked.
        left: the form is put away, its lines emptied.
    """

    typed = Signal()
    left = Signal()

    def __init__(self, theme: Theme, fields: tuple[Field, ...], keep: Keep, tick: str = "") -> None:
        super().__init__()
        self._keep = keep
        self._title = label("", "strong")
        self.lines: dict[str, FormLine] = {}
        self.tick = Tick("")
        self.tick.setAccessibleName(tick)
        self.refusal = label("", "text", wraps=True, tone="attention")
        self.keep_button = main_button(say("Keep   Enter"))
        self.leave_button = QPushButton(say("Leave it   Esc"))
        self.column.addWidget(self._title)
        self.column.addLayout(self._grid(theme, fields))
        self.column.addWidget(self._tick_row(tick))
        self.column.addWidget(self.refusal)
        foot = QHBoxLayout()
        foot.addStretch(1)
        foot.addWidget(self.leave_button)
        foot.addWidget(self.keep_button)
        self.column.addLayout(foot)
        self.keep_button.clicked.connect(self.keep)
        self.leave_button.clicked.connect(self.leave)
        self.tick.clicked.connect(lambda _: self.typed.emit())
        self.hide()

    def begin(self, title: str, texts: dict[str, str], *, is_ticked: bool = False) -> None:
        """Show the form with what is known, the keyboard in its first line."""
        self._title.setText(title)
        self.setAccessibleName(title)
        for line in self.lines.values():
            self._mark(line, "")
        self.refusal.hide()
        self.show()
        first = next(iter(self.lines.values()))
        first.setFocus(Qt.FocusReason.OtherFocusReason)
        self.fill(texts, is_ticked=is_ticked)
        first.selectAll()

    def fill(self, texts: dict[str, str], *, is_ticked: bool) -> None:
        """Put texts into the lines."""
        for key, line in self.lines.items():
            line.setText(texts.get(key, ""))
        self.tick.setChecked(is_ticked)
        self.typed.emit()

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops, as the eye goes."""
        return [*self.lines.values(), self.tick, self.leave_button, self.keep_button]

    def texts(self) -> dict[str, str]:
        """What stands in the lines."""
        return {key: line.text() for key, line in self.lines.items()}

    def keep(self) -> None:
        """Keep what is typed, or say what stands against it."""
        for line in self.lines.values():
            self._mark(line, "")
        try:
            self._keep(self.texts(), self.tick.isChecked())
        except AlignerError as refusal:
            said = str(refusal)
            self.refusal.setText(f"{begun(said)}.")
            self.refusal.show()
            key = refusal.key if isinstance(refusal, FieldRefused) else "name"
            line = self.lines.get(key, self.lines["name"])
            self._mark(line, said)
            line.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        self.leave()

    def leave(self) -> None:
        """Put the form away."""
        self.hide()
        self.left.emit()

    def _tick_row(self, words: str) -> QWidget:
        """The tick and what it says, which may be longer than one line."""
        made = QWidget()
        row = QHBoxLayout(made)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GAP)
        beside = label(words, wraps=True)
        beside.setBuddy(self.tick)
        beside.installEventFilter(self)
        row.addWidget(self.tick, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(beside, 1)
        if not words:
            made.hide()
        return made

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """A click on what the tick says ticks it."""
        if event.type() == QEvent.Type.MouseButtonRelease:
            self.tick.click()
        return super().eventFilter(watched, event)

    def _grid(self, theme: Theme, fields: tuple[Field, ...]) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP)
        grid.setVerticalSpacing(GAP // 2)
        for place, field in enumerate(fields):
            row, pair = divmod(place, 2)
            line = FormLine(say(field.label), say(field.example))
            measured_by(line, field.guide)
            line.setMinimumHeight(theme.px(34))
            line.went_on.connect(lambda key=field.key: self._go_on(key))
            line.escaped.connect(self.leave)
            line.textEdited.connect(lambda _: self.typed.emit())
            self.lines[field.key] = line
            words: QWidget = label(say(field.label), "small", wraps=True)
            grid.addWidget(words, row, 2 * pair)
            grid.addWidget(line, row, 2 * pair + 1)
        for column, share in enumerate((4, 6, 4, 6)):
            grid.setColumnStretch(column, share)
        return grid

    def _go_on(self, key: str) -> None:
        keys = list(self.lines)
        place = keys.index(key) + 1
        if place == len(keys):
            self.keep()
        else:
            self.lines[keys[place]].setFocus(Qt.FocusReason.TabFocusReason)

    def _mark(self, line: FormLine, why: str) -> None:
        set_tone(line, "refused", "true" if why else "false")
        line.setAccessibleDescription(why)
