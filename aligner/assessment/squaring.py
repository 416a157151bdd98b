"""What the distances from the frame say: how far the lower bracket is turned, and the way back."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from aligner.assessment.notice import Notice, attention
from aligner.assessment.readings import Judged, gauge_of, gravest, judged, unproved, usable_gauges
from aligner.assessment.squaring_pair import WHERE, PairAssessment, assess_pair
from aligner.assessment.squaring_together import disagreement, turn_of, with_residuals
from aligner.gauging import Advice, Verdict, settling_advice
from aligner.job import Job
from aligner.language import say
from aligner.sheet.quantities import Angle, Length


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
        assess_pair(job, pair, f"{WHERE}[{place}]", length_mm)
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
    turn, together, dof = turn_of(turned, notices)
    if together is not None:
        pairs = with_residuals(job, pairs, together)
    whole = judged(turn[0], turn[1], dof, angle_deg) if turn else None
    if angle_deg is not None and whole is None:
        notices.append(_no_angle())
    verdict = _verdict(pairs, whole, length_mm, notices)
    notices += _not_measured_yet(pairs)
    disagree = together is not None and together.is_contradicted
    if disagree and together is not None:
        notices.append(disagreement(together))
        if verdict is Verdict.WITHIN:
            verdict = Verdict.UNSETTLED
    read = (each for each in job.align.squaring if each.left and each.right)
    unproved_yet = unproved(verdict, *(gauge_of(job, each.gauge) for each in read))
    advice = unproved_yet or _advice(job, turned, measured, whole, length_mm)
    return SquaringAssessment(
        pairs=pairs,
        turn=whole,
        consistency_p=together.consistency_p if together else None,
        odd_pair=together.odd_pair if together else None,
        disagree=disagree,
        verdict=Verdict.UNSETTLED if unproved_yet else verdict,
        advice=None if disagree else advice,
        notices=tuple(notices),
        not_read=tuple(pair.name for pair in pairs if pair.left is None or pair.right is None),
    )


def _verdict(
    pairs: Sequence[PairAssessment],
    turn: Judged | None,
    length_mm: float | None,
    notices: list[Notice],
) -> Verdict:
    """Of all pairs that are read: what one cannot tell, another must not pass in its stead."""
    verdict = turn.verdict if turn is not None else Verdict.MISSING
    if length_mm is not None:
        measured = (pair.difference for pair in pairs if pair.change is not None)
        verdict = gravest(*(difference.verdict for difference in measured if difference))
    not_held = [
        pair
        for pair in pairs
        if pair.left
        and pair.right
        and (pair.change is None or (length_mm is None and pair.turn_deg is None))
    ]
    if not_held and verdict is Verdict.WITHIN:
        notices += _why_not_held(not_held)
        return Verdict.MISSING
    return verdict


def _no_angle() -> Notice:
    return attention(
        f"{WHERE}[0].bracket_reach",
        say(
            "The tolerance is an angle, and the angle needs the four dimensions of the "
            "points: give them under Points, or the tolerance as a length on the Bike stage."
        ),
    )


def _not_measured_yet(pairs: Sequence[PairAssessment]) -> list[Notice]:
    """Pairs on the list that were passed over, while another is read."""
    return [
        attention(
            f"{WHERE}[{place}]",
            say("“{pair}” is not measured yet: measure it, or take the pair off.", pair=pair.name),
        )
        for place, pair in enumerate(pairs)
        if pair.left is None and pair.right is None
    ]


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


def _advice(
    job: Job,
    turned: list[PairAssessment],
    measured: list[PairAssessment],
    whole: Judged | None,
    length_mm: float | None,
) -> Advice | None:
    listed = usable_gauges(job)
    if whole is not None and whole.tolerance is not None:
        if whole.verdict is not Verdict.UNSETTLED or len(turned) != 1:
            return None
        return settling_advice(
            turned[0].terms, whole.tolerance, value=whole.value, other_gauges=listed
        )
    if length_mm is None:
        return None
    for pair in measured:
        if pair.difference and pair.difference.verdict is Verdict.UNSETTLED:
            return settling_advice(
                pair.difference_terms,
                length_mm,
                value=pair.difference.value,
                other_gauges=listed,
            )
    return None
