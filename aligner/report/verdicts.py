"""The verdicts of an assessment in words, each value with its uncertainty and what is allowed.

The trap: a value without its uncertainty claims more than was measured. Expanded
uncertainties (95 %) stand behind each ±.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from aligner.assessment import Assessment
from aligner.assessment.corrections import asks_for_in_line, asks_for_squaring
from aligner.assessment.in_line import InLineAssessment
from aligner.assessment.protrusion import ProtrusionAssessment
from aligner.assessment.readings import Judged
from aligner.assessment.squaring import SquaringAssessment
from aligner.assessment.steering import SteeringAssessment, lean_words
from aligner.gauging import Verdict
from aligner.language import marked, say, written
from aligner.sheet.quantities import Angle
from aligner.units.preferred import Preferred
from aligner.units.shown import rounded

_NOT_ASKED = marked("not asked for on this job")

#: How far something is turned, by whether that is to the left, to the right or neither.
_TURNED = {
    1: marked("turned {size} to the left"),
    -1: marked("turned {size} to the right"),
    0: marked("turned {size}"),
}
_TOP_BRACKET_TURNED = {
    1: marked("top bracket turned {size} to the left"),
    -1: marked("top bracket turned {size} to the right"),
    0: marked("top bracket turned {size}"),
}


@dataclass(frozen=True)
class VerdictLine:
    """One line: what was judged, and what came of it in words.

    Attributes:
        title: what was judged.
        verdict: in a word or two; "" where there is none.
        said: the figures behind it; "" where the verdict says it all.
    """

    title: str
    verdict: str
    said: str

    @property
    def words(self) -> str:
        """The verdict and the figures in one: "within: left and right alike"."""
        return ": ".join(part for part in (self.verdict, self.said) if part)


def verdict_lines(assessment: Assessment, show: Preferred) -> tuple[VerdictLine, ...]:
    """The three verdicts and the steering, in the order they are corrected in."""
    job = assessment.job
    found = assessment.protrusion
    heights = VerdictLine(say("Heights"), say(found.verdict.value), _heights(found, show))
    bracket = VerdictLine(say("Lower bracket"), "", say(_NOT_ASKED))
    if asks_for_squaring(job):
        verdict = say(assessment.squaring.verdict.value)
        bracket = replace(bracket, verdict=verdict, said=_squareness(assessment.squaring, show))
    legs = VerdictLine(say("Legs in line"), "", say(_NOT_ASKED))
    if asks_for_in_line(job):
        verdict = say(assessment.in_line.verdict.value)
        legs = replace(legs, verdict=verdict, said=_in_line(assessment, show))
    steering = VerdictLine(say("Steering"), "", _steering(assessment.steering, show))
    if not steering.said:
        unknown = say("the sheet lacks dimensions for it")
        steering = replace(steering, verdict=say("not known"), said=unknown)
    return heights, bracket, legs, steering


def _heights(found: ProtrusionAssessment, show: Preferred) -> str:
    judged = found.difference
    if judged is None:
        return say("not measured on both sides")
    size = _length_with_uncertainty(judged, show)
    if judged.value == 0:
        words = say("left and right alike, {size}", size=size)
    elif judged.value > 0:
        words = say("left stands higher, {size}", size=size)
    else:
        words = say("left stands lower, {size}", size=size)
    if found.goal_mm is None:
        return words
    legs = []
    if found.left_against_goal is not None:
        legs.append(_left(found.left_against_goal.verdict))
    if found.right_against_goal is not None:
        legs.append(_right(found.right_against_goal.verdict))
    goal = show.show_length(found.goal_mm)
    against = say("against {height}: {legs}", height=goal, legs=", ".join(legs))
    return f"{words}; {against}"


def _left(verdict: Verdict) -> str:
    return say("left {verdict}", verdict=say(verdict.value))


def _right(verdict: Verdict) -> str:
    return say("right {verdict}", verdict=say(verdict.value))


def _squareness(found: SquaringAssessment, show: Preferred) -> str:
    pair = found.leading_pair
    if pair is None:
        return say("not measured on both sides")
    parts: list[str] = []
    if found.turn is not None:
        parts.append(_turn_with_uncertainty(found.turn, _TURNED))
    elif pair.difference is not None:
        size = _length_with_uncertainty(pair.difference, show)
        if pair.difference.value == 0:
            parts.append(say("left and right alike, {size}", size=size))
        elif pair.difference.value > 0:
            parts.append(say("left longer, {size}", size=size))
        else:
            parts.append(say("left shorter, {size}", size=size))
    if found.consistency_p is not None:
        chance = written(found.consistency_p, ".2g")
        parts.append(say("chance of the pairs disagreeing so: {chance}", chance=chance))
    return "; ".join(parts)


def _in_line(assessment: Assessment, show: Preferred) -> str:
    found: InLineAssessment = assessment.in_line
    geometry, judged = found.geometry, found.judged
    if geometry is None:
        return say("not measured")
    parts: list[str] = []
    if judged is not None and isinstance(assessment.job.sheet.in_line.tolerance, Angle):
        if found.is_convergence:
            size = _angle_with_uncertainty(judged)
            parts.append(_allowed_angle(say("tubes converge {size}", size=size), judged))
        else:
            parts.append(_turn_with_uncertainty(judged, _TOP_BRACKET_TURNED))
    elif judged is not None:
        size = _length_with_uncertainty(judged, show)
        parts.append(say("the gauge reads {size}", size=size))
    if geometry.skew_deg is not None:
        parts.append(say("skew {angle}", angle=show.show_angle(geometry.skew_deg)))
    if geometry.twist_deg is not None:
        parts.append(say("twist {angle}", angle=show.show_angle(geometry.twist_deg)))
    if geometry.convergence_deg is not None:
        parts.append(say("convergence {angle}", angle=show.show_angle(geometry.convergence_deg)))
    return "; ".join(parts)


def _steering(found: SteeringAssessment, show: Preferred) -> str:
    parts: list[str] = []
    if found.now is not None:
        now = found.now
        parts.append(say("rake {angle}", angle=show.show_angle(now.rake_deg)))
        parts.append(say("trail {length}", length=show.show_length(now.trail_mm)))
        parts.append(say("wheelbase {length}", length=show.show_length(now.wheelbase_mm)))
        change = show.show_length(now.trail_change_mm)
        parts.append(say("trail changed by {change} against the sheet", change=change))
    if found.axle_lean_deg is not None:
        parts.append(lean_words(found.axle_lean_deg))
    return ", ".join(parts)


def _length_with_uncertainty(judged: Judged, show: Preferred) -> str:
    spread = judged.judgement.expanded_uncertainty
    size = show.show_length(abs(judged.value), fine=0 if spread is None else 1)
    if spread is None:
        words = say("{size} (uncertainty not known)", size=size)
    else:
        words = f"{size} ± {show.show_length(spread, fine=1)}"
    if judged.tolerance is None:
        return say("{size}, no tolerance on the sheet", size=words)
    return say(
        "{size}, allowed ± {tolerance}",
        size=words,
        tolerance=show.show_length(judged.tolerance),
    )


def _turn_with_uncertainty(judged: Judged, turned: Mapping[int, str]) -> str:
    way = 0 if not float(f"{judged.value:.2f}") else 1 if judged.value > 0 else -1
    return _allowed_angle(say(turned[way], size=_angle_with_uncertainty(judged)), judged)


def _angle_with_uncertainty(judged: Judged) -> str:
    size = f"{rounded(abs(judged.value), 2)}°"
    spread = judged.judgement.expanded_uncertainty
    if spread is None:
        return say("{size} (uncertainty not known)", size=size)
    return f"{size} ± {written(spread, '.2g')}°"


def _allowed_angle(words: str, judged: Judged) -> str:
    if judged.tolerance is None:
        return words
    tolerance = f"{written(judged.tolerance)}°"
    return say("{size}, allowed ± {tolerance}", size=words, tolerance=tolerance)
