"""What the building up of a job amounts to: the one thing to do next, and where it stands.

The trap: a gap that is right in a leg that was never pumped is not right. What is read comes after
the steps it relies on, and the list says which of those are not ticked.

Each part is imported when it is looked at: every window shows this stage's line, and few begin at
this stage.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from functools import cached_property
from typing import TYPE_CHECKING

from aligner.assessment.notice import Notice
from aligner.gauging import Advice, Verdict
from aligner.job import Job
from aligner.job.build import Build
from aligner.language import say

if TYPE_CHECKING:
    from aligner.assessment.build_bearing import BearingAssessment
    from aligner.assessment.build_blend import BlendAssessment
    from aligner.assessment.build_force import ForceAssessment
    from aligner.assessment.build_oil import OilAssessment
    from aligner.assessment.build_sag import SagAssessment
    from aligner.assessment.build_settings import BuildSetting
    from aligner.assessment.build_spacer_change import SpacerChange
    from aligner.assessment.build_spring import SpringAssessment
    from aligner.job.build_steps import BuildStep, Phase

BEFORE_READING: tuple[Phase, ...] = ("leg", "oil")
_AFTER_READING: tuple[Phase, ...] = ("spring", "cap")
_SIDES = ("left", "right")


class BuildSubject(Enum):
    """What there is to do."""

    SHEET = "sheet"
    STEP = "step"
    READ_GAP = "read the gap"
    POUR = "pour by volume"
    SET_OIL = "set the oil"
    READ_ON = "read on"
    EQUALISE = "equalise"
    BEARING_READ = "check the bearing"
    BEARING_SET = "set the bearing again"
    SAG = "correct the sag"
    NOTHING = "nothing"


@dataclass(frozen=True)
class BuildNext:
    """The one thing to do now.

    Attributes:
        subject: what it is.
        side: of which leg; "" where it is none or both.
        step: of the build list, where it is one.
    """

    subject: BuildSubject
    side: str = ""
    step: BuildStep | None = None


@dataclass(frozen=True)
class BuildAssessment:
    """What is built up. What is costly is worked out when it is looked at.

    Attributes:
        job: the job it is of.
    """

    job: Job

    @property
    def is_begun(self) -> bool:
        """Whether anything was entered or ticked."""
        return self.job.build != Build()

    @cached_property
    def steps(self) -> tuple[BuildStep, ...]:
        """The build list."""
        from aligner.job.build_steps import build_steps

        return build_steps(self.job)

    @cached_property
    def oil(self) -> OilAssessment:
        """The oil of both legs."""
        from aligner.assessment.build_oil import assess_oil

        return assess_oil(self.job)

    @cached_property
    def advice(self) -> Advice | None:
        """What would settle the air gaps, where the readings cannot tell."""
        from aligner.assessment.build_oil import oil_advice

        return oil_advice(self.job, self.oil)

    @cached_property
    def force(self) -> ForceAssessment:
        """The air's force in both legs."""
        from aligner.assessment.build_force import assess_force

        return assess_force(self.job, self.oil)

    @cached_property
    def sag(self) -> SagAssessment:
        """How far the legs settle."""
        from aligner.assessment.build_sag import assess_sag

        return assess_sag(self.job, self.oil)

    @cached_property
    def spring(self) -> SpringAssessment:
        """Spring and spacer."""
        from aligner.assessment.build_spring import assess_spring

        return assess_spring(self.job)

    @cached_property
    def spacer_change(self) -> SpacerChange | None:
        """What the sag asks of the spacer; `None` where it asks for nothing."""
        from aligner.assessment.build_spacer_change import spacer_change

        return spacer_change(self.job, self.spring, self.sag)

    @cached_property
    def bearing(self) -> BearingAssessment:
        """The head bearing's check."""
        from aligner.assessment.build_bearing import assess_bearing

        return assess_bearing(self.job)

    @cached_property
    def blend(self) -> BlendAssessment:
        """The blend of two oils."""
        from aligner.assessment.build_blend import assess_blend

        return assess_blend(self.job)

    @cached_property
    def next(self) -> BuildNext:
        """The one thing to do now."""
        return self._next()

    @property
    def is_done(self) -> bool:
        """Whether nothing is left to do."""
        return self.next.subject is BuildSubject.NOTHING

    @cached_property
    def line(self) -> str:
        """Where it stands, in a few words for the stage list."""
        if not self.is_begun:
            return say("not begun")
        from aligner.assessment.build_line import line_of

        return line_of(self)

    @cached_property
    def notices(self) -> tuple[Notice, ...]:
        """What to know; nothing before anything is begun."""
        if not self.is_begun:
            return ()
        change = self.spacer_change
        by_sag = change.notices if change is not None else ()
        return (
            *self.oil.notices,
            *self.spring.notices,
            *self.bearing.notices,
            *self.sag.notices,
            *by_sag,
        )

    @cached_property
    def settings(self) -> tuple[BuildSetting, ...]:
        """What was set, for the job card and the bike's history."""
        from aligner.assessment.build_settings import build_settings

        return build_settings(self.job, self.oil, self.spring, self.sag, self.bearing)

    def _next(self) -> BuildNext:
        oil = self.oil
        correction = self._correction()
        if correction is not None:
            return correction
        step = self._open_step(BEFORE_READING)
        if step is not None:
            return step
        if oil.wanted_mm is None and not oil.by_volume:
            return BuildNext(BuildSubject.SHEET)
        for side in _SIDES:
            if oil.leg(side).verdict is Verdict.MISSING:
                if oil.by_volume and oil.leg(side).volume_ml is None:
                    return BuildNext(BuildSubject.POUR, side)
                if not oil.by_volume and oil.leg(side).gap is None:
                    return BuildNext(BuildSubject.READ_GAP, side)
        if oil.verdict is not Verdict.WITHIN:
            return BuildNext(BuildSubject.SHEET)  # all is read, and no tolerance to judge it by
        step = self._open_step(_AFTER_READING) or self._open_step(("bearing",))
        if step is not None:
            return step
        bearing = self.bearing
        if not bearing.is_settled:
            is_wrong = bearing.verdict is Verdict.OUT or bearing.fall_away is not None
            is_read = bearing.verdict is not Verdict.MISSING or not bearing.has_band
            subject = BuildSubject.BEARING_READ
            if is_wrong and (is_read or not self._is_feel_right()):
                subject = BuildSubject.BEARING_SET
            return BuildNext(subject)
        if self.sag.leading.sag is not None and self.sag.leading.verdict is Verdict.OUT:
            return BuildNext(BuildSubject.SAG)
        return BuildNext(BuildSubject.NOTHING)

    def _correction(self) -> BuildNext | None:
        """What the readings at hand already ask for."""
        oil = self.oil
        for side in _SIDES:
            if oil.leg(side).verdict is Verdict.OUT:
                return BuildNext(BuildSubject.SET_OIL, side)
        if oil.difference is not None and oil.difference.verdict is Verdict.OUT:
            return BuildNext(BuildSubject.EQUALISE)
        for side in _SIDES:
            if oil.leg(side).verdict is Verdict.UNSETTLED:
                return BuildNext(BuildSubject.READ_ON, side)
        if oil.difference is not None and oil.difference.verdict is Verdict.UNSETTLED:
            return BuildNext(BuildSubject.READ_ON)
        return None

    def _is_feel_right(self) -> bool:
        felt = self.bearing.fall_away
        return felt is None or self.bearing.is_settled or felt.name == "FREE"

    def _open_step(self, phases: tuple[Phase, ...]) -> BuildNext | None:
        for step in self.steps:
            if step.phase in phases and step.open_sides:
                side = step.open_sides[0] if len(step.open_sides) < len(step.sides) else ""
                return BuildNext(BuildSubject.STEP, side, step)
        return None


def assess_build(job: Job) -> BuildAssessment:
    """What a job's building up amounts to; nothing is worked out before it is looked at."""
    return BuildAssessment(job)
