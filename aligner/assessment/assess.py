"""From a job to everything that follows from it: one function, one immutable result.

What only one stage looks at is imported when it is looked at: the window starts on one of them.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from functools import cached_property
from typing import TYPE_CHECKING

from aligner.assessment.build import BuildAssessment, assess_build
from aligner.assessment.correction import Correction, Subject
from aligner.assessment.corrections import asks_for_in_line, asks_for_squaring, next_correction
from aligner.assessment.in_line import InLineAssessment, assess_in_line
from aligner.assessment.notice import Level, Notice, attention
from aligner.assessment.protrusion import ProtrusionAssessment, assess_protrusion
from aligner.assessment.squaring import SquaringAssessment, assess_squaring
from aligner.assessment.stages import StageStanding, open_since_signed, stage_standings
from aligner.assessment.steering import SteeringAssessment, assess_steering
from aligner.assessment.tightening import TighteningAssessment, assess_tightening
from aligner.gauging import Verdict
from aligner.job import Job
from aligner.language import say
from aligner.units.preferred import Preferred

if TYPE_CHECKING:
    from aligner.assessment.attempts import AttemptSeries
    from aligner.assessment.inspection import InspectionAssessment
    from aligner.assessment.rechecks import RecheckStanding
    from aligner.assessment.strip import StripAssessment


@dataclass(frozen=True)
class Assessment:
    """What a job amounts to.

    Attributes:
        job: the job it is of.
        protrusion: the legs' heights.
        squaring: the lower bracket against the frame.
        in_line: the legs against each other.
        steering: what it does on the road.
        tightening: the list, and where each step stands.
        build: what is built up, and what is next; each part worked out when it is looked at.
        stages: where each stage stands.
    """

    job: Job
    protrusion: ProtrusionAssessment
    squaring: SquaringAssessment
    in_line: InLineAssessment
    steering: SteeringAssessment
    tightening: TighteningAssessment
    build: BuildAssessment
    stages: tuple[StageStanding, ...]

    @property
    def notices(self) -> tuple[Notice, ...]:
        """Everything a person should know, stage by stage."""
        found: list[Notice] = [*self.protrusion.notices, *self.squaring.notices]
        for pair in self.squaring.pairs:
            found += pair.notices
        found += [*self.in_line.notices, *self.steering.notices, *self.tightening.notices]
        found += [*self.inspection.notices, *self.build.notices]
        still_open = open_since_signed(self.job, self.tightening)
        if still_open:
            text = say(
                "The job is signed off, and the sign-off does not hold: {still_open}.",
                still_open=still_open,
            )
            found.append(attention("prove.sign_off", text))
        return tuple(found)

    @cached_property
    def attempts(self) -> tuple[AttemptSeries, ...]:
        """Every attempt at the alignment in a row; worked out when it is looked at."""
        from aligner.assessment.attempts import attempt_series

        return attempt_series(self.job)

    @cached_property
    def rechecks(self) -> tuple[RecheckStanding, ...]:
        """The fasteners to check again on the road; worked out when it is looked at."""
        from aligner.assessment.rechecks import assess_rechecks

        return assess_rechecks(self.job, self.tightening)

    @cached_property
    def strip(self) -> StripAssessment:
        """The loosening list; worked out when it is looked at."""
        from aligner.assessment.strip import assess_strip

        return assess_strip(self.job)

    @cached_property
    def inspection(self) -> InspectionAssessment:
        """What was found when the parts were looked at; worked out when it is looked at."""
        from aligner.assessment.inspection import assess_inspection

        return assess_inspection(self.job)

    @property
    def is_all_within(self) -> bool:
        """Whether everything measured is within its limit and nothing asks for attention."""
        verdicts = [self.protrusion.verdict]
        if asks_for_squaring(self.job):
            verdicts.append(self.squaring.verdict)
        if asks_for_in_line(self.job):
            verdicts.append(self.in_line.verdict)
        return all(verdict is Verdict.WITHIN for verdict in verdicts) and not any(
            notice.level is Level.ATTENTION for notice in self.notices
        )

    def correction(self, show: Preferred) -> Correction:
        """The one thing to correct now, in words, in the units a person prefers."""
        return next_correction(self.job, self.protrusion, self.squaring, self.in_line, show)


def assess(job: Job, now: datetime | None = None) -> Assessment:
    """Everything that follows from a job. Pure: the same job gives the same assessment.

    Args:
        job: as it is.
        now: the time, where readings dated ahead of it are to be told from old ones.
    """
    protrusion = assess_protrusion(job)
    squaring = assess_squaring(job)
    in_line = assess_in_line(job)
    subjects = {Subject.PROTRUSION: protrusion.verdict is Verdict.WITHIN}
    verdicts = {"protrusion": protrusion.verdict}
    if asks_for_squaring(job):
        subjects[Subject.SQUARING] = squaring.verdict is Verdict.WITHIN
        verdicts["squaring"] = squaring.verdict
        if squaring.not_read and squaring.verdict is Verdict.WITHIN:
            subjects[Subject.SQUARING] = False
            verdicts["squaring"] = Verdict.MISSING
    if asks_for_in_line(job):
        subjects[Subject.IN_LINE] = in_line.verdict is Verdict.WITHIN
        verdicts["in_line"] = in_line.verdict
    tightening = assess_tightening(job, verdicts, asks_for_in_line=asks_for_in_line(job), now=now)
    build = assess_build(job)
    return Assessment(
        job=job,
        protrusion=protrusion,
        squaring=squaring,
        in_line=in_line,
        steering=assess_steering(job, protrusion),
        tightening=tightening,
        build=build,
        stages=stage_standings(job, subjects, tightening, build),
    )
