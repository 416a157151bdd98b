"""From the readings of a job to estimates: which gauge, what it knows, which reading is odd."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from aligner import gauging
from aligner.assessment.notice import Notice, attention, note
from aligner.gauging import (
    Advice,
    Estimate,
    Judgement,
    Remedy,
    UnusableGauge,
    Verdict,
    estimate,
    reading_that_stands_off,
)
from aligner.job import Gauge, Job
from aligner.language import say, written
from aligner.sheet.quantities import Quantity


@dataclass(frozen=True)
class Judged:
    """A deviation from where it should be, with its verdict.

    Attributes:
        value: the deviation, in the unit of the tolerance (mm or degrees).
        standard_uncertainty: of it, `None` if unknown.
        tolerance: plus or minus; `None` where the sheet has none.
        judgement: the verdict with its figures.
    """

    value: float
    standard_uncertainty: float | None
    tolerance: float | None
    judgement: Judgement

    @property
    def verdict(self) -> Verdict:
        """Within, out, unsettled or missing."""
        return self.judgement.verdict


def judged(
    value: float, standard_uncertainty: float | None, dof: float, tolerance: float | None
) -> Judged:
    """A deviation held against its tolerance."""
    verdict = gauging.judge(value, standard_uncertainty, dof, tolerance)
    return Judged(value, standard_uncertainty, tolerance, verdict)


_GRAVITY = (Verdict.WITHIN, Verdict.MISSING, Verdict.UNSETTLED, Verdict.OUT)


def gravest(*verdicts: Verdict) -> Verdict:
    """The verdict that all of them come to: out before unsettled before missing before within."""
    return max(verdicts, key=_GRAVITY.index, default=Verdict.MISSING)


def gauge_of(job: Job, name: str | None) -> gauging.Gauge | None:
    """The gauge of that name as the computations take it.

    `None` if it is not on the list, or if nothing is known of it: no gauge is exact.
    """
    described = job.gauges.get(name) if name else None
    if described is None or name is None or gauge_refusal(name, described):
        return None
    return described.described(name)


def gauge_refusal(name: str, gauge: Gauge) -> str:
    """Why a gauge on the list cannot be reckoned with, in words; "" if it can."""
    try:
        gauge.described(name)
    except UnusableGauge as refusal:
        return str(refusal)
    return ""


def usable_gauges(job: Job) -> list[gauging.Gauge]:
    """Every gauge on the job's list that can be reckoned with, for what would settle a verdict."""
    found = (gauge_of(job, name) for name in job.gauges)
    return [gauge for gauge in found if gauge is not None]


def gauge_notices(job: Job, name: str | None, where: str) -> tuple[Notice, ...]:
    """What to say where the gauge of some readings is not known."""
    if name is None:
        return (
            attention(
                f"{where}.gauge",
                say("No gauge is named, so its limit of error is not known: name the one you use."),
            ),
        )
    if name not in job.gauges:
        return (
            attention(
                f"{where}.gauge",
                say(
                    "“{gauge}” is not on the job's list of gauges: add it there or choose another.",
                    gauge=name,
                ),
            ),
        )
    gauge = job.gauges[name]
    refusal = gauge_refusal(name, gauge)
    if refusal:
        return (attention(f"gauges.{name}", f"{refusal}."),)
    if gauge.repeatability.value == 0:
        text = say(
            "The {gauge} has no repeatability: one reading is taken as if it were every reading.",
            gauge=name,
        )
        return (note(f"gauges.{name}.repeatability", text),)
    return ()


def unproved(verdict: Verdict, *gauges: gauging.Gauge | None) -> Advice | None:
    """What would settle a verdict of within that rests on a gauge nothing is known of.

    Scatter alone proves nothing within: what is not known is not nought. `None` where every
    gauge is known, or the verdict is another.
    """
    if verdict is not Verdict.WITHIN or None not in gauges:
        return None
    return Advice(Remedy.NAME_THE_GAUGE, Verdict.WITHIN, room=0.0, fixed_part=None)


def proved(judgement: Judgement, gauge: gauging.Gauge | None) -> Judgement:
    """A judgement as far as its gauge bears it out: within is unsettled by one that is not known.

    For the same reason as `unproved`.
    """
    if gauge is None and judgement.verdict is Verdict.WITHIN:
        return replace(judgement, verdict=Verdict.UNSETTLED)
    return judgement


def mean_of(readings: Sequence[Quantity], gauge: gauging.Gauge | None) -> Estimate | None:
    """The estimate from some readings; `None` where there is none."""
    return estimate([reading.value for reading in readings], gauge) if readings else None


def mean_mm(readings: Sequence[Quantity]) -> float:
    """The mean of some readings, one or more; what it is worth, `mean_of` says."""
    return estimate([reading.value for reading in readings], None).value_mm


def odd_reading(
    readings: Sequence[Quantity], gauge: gauging.Gauge | None, where: str
) -> tuple[Notice, ...]:
    """A notice where one reading stands off from its fellows; it is counted all the same."""
    if not readings:
        return ()
    found = reading_that_stands_off([reading.value for reading in readings], gauge)
    if found is None:
        return ()
    reading = readings[found.index]
    return (
        note(
            f"{where}[{found.index}]",
            say(
                "{reading} stands off from its fellows by {size}. It still counts: read it once "
                "more, and strike it out only if it was a slip.",
                reading=reading.said,
                size=f"{written(abs(found.off_mm), '.2g')} mm",
            ),
        ),
    )


def odd_reading_said(notices: Iterable[Notice]) -> str:
    """What `odd_reading` said among these notices; "" where every reading is borne out."""
    return next((each.text for each in notices if _is_of_one_reading(each)), "")


def _is_of_one_reading(notice: Notice) -> bool:
    """Whether a notice is about one reading: its place ends with a number, but a pair's too."""
    holder, _, number = notice.where.rpartition("[")
    return number.endswith("]") and not holder.endswith(".squaring")
