"""The Tighten stage: the step in hand large, its bolts lit, the whole list beside it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QWidget

from aligner.assessment.ticks import with_tick
from aligner.assessment.tightening import TighteningAssessment
from aligner.drawing.theme import GAP, ROOM
from aligner.job.edits_align import with_heights_to_read_again
from aligner.job.edits_tighten import with_untick
from aligner.language import say
from aligner.window.setting import Setting
from aligner.window.steps.bolt_card import BoltCard
from aligner.window.steps.steps_view import StepsView
from aligner.window.steps.tick_door import TickDoor
from aligner.window.tighten.rest import RestCard
from aligner.window.tighten.step_card import StepCard
from aligner.window.widgets.folding_row import FoldingRow
from aligner.window.widgets.part_stack import PartStack
from aligner.window.widgets.standing_foot import StandingFoot
from aligner.window.widgets.tab_order import walk_by_tab

if TYPE_CHECKING:
    from aligner.window.tighten.wrench_card import WrenchCard


class TightenStage(StepsView):
    """The ordered checklist.

    Signals:
        heights_wanted: the heights are to be read again, on the Align stage.
        sheet_wanted: the fasteners are to be given, on the Bike stage.
    """

    heights_wanted = Signal()
    sheet_wanted = Signal()

    def __init__(self, setting: Setting) -> None:
        theme, show = setting.theme, setting.show
        super().__init__(setting, TickDoor(theme, show))
        self._theme = theme
        self._show = show
        self._seen_key = ""
        self.card = StepCard(theme, show)
        self.rest = RestCard(theme)
        self.bolts = BoltCard(theme)
        self.wrench_card: WrenchCard | None = None
        self._lay_out()
        self._connect()

    @property
    def done(self) -> QWidget:
        """The button that ticks."""
        return self.door.done

    @property
    def reason(self) -> QWidget:
        """The line in which a reason is written."""
        return self.door.reason

    @property
    def read_again(self) -> QWidget:
        """The button that puts the heights by, to be read again."""
        return self.door.read_again

    def sentence(self) -> tuple[str, str, str]:
        """The step on the screen, and why it stands where it stands."""
        tightening = self._open_job.assessment.tightening
        standing = self.chosen
        if standing is not None:
            return f"{standing.step.title}.", standing.step.reason, ""
        if tightening.steps:
            return say("Everything is done up."), say("Go on to Prove: brakes first."), ""
        return say("There is nothing to tighten."), "", ""

    @property
    def found(self) -> TighteningAssessment:
        """The tightening list as it stands."""
        return self._open_job.assessment.tightening

    def lay_by(self) -> tuple[object, object]:
        """What is typed and not kept: at the door, and in the form of a wrench."""
        is_open = self.wrench_card is not None and self.door.wrenches.isChecked()
        form = self.wrench_card.lay_by() if self.wrench_card is not None and is_open else None
        return self.door.lay_by(), form

    def take_up(self, laid_by: object) -> None:
        """Show what was typed into the page that stood here before."""
        if isinstance(laid_by, tuple):
            at_the_door, form = laid_by
            self.door.take_up(at_the_door)
            if form is not None:
                self.door.wrenches.setChecked(True)
            if form is not None and self.wrench_card is not None:
                self.wrench_card.take_up(form)

    def begin(self) -> None:
        """Choose the step in hand and put the keyboard on the list."""
        super().begin()
        self._page.go_to_top()

    def take_keyboard(self) -> None:
        """Put the keyboard on the list, or on the button where no list is to be seen."""
        if self.chosen is not None and not self.list.isHidden():
            place: QWidget = self.list
        elif self._open_job.assessment.tightening.steps:
            place = self.door.done
        else:
            place = self.rest.go
        place.setFocus(Qt.FocusReason.OtherFocusReason)

    def show_step(self) -> None:
        """Show the step that is chosen, or that nothing is left."""
        job, assessment = self._open_job.job, self._open_job.assessment
        tightening = assessment.tightening
        standing = self.chosen
        if self._shown_key != self._seen_key:  # another step begins at its torque
            self._seen_key = self._shown_key
            self._page.go_to_top()
        self.bolts.show_step(job, assessment, standing)
        self.door.show_standing(standing, is_finished=tightening.is_finished)
        if standing is not None:
            self.card.show_step(job, assessment, standing)
        elif tightening.steps:
            self.rest.show_finished(job, tightening)
        else:
            notices = tightening.notices
            why = notices[0].text if notices else say("The sheet lists no fasteners.")
            self.rest.show_empty(why)
        self.left.setCurrentWidget(self.card if standing is not None else self.rest)
        has_list = bool(tightening.steps)
        self.list.setVisible(has_list and not self.door.wrenches.isChecked())
        self.bolts.setVisible(has_list and not self.door.wrenches.isChecked())
        if standing is None and self.door.wrenches.isChecked():
            self.door.wrenches.setChecked(False)
        if self.wrench_card is not None and self.wrench_card.isVisible():
            self.wrench_card.show_job(job, assessment, standing)
            walk_by_tab([*self.wrench_card.stops(), *self.door.stops()])

    def _ticked(self, key: str, torque: object, wrench: str, reason: str) -> None:
        self.tick(
            key,
            lambda job: with_tick(
                job, key, self._now(), torque=torque, wrench=wrench, reason=reason
            ),
        )

    def _unticked(self, key: str, reason: str) -> None:
        self.untick(lambda job: with_untick(job, key, self._now(), reason))

    def _read_again(self) -> None:
        standing = self.chosen
        if standing is not None and standing.step.reads == "protrusion":
            self._open_job.edit(
                say("heights to read again"),
                lambda job: with_heights_to_read_again(job, self._now()),
            )
        self.heights_wanted.emit()

    def _fold_wrenches(self, is_open: bool) -> None:
        """Show the wrenches in place of list and drawing; the step in hand stays beside them."""
        if is_open and self.wrench_card is None:
            from aligner.window.tighten.wrench_card import WrenchCard

            self.wrench_card = WrenchCard(self._open_job, self._theme, self._show)
            self.wrench_card.left.connect(lambda: self.door.wrenches.setChecked(False))
            self._cards.add(self.wrench_card, 64)
        if self.wrench_card is not None:
            self.wrench_card.setVisible(is_open)
        self.show_step()
        if is_open and self.wrench_card is not None:
            self.wrench_card.begin()
        else:
            self.take_keyboard()

    def _connect(self) -> None:
        self.door.ticked.connect(self._ticked)
        self.door.unticked.connect(self._unticked)
        self.door.read_again.clicked.connect(self._read_again)
        self.door.wrenches.toggled.connect(self._fold_wrenches)
        self.rest.sheet_wanted.connect(self.sheet_wanted)

    def _lay_out(self) -> None:
        self.left = PartStack()
        self.left.addWidget(self.card)
        self.left.addWidget(self.rest)
        self._cards = FoldingRow(self._theme, spacing=GAP)
        self._cards.add(self.left, 40)
        self._cards.add(self.bolts, 29)
        self._cards.add(self.list, 35)
        self._page = StandingFoot(self, self._theme, self._cards, self.door)
        self._page.setSpacing(ROOM - 4)
