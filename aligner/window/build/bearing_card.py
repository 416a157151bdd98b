"""The card for the head bearing: its steps, the stem nut's steps, the pull, the feel, the log.

The trap: the stem nut's steps belong to the tightening list. They are ticked here in that same
list, when it is their turn, and never in a list of their own.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QWidget

from aligner.assessment import Assessment, StepStanding, StepState
from aligner.assessment.build import BuildAssessment
from aligner.drawing.theme import GAP, Theme
from aligner.gauging import Verdict
from aligner.job import Job
from aligner.job.build import FallAway
from aligner.language import marked, say
from aligner.sheet.quantities import Force, Length
from aligner.units import FORCE, shown
from aligner.units.preferred import Preferred
from aligner.window.build.adjustments import Adjustments
from aligner.window.build.results import bearing_words
from aligner.window.build.steps_card import StepsCard
from aligner.window.steps.step_words import big_words
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.labels import label, set_tone
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.reading_box import ReadingBox, one_of
from aligner.window.widgets.tick import Tick

_FELT: tuple[tuple[FallAway | None, str], ...] = (
    (None, marked("how does the steering fall to each side?")),
    *((felt, felt.value) for felt in FallAway),
)


class BearingCard(StepsCard):
    """How the head bearing is set and checked.

    Signals:
        nut_ticked: a step of the tightening list was ticked here.
        typed: fields of the check while they are typed. kept: when they are left.
        went_on: Enter after the last entry.
    """

    nut_ticked = Signal(object)
    typed = Signal(object)
    kept = Signal(object)
    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(theme, say("Head bearing"), ("",))
        self._show = show
        self.nut_ticks: dict[str, Tick] = {}
        self._standings: dict[str, StepStanding] = {}
        self._nut_words: dict[str, QLabel] = {}
        self._nut = QGridLayout()
        self._nut.setVerticalSpacing(GAP // 2)
        self._nut.setColumnStretch(0, 1)
        self.pull = ReadingBox(theme, say("pull"), Force, "N", guide="pull")
        self.radius = ReadingBox(theme, say("radius"), Length, show.length, 1, "pull_radius")
        self.felt = Choice(
            say("how the steering falls to each side"),
            [(felt, say(words)) for felt, words in _FELT],
        )
        self.said = label("", "strong", wraps=True)
        self.nut_said = wrapping("", "quiet")
        self.adjustments = Adjustments(theme)
        row = QHBoxLayout()
        row.setSpacing(GAP)
        row.addWidget(self.pull, 3, Qt.AlignmentFlag.AlignTop)
        row.addWidget(self.radius, 2, Qt.AlignmentFlag.AlignTop)
        self.column.addLayout(self._nut)
        self.column.addWidget(self.nut_said)
        self.column.addLayout(row)
        for widget in (self.felt, self.said, self.adjustments):
            self.column.addWidget(widget)
        self._connect()

    def show_job(self, job: Job, assessment: Assessment, found: BuildAssessment) -> None:
        """Show a job's head bearing."""
        self.show_steps([step for step in found.steps if step.phase == "bearing"])
        self._show_nut(assessment)
        read = job.build.bearing
        pull = found.bearing.pull_n
        self.pull.show_readings(read.pull, say("not read") if pull is None else shown(pull, FORCE))
        on_sheet = job.sheet.legs.bearing.radius
        radius = read.radius or on_sheet
        mean = radius.text if radius else say("not read")
        self.radius.show_readings((read.radius,) if read.radius else (), mean)
        self.felt.show_value(read.fall_away)
        bearing = found.bearing
        said = [bearing_words(bearing, self._show)]
        said += [notice.text for notice in bearing.notices if "radius" not in notice.where]
        self.said.setText(" ".join(said))
        is_wrong = bearing.verdict is Verdict.OUT or bearing.fall_away not in (None, FallAway.FREE)
        set_tone(self.said, "tone", "attention" if is_wrong else "")
        self.adjustments.show_job(job)

    def walk(self) -> list[QWidget]:
        """What the keyboard can reach, in the order the eye goes."""
        return [
            *super().walk(),
            *self.nut_ticks.values(),
            *self.pull.cells,
            *self.radius.cells,
            self.felt,
            *self.adjustments.walk(),
        ]

    def open_nut_steps(self) -> list[StepStanding]:
        """The stem nut's steps on the tightening list that are not done."""
        found = [self._standings[key] for key in self.nut_ticks]
        return [each for each in found if each.state is not StepState.DONE]

    def _show_nut(self, assessment: Assessment) -> None:
        steps = [
            each
            for each in assessment.tightening.steps
            if each.step.joint_kind == "stem_nut" and each.step.kind in ("seat", "turn", "torque")
        ]
        keys = [each.step.key for each in steps]
        if keys != list(self.nut_ticks):
            while (item := self._nut.takeAt(0)) is not None:
                widget = item.widget()
                if widget is not None:
                    widget.hide()
                    widget.deleteLater()
            self.nut_ticks, self._nut_words = {}, {}
            for row, each in enumerate(steps):
                tick = Tick("")
                tick.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
                tick.setMinimumSize(self._theme.px(34), self._theme.px(30))
                tick.clicked.connect(lambda _, key=each.step.key: self._tick_nut(key))
                said = wrapping("")
                self._nut.addWidget(said, row, 0)
                self._nut.addWidget(tick, row, 1, Qt.AlignmentFlag.AlignHCenter)
                self.nut_ticks[each.step.key] = tick
                self._nut_words[each.step.key] = said
            self.rows_made.emit()
        for each in steps:
            self._standings[each.step.key] = each
            tick = self.nut_ticks[each.step.key]
            value = big_words(each.step, self._show)
            words = say(
                "{step} · {value} (Tighten, step {number})",
                step=each.step.title,
                value=value,
                number=each.number,
            )
            self._nut_words[each.step.key].setText(words)
            tick.setAccessibleName(words)
            tick.setChecked(each.state is StepState.DONE)
        if not steps:
            self.nut_said.setText(
                say("The sheet lists no stem nut: set it as the maker's manual says.")
            )
        self.nut_said.setVisible(bool(self.nut_said.text()))

    def _tick_nut(self, key: str) -> None:
        standing = self._standings[key]
        self.nut_ticks[key].setChecked(standing.state is StepState.DONE)
        if standing.state is StepState.DONE:
            self.nut_said.setText(
                say("It is ticked: open it again in Tighten, which asks for a reason.")
            )
        elif standing.state is not StepState.NEXT:
            self.nut_said.setText(
                say(
                    "Other steps of Tighten come before it: tick them there, or this one with a "
                    "reason."
                )
            )
        elif standing.step.torque_missing:
            self.nut_said.setText(
                say("Its torque is missing: tick it in Tighten, where it is typed.")
            )
        else:
            self.nut_said.setText("")
            self.nut_ticked.emit(standing)
        self.nut_said.setVisible(bool(self.nut_said.text()))

    def _connect(self) -> None:
        self.pull.typed.connect(lambda found: self.typed.emit({"pull": found}))
        self.pull.kept.connect(lambda found: self.kept.emit({"pull": found}))
        self.radius.typed.connect(lambda found: self.typed.emit({"radius": one_of(found)}))
        self.radius.kept.connect(lambda found: self.kept.emit({"radius": one_of(found)}))
        self.adjustments.rows_made.connect(self.rows_made)
        self.felt.chosen.connect(lambda felt: self.kept.emit({"fall_away": felt}))
        self.pull.went_on.connect(self.radius.go_to_first_empty)
        self.radius.went_on.connect(lambda: self.felt.setFocus(Qt.FocusReason.TabFocusReason))
        self.felt.went_on.connect(self.went_on)
