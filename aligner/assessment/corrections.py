"""The sentence that says what to correct now, what must be slack for it, and what must hold.

One correction disturbs another, so they come in a fixed order: heights first, because moving
a leg turns the brackets; then the lower bracket square, because the top bracket is set
against it; then the legs in line; then everything is measured once more.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from aligner.assessment.in_line import InLineAssessment
from aligner.assessment.notice import Level, Notice
from aligner.assessment.protrusion import ProtrusionAssessment
from aligner.assessment.squaring import PairAssessment, SquaringAssessment
from aligner.gauging import Advice, Remedy, Verdict
from aligner.job import BarReadings, InLineReadings, Job, SpreadReadings
from aligner.language import marked, say, say_count
from aligner.units.preferred import Preferred


class Subject(StrEnum):
    """What a correction is about."""

    PROTRUSION = "protrusion"
    SQUARING = "squaring"
    IN_LINE = "in_line"
    NOTHING = "nothing"


@dataclass(frozen=True)
class Correction:
    """What to do now.

    Attributes:
        subject: what it is about.
        sentence: what to do, in one sentence.
        detail: what must be slack, what must hold, what comes after.
        caution: where the danger is, if there is any.
    """

    subject: Subject
    sentence: str
    detail: str = ""
    caution: str = ""


_HEIGHT_HOW = marked(
    "From the top bracket's upper face to the tube's top edge, never to the cap. "
    "Three readings of each leg."
)
_ONE_HEIGHT_MORE = {
    "left": marked("Now measure the left leg's height."),
    "right": marked("Now measure the right leg's height."),
}
#: Which way the left and the right leg move: up 1, down -1.
_MOVES = {
    (1, 0): marked("Push the left leg up {left}."),
    (-1, 0): marked("Let the left leg down {left}."),
    (0, 1): marked("Push the right leg up {right}."),
    (0, -1): marked("Let the right leg down {right}."),
    (1, 1): marked("Push the left leg up {left} and push the right leg up {right}."),
    (1, -1): marked("Push the left leg up {left} and let the right leg down {right}."),
    (-1, 1): marked("Let the left leg down {left} and push the right leg up {right}."),
    (-1, -1): marked("Let the left leg down {left} and let the right leg down {right}."),
}
_SLACK = {
    (True, False): marked(
        "Slacken the left top clamp and the left lower clamp; leave the right leg clamped. "
        "Then measure both again."
    ),
    (False, True): marked(
        "Slacken the right top clamp and the right lower clamp; leave the left leg clamped. "
        "Then measure both again."
    ),
    (True, True): marked(
        "One leg at a time: slacken its top clamp and its lower clamp, the other leg stays "
        "clamped. Then measure both again."
    ),
}
_LEG_DROPS = marked("hold the leg as its clamps come slack: it drops.")
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
_PLATE_HOW = marked(
    "Lay a flat plate across both tubes and read the gap at the corner that stands off; "
    "nought where it touches all round."
)
_BARS_HOW = marked(
    "Lay two straight bars across both tubes, one above the other. From the left, see how far the "
    "lower bar's end stands ahead of the upper one's; behind is minus."
)
_SPREAD_HOW = marked("Measure over the outsides of both tubes at two heights, with the same gauge.")
_NO_TWIST_SEEN = marked(
    "The widths are within their limit, but they cannot tell a twist: lay a plate or two bars "
    "across the tubes as well."
)
_NOT_PARALLEL = {
    "wider": marked(
        "They stand wider apart going down. That is a convergence and no twist: suspect a bent "
        "tube or a bent bracket. Roll both tubes and have the brackets checked by a qualified "
        "mechanic before this goes back on the road."
    ),
    "narrower": marked(
        "They stand narrower apart going down. That is a convergence and no twist: suspect a bent "
        "tube or a bent bracket. Roll both tubes and have the brackets checked by a qualified "
        "mechanic before this goes back on the road."
    ),
}
#: Turning the top bracket to one side carries the other side of it forward.
_TURN_TOP = {
    "left": marked("Turn the top bracket to the left: its right side {rim} forward."),
    "right": marked("Turn the top bracket to the right: its left side {rim} forward."),
}
#: What is not settled yet: how the sentence begins that says what would settle it.
_HEIGHTS_UNSETTLED = marked("The heights are not settled yet")
_SQUARE_UNSETTLED = marked("Whether the bracket is square is not settled yet")
_PARALLEL_UNSETTLED = marked("Whether the legs are parallel is not settled yet")
_IN_LINE_UNSETTLED = marked("Whether the legs are in line is not settled yet")


def next_correction(
    job: Job,
    protrusion: ProtrusionAssessment,
    squaring: SquaringAssessment,
    in_line: InLineAssessment,
    show: Preferred,
) -> Correction:
    """The one correction to make first."""
    if protrusion.verdict is not Verdict.WITHIN:
        return _of_protrusion(protrusion, show)
    if asks_for_squaring(job) and squaring.verdict is not Verdict.WITHIN:
        return _of_squaring(job, squaring, show)
    if squaring.not_read:
        more = say("Measure “{pair}” too, both sides.", pair=squaring.not_read[0])
        how = f"{say(_SQUARE_HOW)} {say('Or take the pair off.')}"
        return Correction(Subject.SQUARING, more, how)
    if asks_for_in_line(job) and in_line.verdict is not Verdict.WITHIN:
        return _of_in_line(job, in_line, show)
    return Correction(
        Subject.NOTHING,
        say("Nothing left to correct."),
        say("Every reading is within its limit. Go on to the tightening list."),
        _first_attention(protrusion.notices),
    )


def _first_attention(notices: tuple[Notice, ...]) -> str:
    return next((each.text for each in notices if each.level is Level.ATTENTION), "")


def asks_for_squaring(job: Job) -> bool:
    """Whether the lower bracket is to be squared on this job."""
    return bool(job.align.squaring) or job.sheet.squaring.tolerance is not None


def asks_for_in_line(job: Job) -> bool:
    """Whether the legs are to be checked for lying in line on this job."""
    return job.align.in_line is not None or job.sheet.in_line.tolerance is not None


def _of_protrusion(found: ProtrusionAssessment, show: Preferred) -> Correction:
    subject = Subject.PROTRUSION
    if found.difference is None:
        left, right = found.left is not None, found.right is not None
        if left == right:
            sentence = say("Measure how far each tube stands up.")
        else:
            sentence = say(_ONE_HEIGHT_MORE["right" if left else "left"])
        return Correction(subject, sentence, say(_HEIGHT_HOW))
    if found.verdict is Verdict.UNSETTLED:
        return _unsettled(subject, say(_HEIGHTS_UNSETTLED), found.advice)
    if found.verdict is Verdict.MISSING or found.moves is None:
        why = _first_attention(found.notices)
        return Correction(subject, say("The heights cannot be judged yet."), why)
    left_mm, right_mm = found.moves.left_mm, found.moves.right_mm
    ways = (_way(left_mm, show), _way(right_mm, show))
    if ways == (0, 0):
        return Correction(
            subject,
            say("The heights are out by less than can be moved."),
            say("The tolerance on the sheet is smaller than what can be set by hand: check it."),
        )
    sizes = {"left": show.show_length(abs(left_mm)), "right": show.show_length(abs(right_mm))}
    slack = _SLACK[ways[0] != 0, ways[1] != 0]
    return Correction(subject, say(_MOVES[ways], **sizes), say(slack), say(_LEG_DROPS))


def _way(mm: float, show: Preferred) -> int:
    """Which way a leg moves: up 1, down -1; 0 where it is less than what is shown."""
    if abs(mm) < _least_shown(show):
        return 0
    return 1 if mm > 0 else -1


def _least_shown(show: Preferred) -> float:
    return 0.05 if show.length == "mm" else 0.0005 * 25.4


def _of_squaring(job: Job, found: SquaringAssessment, show: Preferred) -> Correction:
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
        return _unsettled(subject, say(_SQUARE_UNSETTLED), found.advice)
    if found.verdict is Verdict.MISSING or pair.change is None:
        by_pair = (notice for each in found.pairs for notice in each.notices)
        why = _first_attention((*found.notices, *by_pair))
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


def _of_in_line(job: Job, found: InLineAssessment, show: Preferred) -> Correction:
    subject = Subject.IN_LINE
    geometry = found.geometry
    if geometry is None or found.judged is None:
        if found.notices:
            sentence = say("Whether the legs are in line cannot be told yet.")
            return Correction(subject, sentence, found.notices[-1].text)
        how = say(_in_line_how(job.align.in_line))
        return Correction(subject, say("Check that the legs are in line."), how)
    is_proved = found.judged.verdict is Verdict.WITHIN and found.advice is None
    if found.verdict is Verdict.UNSETTLED and is_proved:
        sentence = say("The legs are parallel; now check for a twist.")
        return Correction(subject, sentence, say(_NO_TWIST_SEEN))
    if found.verdict is Verdict.UNSETTLED:
        what = _PARALLEL_UNSETTLED if found.is_convergence else _IN_LINE_UNSETTLED
        return _unsettled(subject, say(what), found.advice)
    if found.is_convergence:
        way = "wider" if (geometry.convergence_deg or 0.0) > 0 else "narrower"
        return Correction(
            subject,
            say("The legs are not parallel: no turning cures that."),
            say(_NOT_PARALLEL[way]),
        )
    if geometry.twist_deg is None or geometry.top_bracket_rim_mm is None:
        return Correction(
            subject,
            say("The legs are not in line."),
            say(
                "It is a twist between the brackets. Give the leg spacing and the bracket spacing "
                "on the sheet, and the turn that cures it follows."
            ),
        )
    way = "left" if geometry.twist_deg < 0 else "right"
    rim = show.show_length(abs(geometry.top_bracket_rim_mm))
    return Correction(
        subject,
        say(_TURN_TOP[way], rim=rim),
        say(
            "A twist between the brackets, cured at the top one. The stem head bolt, the stem "
            "pinch bolt and both top clamps are slack; the lower clamps hold. Then measure "
            "everything again."
        ),
    )


def _in_line_how(readings: InLineReadings | None) -> str:
    match readings:
        case BarReadings():
            return _BARS_HOW
        case SpreadReadings():
            return _SPREAD_HOW
    return _PLATE_HOW


def _unsettled(subject: Subject, what: str, advice: Advice | None) -> Correction:
    if advice is None:
        how = say("Measure again, with a finer gauge if you have one.")
        return Correction(subject, f"{what}.", how)
    match advice.remedy:
        case Remedy.MORE_READINGS:
            if advice.expected_verdict is Verdict.WITHIN:
                how = say(
                    "If they come out as they are now, that many would settle it: within the "
                    "limit. Do not move anything for a difference that is not there."
                )
            else:
                how = say(
                    "If they come out as they are now, that many would settle it: out. Do not "
                    "move anything for a difference that is not there."
                )
            return Correction(subject, _more_readings(subject, what, advice), how)
        case Remedy.ANOTHER_GAUGE:
            gauge = advice.gauge_name
            return Correction(
                subject,
                say("{what}: use the {gauge}.", what=what, gauge=gauge),
                _with_another_gauge(subject, advice),
            )
        case Remedy.NAME_THE_GAUGE:
            return Correction(
                subject,
                say("{what}: name the gauge.", what=what),
                say(
                    "Choose it under Gauges: without its limit of error a reading settles nothing."
                ),
            )
        case Remedy.NOTHING_LISTED:
            return Correction(
                subject,
                say("{what}, and no gauge on the list can settle it.", what=what),
                say(
                    "The difference is too near the limit for the gauges listed. Add a finer "
                    "gauge, or bring the legs nearer to equal and measure again."
                ),
            )


def _more_readings(subject: Subject, what: str, advice: Advice) -> str:
    count = advice.readings_needed or 0
    match subject:
        case Subject.PROTRUSION:
            return say_count(
                "{what}: take {count} reading of each leg.",
                "{what}: take {count} readings of each leg.",
                count,
                what=what,
            )
        case Subject.SQUARING:
            return say_count(
                "{what}: take {count} reading of each side.",
                "{what}: take {count} readings of each side.",
                count,
                what=what,
            )
        case _:
            return say_count(
                "{what}: take {count} reading.",
                "{what}: take {count} readings.",
                count,
                what=what,
            )


def _with_another_gauge(subject: Subject, advice: Advice) -> str:
    count, gauge = advice.gauge_readings or 0, advice.gauge_name
    match subject:
        case Subject.PROTRUSION:
            return say_count(
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                "{gauge}, one reading of each leg would.",
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                "{gauge}, {count} readings of each leg would.",
                count,
                gauge=gauge,
            )
        case Subject.SQUARING:
            return say_count(
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                "{gauge}, one reading of each side would.",
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                "{gauge}, {count} readings of each side would.",
                count,
                gauge=gauge,
            )
        case _:
            return say_count(
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                "{gauge}, one reading would.",
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                "{gauge}, {count} readings would.",
                count,
                gauge=gauge,
            )
