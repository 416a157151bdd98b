"""What would settle an unsettled verdict: more readings, another gauge, or neither.

The trap: "take more readings" is bad advice where the gauge's own step is already wider than
the room that is left, so the part that does not shrink is held against that room first.

How it looks ahead: the value stays where it is; each length keeps the scatter it has,
max(s, r); and the degrees of freedom are those the verdict itself will reckon with once the
readings are in, n - 1 for a scatter found from readings and infinite for a stated one. So the
number given is the one at which the same verdict, on such readings, becomes settled.
With another gauge the readings start afresh. That gauge's repeatability stands in, and what
the scatter so far has beyond the present gauge's (the hand, a rough edge) stays:
sqrt(r_new^2 + max(0, s^2 - r^2)).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from math import inf, isinf, sqrt

from aligner.gauging.combination import Term, combine, fixed_part
from aligner.gauging.gauge import Gauge
from aligner.gauging.readings import Estimate
from aligner.gauging.uncertainty import Part, combined_uncertainty, coverage_factor
from aligner.gauging.verdict import Verdict, judge

PATIENCE = 10
"""Readings of each length beyond which another gauge is looked for as well."""

_MOST_READINGS = 100_000


class Remedy(StrEnum):
    """What to do about an unsettled verdict."""

    MORE_READINGS = "more readings"
    ANOTHER_GAUGE = "another gauge"
    NAME_THE_GAUGE = "name the gauge"
    NOTHING_LISTED = "nothing listed"


@dataclass(frozen=True)
class Advice:
    """The facts about what would settle a verdict; quantities in the unit of the value.

    Attributes:
        remedy: what to do first.
        expected_verdict: what it would settle to, if the value stays as it is.
        room: how far the value is from the tolerance.
        fixed_part: expanded uncertainty left however many readings are taken, with the gauge
            in hand; `None` where the gauge is not known.
        readings_needed: readings of each length in all, those already taken included, with
            the gauge in hand; `None` if no number would do.
        gauge_name: the gauge that would do, `None` if none is needed or none on the list would.
        gauge_readings: readings of each length with that gauge.
    """

    remedy: Remedy
    expected_verdict: Verdict
    room: float
    fixed_part: float | None
    readings_needed: int | None = None
    gauge_name: str | None = None
    gauge_readings: int | None = None


def settling_advice(
    terms: Sequence[Term],
    tolerance: float,
    *,
    value: float | None = None,
    other_gauges: Iterable[Gauge] = (),
) -> Advice | None:
    """What would settle the verdict on a combination of lengths; `None` if it is settled.

    Args:
        terms: the lengths as they went into the value (`Difference.terms`, or one term with
            coefficient 1 for a length against its target).
        tolerance: the largest deviation allowed either way, in the unit of the value.
        value: what is judged, where it is not simply the sum of the terms (a length less its
            target, an angle).
        other_gauges: what else is to hand, the preferred first.

    Raises:
        AlignerError: the terms, the value or the tolerance cannot be judged.
    """
    whole = combine(terms)
    judged = whole.value if value is None else value

    def is_settled(parts: Iterable[Part]) -> bool:
        u, nu = combined_uncertainty(parts)
        return judge(judged, u, nu, tolerance).verdict.is_settled

    now = judge(judged, whole.standard_uncertainty, whole.degrees_of_freedom, tolerance)
    if now.verdict.is_settled:
        return None
    room = abs(tolerance - abs(judged))
    expected = Verdict.WITHIN if abs(judged) <= tolerance else Verdict.OUT
    is_known = whole.standard_uncertainty is not None
    needed = _readings_needed(terms, room, is_settled) if is_known else None
    advice = Advice(
        remedy=_first_remedy(is_known, needed),
        expected_verdict=expected,
        room=room,
        fixed_part=coverage_factor(inf) * whole.fixed_part if is_known else None,
        readings_needed=needed,
    )
    if needed is not None and needed <= PATIENCE:
        return advice
    found = _gauge_that_would_do(terms, other_gauges, room, needed, is_settled)
    if found is None:
        return advice
    gauge, readings = found
    remedy = Remedy.ANOTHER_GAUGE if is_known else Remedy.NAME_THE_GAUGE
    return replace(advice, remedy=remedy, gauge_name=gauge.name, gauge_readings=readings)


def _first_remedy(is_known: bool, needed: int | None) -> Remedy:
    if not is_known:
        return Remedy.NAME_THE_GAUGE
    return Remedy.NOTHING_LISTED if needed is None else Remedy.MORE_READINGS


_Settles = Callable[[Iterable[Part]], bool]


def _readings_needed(terms: Sequence[Term], room: float, is_settled: _Settles) -> int | None:
    fixed = fixed_part(terms)
    counts = [term.estimate.count for term in terms if term.estimate.count]
    if not counts or coverage_factor(inf) * fixed >= room:
        return None

    def with_readings(n: int) -> bool:
        return is_settled([*(_scatter_after(term, n) for term in terms), Part(fixed)])

    # While one length only catches up with another, its weight among the degrees of freedom
    # changes, so certainty need not grow step by step: those few are tried one at a time.
    for n in range(min(counts) + 1, max(counts) + 1):
        if with_readings(n):
            return n
    return _smallest(with_readings, max(counts))


def _scatter_after(term: Term, readings: int) -> Part:
    """The Type A part once a length has at least this many readings like those it has."""
    now: Estimate = term.estimate
    if not now.count or now.type_a_mm is None:
        return Part(0.0)
    n = max(now.count, readings)
    u = term.coefficient * now.type_a_mm * sqrt(now.count / n)
    return Part(u, inf if isinf(now.type_a_degrees_of_freedom) else n - 1)


def _gauge_that_would_do(
    terms: Sequence[Term],
    gauges: Iterable[Gauge],
    room: float,
    fewer_than: int | None,
    is_settled: _Settles,
) -> tuple[Gauge, int] | None:
    best: tuple[Gauge, int] | None = None
    for gauge in gauges:
        readings = _readings_with(gauge, terms, room, is_settled)
        limit = best[1] if best else fewer_than
        if readings is not None and (limit is None or readings < limit):
            best = (gauge, readings)
    return best


def _readings_with(
    gauge: Gauge, terms: Sequence[Term], room: float, is_settled: _Settles
) -> int | None:
    """Readings of each length, all taken afresh with this one gauge."""
    fixed = fixed_part([_read_with(gauge, term) for term in terms])
    if coverage_factor(inf) * fixed >= room:
        return None
    scatters = [
        (term.coefficient, *_scatter_with(gauge, term.estimate))
        for term in terms
        if term.estimate.count
    ]
    if not scatters:
        return None

    def with_readings(n: int) -> bool:
        parts = [
            Part(coefficient * scatter_mm / sqrt(n), n - 1 if is_found else inf)
            for coefficient, scatter_mm, is_found in scatters
        ]
        return is_settled([*parts, Part(fixed)])

    # A scatter that is beyond the gauge's own shows in no fewer than two readings.
    fewest = 2 if any(is_found for _, _, is_found in scatters) else 1
    return fewest if with_readings(fewest) else _smallest(with_readings, fewest)


def _read_with(gauge: Gauge, term: Term) -> Term:
    if not term.estimate.count:
        return term
    parts = replace(
        term.estimate,
        resolution_part_mm=gauge.resolution_mm / sqrt(12.0),
        limit_part_mm=gauge.limit_of_error_mm / sqrt(3.0),
    )
    return Term(term.coefficient, parts, limit_group=gauge.name)


def _scatter_with(gauge: Gauge, now: Estimate) -> tuple[float, bool]:
    """Scatter of one reading with this gauge, and whether the readings must show it."""
    s = now.standard_deviation_mm or 0.0
    r = now.repeatability_mm
    if s <= r:
        return gauge.repeatability_mm, False
    return sqrt(gauge.repeatability_mm**2 + (s * s - r * r)), True


def _smallest(settles: Callable[[int], bool], too_few: int) -> int | None:
    """The smallest number that settles, above one that does not (certainty grows with it)."""
    low, high = too_few, 2 * too_few
    while not settles(high):
        low, high = high, 2 * high
        if low > _MOST_READINGS:
            return None
    while high - low > 1:
        middle = (low + high) // 2
        if settles(middle):
            high = middle
        else:
            low = middle
    return high
