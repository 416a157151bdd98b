"""What the Build stage says is to be done now, with its detail and its caution.

Nothing is worked out here: values are picked from the assessment and put into words.
"""

from __future__ import annotations

from aligner.assessment import StepStanding, StepState
from aligner.assessment.build import BuildAssessment, BuildSubject
from aligner.assessment.build_bearing import BearingAssessment
from aligner.assessment.build_oil import LegOilAssessment, OilAssessment
from aligner.assessment.build_sag import SagAssessment
from aligner.gauging import Advice, Remedy
from aligner.job.build import FallAway
from aligner.units.preferred import Preferred
from aligner.window.build.results import difference_words, sag_words, show_volume, upper_first

_SUPPORTED = "the machine stands supported, its front wheel off the ground, and cannot roll or tip."
_GAP_DETAIL = "Spring out, leg fully compressed and upright: from the tube's top edge to the oil."


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
            which = f": {now.side} leg" if now.side else ""
            if len(now.step.sides) > 1 and not now.side:
                which = ": both legs"
            return f"{now.step.title}{which}.", now.step.reason, now.step.caution
        case BuildSubject.SHEET:
            missing = ", ".join(oil.missing) or "the values for the oil"
            return (
                f"Missing on the sheet: {missing}.",
                "Take it from the maker's manual and type it at the foot of this page; it is never "
                "guessed here. What is read is kept meanwhile.",
                "",
            )
        case BuildSubject.READ_GAP:
            return f"Read the air gap of the {now.side} leg.", _GAP_DETAIL, ""
        case BuildSubject.POUR:
            wanted = show_volume(oil.wanted_ml or 0.0, show)
            return (
                f"Pour {wanted} into the {now.side} leg.",
                "The sheet gives a volume and no air gap: enter what was poured in.",
                "",
            )
        case BuildSubject.SET_OIL:
            return _set_oil(oil, oil.leg(now.side), now.side, found, show)
        case BuildSubject.EQUALISE:
            return (
                "Bring both air gaps to the same.",
                f"{upper_first(difference_words(oil, show))}. Each is within by itself; they are "
                "unlike by too much.",
                "",
            )
        case BuildSubject.READ_ON if _wants_gauge(found.advice):
            detail = "How far its scale may be out decides what the readings can tell."
            return "Name the gauge the air gaps were read with.", detail, ""
        case BuildSubject.READ_ON:
            what = f"the {now.side} leg's air gap" if now.side else "both air gaps"
            return f"Read {what} again.", advice_words(found.advice), ""
        case BuildSubject.BEARING_READ if nut is not None and nut.state is not StepState.NEXT:
            return (
                "Steps of Tighten come before the stem nut.",
                f"It is step {nut.number} there. Open Tighten, tick what stands before it, and "
                "come back.",
                "",
            )
        case BuildSubject.BEARING_READ if nut is not None:
            return f"{nut.step.title}.", f"{nut.step.reason} Then it is checked.", nut.step.caution
        case BuildSubject.BEARING_READ:
            return (
                "Check the head bearing.",
                "Front wheel off the ground, hoses and cables free: pull square to the arm until "
                "the steering starts to turn, then let it fall to each side.",
                _SUPPORTED,
            )
        case BuildSubject.BEARING_SET:
            return "Set the head bearing again.", _bearing_detail(found.bearing), _SUPPORTED
        case BuildSubject.SAG:
            return _sag_sentence(found.sag, show)
    detail = "Next the alignment; the caps are done up in Tighten while the lower clamps hold."
    if found.sag.leading.sag is None:
        detail += " The sag can be read once the machine stands on its wheels."
    return "The legs and the head bearing are built.", detail, ""


def advice_words(advice: Advice | None) -> str:
    """What would settle an unsettled verdict."""
    if advice is None:
        return "The readings cannot tell yet."
    if advice.remedy is Remedy.MORE_READINGS and advice.readings_needed:
        return f"The readings cannot tell yet; {advice.readings_needed} of each would."
    if advice.gauge_name:
        return f"The readings cannot tell; the {advice.gauge_name} would."
    return "The readings cannot tell, and no gauge on the list would: the gap is at its limit."


def _wants_gauge(advice: Advice | None) -> bool:
    return advice is not None and advice.remedy is Remedy.NAME_THE_GAUGE


def _set_oil(
    oil: OilAssessment, leg: LegOilAssessment, side: str, found: BuildAssessment, show: Preferred
) -> tuple[str, str, str]:
    open_steps = [
        step.title[:1].lower() + step.title[1:]
        for step in found.steps
        if step.phase == "oil" and side in step.open_sides
    ]
    before = f" Not ticked yet: {'; '.join(open_steps)}." if open_steps else ""
    if leg.volume_over is not None:
        over = leg.volume_over.value
        way = "Draw off" if over > 0 else "Add"
        size = show_volume(abs(over), show)
        where = "from" if over > 0 else "to"
        return f"{way} {size} {where} the {side} leg.", f"To the manual's volume.{before}", ""
    off = leg.against_wanted.value if leg.against_wanted else 0.0
    depth = show.show_length(oil.suction_depth_mm or 0.0)
    if leg.change_ml is None:
        size = show.show_length(abs(off))
        way = "too little" if off > 0 else "too much"
        return (
            f"The {side} leg holds {way} oil by {size} of level.",
            f"The sheet has no bore, so there are no millilitres; the suction tube set to {depth} "
            f"finds the level without them.{before}",
            "",
        )
    size = show_volume(abs(leg.change_ml), show)
    if leg.change_ml < 0:
        detail = f"Suction tube set to {depth} below the tube's top edge, drawn until air comes."
        return f"Draw {size} off the {side} leg.", f"{detail}{before}", ""
    detail = f"Or add a little more, and draw off with the suction tube set to {depth}."
    return f"Add {size} to the {side} leg.", f"{detail}{before}", ""


def _bearing_detail(found: BearingAssessment) -> str:
    if found.fall_away is FallAway.NOTCH:
        return "It catches in the middle: marked races feel so. Look at them before it is set."
    if found.fall_away is FallAway.PLAY:
        return "It has play: the stem nut a little tighter, then check again."
    is_tight = found.fall_away is FallAway.SLOW
    if found.pull_n is not None and found.wanted_pull is not None:
        if found.pull_n > found.wanted_pull.high_n:
            is_tight = True
        elif found.pull_n < found.wanted_pull.low_n:
            return "It turns too easily: the stem nut a little tighter, then check again."
    if is_tight:
        return "It drags: the stem nut a little slacker, then check again."
    return "Set the stem nut, then check again."


def _sag_sentence(found: SagAssessment, show: Preferred) -> tuple[str, str, str]:
    leading = found.leading
    caution = (
        "a cap is under spring pressure: support the machine, front wheel up, before it is opened."
    )
    if leading.change_mm is None:
        said = "The sag is outside its band, and preload alone will not mend it."
        return said, found.notices[-1].text if found.notices else "", ""
    way = "more" if leading.change_mm > 0 else "less"
    size = show.show_length(abs(leading.change_mm))
    name = "rider" if leading is found.rider else "static"
    return f"Give each leg {size} {way} preload.", sag_words(name, leading, show), caution
