"""The loosening plan, made from the same rules turned round.

The trap: what held in one order lets go in the reverse one. A cap cracked after the lower clamp
is open turns with its tube, and a damper-rod bolt left until the spring is out turns with its rod.
So some joints stand here twice: cracked while something else still holds, undone later.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from aligner.fastening.arrangement import Arrangement, arrangement
from aligner.fastening.joints import Joint, joint_kinds
from aligner.fastening.places import Place
from aligner.fastening.planner import Plan, bolt_numbers, joint_title
from aligner.fastening.rules import Rule
from aligner.fastening.steps import Activity, Step
from aligner.language import begun, inside, say


def strip(joints: Iterable[Joint], rules_on_sheet: Iterable[Rule] = (), *, fork: str = "") -> Plan:
    """The loosening plan: steps of kind "loosen", "act" and "look".

    Each joint is undone once, and some are cracked before. The bolts carry the numbers of the
    tightening plan, so that both lists speak of the same.

    Args:
        joints: the joints of one bike, in any order.
        rules_on_sheet: the maker's order for tightening; turned round here, but for a rule
            that names an act of loosening or says that it is for loosening.
        fork: its kind ("air_assisted"), for what is done on such a fork whatever its joints.

    Raises:
        UnusableJoint: two joints have the same name.
        UnusableRule: a rule names nothing known.
        RingOfRules: the sheet's rules wait for each other.
    """
    joints, rules = tuple(joints), tuple(rules_on_sheet)
    numbers = bolt_numbers(joints, rules)
    found = arrangement(joints, rules, "loosening", fork=fork)
    keys = _keys_by_name(found.places)
    return Plan(
        tuple(_loosening_step(place, found, numbers, keys) for place in found.places),
        found.overridden,
    )


def _loosening_step(
    place: Place,
    found: Arrangement,
    numbers: dict[str, tuple[int, ...]],
    keys: dict[str, list[str]],
) -> Step:
    reason, source = _reason(place, found)
    joint, activity = place.joint, place.activity
    if joint is None:
        assert activity is not None
        return Step(
            key=place.key,
            kind=activity.kind,
            title=say(activity.title),
            reason=reason,
            source=source,
            reads=activity.reads,
            caution=say(activity.caution),
            done_with=tuple(key for name in activity.done_with for key in keys.get(name, ())),
        )
    undone = _key_of_undoing(joint)
    said = _said_of(joint, activity, joint_title(joint, numbers[joint.name]))
    caution = activity.caution if activity else joint_kinds()[joint.kind].caution_loosening
    return Step(
        key=place.key if activity else undone,
        kind="loosen",
        title=begun(said.title),
        reason=reason,
        source=source,
        joint=joint.name,
        joint_kind=joint.kind,
        side=joint.side,
        bolts=numbers[joint.name],
        bolt_count=joint.bolts,
        caution=say(caution),
        done_with=(undone,) if activity else (),
        deed=said.deed,
        upon=said.upon,
    )


class _Said(NamedTuple):
    """A loosening step in words: whole, and as what is done and what it is done to."""

    title: str
    deed: str
    upon: str


def _said_of(joint: Joint, activity: Activity | None, words: str) -> _Said:
    """How a joint is cracked, or undone where there is no activity; `words` are its title."""
    if activity is not None:
        return _Said(
            say(activity.title, joint=inside(words)),
            say(activity.deed),
            begun(say(activity.upon, joint=inside(words))),
        )
    kind = joint_kinds()[joint.kind]
    deed, also = say(kind.loosening_verb), say(kind.loosening_also)
    if also:
        title = say("{verb} {joint}; {also}", verb=deed, joint=inside(words), also=also)
        return _Said(title, deed, f"{words}; {also}")
    return _Said(say("{verb} {joint}", verb=deed, joint=inside(words)), deed, words)


def _keys_by_name(places: Iterable[Place]) -> dict[str, list[str]]:
    """The keys of the steps that undo a kind or group of joints, or that an activity makes."""
    keys: dict[str, list[str]] = {}
    for place in places:
        if place.activity is not None:
            keys.setdefault(place.activity.activity, []).append(place.key)
        elif place.joint is not None:
            kind = joint_kinds()[place.joint.kind]
            for name in (kind.kind, kind.group):
                keys.setdefault(name, []).append(_key_of_undoing(place.joint))
    return keys


def _key_of_undoing(joint: Joint) -> str:
    return f"{joint.kind}/{joint.name}/loosen"


def _reason(place: Place, found: Arrangement) -> tuple[str, str]:
    rule = found.sheet_reasons.get(place.key)
    if rule is not None:
        return rule.reason("loosening"), rule.source
    if place.activity is not None:
        return say(place.activity.reason), say(place.activity.source)
    rule = found.default_reasons.get(place.key)
    if rule is not None:
        return rule.reason("loosening", is_default=True), say(rule.source)
    assert place.joint is not None
    kind = joint_kinds()[place.joint.kind]
    return say(kind.reason_loosening), say(kind.source)
