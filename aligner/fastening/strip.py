"""The loosening plan, made from the same rules turned round.

The trap: what held in one order lets go in the reverse one. A cap cracked after the lower clamp
is open turns with its tube, and a caliper taken off without a hook hangs by its hose.
"""

from __future__ import annotations

from collections.abc import Iterable

from aligner.fastening.arrangement import Arrangement, arrangement
from aligner.fastening.joints import Joint, joint_kinds
from aligner.fastening.places import Place
from aligner.fastening.planner import Plan, bolt_numbers, joint_title
from aligner.fastening.rules import Rule
from aligner.fastening.steps import Step


def strip(joints: Iterable[Joint], rules_on_sheet: Iterable[Rule] = ()) -> Plan:
    """The loosening plan: steps of kind "loosen", "act" and "look", one for each joint.

    The bolts carry the numbers of the tightening plan, so that both lists speak of the same.

    Args:
        joints: the joints of one bike, in any order.
        rules_on_sheet: the maker's order for tightening; turned round here, but for a rule
            that names an act of loosening or says that it is for loosening.

    Raises:
        UnusableJoint: two joints have the same name.
        UnusableRule: a rule names nothing known.
        RingOfRules: the sheet's rules wait for each other.
    """
    joints, rules = tuple(joints), tuple(rules_on_sheet)
    numbers = bolt_numbers(joints, rules)
    found = arrangement(joints, rules, "loosening")
    return Plan(
        tuple(_loosening_step(place, found, numbers) for place in found.places), found.overridden
    )


def _loosening_step(place: Place, found: Arrangement, numbers: dict[str, tuple[int, ...]]) -> Step:
    reason, source = _reason(place, found)
    if place.joint is None:
        assert place.activity is not None
        activity = place.activity
        return Step(
            key=place.key,
            kind=activity.kind,
            title=activity.title,
            reason=reason,
            source=source,
            reads=activity.reads,
            caution=activity.caution,
        )
    joint = place.joint
    kind = joint_kinds()[joint.kind]
    title = joint_title(joint, numbers[joint.name])
    return Step(
        key=f"{place.key}/loosen",
        kind="loosen",
        title=f"{kind.loosening_verb} {title[0].lower()}{title[1:]}",
        reason=reason,
        source=source,
        joint=joint.name,
        joint_kind=joint.kind,
        side=joint.side,
        bolts=numbers[joint.name],
        bolt_count=joint.bolts,
        caution=kind.caution_loosening,
    )


def _reason(place: Place, found: Arrangement) -> tuple[str, str]:
    rule = found.sheet_reasons.get(place.key)
    if rule is None and place.activity is not None:
        return place.activity.reason, place.activity.source
    if rule is None:
        rule = found.default_reasons.get(place.key)
    if rule is not None:
        return rule.reason("loosening"), rule.source
    assert place.joint is not None
    kind = joint_kinds()[place.joint.kind]
    return kind.reason_loosening, kind.source
