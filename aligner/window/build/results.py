"""What the cards of the Build stage say of their readings: each result in a line of words.

Nothing is worked out here: values are picked from the assessment and put into words.
"""

from __future__ import annotations

from aligner.assessment.build_bearing import BearingAssessment
from aligner.assessment.build_force import ForceAssessment
from aligner.assessment.build_oil import LegOilAssessment, OilAssessment
from aligner.assessment.build_sag import SagUnderLoad
from aligner.assessment.readings import Judged
from aligner.gauging import Verdict
from aligner.language import begun, marked, say
from aligner.units import FORCE, TORQUE, VOLUME, shown
from aligner.units.preferred import Preferred
from aligner.units.shown import rounded

_NOT_READ = {"left": marked("left leg: not read"), "right": marked("right leg: not read")}
_GAP = {
    "left": marked("left leg: air gap {size}"),
    "right": marked("right leg: air gap {size}"),
}
_NO_VOLUME = {
    "left": marked("left leg: {poured}; the sheet gives no volume to hold it against"),
    "right": marked("right leg: {poured}; the sheet gives no volume to hold it against"),
}
_VOLUME_DECIDES = {
    "left": marked("left leg: {verdict}, {poured}, {against}"),
    "right": marked("right leg: {verdict}, {poured}, {against}"),
}
_GAP_DECIDES = {
    "left": marked("left leg: {poured}, {against}; the air gap decides"),
    "right": marked("right leg: {poured}, {against}; the air gap decides"),
}
_SAG_NOT_READ = {
    "static": marked("Static sag: not read."),
    "rider": marked("Rider sag: not read."),
}
_SAG = {"static": marked("Static sag {size}"), "rider": marked("Rider sag {size}")}
_SAG_AND_SHARE = {
    "static": marked("Static sag {size}, {share} % of the travel"),
    "rider": marked("Rider sag {size}, {share} % of the travel"),
}


def leg_words(leg: LegOilAssessment, show: Preferred) -> str:
    """What to do with one leg, in two short lines; "" where nothing is to be done."""
    if leg.verdict is Verdict.WITHIN:
        return say(leg.verdict.value)
    if leg.verdict is Verdict.UNSETTLED:
        return say("not settled:\nread again")
    if leg.change_ml is not None:
        size = show_volume(abs(leg.change_ml), show)
        return (
            say("add\n{size}", size=size)
            if leg.change_ml > 0
            else say("draw off\n{size}", size=size)
        )
    if leg.against_wanted is not None:
        off = leg.against_wanted.value
        size = show.show_length(abs(off))
        if off > 0:
            return say("{size}\ntoo little oil", size=size)
        return say("{size}\ntoo much oil", size=size)
    return ""


def leg_line(side: str, leg: LegOilAssessment, show: Preferred) -> str:
    """One leg's oil in a line, for the eye and for a screen reader."""
    if leg.gap is None:
        return say(_NOT_READ[side])
    parts = [say(_GAP[side], size=show.show_length(leg.gap.value_mm))]
    if leg.against_wanted is not None:
        parts.append(_against_wanted_words(leg.against_wanted, show))
    if leg.change_ml is not None and leg.verdict is not Verdict.WITHIN:
        size = show_volume(abs(leg.change_ml), show)
        parts.append(
            say("add {size}", size=size) if leg.change_ml > 0 else say("draw off {size}", size=size)
        )
        if leg.change_expanded_ml is not None:
            parts.append(f"± {show_volume(leg.change_expanded_ml, show)}")
    return ", ".join(parts)


def difference_words(oil: OilAssessment, show: Preferred) -> str:
    """Left against right: "within: left gap 0.5 ± 0.7 mm more; ± 2.0 mm allowed"."""
    found = oil.difference
    if found is None:
        return say("left against right: read both legs")
    verdict, size = say(found.verdict.value), _size_words(found, show)
    if found.value == 0:
        said = say("{verdict}: equal", verdict=verdict)
    elif found.value > 0:
        said = say("{verdict}: left gap {size} more than right", verdict=verdict, size=size)
    else:
        said = say("{verdict}: left gap {size} less than right", verdict=verdict, size=size)
    if found.tolerance is None:
        return said
    return say(
        "{found}; ± {tolerance} allowed",
        found=said,
        tolerance=show.show_length(found.tolerance),
    )


def volume_words(side: str, oil: OilAssessment, show: Preferred) -> str:
    """What was poured in, against the manual's volume."""
    leg = oil.leg(side)
    if leg.volume_ml is None:
        return ""
    poured = show_volume(leg.volume_ml, show)
    if oil.wanted_ml is None:
        return say(_NO_VOLUME[side], poured=poured)
    over = leg.volume_ml - oil.wanted_ml
    size = show_volume(abs(over), show)
    against = say("as the manual says")
    if abs(over) >= 0.5:
        against = (
            say("{size} more than the manual's", size=size)
            if over > 0
            else say("{size} less than the manual's", size=size)
        )
        if leg.volume is not None:
            level = show.show_length(abs(leg.volume.level_rise_mm))
            against = say(
                "{difference}, which is {level} of level", difference=against, level=level
            )
    if oil.by_volume:
        verdict = say(leg.verdict.value)
        return say(_VOLUME_DECIDES[side], verdict=verdict, poured=poured, against=against)
    return say(_GAP_DECIDES[side], poured=poured, against=against)


