"""The Build stage: oil, springs and caps of both legs, the head bearing, and later the sag."""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from aligner.assessment import Stage, StepStanding
from aligner.assessment.build import BEFORE_READING, BuildAssessment, BuildSubject
from aligner.assessment.ticks import with_tick
from aligner.drawing.theme import GAP
from aligner.job.edits_build import with_build_tick, with_gaps_to_read_again
from aligner.language import inside, say
from aligner.sheet.quantities import Torque
from aligner.window.build.bearing_card import BearingCard
from aligner.window.build.blend_card import BlendCard
from aligner.window.build.doors import (
    connect_bearing,
    connect_oil,
    connect_sheet,
    connect_springs,
)
from aligner.window.build.fill_card import FillCard
from aligner.window.build.force_card import ForceCard
from aligner.window.build.oil_card import OilCard
from aligner.window.build.sag_card import SagCard
from aligner.window.build.sheet_card import SheetCard
from aligner.window.build.spring_card import SpringCard
from aligner.window.build.steps_card import StepsCard
from aligner.window.build.words import sentence_words
from aligner.window.setting import Setting
from aligner.window.widgets.folding_row import beside
from aligner.window.widgets.labels import main_button
from aligner.window.widgets.page import Page
from aligner.window.widgets.reading_box import ReadingBox
from aligner.window.widgets.tab_order import walk_by_tab
from aligner.window.widgets.word_line import WordLine


