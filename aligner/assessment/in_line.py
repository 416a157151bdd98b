"""What plate, bars or widths say: whether the legs lie in one plane, and what to turn.

The trap: a twist and a convergence are two faults. A plate and bars tell the twist, which the
top bracket cures; widths tell the convergence, which nothing turned cures. So where both were
read, both count, and the graver one speaks.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from aligner.assessment.in_line_measured import WHERE, MeasuredInLine, measure
from aligner.assessment.notice import Notice, attention, refused
from aligner.assessment.readings import (
    Judged,
    gauge_of,
    gravest,
    judged,
    unproved,
    usable_gauges,
)
from aligner.errors import AlignerError
from aligner.gauging import Advice, Term, Verdict, combine, settling_advice
from aligner.geometry import InLine
from aligner.job import InLineReadings, Job, SpreadReadings
from aligner.language import marked, say
from aligner.sheet.quantities import Length

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
        measured = measure(job, readings, notices)
    except AlignerError as error:
        return InLineAssessment(notices=(*notices, _refused(error)))
    if measured is None:
        return InLineAssessment(notices=tuple(notices))
    result, terms = _held_to_tolerance(job, readings, measured, notices)
    advice = None
    if result and result.verdict is Verdict.UNSETTLED and result.tolerance is not None:
        listed = usable_gauges(job)
        advice = settling_advice(terms, result.tolerance, value=result.value, other_gauges=listed)
    verdict = result.verdict if result else Verdict.MISSING
    unproved_yet = unproved(verdict, gauge_of(job, readings.gauge if readings else None))
    return InLineAssessment(
        geometry=measured.geometry,
        judged=result,
        verdict=Verdict.UNSETTLED if unproved_yet else verdict,
        advice=unproved_yet or advice,
        notices=tuple(notices),
        is_convergence=isinstance(readings, SpreadReadings),
        is_held_to_length=isinstance(job.sheet.in_line.tolerance, Length),
    )


def _held_to_tolerance(
    job: Job, readings: InLineReadings | None, measured: MeasuredInLine, notices: list[Notice]
) -> tuple[Judged | None, tuple[Term, ...]]:
    """The reading or its angle, as the tolerance is given, and the terms it is made of."""
    tolerance, terms = job.sheet.in_line.tolerance, measured.terms
    whole = combine(terms)
    u, dof = whole.standard_uncertainty, whole.degrees_of_freedom
    if tolerance is None:
        text = say("The sheet gives no tolerance for the legs' plane.")
        notices.append(attention("sheet.in_line.tolerance", text))
        return None, terms
    if isinstance(tolerance, Length):
        notices += _short_height(job, readings)
        return judged(measured.reading_mm, u, dof, tolerance.value), terms
    if measured.angle_deg is None:
        text = say(
            "The tolerance is an angle, and the twist needs the leg spacing and the "
            "bracket spacing: give them, or give the tolerance as a length."
        )
        notices.append(attention("sheet.fork.bracket_spacing", text))
        return None, terms
    slope = measured.slope_deg_per_mm
    angle_terms = tuple(replace(term, coefficient=term.coefficient * slope) for term in terms)
    u_deg = None if u is None else u * abs(slope)
    return judged(measured.angle_deg, u_deg, dof, tolerance.value), angle_terms


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
                height=height.said,
                spacing=spacing.said,
            ),
        )
    ]


def _refused(error: AlignerError) -> Notice:
    """A refusal on the field it concerns, in the words of the page."""
    where, words = _FIELDS.get(error.where, (WHERE, error.where))
    return refused(where, AlignerError(say(words), error.understood, error.wanted))
