"""What the distances from the frame say: how far the lower bracket is turned, and the way back."""

from __future__ import annotations

from dataclasses import dataclass

from aligner.assessment.notice import Notice, attention, note, refused
from aligner.assessment.readings import (
    Judged,
    gauge_notices,
    gauge_of,
    gravest,
    judged,
    mean_of,
    odd_reading,
    other_gauges,
    unproved,
)
from aligner.errors import AlignerError
from aligner.gauging import (
    Advice,
    Estimate,
    Term,
    Verdict,
    combine,
    settling_advice,
    stated,
)
from aligner.geometry import (
    Distances,
    ReferencePair,
    WeightedTurn,
    changes,
    changes_without_dimensions,
    check_dimensions,
    distances_at,
    straight_distance_mm,
    turn_deg,
    turn_sensitivities,
    weighted_turn,
)
from aligner.job import Job, SquaringPair
from aligner.language import marked, say
from aligner.sheet.quantities import Angle, Length

WHERE = "align.squaring"

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


@dataclass(frozen=True)
class SquaringAssessment:
    """The lower bracket against the frame.

    Attributes:
        pairs: each pair of distances.
        turn: the turn of the bracket by all pairs, judged where the tolerance is an angle.
        consistency_p: chance of so much disagreement between pairs that agree.
        odd_pair: the pair that stands out where they disagree.
        disagree: whether they do.
        verdict: within, out, unsettled or missing.
        advice: what would settle it.
        notices: what to know.
        not_read: pairs on the list that are not read on both sides yet, while another is.
    """

    pairs: tuple[PairAssessment, ...] = ()
    turn: Judged | None = None
    consistency_p: float | None = None
    odd_pair: str | None = None
    disagree: bool = False
    verdict: Verdict = Verdict.MISSING
    advice: Advice | None = None
    notices: tuple[Notice, ...] = ()
    not_read: tuple[str, ...] = ()

    @property
    def leading_pair(self) -> PairAssessment | None:
        """The pair whose distances are given to set the bracket by: the first that is measured."""
        measured = [pair for pair in self.pairs if pair.change is not None]
        with_turn = [pair for pair in measured if pair.turn_deg is not None]
        return next(iter(with_turn or measured), None)


def assess_squaring(job: Job) -> SquaringAssessment:
    """The squaring readings of a job's present attempt, assessed."""
    tolerance = job.sheet.squaring.tolerance
    length_mm = tolerance.value if isinstance(tolerance, Length) else None
    angle_deg = tolerance.value if isinstance(tolerance, Angle) else None
    pairs = tuple(
        _assess_pair(job, pair, f"{WHERE}[{place}]", length_mm)
        for place, pair in enumerate(job.align.squaring)
    )
    measured = [pair for pair in pairs if pair.change is not None]
    if not measured:
        return SquaringAssessment(pairs)
    notices: list[Notice] = []
    if tolerance is None:
        text = say("The sheet gives no tolerance for squareness.")
        notices.append(attention("sheet.squaring.tolerance", text))
    turned = [pair for pair in measured if pair.turn_deg is not None]
    turn, together, dof = _turn_of(turned, notices)
    if together is not None:
        pairs = _with_residuals(job, pairs, together)
    whole = judged(turn[0], turn[1], dof, angle_deg) if turn else None
    if length_mm is not None:
        verdict = gravest(*(pair.difference.verdict for pair in measured if pair.difference))
    elif whole is not None:
        verdict = whole.verdict
    else:
        verdict = Verdict.MISSING
        if angle_deg is not None:
            notices.append(
                attention(
                    f"{WHERE}[0].bracket_reach",
                    say(
                        "The tolerance is an angle, and the angle needs the four dimensions of the "
                        "points: give them, or give the tolerance as a length."
                    ),
                )
            )
    not_held = [
        pair
        for pair in pairs
        if pair.left
        and pair.right
        and (pair.change is None or (length_mm is None and pair.turn_deg is None))
    ]
    if not_held and verdict is Verdict.WITHIN:
        # What one pair cannot tell, another must not pass in its stead.
        verdict = Verdict.MISSING
        notices += _why_not_held(not_held)
    not_read = tuple(pair.name for pair in pairs if pair.left is None or pair.right is None)
    for place, pair in enumerate(pairs):
        if pair.left is None and pair.right is None:
            text = say(
                "“{pair}” is not measured yet: measure it, or take the pair off.", pair=pair.name
            )
            notices.append(attention(f"{WHERE}[{place}]", text))
    disagree = together is not None and together.is_contradicted
    if disagree and together is not None:
        notices.append(_disagreement(together))
        if verdict is Verdict.WITHIN:
            verdict = Verdict.UNSETTLED
    read = (each for each in job.align.squaring if each.left and each.right)
    unproved_yet = unproved(verdict, *(gauge_of(job, each.gauge) for each in read))
    if unproved_yet:
        verdict = Verdict.UNSETTLED
    advice = unproved_yet or _advice(job, turned, measured, whole, length_mm)
    return SquaringAssessment(
        pairs=pairs,
        turn=whole,
        consistency_p=together.consistency_p if together else None,
        odd_pair=together.odd_pair if together else None,
        disagree=disagree,
        verdict=verdict,
        advice=None if disagree else advice,
        notices=tuple(notices),
        not_read=not_read,
    )


