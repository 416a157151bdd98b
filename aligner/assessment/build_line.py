"""Where the building up stands, in a few words for the stage list."""

from __future__ import annotations

from aligner.assessment.build import BuildAssessment, BuildSubject
from aligner.language import marked, say
from aligner.units import VOLUME, shown

#: The line for each subject that says it all by itself.
_LINES = {
    BuildSubject.SHEET: marked("oil values missing"),
    BuildSubject.READ_ON: marked("air gaps unsettled"),
    BuildSubject.EQUALISE: marked("air gaps unlike"),
    BuildSubject.BEARING_READ: marked("bearing to check"),
    BuildSubject.BEARING_SET: marked("bearing to set"),
    BuildSubject.SAG: marked("sag to correct"),
    BuildSubject.NOTHING: marked("legs, bearing set"),
}
#: The line for each subject that is of one leg.
_LINES_OF_A_LEG = {
    (BuildSubject.READ_GAP, "left"): marked("read left air gap"),
    (BuildSubject.READ_GAP, "right"): marked("read right air gap"),
    (BuildSubject.POUR, "left"): marked("left leg to fill"),
    (BuildSubject.POUR, "right"): marked("right leg to fill"),
    (BuildSubject.SET_OIL, "left"): marked("left oil is out"),
    (BuildSubject.SET_OIL, "right"): marked("right oil is out"),
}
_ADD_OIL = {"left": marked("add {oil} to left"), "right": marked("add {oil} to right")}
_DRAW_OIL = {"left": marked("draw {oil} off left"), "right": marked("draw {oil} off right")}


def line_of(found: BuildAssessment) -> str:
    """Where the building up stands, once it is begun."""
    now = found.next
    if now.subject is BuildSubject.STEP and now.step is not None:
        total = sum(len(step.sides) for step in found.steps)
        done = sum(len(step.done) for step in found.steps)
        return say("{done} of {total} ticked", done=done, total=total)
    if now.subject is BuildSubject.SET_OIL:
        change_ml = found.oil.leg(now.side).change_ml
        if change_ml is not None:
            lines = _ADD_OIL if change_ml > 0 else _DRAW_OIL
            return say(lines[now.side], oil=shown(abs(change_ml), VOLUME))
    line = _LINES_OF_A_LEG.get((now.subject, now.side)) or _LINES.get(now.subject, "")
    return say(line)
