"""What the Build stage says is to be done now, with its detail and its caution.

Nothing is worked out here: values are picked from the assessment and put into words.
"""

from __future__ import annotations

from aligner.assessment import StepStanding, StepState
from aligner.assessment.build import BuildAssessment, BuildSubject
from aligner.assessment.build_bearing import BearingAssessment
from aligner.assessment.build_oil import LegOilAssessment, OilAssessment
from aligner.gauging import Advice, Remedy
from aligner.job.build import FallAway
from aligner.language import begun, inside, marked, say
from aligner.units.preferred import Preferred
from aligner.window.build.results import (
    difference_words,
    sag_words,
    show_volume,
)
from aligner.window.build.spring_words import change_words

_SUPPORTED = marked(
    "the machine stands supported, its front wheel off the ground, and cannot roll or tip."
)
_GAP_DETAIL = marked(
    "Spring out, leg fully compressed and upright: from the tube's top edge to the oil."
)
_STEP = {
    "left": marked("{step}: left leg."),
    "right": marked("{step}: right leg."),
    "both": marked("{step}: both legs."),
    "": marked("{step}."),
}
_READ_GAP = {
    "left": marked("Read the air gap of the left leg."),
    "right": marked("Read the air gap of the right leg."),
}
_READ_AGAIN = {
    "left": marked("Read the left leg's air gap again."),
    "right": marked("Read the right leg's air gap again."),
    "": marked("Read both air gaps again."),
}
_POUR = {
    "left": marked("Pour {volume} into the left leg."),
    "right": marked("Pour {volume} into the right leg."),
}
_DRAW_OFF_VOLUME = {
    "left": marked("Draw off {volume} from the left leg."),
    "right": marked("Draw off {volume} from the right leg."),
}
_DRAW_OFF = {
    "left": marked("Draw {volume} off the left leg."),
    "right": marked("Draw {volume} off the right leg."),
}
_ADD = {
    "left": marked("Add {volume} to the left leg."),
    "right": marked("Add {volume} to the right leg."),
}
_TOO_LITTLE = {
    "left": marked("The left leg holds too little oil by {size} of level."),
    "right": marked("The right leg holds too little oil by {size} of level."),
}
_TOO_MUCH = {
    "left": marked("The left leg holds too much oil by {size} of level."),
    "right": marked("The right leg holds too much oil by {size} of level."),
}


def sentence_words(
    found: BuildAssessment, show: Preferred, nut: StepStanding | None = None
) -> tuple[str, str, str]:
    """What to do now, its detail, and the caution that belongs to it.

    Args:
        found: what is built up.
        show: the units a person prefers.
        nut: the first of the stem nut's steps on the tightening list that is not done.
    """
    now, oil = found.next, found.oil
    match now.subject:
        case BuildSubject.STEP if now.step is not None:
            which = now.side or ("both" if len(now.step.sides) > 1 else "")
            return say(_STEP[which], step=now.step.title), now.step.reason, now.step.caution
        case BuildSubject.SHEET:
            missing = ", ".join(oil.missing) or say("the values for the oil")
            return (
                say("Missing on the sheet: {values}.", values=missing),
                say(
                    "Take it from the maker's manual and type it at the foot of this page; it is "
                    "never guessed here. What is read is kept meanwhile."
                ),
                "",
            )
        case BuildSubject.READ_GAP:
            return say(_READ_GAP[now.side]), say(_GAP_DETAIL), ""
        case BuildSubject.POUR:
            wanted = show_volume(oil.wanted_ml or 0.0, show)
            return (
                say(_POUR[now.side], volume=wanted),
                say("The sheet gives a volume and no air gap: enter what was poured in."),
                "",
            )
        case BuildSubject.SET_OIL:
            return _set_oil(oil, oil.leg(now.side), now.side, found, show)
        case BuildSubject.EQUALISE:
            unlike = say("Each is within by itself; they are unlike by too much.")
            return (
                say("Bring both air gaps to the same."),
                f"{begun(difference_words(oil, show))}. {unlike}",
                "",
            )
        case BuildSubject.READ_ON if _wants_gauge(found.advice):
            detail = say("How far its scale may be out decides what the readings can tell.")
            return say("Name the gauge the air gaps were read with."), detail, ""
        case BuildSubject.READ_ON:
            return say(_READ_AGAIN[now.side]), advice_words(found.advice), ""
        case BuildSubject.BEARING_READ if nut is not None and nut.state is not StepState.NEXT:
            return (
                say("Steps of Tighten come before the stem nut."),
                say(
                    "It is step {number} there. Open Tighten, tick what stands before it, and "
                    "come back.",
                    number=nut.number,
                ),
                "",
            )
        case BuildSubject.BEARING_READ if nut is not None:
            then = say("Then it is checked.")
            return f"{nut.step.title}.", f"{nut.step.reason} {then}", nut.step.caution
        case BuildSubject.BEARING_READ:
            return (
                say("Check the head bearing."),
                say(
                    "Front wheel off the ground, hoses and cables free: pull square to the arm "
                    "until the steering starts to turn, then let it fall to each side."
                ),
                say(_SUPPORTED),
            )
        case BuildSubject.BEARING_SET:
            detail = _bearing_detail(found.bearing)
            return say("Set the head bearing again."), detail, say(_SUPPORTED)
        case BuildSubject.SAG:
            return _sag_sentence(found, show)
    detail = say("Next the alignment; the caps are done up in Tighten while the lower clamps hold.")
    if found.sag.leading.sag is None:
        sag = say("The sag can be read once the machine stands on its wheels.")
        detail = f"{detail} {sag}"
    return say("The legs and the head bearing are built."), detail, ""


