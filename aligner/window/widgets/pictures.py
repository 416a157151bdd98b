"""From an assessed job to what the drawings say: strips and their words.

Nothing is worked out here: values are picked from the assessment and put into words.
"""

from __future__ import annotations

from aligner.assessment.in_line import InLineAssessment
from aligner.assessment.protrusion import ProtrusionAssessment
from aligner.assessment.readings import Judged
from aligner.assessment.squaring import SquaringAssessment
from aligner.drawing.tolerance_strip import StripPicture
from aligner.gauging import Verdict
from aligner.language import say, written
from aligner.units.preferred import Preferred
from aligner.units.shown import rounded


def strip_of(found: Judged | None) -> StripPicture | None:
    """The strip of a judged deviation; `None` where there is nothing to hold it against."""
    if found is None or found.tolerance is None:
        return None
    return StripPicture(
        value=found.value,
        expanded_uncertainty=found.judgement.expanded_uncertainty,
        tolerance=found.tolerance,
        is_out=found.verdict is Verdict.OUT,
    )


def height_words(found: ProtrusionAssessment, show: Preferred) -> str:
    """The heights' verdict in words: "out: left 1.6 ± 0.1 mm low; ± 0.5 mm allowed"."""
    difference = found.difference
    if difference is None:
        return say("not measured yet")
    size = _with_uncertainty(difference, show)
    if difference.value == 0:
        spread = difference.judgement.expanded_uncertainty
        equal = say("equal")
        unlike = equal if spread is None else f"{equal}, ± {show.show_length(spread)}"
    elif difference.value > 0:
        unlike = say("left {size} high", size=size)
    else:
        unlike = say("left {size} low", size=size)
    if difference.tolerance is not None:
        allowed = say("± {size} allowed", size=show.show_length(difference.tolerance))
        unlike = f"{unlike}; {allowed}"
    if found.verdict is Verdict.OUT and difference.verdict is not Verdict.OUT:
        goal = show.show_length(found.goal_mm or 0.0)
        return say("out: not at {goal}; {difference}", goal=goal, difference=unlike)
    return f"{say(found.verdict.value)}: {unlike}"


def square_words(found: SquaringAssessment, show: Preferred) -> str:
    """The bracket's verdict in words."""
    verdict = say(found.verdict.value)
    if found.turn is not None:
        return _turn_words(found.turn, verdict, disagree=found.disagree)
    pair = found.leading_pair
    if pair is None or pair.difference is None:
        return say("not measured yet")
    size = _with_uncertainty(pair.difference, show)
    return f"{verdict}: {unlike_sides_words(pair.difference.value, size)}"


def unlike_sides_words(difference: float, size: str) -> str:
    """Which of two distances is the longer, and by how much: "left 0.4 mm more than right"."""
    if difference > 0:
        return say("left {size} more than right", size=size)
    return say("left {size} less than right", size=size)


def in_line_words(found: InLineAssessment, show: Preferred) -> str:
    """The verdict on the legs' plane in words; what is missing where there is none."""
    geometry, judged = found.geometry, found.judged
    if geometry is None:
        return found.notices[-1].text if found.notices else say("not measured yet")
    if found.is_convergence:
        angle = show.show_angle(abs(geometry.convergence_deg or 0.0))
        if (geometry.convergence_deg or 0.0) > 0:
            what = say("convergence {angle}, wider going down", angle=angle)
        else:
            what = say("convergence {angle}, narrower going down", angle=angle)
    elif geometry.twist_deg is not None:
        angle = show.show_angle(abs(geometry.twist_deg))
        if geometry.twist_deg > 0:
            what = say("twist {angle}, top bracket turned to the left", angle=angle)
        else:
            what = say("twist {angle}, top bracket turned to the right", angle=angle)
    else:
        what = say("skew {angle}", angle=show.show_angle(abs(geometry.skew_deg or 0.0)))
    if judged is None:
        why = f". {found.notices[-1].text}" if found.notices else ""
        return f"{what}{why}"
    verdict = say(found.verdict.value)
    spread = judged.judgement.expanded_uncertainty
    if spread is None:
        return f"{verdict}: {what}"
    if found.is_held_to_length:
        read_to = say("read to ± {size}", size=show.show_length(spread, fine=1))
        return f"{verdict}: {what}; {read_to}"
    return f"{verdict}: {what}, ± {show.show_angle(spread)}"


def way_words(*, is_up: bool) -> str:
    """Which way a leg is to be moved, in a word beside its arrow."""
    if is_up:
        return say("up", meaning="which way a leg goes")
    return say("down", meaning="which way a leg goes")


def correction_words(turn_deg: float, show: Preferred) -> str:
    """Which way to turn the bracket that stands turned by so much."""
    angle = show.show_angle(abs(turn_deg))
    if turn_deg < 0:
        return say("turn {angle} to the left", angle=angle)
    return say("turn {angle} to the right", angle=angle)


def _turn_words(turn: Judged, verdict: str, *, disagree: bool) -> str:
    spread = turn.judgement.expanded_uncertainty
    within = f" ± {rounded(spread, 2)}" if spread is not None else ""
    angle = f"{rounded(abs(turn.value), 2)}{within}°"
    is_left = turn.value > 0
    if disagree:
        way = say("{angle} left", angle=angle) if is_left else say("{angle} right", angle=angle)
        return say("{verdict}, pairs disagree: {turn}", verdict=verdict, turn=way)
    if is_left:
        way = say("{angle} to the left", angle=angle)
    else:
        way = say("{angle} to the right", angle=angle)
    if turn.tolerance is None:
        return f"{verdict}: {way}"
    allowed = say("± {size} allowed", size=f"{written(turn.tolerance)}°")
    return f"{verdict}: {way}; {allowed}"


def _with_uncertainty(found: Judged, show: Preferred) -> str:
    size = show.show_length(abs(found.value))
    spread = found.judgement.expanded_uncertainty
    if spread is None:
        return size
    number, unit = size.split(" ", 1)
    return f"{number} ± {show.show_length(spread).split(' ', 1)[0]} {unit}"
