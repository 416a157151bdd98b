"""Every attempt at the alignment in a row: what was read, how surely, and what it came to.

The trap: an attempt is held against the sheet and the gauges as they stand in the job now, not
as they may have stood when it was read; so all rows of a chart are judged by one measure.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime
from functools import lru_cache
from math import copysign

from aligner.assessment.correction import Subject
from aligner.assessment.in_line import InLineAssessment, assess_in_line
from aligner.assessment.protrusion import ProtrusionAssessment, assess_protrusion
from aligner.assessment.readings import Judged
from aligner.assessment.squaring import SquaringAssessment, assess_squaring
from aligner.assessment.squaring_pair import reference_pair
from aligner.gauging import Verdict
from aligner.job import Align, AsFound, Gauge, Job, ProtrusionReadings
from aligner.language import say, spoken
from aligner.sheet import Sheet
from aligner.sheet.dimensions import Fork, ProtrusionLimits, TurnLimits
from aligner.sheet.quantities import Length


@dataclass(frozen=True)
class AttemptRow:
    """One attempt at one subject.

    Attributes:
        number: of the attempt, from 1.
        at: when it was closed; for the one in hand when its first reading was taken.
        is_in_hand: whether it is the one in hand.
        value: the deviation, in the series' unit and sign; `None` without readings.
        expanded_uncertainty: of it, for 95 %; `None` where it is not known.
        tolerance: allowed either way; `None` where the sheet has none in this unit.
        verdict: what that attempt came to as a whole.
        remark: what the deviation alone does not show, in words; "" if nothing.
        is_convergence: whether widths were read, which tell how the legs spread and no twist;
            positive is then wider going down.
    """

    number: int
    at: datetime | None
    is_in_hand: bool
    value: float | None = None
    expanded_uncertainty: float | None = None
    tolerance: float | None = None
    verdict: Verdict = Verdict.MISSING
    remark: str = ""
    is_convergence: bool = False


@dataclass(frozen=True)
class AttemptSeries:
    """All attempts at one subject, oldest first, the one in hand last.

    Attributes:
        subject: the difference of heights (positive: left high), the lower bracket's turn
            (positive: to the left; where it is judged as a length, left distance less right),
            or the legs' plane (positive: top bracket turned to the left).
        is_angle: whether values are in degrees; else in mm.
        rows: one for each attempt.
    """

    subject: Subject
    is_angle: bool
    rows: tuple[AttemptRow, ...]

    @property
    def is_convergence(self) -> bool:
        """Whether what was read last are widths."""
        read = [row for row in self.rows if row.value is not None]
        return bool(read) and read[-1].is_convergence

    @property
    def has_values(self) -> bool:
        """Whether anything was read in any attempt."""
        return any(row.value is not None for row in self.rows)


def attempt_series(job: Job) -> tuple[AttemptSeries, ...]:
    """Heights, squareness and legs' plane of every attempt that was kept, and the one in hand."""
    measure = _Measure(
        gauges=tuple(job.gauges.items()),
        fork=job.sheet.fork,
        heights=job.sheet.protrusion,
        square=job.sheet.squaring,
        in_line=job.sheet.in_line,
        as_found=job.as_found.protrusion,
        square_is_length=_square_is_length(job),
        language=spoken(),
    )
    attempts = [(attempt.closed, attempt.align) for attempt in job.attempts]
    rows = [
        tuple(replace(row, number=number, at=at) for row in _assessed(align, measure))
        for number, (at, align) in enumerate(attempts, start=1)
    ]
    rows.append(
        tuple(
            replace(row, number=len(attempts) + 1, at=job.align.begun, is_in_hand=True)
            for row in _assessed(job.align, measure)
        )
    )
    heights, square, in_line = zip(*rows, strict=True)
    return (
        AttemptSeries(Subject.PROTRUSION, False, heights),
        AttemptSeries(Subject.SQUARING, not measure.square_is_length, square),
        AttemptSeries(Subject.IN_LINE, not _in_line_is_length(measure.in_line), in_line),
    )


