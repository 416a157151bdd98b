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
from aligner.geometry import Side
from aligner.job import BarReadings, InLineReadings, Job, SpreadReadings
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


_HEIGHT_HOW = (
    "From the top bracket's upper face to the tube's top edge, never to the cap. "
    "Three readings of each leg."
)
_SQUARE_HOW = "From each frame point to its point on the lower bracket, the same way on both sides."
_PLATE_HOW = (
    "Lay a flat plate across both tubes and read the gap at the corner that stands off; "
    "nought where it touches all round."
)
_BARS_HOW = (
    "Lay two straight bars across both tubes, one above the other. From the left, see how far the "
    "lower bar's end stands ahead of the upper one's; behind is minus."
)
_SPREAD_HOW = "Measure over the outsides of both tubes at two heights, with the same gauge."
_NO_TWIST_SEEN = (
    "The widths are within their limit, but they cannot tell a twist: lay a plate or two bars "
    "across the tubes as well."
)
_LEG_DROPS = "hold the leg as its clamps come slack: it drops."


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
        more = f"Measure “{squaring.not_read[0]}” too, both sides."
        return Correction(Subject.SQUARING, more, f"{_SQUARE_HOW} Or take the pair off.")
    if asks_for_in_line(job) and in_line.verdict is not Verdict.WITHIN:
        return _of_in_line(job, in_line, show)
    return Correction(
        Subject.NOTHING,
        "Nothing left to correct.",
        "Every reading is within its limit. Go on to the tightening list.",
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
            return Correction(subject, "Measure how far each tube stands up.", _HEIGHT_HOW)
        absent = "right" if left else "left"
        return Correction(subject, f"Now measure the {absent} leg's height.", _HEIGHT_HOW)
    if found.verdict is Verdict.UNSETTLED:
        return _unsettled(subject, "The heights are not settled yet", found.advice, "of each leg")
    if found.verdict is Verdict.MISSING or found.moves is None:
        why = _first_attention(found.notices)
        return Correction(subject, "The heights cannot be judged yet.", why)
    moves = [("left", found.moves.left_mm), ("right", found.moves.right_mm)]
    moving = [(side, mm) for side, mm in moves if abs(mm) >= _least_shown(show)]
    if not moving:
        return Correction(
            subject,
            "The heights are out by less than can be moved.",
            "The tolerance on the sheet is smaller than what can be set by hand: check it.",
        )
    sentence = " and ".join(_move(side, mm, show) for side, mm in moving)
    return Correction(
        subject,
        sentence[:1].upper() + sentence[1:] + ".",
        _slack_for([side for side, _ in moving]),
        _LEG_DROPS,
    )


def _move(side: str, mm: float, show: Preferred) -> str:
    size = show.show_length(abs(mm))
    return f"push the {side} leg up {size}" if mm > 0 else f"let the {side} leg down {size}"


def _least_shown(show: Preferred) -> float:
    return 0.05 if show.length == "mm" else 0.0005 * 25.4


def _slack_for(sides: list[str]) -> str:
    if len(sides) == 2:
        return (
            "One leg at a time: slacken its top clamp and its lower clamp, the other leg stays "
            "clamped. Then measure both again."
        )
    side = sides[0]
    other = "right" if side == "left" else "left"
    return (
        f"Slacken the {side} top clamp and the {side} lower clamp; leave the {other} leg "
        "clamped. Then measure both again."
    )


def _of_squaring(job: Job, found: SquaringAssessment, show: Preferred) -> Correction:
    subject = Subject.SQUARING
    pair = found.leading_pair
    if not job.align.squaring:
        return Correction(
            subject,
            "Choose two points on the frame to square the lower bracket to.",
            "Alike left and right, such as two lugs or two bolt heads: add a pair of distances.",
        )
    if pair is None:
        refusals = [notice.text for each in found.pairs for notice in each.notices]
        half = any((each.left is None) != (each.right is None) for each in found.pairs)
        if half or not refusals:
            return Correction(
                subject, "Measure from the frame to the lower bracket, both sides.", _SQUARE_HOW
            )
        return Correction(subject, "The distances and the points do not fit.", refusals[-1])
    if found.disagree:
        odd = (
            f"Measure “{found.odd_pair}” again."
            if found.odd_pair
            else ("Measure another pair of points.")
        )
        return Correction(subject, odd, next((n.text for n in found.notices), ""))
    if found.verdict is Verdict.UNSETTLED:
        return _unsettled(
            subject,
            "Whether the bracket is square is not settled yet",
            found.advice,
            "of each side",
        )
    if found.verdict is Verdict.MISSING or pair.change is None:
        by_pair = (notice for each in found.pairs for notice in each.notices)
        why = _first_attention((*found.notices, *by_pair))
        return Correction(subject, "The squareness cannot be judged yet.", why)
    if found.turn is not None:
        way = "left" if found.turn.value < 0 else "right"
        turn = show.show_angle(abs(found.turn.value))
        sentence = f"Turn the lower bracket {turn} to the {way}."
    else:
        side = "left" if pair.change.left_mm > 0 else "right"
        more = show.show_length(abs(pair.change.left_mm))
        sentence = f"Turn the lower bracket until the {side} side is {more} longer."
    return Correction(
        subject,
        sentence,
        f"Until “{pair.name}” reads {_straight(pair, show)}. The stem nut lets it turn, the lower "
        "clamps hold both legs, the top clamps and the stem head bolt are slack. Then hold it "
        "there and measure again.",
    )


def _straight(pair: PairAssessment, show: Preferred) -> str:
    """What a pair reads when straight; on a frame known to be unlike, not the same on both."""
    if pair.left is None or pair.right is None or pair.change is None:
        return ""
    left, right = (
        show.show_length(side.value_mm + change_mm)
        for side, change_mm in (
            (pair.left, pair.change.left_mm),
            (pair.right, pair.change.right_mm),
        )
    )
    return f"{left} on both sides" if left == right else f"{left} left and {right} right"


def _of_in_line(job: Job, found: InLineAssessment, show: Preferred) -> Correction:
    subject = Subject.IN_LINE
    geometry = found.geometry
    if geometry is None or found.judged is None:
        if found.notices:
            return Correction(
                subject, "Whether the legs are in line cannot be told yet.", found.notices[-1].text
            )
        return Correction(
            subject, "Check that the legs are in line.", _in_line_how(job.align.in_line)
        )
    is_proved = found.judged.verdict is Verdict.WITHIN and found.advice is None
    if found.verdict is Verdict.UNSETTLED and is_proved:
        return Correction(subject, "The legs are parallel; now check for a twist.", _NO_TWIST_SEEN)
    if found.verdict is Verdict.UNSETTLED:
        what = "parallel" if found.is_convergence else "in line"
        return _unsettled(
            subject, f"Whether the legs are {what} is not settled yet", found.advice, ""
        )
    if found.is_convergence:
        way = "wider" if (geometry.convergence_deg or 0.0) > 0 else "narrower"
        return Correction(
            subject,
            "The legs are not parallel: no turning cures that.",
            f"They stand {way} apart going down. That is a convergence and no twist: suspect a "
            "bent tube or a bent bracket. Roll both tubes and have the brackets checked by a "
            "qualified mechanic before this goes back on the road.",
        )
    if geometry.twist_deg is None or geometry.top_bracket_rim_mm is None:
        return Correction(
            subject,
            "The legs are not in line.",
            "It is a twist between the brackets. Give the leg spacing and the bracket spacing on "
            "the sheet, and the turn that cures it follows.",
        )
    way = "left" if geometry.twist_deg < 0 else "right"
    forward = geometry.forward_side or Side.LEFT
    rim = show.show_length(abs(geometry.top_bracket_rim_mm))
    return Correction(
        subject,
        f"Turn the top bracket to the {way}: its {forward.value} side {rim} forward.",
        "A twist between the brackets, cured at the top one. The stem head bolt, the stem pinch "
        "bolt and both top clamps are slack; the lower clamps hold. Then measure everything again.",
    )


def _in_line_how(readings: InLineReadings | None) -> str:
    match readings:
        case BarReadings():
            return _BARS_HOW
        case SpreadReadings():
            return _SPREAD_HOW
    return _PLATE_HOW


def _unsettled(subject: Subject, what: str, advice: Advice | None, of_what: str) -> Correction:
    if advice is None:
        return Correction(subject, f"{what}.", "Measure again, with a finer gauge if you have one.")
    becomes = "within the limit" if advice.expected_verdict is Verdict.WITHIN else "out"
    match advice.remedy:
        case Remedy.MORE_READINGS:
            return Correction(
                subject,
                f"{what}: take {advice.readings_needed} readings {of_what}".rstrip() + ".",
                f"If they come out as they are now, that many would settle it: {becomes}. "
                "Do not move anything for a difference that is not there.",
            )
        case Remedy.ANOTHER_GAUGE:
            return Correction(
                subject,
                f"{what}: use the {advice.gauge_name}.",
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                f"{advice.gauge_name}, {_readings(advice.gauge_readings)} {of_what} would.",
            )
        case Remedy.NAME_THE_GAUGE:
            return Correction(
                subject,
                f"{what}: name the gauge.",
                "Choose it under Gauges: without its limit of error a reading settles nothing.",
            )
        case Remedy.NOTHING_LISTED:
            return Correction(
                subject,
                f"{what}, and no gauge on the list can settle it.",
                "The difference is too near the limit for the gauges listed. Add a finer gauge, "
                "or bring the legs nearer to equal and measure again.",
            )


def _readings(count: int | None) -> str:
    return "one reading" if count == 1 else f"{count} readings"
