"""What plate, bars or widths say: whether the legs lie in one plane, and what to turn.

The trap: a twist and a convergence are two faults. A plate and bars tell the twist, which the
top bracket cures; widths tell the convergence, which nothing turned cures. So where both were
read, both count, and the graver one speaks.
"""

from __future__ import annotations

import math
from dataclasses import replace

from aligner.assessment.notice import Notice, attention, note, refused
from aligner.assessment.readings import (
    Judged,
    gauge_notices,
    gauge_of,
    gravest,
    judged,
    mean_of,
    odd_reading,
    other_gauges,
    unproved,
)
from aligner.errors import AlignerError
from aligner.frozen import dataclass
from aligner.gauging import Advice, Term, Verdict, combine, settling_advice
from aligner.geometry import Corner, ForkDimensions, InLine, from_bars, from_plate, from_spread
from aligner.job import BarReadings, InLineReadings, Job, PlateReadings, SpreadReadings
from aligner.language import marked, say
from aligner.sheet.quantities import Angle, Length, Quantity

WHERE = "align.in_line"

#: What the geometry calls a value: the field it stands in, and the words for it.
_FIELDS = {
    "in_line gap": (f"{WHERE}.gap", marked("the gap")),
    "in_line height": (f"{WHERE}.height", marked("the height")),
    "in_line end_difference": (f"{WHERE}.end_difference", marked("the end difference")),
    "in_line half_length": (f"{WHERE}.half_length", marked("the half length")),
    "in_line upper_width": (f"{WHERE}.upper", marked("the upper width")),
    "in_line lower_width": (f"{WHERE}.lower", marked("the lower width")),
    "in_line widths": (f"{WHERE}.lower", marked("the difference of the widths")),
    "leg_spacing": ("sheet.fork.leg_spacing", marked("the sheet's leg spacing")),
    "bracket_spacing": ("sheet.fork.bracket_spacing", marked("the sheet's bracket spacing")),
    "lower_bracket_to_axle": (
        "sheet.fork.lower_bracket_to_axle",
        marked("the sheet's length from the lower bracket to the axle"),
    ),
    "in_line": (WHERE, ""),
}
#: Fields without which nothing follows from the readings.
_GIVE = {
    "plate height": marked(
        "Give the height between the plate's contact lines: without it nothing follows."
    ),
    "bars height": marked("Give the height between the bars: without it nothing follows."),
    "bars half_length": marked("Give the bars' half length: without it nothing follows."),
    "spread height": marked("Give the height between the two widths: without it nothing follows."),
}
_NOT_MEASURED = {
    "upper": marked("The upper width is not measured."),
    "lower": marked("The lower width is not measured."),
}


@dataclass(frozen=True)
class InLineAssessment:
    """The legs against each other.

    Attributes:
        geometry: skew, twist, rim, turn at the axle, convergence; `None` without readings.
        judged: what is held against the tolerance: the twist (or the convergence, by widths)
            in degrees, or what the gauge reads in mm.
        verdict: within, out, unsettled or missing.
        advice: what would settle it.
        notices: what to know; where nothing can be told, the last one says why.
        is_convergence: whether what is judged is the convergence, and not the twist.
        is_held_to_length: whether the tolerance is a length, held against what was read.
    """

    geometry: InLine | None = None
    judged: Judged | None = None
    verdict: Verdict = Verdict.MISSING
    advice: Advice | None = None
    notices: tuple[Notice, ...] = ()
    is_convergence: bool = False
    is_held_to_length: bool = False

    @property
    def tells_twist(self) -> bool:
        """Whether a twist would have been seen; widths alone cannot tell one."""
        return self.geometry is not None and self.geometry.skew_deg is not None


@dataclass(frozen=True)
class _Measured:
    geometry: InLine
    reading_mm: float
    angle_deg: float | None
    slope_deg_per_mm: float
    terms: tuple[Term, ...]


def fork_dimensions(job: Job) -> ForkDimensions:
    """The fork's dimensions as the geometry takes them."""
    fork = job.sheet.fork
    return ForkDimensions(
        leg_spacing_mm=fork.leg_spacing.value if fork.leg_spacing else None,
        bracket_spacing_mm=fork.bracket_spacing.value if fork.bracket_spacing else None,
        lower_bracket_to_axle_mm=(
            fork.lower_bracket_to_axle.value if fork.lower_bracket_to_axle else None
        ),
    )


