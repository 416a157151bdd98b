"""What to correct of the legs' heights: which leg goes up or down, and what is slack for it.

The trap: both legs slack at once. Each is moved while the other stays clamped.
"""

from __future__ import annotations

from aligner.assessment.correction import Correction, Subject, first_attention
from aligner.assessment.protrusion import ProtrusionAssessment
from aligner.assessment.unsettled import unsettled
from aligner.gauging import Verdict
from aligner.language import marked, say
from aligner.units.preferred import Preferred

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
_UNSETTLED = marked("The heights are not settled yet")


def heights_correction(found: ProtrusionAssessment, show: Preferred) -> Correction:
    """What to do about heights that are not within their limit."""
    subject = Subject.PROTRUSION
    if found.difference is None:
        left, right = found.left is not None, found.right is not None
        if left == right:
            sentence = say("Measure how far each tube stands up.")
        else:
            sentence = say(_ONE_HEIGHT_MORE["right" if left else "left"])
        return Correction(subject, sentence, say(_HEIGHT_HOW))
    if found.verdict is Verdict.UNSETTLED:
        return unsettled(subject, say(_UNSETTLED), found.advice, found.notices)
    if found.verdict is Verdict.MISSING or found.moves is None:
        why = first_attention(found.notices)
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