def force_words(found: ForceAssessment) -> str:
    """The difference at full stroke, slow and fast."""
    if found.refusal:
        return begun(found.refusal)
    if found.missing:
        needed = say("Still needed for this: {values}.", values=", ".join(found.missing))
        where = say("The sheet's values have their boxes at the foot of this page.")
        return f"{needed} {where}" if found.is_on_sheet else needed
    slow, fast = found.slow_at_full, found.fast_at_full
    if slow is None or fast is None:
        return ""
    if abs(fast.difference_n) < 0.5:
        said = say("At full stroke both legs push alike.")
    else:
        forces = {
            "fast": _newtons(abs(fast.difference_n)),
            "slow": _newtons(abs(slow.difference_n)),
            "whole": _newtons(max(fast.left_n, fast.right_n)),
        }
        said = (
            say(
                "At full stroke the left leg's air pushes {fast} more in a fast stroke, {slow} in "
                "a slow one (of {whole}).",
                **forces,
            )
            if fast.difference_n > 0
            else say(
                "At full stroke the right leg's air pushes {fast} more in a fast stroke, {slow} in "
                "a slow one (of {whole}).",
                **forces,
            )
        )
    if found.leaves_out_spring:
        left_out = say("Spring and spacer are not counted: the true forces are higher.")
        said = f"{said} {left_out}"
    return said


def bearing_words(found: BearingAssessment, show: Preferred) -> str:
    """The pull as a drag torque against the band."""
    if found.pull_n is None:
        if found.wanted_pull is not None:
            return say(
                "Right at {arm}: {low} to {high}.",
                arm=show.show_length(found.wanted_pull.radius_mm),
                low=shown(found.wanted_pull.low_n, FORCE),
                high=shown(found.wanted_pull.high_n, FORCE),
            )
        if not found.has_band:
            return say(
                "The sheet gives no drag for it: what is read is kept, and the feel decides."
            )
        return say("Give the radius at which the scale pulls.")
    pull = shown(found.pull_n, FORCE)
    if found.drag_nm is None:
        return say("{pull}: the radius is missing, so there is no drag torque yet.", pull=pull)
    drag = shown(found.drag_nm, TORQUE, fine=1)
    if found.low_nm is None or found.high_nm is None:
        return say(
            "{pull} is a drag of {drag}; the sheet gives none to hold it against.",
            pull=pull,
            drag=drag,
        )
    said = say(
        "{verdict}: {pull} is a drag of {drag}; {low} to {high} is right.",
        verdict=say(found.verdict.value),
        pull=pull,
        drag=drag,
        low=shown(found.low_nm, TORQUE, fine=1),
        high=shown(found.high_nm, TORQUE, fine=1),
    )
    not_counted = say("The scale's own error is not counted.")
    return f"{begun(said)} {not_counted}"


def sag_words(name: str, found: SagUnderLoad, show: Preferred) -> str:
    """Sag under one load ("static" or "rider"), its share of travel, against its band."""
    if found.sag is None:
        return say(_SAG_NOT_READ[name])
    size = show.show_length(found.sag.sag_mm)
    if found.share is not None:
        parts = [say(_SAG_AND_SHARE[name], size=size, share=rounded(found.share * 100, 0))]
    else:
        parts = [say(_SAG[name], size=size)]
    if found.low_mm is not None and found.high_mm is not None:
        parts.append(
            say(
                "{verdict}, {low} to {high} is right",
                verdict=say(found.verdict.value),
                low=show.show_length(found.low_mm),
                high=show.show_length(found.high_mm),
            )
        )
    if found.change_mm is not None and found.verdict is Verdict.OUT:
        parts.append(preload_words(found, show))
    friction = show.show_length(abs(found.sag.stiction_mm))
    parts.append(say("friction holds {size}", size=friction))
    return "; ".join(parts) + "."


def preload_words(found: SagUnderLoad, show: Preferred) -> str:
    """The change of preload: "8.0 mm more preload on each leg"."""
    change = found.change_mm or 0.0
    size = show.show_length(abs(change))
    said = (
        say("{size} more preload on each leg", size=size)
        if change > 0
        else say("{size} less preload on each leg", size=size)
    )
    if found.by_forces:
        return say("{change}, spring and air counted", change=said)
    return say("{change}, one for one along the leg", change=said)


def show_volume(ml: float, show: Preferred) -> str:
    """A volume in the unit a person prefers; small ones with a decimal more."""
    return shown(ml, VOLUME, show.volume, fine=1 if abs(ml) < 9.95 else 0)


def _against_wanted_words(found: Judged, show: Preferred) -> str:
    verdict, size = say(found.verdict.value), _size_words(found, show)
    if found.value == 0:
        return say("{verdict}: as wanted", verdict=verdict)
    if found.value > 0:
        return say("{verdict}: {size} more than wanted", verdict=verdict, size=size)
    return say("{verdict}: {size} less than wanted", verdict=verdict, size=size)


def _newtons(force_n: float) -> str:
    return shown(force_n, FORCE, fine=-1)


def _size_words(found: Judged, show: Preferred) -> str:
    size = show.show_length(abs(found.value))
    spread = found.judgement.expanded_uncertainty
    if spread is None:
        return size
    number, unit = size.split(" ", 1)
    return f"{number} ± {show.show_length(spread).split(' ', 1)[0]} {unit}"
