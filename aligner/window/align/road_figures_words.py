"""The road figures in words and cells: rounded, signed, and with the side they lie to."""

from __future__ import annotations

from aligner.assessment.road_figures import (
    MOST_RISE_MM,
    RoadFigure,
    RoadState,
    RoadSubject,
    RoadTable,
    WhatIf,
)
from aligner.drawing.side_bones import SideChange, SideProportions
from aligner.drawing.side_painting import DimensionWords
from aligner.language import marked, say
from aligner.units.preferred import Preferred

#: What one press of an arrow key on the slider is worth, in mm, by preferred unit.
_STEP_MM = {"mm": 0.5, "in": 0.508}
_PLACES = {
    "rake": RoadSubject.RAKE,
    "trail": RoadSubject.TRAIL,
    "normal trail": RoadSubject.NORMAL_TRAIL,
    "wheelbase": RoadSubject.WHEELBASE,
}


_SUBJECTS = {
    RoadSubject.RAKE: marked("rake"),
    RoadSubject.TRAIL: marked("trail"),
    RoadSubject.NORMAL_TRAIL: marked("normal trail"),
    RoadSubject.WHEELBASE: marked("wheelbase"),
    RoadSubject.AXLE_LEAN: marked("axle lean"),
    RoadSubject.PATCH_SHIFT: marked("tyre patch"),
}
_STATES = {
    RoadState.SHEET: marked("sheet"),
    RoadState.AS_FOUND: marked("as found"),
    RoadState.NOW: marked("as it stands"),
    RoadState.CORRECTED: marked("after the correction"),
    RoadState.WHAT_IF: marked("what if"),
}
#: What stands at a dimension in the drawing, and there where the figure is missing.
_DRAWN = {
    RoadSubject.RAKE: (marked("rake {size}"), marked("rake: missing")),
    RoadSubject.TRAIL: (marked("trail {size}"), marked("trail: missing")),
    RoadSubject.NORMAL_TRAIL: (marked("normal trail {size}"), marked("normal trail: missing")),
    RoadSubject.WHEELBASE: (marked("wheelbase {size}"), marked("wheelbase: missing")),
}


def rise_of(step: int, show: Preferred) -> float:
    """The raise that a place of the slider stands for; mm."""
    return step * _STEP_MM.get(show.length, 0.5)


def step_of(rise_mm: float, show: Preferred) -> int:
    """The place of the slider nearest to a raise."""
    return round(rise_mm / _STEP_MM.get(show.length, 0.5))


def most_steps(show: Preferred) -> int:
    """How many places the slider has either side of nought."""
    return int(MOST_RISE_MM / _STEP_MM.get(show.length, 0.5))


def signed_length(mm: float, show: Preferred) -> str:
    """A length with its sign: "+2.5 mm", "−0.1 mm", "0.0 mm"."""
    text = show.show_length(mm)
    return f"+{text}" if mm > 0 and _is_something(text) else text


def column_name(state: RoadState, supposed: WhatIf | None, show: Preferred) -> str:
    """How the table calls a column."""
    if state is RoadState.WHAT_IF and supposed is not None:
        return say("what if {rise}", rise=signed_length(supposed.rise_mm, show))
    return say(_STATES[state])


def refusal_words(supposed: WhatIf, show: Preferred) -> str:
    """Why a raise cannot be supposed, in the preferred unit; "" if it can."""
    if not supposed.is_too_far:
        return supposed.refusal
    most = show.show_length(MOST_RISE_MM)
    return say("give a raise between −{most} and +{most}", most=most)


def heading(state: RoadState) -> str:
    """The same in short, at the head of its column."""
    match state:
        case RoadState.SHEET:
            return say("sheet", meaning="head of a column")
        case RoadState.AS_FOUND:
            return say("as found", meaning="head of a column")
        case RoadState.NOW:
            return say("now", meaning="head of a column")
        case RoadState.CORRECTED:
            return say("corrected", meaning="head of a column")
        case RoadState.WHAT_IF:
            return say("what if", meaning="head of a column")


def subject_words(subject: RoadSubject) -> str:
    """What a row of figures is of."""
    return say(_SUBJECTS[subject])


def cell(subject: RoadSubject, figure: RoadFigure, show: Preferred) -> tuple[str, str]:
    """A figure, and beside it its change against the sheet or the side it lies to."""
    value = figure.value
    if value is None:
        return "–", ""
    if subject in (RoadSubject.AXLE_LEAN, RoadSubject.PATCH_SHIFT):
        number = _number(abs(value), subject, show)
        side = say("left") if value > 0 else say("right")
        return number, side if _is_something(number) else ""
    return _number(value, subject, show), _change(figure.change, subject, show)


