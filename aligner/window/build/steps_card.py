"""The build list on the screen: each step with a tick for each leg, the one in hand explained."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from aligner.drawing.theme import GAP, Theme
from aligner.job.build_steps import BuildStep, log_key
from aligner.language import inside, marked, say
from aligner.window.widgets.labels import Card, Caution, label
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.tick import Tick

_OF_SIDE = {"left": marked("{step}, left leg"), "right": marked("{step}, right leg")}


class StepTick(Tick):
    """A tick that tells when the keyboard reaches it."""

    reached = Signal()

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.reached.emit()


class StepsCard(Card):
    """Steps in their order; the one under the keyboard says why, and where the danger is.

    Signals:
        ticked: the step's name in the log, its title, and whether it is done now.
        walked_on: a step of this phase is ticked, and the keyboard has gone on from it.
        rows_made: rows came or went, so Tab has another way to walk.
    """

    ticked = Signal(str, str, bool)
    walked_on = Signal(str)
    rows_made = Signal()

    def __init__(self, theme: Theme, title: str, heads: tuple[str, ...]) -> None:
        super().__init__(title)
        self._theme = theme
        self._heads = heads
        self._given: list[BuildStep] = []
        self._shown: tuple[tuple[str, str], ...] = ()
        self._steps: dict[str, BuildStep] = {}
        self.ticks: dict[str, StepTick] = {}
        self._words: list[QLabel] = []
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(GAP)
        self._grid.setVerticalSpacing(GAP // 2)
        self._grid.setColumnStretch(0, 1)
        self.why = wrapping("", "quiet")
        self.caution = Caution()
        self.column.addLayout(self._grid)
        self.column.addStretch(1)
        self.column.addWidget(self.why)
        self.column.addWidget(self.caution)
        self.why.hide()

    def show_steps(self, steps: Sequence[BuildStep]) -> None:
        """Show the steps and what is ticked; rows are made anew only where the list changed."""
        if list(steps) == self._given and self._shows(steps):
            return
        self._given = list(steps)
        shown = tuple((step.key, step.title) for step in steps)
        if shown != self._shown:
            self._make_rows(steps)
            self._shown = shown
            self.rows_made.emit()
        for step in steps:
            for side in step.sides:
                key = log_key(step.key, side)
                self._steps[key] = step
                tick = self.ticks[key]
                entry = step.done.get(side)
                tick.setChecked(entry is not None)
                name = say(_OF_SIDE[side], step=step.title) if side else step.title
                when = f"{entry.at:%Y-%m-%d %H:%M}" if entry else ""
                tick.setToolTip(say("ticked {when}", when=when) if when else "")
                if when:
                    name = say("{step}, ticked {when}", step=name, when=when)
                tick.setAccessibleName(name)
        first = next((key for key, tick in self.ticks.items() if not tick.isChecked()), None)
        if first is not None and not any(tick.hasFocus() for tick in self.ticks.values()):
            self._explain(first)

    def go_to_first_open(self) -> bool:
        """Put the keyboard on the first tick that is open; whether there is one."""
        for tick in self.ticks.values():
            if not tick.isChecked():
                tick.setFocus(Qt.FocusReason.OtherFocusReason)
                return True
        return False

    def _shows(self, steps: Sequence[BuildStep]) -> bool:
        """Whether every tick stands as the job has it, and none as a key has just left it."""
        return all(
            self.ticks[log_key(step.key, side)].isChecked() == (side in step.done)
            for step in steps
            for side in step.sides
        )

    def walk(self) -> list[QWidget]:
        """What the keyboard can reach, in the order the eye goes."""
        ticks: list[QWidget] = list(self.ticks.values())
        return ticks

    def _make_rows(self, steps: Sequence[BuildStep]) -> None:
        while (item := self._grid.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        self.ticks, self._steps = {}, {}
        for column, head in enumerate(self._heads, start=1):
            if head:
                place = Qt.AlignmentFlag.AlignHCenter
                self._grid.addWidget(label(head, "small"), 0, column, place)
        for row, step in enumerate(steps, start=1):
            self._grid.addWidget(wrapping(step.title), row, 0)
            for column, side in enumerate(step.sides, start=1):
                key = log_key(step.key, side)
                tick = StepTick("")
                tick.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
                tick.setMinimumSize(self._theme.px(34), self._theme.px(30))
                tick.setAccessibleDescription(f"{step.reason} {step.caution}".strip())
                tick.reached.connect(lambda key=key: self._explain(key))
                tick.clicked.connect(lambda is_done, key=key: self._tick(key, is_done))
                self._grid.addWidget(tick, row, column, Qt.AlignmentFlag.AlignHCenter)
                self.ticks[key] = tick

    def _explain(self, key: str) -> None:
        step = self._steps[key]
        self.why.setText(step.reason)
        self.why.setVisible(bool(step.reason))
        self.caution.say(inside(step.caution))

    def _tick(self, key: str, is_done: bool) -> None:
        self.ticked.emit(key, self._steps[key].title, is_done)
        if is_done:
            keys = list(self.ticks)
            after = [self.ticks[each] for each in keys[keys.index(key) + 1 :]]
            following = next((tick for tick in after if not tick.isChecked()), None)
            if following is not None:
                following.setFocus(Qt.FocusReason.TabFocusReason)
            self.walked_on.emit(self._steps[key].phase)
