"""What unlike air gaps do: both legs' air-spring force over the travel, left against right.

The trap: a difference that is nothing at rest grows many times over near full stroke, and more so
in a fast stroke, when the air has no time to cool. Both ends, slow and fast, are given.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.assessment.build_oil import OilAssessment, leg_bore
from aligner.errors import AlignerError
from aligner.job import Job
from aligner.language import marked, say
from aligner.legs import (
    ATMOSPHERE_KPA,
    AirColumn,
    AirForcePoint,
    LegBore,
    air_column,
    air_force_difference,
    air_force_table,
)
from aligner.legs.air_spring import ADIABATIC, ISOTHERMAL
from aligner.sheet import ForkKind


@dataclass(frozen=True)
class ForceAssessment:
    """The air's force in both legs.

    Attributes:
        points: over the travel, in a fast stroke; empty where something is missing.
        slow_at_full: at full stroke, so slow that the air stays cool.
        missing: what is needed for it, in words.
        is_on_sheet: whether any of that is a value of the sheet, and not a reading.
        refusal: why it cannot be worked out; "" if it can.
        leaves_out_spring: the volume of spring and spacer is not known and not counted.
    """

    points: tuple[AirForcePoint, ...] = ()
    slow_at_full: AirForcePoint | None = None
    missing: tuple[str, ...] = ()
    is_on_sheet: bool = False
    refusal: str = ""
    leaves_out_spring: bool = False

    @property
    def fast_at_full(self) -> AirForcePoint | None:
        """At full stroke, in a fast stroke."""
        return self.points[-1] if self.points else None


def assess_force(job: Job, oil: OilAssessment) -> ForceAssessment:
    """The air's force in both legs of a job."""
    missing = list(_missing(job))
    missing += [say(gap) for side, gap in _AIR_GAP.items() if oil.leg(side).gap is None]
    bore, travel = leg_bore(job), job.sheet.legs.travel
    left_gap, right_gap = oil.left.gap, oil.right.gap
    no_spring = job.sheet.legs.spring.displaced is None
    if missing or bore is None or travel is None or left_gap is None or right_gap is None:
        return ForceAssessment(
            missing=tuple(missing), is_on_sheet=bool(_missing(job)), leaves_out_spring=no_spring
        )
    gaps = (left_gap.value_mm, right_gap.value_mm)
    try:
        fast = [_column(job, bore, gap, ADIABATIC) for gap in gaps]
        slow = [_column(job, bore, gap, ISOTHERMAL) for gap in gaps]
        return ForceAssessment(
            points=air_force_table(fast[0], fast[1], travel.value, steps=24),
            slow_at_full=air_force_difference(slow[0], slow[1], travel.value),
            leaves_out_spring=no_spring,
        )
    except AlignerError as error:
        return ForceAssessment(refusal=f"{error}.", leaves_out_spring=no_spring)


def mean_column(job: Job, oil: OilAssessment) -> AirColumn | None:
    """The air of one leg with the mean of both gaps, for slow settling; `None` if not known.

    Raises:
        AlignerError: dimensions that leave no air.
    """
    bore = leg_bore(job)
    gaps = [leg.gap.value_mm for leg in (oil.left, oil.right) if leg.gap is not None]
    if bore is None or not gaps or _missing(job):
        return None
    return _column(job, bore, sum(gaps) / len(gaps), ISOTHERMAL)


_AIR_GAP = {"left": marked("the left leg's air gap"), "right": marked("the right leg's air gap")}


def _missing(job: Job) -> tuple[str, ...]:
    legs = job.sheet.legs
    named = (
        (say("bore of the tube"), legs.bore),
        (say("travel"), legs.travel),
        (say("outside of the sliding tube"), _sliding_tube_mm(job)),
    )
    return tuple(words for words, value in named if value is None)


def _sliding_tube_mm(job: Job) -> float | None:
    sheet = job.sheet
    if sheet.legs.sliding_tube is not None:
        return sheet.legs.sliding_tube.value
    if sheet.fork.tube_diameter is None or sheet.fork.kind is ForkKind.UPSIDE_DOWN:
        return None
    return sheet.fork.tube_diameter.value


def _column(job: Job, bore: LegBore, gap_mm: float, exponent: float) -> AirColumn:
    legs = job.sheet.legs
    above_kpa = legs.oil.air_pressure.value if legs.oil.air_pressure else 0.0
    return air_column(
        bore,
        gap_mm,
        _sliding_tube_mm(job) or 0.0,
        legs.travel.value if legs.travel else 0.0,
        exponent,
        ATMOSPHERE_KPA + above_kpa,
        legs.spring.displaced.value if legs.spring.displaced else 0.0,
    )