def spoken(subject: RoadSubject, state: str, figure: RoadFigure, show: Preferred) -> str:
    """A cell for a screen reader."""
    name = f"{subject_words(subject)}, {state}"
    if figure.value is None:
        return say("{what}: missing", what=name)
    number, beside = cell(subject, figure, show)
    unit = say("degrees") if subject.is_angle else show.length
    said, is_left = f"{name}: {number} {unit}", figure.value > 0
    if not beside:
        return said
    if subject is RoadSubject.AXLE_LEAN:
        if is_left:
            return say("{figure}, left end high", figure=said)
        return say("{figure}, right end high", figure=said)
    if subject is RoadSubject.PATCH_SHIFT:
        if is_left:
            return say("{figure} to the left", figure=said)
        return say("{figure} to the right", figure=said)
    return say("{figure}, changed by {change} against the sheet", figure=said, change=beside)


def dimension_words(
    table: RoadTable, state: RoadState, show: Preferred
) -> dict[str, DimensionWords]:
    """What stands at the dimensions of the drawing; what is missing is named as missing."""
    said = {}
    for place, subject in _PLACES.items():
        value = table.figures[subject, state].value
        drawn, missing = _DRAWN[subject]
        if value is None:
            said[place] = DimensionWords(say(missing), is_missing=True)
        elif subject.is_angle:
            said[place] = DimensionWords(say(drawn, size=show.show_angle(value)))
        else:
            said[place] = DimensionWords(say(drawn, size=_length(value, subject, show)))
    return said


def drawn_state(table: RoadTable, supposed: WhatIf) -> RoadState:
    """Which state the drawing shows: what is supposed, else as it stands, else the sheet."""
    if supposed.rise_mm != 0.0 and supposed.handling is not None:
        return RoadState.WHAT_IF
    if table.handling[RoadState.NOW] is not None:
        return RoadState.NOW
    return RoadState.SHEET


def drawn_words(state: RoadState, supposed: WhatIf, factor: int, show: Preferred) -> str:
    """Which state is drawn, and how much larger its change."""
    drawn = say("drawn as on the sheet")
    if state is not RoadState.SHEET:
        drawn = say("drawn {state}", state=column_name(state, supposed, show))
    if factor > 1:
        return say(
            "{drawn}, its change {factor} times; dashed: the sheet", drawn=drawn, factor=factor
        )
    return drawn


def change_drawn(table: RoadTable, state: RoadState) -> SideChange:
    """The change against the sheet that the drawing shows."""
    rake = table.figures[RoadSubject.RAKE, state].change
    wheelbase = table.figures[RoadSubject.WHEELBASE, state].change
    return SideChange(rake or 0.0, wheelbase or 0.0, table.rise_mm.get(state, 0.0))


def missing_words(missing: tuple[str, ...], proportions: SideProportions) -> str:
    """What the sheet lacks, and that the rest is drawn all the same."""
    lacking = dict.fromkeys((*missing, *proportions.stand_ins))
    if not lacking:
        return ""
    said = say(
        "Not on the sheet: {lacking}; drawn to usual proportions.", lacking=", ".join(lacking)
    )
    return f"{said} {say('No change of rake or trail without it.')}" if missing else said


def reference_words(table: RoadTable, show: Preferred) -> str:
    """At which height of the legs the sheet's figures are taken to hold."""
    if table.reference_mm is None:
        return say("The sheet's figures are taken to hold at {height}.", height=table.reference)
    height = f"{table.reference}, {show.show_length(table.reference_mm)}"
    return say("The sheet's figures are taken to hold at {height}.", height=height)


def _change(change: float | None, subject: RoadSubject, show: Preferred) -> str:
    if change is None:
        return ""
    number = _number(change, subject, show)
    if not _is_something(number):
        return ""
    return f"+{number}" if change > 0 else number


def _number(value: float, subject: RoadSubject, show: Preferred) -> str:
    """The figure without its unit, which stands once beside the headings."""
    if subject.is_angle:
        return show.show_angle(value).removesuffix("°")
    return _length(value, subject, show).rsplit(" ", 1)[0]


def _length(mm: float, subject: RoadSubject, show: Preferred) -> str:
    """A length; of the wheelbase a decimal less, for no one measures it so finely."""
    return show.show_length(mm, fine=-1 if subject is RoadSubject.WHEELBASE else 0)


def _is_something(text: str) -> bool:
    return any(digit in text for digit in "123456789")
