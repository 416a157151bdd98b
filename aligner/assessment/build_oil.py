"""The oil of both legs: what to add or draw off, whether they are equal, what volume went in.

The trap: a bigger air gap is less oil. And two legs that each stand within the tolerance can still
be unlike by twice of it, so the difference is judged for itself.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import inf

from aligner.assessment.notice import Notice, attention, refused
from aligner.assessment.readings import (
    Judged,
    gauge_notices,
    gauge_of,
    gravest,
    judged,
    mean_of,
    odd_reading,
    proved,
    unproved,
    usable_gauges,
)
from aligner.errors import AlignerError
from aligner.gauging import (
    Advice,
    Difference,
    Estimate,
    Gauge,
    Term,
    Verdict,
    difference,
    settling_advice,
)
from aligner.job import Job
from aligner.job.build import LegOil
from aligner.language import say
from aligner.legs import (
    LegBore,
    VolumeComparison,
    oil_correction,
    oil_volume_ml,
    suction_tube_depth_mm,
    volume_against_manual,
)

WHERE = "build"


@dataclass(frozen=True)
class LegOilAssessment:
    """One leg's oil.

    Attributes:
        gap: the air gap read; `None` without readings.
        against_wanted: read less wanted; positive: too little oil.
        change_ml: to add (positive) or draw off; `None` without the bore.
        change_expanded_ml: how far that may be off, for 95 %; `None` if unknown.
        volume_ml: what was poured in, as entered.
        volume: that against the manual's; `None` without either or the bore.
        volume_over: poured in less the manual's, judged; where the manual gives no air gap.
    """

    gap: Estimate | None = None
    against_wanted: Judged | None = None
    change_ml: float | None = None
    change_expanded_ml: float | None = None
    volume_ml: float | None = None
    volume: VolumeComparison | None = None
    volume_over: Judged | None = None

    @property
    def verdict(self) -> Verdict:
        """Whether the leg holds what it should."""
        found = self.against_wanted or self.volume_over
        return found.verdict if found else Verdict.MISSING


@dataclass(frozen=True)
class OilAssessment:
    """Both legs' oil.

    Attributes:
        left: the left leg's.
        right: the right leg's.
        wanted_mm: the air gap the sheet gives.
        wanted_ml: the volume it gives.
        by_volume: the sheet gives a volume and no air gap, so that the volume is what is set.
        suction_depth_mm: length of suction tube below its stop on the tube's edge.
        difference: left gap less right, judged.
        terms: the two gaps as they went into the difference.
        verdict: of both legs and of their difference.
        missing: what the sheet lacks for this, in words.
        notices: what to know.
    """

    left: LegOilAssessment
    right: LegOilAssessment
    wanted_mm: float | None = None
    wanted_ml: float | None = None
    by_volume: bool = False
    suction_depth_mm: float | None = None
    difference: Judged | None = None
    terms: Difference | None = None
    verdict: Verdict = Verdict.MISSING
    missing: tuple[str, ...] = ()
    notices: tuple[Notice, ...] = ()

    def leg(self, side: str) -> LegOilAssessment:
        """The rider's left or right leg."""
        return self.left if side == "left" else self.right


def assess_oil(job: Job) -> OilAssessment:
    """The oil of both legs of a job."""
    build, oil = job.build, job.sheet.legs.oil
    notices: list[Notice] = []
    bore = leg_bore(job)
    wanted = oil.air_gap.value if oil.air_gap else None
    by_volume = wanted is None and oil.volume is not None
    gauge = gauge_of(job, build.gauge)
    legs: dict[str, LegOilAssessment] = {}
    for side, filled in (("left", build.left), ("right", build.right)):
        notices += odd_reading(filled.gap, gauge, f"{WHERE}.{side}.gap")
        gap = mean_of(filled.gap, gauge)
        legs[side] = _leg(job, side, filled, gap, bore, notices)
    left, right = legs["left"], legs["right"]
    if left.gap or right.gap:
        notices += gauge_notices(job, build.gauge, WHERE)
        if oil.air_gap_tolerance is None:
            where = "sheet.legs.oil.air_gap_tolerance"
            notices.append(attention(where, say("The sheet gives no tolerance for the air gap.")))
    unlike: Judged | None = None
    terms: Difference | None = None
    if left.gap and right.gap:
        terms = difference(left.gap, right.gap, same_gauge=gauge is not None)
        tolerance = oil.air_gap_tolerance.value if oil.air_gap_tolerance else None
        unlike = _judged(
            terms.value_mm,
            terms.standard_uncertainty_mm,
            terms.degrees_of_freedom,
            tolerance,
            gauge,
        )
    verdict = gravest(left.verdict, right.verdict)
    if not by_volume and unlike is not None and wanted is not None:
        verdict = gravest(verdict, unlike.verdict)
    return OilAssessment(
        left=left,
        right=right,
        wanted_mm=wanted,
        wanted_ml=oil.volume.value if oil.volume else None,
        by_volume=by_volume,
        suction_depth_mm=suction_tube_depth_mm(wanted) if wanted else None,
        difference=unlike,
        terms=terms,
        verdict=verdict,
        missing=_missing(job),
        notices=tuple(notices),
    )


