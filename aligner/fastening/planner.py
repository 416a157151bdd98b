"""The tightening plan: every joint of the sheet, in order, in passes, each step with its reason.

The trap: done up in the wrong order a front end reaches every torque and is still wrong (the
top clamps before the caps, the brackets pulled against each other by the tubes). What comes
before what is in resources/order/, and the sheet's own rules go before it.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from aligner.fastening.arrangement import Arrangement, arrangement
from aligner.fastening.joints import Joint, TorqueRange, joint_kinds, pass_reasons
from aligner.fastening.places import Place
from aligner.fastening.precedence import Overridden
from aligner.fastening.rules import Rule
from aligner.fastening.steps import Activity, Step
from aligner.language import begun, marked, say, written

#: The bolts of a joint by what is turned: one, two, and a row of more.
_ONE = {
    "bolt": marked("{joint}, bolt {number}"),
    "nut": marked("{joint}, nut {number}"),
}
_TWO = {
    "bolt": marked("{joint}, bolts {first} and {last}"),
    "nut": marked("{joint}, nuts {first} and {last}"),
}
_ROW = {
    "bolt": marked("{joint}, bolts {first} to {last}"),
    "nut": marked("{joint}, nuts {first} to {last}"),
}
_ANY_ONE = marked("{joint}, piece {number}")
_ANY_TWO = marked("{joint}, pieces {first} and {last}")
_ANY_ROW = marked("{joint}, pieces {first} to {last}")


@dataclass(frozen=True)
class Recheck:
    """A joint that is checked again after some distance on the road.

    Attributes:
        joint: its name.
        bolts: their numbers in the plan.
        after_km: the distance.
        torque: as specified; None where it is not known.
    """

    joint: str
    bolts: tuple[int, ...]
    after_km: float
    torque: TorqueRange | None


@dataclass(frozen=True)
class Plan:
    """The checklist.

    Attributes:
        steps: first to last.
        overridden: default rules that gave way to the sheet, with the reasons.
        rechecks: what is checked again on the road, the nearest first.
    """

    steps: tuple[Step, ...]
    overridden: tuple[Overridden, ...] = ()
    rechecks: tuple[Recheck, ...] = ()


def plan(
    joints: Iterable[Joint],
    rules_on_sheet: Iterable[Rule] = (),
    *,
    check_in_line: bool = False,
    fork: str = "",
) -> Plan:
    """The tightening plan.

    Args:
        joints: the joints of one bike, in any order.
        rules_on_sheet: the maker's order, in any order; these go before the default rules.
        check_in_line: whether the legs are checked for being in line.
        fork: its kind ("air_assisted"), for what is done on such a fork whatever its joints.

    Raises:
        UnusableJoint: two joints have the same name.
        UnusableRule: a rule names nothing known.
        RingOfRules: the sheet's rules wait for each other.
    """
    joints = tuple(joints)
    asked = ("legs_in_line",) if check_in_line else ()
    found = arrangement(joints, rules_on_sheet, "tightening", asked, fork)
    numbers = _numbered(found)
    steps: list[Step] = []
    for place in found.places:
        if place.activity is not None:
            steps.append(_activity_step(place, place.activity, found))
        elif place.joint is not None:
            steps += _passes(place, place.joint, found, numbers[place.joint.name])
    return Plan(tuple(steps), found.overridden, _rechecks(joints, found, numbers))


def bolt_numbers(
    joints: Iterable[Joint], rules_on_sheet: Iterable[Rule] = ()
) -> dict[str, tuple[int, ...]]:
    """The bolts' numbers by the joint's name, as the plan gives them.

    Raises:
        AlignerError: as for `plan`.
    """
    return _numbered(arrangement(tuple(joints), rules_on_sheet, "tightening"))


def joint_title(joint: Joint, numbers: tuple[int, ...]) -> str:
    """What is turned, as the checklist calls it: "Left lower clamp, bolts 1 and 2"."""
    name = begun(joint.name)
    piece = joint_kinds()[joint.kind].piece
    if not numbers or (len(numbers) == 1 and not piece):
        return name
    if len(numbers) == 1:
        return say(_ONE.get(piece, _ANY_ONE), joint=name, number=numbers[0])
    text = _TWO.get(piece, _ANY_TWO) if len(numbers) == 2 else _ROW.get(piece, _ANY_ROW)
    return say(text, joint=name, first=min(numbers), last=max(numbers))


def reason_for(place: Place, found: Arrangement) -> tuple[str, str]:
    """Why a place stands where it stands when tightened, and where that comes from."""
    rule = found.sheet_reasons.get(place.key)
    if rule is not None:
        return rule.reason("tightening"), rule.source
    if place.activity is not None:
        return say(place.activity.reason), say(place.activity.source)
    rule = found.default_reasons.get(place.key)
    if rule is not None:
        return rule.reason("tightening", is_default=True), say(rule.source)
    kind = joint_kinds()[place.joint.kind if place.joint else ""]
    return say(kind.reason), say(kind.source)


def _activity_step(place: Place, activity: Activity, found: Arrangement) -> Step:
    joint = place.joint
    torque = None
    if joint is not None:
        torque = joint.seating if activity.kind == "seat" else joint.torque
        torque = torque if activity.kind != "turn" else None
    reason, source = reason_for(place, found)
    if joint is None:
        title = say(activity.title)
    else:
        turn = say("by the turn the manual gives")
        if joint.back_off_deg is not None:
            turn = say("by {angle}", angle=f"{written(joint.back_off_deg)}°")
        title = begun(say(activity.title, joint=joint_title(joint, ()), turn=turn))
    return Step(
        key=place.key,
        kind=activity.kind,
        title=say("{step}, once more", step=title) if place.once_more else title,
        reason=reason,
        source=source,
        joint=joint.name if joint else None,
        joint_kind=joint.kind if joint else "",
        side=joint.side if joint else "",
        bolt_count=joint.bolts if joint else 0,
        target_nm=torque.target_nm if torque else None,
        low_nm=torque.low_nm if torque else None,
        high_nm=torque.high_nm if torque else None,
        turn_deg=joint.back_off_deg if joint and activity.kind == "turn" else None,
        reads=activity.reads,
        caution=say(activity.caution),
        torque_missing=activity.kind in ("seat", "torque") and torque is None,
        relies_on=found.relies_on.get(place.key, ()),
        place=place.key,
        slack=found.slack.get(place.key, ()),
    )


def _passes(
    place: Place, joint: Joint, found: Arrangement, numbers: tuple[int, ...]
) -> Iterable[Step]:
    """One step a pass; a joint gone over once more has the full pass only."""
    fractions = (1.0,) if place.once_more else joint.fractions
    title = joint_title(joint, numbers)
    reason, source = reason_for(place, found)
    torque = joint.torque
    for number, fraction in enumerate(fractions, 1):
        is_again = number > 1 and fractions[number - 2] == 1
        if number > 1:
            role = "again" if is_again else "full" if fraction == 1 else "part"
            reason = say(pass_reasons()[role])
        yield Step(
            key=f"{place.key}/pass {number}",
            kind="torque",
            title=say("{step}, once more", step=title) if place.once_more else title,
            reason=reason,
            source=source,
            joint=joint.name,
            joint_kind=joint.kind,
            side=joint.side,
            bolts=numbers,
            bolt_count=joint.bolts,
            pass_number=number,
            passes=len(fractions),
            pass_words=_pass_words(fraction, is_again, joint.bolts) if len(fractions) > 1 else "",
            fraction=fraction,
            target_nm=torque.target_nm * fraction if torque else None,
            low_nm=torque.low_nm if torque and fraction == 1 else None,
            high_nm=torque.high_nm if torque and fraction == 1 else None,
            caution=say(joint_kinds()[joint.kind].caution),
            torque_missing=torque is None,
            relies_on=found.relies_on.get(place.key, ()),
            place=place.key,
            slack=found.slack.get(place.key, ()),
        )


def _pass_words(fraction: float, is_again: bool, bolts: int) -> str:
    if is_again and bolts == 1:
        return say("full, until it does not move")
    if is_again:
        return say("full, until neither moves") if bolts == 2 else say("full, until none moves")
    if fraction == 0.5:
        return say("half", meaning="pass")
    if fraction == 1:
        return say("full", meaning="pass")
    return f"{written(fraction * 100)} %"


def _numbered(found: Arrangement) -> dict[str, tuple[int, ...]]:
    """Numbers by joint, running through the whole plan, each joint's in the turn they go in."""
    numbers: dict[str, tuple[int, ...]] = {}
    following = 1
    for place in found.places:
        joint = place.joint
        if joint is None or joint.name in numbers:
            continue
        if not joint_kinds()[joint.kind].numbered:
            numbers[joint.name] = ()
            continue
        turns = _crosswise(joint.bolts) if joint.pattern == "crosswise" else range(joint.bolts)
        numbers[joint.name] = tuple(following + turn for turn in turns)
        following += joint.bolts
    return numbers


def _crosswise(bolts: int) -> list[int]:
    """Bolts counted from 0 round a circle, each next one as far across as there is."""
    if bolts % 2:
        return [turn * (bolts // 2) % bolts if bolts > 1 else 0 for turn in range(bolts)]
    half = bolts // 2
    return [turn // 2 + half * (turn % 2) for turn in range(bolts)]


def _rechecks(
    joints: Iterable[Joint], found: Arrangement, numbers: Mapping[str, tuple[int, ...]]
) -> tuple[Recheck, ...]:
    turn = {place.joint.name: n for n, place in enumerate(found.places) if place.joint is not None}
    due = [
        Recheck(joint.name, numbers[joint.name], joint.recheck_km, joint.torque)
        for joint in joints
        if joint.recheck_km is not None
    ]
    return tuple(sorted(due, key=lambda recheck: (recheck.after_km, turn[recheck.joint])))