def advice_words(advice: Advice | None) -> str:
    """What would settle an unsettled verdict."""
    if advice is None:
        return say("The readings cannot tell yet.")
    if advice.remedy is Remedy.MORE_READINGS and advice.readings_needed:
        return say(
            "The readings cannot tell yet; {count} of each would.", count=advice.readings_needed
        )
    if advice.gauge_name:
        return say("The readings cannot tell; the {gauge} would.", gauge=advice.gauge_name)
    return say("The readings cannot tell, and no gauge on the list would: the gap is at its limit.")


def _wants_gauge(advice: Advice | None) -> bool:
    return advice is not None and advice.remedy is Remedy.NAME_THE_GAUGE


def _set_oil(
    oil: OilAssessment, leg: LegOilAssessment, side: str, found: BuildAssessment, show: Preferred
) -> tuple[str, str, str]:
    if leg.volume_over is not None:
        over = leg.volume_over.value
        way = _DRAW_OFF_VOLUME if over > 0 else _ADD
        detail = say("To the manual's volume.")
        now = say(way[side], volume=show_volume(abs(over), show))
        return now, _with_open_steps(detail, side, found), ""
    depth = show.show_length(oil.suction_depth_mm or 0.0)
    if leg.change_ml is None:
        off = leg.against_wanted.value if leg.against_wanted else 0.0
        way = _TOO_LITTLE if off > 0 else _TOO_MUCH
        now = say(way[side], size=show.show_length(abs(off)))
        detail = say(
            "The sheet has no bore, so there are no millilitres; the suction tube set to {depth} "
            "finds the level without them.",
            depth=depth,
        )
    elif leg.change_ml < 0:
        now = say(_DRAW_OFF[side], volume=show_volume(-leg.change_ml, show))
        detail = say(
            "Suction tube set to {depth} below the tube's top edge, drawn until air comes.",
            depth=depth,
        )
    else:
        now = say(_ADD[side], volume=show_volume(leg.change_ml, show))
        detail = say(
            "Or add a little more, and draw off with the suction tube set to {depth}.", depth=depth
        )
    return now, _with_open_steps(detail, side, found), ""


def _with_open_steps(detail: str, side: str, found: BuildAssessment) -> str:
    """A detail, and after it what the oil's steps still lack on that leg."""
    lacking = [
        inside(step.title)
        for step in found.steps
        if step.phase == "oil" and side in step.open_sides
    ]
    if not lacking:
        return detail
    not_ticked = say("Not ticked yet: {steps}.", steps="; ".join(lacking))
    return f"{detail} {not_ticked}"


def _bearing_detail(found: BearingAssessment) -> str:
    if found.fall_away is FallAway.NOTCH:
        return say("It catches in the middle: marked races feel so. Look at them before it is set.")
    if found.fall_away is FallAway.PLAY:
        return say("It has play: the stem nut a little tighter, then check again.")
    is_tight = found.fall_away is FallAway.SLOW
    if found.pull_n is not None and found.wanted_pull is not None:
        if found.pull_n > found.wanted_pull.high_n:
            is_tight = True
        elif found.pull_n < found.wanted_pull.low_n:
            return say("It turns too easily: the stem nut a little tighter, then check again.")
    if is_tight:
        return say("It drags: the stem nut a little slacker, then check again.")
    return say("Set the stem nut, then check again.")


def _sag_sentence(found: BuildAssessment, show: Preferred) -> tuple[str, str, str]:
    sag = found.sag
    leading = sag.leading
    if leading.change_mm is None:
        said = say("The sag is outside its band, and preload alone will not mend it.")
        return said, sag.notices[-1].text if sag.notices else "", ""
    if found.spacer_change is not None and found.spacer_change.is_in:
        return say("Read the sag again."), change_words(found, show), ""
    size = show.show_length(abs(leading.change_mm))
    said = (
        say("Give each leg {size} more preload.", size=size)
        if leading.change_mm > 0
        else say("Give each leg {size} less preload.", size=size)
    )
    name = "rider" if leading is sag.rider else "static"
    caution = say(
        "a cap is under spring pressure: support the machine, front wheel up, before it is opened."
    )
    detail = f"{sag_words(name, leading, show)} {change_words(found, show)}"
    return said, detail.rstrip(), caution
