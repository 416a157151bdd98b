"""The sheet's rules against the default ones: which default rules give way, and why.

A sheet rule takes out of a default rule exactly the pairs it turns round. Where a ring is left
that runs through default rules, the least firm of them (the lowest row of its file) gives way
as a whole; its joints then keep to the default sequence as far as the rest allows. Nothing
gives way in silence. A ring of sheet rules alone is the sheet's own contradiction and refused.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from aligner.fastening.order import Link, Ring, knotted, ordered, ring
from aligner.fastening.rules import Rule, UnusableRule


class RingOfRules(UnusableRule):
    """Rules on the sheet wait for each other.

    Attributes:
        rules: the rules of the ring, each standing before the next.
        places: what they put in a ring.
    """

    def __init__(self, found: Ring[Rule]) -> None:
        self.rules = tuple(link.rule for link in found.links)
        self.places = found.places
        quoted = "; ".join(
            f"{rule.name} ({rule.because.rstrip('.') or 'no reason given'})"
            for rule in dict.fromkeys(self.rules)
        )
        super().__init__("order rules", f"they run in a ring: {quoted}", "take one of them away")


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

    @property
    def because(self) -> str:
        """What gave way to what, with both reasons, in one sentence."""
        against = "; ".join(
            f"{rule.name} ({rule.because.rstrip('.') or 'no reason given'})" for rule in self.by
        )
        given = self.rule.because.rstrip(".")
        return f"The sheet's {against} takes the place of the usual {self.rule.name} ({given})."


@dataclass(frozen=True)
class Precedence:
    """The order of the places, and the rules that made it.

    Attributes:
        order: keys of the places, first to last.
        sheet: links of the sheet's rules.
        default: links of the default rules that still stand, firmest first.
        overridden: what gave way.
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
    contradiction = ring(*knotted(ranked, sheet, ordered(ranked, sheet)))
    if contradiction is not None:
        raise RingOfRules(contradiction)
    overridden: list[Overridden] = []
    kept = _without_reversed(default, sheet, overridden)
    order = ordered(ranked, [*sheet, *kept])
    if len(order) < len(ranked):
        loose = _loosest(ranked, [*sheet, *kept], order, default, overridden)
        kept = [link for link in kept if link.rule not in loose]
        order = ordered(ranked, [*sheet, *kept])
    return Precedence(tuple(order), tuple(sheet), tuple(kept), tuple(overridden))


def _loosest(
    ranked: Sequence[str],
    links: Sequence[Link[Rule]],
    done: Sequence[str],
    default: Sequence[Link[Rule]],
    overridden: list[Overridden],
) -> set[Rule]:
    """The default rules that give way so that no ring is left.

    Only what is still knotted is looked at again after each, which keeps many contradictions
    as cheap as few.
    """
    firmness = {link.rule: row for row, link in enumerate(default)}
    loose: set[Rule] = set()
    while True:
        ranked, links = knotted(ranked, links, done)
        found = ring(ranked, links)
        if found is None:
            return loose
        around = list(dict.fromkeys(link.rule for link in found.links))
        loosest = max((rule for rule in around if rule in firmness), key=firmness.__getitem__)
        against = tuple(rule for rule in around if rule not in firmness)
        overridden.append(Overridden(loosest, against, wholly=True))
        loose.add(loosest)
        links = [link for link in links if link.rule != loosest]
        done = ordered(ranked, links)


def _without_reversed(
    default: Sequence[Link[Rule]], sheet: Sequence[Link[Rule]], overridden: list[Overridden]
) -> list[Link[Rule]]:
    """The default links less the pairs that a sheet link turns round."""
    leaving: dict[str, list[Link[Rule]]] = {}
    for link in sheet:
        for place in link.then:
            leaving.setdefault(place, []).append(link)
    kept: list[Link[Rule]] = []
    for link in default:
        turned: dict[str, frozenset[str]] = {}
        by: dict[Rule, None] = {}
        for place in link.first & leaving.keys():
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
        ordered_by = tuple(other.rule for other in sheet if other.rule in by)
        overridden.append(Overridden(link.rule, tuple(dict.fromkeys(ordered_by)), wholly=not parts))
    return kept
