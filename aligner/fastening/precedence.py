"""The sheet's rules against the default ones: which default rules give way, and why.

A sheet rule takes out of a default rule exactly the pairs it turns round. Where rings are left,
the default rules are taken from the firmest (the highest row of their file) down, and each is
kept that makes no ring with the sheet's and those already kept. One that does gives way as a
whole; its joints keep to the default sequence as far as the rest allows. Nothing gives way in
silence. A ring of sheet rules alone is the sheet's own contradiction and refused.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from aligner.fastening.order import Link, Ring, knotted, ordered, ring, way
from aligner.fastening.rules import Rule, UnusableRule
from aligner.language import say


class RingOfRules(UnusableRule):
    """Rules on the sheet wait for each other.

    Attributes:
        rules: the rules of the ring, each standing before the next.
        places: what they put in a ring.
    """

    def __init__(self, found: Ring[Rule]) -> None:
        self.rules = tuple(link.rule for link in found.links)
        self.places = found.places
        quoted = _quoted(dict.fromkeys(self.rules))
        super().__init__(
            say("order rules"),
            say("they run in a ring: {rules}", rules=quoted),
            say("take one of them away"),
        )


@dataclass(frozen=True)
class Overridden:
    """A default rule that gave way to the sheet.

    Attributes:
        rule: the default rule, with its reason.
        by: the rules on the sheet that stand against it.
        wholly: False where it still holds for other joints than those the sheet speaks of.
    """

    rule: Rule
    by: tuple[Rule, ...]
    wholly: bool

    def __str__(self) -> str:
        return self.because

    @property
    def because(self) -> str:
        """What gave way to what, with both reasons, in one sentence."""
        return say(
            "The sheet's {rules} takes the place of the usual {usual} ({reason}).",
            rules=_quoted(self.by),
            usual=self.rule.name,
            reason=say(self.rule.because).rstrip("."),
        )


@dataclass(frozen=True)
class Precedence:
    """The order of the places, and the rules that made it.

    Attributes:
        order: keys of the places, first to last.
        sheet: links of the sheet's rules.
        default: links of the default rules that still stand, firmest first.
        overridden: what gave way, firmest first.
    """

    order: tuple[str, ...]
    sheet: tuple[Link[Rule], ...]
    default: tuple[Link[Rule], ...]
    overridden: tuple[Overridden, ...]


def precedence(
    ranked: Sequence[str], sheet: Sequence[Link[Rule]], default: Sequence[Link[Rule]]
) -> Precedence:
    """The order that the sheet's rules allow, and of the default rules as many as it can keep.

    Args:
        ranked: keys of the places by default sequence.
        sheet: links of the sheet's rules.
        default: links of the default rules, firmest first.

    Raises:
        RingOfRules: the sheet's rules wait for each other.
    """
    kept, turned_round = _without_reversed(default, sheet)
    loose: dict[Rule, Overridden] = {}
    order = ordered(ranked, [*sheet, *kept])
    if len(order) < len(ranked):
        own = ordered(ranked, sheet)
        contradiction = ring(*knotted(ranked, sheet, own)) if len(own) < len(ranked) else None
        if contradiction is not None:
            raise RingOfRules(contradiction)
        loose = _loose(*knotted(ranked, [*sheet, *kept], order), default)
        kept = [link for link in kept if link.rule not in loose]
        order = ordered(ranked, [*sheet, *kept])
    overridden = []
    for rule in dict.fromkeys(link.rule for link in default):
        told = [one[rule] for one in (turned_round, loose) if rule in one]
        if told:
            by = tuple(dict.fromkeys(other for one in told for other in one.by))
            overridden.append(Overridden(rule, by, wholly=any(one.wholly for one in told)))
    return Precedence(tuple(order), tuple(sheet), tuple(kept), tuple(overridden))


def _quoted(rules: Iterable[Rule]) -> str:
    """Rules of the sheet, each with its reason as it is written there."""
    return "; ".join(
        f"{rule.name} ({rule.because.rstrip('.') or say('no reason given')})" for rule in rules
    )


def _loose(
    knot: Sequence[str], links: Sequence[Link[Rule]], default: Sequence[Link[Rule]]
) -> dict[Rule, Overridden]:
    """The default rules that give way so that no ring is left.

    From the firmest down, each is kept that leads into no ring with the sheet's rules and
    those already kept. Only the knotted places can be in a ring.
    """
    by_rule: dict[Rule, list[Link[Rule]]] = {link.rule: [] for link in default}
    following: dict[str, list[Link[Rule]]] = {place: [] for place in knot}
    for link in links:
        if link.rule in by_rule:
            by_rule[link.rule].append(link)
        else:
            _follow(following, link)
    loose: dict[Rule, Overridden] = {}
    for rule, parts in by_rule.items():
        for tried, part in enumerate(parts):
            back = way(following, part.then, part.first)
            if back is not None:
                for earlier in reversed(parts[:tried]):
                    _unfollow(following, earlier)
                against = dict.fromkeys(one.rule for one in back if one.rule not in by_rule)
                loose[rule] = Overridden(rule, tuple(against), wholly=True)
                break
            _follow(following, part)
    return loose


def _follow(following: dict[str, list[Link[Rule]]], link: Link[Rule]) -> None:
    for place in link.first:
        following[place].append(link)


def _unfollow(following: dict[str, list[Link[Rule]]], link: Link[Rule]) -> None:
    for place in link.first:
        following[place].remove(link)


def _without_reversed(
    default: Sequence[Link[Rule]], sheet: Sequence[Link[Rule]]
) -> tuple[list[Link[Rule]], dict[Rule, Overridden]]:
    """The default links less the pairs that a sheet link turns round, and what that took away."""
    overridden: dict[Rule, Overridden] = {}
    leaving: dict[str, list[Link[Rule]]] = {}
    for link in sheet:
        for place in link.then:
            leaving.setdefault(place, []).append(link)
    kept: list[Link[Rule]] = []
    for link in default:
        turned: dict[str, frozenset[str]] = {}
        by: dict[Rule, None] = {}
        for place in sorted(link.first & leaving.keys()):
            for against in leaving[place]:
                common = link.then & against.first
                if common:
                    turned[place] = turned.get(place, frozenset()) | common
                    by[against.rule] = None
        if not turned:
            kept.append(link)
            continue
        left: dict[frozenset[str], set[str]] = {link.then: set(link.first - turned.keys())}
        for place, pairs in turned.items():
            left.setdefault(link.then - pairs, set()).add(place)
        parts = [Link(frozenset(f), t, link.rule) for t, f in left.items() if f and t]
        kept += parts
        ordered_by = dict.fromkeys(other.rule for other in sheet if other.rule in by)
        overridden[link.rule] = Overridden(link.rule, tuple(ordered_by), wholly=not parts)
    return kept, overridden
