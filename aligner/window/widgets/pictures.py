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
from aligner.units.preferred import Preferred


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
        return "not measured yet"
    size = _with_uncertainty(difference, show)
    if difference.value == 0:
        spread = difference.judgement.expanded_uncertainty
        unlike = "equal" if spread is None else f"equal, ± {show.show_length(spread)}"
    else:
        unlike = f"left {size} {'high' if difference.value > 0 else 'low'}"
    allowed = (
        ""
        if difference.tolerance is None
        else (f"; ± {show.show_length(difference.tolerance)} allowed")
    )
    if found.verdict is Verdict.OUT and difference.verdict is not Verdict.OUT:
        goal = show.show_length(found.goal_mm or 0.0)
        return f"out: not at {goal}; {unlike}{allowed}"
    return f"{found.verdict.value}: {unlike}{allowed}"


def square_words(found: SquaringAssessment, show: Preferred) -> str:
    """The bracket's verdict in words."""
    if found.turn is not None:
        turn = found.turn
        way = "left" if turn.value > 0 else "right"
        spread = turn.judgement.expanded_uncertainty
        within = f" ± {spread:.2f}" if spread is not None else ""
        allowed = f"; ± {turn.tolerance:g}° allowed" if turn.tolerance is not None else ""
        size = f"{abs(turn.value):.2f}{within}° to the {way}"
        if found.disagree:
            return f"{found.verdict.value}, pairs disagree: {size.replace(' to the', '')}"
        return f"{found.verdict.value}: {size}{allowed}"
    pair = found.leading_pair
    if pair is None or pair.difference is None:
        return "not measured yet"
    more = "more" if pair.difference.value > 0 else "less"
    size = _with_uncertainty(pair.difference, show)
    return f"{found.verdict.value}: left {size} {more} than right"


def in_line_words(found: InLineAssessment, show: Preferred) -> str:
    """The verdict on the legs' plane in words; what is missing where there is none."""
    geometry, judged = found.geometry, found.judged
    if geometry is None:
        return found.notices[-1].text if found.notices else "not measured yet"
    if found.is_convergence:
        way = "wider" if (geometry.convergence_deg or 0.0) > 0 else "narrower"
        what = f"convergence {abs(geometry.convergence_deg or 0.0):.2f}°, {way} going down"
    elif geometry.twist_deg is not None:
        way = "left" if geometry.twist_deg > 0 else "right"
        what = f"twist {abs(geometry.twist_deg):.2f}°, top bracket turned to the {way}"
    else:
        what = f"skew {abs(geometry.skew_deg or 0.0):.2f}°"
    if judged is None:
        why = f". {found.notices[-1].text}" if found.notices else ""
        return f"{what}{why}"
    spread = judged.judgement.expanded_uncertainty
    if spread is None:
        return f"{found.verdict.value}: {what}"
    if found.is_held_to_length:
        return f"{found.verdict.value}: {what}; read to ± {show.show_length(spread, fine=1)}"
    return f"{found.verdict.value}: {what}, ± {spread:.2f}°"


def _with_uncertainty(found: Judged, show: Preferred) -> str:
    size = show.show_length(abs(found.value))
    spread = found.judgement.expanded_uncertainty
    if spread is None:
        return size
    number, unit = size.split(" ", 1)
    return f"{number} ± {show.show_length(spread).split(' ', 1)[0]} {unit}"
