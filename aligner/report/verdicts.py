"""The verdicts of an assessment in words, each value with its uncertainty and what is allowed.

The trap: a value without its uncertainty claims more than was measured. Expanded
uncertainties (95 %) stand behind each ±.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.assessment import Assessment
from aligner.assessment.corrections import asks_for_in_line, asks_for_squaring
from aligner.assessment.in_line import InLineAssessment
from aligner.assessment.protrusion import ProtrusionAssessment
from aligner.assessment.readings import Judged
from aligner.assessment.squaring import SquaringAssessment
from aligner.assessment.steering import SteeringAssessment, lean_words
from aligner.sheet.quantities import Angle
from aligner.units.preferred import Preferred

_NOT_ASKED = "not asked for on this job"


@dataclass(frozen=True)
class VerdictLine:
    """One line: what was judged, and what came of it in words."""

    title: str
    words: str


def verdict_lines(assessment: Assessment, show: Preferred) -> tuple[VerdictLine, ...]:
    """The three verdicts and the steering, in the order they are corrected in."""
    job = assessment.job
    squaring = _squareness(assessment.squaring, show) if asks_for_squaring(job) else _NOT_ASKED
    in_line = _in_line(assessment, show) if asks_for_in_line(job) else _NOT_ASKED
    return (
        VerdictLine("Heights", _heights(assessment.protrusion, show)),
        VerdictLine("Lower bracket", squaring),
        VerdictLine("Legs in line", in_line),
        VerdictLine("Steering", _steering(assessment.steering, show)),
    )


def _heights(found: ProtrusionAssessment, show: Preferred) -> str:
    judged = found.difference
    if judged is None:
        return f"{found.verdict.value}: not measured on both sides"
    if judged.value == 0:
        unlike = "left and right alike"
    else:
        unlike = f"left stands {'higher' if judged.value > 0 else 'lower'}"
    words = f"{found.verdict.value}: {unlike}, {_length_with_uncertainty(judged, show)}"
    if found.goal_mm is None:
        return words
    legs = (("left", found.left_against_goal), ("right", found.right_against_goal))
    against = ", ".join(f"{side} {leg.verdict.value}" for side, leg in legs if leg is not None)
    return f"{words}; against {show.show_length(found.goal_mm)}: {against}"


def _squareness(found: SquaringAssessment, show: Preferred) -> str:
    pair = found.leading_pair
    if pair is None:
        return f"{found.verdict.value}: not measured on both sides"
    words = found.verdict.value
    if found.turn is not None:
        words += f": {_angle_with_uncertainty(found.turn, 'turned ')}"
    elif pair.difference is not None:
        side = "longer" if pair.difference.value > 0 else "shorter"
        size = _length_with_uncertainty(pair.difference, show)
        words += f": left {side}, {size}"
    if found.consistency_p is not None:
        words += f"; chance of the pairs disagreeing so: {found.consistency_p:.2g}"
    return words


def _in_line(assessment: Assessment, show: Preferred) -> str:
    found: InLineAssessment = assessment.in_line
    geometry, judged = found.geometry, found.judged
    if geometry is None:
        return f"{found.verdict.value}: not measured"
    parts: list[str] = []
    if judged is not None and isinstance(assessment.job.sheet.in_line.tolerance, Angle):
        by_turn = not found.is_convergence
        what = "top bracket turned " if by_turn else "tubes converge "
        parts.append(_angle_with_uncertainty(judged, what, left_right=by_turn))
    elif judged is not None:
        parts.append(f"the gauge reads {_length_with_uncertainty(judged, show)}")
    if geometry.skew_deg is not None:
        parts.append(f"skew {show.show_angle(geometry.skew_deg)}")
    if geometry.twist_deg is not None:
        parts.append(f"twist {show.show_angle(geometry.twist_deg)}")
    if geometry.convergence_deg is not None:
        parts.append(f"convergence {show.show_angle(geometry.convergence_deg)}")
    return f"{found.verdict.value}: " + "; ".join(parts)


def _steering(found: SteeringAssessment, show: Preferred) -> str:
    parts: list[str] = []
    if found.now is not None:
        now = found.now
        parts.append(f"rake {show.show_angle(now.rake_deg)}")
        parts.append(f"trail {show.show_length(now.trail_mm)}")
        parts.append(f"wheelbase {show.show_length(now.wheelbase_mm)}")
        change = show.show_length(now.trail_change_mm)
        parts.append(f"trail changed by {change} against the sheet")
    if found.axle_lean_deg is not None:
        parts.append(lean_words(found.axle_lean_deg))
    return ", ".join(parts) or "not known: the sheet lacks dimensions for it"


def _length_with_uncertainty(judged: Judged, show: Preferred) -> str:
    size = show.show_length(abs(judged.value))
    spread = judged.judgement.expanded_uncertainty
    if spread is None:
        words = f"{size} (uncertainty not known)"
    else:
        words = f"{size} ± {show.show_length(spread, fine=1)}"
    if judged.tolerance is None:
        return f"{words}, no tolerance on the sheet"
    return f"{words}, allowed ± {show.show_length(judged.tolerance)}"


def _angle_with_uncertainty(judged: Judged, what: str, *, left_right: bool = True) -> str:
    size = f"{abs(judged.value):.2f}°"
    way = (" to the left" if judged.value > 0 else " to the right") if left_right else ""
    spread = judged.judgement.expanded_uncertainty
    within = " (uncertainty not known)" if spread is None else f" ± {spread:.2g}°"
    allowed = "" if judged.tolerance is None else f", allowed ± {judged.tolerance:g}°"
    return f"{what}{size}{within}{way if float(f'{judged.value:.2f}') else ''}{allowed}"
