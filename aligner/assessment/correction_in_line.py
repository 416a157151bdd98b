"""What to correct of the legs' plane: which way the top bracket is turned.

The trap: legs that converge. No turning cures that, so nothing is turned for it.
"""

from __future__ import annotations

from aligner.assessment.correction import Correction, Subject
from aligner.assessment.in_line import InLineAssessment
from aligner.assessment.unsettled import unsettled
from aligner.gauging import Verdict
from aligner.job import BarReadings, InLineReadings, Job, SpreadReadings
from aligner.language import marked, say
from aligner.units.preferred import Preferred

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
_PARALLEL_UNSETTLED = marked("Whether the legs are parallel is not settled yet")
_IN_LINE_UNSETTLED = marked("Whether the legs are in line is not settled yet")


def in_line_correction(job: Job, found: InLineAssessment, show: Preferred) -> Correction:
    """What to do about legs that are not in line within their limit."""
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
        return unsettled(subject, say(what), found.advice, found.notices)
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
