"""The Align page's own words: what is read where, which leg goes where, what the road feels.

Nothing is worked out here: values are picked from the assessment and put into words.
"""

from __future__ import annotations

from aligner.assessment import Assessment
from aligner.assessment.squaring import PairAssessment
from aligner.assessment.steering import lean_words
from aligner.geometry import Policy
from aligner.job import Job, SquaringPair
from aligner.units.preferred import Preferred

#: The methods of telling whether the legs are in line, in the order they are offered.
METHODS = {
    "plate": "a plate across both tubes",
    "bars": "two bars across the tubes",
    "spread": "widths at two heights",
}

#: What is read, and where: one line for each box.
HINTS = {
    "plate": "A flat plate touches at three of four places: read the gap at the fourth.",
    "plate.gap": "The gap between plate and tube, at the corner that stands off.",
    "plate.height": "The height between the plate's upper and lower edge on the tubes.",
    "plate.corner": "Seen from the seat: the corner of the plate that does not touch.",
    "plate.face": "Whether the plate lies on the front or on the rear of the tubes.",
    "bars": "Two straight bars across the tubes, seen end on from the left.",
    "bars.end_difference": "How far the lower bar's end is ahead of the upper's; behind: minus.",
    "bars.half_length": "From the middle of the bars to the end where that is read.",
    "bars.height": "The height between the two bars.",
    "spread": "Widths over both tubes tell a bent tube or bracket, never a twist.",
    "spread.upper": "Over the outsides of both tubes, just under the lower bracket.",
    "spread.lower": "The same lower down on the bare tubes, with the same gauge.",
    "spread.height": "The height between the two widths.",
}


def road_words(assessment: Assessment, show: Preferred, *, is_brief: bool = False) -> str:
    """What the heights as they stand do on the road; in brief, without rake and trail."""
    found = assessment.steering
    parts = []
    if found.axle_lean_deg is not None:
        parts.append(lean_words(found.axle_lean_deg))
    if found.patch_shift_mm is not None:
        way = "left" if found.patch_shift_mm > 0 else "right"
        shift = show.show_length(abs(found.patch_shift_mm))
        is_off = any(digit in shift for digit in "123456789")
        parts.append(f"tyre patch {shift} to the {way}" if is_off else "tyre patch in the middle")
    if found.now is not None and not is_brief:
        trail = show.show_length(found.now.trail_mm)
        parts.append(f"rake {found.now.rake_deg:.2f}°, trail {trail}")
    words = ", ".join(parts)
    return words[:1].upper() + words[1:] + ("." if words else "")


def policy_choices(job: Job, as_found_mm: float | None, show: Preferred) -> dict[Policy, str]:
    """What each policy does on this job, in words."""
    target = job.sheet.protrusion.target
    to_target = f", {show.show_length(target.value)}" if target else ""
    to_as_found = "" if as_found_mm is None else f", {show.show_length(as_found_mm)}"
    return {
        Policy.TO_TARGET: f"both legs to the sheet's height{to_target}",
        Policy.TO_AS_FOUND: f"both legs to the mean as found{to_as_found}",
        Policy.LEFT_TO_RIGHT: "the left leg to the right one",
        Policy.RIGHT_TO_LEFT: "the right leg to the left one",
        Policy.SHARE: "share: each leg half the way",
    }


def policy_refusals(job: Job, as_found_mm: float | None) -> dict[Policy, str]:
    """Why a policy makes no sense on this job; those that do are left out."""
    refusals = {}
    if job.sheet.protrusion.target is None:
        refusals[Policy.TO_TARGET] = "the sheet gives no height"
    if as_found_mm is None:
        refusals[Policy.TO_AS_FOUND] = "not read before stripping"
    return refusals


def as_found_words(job: Job, show: Preferred) -> str:
    """The heights as found, where both or one were read before anything was loosened."""
    found = job.as_found.protrusion
    parts = []
    for side, readings in (("left", found.left), ("right", found.right)):
        if readings:
            mean = sum(reading.value for reading in readings) / len(readings)
            parts.append(f"{side} {show.show_length(mean)}")
    return "as found: " + ", ".join(parts) if parts else ""


def readings_kept(count: int) -> str:
    """How many readings are kept by a method that is not in use."""
    return "1 reading kept" if count == 1 else f"{count} readings kept"


def gauge_choices(job: Job, used: str | None) -> list[tuple[str | None, str, str]]:
    """The gauges that can be named for some readings, and the one that is, if it is unknown."""
    choices: list[tuple[str | None, str, str]] = [(None, "not named", "")]
    choices += [(name, name, "") for name in job.gauges]
    if used is not None and used not in job.gauges:
        choices.append((used, f"{used} (not on the list)", ""))
    return choices


def pair_words(found: PairAssessment, show: Preferred) -> str:
    """What one pair of distances says by itself."""
    if found.change is None or found.difference is None:
        return found.notices[-1].text if found.notices else "not measured yet"
    if found.turn_deg is not None:
        way = "left" if found.turn_deg > 0 else "right"
        spread = found.turn_expanded_deg
        sure = "" if spread is None else f" ± {spread:.2f}"
        return f"turned {abs(found.turn_deg):.2f}{sure}° to the {way}"
    more = "more" if found.difference.value > 0 else "less"
    spread = found.difference.judgement.expanded_uncertainty
    sure = "" if spread is None else f", ± {show.show_length(spread, fine=1)}"
    return f"left {show.show_length(abs(found.difference.value))} {more} than right{sure}"


def alike_at_first(before: tuple[SquaringPair, ...], after: tuple[SquaringPair, ...]) -> int:
    """How many pairs stand where they stood: what is being typed for the rest has no place now."""
    count = 0
    for one, other in zip(before, after, strict=False):
        if one != other:
            break
        count += 1
    return count
