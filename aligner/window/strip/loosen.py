"""The loosening list on the screen: the step in hand large, its bolts lit, the list beside it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from aligner.assessment import StepStanding, StepState
from aligner.assessment.strip import StripAssessment
from aligner.assessment.ticks import with_loosened
from aligner.drawing.theme import GAP
from aligner.job.edits_strip import without_loosened
from aligner.language import say
from aligner.window.setting import Setting
from aligner.window.steps.steps_view import StepsView
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


class LoosenView(StepsView):
    """The ordered list of what is loosened.

    Signals:
        readings_wanted: what the step reads ("protrusion", "squaring") is to be written down.
    """

    readings_wanted = Signal(str)

    def __init__(self, setting: Setting) -> None:
        theme, show = setting.theme, setting.show
        super().__init__(setting, LoosenDoor(theme, show))
        self.card = LooseStepCard(theme, show)
        self.bolts = LooseBoltCard(theme)
        self.list.setAccessibleName(say("loosening list"))
        self.door.show_parts(None, is_finished=False)
        cards = FoldingRow(theme, spacing=GAP)
        cards.add(self.card, 40)
        cards.add(self.bolts, 29)
        cards.add(self.list, 35)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(cards)
        self.door.ticked.connect(
            lambda key, _torque, _wrench, reason: self.tick(
                key, lambda job: with_loosened(job, key, self._now(), reason)
            )
        )
        self.door.unticked.connect(
            lambda key, reason: self.untick(
                lambda job: without_loosened(job, key, self._now(), reason)
            )
        )
        self.door.read_again.clicked.connect(self._want_readings)

    @property
    def found(self) -> StripAssessment:
        """The loosening list as it stands."""
        return self._open_job.assessment.strip

    def show_step(self) -> None:
        """Show the step that is chosen."""
        assessment, standing = self._open_job.assessment, self.chosen
        self.list.setVisible(bool(self.found.steps))
        self.bolts.setVisible(bool(self.found.steps))
        self.card.show_step(assessment, standing)
        self.bolts.show_loosening(self._open_job.job, assessment, standing)
        self.door.show_standing(standing, is_finished=self.found.is_finished)

    def take_keyboard(self) -> None:
        """Put the keyboard on the list, or on the button where no step is left."""
        place: QWidget = self.door.done if self.chosen is None else self.list
        place.setFocus(Qt.FocusReason.OtherFocusReason)

    def _want_readings(self) -> None:
        standing = self.chosen
        if standing is not None and standing.step.reads:
            self.readings_wanted.emit(standing.step.reads)
