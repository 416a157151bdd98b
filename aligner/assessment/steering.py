"""What the legs' heights do on the road: rake, trail, wheelbase, axle lean, tyre patch."""

from __future__ import annotations

from dataclasses import dataclass

from aligner.assessment.notice import Notice, refused
from aligner.assessment.protrusion import ProtrusionAssessment, mean_as_found
from aligner.errors import AlignerError
from aligner.geometry import (
    Handling,
    SteeringGeometry,
    axle_lean_deg,
    patch_shift_mm,
    raised,
)
from aligner.job import Job

WHERE = "sheet.steering"


@dataclass(frozen=True)
class SteeringAssessment:
    """The steering geometry as the legs stand, and as they will stand.

    Attributes:
        now: at the mean height of both legs as read; `None` without the five dimensions.
        corrected: after the moves.
        as_found: at the mean height before stripping.
        axle_lean_deg: positive: the axle's left end is higher.
        patch_shift_mm: of the tyre's contact from the axle's middle, positive to the left.
        notices: what to know.
    """

    now: Handling | None = None
    corrected: Handling | None = None
    as_found: Handling | None = None
    axle_lean_deg: float | None = None
    patch_shift_mm: float | None = None
    notices: tuple[Notice, ...] = ()


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


def assess_steering(job: Job, protrusion: ProtrusionAssessment) -> SteeringAssessment:
    """The steering geometry that goes with the protrusion readings."""
    notices: list[Notice] = []
    lean = shift = None
    spacing, radius = job.sheet.fork.leg_spacing, job.sheet.steering.front_radius
    geometry = steering_geometry(job)
    standard = standard_height_mm(job)
    now = corrected = as_found = None
    try:
        if protrusion.difference is not None and spacing is not None:
            lean = axle_lean_deg(protrusion.difference.value, spacing.value)
            shift = patch_shift_mm(lean, radius.value) if radius else None
        if geometry is not None:
            now = raised(geometry, _rise(protrusion.mean_mm, standard))
            if protrusion.moves is not None and protrusion.mean_mm is not None:
                move = (protrusion.moves.left_mm + protrusion.moves.right_mm) / 2
                corrected = raised(geometry, _rise(protrusion.mean_mm + move, standard))
            found = mean_as_found(job)
            as_found = raised(geometry, _rise(found, standard)) if found is not None else None
    except AlignerError as error:
        notices.append(refused(WHERE, error))
    return SteeringAssessment(now, corrected, as_found, lean, shift, tuple(notices))


def what_if_raised(job: Job, rise_mm: float) -> Handling | None:
    """The steering with both legs raised by so much from the standard height; mm.

    Raises:
        AlignerError: a rise that cannot be.
    """
    geometry = steering_geometry(job)
    return raised(geometry, rise_mm) if geometry else None


def _rise(height_mm: float | None, standard_mm: float | None) -> float:
    return height_mm - standard_mm if height_mm is not None and standard_mm is not None else 0.0
