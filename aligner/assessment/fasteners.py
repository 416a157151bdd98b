"""The sheet's fasteners as the planner takes them, and what there is to ask about each.

The trap: a fastener that cannot be planned must not be left off the list in silence, or it is
the bolt that is forgotten. So nothing is planned until every one of them can be.
"""

from __future__ import annotations

from aligner.assessment.notice import Notice, attention, note
from aligner.errors import AlignerError
from aligner.fastening.bolt_limits import question_torque
from aligner.fastening.joints import Joint, TorqueRange, joint_kinds
from aligner.fastening.rules import Rule
from aligner.fastening.thread import Thread, parse_thread
from aligner.fastening.torque import (
    PrintedRange,
    PrintedTorque,
    printed_pair_disagreement,
    printed_torque,
)
from aligner.language import begun, say
from aligner.sheet import Fastener, Sheet, TorqueSpecification
from aligner.sheet.quantities import Torque


def joints_of(sheet: Sheet) -> tuple[Joint, ...]:
    """Every fastener of a sheet as the planner takes it.

    Raises:
        UnusableJoint: one of them cannot be planned as it is given.
    """
    return tuple(joint_of(fastener) for fastener in sheet.fasteners)


def rules_of(sheet: Sheet) -> tuple[Rule, ...]:
    """The maker's rules of a sheet as the planner takes them."""
    return tuple(
        Rule(rule.kind, rule.first, rule.then, rule.because, rule.source) for rule in sheet.rules
    )


def joint_of(fastener: Fastener) -> Joint:
    """A fastener of the sheet as the planner takes it.

    Raises:
        UnusableJoint: it cannot be planned as it is given.
    """
    return Joint(
        name=fastener.name,
        kind=fastener.kind,
        side=fastener.side.value if fastener.side else "",
        bolts=fastener.bolts,
        torque=_range_of(fastener.torque),
        passes=tuple(share.value / 100 for share in fastener.passes) or None,
        pattern=fastener.pattern.value,
        back_off_deg=fastener.back_off.value if fastener.back_off else None,
        seating=_range_of(fastener.seating),
        recheck_km=fastener.again_after.value if fastener.again_after else None,
    )


def unplanned(sheet: Sheet) -> tuple[Notice, ...]:
    """Why the fasteners cannot be planned, one notice for each that stands in the way."""
    found = []
    for fastener in sheet.fasteners:
        try:
            joint_of(fastener)
        except AlignerError as error:
            text = say("There is no list until this is put right: {error}.", error=error)
            found.append(attention(f"sheet.fasteners.{fastener.name}", text))
    return tuple(found)


def fastener_notices(sheet: Sheet) -> tuple[Notice, ...]:
    """What there is to ask about the fasteners: torques, threads, sides."""
    found: list[Notice] = []
    for fastener in sheet.fasteners:
        found += _missing(fastener)
        found += _side(fastener)
        found += _torque_questions(fastener)
        found += _disagreements(fastener)
    return tuple(found)


def _missing(fastener: Fastener) -> list[Notice]:
    """A value without which a step cannot be done, and where it should come from."""
    where = f"sheet.fasteners.{fastener.name}"
    found = []
    if fastener.torque is None:
        found.append(
            attention(
                f"{where}.torque",
                say(
                    "The torque of the {fastener} is missing: take it from the maker's manual "
                    "for this model and year, the table of torques or the fork chapter. It is "
                    "never guessed here.",
                    fastener=fastener.name,
                ),
            )
        )
    if fastener.kind == "stem_nut" and fastener.seating is None:
        found.append(
            attention(
                f"{where}.seating",
                say(
                    "The torque that seats the bearing under the {fastener} is missing: take it "
                    "from the steering chapter of the maker's manual. It is never guessed here.",
                    fastener=fastener.name,
                ),
            )
        )
    if fastener.kind == "stem_nut" and fastener.back_off is None:
        found.append(
            attention(
                f"{where}.back_off",
                say(
                    "How far the {fastener} is backed off after seating is missing: take it from "
                    "the steering chapter of the maker's manual.",
                    fastener=fastener.name,
                ),
            )
        )
    return found


