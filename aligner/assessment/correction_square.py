"""What to correct of the lower bracket: which way it is turned, and until what is read."""

from __future__ import annotations

from aligner.assessment.correction import Correction, Subject, first_attention
from aligner.assessment.squaring import SquaringAssessment
from aligner.assessment.squaring_pair import PairAssessment
from aligner.assessment.unsettled import unsettled
from aligner.gauging import Verdict
from aligner.job import Job
from aligner.language import marked, say
from aligner.units.preferred import Preferred

_SQUARE_HOW = marked(
    "From each frame point to its point on the lower bracket, the same way on both sides."
)
_TURN_LOWER = {
    "left": marked("Turn the lower bracket {turn} to the left."),
    "right": marked("Turn the lower bracket {turn} to the right."),
}
_TURN_UNTIL = {
    "left": marked("Turn the lower bracket until the left side is {more} longer."),
    "right": marked("Turn the lower bracket until the right side is {more} longer."),
}
_LOWER_HELD = marked(
    "The stem nut lets it turn, the lower clamps hold both legs, the top clamps and the stem "
    "head bolt are slack. Then hold it there and measure again."
)
_UNSETTLED = marked("Whether the bracket is square is not settled yet")


def pair_not_read(found: SquaringAssessment) -> Correction:
    """What to do about a pair that was passed over while another is within its limit."""
    more = say("Measure “{pair}” too, both sides.", pair=found.not_read[0])
    how = f"{say(_SQUARE_HOW)} {say('Or take the pair off.')}"
    return Correction(Subject.SQUARING, more, how)


def square_correction(job: Job, found: SquaringAssessment, show: Preferred) -> Correction:
    """What to do about a lower bracket that is not within its limit."""
    subject = Subject.SQUARING
    pair = found.leading_pair
    if not job.align.squaring:
        return Correction(
            subject,
            say("Choose two points on the frame to square the lower bracket to."),
            say(
                "Alike left and right, such as two lugs or two bolt heads: add a pair of distances."
            ),
        )
    if pair is None:
        refusals = [notice.text for each in found.pairs for notice in each.notices]
        half = any((each.left is None) != (each.right is None) for each in found.pairs)
        if half or not refusals:
            sentence = say("Measure from the frame to the lower bracket, both sides.")
            return Correction(subject, sentence, say(_SQUARE_HOW))
        return Correction(subject, say("The distances and the points do not fit."), refusals[-1])
    if found.disagree:
        odd = (
            say("Measure “{pair}” again.", pair=found.odd_pair)
            if found.odd_pair
            else say("Measure another pair of points.")
        )
        return Correction(subject, odd, next((n.text for n in found.notices), ""))
    if found.verdict is Verdict.UNSETTLED:
        of_pairs = (notice for each in found.pairs for notice in each.notices)
        return unsettled(subject, say(_UNSETTLED), found.advice, of_pairs)
    if found.verdict is Verdict.MISSING or pair.change is None:
        by_pair = (notice for each in found.pairs for notice in each.notices)
        why = first_attention((*found.notices, *by_pair))
        return Correction(subject, say("The squareness cannot be judged yet."), why)
    if found.turn is not None:
        way = "left" if found.turn.value < 0 else "right"
        turn = show.show_angle(abs(found.turn.value))
        sentence = say(_TURN_LOWER[way], turn=turn)
    else:
        side = "left" if pair.change.left_mm > 0 else "right"
        more = show.show_length(abs(pair.change.left_mm))
        sentence = say(_TURN_UNTIL[side], more=more)
    return Correction(subject, sentence, f"{_straight(pair, show)} {say(_LOWER_HELD)}".strip())


def _straight(pair: PairAssessment, show: Preferred) -> str:
    """Until what it is turned; on a frame known to be unlike, not the same on both sides."""
    if pair.left is None or pair.right is None or pair.change is None:
        return ""
    left, right = (
        show.show_length(side.value_mm + change_mm)
        for side, change_mm in (
            (pair.left, pair.change.left_mm),
            (pair.right, pair.change.right_mm),
        )
    )
    if left == right:
        return say("Until “{pair}” reads {size} on both sides.", pair=pair.name, size=left)
    return say(
        "Until “{pair}” reads {left} left and {right} right.",
        pair=pair.name,
        left=left,
        right=right,
    )