@dataclass(frozen=True)
class _Measure:
    """All that an attempt's row depends on beside its readings; hashable, so it is done once."""

    gauges: tuple[tuple[str, Gauge], ...]
    fork: Fork
    heights: ProtrusionLimits
    square: TurnLimits
    in_line: TurnLimits
    as_found: ProtrusionReadings
    square_is_length: bool
    language: str


@lru_cache(maxsize=128)
def _assessed(align: Align, measure: _Measure) -> tuple[AttemptRow, ...]:
    """An attempt's heights, squareness and legs' plane, without its number and time."""
    job = Job(
        sheet=Sheet(
            fork=measure.fork,
            protrusion=measure.heights,
            squaring=measure.square,
            in_line=measure.in_line,
        ),
        gauges=dict(measure.gauges),
        as_found=AsFound(protrusion=measure.as_found),
        align=align,
    )
    place = AttemptRow(0, None, False)
    return (
        _heights(place, assess_protrusion(job)),
        _square(place, assess_squaring(job), is_length=measure.square_is_length),
        _in_line(place, assess_in_line(job), is_length=_in_line_is_length(measure.in_line)),
    )


def _square_is_length(job: Job) -> bool:
    """Whether squareness is told in mm: where it is judged so, or no pair gives an angle."""
    if isinstance(job.sheet.squaring.tolerance, Length):
        return True
    pairs = job.align.squaring
    return bool(pairs) and not any(map(reference_pair, pairs))


def _in_line_is_length(limits: TurnLimits) -> bool:
    return isinstance(limits.tolerance, Length)


def _row(
    place: AttemptRow, value: float, found: Judged | None, whole: Verdict, remark: str = ""
) -> AttemptRow:
    return replace(
        place,
        value=value,
        expanded_uncertainty=found.judgement.expanded_uncertainty if found else None,
        tolerance=found.tolerance if found else None,
        verdict=whole,
        remark=remark,
    )


def _heights(place: AttemptRow, found: ProtrusionAssessment) -> AttemptRow:
    difference = found.difference
    if difference is None:
        return place
    remark = ""
    if found.verdict is not difference.verdict and found.goal_mm is not None:
        remark = say("a leg is not at the height it should have")
        if found.verdict is Verdict.UNSETTLED:
            remark = say("whether each leg is at its height is not settled")
    return _row(place, difference.value, difference, found.verdict, remark)


def _square(place: AttemptRow, found: SquaringAssessment, *, is_length: bool) -> AttemptRow:
    remark = say("the pairs disagree") if found.disagree else ""
    if not is_length:
        turn = found.turn
        return _row(place, turn.value, turn, found.verdict, remark) if turn else place
    differences = [pair.difference for pair in found.pairs if pair.difference]
    if not differences:
        return place
    worst = max(differences, key=lambda difference: abs(difference.value))
    return _row(place, worst.value, worst, found.verdict, remark)


def _in_line(place: AttemptRow, found: InLineAssessment, *, is_length: bool) -> AttemptRow:
    geometry, judged = found.geometry, found.judged
    if geometry is None:
        return place
    if not found.tells_twist:
        place = replace(place, is_convergence=True)
        angle = geometry.convergence_deg
    else:
        angle = geometry.twist_deg if geometry.twist_deg is not None else geometry.skew_deg
    if angle is None:
        return place
    if found.is_convergence and found.tells_twist:
        # Both were read, and what is judged is the convergence: the twist stands without it.
        row = _row(place, angle, None, found.verdict, say("the legs are not parallel"))
        return place if is_length else row
    if not is_length:
        return _row(place, angle, judged, found.verdict)
    if judged is None:
        return place
    # A plate's gap has no sign of its own: the corner gives it.
    return _row(place, copysign(judged.value, angle), judged, found.verdict)
