"""One pair of distances from the frame: how far it tells the lower bracket turned, and how surely.

The trap: dimensions that no reading can fit. They are refused before anything is read.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from aligner.assessment.notice import Notice, attention, note, refused
from aligner.assessment.readings import (
    Judged,
    gauge_notices,
    gauge_of,
    judged,
    mean_of,
    odd_reading,
)
from aligner.errors import AlignerError
from aligner.gauging import Estimate, Gauge, Term, combine, stated
from aligner.geometry import (
    Distances,
    ReferencePair,
    changes,
    changes_without_dimensions,
    check_dimensions,
    straight_distance_mm,
    turn_deg,
    turn_sensitivities,
)
from aligner.job import Job, SquaringPair
from aligner.language import marked, say

WHERE = "align.squaring"

#: What to enter is after JCGM 100:2008, 4.3.7: a value known to lie within ± a, and no more.
_COUNTS_AS_EXACT = marked(
    "The frame's own difference at “{pair}” counts as exact. Give its standard uncertainty: where "
    "it is known to within ± a and no better, 0.6 a."
)
#: What the geometry refuses of a pair by a key: the field to look at, and the words for it.
_FIELDS = {
    "left": ("left", marked("the left distance")),
    "right": ("right", marked("the right distance")),
    "frame_asymmetry": ("frame_asymmetry", marked("the frame's own difference")),
    "bracket_reach": ("bracket_reach", marked("the bracket's reach")),
    "bracket_half_width": ("bracket_half_width", marked("the bracket's half width")),
    "frame_setback": ("frame_setback", marked("the frame's setback")),
    "frame_half_width": ("frame_half_width", marked("the frame's half width")),
    "bracket_reach and frame_setback": (
        "bracket_reach",
        marked("bracket reach and frame setback"),
    ),
    "bracket_reach and bracket_half_width": (
        "bracket_reach",
        marked("bracket reach and bracket half width"),
    ),
    "frame_setback and frame_half_width": (
        "frame_setback",
        marked("frame setback and frame half width"),
    ),
    "squaring": ("", marked("squaring")),
}
_SIDE_MISSING = {
    "left": marked("The left side of “{pair}” is missing."),
    "right": marked("The right side of “{pair}” is missing."),
}
_FURTHER_THAN_ANY_MM = 1e6


@dataclass(frozen=True)
class PairAssessment:
    """One pair of distances.

    Attributes:
        name: of the pair.
        left: distance on the left, `None` without readings.
        right: on the right.
        difference: left minus right less the frame's known asymmetry, judged where the
            sheet's tolerance is a length; mm.
        change: what each side's distance must change by; mm, positive: grow longer.
        target_mm: what both sides read when straight.
        turn_deg: of the bracket, positive to the left; `None` without dimensions.
        turn_uncertainty_deg: standard uncertainty of the turn.
        degrees_of_freedom: of that.
        terms: of which the turn is made (degrees for a mm), for what would settle it.
        difference_terms: of which the difference is made, likewise.
        residual_mm: difference measured less the one all pairs together make likely.
        normalized_residual: the pair's residual over its own standard deviation.
        notices: what to know.
    """

    name: str
    left: Estimate | None
    right: Estimate | None
    difference: Judged | None = None
    change: Distances | None = None
    target_mm: float | None = None
    turn_deg: float | None = None
    turn_uncertainty_deg: float | None = None
    degrees_of_freedom: float = 0.0
    terms: tuple[Term, ...] = ()
    difference_terms: tuple[Term, ...] = ()
    residual_mm: float | None = None
    normalized_residual: float | None = None
    notices: tuple[Notice, ...] = ()

    @property
    def turn_expanded_deg(self) -> float | None:
        """Expanded uncertainty (95 %) of this pair's turn; `None` if it is not known."""
        if self.turn_deg is None or self.turn_uncertainty_deg is None:
            return None
        found = judged(self.turn_deg, self.turn_uncertainty_deg, self.degrees_of_freedom, None)
        return found.judgement.expanded_uncertainty


def assess_pair(
    job: Job, pair: SquaringPair, where: str, tolerance_mm: float | None
) -> PairAssessment:
    """A pair's readings, assessed.

    Args:
        job: it is of.
        pair: as it stands in the job.
        where: its path in the job.
        tolerance_mm: of the difference of both sides; `None` where the sheet has none as a length.
    """
    gauge = gauge_of(job, pair.gauge)
    left, right = mean_of(pair.left, gauge), mean_of(pair.right, gauge)
    notices = list(odd_reading(pair.left, gauge, f"{where}.left"))
    notices += odd_reading(pair.right, gauge, f"{where}.right")
    if left or right:
        notices += gauge_notices(job, pair.gauge, where)
    bare = PairAssessment(pair.name, left, right)
    if left is None or right is None:
        notices += _absent_side(pair, left, right, where)
        notices += _refusal_whatever_is_read(pair, where)
        return replace(bare, notices=tuple(notices))
    notices += _known_exactly(pair, where)
    terms = _difference_terms(pair, left, right, gauge)
    try:
        found = _followed(replace(bare, difference_terms=terms), pair, tolerance_mm)
    except AlignerError as error:
        return replace(bare, notices=(*notices, _refused(where, error)))
    if found.turn_deg is None and _some_dimensions(pair):
        text = say("“{pair}” lacks some of its four dimensions: no angle.", pair=pair.name)
        notices.append(note(where, text))
    return replace(found, notices=tuple(notices))