def _why_not_held(pairs: list[PairAssessment]) -> list[Notice]:
    """Pairs that are read and can be held against nothing; a refused one says why itself."""
    return [
        attention(
            WHERE,
            say(
                "“{pair}” is read, but the tolerance is an angle and its angle needs its four "
                "dimensions: give them, or take the pair off.",
                pair=pair.name,
            ),
        )
        for pair in pairs
        if pair.change is not None
    ]


def _assess_pair(
    job: Job, pair: SquaringPair, where: str, tolerance_mm: float | None
) -> PairAssessment:
    gauge = gauge_of(job, pair.gauge)
    left, right = mean_of(pair.left, gauge), mean_of(pair.right, gauge)
    notices = list(odd_reading(pair.left, gauge, f"{where}.left"))
    notices += odd_reading(pair.right, gauge, f"{where}.right")
    if left or right:
        notices += gauge_notices(job, pair.gauge, where)
    if left is None or right is None:
        if left or right:
            absent = "left" if left is None else "right"
            text = say(_SIDE_MISSING[absent], pair=pair.name)
            notices.append(attention(f"{where}.{absent}", text))
        notices += _refusal_whatever_is_read(pair, where)
        return PairAssessment(pair.name, left, right, notices=tuple(notices))
    asymmetry = pair.frame_asymmetry.value if pair.frame_asymmetry else 0.0
    spread = pair.frame_asymmetry_uncertainty
    known = stated(asymmetry, spread.value if spread else 0.0)
    group = gauge.name if gauge else ""
    unlike = combine((Term(1.0, left, group), Term(-1.0, right, group), Term(-1.0, known)))
    difference = judged(
        unlike.value, unlike.standard_uncertainty, unlike.degrees_of_freedom, tolerance_mm
    )
    distances = (left.value_mm, right.value_mm)
    points = reference_pair(pair)
    try:
        if points is None:
            change = changes_without_dimensions(*distances, asymmetry)
            if _some_dimensions(pair):
                text = say("“{pair}” lacks some of its four dimensions: no angle.", pair=pair.name)
                notices.append(note(where, text))
            return PairAssessment(
                pair.name,
                left,
                right,
                difference,
                change,
                target_mm=sum(distances) / 2,
                notices=tuple(notices),
            )
        turn = turn_deg(*distances, points, asymmetry)
        slopes = turn_sensitivities(*distances, points, asymmetry)
        terms = (
            Term(slopes.by_left, left, group),
            Term(slopes.by_right, right, group),
            Term(slopes.by_asymmetry, known),
        )
        spread_of_turn = combine(terms)
        return PairAssessment(
            name=pair.name,
            left=left,
            right=right,
            difference=difference,
            change=changes(*distances, points, asymmetry),
            target_mm=straight_distance_mm(*distances, points, asymmetry),
            turn_deg=turn,
            turn_uncertainty_deg=spread_of_turn.standard_uncertainty,
            degrees_of_freedom=spread_of_turn.degrees_of_freedom,
            terms=terms,
            notices=tuple(notices),
        )
    except AlignerError as error:
        notices.append(_refused(where, error))
        return PairAssessment(pair.name, left, right, notices=tuple(notices))


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