def assess_in_line(job: Job) -> InLineAssessment:
    """The in-line readings of a job's present attempt, assessed.

    Readings kept by another method count beside those in use only for what these cannot
    tell: widths beside a plate or bars, and the other way round.
    """
    found = _assess_readings(job, job.align.in_line)
    beside = _read_beside(job)
    if beside is not None and found.geometry is not None:
        other = _assess_readings(job, beside)
        found = found if other.geometry is None else _together(found, other)
    if found.verdict is Verdict.WITHIN and not found.tells_twist:
        return replace(found, verdict=Verdict.UNSETTLED)  # widths alone would pass any twist
    return found


def _read_beside(job: Job) -> InLineReadings | None:
    wants_twist = isinstance(job.align.in_line, SpreadReadings)
    fitting = (
        other
        for other in reversed(job.align.in_line_others)
        if isinstance(other, SpreadReadings) is not wants_twist
    )
    return next(fitting, None)


def _together(found: InLineAssessment, other: InLineAssessment) -> InLineAssessment:
    twist, spread = (other, found) if found.is_convergence else (found, other)
    if twist.geometry is None or spread.geometry is None:
        return found
    geometry = replace(twist.geometry, convergence_deg=spread.geometry.convergence_deg)
    verdict = gravest(found.verdict, other.verdict)
    speaking = other if found.verdict is not verdict else found
    return replace(
        speaking,
        geometry=geometry,
        notices=(*found.notices, *(each for each in other.notices if each not in found.notices)),
    )


def _assess_readings(job: Job, readings: InLineReadings | None) -> InLineAssessment:
    notices: list[Notice] = []
    try:
        measured = _measure(job, readings, notices)
    except AlignerError as error:
        return InLineAssessment(notices=(*notices, _refused(error)))
    if measured is None:
        return InLineAssessment(notices=tuple(notices))
    tolerance = job.sheet.in_line.tolerance
    whole = combine(measured.terms)
    result: Judged | None = None
    terms = measured.terms
    if tolerance is None:
        text = say("The sheet gives no tolerance for the legs' plane.")
        notices.append(attention("sheet.in_line.tolerance", text))
    elif isinstance(tolerance, Length):
        notices += _short_height(job, readings)
        result = judged(
            measured.reading_mm,
            whole.standard_uncertainty,
            whole.degrees_of_freedom,
            tolerance.value,
        )
    elif isinstance(tolerance, Angle) and measured.angle_deg is not None:
        slope = measured.slope_deg_per_mm
        terms = tuple(
            Term(term.coefficient * slope, term.estimate, term.limit_group) for term in terms
        )
        u = whole.standard_uncertainty
        result = judged(
            measured.angle_deg,
            None if u is None else u * abs(slope),
            whole.degrees_of_freedom,
            tolerance.value,
        )
    else:
        notices.append(
            attention(
                "sheet.fork.bracket_spacing",
                say(
                    "The tolerance is an angle, and the twist needs the leg spacing and the "
                    "bracket spacing: give them, or give the tolerance as a length."
                ),
            )
        )
    advice = None
    if result and result.verdict is Verdict.UNSETTLED and result.tolerance is not None:
        others = other_gauges(job)
        advice = settling_advice(terms, result.tolerance, value=result.value, other_gauges=others)
    verdict = result.verdict if result else Verdict.MISSING
    unproved_yet = unproved(verdict, gauge_of(job, readings.gauge if readings else None))
    return InLineAssessment(
        geometry=measured.geometry,
        judged=result,
        verdict=Verdict.UNSETTLED if unproved_yet else verdict,
        advice=unproved_yet or advice,
        notices=tuple(notices),
        is_convergence=isinstance(readings, SpreadReadings),
        is_held_to_length=isinstance(tolerance, Length),
    )


