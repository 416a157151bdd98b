"""What stands in an order: the joints of one bike, and what is done between them.

A place is one joint with all its passes, or one activity. In tightening the stages of a joint
stand in its place; in loosening they come before it (cracked early, undone later). The trap:
the result must not depend on the order in which the joints were typed, so every place has a
rank of its own by default sequence, side and name.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Set
from dataclasses import dataclass
from functools import cache
from typing import Literal

from aligner.fastening.joints import Joint, UnusableJoint, joint_kinds
from aligner.fastening.steps import Activity, activities
from aligner.language import say

Work = Literal["tightening", "loosening"]
_SIDES = {"left": 0, "right": 1, "": 2}
#: Loosening ranks run the other way.
_DIRECTIONS = {"tightening": 1, "loosening": -1}


@dataclass(frozen=True)
class Place:
    """One place in the order.

    Attributes:
        key: names it for good; the steps' keys begin with it.
        rank: sorts it by default sequence, then side, then name.
        joint: the joint done here, if any.
        activity: the activity done here, if any (both for the stages of the stem nut).
        once_more: it repeats what another place has done.
    """

    key: str
    rank: tuple[int, int, str]
    joint: Joint | None = None
    activity: Activity | None = None
    once_more: bool = False


def places(
    joints: Iterable[Joint], work: Work, asked: Collection[str] = (), fork: str = ""
) -> list[Place]:
    """The places for the joints of one bike, by rank.

    Args:
        joints: in any order.
        work: tightening or loosening; loosening ranks run the other way.
        asked: activities wanted that are left out otherwise.
        fork: kind of the fork, which some activities need as others need a joint; "" if unknown.

    Raises:
        UnusableJoint: two joints have the same name.
    """
    found: list[Place] = []
    seen: set[str] = set()
    present: set[str] = {fork}
    for joint in joints:
        if joint.name in seen:
            raise UnusableJoint(
                joint.name, say("it stands there twice"), say("give each its own name")
            )
        seen.add(joint.name)
        present |= {joint.kind, joint_kinds()[joint.kind].group}
        found += _places_of(joint, work)
    if seen:
        found += _between(present, work, asked)
    return sorted(found, key=lambda place: place.rank)


def _places_of(joint: Joint, work: Work) -> Iterator[Place]:
    """Where one joint is done: its stages, and itself; in tightening these stand for it."""
    kind, side = joint_kinds()[joint.kind], _SIDES[joint.side]
    direction = _DIRECTIONS[work]
    stages = _stages(work).get(joint.kind) or _stages(work).get(kind.group, ())
    for stage in stages:
        key = f"{joint.kind}/{joint.name}/{stage.stage}"
        yield Place(key, (direction * stage.sequence, side, joint.name), joint, stage)
    if not stages or work == "loosening":
        sequence = kind.sequence
        if work == "loosening":
            sequence = kind.sequence_loosening or sequence
        rank = (direction * sequence, side, joint.name)
        yield Place(f"{joint.kind}/{joint.name}", rank, joint)


def _between(present: Set[str], work: Work, asked: Collection[str]) -> Iterator[Place]:
    """What is done between the joints: for those kinds and groups that are there, or for any."""
    for activity in activities().values():
        if activity.when != work or activity.per:
            continue
        if activity.only_if_asked and activity.activity not in asked:
            continue
        if not activity.needs or not present.isdisjoint(activity.needs):
            rank = (_DIRECTIONS[work] * activity.sequence, 2, activity.activity)
            yield Place(f"{activity.kind}/{activity.activity}", rank, activity=activity)


def repeated(place: Place, after: Iterable[Place], named: str) -> Place:
    """The place where `place` is done once more, behind all of `after`, which a rule calls `named`.

    It ranks straight behind them, so that it is done as soon as they are.
    """
    sequence = max(one.rank[0] for one in after)
    key = f"{place.key}/again after {named}"
    return Place(key, (sequence, 3, key), place.joint, place.activity, once_more=True)


@cache
def _stages(work: Work) -> dict[str, tuple[Activity, ...]]:
    """The stages of a joint, by its kind or group."""
    found: dict[str, tuple[Activity, ...]] = {}
    for activity in activities().values():
        if activity.when == work and activity.per:
            found[activity.per] = (*found.get(activity.per, ()), activity)
    return found
