"""The step in hand from three metres; it is ticked through the same door as on the Tighten page."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from aligner.assessment import StepStanding
from aligner.assessment.ticks import with_tick
from aligner.drawing.theme import GAP, Theme
from aligner.errors import AlignerError
from aligner.fastening.steps import Step
from aligner.job.edits_align import with_heights_to_read_again
from aligner.job.edits_tighten import with_untick
from aligner.language import begun, say
from aligner.sheet.quantities import Torque
from aligner.units import UnreadableQuantity
from aligner.units.preferred import Preferred
from aligner.window.bench.drawing import BoltsInHand, larger
from aligner.window.bench.panel import BenchPanel
from aligner.window.bench.words import BenchWords
from aligner.window.setting import Setting
from aligner.window.steps.pass_marks import PassMarks
from aligner.window.steps.step_words import (
    beside_words,
    big_words,
    bolt_words,
    hold_words,
    opened_words,
    pass_mates,
    range_words,
)
from aligner.window.steps.tick_door import TickDoor
from aligner.window.steps.tool_words import problem_words, setting_words, tool_words
from aligner.window.widgets.labels import set_tone

#: The scale of the text up to which the door has room for large type; beyond, it is large.
_FITS_LARGE = 1.3
#: Up to here there is room for the drawing and for what comes next as well.
_FITS_ALL = 1.6
#: Kinds of steps whose titles say all.
_SAID_BY_TITLE = ("act", "look", "turn")


class _Passes(PassMarks):
    """The marks of the passes at the height of their rows, among words that fill the rest."""

    def hasHeightForWidth(self) -> bool:
        return False


class BenchStep(QWidget):
    """Torque, setting, bolts lit, passes, and small what comes next.

    Signals:
        finished: the list is done and the person goes on.
        align_wanted: readings are to be taken again.
    """

    finished = Signal()
    align_wanted = Signal()

    def __init__(self, setting: Setting) -> None:
        super().__init__()
        theme = setting.theme
        self._open_job = setting.open_job
        self._show = setting.show
        self._now = setting.now
        self._has_room = theme.text_scale <= _FITS_ALL
        big = larger(theme)
        self.bolts = BoltsInHand(big)
        self.panel = BenchPanel(say("step in hand"))
        self.torque = BenchWords(theme, 150)
        self.setting = BenchWords(theme, 90, role="accent")
        self.tool = BenchWords(theme, 34, bold=False)
        self.problem = BenchWords(theme, 30, role="attention")
        self.turn = BenchWords(theme, 56)
        self.passes = _Passes(big)
        self.hold = BenchWords(theme, 44, bold=False)
        self.seen = BenchWords(theme, 90)
        self.next = BenchWords(theme, 24, role="quiet", bold=False)
        for words, share in (
            (self.torque, 34),
            (self.setting, 20),
            (self.tool, 12),
            (self.problem, 12),
            (self.turn, 16),
            (self.hold, 24),
            (self.seen, 30),
        ):
            self.panel.column.addWidget(words, share)
        self.panel.column.addWidget(self.passes)
        self.panel.column.addWidget(self.next, 8)
        self.door = TickDoor(big, setting.show)
        self._lay_out(theme)
        self._connect()

    @property
    def asks(self) -> bool:
        """Whether the door has asked something that is not answered yet."""
        return bool(self.door.words.text()) or self.door.reason.isVisible()

    def sentence(self) -> tuple[str, str, str]:
        """The step in hand, why it stands where it stands, and its danger."""
        tightening = self._open_job.assessment.tightening
        standing = tightening.next_step
        if standing is not None:
            return f"{standing.step.title}.", standing.step.reason, standing.step.caution
        if tightening.steps:
            return say("Everything is done up."), say("Go on to Prove: brakes first."), ""
        why = say("The sheet lists no fasteners.")
        if tightening.notices:
            why = tightening.notices[0].text
        return say("There is nothing to tighten."), why, ""

    def refresh(self) -> None:
        """Show the step in hand as the job has it now."""
        job, assessment = self._open_job.job, self._open_job.assessment
        tightening = assessment.tightening
        standing = tightening.next_step
        self.bolts.show_step(job, assessment, standing)
        self.bolts.setVisible(bool(tightening.steps) and self._has_room)
        self.door.show_standing(standing, is_finished=tightening.is_finished)
        self.door.wrenches.hide()  # tools are chosen on the Tighten page
        if standing is None:
            count = len(tightening.steps)
            done = say("{number} of {count}", number=count, count=count)
            self._say(done if count else say("No list yet"))
            to_do = say("Escape, then give the fasteners on the Bike page")
            self.hold.say("" if count else to_do)
            done = say("{number} of {count} steps done", number=count, count=count)
            self.panel.setAccessibleName(done if count else say("no list"))
        else:
            self._say_step(standing)
        self._say_seen()

    def begin(self) -> None:
        """Put the keyboard on the step in hand."""
        self.panel.setFocus(Qt.FocusReason.OtherFocusReason)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.asks:
            self.door.leave()
        else:
            super().keyPressEvent(event)

    def _say(self, torque: str) -> None:
        for words in (self.setting, self.tool, self.problem, self.turn, self.hold):
            words.say("")
        self.passes.show_passes(())
        self.next.say("")
        self.torque.say(torque)

    def _say_step(self, standing: StepStanding) -> None:
        job, assessment, show = self._open_job.job, self._open_job.assessment, self._show
        step, steps = standing.step, assessment.tightening.steps
        self._say(big_words(step, show))
        self.setting.say(setting_words(standing))
        self.tool.say(tool_words(job, standing) if self.setting.text else "")
        missing = range_words(job, step, show) if step.torque_missing else ""
        problem = missing or problem_words(standing) or opened_words(job.log, standing)
        self.problem.say(begun(problem))
        self.turn.say(bolt_words(step))
        self.hold.say(hold_words(assessment, standing, show) if step.kind == "hold" else "")
        self.passes.show_passes(pass_mates(steps, step))
        later = steps[standing.number : standing.number + 1]
        if later and self._has_room:
            self.next.say(_next_words(later[0].step, show))
        number = say("step {number}", number=standing.number)
        self.panel.setAccessibleName(f"{number}, {step.title}, {self.torque.text}")

    def _say_seen(self) -> None:
        """The value as it was understood, while it is being typed."""
        text = self.door.value.text().strip()
        said = ""
        if self.door.value.hasFocus() and text:
            try:
                seen = Torque.typed(text, self._show.torque).said
                said = say("Torque seen: {torque}", torque=seen)
            except UnreadableQuantity:
                said = say("Torque seen: “{text}” is not understood", text=text)
        self.seen.say(said)
        for words in (self.tool, self.problem, self.turn, self.hold, self.passes, self.next):
            is_empty = not (words.accessibleName() if words is self.passes else words.text)
            words.setVisible(not said and not is_empty)

    def _act(self) -> None:
        if self._open_job.assessment.tightening.steps:
            self.door.act()

    def _ticked(self, key: str, torque: object, wrench: str, reason: str) -> None:
        steps = self._open_job.assessment.tightening.steps
        title = next(each.step.title for each in steps if each.step.key == key)
        try:
            self._open_job.edit(
                title,
                lambda job: with_tick(
                    job, key, self._now(), torque=torque, wrench=wrench, reason=reason
                ),
            )
        except AlignerError as refusal:
            self.door.say(say("Nothing was ticked. {refusal}.", refusal=refusal))
        self.begin()

    def _unticked(self, key: str, reason: str) -> None:
        self._open_job.edit(
            say("untick a step"), lambda job: with_untick(job, key, self._now(), reason)
        )
        self.begin()

    def _read_again(self) -> None:
        standing = self._open_job.assessment.tightening.next_step
        if standing is not None and standing.step.reads == "protrusion":
            self._open_job.edit(
                say("heights to read again"),
                lambda job: with_heights_to_read_again(job, self._now()),
            )
        self.align_wanted.emit()

    def _connect(self) -> None:
        self.panel.acted.connect(self._act)
        self.panel.let_go.connect(self.door.let_go)
        self.panel.strayed.connect(self.door.take_number)
        self.door.ticked.connect(self._ticked)
        self.door.unticked.connect(self._unticked)
        self.door.went_on.connect(self.finished)
        self.door.list_wanted.connect(self.begin)
        self.door.read_again.clicked.connect(self._read_again)
        self.door.value.textChanged.connect(lambda _: self._say_seen())
        self.door.value.left.connect(self._say_seen)
        self._open_job.started.connect(self.door.begin_anew)

    def _lay_out(self, theme: Theme) -> None:
        door = self.door
        if theme.text_scale <= _FITS_LARGE:
            set_tone(door.words, "typeSize", "sentence")
            lines = (door.value, door.wrench, door.reason)
            for widget in (*lines, door.read_again, door.done):
                widget.setProperty("typeSize", "sentence")
        cards = QHBoxLayout()
        cards.setSpacing(theme.px(GAP))
        cards.addWidget(self.bolts, 8)
        cards.addWidget(self.panel, 13)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(theme.px(GAP))
        column.addLayout(cards, 1)
        column.addWidget(door)


def _next_words(step: Step, show: Preferred) -> str:
    """What comes next, with its torque, or that it is a hold point."""
    if step.kind in _SAID_BY_TITLE:
        return say("Next: {step}", step=step.title)
    return say("Next: {step}, {beside}", step=step.title, beside=beside_words(step, show))