def _side(fastener: Fastener) -> list[Notice]:
    kind = joint_kinds().get(fastener.kind)
    where = f"sheet.fasteners.{fastener.name}.side"
    if kind is None:
        return []
    if kind.sided == "always" and fastener.side is None:
        text = say(
            "The {fastener} has no side: say whether it is the rider's left or right.",
            fastener=fastener.name,
        )
        return [attention(where, text)]
    if kind.sided == "never" and fastener.side is not None:
        text = say(
            "The {fastener} stands in the middle of the machine: leave its side out.",
            fastener=fastener.name,
        )
        return [note(where, text)]
    return []


def _torque_questions(fastener: Fastener) -> list[Notice]:
    """A torque far out for its bolt, or a thread by which none can be judged."""
    if fastener.thread is None:
        return []
    try:
        thread = parse_thread(fastener.thread)
    except AlignerError as error:
        text = say(
            "{error}; until then the torque of the {fastener} is not held against it.",
            error=error,
            fastener=fastener.name,
        )
        return [note(f"sheet.fasteners.{fastener.name}.thread", text)]
    found = []
    for field, torque in (("torque", fastener.torque), ("seating", fastener.seating)):
        asked = _question(torque, thread, fastener.strength_class) if torque else None
        if asked:
            text = f"{begun(fastener.name)}: {asked}"
            found.append(attention(f"sheet.fasteners.{fastener.name}.{field}", text))
    return found


def _question(torque: TorqueSpecification, thread: Thread, strength_class: str | None) -> str:
    """What there is to ask about the largest value typed, else the smallest; "" if nothing."""
    for typed in (torque.high or torque.nominal, torque.low):
        if typed is None:
            continue
        asked = question_torque(typed.value, typed.unit, thread, strength_class)
        if asked is not None:
            return str(asked)
    return ""


def _disagreements(fastener: Fastener) -> list[Notice]:
    """Two units printed side by side that are not the same torque."""
    found = []
    for field, torque in (("torque", fastener.torque), ("seating", fastener.seating)):
        pair = _printed_pair(torque) if torque else None
        apart = printed_pair_disagreement(*pair) if pair else None
        if apart is None:
            continue
        where = f"sheet.fasteners.{fastener.name}.{field}.also_printed"
        text = f"{begun(fastener.name)}: {apart}."
        if apart.is_cut_copy:
            first = say("The value typed first is the one used here.")
            found.append(note(where, f"{text} {first}"))
        else:
            found.append(attention(where, f"{text} {say('Look at the manual again.')}"))
    return found


def _printed_pair(torque: TorqueSpecification) -> tuple[PrintedRange, PrintedRange] | None:
    also = torque.also_printed
    if also is None:
        return None
    first = _printed(torque.low or torque.nominal, torque.high or torque.nominal)
    second = _printed(also.low or also.nominal, also.high or also.nominal)
    if first is None or second is None or (torque.nominal is None) != (also.nominal is None):
        return None
    return first, second


def _printed(low: Torque | None, high: Torque | None) -> PrintedRange | None:
    ends = (_as_printed(low), _as_printed(high))
    return PrintedRange(ends[0], ends[1]) if ends[0] and ends[1] else None


def _as_printed(torque: Torque | None) -> PrintedTorque | None:
    """`None` for what has no last digit, such as a fraction."""
    if torque is None:
        return None
    try:
        return printed_torque(torque.number, torque.unit)
    except AlignerError:
        return None


def _range_of(torque: TorqueSpecification | None) -> TorqueRange | None:
    return TorqueRange(torque.target_nm, torque.low_nm, torque.high_nm) if torque else None