def _short_height(job: Job, readings: InLineReadings | None) -> list[Notice]:
    """A length read over a small height passes a large angle: said where it is a quarter or less.

    A quarter of the bracket spacing: common practice, no source.
    """
    height, spacing = readings.height if readings else None, job.sheet.fork.bracket_spacing
    if height is None or spacing is None or height.value > spacing.value / 4:
        return []
    return [
        attention(
            f"{WHERE}.height",
            say(
                "Read over a height of {height} only, against {spacing} between the brackets: "
                "what is within there may be out over the whole. Read over a greater height.",
                height=height,
                spacing=spacing,
            ),
        )
    ]


def _refused(error: AlignerError) -> Notice:
    """A refusal on the field it concerns, in the words of the page."""
    where, words = _FIELDS.get(error.where, (WHERE, error.where))
    return refused(where, AlignerError(say(words), error.understood, error.wanted))


def _measure(job: Job, readings: InLineReadings | None, notices: list[Notice]) -> _Measured | None:
    match readings:
        case PlateReadings():
            return _by_plate(job, readings, notices)
        case BarReadings():
            return _by_bars(job, readings, notices)
        case SpreadReadings():
            return _by_spread(job, readings, notices)
        case None:
            return None


def _by_plate(job: Job, readings: PlateReadings, notices: list[Notice]) -> _Measured | None:
    gauge = gauge_of(job, readings.gauge)
    gap = mean_of(readings.gap, gauge)
    if gap is None:
        return None
    notices += _on_readings(job, readings.gauge, readings.gap, "gap")
    if not _has(readings.height, "plate", "height", notices):
        return None
    if readings.corner is None and gap.value_mm > 0:
        text = say("Say which corner of the plate stands off the tube.")
        notices.append(attention(f"{WHERE}.corner", text))
        return None
    height_mm = readings.height.value if readings.height else 0.0
    fork = fork_dimensions(job)
    corner = readings.corner or Corner.LOWER_LEFT
    found = from_plate(gap.value_mm, height_mm, corner, fork, readings.face)
    return _Measured(
        found, gap.value_mm, found.twist_deg, _twist_slope(found, fork), (Term(1.0, gap),)
    )


def _by_bars(job: Job, readings: BarReadings, notices: list[Notice]) -> _Measured | None:
    gauge = gauge_of(job, readings.gauge)
    ends = mean_of(readings.end_difference, gauge)
    if ends is None:
        return None
    notices += _on_readings(job, readings.gauge, readings.end_difference, "end_difference")
    has_height = _has(readings.height, "bars", "height", notices)
    has_half = _has(readings.half_length, "bars", "half_length", notices)
    if not (has_height and has_half and readings.height and readings.half_length):
        return None
    fork = fork_dimensions(job)
    found = from_bars(ends.value_mm, readings.half_length.value, readings.height.value, fork)
    return _Measured(
        found, ends.value_mm, found.twist_deg, _twist_slope(found, fork), (Term(1.0, ends),)
    )


def _by_spread(job: Job, readings: SpreadReadings, notices: list[Notice]) -> _Measured | None:
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
    if not _has(readings.height, "spread", "height", notices):
        return None
    if upper is None or lower is None or readings.height is None:
        return None
    found = from_spread(upper.value_mm, lower.value_mm, readings.height.value)
    text = say("Widths tell whether the tubes converge. They cannot tell a twist.")
    notices.append(note(WHERE, text))
    group = gauge.name if gauge else ""
    return _Measured(
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


def _has(given: Length | None, method: str, name: str, notices: list[Notice]) -> bool:
    if given is not None and given.value > 0:
        return True
    notices.append(attention(f"{WHERE}.{name}", say(_GIVE[f"{method} {name}"])))
    return False


def _twist_slope(found: InLine, fork: ForkDimensions) -> float:
    """How the twist follows the reading, degrees for a mm: from sin(phi) = H tan(psi) / W."""
    if found.twist_deg is None or found.skew_deg is None:
        return 0.0
    if fork.bracket_spacing_mm is None or fork.leg_spacing_mm is None:
        return 0.0
    skew, twist = math.radians(found.skew_deg), math.radians(found.twist_deg)
    ratio = fork.bracket_spacing_mm / fork.leg_spacing_mm
    return found.sensitivity_deg_per_mm * ratio / (math.cos(skew) ** 2 * math.cos(twist))