def _absent_side(
    pair: SquaringPair, left: Estimate | None, right: Estimate | None, where: str
) -> tuple[Notice, ...]:
    """Which side is still to be read, where the other is."""
    if (left is None) == (right is None):
        return ()
    absent = "left" if left is None else "right"
    return (attention(f"{where}.{absent}", say(_SIDE_MISSING[absent], pair=pair.name)),)


def _known_exactly(pair: SquaringPair, where: str) -> tuple[Notice, ...]:
    """What to say of a frame's own difference that nothing is known of the uncertainty of."""
    if pair.frame_asymmetry is None or pair.frame_asymmetry_uncertainty is not None:
        return ()
    text = say(_COUNTS_AS_EXACT, pair=pair.name)
    return (note(f"{where}.frame_asymmetry_uncertainty", text),)


def _difference_terms(
    pair: SquaringPair, left: Estimate, right: Estimate, gauge: Gauge | None
) -> tuple[Term, Term, Term]:
    """Left less right less what the frame itself is unlike by."""
    spread = pair.frame_asymmetry_uncertainty
    known = stated(_asymmetry_mm(pair), spread.value if spread else 0.0)
    group = gauge.name if gauge else ""
    return Term(1.0, left, group), Term(-1.0, right, group), Term(-1.0, known)


def _asymmetry_mm(pair: SquaringPair) -> float:
    return pair.frame_asymmetry.value if pair.frame_asymmetry else 0.0


def _followed(
    read: PairAssessment, pair: SquaringPair, tolerance_mm: float | None
) -> PairAssessment:
    """What follows from a pair read on both sides: the difference, the way back, the turn.

    Raises:
        AlignerError: the dimensions cannot be right for these readings.
    """
    left, right, known = read.difference_terms
    asymmetry, points = known.estimate.value_mm, reference_pair(pair)
    distances = (left.estimate.value_mm, right.estimate.value_mm)
    unlike = combine(read.difference_terms)
    read = replace(
        read,
        difference=judged(
            unlike.value, unlike.standard_uncertainty, unlike.degrees_of_freedom, tolerance_mm
        ),
    )
    if points is None:
        change = changes_without_dimensions(*distances, asymmetry)
        return replace(read, change=change, target_mm=sum(distances) / 2)
    slopes = turn_sensitivities(*distances, points, asymmetry)
    terms = (
        replace(left, coefficient=slopes.by_left),
        replace(right, coefficient=slopes.by_right),
        replace(known, coefficient=slopes.by_asymmetry),
    )
    spread_of_turn = combine(terms)
    return replace(
        read,
        change=changes(*distances, points, asymmetry),
        target_mm=straight_distance_mm(*distances, points, asymmetry),
        turn_deg=turn_deg(*distances, points, asymmetry),
        turn_uncertainty_deg=spread_of_turn.standard_uncertainty,
        degrees_of_freedom=spread_of_turn.degrees_of_freedom,
        terms=terms,
    )


def _refusal_whatever_is_read(pair: SquaringPair, where: str) -> tuple[Notice, ...]:
    """What is wrong with a pair's dimensions before anything is read."""
    points = reference_pair(pair)
    if points is None:
        return ()
    try:
        check_dimensions(_FURTHER_THAN_ANY_MM, _FURTHER_THAN_ANY_MM, points)
    except AlignerError as error:
        return (_refused(where, error),)
    return ()


def _refused(where: str, error: AlignerError) -> Notice:
    """A refusal on the field of the pair that it concerns, in the words of the page."""
    field, words = _FIELDS.get(error.where, ("", error.where))
    told = AlignerError(say(words), error.understood, error.wanted)
    return refused(f"{where}.{field}" if field else where, told)


def reference_pair(pair: SquaringPair) -> ReferencePair | None:
    """Where a pair's points lie; `None` unless all four dimensions are known."""
    reach, half = pair.bracket_reach, pair.bracket_half_width
    setback, frame_half = pair.frame_setback, pair.frame_half_width
    if reach is None or half is None or setback is None or frame_half is None:
        return None
    return ReferencePair(reach.value, half.value, setback.value, frame_half.value)


def _some_dimensions(pair: SquaringPair) -> bool:
    dimensions = (
        pair.bracket_reach,
        pair.bracket_half_width,
        pair.frame_setback,
        pair.frame_half_width,
    )
    return any(dimension is not None for dimension in dimensions)