def _turn_of(
    turned: list[PairAssessment], notices: list[Notice]
) -> tuple[tuple[float, float | None] | None, WeightedTurn | None, float]:
    """The turn with its uncertainty, how the pairs agree, and the degrees of freedom."""
    if not turned:
        return None, None, 0.0
    first = turned[0]
    if first.turn_deg is None:
        return None, None, 0.0
    known = [pair for pair in turned if pair.turn_uncertainty_deg]
    if len(turned) == 1 or len(known) < len(turned):
        if len(turned) > 1:
            notices.append(
                attention(
                    WHERE,
                    say(
                        "A pair's uncertainty is not known, so the pairs cannot be weighed "
                        "against each other: name the gauge of each."
                    ),
                )
            )
            return (first.turn_deg, None), None, 0.0
        return (first.turn_deg, first.turn_uncertainty_deg), None, first.degrees_of_freedom
    together = weighted_turn(
        [pair.turn_deg or 0.0 for pair in known],
        [pair.turn_uncertainty_deg or 0.0 for pair in known],
        [pair.name for pair in known],
    )
    dof = _pooled_degrees_of_freedom(known, together.uncertainty_deg)
    return (together.turn_deg, together.uncertainty_deg), together, dof


def _pooled_degrees_of_freedom(pairs: list[PairAssessment], u: float) -> float:
    """Welch-Satterthwaite over the pairs: each part of the weighted mean is u^2 / u_i (GUM G.4)."""
    parts = 0.0
    for pair in pairs:
        part = u * u / (pair.turn_uncertainty_deg or 1.0)
        parts += part**4 / pair.degrees_of_freedom
    return u**4 / parts if parts else float("inf")


def _with_residuals(
    job: Job, pairs: tuple[PairAssessment, ...], together: WeightedTurn
) -> tuple[PairAssessment, ...]:
    from dataclasses import replace

    normalized = iter(together.normalized_residuals)
    done = []
    for pair, typed in zip(pairs, job.align.squaring, strict=True):
        points = reference_pair(typed)
        if pair.turn_deg is None or points is None or pair.left is None or pair.right is None:
            done.append(pair)
            continue
        asymmetry = typed.frame_asymmetry.value if typed.frame_asymmetry else 0.0
        likely = distances_at(
            together.turn_deg, pair.left.value_mm, pair.right.value_mm, points, asymmetry
        )
        residual = pair.left.value_mm - pair.right.value_mm - likely.difference_mm
        done.append(replace(pair, residual_mm=residual, normalized_residual=next(normalized)))
    return tuple(done)


def _disagreement(together: WeightedTurn) -> Notice:
    text = say(
        "The pairs of distances disagree by more than their uncertainty: something is bent, "
        "unlike left and right, or misread."
    )
    odd = (
        say("“{pair}” stands out.", pair=together.odd_pair)
        if together.odd_pair
        else say("Of two pairs neither can be called the odd one: measure a third.")
    )
    return attention(WHERE, f"{text} {odd}")


def _advice(
    job: Job,
    turned: list[PairAssessment],
    measured: list[PairAssessment],
    whole: Judged | None,
    length_mm: float | None,
) -> Advice | None:
    others = other_gauges(job)
    if whole is not None and whole.tolerance is not None:
        if whole.verdict is not Verdict.UNSETTLED or len(turned) != 1:
            return None
        return settling_advice(
            turned[0].terms, whole.tolerance, value=whole.value, other_gauges=others
        )
    if length_mm is None:
        return None
    for pair in measured:
        if pair.difference and pair.difference.verdict is Verdict.UNSETTLED:
            if pair.left is None or pair.right is None:
                continue
            group = "both sides" if pair.terms and pair.terms[0].limit_group else ""
            terms = (Term(1.0, pair.left, group), Term(-1.0, pair.right, group))
            return settling_advice(
                terms, length_mm, value=pair.difference.value, other_gauges=others
            )
    return None
