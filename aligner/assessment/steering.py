"""What the legs' heights do on the road: rake, trail, wheelbase, axle lean, tyre patch.

The trap: the sheet's rake and trail hold at one height of the legs, and every other figure is
told from there. Which height that is, `standard_height_mm` says; where nothing says it, the
heights as they stand are taken, and that is said too.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.assessment.notice import Notice, refused
from aligner.assessment.protrusion import ProtrusionAssessment, mean_as_found
from aligner.assessment.readings import mean_mm
from aligner.errors import AlignerError
from aligner.geometry import (
    Handling,
    SteeringGeometry,
    axle_lean_deg,
    patch_shift_mm,
    raised,
)
from aligner.job import Job
from aligner.language import say
from aligner.units import ANGLE, shown

WHERE = "sheet.steering"


@dataclass(frozen=True)
class SteeringAssessment:
    """The steering geometry as the legs stand, and as they will stand.

    Attributes:
        now: at the mean height of both legs as read (the sheet's own figures until both are
            read); `None` without the five dimensions.
        corrected: after the moves.
        as_found: at the mean height before stripping.
        axle_lean_deg: as the legs stand; positive: the axle's left end is higher.
        patch_shift_mm: of the tyre's contact from the axle's middle, positive to the left.
        notices: what to know.
        sheet: as the sheet gives it.
        rise_mm: how far the legs stand, in the mean, above the height at which the sheet's
            figures hold; `None` until both are read.
        corrected_lean_deg, corrected_shift_mm: of axle and tyre patch after the moves.
        as_found_lean_deg, as_found_shift_mm: of axle and tyre patch before stripping.
    """

    now: Handling | None = None
    corrected: Handling | None = None
    as_found: Handling | None = None
    axle_lean_deg: float | None = None
    patch_shift_mm: float | None = None
    notices: tuple[Notice, ...] = ()
    sheet: Handling | None = None
    rise_mm: float | None = None
    corrected_lean_deg: float | None = None
    corrected_shift_mm: float | None = None
    as_found_lean_deg: float | None = None
    as_found_shift_mm: float | None = None


def steering_geometry(job: Job) -> SteeringGeometry | None:
    """The bike's steering as the sheet gives it; `None` unless all of it is known."""
    given = job.sheet.steering
    if (
        given.rake is None
        or given.offset is None
        or given.front_radius is None
        or given.rear_radius is None
        or given.wheelbase is None
    ):
        return None
    return SteeringGeometry(
        rake_deg=given.rake.value,
        offset_mm=given.offset.value,
        front_radius_mm=given.front_radius.value,
        rear_radius_mm=given.rear_radius.value,
        wheelbase_mm=given.wheelbase.value,
    )


def standard_height_mm(job: Job) -> float | None:
    """The protrusion at which the sheet's geometry holds: the target, else the height as found."""
    target = job.sheet.protrusion.target
    return target.value if target else mean_as_found(job)


def missing_for_steering(job: Job) -> tuple[str, ...]:
    """Which of the dimensions that rake and trail are worked out from the sheet lacks."""
    given = job.sheet.steering
    wanted = {
        say("rake"): given.rake,
        say("offset of the axle"): given.offset,
        say("front wheel radius"): given.front_radius,
        say("rear wheel radius"): given.rear_radius,
        say("wheelbase"): given.wheelbase,
    }
    return tuple(name for name, value in wanted.items() if value is None)


def assess_steering(job: Job, protrusion: ProtrusionAssessment) -> SteeringAssessment:
    """The steering geometry that goes with the protrusion readings."""
    geometry = steering_geometry(job)
    standard, now_mm, found_mm = standard_height_mm(job), protrusion.mean_mm, mean_as_found(job)
    if standard is None:
        standard = now_mm
    moves, difference = protrusion.moves, protrusion.difference
    sheet = now = corrected = as_found = None
    leaning = corrected_leaning = found_leaning = _UNKNOWN
    notices: list[Notice] = []
    try:
        if difference is not None:
            leaning = _leaning(job, difference.value)
            if moves is not None:
                left_over = difference.value + moves.left_mm - moves.right_mm
                corrected_leaning = _leaning(job, left_over)
        if found_mm is not None:
            heights = job.as_found.protrusion
            found_leaning = _leaning(job, mean_mm(heights.left) - mean_mm(heights.right))
        if geometry is not None:
            sheet = raised(geometry, 0.0)
            now = raised(geometry, _rise(now_mm, standard))
            if moves is not None and now_mm is not None:
                mean_move = (moves.left_mm + moves.right_mm) / 2
                corrected = raised(geometry, _rise(now_mm + mean_move, standard))
            if found_mm is not None:
                as_found = raised(geometry, _rise(found_mm, standard))
    except AlignerError as error:
        notices.append(refused(WHERE, error))
    return SteeringAssessment(
        now=now,
        corrected=corrected,
        as_found=as_found,
        axle_lean_deg=leaning[0],
        patch_shift_mm=leaning[1],
        notices=tuple(notices),
        sheet=sheet,
        rise_mm=None if now_mm is None else _rise(now_mm, standard),
        corrected_lean_deg=corrected_leaning[0],
        corrected_shift_mm=corrected_leaning[1],
        as_found_lean_deg=found_leaning[0],
        as_found_shift_mm=found_leaning[1],
    )


def what_if_raised(job: Job, rise_mm: float) -> Handling | None:
    """The steering with both legs raised by so much from the standard height; mm.

    Raises:
        AlignerError: a rise that cannot be.
    """
    geometry = steering_geometry(job)
    return raised(geometry, rise_mm) if geometry else None


_UNKNOWN: tuple[float | None, float | None] = (None, None)


def _leaning(job: Job, difference_mm: float) -> tuple[float | None, float | None]:
    """Axle lean and shift of the tyre patch with the legs so unlike; degrees and mm."""
    spacing, radius = job.sheet.fork.leg_spacing, job.sheet.steering.front_radius
    if spacing is None:
        return _UNKNOWN
    lean = axle_lean_deg(difference_mm, spacing.value)
    return lean, patch_shift_mm(lean, radius.value) if radius else None


def _rise(height_mm: float | None, standard_mm: float | None) -> float:
    return height_mm - standard_mm if height_mm is not None and standard_mm is not None else 0.0


def lean_words(lean_deg: float) -> str:
    """The axle's lean in words: "axle leans 0.46°, left end high", or "axle level".

    Args:
        lean_deg: positive where the left end is the higher.
    """
    lean = shown(abs(lean_deg), ANGLE)
    if lean == shown(0.0, ANGLE):
        return say("axle level")
    if lean_deg > 0:
        return say("axle leans {lean}, left end high", lean=lean)
    return say("axle leans {lean}, right end high", lean=lean)