class BuildStage(QWidget):
    """What is set while the front end is built up.

    Signals:
        finished: the person goes on to the alignment.
    """

    finished = Signal()

    def __init__(self, setting: Setting) -> None:
        super().__init__()
        theme, show = setting.theme, setting.show
        self._open_job = setting.open_job
        self._show = setting.show
        self._now = setting.now
        self.oil_card = OilCard(theme, show)
        self.steps_card = StepsCard(
            theme,
            say("Each leg, in this order"),
            (say("left", meaning="head of a column"), say("right", meaning="head of a column")),
        )
        self.fill_card = FillCard(theme, show)
        self.force_card = ForceCard(theme)
        self.spring_card = SpringCard(theme, show)
        self.bearing_card = BearingCard(theme, show)
        self.sag_card = SagCard(theme, show)
        self.blend_card = BlendCard(theme, show)
        self.sheet_card = SheetCard(theme, show)
        self.go_on = main_button(say("Go on to Align   Enter"))
        self.page = Page(Stage.BUILD.title)
        for card in (
            beside(theme, (self.oil_card, 12), (self.steps_card, 8)),
            beside(theme, (self.fill_card, 10), (self.blend_card, 10)),
            self.spring_card,
            beside(theme, (self.force_card, 10), (self.bearing_card, 10)),
            self.sag_card,
            self.sheet_card,
        ):
            self.page.add(card)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(GAP)
        column.addWidget(self.page)
        column.addWidget(self.go_on, 0, Qt.AlignmentFlag.AlignRight)
        setting.open_job.started.connect(self._take_another_job)
        self._connect()
        for rows in (self.steps_card, self.bearing_card):
            rows.rows_made.connect(self._order_tabs)

    def sentence(self) -> tuple[str, str, str]:
        """What to do now, its detail, and the caution that belongs to it."""
        nut = next(iter(self.bearing_card.open_nut_steps()), None)
        return sentence_words(self._found, self._show, nut)

    def refresh(self) -> None:
        """Show the job as it is now."""
        job, found = self._open_job.job, self._found
        self.oil_card.show_job(job, found)
        self.steps_card.show_steps([step for step in found.steps if step.phase != "bearing"])
        self.fill_card.show_job(job, found)
        self.force_card.show_force(found.force)
        self.spring_card.show_job(job, found)
        self.bearing_card.show_job(job, self._open_job.assessment, found)
        self.blend_card.show_job(job, found.blend)
        self.sag_card.show_job(job, found)
        self.sheet_card.show_job(job)
        self.go_on.setVisible(found.is_done)

    def begin(self) -> None:
        """Put the keyboard where the work stands."""
        now = self._found.next
        match now.subject:
            case BuildSubject.STEP if now.step is not None and now.step.phase == "bearing":
                self.bearing_card.go_to_first_open()
            case BuildSubject.STEP:
                self.steps_card.go_to_first_open()
            case BuildSubject.READ_ON if self._open_job.job.build.gauge is None:
                self.fill_card.gauge.setFocus(Qt.FocusReason.OtherFocusReason)
            case BuildSubject.POUR:
                self.fill_card.volumes[now.side].go_to_first_empty()
            case BuildSubject.BEARING_READ if self.bearing_card.open_nut_steps():
                key = self.bearing_card.open_nut_steps()[0].step.key
                self.bearing_card.nut_ticks[key].setFocus(Qt.FocusReason.OtherFocusReason)
            case BuildSubject.BEARING_READ | BuildSubject.BEARING_SET:
                self.bearing_card.pull.go_to_first_empty()
            case BuildSubject.SAG:
                self.sag_card.boxes["extended"].go_to_first_empty()
            case BuildSubject.SHEET:
                self.sheet_card.source.setFocus(Qt.FocusReason.OtherFocusReason)
                top = self.sheet_card.mapTo(self.page.widget(), QPoint()).y()
                self.page.verticalScrollBar().setValue(top)
            case BuildSubject.NOTHING:
                self.go_on.setFocus(Qt.FocusReason.OtherFocusReason)
                self.page.verticalScrollBar().setValue(0)
            case _:
                self.oil_card.boxes[now.side or "left"].go_to_first_empty()

    def go_to_value(self, path: str) -> None:
        """Put the keyboard in the box of a value of the sheet: "legs.oil.air_gap"."""
        box = self.sheet_card.boxes[path.removeprefix("legs.")]
        box.setFocus(Qt.FocusReason.OtherFocusReason)
        box.go_to_first_empty()
        self.page.ensureWidgetVisible(box)

    @property
    def _found(self) -> BuildAssessment:
        return self._open_job.assessment.build

    def _connect(self) -> None:
        connect_oil(self._open_job, self.oil_card, self.fill_card, self.blend_card)
        connect_bearing(self._open_job, self.bearing_card, self._now)
        connect_springs(self._open_job, self.spring_card, self.sag_card)
        connect_sheet(self._open_job, self.sheet_card)
        fill, bearing, sag = self.fill_card, self.bearing_card, self.sag_card
        fill.again_wanted.connect(self._read_again)
        for steps in (self.steps_card, bearing):
            steps.ticked.connect(self._tick)
            steps.walked_on.connect(self._go_on_from_step)
        bearing.nut_ticked.connect(self._tick_nut)
        self.oil_card.went_on.connect(self._go_on_from_oil)
        fill.went_on.connect(self._go_on)
        bearing.went_on.connect(self._go_on)
        self.blend_card.went_on.connect(self.spring_card.go_to_first_empty)
        for card in (self.spring_card, sag, self.sheet_card):
            card.went_on.connect(self._go_on)
        self.go_on.clicked.connect(self.finished)

    def _take_another_job(self) -> None:
        """What was typed and not kept was meant for the job before: it does not follow."""
        for box in self.findChildren(ReadingBox):
            box.forget_typing()
        for line in self.findChildren(WordLine):
            line.end_typing()
        self.sheet_card.show_afresh(self._open_job.job)
        self.refresh()

    def _tick(self, key: str, title: str, is_done: bool) -> None:
        name = inside(title)
        self._open_job.edit(
            name if is_done else say("untick: {step}", step=name),
            lambda job: with_build_tick(job, key, self._now(), is_done=is_done),
        )

    def _tick_nut(self, standing: StepStanding) -> None:
        step = standing.step
        torque = None
        if step.target_nm is not None:
            torque = Torque(f"{step.target_nm:.4g} N·m", step.target_nm)
        self._open_job.edit(
            step.title, lambda job: with_tick(job, step.key, self._now(), torque=torque)
        )
        self.begin()

    def _read_again(self) -> None:
        self._open_job.edit(
            say("air gaps to read again"), lambda job: with_gaps_to_read_again(job, self._now())
        )
        self.oil_card.boxes["left"].go_to_first_empty()

    def _go_on_from_oil(self) -> None:
        has_gauge = self._open_job.job.build.gauge is not None
        following = self.fill_card.oil if has_gauge else self.fill_card.gauge
        following.setFocus(Qt.FocusReason.TabFocusReason)

    def _go_on_from_step(self, phase: str) -> None:
        """The gap is read, and the oil set, while the spring is still out."""
        is_read_now = phase in BEFORE_READING and self._found.next.step is None
        card = self.bearing_card if phase == "bearing" else self.steps_card
        if is_read_now or all(tick.isChecked() for tick in card.ticks.values()):
            self.begin()

    def _go_on(self) -> None:
        if self._found.is_done:
            self.go_on.setFocus(Qt.FocusReason.TabFocusReason)
        elif self._found.next.subject in (BuildSubject.SET_OIL, BuildSubject.EQUALISE):
            self.fill_card.again.setFocus(Qt.FocusReason.TabFocusReason)
        else:
            self.begin()

    def _order_tabs(self) -> None:
        """Let Tab walk rows that were made later where the eye meets them."""
        oil, fill = self.oil_card, self.fill_card
        walk: list[QWidget] = [
            *oil.boxes["left"].cells,
            *oil.boxes["right"].cells,
            *self.steps_card.walk(),
            fill.gauge,
            fill.again,
            fill.oil,
            *fill.volumes["left"].cells,
            *fill.volumes["right"].cells,
            *self.blend_card.walk(),
            *self.spring_card.walk(),
            *self.bearing_card.walk(),
            *self.sag_card.walk(),
        ]
        walk_by_tab(walk)
