"""Sag: how far the legs settle under the machine and the rider, and the preload that mends it.

The trap: the band is on the mean of two lengths, after pushing down and after lifting up. One of
them alone is off by half of what friction holds, which can be more than the whole band.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from aligner.assessment.build_force import mean_column
from aligner.assessment.build_oil import OilAssessment
from aligner.assessment.build_spring import preload_with, stack_of
from aligner.assessment.notice import Notice, attention, note, refused
from aligner.assessment.readings import Judged, gauge_of, judged, mean_of, proved
from aligner.errors import AlignerError
from aligner.gauging import Term, Verdict, combine
from aligner.job import Job
from aligner.language import listed, marked, say
from aligner.legs import (
    Sag,
    SagReadings,
    TwoRateSpring,
    air_force_n,
    measured_sag,
    preload_change_by_forces,
    preload_change_mm,
    share_of_travel,
)
from aligner.sheet.quantities import Length, Quantity, Ratio

WHERE = "build.sag"

_STILL_TO_READ = {
    "static": marked("For the static sag {lengths} is still to be read."),
    "rider": marked("For the rider sag {lengths} is still to be read."),
}
_CHANGED_OVER = {
    "static": marked(
        "Static sag. The length after pushing down is the longer: the two sets were changed over."
    ),
    "rider": marked(
        "Rider sag. The length after pushing down is the longer: the two sets were changed over."
    ),
}
_NO_BAND = {
    "static": marked("The sheet gives no band for the static sag, or no travel to take it from."),
    "rider": marked("The sheet gives no band for the rider sag, or no travel to take it from."),
}
_BAND_TURNED_ROUND = {
    "static": marked(
        "The band for the static sag runs from more to less: put the lower one first."
    ),
    "rider": marked("The band for the rider sag runs from more to less: put the lower one first."),
}


@dataclass(frozen=True)
class SagUnderLoad:
    """Sag under one load.

    Attributes:
        sag: mean sag and the band that friction holds; `None` without readings.
        share: of the travel, 0 to 1; `None` without travel.
        low_mm: least that is right.
        high_mm: most.
        from_middle: sag less the middle of the band, judged.
        change_mm: of preload (positive: more) that brings it to the middle.
        by_forces: whether spring and air were counted, or one mm for one mm.
    """

    sag: Sag | None = None
    share: float | None = None
    low_mm: float | None = None
    high_mm: float | None = None
    from_middle: Judged | None = None
    change_mm: float | None = None
    by_forces: bool = False

    @property
    def verdict(self) -> Verdict:
        """Whether it lies in the band."""
        return self.from_middle.verdict if self.from_middle else Verdict.MISSING


@dataclass(frozen=True)
class SagAssessment:
    """Sag with and without the rider.

    Attributes:
        static: under the machine alone.
        rider: with the rider on it.
        travel_mm: of the leg.
        notices: what to know.
    """

    static: SagUnderLoad = SagUnderLoad()
    rider: SagUnderLoad = SagUnderLoad()
    travel_mm: float | None = None
    notices: tuple[Notice, ...] = ()

    @property
    def leading(self) -> SagUnderLoad:
        """What the preload is set by: the rider's sag where it is read, else the static one."""
        return self.rider if self.rider.sag is not None else self.static


def assess_sag(job: Job, oil: OilAssessment) -> SagAssessment:
    """The sag readings of a job."""
    travel = job.sheet.legs.travel
    notices: list[Notice] = []
    static = _under(job, oil, "static", notices)
    rider = _under(job, oil, "rider", notices)
    if (static.sag or rider.sag) and travel is None:
        text = say("The sheet gives no travel: no share of it.")
        notices.append(note("sheet.legs.travel", text))
    if static.sag and rider.sag and rider.sag.sag_mm < static.sag.sag_mm:
        text = say("The sag is less with the rider than without: one set is misread.")
        notices.append(attention(WHERE, text))
    told = tuple(dict.fromkeys(notices))  # of the spacer both loads say the same
    return SagAssessment(static, rider, travel.value if travel else None, told)


