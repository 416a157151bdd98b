"""The step in hand, large: its torque, the setting on the wrench in hand, passes and cautions."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QSizePolicy, QVBoxLayout, QWidget

from aligner.assessment import Assessment, StepStanding
from aligner.drawing.theme import Theme, TypeSize
from aligner.job import Job
from aligner.language import say
from aligner.units.preferred import Preferred
from aligner.window.steps.pass_marks import PassMarks
from aligner.window.steps.step_words import (
    big_words,
    bolt_words,
    done_words,
    elsewhere_words,
    hold_words,
    opened_words,
    pass_mates,
    range_words,
)
from aligner.window.steps.tool_words import (
    delivered_words,
    problem_words,
    setting_words,
    tool_words,
)
from aligner.window.tighten.adapter_view import AdapterView, adapter_words
from aligner.window.widgets.labels import Card, Caution, label
from aligner.window.widgets.large_words import LargeWords
from aligner.window.widgets.whole_scroller import WholeScroller

#: The setting against the torque, which stays the largest.
_SETTING = 0.68


class StepCard(Card):
    """One step; everything it shows follows from the job, and it keeps nothing."""

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._show = show
        self.setProperty("inHand", True)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Expanding)
        self.elsewhere = label("", "small", wraps=True)
        self.big = LargeWords(theme, TypeSize.HUGE)
        self.range = label("", "quiet", wraps=True)
        self._rule = QFrame()
        self._rule.setFrameShape(QFrame.Shape.HLine)
        self.setting = LargeWords(theme, TypeSize.HUGE, _SETTING)
        self.tool = label("", "strong", wraps=True)
        self.delivered = label("", "small", wraps=True)
        self.sketch = AdapterView(theme)
        self.adapter = label("", "small", wraps=True)
        self.problem = label("", "text", wraps=True, tone="attention")
        self.turn = label("", "quiet", wraps=True)
        self.passes = PassMarks(theme)
        self.hold = label("", "value", wraps=True)
        self.reopened = label("", "text", wraps=True, tone="attention")
        self.caution = Caution()
        self.entry = label("", "small", wraps=True)
        inside = self._scrolled(theme)
        for widget in (
            self.elsewhere,
            self.big,
            self.range,
            self._rule,
            self.setting,
            self.tool,
            self.delivered,
            self.sketch,
            self.adapter,
            self.problem,
            self.turn,
            self.passes,
            self.hold,
            self.reopened,
            self.caution,
            self.entry,
        ):
            inside.addWidget(widget)
        inside.addStretch(1)

    def _scrolled(self, theme: Theme) -> QVBoxLayout:
        """A column that scrolls where the window is too low for all of it; nothing is cut off."""
        content = QWidget()
        inside = QVBoxLayout(content)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(theme.px(6))
        area = WholeScroller()
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setWidget(content)
        self.column.setContentsMargins(theme.px(16), theme.px(8), theme.px(8), theme.px(8))
        self.column.addWidget(area)
        return inside

    def show_step(self, job: Job, assessment: Assessment, standing: StepStanding) -> None:
        """Show a step of the list."""
        step, show = standing.step, self._show
        tightening = assessment.tightening
        in_hand = tightening.next_step
        self.elsewhere.setText(elsewhere_words(standing, in_hand))
        self.big.say(big_words(step, show))
        self.range.setText(range_words(job, step, show))
        self._show_tool(job, standing)
        mates = pass_mates(tightening.steps, step)
        bolts = bolt_words(step)
        self.turn.setText(bolts)
        self.passes.show_passes(mates)
        self.hold.setText(hold_words(assessment, standing, show) if step.kind == "hold" else "")
        self.reopened.setText(opened_words(job.log, standing))
        self.caution.say(step.caution)
        self.entry.setText(done_words(standing))
        for words in (
            self.elsewhere,
            self.range,
            self.turn,
            self.hold,
            self.reopened,
            self.entry,
        ):
            words.setVisible(bool(words.text()))
        self.setAccessibleName(
            say(
                "step {number}, {title}, {torque}",
                number=standing.number,
                title=step.title,
                torque=self.big.text,
            )
        )

    def _show_tool(self, job: Job, standing: StepStanding) -> None:
        tool = standing.tool
        self.setting.say(setting_words(standing))
        self.tool.setText(tool_words(job, standing))
        self.delivered.setText(delivered_words(standing, self._show))
        self.problem.setText(problem_words(standing))
        wrench = job.wrenches.get(tool.wrench) if tool is not None else None
        adapter = job.adapters.get(tool.adapter) if tool is not None and tool.adapter else None
        self.sketch.show_adapter(wrench, adapter)
        self.adapter.setText(adapter_words(wrench, adapter) if adapter is not None else "")
        for words in (self.tool, self.delivered, self.problem, self.adapter):
            words.setVisible(bool(words.text()))
        self._rule.setVisible(bool(self.tool.text() or self.problem.text()))
