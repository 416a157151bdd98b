"""A list of steps on the screen: one step large, the list beside it, the door that ticks.

The trap: after every change of the job the step in hand may be another one. The screen follows it
unless the person has chosen a step elsewhere in the list to look at.
"""

from __future__ import annotations

from typing import Protocol

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from aligner.assessment import StepStanding
from aligner.errors import AlignerError
from aligner.language import say
from aligner.window.open_job import Change
from aligner.window.setting import Setting
from aligner.window.steps.step_list import StepList
from aligner.window.steps.tick_door import TickDoor


class AssessedSteps(Protocol):
    """The list as it stands: every step of it, and the one in hand."""

    @property
    def steps(self) -> tuple[StepStanding, ...]: ...
    @property
    def next_step(self) -> StepStanding | None: ...


class StepsView(QWidget):
    """What the tightening and the loosening list do alike.

    Signals:
        finished: the list is done and the person goes on.
    """

    finished = Signal()

    def __init__(self, setting: Setting, door: TickDoor) -> None:
        super().__init__()
        self._open_job = setting.open_job
        self._now = setting.now
        self._shown_key = ""
        self._follows = True
        self.list = StepList(setting.theme, setting.show)
        self.door = door
        self.list.currentRowChanged.connect(self._chosen)
        self.list.acted.connect(door.act)
        self.list.let_go.connect(door.let_go)
        self.list.strayed.connect(door.take_number)
        self.list.back_wanted.connect(door.leave)
        door.went_on.connect(self.finished)
        door.list_wanted.connect(self.take_keyboard)
        door.back_wanted.connect(self._back)
        setting.open_job.started.connect(door.begin_anew)

    @property
    def found(self) -> AssessedSteps:
        """The list as it stands."""
        raise NotImplementedError

    def show_step(self) -> None:
        """Show the step that is chosen."""
        raise NotImplementedError

    def take_keyboard(self) -> None:
        """Put the keyboard on the list, or where the work goes on without one."""
        raise NotImplementedError

    @property
    def chosen(self) -> StepStanding | None:
        """The step on the screen."""
        return next((each for each in self.found.steps if each.step.key == self._shown_key), None)

    def refresh(self) -> None:
        """Show the list as it is now, the step in hand chosen unless another is looked at."""
        if self._follows or self.chosen is None:
            self._go_to_next()
        self.list.show_steps(self.found.steps, self._shown_key)
        self.show_step()

    def begin(self) -> None:
        """Choose the step in hand and put the keyboard on the list."""
        self._follows = True
        self.refresh()
        self.take_keyboard()

    def tick(self, key: str, change: Change) -> None:
        """Tick a step by one undoable step of its name, or say why it is refused."""
        title = next(each.step.title for each in self.found.steps if each.step.key == key)
        self._follows = True
        try:
            self._open_job.edit(title, change)
        except AlignerError as refusal:
            self.door.say(say("Nothing was ticked. {refusal}.", refusal=refusal))
        self.take_keyboard()

    def untick(self, change: Change) -> None:
        """Take a tick back."""
        self._open_job.edit(say("untick a step"), change)
        self.take_keyboard()

    def _go_to_next(self) -> None:
        self._follows = True
        ahead = self.found.next_step
        self._shown_key = ahead.step.key if ahead else ""

    def _chosen(self, row: int) -> None:
        steps = self.found.steps
        if not 0 <= row < len(steps):
            return
        self._shown_key = steps[row].step.key
        in_hand = self.found.next_step
        self._follows = in_hand is not None and in_hand.step.key == self._shown_key
        self.list.follow_choice()
        self.show_step()
        self._open_job.look_changed.emit()

    def _back(self) -> None:
        self._go_to_next()
        self.refresh()
        self._open_job.look_changed.emit()