def oil_advice(job: Job, oil: OilAssessment) -> Advice | None:
    """What would settle the first thing that is unsettled: a leg, then the difference."""
    candidates: list[tuple[Judged, Sequence[Term]]] = [
        (leg.against_wanted, (Term(1.0, leg.gap),))
        for leg in (oil.left, oil.right)
        if leg.against_wanted is not None and leg.gap is not None
    ]
    if oil.difference is not None and oil.terms is not None:
        candidates.append((oil.difference, oil.terms.terms))
    listed = usable_gauges(job)
    for found, terms in candidates:
        if found.verdict is Verdict.UNSETTLED and found.tolerance is not None:
            try:
                advice = settling_advice(
                    terms, found.tolerance, value=found.value, other_gauges=listed
                )
            except AlignerError:
                return None
            return advice or unproved(Verdict.WITHIN, gauge_of(job, job.build.gauge))
    return None


def leg_bore(job: Job) -> LegBore | None:
    """The tube's bore with its rod, where the sheet gives a bore."""
    legs = job.sheet.legs
    if legs.bore is None:
        return None
    return LegBore(legs.bore.value, legs.rod.value if legs.rod else 0.0)


def _leg(
    job: Job,
    side: str,
    filled: LegOil,
    gap: Estimate | None,
    bore: LegBore | None,
    notices: list[Notice],
) -> LegOilAssessment:
    oil = job.sheet.legs.oil
    against: Judged | None = None
    change_ml = expanded_ml = None
    volume: VolumeComparison | None = None
    over: Judged | None = None
    if gap is not None and oil.air_gap is not None:
        tolerance = oil.air_gap_tolerance.value if oil.air_gap_tolerance else None
        off = gap.value_mm - oil.air_gap.value
        u, dof = gap.standard_uncertainty_mm, gap.degrees_of_freedom
        against = _judged(off, u, dof, tolerance, gauge_of(job, job.build.gauge))
    try:
        if against is not None and gap is not None and bore is not None and oil.air_gap is not None:
            change_ml = oil_correction(bore, gap.value_mm, oil.air_gap.value).change_ml
            spread = against.judgement.expanded_uncertainty
            expanded_ml = None if spread is None else oil_volume_ml(bore, spread)
        if filled.volume is not None and oil.volume is not None:
            if bore is not None:
                volume = volume_against_manual(bore, filled.volume.value, oil.volume.value)
            if oil.air_gap is None:
                tolerance = oil.volume_tolerance.value if oil.volume_tolerance else None
                over = judged(filled.volume.value - oil.volume.value, 0.0, inf, tolerance)
    except AlignerError as error:
        notices.append(refused(f"{WHERE}.{side}", error))
    poured = filled.volume.value if filled.volume else None
    return LegOilAssessment(gap, against, change_ml, expanded_ml, poured, volume, over)


def _judged(
    off_mm: float, u: float | None, dof: float, tolerance: float | None, gauge: Gauge | None
) -> Judged:
    found = judged(off_mm, u, dof, tolerance)
    return replace(found, judgement=proved(found.judgement, gauge))


def _missing(job: Job) -> tuple[str, ...]:
    legs = job.sheet.legs
    found = []
    if legs.oil.air_gap is None and legs.oil.volume is None:
        found.append(say("air gap or volume of oil"))
    if legs.oil.air_gap is not None and legs.oil.air_gap_tolerance is None:
        found.append(say("tolerance of the air gap"))
    if legs.oil.air_gap is None and legs.oil.volume and legs.oil.volume_tolerance is None:
        found.append(say("tolerance of the volume"))
    if legs.bore is None:
        found.append(say("bore of the tube"))
    return tuple(found)
