"""The Align page's own words: what is read where, which leg goes where, what the road feels.

Nothing is worked out here: values are picked from the assessment and put into words.
"""

from __future__ import annotations

from aligner.assessment import Assessment
from aligner.assessment.readings import mean_mm
from aligner.assessment.squaring_pair import PairAssessment
from aligner.assessment.steering import lean_words
from aligner.geometry import Policy
from aligner.job import Job, SquaringPair
from aligner.language import begun, marked, say, say_count
from aligner.units.preferred import Preferred
from aligner.units.shown import rounded
from aligner.window.widgets.pictures import unlike_sides_words

#: The methods of telling whether the legs are in line, in the order they are offered.
METHODS = {
    "plate": marked("a plate across both tubes"),
    "bars": marked("two bars across the tubes"),
    "spread": marked("widths at two heights"),
}

#: What is read, and where: one line for each box.
HINTS = {
    "plate": marked("A flat plate touches at three of four places: read the gap at the fourth."),
    "plate.gap": marked("The gap between plate and tube, at the corner that stands off."),
    "plate.height": marked("The height between the plate's upper and lower edge on the tubes."),
    "plate.corner": marked("Seen from the seat: the corner of the plate that does not touch."),
    "plate.face": marked("Whether the plate lies on the front or on the rear of the tubes."),
    "bars": marked("Two straight bars across the tubes, seen end on from the left."),
    "bars.end_difference": marked(
        "How far the lower bar's end is ahead of the upper's; behind: minus."
    ),
    "bars.half_length": marked("From the middle of the bars to the end where that is read."),
    "bars.height": marked("The height between the two bars."),
    "spread": marked("Widths over both tubes tell a bent tube or bracket, never a twist."),
    "spread.upper": marked("Over the outsides of both tubes, just under the lower bracket."),
    "spread.lower": marked("The same lower down on the bare tubes, with the same gauge."),
    "spread.height": marked("The height between the two widths."),
}


def road_words(assessment: Assessment, show: Preferred, *, is_brief: bool = False) -> str:
    """What the heights as they stand do on the road; in brief, without rake and trail."""
    found = assessment.steering
    parts = []
    if found.axle_lean_deg is not None:
        parts.append(lean_words(found.axle_lean_deg))
    if found.patch_shift_mm is not None:
        parts.append(_patch_words(found.patch_shift_mm, show))
    if found.now is not None and not is_brief:
        trail = show.show_length(found.now.trail_mm)
        rake = show.show_angle(found.now.rake_deg)
        parts.append(say("rake {rake}, trail {trail}", rake=rake, trail=trail))
    words = ", ".join(parts)
    return begun(words) + ("." if words else "")


def _patch_words(shift_mm: float, show: Preferred) -> str:
    shift = show.show_length(abs(shift_mm))
    if not any(digit in shift for digit in "123456789"):
        return say("tyre patch in the middle")
    if shift_mm > 0:
        return say("tyre patch {shift} to the left", shift=shift)
    return say("tyre patch {shift} to the right", shift=shift)


def policy_choices(job: Job, as_found_mm: float | None, show: Preferred) -> dict[Policy, str]:
    """What each policy does on this job, in words."""
    target = job.sheet.protrusion.target
    to_target = say("both legs to the sheet's height")
    if target is not None:
        to_target = f"{to_target}, {show.show_length(target.value)}"
    to_as_found = say("both legs to the mean as found")
    if as_found_mm is not None:
        to_as_found = f"{to_as_found}, {show.show_length(as_found_mm)}"
    return {
        Policy.TO_TARGET: to_target,
        Policy.TO_AS_FOUND: to_as_found,
        Policy.LEFT_TO_RIGHT: say("the left leg to the right one"),
        Policy.RIGHT_TO_LEFT: say("the right leg to the left one"),
        Policy.SHARE: say("share: each leg half the way"),
    }


def policy_refusals(job: Job, as_found_mm: float | None) -> dict[Policy, str]:
    """Why a policy makes no sense on this job; those that do are left out."""
    refusals = {}
    if job.sheet.protrusion.target is None:
        refusals[Policy.TO_TARGET] = say("the sheet gives no height")
    if as_found_mm is None:
        refusals[Policy.TO_AS_FOUND] = say("not read before stripping")
    return refusals


def as_found_words(job: Job, show: Preferred) -> str:
    """The heights as found, where both or one were read before anything was loosened."""
    found = job.as_found.protrusion
    parts = []
    for side, readings in ((say("left"), found.left), (say("right"), found.right)):
        if readings:
            height = f"{side} {show.show_length(mean_mm(readings))}"
            parts.append(height.replace(" ", "\u00a0"))  # a line breaks between heights alone
    return say("as found: {heights}", heights=", ".join(parts)) if parts else ""


def readings_kept(count: int) -> str:
    """How many readings are kept by a method that is not in use, behind its name; "" for none."""
    if not count:
        return ""
    kept = say_count("{count} reading kept", "{count} readings kept", count)
    return f" ({kept})"


def gauge_choices(job: Job, used: str | None) -> list[tuple[object, str]]:
    """The gauges that can be named for some readings, and the one that is, if it is unknown."""
    choices: list[tuple[object, str]] = [(None, say("not named"))]
    choices += [(name, name) for name in job.gauges]
    if used is not None and used not in job.gauges:
        choices.append((used, say("{name} (not on the list)", name=used)))
    return choices


def pair_words(found: PairAssessment, show: Preferred) -> str:
    """What one pair of distances says by itself."""
    if found.change is None or found.difference is None:
        return found.notices[-1].text if found.notices else say("not measured yet")
    if found.turn_deg is not None:
        spread = found.turn_expanded_deg
        sure = "" if spread is None else f" ± {rounded(spread, 2)}"
        angle = f"{rounded(abs(found.turn_deg), 2)}{sure}°"
        if found.turn_deg > 0:
            return say("turned {angle} to the left", angle=angle)
        return say("turned {angle} to the right", angle=angle)
    size = show.show_length(abs(found.difference.value))
    spread = found.difference.judgement.expanded_uncertainty
    sure = "" if spread is None else f", ± {show.show_length(spread, fine=1)}"
    return f"{unlike_sides_words(found.difference.value, size)}{sure}"


def alike_at_first(before: tuple[SquaringPair, ...], after: tuple[SquaringPair, ...]) -> int:
    """How many pairs stand where they stood: what is being typed for the rest has no place now."""
    count = 0
    for one, other in zip(before, after, strict=False):
        if one != other:
            break
        count += 1
    return count