def _under(job: Job, oil: OilAssessment, load: str, notices: list[Notice]) -> SagUnderLoad:
    lengths = job.build.sag
    down = getattr(lengths, f"{load}_down")
    up = getattr(lengths, f"{load}_up")
    if not (down or up):
        return SagUnderLoad()
    named = (
        (say("the extended length"), lengths.extended),
        (say("pushed down"), down),
        (say("lifted up"), up),
    )
    missing = [words for words, readings in named if not readings]
    if missing:
        notices.append(note(WHERE, say(_STILL_TO_READ[load], lengths=listed(missing))))
        return SagUnderLoad()
    try:
        sag = measured_sag(SagReadings(_mm(lengths.extended), _mm(down), _mm(up)))
        return _judged(job, oil, load, sag, notices)
    except AlignerError as error:
        notices.append(refused(WHERE, error))
        return SagUnderLoad()


def _judged(
    job: Job, oil: OilAssessment, load: str, sag: Sag, notices: list[Notice]
) -> SagUnderLoad:
    if sag.stiction_mm < 0:
        notices.append(attention(f"{WHERE}.{load}_down", say(_CHANGED_OVER[load])))
    travel = job.sheet.legs.travel
    share = share_of_travel(sag.sag_mm, travel.value) if travel else None
    band = job.sheet.legs.sag
    low = _band_mm(job, getattr(band, f"{load}_low"))
    high = _band_mm(job, getattr(band, f"{load}_high"))
    if low is None or high is None:
        notices.append(note("sheet.legs.sag", say(_NO_BAND[load])))
        return SagUnderLoad(sag, share, low, high)
    if low > high:
        notices.append(attention("sheet.legs.sag", say(_BAND_TURNED_ROUND[load])))
        return SagUnderLoad(sag, share, low, high)
    middle = (low + high) / 2
    spread, dof = _uncertainty(job, load)
    found = judged(sag.sag_mm - middle, spread, dof, (high - low) / 2)
    gauge = gauge_of(job, job.build.sag.gauge)
    found = replace(found, judgement=proved(found.judgement, gauge))
    change: float | None = None
    by_forces = False
    if found.verdict is not Verdict.WITHIN:
        try:
            preload = _preload_then(job, notices)
            change, by_forces = _preload_change(job, oil, preload, sag.sag_mm, middle)
        except AlignerError as error:
            notices.append(refused(WHERE, error))
    return SagUnderLoad(sag, share, low, high, found, change, by_forces)


def _uncertainty(job: Job, load: str) -> tuple[float | None, float]:
    """Of extended - (down + up)/2, all three with one gauge, whose own error drops out."""
    lengths = job.build.sag
    gauge = gauge_of(job, lengths.gauge)
    sets = ((1.0, "extended"), (-0.5, f"{load}_down"), (-0.5, f"{load}_up"))
    terms = []
    for weight, name in sets:
        mean = mean_of(getattr(lengths, name), gauge)
        if mean is not None:
            terms.append(Term(weight, mean, "one gauge" if gauge else ""))
    whole = combine(terms)
    return whole.standard_uncertainty, whole.degrees_of_freedom


def _preload_then(job: Job, notices: list[Notice]) -> float | None:
    """Of the spacer that was in while the sag was read; the sheet's where that is not known."""
    called = (say("spacer while the sag was read"), f"{WHERE}.spacer")
    spacer, stack = job.build.sag.spacer, stack_of(job.build.spring)
    if spacer is not None and stack is not None:
        return preload_with(stack, spacer, called, notices)
    preload = job.sheet.legs.spring.preload
    return preload.value if preload else None


def _preload_change(
    job: Job,
    oil: OilAssessment,
    preload_mm: float | None,
    measured_mm: float,
    wanted_mm: float,
) -> tuple[float, bool]:
    spring = job.sheet.legs.spring
    if spring.rate is None or preload_mm is None:
        return preload_change_mm(measured_mm, wanted_mm), False
    has_two = spring.second_rate is not None and spring.rate_changes_at is not None
    rates = TwoRateSpring(
        spring.rate.value,
        spring.second_rate.value if has_two and spring.second_rate else spring.rate.value,
        spring.rate_changes_at.value if has_two and spring.rate_changes_at else 0.0,
    )
    air = mean_column(job, oil)
    found = preload_change_by_forces(
        rates,
        preload_mm,
        measured_mm,
        wanted_mm,
        air_force_n(air, measured_mm) if air else 0.0,
        air_force_n(air, wanted_mm) if air else 0.0,
    )
    return found.change_mm, True


def _band_mm(job: Job, given: Quantity | None) -> float | None:
    if isinstance(given, Ratio):
        travel = job.sheet.legs.travel
        return given.value / 100 * travel.value if travel else None
    return given.value if given else None


def _mm(readings: tuple[Length, ...]) -> tuple[float, ...]:
    return tuple(reading.value for reading in readings)
