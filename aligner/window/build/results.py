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
from aligner.units import FORCE, TORQUE, VOLUME, shown
from aligner.units.preferred import Preferred


def leg_words(leg: LegOilAssessment, show: Preferred) -> str:
    """What to do with one leg, in two short lines; "" where nothing is to be done."""
    if leg.verdict is Verdict.WITHIN:
        return "within"
    if leg.verdict is Verdict.UNSETTLED:
        return "not settled:\nread again"
    if leg.change_ml is not None:
        way = "add" if leg.change_ml > 0 else "draw off"
        return f"{way}\n{show_volume(abs(leg.change_ml), show)}"
    if leg.against_wanted is not None:
        off = leg.against_wanted.value
        size = show.show_length(abs(off))
        return f"{size}\n{'too little oil' if off > 0 else 'too much oil'}"
    return ""


def leg_line(side: str, leg: LegOilAssessment, show: Preferred) -> str:
    """One leg's oil in a line, for the eye and for a screen reader."""
    if leg.gap is None:
        return f"{side} leg: not read"
    parts = [f"{side} leg: air gap {show.show_length(leg.gap.value_mm)}"]
    if leg.against_wanted is not None:
        parts.append(_judged_words(leg.against_wanted, show, "more", "less"))
    if leg.change_ml is not None and leg.verdict is not Verdict.WITHIN:
        way = "add" if leg.change_ml > 0 else "draw off"
        spread = ""
        if leg.change_expanded_ml is not None:
            spread = f", ± {show_volume(leg.change_expanded_ml, show)}"
        parts.append(f"{way} {show_volume(abs(leg.change_ml), show)}{spread}")
    return ", ".join(parts)


def difference_words(oil: OilAssessment, show: Preferred) -> str:
    """Left against right: "within: left gap 0.5 ± 0.7 mm more; ± 2.0 mm allowed"."""
    found = oil.difference
    if found is None:
        return "left against right: read both legs"
    allowed = ""
    if found.tolerance is not None:
        allowed = f"; ± {show.show_length(found.tolerance)} allowed"
    size = _size_words(found, show)
    side = (
        "equal"
        if found.value == 0
        else (f"left gap {size} {'more' if found.value > 0 else 'less'} than right")
    )
    return f"{found.verdict.value}: {side}{allowed}"


def volume_words(side: str, oil: OilAssessment, show: Preferred) -> str:
    """What was poured in, against the manual's volume."""
    leg = oil.leg(side)
    if leg.volume_ml is None:
        return ""
    poured = show_volume(leg.volume_ml, show)
    if oil.wanted_ml is None:
        return f"{side} leg: {poured}; the sheet gives no volume to hold it against"
    over = leg.volume_ml - oil.wanted_ml
    size = show_volume(abs(over), show)
    against = "as the manual says"
    if abs(over) >= 0.5:
        against = f"{size} {'more' if over > 0 else 'less'} than the manual's"
        if leg.volume is not None:
            level = show.show_length(abs(leg.volume.level_rise_mm))
            against += f", which is {level} of level"
    if oil.by_volume:
        return f"{side} leg: {leg.verdict.value}, {poured}, {against}"
    return f"{side} leg: {poured}, {against}; the air gap decides"


def force_words(found: ForceAssessment) -> str:
    """The difference at full stroke, slow and fast."""
    if found.refusal:
        return upper_first(found.refusal)
    if found.missing:
        return f"Still needed for this: {', '.join(found.missing)}."
    slow, fast = found.slow_at_full, found.fast_at_full
    if slow is None or fast is None:
        return ""
    if abs(fast.difference_n) < 0.5:
        said = "At full stroke both legs push alike."
    else:
        more = "left" if fast.difference_n > 0 else "right"
        said = (
            f"At full stroke the {more} leg's air pushes {abs(fast.difference_n):.0f} N more in a "
            f"fast stroke, {abs(slow.difference_n):.0f} N in a slow one "
            f"(of {max(fast.left_n, fast.right_n):.0f} N)."
        )
    if found.leaves_out_spring:
        said += " Spring and spacer are not counted: the true forces are higher."
    return said


def bearing_words(found: BearingAssessment, show: Preferred) -> str:
    """The pull as a drag torque against the band."""
    if found.pull_n is None:
        if found.wanted_pull is not None:
            low, high = found.wanted_pull.low_n, found.wanted_pull.high_n
            arm = show.show_length(found.wanted_pull.radius_mm)
            return f"Right at {arm}: {shown(low, FORCE)} to {shown(high, FORCE)}."
        if not found.has_band:
            return "The sheet gives no drag for it: what is read is kept, and the feel decides."
        return "Give the radius at which the scale pulls."
    pull = shown(found.pull_n, FORCE)
    if found.drag_nm is None:
        return f"{pull}: the radius is missing, so there is no drag torque yet."
    drag = shown(found.drag_nm, TORQUE, fine=1)
    if found.low_nm is None or found.high_nm is None:
        return f"{pull} is a drag of {drag}; the sheet gives none to hold it against."
    low, high = (shown(each, TORQUE, fine=1) for each in (found.low_nm, found.high_nm))
    said = f"{found.verdict.value}: {pull} is a drag of {drag}; {low} to {high} is right."
    return f"{upper_first(said)} The scale's own error is not counted."


def sag_words(name: str, found: SagUnderLoad, show: Preferred) -> str:
    """Sag under one load, its share of travel, against its band."""
    if found.sag is None:
        return f"{upper_first(name)} sag: not read."
    parts = [f"{upper_first(name)} sag {show.show_length(found.sag.sag_mm)}"]
    if found.share is not None:
        parts[0] += f", {found.share * 100:.0f} % of the travel"
    if found.low_mm is not None and found.high_mm is not None:
        low, high = show.show_length(found.low_mm), show.show_length(found.high_mm)
        parts.append(f"{found.verdict.value}, {low} to {high} is right")
    if found.change_mm is not None and found.verdict is Verdict.OUT:
        parts.append(preload_words(found, show))
    parts.append(f"friction holds {show.show_length(abs(found.sag.stiction_mm))}")
    return "; ".join(parts) + "."


def preload_words(found: SagUnderLoad, show: Preferred) -> str:
    """The change of preload: "8.0 mm more preload on each leg"."""
    change = found.change_mm or 0.0
    way = "more" if change > 0 else "less"
    counted = "spring and air counted" if found.by_forces else "one for one along the leg"
    return f"{show.show_length(abs(change))} {way} preload on each leg, {counted}"


def show_volume(ml: float, show: Preferred) -> str:
    """A volume in the unit a person prefers; small ones with a decimal more."""
    return shown(ml, VOLUME, show.volume, fine=1 if abs(ml) < 9.95 else 0)


def _judged_words(found: Judged, show: Preferred, more: str, less: str) -> str:
    if found.value == 0:
        return f"{found.verdict.value}: as wanted"
    way = more if found.value > 0 else less
    return f"{found.verdict.value}: {_size_words(found, show)} {way} than wanted"


def _size_words(found: Judged, show: Preferred) -> str:
    size = show.show_length(abs(found.value))
    spread = found.judgement.expanded_uncertainty
    if spread is None:
        return size
    number, unit = size.split(" ", 1)
    return f"{number} ± {show.show_length(spread).split(' ', 1)[0]} {unit}"


def upper_first(text: str) -> str:
    """The same words as a sentence begins."""
    return text[:1].upper() + text[1:]
