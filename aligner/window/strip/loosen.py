"""The loosening list on the screen: the step in hand large, its bolts lit, the list beside it.

The trap: after every change of the job the step in hand may be another one. The screen follows it
unless the person has chosen a step elsewhere in the list to look at.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from aligner.assessment import StepStanding, StepState
from aligner.assessment.strip import StripAssessment
from aligner.assessment.ticks import with_loosened
from aligner.drawing.theme import GAP
from aligner.errors import AlignerError
from aligner.job.edits_strip import without_loosened
from aligner.language import say
from aligner.window.setting import Setting
from aligner.window.steps.step_list import StepList
from aligner.window.steps.tick_door import TickDoor
from aligner.window.strip.step_card import LooseBoltCard, LooseStepCard
from aligner.window.widgets.folding_row import FoldingRow


class LoosenDoor(TickDoor):
    """The one door through which a step of the loosening list is ticked or unticked."""

    def show_parts(self, standing: StepStanding | None, *, is_finished: bool) -> None:
        """Show what a step takes; none takes a torque or a wrench."""
        super().show_parts(standing, is_finished=is_finished)
        self.wrenches.hide()
        is_open = standing is not None and standing.state is not StepState.DONE
        reads = standing.step.reads if standing is not None else None
        self.read_again.setVisible(bool(reads) and is_open)
        is_height = reads == "protrusion"
        self.read_again.setText(say("Read the heights") if is_height else say("Read both sides"))
        if standing is None:
            self.done.setText(say("Go on to Inspect   Enter"))


class LoosenView(QWidget):
    """The ordered list of what is loosened.

    Signals:
        readings_wanted: what the step reads ("protrusion", "squaring") is to be written down.
        finished: the list is done and the person goes on.
    """

    readings_wanted = Signal(str)
    finished = Signal()

    def __init__(self, setting: Setting) -> None:
        super().__init__()
        theme, show = setting.theme, setting.show
        self._open_job = setting.open_job
        self._now = setting.now
        self._shown_key = ""
        self._follows = True
        self.card = LooseStepCard(theme, show)
        self.bolts = LooseBoltCard(theme)
        self.list = StepList(theme, show)
        self.list.setAccessibleName(say("loosening list"))
        self.door = LoosenDoor(theme, show)
        self.door.show_parts(None, is_finished=False)
        cards = FoldingRow(theme, spacing=GAP)
        cards.add(self.card, 40)
        cards.add(self.bolts, 29)
        cards.add(self.list, 35)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(cards)
        self.list.currentRowChanged.connect(self._chosen)
        self.list.acted.connect(self.door.act)
        self.list.let_go.connect(self.door.let_go)
        self.list.back_wanted.connect(self.door.leave)
        self.door.ticked.connect(lambda key, _torque, _wrench, reason: self._tick(key, reason))
        self.door.unticked.connect(self._untick)
        self.door.went_on.connect(self.finished)
        self.door.list_wanted.connect(self.take_keyboard)
        self.door.back_wanted.connect(self._back)
        self.door.read_again.clicked.connect(self._want_readings)

    @property
    def chosen(self) -> StepStanding | None:
        """The step on the screen."""
        return next((each for each in self._found.steps if each.step.key == self._shown_key), None)

    def refresh(self) -> None:
        """Show the list as it is now, the step in hand chosen unless another is looked at."""
        steps = self._found.steps
        if self._follows or self.chosen is None:
            self._go_to_next()
        self.list.show_steps(steps, self._shown_key)
        self.list.setVisible(bool(steps))
        self.bolts.setVisible(bool(steps))
        self._show_step()

    def begin(self) -> None:
        """Choose the step in hand and put the keyboard on the list."""
        self._follows = True
        self.refresh()
        self.take_keyboard()

    def take_keyboard(self) -> None:
        """Put the keyboard on the list, or on the button where no step is left."""
        place: QWidget = self.door.done if self.chosen is None else self.list
        place.setFocus(Qt.FocusReason.OtherFocusReason)

    @property
    def _found(self) -> StripAssessment:
        return self._open_job.assessment.strip

    def _go_to_next(self) -> None:
        self._follows = True
        ahead = self._found.next_step
        self._shown_key = ahead.step.key if ahead else ""

    def _chosen(self, row: int) -> None:
        steps = self._found.steps
        if not 0 <= row < len(steps):
            return
        self._shown_key = steps[row].step.key
        in_hand = self._found.next_step
        self._follows = in_hand is not None and in_hand.step.key == self._shown_key
        self.list.follow_choice()
        self._show_step()
        self._open_job.look_changed.emit()

    def _back(self) -> None:
        self._go_to_next()
        self.refresh()
        self._open_job.look_changed.emit()

    def _show_step(self) -> None:
        assessment, standing = self._open_job.assessment, self.chosen
        self.card.show_step(assessment, standing)
        self.bolts.show_loosening(self._open_job.job, assessment, standing)
        self.door.show_standing(standing, is_finished=self._found.is_finished)

    def _tick(self, key: str, reason: str) -> None:
        title = next(each.step.title for each in self._found.steps if each.step.key == key)
        self._follows = True
        try:
            self._open_job.edit(title, lambda job: with_loosened(job, key, self._now(), reason))
        except AlignerError as refusal:
            self.door.say(say("Nothing was ticked. {why}.", why=refusal))
        self.take_keyboard()

    def _untick(self, key: str, reason: str) -> None:
        self._open_job.edit(
            say("untick a step"), lambda job: without_loosened(job, key, self._now(), reason)
        )
        self.take_keyboard()

    def _want_readings(self) -> None:
        standing = self.chosen
        if standing is not None and standing.step.reads:
            self.readings_wanted.emit(standing.step.reads)
