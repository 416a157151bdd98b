"""The joints of a front end: what kinds there are, and one joint as the sheet gives it.

The trap: a torque that is not known must stay unknown. It is None here, and nothing in this
folder fills it from a bolt's size, from the other side or from another bike.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from typing import Literal, get_args

from aligner.errors import AlignerError
from aligner.fastening.order_tables import rows, table
from aligner.language import marked, say, written

Side = Literal["left", "right", ""]
Pattern = Literal["alternating", "crosswise"]
_SIDES, _PATTERNS = get_args(Side), get_args(Pattern)


class UnusableJoint(AlignerError):
    """A joint cannot be planned as it is given."""


@dataclass(frozen=True)
class TorqueRange:
    """A torque as specified: what to aim for, and from where to where it is right.

    Attributes:
        target_nm: to aim for, in N·m.
        low_nm: least that is right, in N·m; equal to the target where no tolerance is known.
        high_nm: greatest that is right, in N·m.
    """

    target_nm: float
    low_nm: float
    high_nm: float

    def __post_init__(self) -> None:
        """Refuse what cannot be a torque: UnusableJoint."""
        if not 0 < self.low_nm <= self.target_nm <= self.high_nm < math.inf:
            raise UnusableJoint(
                say("torque"),
                say(
                    "aim for {target}, from {low} to {high} N·m",
                    target=written(self.target_nm),
                    low=written(self.low_nm),
                    high=written(self.high_nm),
                ),
                say("give torques above zero, the lowest first and the target between them"),
            )


@dataclass(frozen=True)
class JointKind:
    """One kind of joint, from resources/order/joint_kinds.json, its words in English.

    Attributes:
        kind: the name rules and sheets use ("lower_clamp").
        title: as the trade calls it.
        group: a name that rules can use for several kinds at once ("clamps").
        sided: whether it comes as a left and a right one: "always", "never" or "either".
        description: what it is, for somebody who fills in a sheet.
        sequence: place in the default order; small comes first.
        clamp: whether several bolts close one gap, and so want passes.
        numbered: whether its bolts carry numbers on the drawing.
        piece: what is turned, "bolt" or "nut"; "" where the joint is itself what is turned.
        reason: why it stands where it does, where no rule says so.
        reason_loosening: the same for the loosening list.
        caution: the danger in tightening it, "" if none.
        caution_loosening: the danger in undoing it, "" if none.
        loosening_verb: the trade's word for undoing it.
        loosening_also: what is done in the same breath, "" if nothing.
        sequence_loosening: its place when loosening on the same scale, counted downwards; 0 where
            it is the reverse of tightening.
        holds: what can move once it is let go: "bracket", the lower bracket and the leg in it;
            "leg", its leg where no lower clamp grips that; "" where nothing measured does.
        source: where this row comes from.
    """

    kind: str
    title: str
    group: str
    sided: str
    description: str
    sequence: int
    clamp: bool
    numbered: bool
    reason: str
    reason_loosening: str
    source: str
    piece: str = ""
    caution: str = ""
    caution_loosening: str = ""
    loosening_verb: str = marked("Slacken")
    loosening_also: str = ""
    sequence_loosening: int = 0
    holds: str = ""


@dataclass(frozen=True)
class Joint:
    """One joint as the sheet gives it: a nut, a cap, or the bolts of one clamp.

    Attributes:
        name: as the checklist calls it ("left lower clamp"); unique on the sheet.
        kind: a `JointKind.kind`.
        side: the rider's left or right; "" for what stands in the middle.
        bolts: how many bolts it has.
        torque: None where it is not known.
        passes: shares of the torque, one a pass, rising to 1; None for the default.
        pattern: in which turn the bolts go.
        seating: torque that seats the head bearing before it is backed off (stem nut only).
        back_off_deg: by how much it is then backed off, in degrees (stem nut only).
        recheck_km: distance on the road after which it is checked again.
    """

    name: str
    kind: str
    side: Side = ""
    bolts: int = 1
    torque: TorqueRange | None = None
    passes: tuple[float, ...] | None = None
    pattern: Pattern = "alternating"
    seating: TorqueRange | None = None
    back_off_deg: float | None = None
    recheck_km: float | None = None

    def __post_init__(self) -> None:
        """Refuse what cannot be planned: UnusableJoint."""
        if not self.name.strip():
            raise UnusableJoint(
                say("fastener"), say("a joint without a name"), say("name each joint")
            )
        if self.kind not in joint_kinds():
            raise self._refused(
                say("unknown kind “{kind}”", kind=self.kind),
                say("the kinds are {kinds}", kinds=", ".join(joint_kinds())),
            )
        if self.side not in _SIDES:
            raise self._refused(
                say("side “{side}”", side=self.side), say("give left or right, or leave it out")
            )
        if self.bolts < 1:
            raise self._refused(
                say("{count} bolts", count=self.bolts), say("give one bolt or more")
            )
        if self.pattern not in _PATTERNS:
            raise self._refused(
                say("pattern “{pattern}”", pattern=self.pattern),
                say("the patterns are {patterns}", patterns=", ".join(_PATTERNS)),
            )
        if self.passes is not None and not _rises_to_full(self.passes):
            raise self._refused(
                say("passes {shares}", shares=", ".join(map(written, self.passes)))
                if self.passes
                else say("passes none"),
                say("give shares above 0 that do not fall and end at 1 (the full torque)"),
            )
        if self.back_off_deg is not None and not 0 < self.back_off_deg < math.inf:
            raise self._refused(
                say("back off by {angle}", angle=f"{written(self.back_off_deg)}°"),
                say("give a turn above zero"),
            )
        if self.recheck_km is not None and not 0 < self.recheck_km < math.inf:
            raise self._refused(
                say("check again after {distance}", distance=f"{written(self.recheck_km)} km"),
                say("give a distance above zero"),
            )

    @property
    def fractions(self) -> tuple[float, ...]:
        """Shares of the torque, one a pass: its own, or the default for its kind."""
        if self.passes is not None:
            return self.passes
        return default_passes() if self.bolts > 1 and joint_kinds()[self.kind].clamp else (1.0,)

    def _refused(self, understood: str, wanted: str) -> UnusableJoint:
        return UnusableJoint(self.name, understood, wanted)


def _rises_to_full(passes: tuple[float, ...]) -> bool:
    rising = all(a <= b for a, b in pairwise(passes))
    return bool(passes) and passes[0] > 0 and rising and passes[-1] == 1


@cache
def joint_kinds() -> Mapping[str, JointKind]:
    """Every kind of joint, by name, in the default order.

    Raises:
        UnusableTable: resources/order/joint_kinds.json has a row that cannot be used.
    """
    texts = ["kind", "title", "group", "sided", "description", "reason", "reason_loosening"]
    required = dict.fromkeys([*texts, "source"], str) | {
        "sequence": int,
        "clamp": bool,
        "numbered": bool,
    }
    more = ["piece", "caution", "caution_loosening", "loosening_verb", "loosening_also", "holds"]
    optional = dict.fromkeys(more, str) | {"sequence_loosening": int}
    found = [JointKind(**row) for row in rows("joint_kinds", required, optional)]
    return {kind.kind: kind for kind in sorted(found, key=lambda kind: kind.sequence)}


@cache
def default_passes() -> tuple[float, ...]:
    """Shares of the torque for a clamp with more than one bolt, from passes.json."""
    return tuple(table("passes")["default_fractions"])


@cache
def pass_reasons() -> Mapping[str, str]:
    """Why a later pass is made, in English: by "part", "full" and "again"."""
    texts = dict.fromkeys(["role", "reason", "source"], str)
    return {row["role"]: row["reason"] for row in rows("passes", texts, {})}
