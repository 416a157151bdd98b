"""The step of the loosening list in hand, large: what to do, to what, and where the danger is."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from aligner.assessment import Assessment, StepStanding
from aligner.drawing.theme import Theme, TypeSize
from aligner.job import Job
from aligner.language import begun, inside, say
from aligner.units.preferred import Preferred
from aligner.window.steps.bolt_card import BoltCard
from aligner.window.steps.step_words import done_words, elsewhere_words, opened_words
from aligner.window.strip.words import (
    big_words,
    object_words,
    read_words,
    then_words,
)
from aligner.window.widgets.labels import Card, Caution, label
from aligner.window.widgets.large_words import LargeWords
from aligner.window.widgets.whole_scroller import WholeScroller


class LooseStepCard(Card):
    """One step; everything it shows follows from the job, and it keeps nothing."""

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._show = show
        self.setProperty("inHand", True)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Expanding)
        self.elsewhere = label("", "small", wraps=True)
        self.big = LargeWords(theme, TypeSize.HUGE)
        self.what = label("", "value", wraps=True)
        self.read = label("", "text", wraps=True)
        self.waits = label("", "text", wraps=True, tone="attention")
        self.caution = Caution()
        self.reopened = label("", "text", wraps=True, tone="attention")
        self.entry = label("", "small", wraps=True)
        self.then = label("", "quiet", wraps=True)
        content = QWidget()
        inside = QVBoxLayout(content)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(theme.px(8))
        for widget in (
            self.elsewhere,
            self.big,
            self.what,
            self.read,
            self.waits,
            self.caution,
            self.reopened,
            self.entry,
        ):
            inside.addWidget(widget)
        inside.addStretch(1)
        inside.addWidget(self.then)
        area = WholeScroller()
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setWidget(content)
        self.column.addWidget(area)

    def show_step(self, assessment: Assessment, standing: StepStanding | None) -> None:
        """Show a step of the list, or that nothing is left."""
        job, found = assessment.job, assessment.strip
        if standing is None:
            self._show_rest(found.sentence, is_finished=found.is_finished)
            return
        step = standing.step
        self.elsewhere.setText(elsewhere_words(standing, found.next_step))
        self.big.say(big_words(step))
        self.what.setText(object_words(step))
        self.read.setText(read_words(job, step, self._show))
        waits = standing.waits_for if standing.entry is None else ""
        self.waits.setText(f"{begun(waits)}." if waits else "")
        self.caution.say(inside(step.caution))
        self.reopened.setText(opened_words(job.strip.log, standing))
        self.entry.setText(done_words(standing))
        self.then.setText(then_words(found.steps, standing))
        self._show_what_speaks()
        self.setAccessibleName(
            say("step {number}, {title}", number=standing.number, title=step.title)
        )

    def _show_rest(self, said: tuple[str, str, str], *, is_finished: bool) -> None:
        self.big.say(say("All loose") if is_finished else say("No list"))
        self.what.setText(said[1])
        self.caution.say("")
        for words in (
            self.elsewhere,
            self.read,
            self.waits,
            self.reopened,
            self.entry,
            self.then,
        ):
            words.setText("")
        self._show_what_speaks()
        self.setAccessibleName(said[0])

    def _show_what_speaks(self) -> None:
        for words in (self.elsewhere, self.read, self.waits, self.reopened, self.entry, self.then):
            words.setVisible(bool(words.text()))


class LooseBoltCard(BoltCard):
    """Where the bolts are: filled for the step in hand, ringed twice once loosened."""

    def show_loosening(self, job: Job, assessment: Assessment, step: StepStanding | None) -> None:
        """Light the bolts of a step of the loosening list."""
        self.show_step(job, assessment, step)
        self._steps = assessment.strip.steps
        self.update()
