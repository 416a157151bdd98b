"""The road figures side by side: as the sheet gives them, as found, as it stands, corrected.

The trap: a change without saying against what. Every change here is against the sheet, as is
usual where a manual is at hand; lean and patch shift, which no sheet gives, are against nought.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from aligner.assessment.steering import SteeringAssessment, standard_height_mm, what_if_raised
from aligner.errors import AlignerError
from aligner.geometry import Handling, normal_trail_mm, trail_mm
from aligner.job import Job
from aligner.language import say

#: How far both legs may be raised or let down in thought, either way.
MOST_RISE_MM = 20.0


class RoadSubject(StrEnum):
    """What a road figure is of."""

    RAKE = "rake"
    TRAIL = "trail"
    NORMAL_TRAIL = "normal trail"
    WHEELBASE = "wheelbase"
    AXLE_LEAN = "axle lean"
    PATCH_SHIFT = "tyre patch"

    @property
    def is_angle(self) -> bool:
        """Whether it is in degrees; the others are in mm."""
        return self in (RoadSubject.RAKE, RoadSubject.AXLE_LEAN)


class RoadState(StrEnum):
    """Which state of the front end a figure goes with."""

    SHEET = "sheet"
    AS_FOUND = "as found"
    NOW = "as it stands"
    CORRECTED = "after the correction"
    WHAT_IF = "what if"


@dataclass(frozen=True)
class RoadFigure:
    """One figure in one state.

    Attributes:
        value: in degrees or mm; `None` where the readings or the dimensions for it are missing.
        change: the same less the sheet's; `None` in the sheet's own column, and for what no
            sheet gives.
    """

    value: float | None
    change: float | None = None


@dataclass(frozen=True)
class RoadTable:
    """All figures in all states.

    Attributes:
        figures: by subject and state; in the sheet's column what it gives by itself, even where
            it lacks something for the whole.
        handling: the rake, trail and wheelbase of each state, for the drawing.
        reference: at which height of the legs the sheet's figures are taken to hold, in words.
        reference_mm: that height; `None` where nothing is known of the heights.
        rise_mm: how far the legs stand above it as they stand, and as supposed.
    """

    figures: dict[tuple[RoadSubject, RoadState], RoadFigure]
    handling: dict[RoadState, Handling | None]
    reference: str
    reference_mm: float | None
    rise_mm: dict[RoadState, float]


@dataclass(frozen=True)
class WhatIf:
    """Both legs raised in thought.

    Attributes:
        rise_mm: above the height at which the sheet's figures hold.
        handling: what comes of it; `None` where the sheet lacks a dimension.
        refusal: why it cannot be, in words; "" if it can.
    """

    rise_mm: float
    handling: Handling | None
    refusal: str = ""

    @property
    def is_too_far(self) -> bool:
        """Whether more was supposed than the slider goes to, or no number."""
        return not -MOST_RISE_MM <= self.rise_mm <= MOST_RISE_MM


def what_if(job: Job, rise_mm: float) -> WhatIf:
    """Both legs raised by so much (negative: let down) from the sheet's height; edits nothing."""
    if WhatIf(rise_mm, None).is_too_far:
        most = f"{MOST_RISE_MM:g} mm"
        return WhatIf(rise_mm, None, say("give a raise between −{most} and +{most}", most=most))
    try:
        return WhatIf(rise_mm, what_if_raised(job, rise_mm))
    except AlignerError as error:
        return WhatIf(rise_mm, None, str(error))


def road_table(job: Job, found: SteeringAssessment, supposed: WhatIf | None = None) -> RoadTable:
    """The figures of a job.

    Args:
        job: of which the sheet says at which height its figures hold.
        found: the steering, assessed.
        supposed: both legs raised in thought, where that is looked at.
    """
    handling = {
        RoadState.SHEET: found.sheet,
        RoadState.AS_FOUND: found.as_found,
        RoadState.NOW: found.now if found.rise_mm is not None else None,
        RoadState.CORRECTED: found.corrected,
        RoadState.WHAT_IF: supposed.handling if supposed else None,
    }
    leaning = {
        RoadState.AS_FOUND: (found.as_found_lean_deg, found.as_found_shift_mm),
        RoadState.NOW: (found.axle_lean_deg, found.patch_shift_mm),
        RoadState.CORRECTED: (found.corrected_lean_deg, found.corrected_shift_mm),
    }
    figures: dict[tuple[RoadSubject, RoadState], RoadFigure] = {}
    on_sheet = _of_handling(found.sheet) if found.sheet else _of_sheet(job)
    for state, held in handling.items():
        values = on_sheet if state is RoadState.SHEET else _of_handling(held)
        for subject, value in values.items():
            sheet = on_sheet[subject]
            compared = None
            if state is not RoadState.SHEET and value is not None and sheet is not None:
                compared = value - sheet
            figures[subject, state] = RoadFigure(value, compared)
        lean, shift = leaning.get(state, (None, None))
        figures[RoadSubject.AXLE_LEAN, state] = RoadFigure(lean)
        figures[RoadSubject.PATCH_SHIFT, state] = RoadFigure(shift)
    reference, reference_mm = _reference(job)
    rise_mm = {
        RoadState.NOW: found.rise_mm or 0.0,
        RoadState.WHAT_IF: supposed.rise_mm if supposed else 0.0,
    }
    return RoadTable(figures, handling, reference, reference_mm, rise_mm)


def _of_handling(held: Handling | None) -> dict[RoadSubject, float | None]:
    return {
        RoadSubject.RAKE: held.rake_deg if held else None,
        RoadSubject.TRAIL: held.trail_mm if held else None,
        RoadSubject.NORMAL_TRAIL: held.normal_trail_mm if held else None,
        RoadSubject.WHEELBASE: held.wheelbase_mm if held else None,
    }


def _of_sheet(job: Job) -> dict[RoadSubject, float | None]:
    """What the sheet gives by itself, where it lacks something for the whole."""
    given = job.sheet.steering
    rake, offset, radius = given.rake, given.offset, given.front_radius
    trail = normal = None
    if rake is not None and offset is not None and radius is not None:
        try:
            trail = trail_mm(rake.value, offset.value, radius.value)
            normal = normal_trail_mm(rake.value, offset.value, radius.value)
        except AlignerError:
            trail = normal = None  # the steering's own notice says why
    return {
        RoadSubject.RAKE: rake.value if rake else None,
        RoadSubject.TRAIL: trail,
        RoadSubject.NORMAL_TRAIL: normal,
        RoadSubject.WHEELBASE: given.wheelbase.value if given.wheelbase else None,
    }


def _reference(job: Job) -> tuple[str, float | None]:
    height = standard_height_mm(job)
    if height is None:
        return say("the heights as they stand"), None
    if job.sheet.protrusion.target:
        return say("the sheet's target"), height
    return say("the height as found"), height
