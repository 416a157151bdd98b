"""Which wrench and adapter the joint in hand is tightened with: chosen, or the best at hand."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout

from aligner.assessment import StepStanding
from aligner.assessment.tightening import TighteningAssessment
from aligner.assessment.wrenches import ToolForStep, Tools, tools_of
from aligner.drawing.theme import GAP
from aligner.fastening.steps import Step
from aligner.job import Job, WrenchChoice
from aligner.language import say
from aligner.window.widgets.choice import Choice, Row
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.page import wrapping


class WrenchChoiceCard(Card):
    """Two choices, each with what comes of it.

    Signals:
        chosen: name of the wrench or "" for the best, name of the adapter or "" for none.
    """

    chosen = Signal(str, str)

    def __init__(self) -> None:
        super().__init__()
        self._title = label("", "strong", wraps=True)
        self.wrench = Choice(say("wrench for this joint"), letters=8)
        self.adapter = Choice(say("adapter for this joint"), letters=8)
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP)
        grid.setColumnStretch(1, 1)
        named = ((say("Wrench"), self.wrench), (say("Adapter"), self.adapter))
        for row, (name, choice) in enumerate(named):
            grid.addWidget(label(name, "quiet"), row, 0)
            grid.addWidget(choice, row, 1)
            choice.chosen.connect(lambda _: self._choose())
        self.column.addWidget(self._title)
        self.column.addLayout(grid)
        self.column.addWidget(
            wrapping(say("A socket that stands concentric on the nut changes nothing."), "small")
        )

    def show_step(
        self, job: Job, tightening: TighteningAssessment, standing: StepStanding | None
    ) -> None:
        """Show what is chosen for a step's joint; hidden where it has no torque."""
        step = standing.step if standing is not None else None
        takes_wrench = step is not None and step.joint is not None and step.target_nm is not None
        self.setVisible(takes_wrench and bool(job.wrenches))
        if step is None or not takes_wrench:
            return
        self._title.setText(say("For the {joint}", joint=step.joint))
        choice = job.wrench_choices.get(step.joint or "", WrenchChoice())
        full = _full_pass(tightening, step)
        tools = tools_of(job)
        wrenches: list[Row] = [("", say("the best of those at hand"))]
        for name in job.wrenches:
            if name in tools.refused:
                words = say(
                    "{wrench}: not to be chosen, {why}", wrench=name, why=tools.refused[name]
                )
                wrenches.append((name, words))
                continue
            found = _with(tools, full, step, name, choice.adapter)
            wrenches.append((name, f"{name}: {_comes_to(found)}"))
        self.wrench.offer(wrenches, closed=tools.refused)
        self.wrench.show_value(choice.wrench if choice.wrench in job.wrenches else "")
        self.adapter.offer([("", say("plain socket")), *((name, name) for name in job.adapters)])
        self.adapter.show_value(choice.adapter if choice.adapter in job.adapters else "")

    def _choose(self) -> None:
        self.chosen.emit(self.wrench.value, self.adapter.value)


def _full_pass(tightening: TighteningAssessment, step: Step) -> Step:
    """The pass that has the joint's own limits."""
    mates = [each.step for each in tightening.steps if each.step.joint == step.joint]
    return next((each for each in mates if each.low_nm is not None), step)


def _with(
    tools: Tools, full: Step, step: Step, wrench: str, adapter: str | None
) -> ToolForStep | None:
    """What comes of one wrench for a step."""
    target = full.target_nm if step.kind != "seat" else step.target_nm
    if step.joint is None or target is None:
        return None
    limits = step if step.kind == "seat" else full
    low = limits.low_nm if limits.low_nm is not None else target
    high = limits.high_nm if limits.high_nm is not None else target
    chosen = {step.joint: WrenchChoice(wrench=wrench, adapter=adapter or None)}
    return replace(tools, choices=chosen).for_torque(step.joint, target, low, high, step.fraction)


def _comes_to(tool: ToolForStep | None) -> str:
    if tool is None or not tool.can_be_set:
        return say("cannot be set to this")
    if tool.is_inside is None:
        return say("set {setting}", setting=tool.setting_text)
    if tool.is_inside:
        return say("set {setting}, inside what is specified", setting=tool.setting_text)
    return say("set {setting}, not inside what is specified", setting=tool.setting_text)
