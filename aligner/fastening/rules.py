"""The rules of the order, the default ones and the maker's, and what each of them speaks of.

The trap: a rule that names something misspelt would bind nothing and nobody would notice. A
name that is neither a joint, a kind, a group nor an activity is refused.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from typing import Literal, get_args

from aligner.errors import AlignerError
from aligner.fastening.joints import joint_kinds
from aligner.fastening.order_tables import rows
from aligner.fastening.places import Place, Work
from aligner.fastening.steps import activities
from aligner.language import marked, say

RuleKind = Literal["before", "while_slack", "after_hold", "again_after"]
_PHRASES = {
    "before": marked("“{first}” before “{then}”"),
    "while_slack": marked("“{first}” while “{then}” is slack"),
    "after_hold": marked("“{then}” after the hold point “{first}”"),
    "again_after": marked("“{then}” again after “{first}”"),
}


class UnusableRule(AlignerError):
    """A rule of the order cannot be followed as it is written."""


@dataclass(frozen=True)
class Rule:
    """One rule of the order; whatever its kind, `first` stands before `then`.

    Attributes:
        kind: "before": first is done before then. "while_slack": first is done while then is
            slack, so it is tightened before then, and loosened after then has been let go.
            "after_hold": then waits for the hold point first and is open again when that
            reading changes. "again_after": after first, then is done once more.
        first: a joint's name, a joint kind, a group of kinds, or an activity.
        then: likewise.
        because: the reason, in a sentence.
        source: where the rule comes from.
        because_loosening: the reason when the rule is turned round for loosening.
        when: "both", or the only work the rule is for: "tightening" or "loosening".
    """

    kind: RuleKind
    first: str
    then: str
    because: str = ""
    source: str = ""
    because_loosening: str = ""
    when: Literal["both", "tightening", "loosening"] = "both"

    def __post_init__(self) -> None:
        """Refuse an unknown kind: UnusableRule."""
        if self.kind not in get_args(RuleKind):
            raise UnusableRule(
                self.name,
                say("unknown kind “{kind}”", kind=self.kind),
                say("give {kinds}", kinds=", ".join(get_args(RuleKind))),
            )

    @property
    def name(self) -> str:
        """The rule as a person would quote it."""
        if self.kind not in _PHRASES:
            return say("“{first}”, “{then}”", first=self.first, then=self.then)
        return say(_PHRASES[self.kind], first=self.first, then=self.then)

    def reason(self, work: Work, *, is_default: bool = False) -> str:
        """Why the later one of the two comes later, in a sentence.

        Args:
            work: tightening or loosening.
            is_default: the rule is one of the program's own, so its words are said in the
                language spoken; those of a sheet stay as they were written.
        """
        is_own_way = work == "tightening" or self.when == "loosening"
        own_words = self.because if is_own_way else self.because_loosening
        if own_words:
            return say(own_words) if is_default else own_words
        if is_own_way:
            return say("The sheet's own order: {rule}.", rule=self.name)
        return say(
            "Undone in the reverse of the order for tightening, which is {rule}.", rule=self.name
        )


@cache
def default_rules() -> tuple[Rule, ...]:
    """The default order, firmest rule first, from resources/order/rules.json, in English.

    Raises:
        UnusableTable: a row of that file cannot be used.
    """
    required = dict.fromkeys(["when", "kind", "first", "then", "because", "source"], str)
    return tuple(Rule(**row) for row in rows("rules", required, {"because_loosening": str}))


class Names:
    """What the names in rules stand for, among the places of one piece of work.

    A joint's name goes before a kind of the same name, a kind before a group, a group before an
    activity. In loosening a joint, its kind and its group mean its undoing; that it is cracked
    before is an activity with a name of its own.
    """

    def __init__(self, places: Iterable[Place], joint_names: Iterable[str]) -> None:
        by_joint: dict[str, list[str]] = {name: [] for name in joint_names}
        shared: dict[str, list[str]] = {name: [] for name in activities()}
        for kind in joint_kinds().values():
            shared[kind.group] = []
            shared[kind.kind] = []
        for place in places:
            is_cracked = place.activity is not None and place.activity.when == "loosening"
            if place.joint is not None and not is_cracked:
                by_joint[place.joint.name].append(place.key)
                shared[place.joint.kind].append(place.key)
                shared[joint_kinds()[place.joint.kind].group].append(place.key)
            if place.activity is not None:
                shared[place.activity.activity].append(place.key)
        self._by_joint = {name: frozenset(keys) for name, keys in by_joint.items()}
        self._shared = {name: frozenset(keys) for name, keys in shared.items()}

    def ends(self, rule: Rule, *, from_sheet: bool) -> tuple[frozenset[str], frozenset[str]]:
        """The places a rule's `first` and `then` stand for; empty where none is on the sheet.

        Where one end is part of the other ("this clamp before the clamps"), the larger is
        taken without the smaller.

        Raises:
            UnusableRule: a name stands for nothing known, or both names for the same.
        """
        if from_sheet:
            self._check(rule)
        first = self._keys(rule.first, from_sheet=from_sheet)
        then = self._keys(rule.then, from_sheet=from_sheet)
        if first & then:
            if first == then and from_sheet:
                raise UnusableRule(
                    rule.name, say("both names are the same"), say("name two joints")
                )
            first, then = (first - then, then) if then < first else (first, then - first)
        return first, then

    def _keys(self, name: str, *, from_sheet: bool) -> frozenset[str]:
        if from_sheet and name in self._by_joint:
            return self._by_joint[name]
        return self._shared[name]

    def _check(self, rule: Rule) -> None:
        for name in (rule.first, rule.then):
            if name not in self._by_joint and name not in self._shared:
                raise UnusableRule(
                    rule.name,
                    say("“{name}” is not known", name=name),
                    say("give a joint's name as on the sheet, a joint kind, or an activity"),
                )
        if rule.kind == "after_hold" and rule.first not in self._by_joint:
            activity = activities().get(rule.first)
            if activity is None or activity.kind != "hold":
                holds = ", ".join(n for n, found in activities().items() if found.kind == "hold")
                raise UnusableRule(
                    rule.name,
                    say("“{name}” is no hold point", name=rule.first),
                    say("the hold points are {names}", names=holds),
                )
