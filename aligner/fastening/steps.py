"""A step of the checklist, and what is done between the fasteners: acts, looks, hold points.

The trap: a step is known by its key, never by its number. Numbers move when a joint is added
to the sheet; ticks that were logged by number would then belong to other bolts.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Literal

from aligner.fastening.joints import Side
from aligner.fastening.order_tables import rows

StepKind = Literal["torque", "turn", "seat", "act", "hold", "look", "loosen"]
Reading = Literal["protrusion", "squaring", "in_line"]


@dataclass(frozen=True)
class Step:
    """One line of the checklist; its number is its place in the plan.

    Attributes:
        key: names the step for good ("lower_clamp/left lower clamp/pass 1").
        kind: what is done: torque, turn, seat, act, hold, look or loosen.
        title: what to do, in the trade's words; like every text here in the language that was
            spoken when the plan was made.
        reason: why it stands where it stands, in a sentence.
        source: where the reason comes from.
        joint: the joint's name; None where no fastener is turned.
        joint_kind: its kind; "" where there is none.
        side: the rider's left or right; "" for what stands in the middle.
        bolts: their numbers in the turn in which they go; numbers run through the whole plan.
            Empty where the joint is single and known by name (stem, bench work).
        bolt_count: how many bolts the joint has; 0 where there is no joint.
        pass_number: 1 for the first.
        passes: how many there are.
        pass_words: "half", "full", "full, until neither moves"; "" where there is one only.
        fraction: share of the specified torque in this pass; 1 where there are no passes.
        target_nm: torque to set in this pass in N·m, that is fraction times the specified one;
            None where it is not known or none is used.
        low_nm: least that is right in N·m; only in a full pass, None in a part one.
        high_nm: greatest that is right in N·m; likewise.
        turn_deg: the turn of a "turn" step in degrees, backwards; None where it is not known.
        reads: the reading a hold point waits for.
        caution: the danger, "" if none.
        torque_missing: this step needs a torque and the sheet has none.
        relies_on: keys of the hold points this step stands on; when one's reading changes and
            fails, this step is open again.
        place: key of the place in the order that it belongs to, with all its passes.
        slack: places whose joints must be slack while this step is done, in sets that many
            steps share.
        done_with: keys of later steps that leave this one behind: once one of them is ticked,
            this one is not asked for any more.
        deed: of a loosening step, what is done in a word ("Slacken"); "" elsewhere.
        upon: of a loosening step, its title without that word ("Left lower clamp, bolts 1 and
            2; draw its leg out"); "" elsewhere.
    """

    key: str
    kind: StepKind
    title: str
    reason: str
    source: str = ""
    joint: str | None = None
    joint_kind: str = ""
    side: Side = ""
    bolts: tuple[int, ...] = ()
    bolt_count: int = 0
    pass_number: int = 1
    passes: int = 1
    pass_words: str = ""
    fraction: float = 1.0
    target_nm: float | None = None
    low_nm: float | None = None
    high_nm: float | None = None
    turn_deg: float | None = None
    reads: Reading | None = None
    caution: str = ""
    torque_missing: bool = False
    relies_on: tuple[str, ...] = ()
    place: str = ""
    slack: tuple[frozenset[str], ...] = ()
    done_with: tuple[str, ...] = ()
    deed: str = ""
    upon: str = ""


@dataclass(frozen=True)
class Activity:
    """Something done between the fasteners, from resources/order/activities.json, in English.

    Attributes:
        activity: the name rules use ("protrusion_equal").
        when: "tightening" or "loosening".
        kind: of the step it becomes.
        sequence: place in the default order, on the same scale as the joint kinds.
        needs: joint kinds or groups, one of which must be on the sheet; () for always.
        title: of the step; may hold {joint} and {turn}.
        reason: why it stands where it does.
        source: where this row comes from.
        caution: the danger, "" if none.
        per: a joint kind; one step is made for each joint of it, in place of the joint's own.
        stage: the last part of such a step's key.
        deed: of such a step in the loosening list, what is done ("Crack").
        upon: likewise, the rest of its title; may hold {joint}.
        repeats: the activity that is done again here.
        reads: the reading it waits for.
        only_if_asked: left out until the job or a rule on the sheet asks for it.
        done_with: joint kinds, groups or activities whose tick leaves this one behind.
    """

    activity: str
    when: str
    kind: StepKind
    sequence: int
    needs: tuple[str, ...]
    title: str
    reason: str
    source: str
    caution: str = ""
    per: str = ""
    stage: str = ""
    deed: str = ""
    upon: str = ""
    repeats: str = ""
    reads: Reading | None = None
    only_if_asked: bool = False
    done_with: tuple[str, ...] = ()


@cache
def activities() -> Mapping[str, Activity]:
    """Every activity, by name.

    Raises:
        UnusableTable: resources/order/activities.json has a row that cannot be used.
    """
    texts = dict.fromkeys(["activity", "when", "kind", "title", "reason", "source"], str)
    optional = dict.fromkeys(["caution", "per", "stage", "deed", "upon", "repeats", "reads"], str)
    found = rows(
        "activities",
        texts | {"sequence": int, "needs": list},
        optional | {"only_if_asked": bool, "done_with": list},
    )
    for row in found:
        row.update({name: tuple(row.get(name, ())) for name in ("needs", "done_with")})
    return {row["activity"]: Activity(**row) for row in found}
