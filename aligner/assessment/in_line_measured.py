"""From what was read across the legs, by plate, bars or widths, to the geometry it tells."""

from __future__ import annotations

import math
from dataclasses import dataclass

from aligner.assessment.notice import Notice, attention, note
from aligner.assessment.readings import gauge_notices, gauge_of, mean_of, odd_reading
from aligner.gauging import Term
from aligner.geometry import Corner, ForkDimensions, InLine, from_bars, from_plate, from_spread
from aligner.job import BarReadings, InLineReadings, Job, PlateReadings, SpreadReadings
from aligner.language import marked, say
from aligner.sheet.quantities import Length, Quantity

WHERE = "align.in_line"

_NOT_MEASURED = {
    "upper": marked("The upper width is not measured."),
    "lower": marked("The lower width is not measured."),
}


@dataclass(frozen=True)
class MeasuredInLine:
    """What the readings of one method come to.

    Attributes:
        geometry: skew, twist, rim, turn at the axle, or convergence.
        reading_mm: what the gauge reads, mm: gap, end difference, or lower less upper width.
        angle_deg: the twist, by widths the convergence; `None` where dimensions are missing.
        slope_deg_per_mm: how that angle follows the reading.
        terms: of which the reading is made.
    """

    geometry: InLine
    reading_mm: float
    angle_deg: float | None
    slope_deg_per_mm: float
    terms: tuple[Term, ...]


def measure(
    job: Job, readings: InLineReadings | None, notices: list[Notice]
) -> MeasuredInLine | None:
    """The readings of one method as the geometry takes them; `None` if they are not all there.

    Args:
        job: it is of.
        readings: by plate, bars or widths.
        notices: to which is added what is to be known of them, and what is missing.

    Raises:
        AlignerError: readings that cannot be; `where` holds the geometry's name for the value.
    """
    match readings:
        case PlateReadings():
            return _by_plate(job, readings, notices)
        case BarReadings():
            return _by_bars(job, readings, notices)
        case SpreadReadings():
            return _by_spread(job, readings, notices)
        case None:
            return None


def _by_plate(job: Job, readings: PlateReadings, notices: list[Notice]) -> MeasuredInLine | None:
    gauge = gauge_of(job, readings.gauge)
    gap = mean_of(readings.gap, gauge)
    if gap is None:
        return None
    notices += _on_readings(job, readings.gauge, readings.gap, "gap")
    asked = say("Give the height between the plate's contact lines: without it nothing follows.")
    height_mm = _given_mm(readings.height, "height", asked, notices)
    if height_mm is None:
        return None
    if readings.corner is None and gap.value_mm > 0:
        text = say("Say which corner of the plate stands off the tube.")
        notices.append(attention(f"{WHERE}.corner", text))
        return None
    fork = _fork_dimensions(job)
    corner = readings.corner or Corner.LOWER_LEFT
    found = from_plate(gap.value_mm, height_mm, corner, fork, readings.face)
    return MeasuredInLine(
        found, gap.value_mm, found.twist_deg, _twist_slope(found, fork), (Term(1.0, gap),)
    )


def _by_bars(job: Job, readings: BarReadings, notices: list[Notice]) -> MeasuredInLine | None:
    gauge = gauge_of(job, readings.gauge)
    ends = mean_of(readings.end_difference, gauge)
    if ends is None:
        return None
    notices += _on_readings(job, readings.gauge, readings.end_difference, "end_difference")
    asked = say("Give the height between the bars: without it nothing follows.")
    height_mm = _given_mm(readings.height, "height", asked, notices)
    asked = say("Give the bars' half length: without it nothing follows.")
    half_mm = _given_mm(readings.half_length, "half_length", asked, notices)
    if height_mm is None or half_mm is None:
        return None
    fork = _fork_dimensions(job)
    found = from_bars(ends.value_mm, half_mm, height_mm, fork)
    return MeasuredInLine(
        found, ends.value_mm, found.twist_deg, _twist_slope(found, fork), (Term(1.0, ends),)
    )


def _by_spread(job: Job, readings: SpreadReadings, notices: list[Notice]) -> MeasuredInLine | None:
    gauge = gauge_of(job, readings.gauge)
    upper, lower = mean_of(readings.upper, gauge), mean_of(readings.lower, gauge)
    if upper is None and lower is None:
        return None
    notices += gauge_notices(job, readings.gauge, WHERE)
    for name, widths in (("upper", readings.upper), ("lower", readings.lower)):
        if not widths:
            notices.append(attention(f"{WHERE}.{name}", say(_NOT_MEASURED[name])))
        else:
            notices += odd_reading(widths, gauge, f"{WHERE}.{name}")
    asked = say("Give the height between the two widths: without it nothing follows.")
    height_mm = _given_mm(readings.height, "height", asked, notices)
    if upper is None or lower is None or height_mm is None:
        return None
    found = from_spread(upper.value_mm, lower.value_mm, height_mm)
    text = say("Widths tell whether the tubes converge. They cannot tell a twist.")
    notices.append(note(WHERE, text))
    group = gauge.name if gauge else ""
    return MeasuredInLine(
        geometry=found,
        reading_mm=lower.value_mm - upper.value_mm,
        angle_deg=found.convergence_deg,
        slope_deg_per_mm=found.sensitivity_deg_per_mm,
        terms=(Term(1.0, lower, group), Term(-1.0, upper, group)),
    )


def _on_readings(
    job: Job, gauge: str | None, readings: tuple[Quantity, ...], name: str
) -> tuple[Notice, ...]:
    odd = odd_reading(readings, gauge_of(job, gauge), f"{WHERE}.{name}")
    return (*gauge_notices(job, gauge, WHERE), *odd)


def _given_mm(given: Length | None, field: str, asked: str, notices: list[Notice]) -> float | None:
    """A dimension without which nothing follows; where it is not given, it is asked for."""
    if given is not None and given.value > 0:
        return given.value
    notices.append(attention(f"{WHERE}.{field}", asked))
    return None


def _fork_dimensions(job: Job) -> ForkDimensions:
    """The fork's dimensions as the geometry takes them."""
    fork = job.sheet.fork
    return ForkDimensions(
        leg_spacing_mm=fork.leg_spacing.value if fork.leg_spacing else None,
        bracket_spacing_mm=fork.bracket_spacing.value if fork.bracket_spacing else None,
        lower_bracket_to_axle_mm=(
            fork.lower_bracket_to_axle.value if fork.lower_bracket_to_axle else None
        ),
    )


def _twist_slope(found: InLine, fork: ForkDimensions) -> float:
    """How the twist follows the reading, degrees for a mm: from sin(phi) = H tan(psi) / W."""
    if found.twist_deg is None or found.skew_deg is None:
        return 0.0
    if fork.bracket_spacing_mm is None or fork.leg_spacing_mm is None:
        return 0.0
    skew, twist = math.radians(found.skew_deg), math.radians(found.twist_deg)
    ratio = fork.bracket_spacing_mm / fork.leg_spacing_mm
    return found.sensitivity_deg_per_mm * ratio / (math.cos(skew) ** 2 * math.cos(twist))
