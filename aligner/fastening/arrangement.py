"""The joints of one bike in order, each place with the reason that binds it.

What tightening and loosening have in common: the same rules, followed forwards or turned
round. The trap: a rule for tightening that is turned round needs other words, so each rule
carries a reason for either way.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass

from aligner.fastening.joints import Joint
from aligner.fastening.order import Link
from aligner.fastening.places import Place, Work, places, repeated
from aligner.fastening.precedence import Overridden, Precedence, precedence
from aligner.fastening.rules import Names, Rule, default_rules
from aligner.fastening.steps import activities


@dataclass(frozen=True)
class Arrangement:
    """Places in the order in which they are done.

    Attributes:
        places: first to last.
        sheet_reasons: by place, the sheet's rule that binds it.
        default_reasons: by place, the firmest default rule that binds it.
        relies_on: by place, the hold points it stands on, in order.
        slack: by place, the places that must be slack while it is done.
        overridden: default rules that gave way to the sheet.
    """

    places: tuple[Place, ...]
    sheet_reasons: dict[str, Rule]
    default_reasons: dict[str, Rule]
    relies_on: dict[str, tuple[str, ...]]
    slack: dict[str, tuple[frozenset[str], ...]]
    overridden: tuple[Overridden, ...]


def arrangement(
    joints: Sequence[Joint],
    rules_on_sheet: Iterable[Rule],
    work: Work,
    asked: Collection[str] = (),
    fork: str = "",
) -> Arrangement:
    """The joints and what is done between them, in order.

    Args:
        joints: of one bike, in any order.
        rules_on_sheet: the maker's order, in any order; these go before the default rules.
        work: tightening or loosening.
        asked: activities wanted that are left out otherwise; those a sheet rule names are too.
        fork: kind of the fork; "" if unknown.

    Raises:
        UnusableJoint: two joints have the same name.
        UnusableRule: a rule names nothing known.
        RingOfRules: the sheet's rules wait for each other.
    """
    given = frozenset(rules_on_sheet)
    own = sorted(given, key=lambda r: (r.kind, r.first, r.then, r.because, r.source, r.when))
    wanted = {*asked, *(rule.first for rule in own), *(rule.then for rule in own)}
    ranked = places(joints, work, wanted, fork)
    names = Names(ranked, [joint.name for joint in joints])
    by_key = {place.key: place for place in ranked}
    sheet: list[Link[Rule]] = []
    for rule in own:
        first, then = names.ends(rule, from_sheet=True)
        if rule.when not in ("both", work):
            continue
        if rule.kind == "again_after" and work == "tightening":
            sheet += _repeat(rule, first, then, by_key)
        elif rule.kind != "again_after":
            sheet += _links(rule, first, then, work)
    default: list[Link[Rule]] = []
    for rule in default_rules():
        if rule.when in ("both", work) and rule not in given:
            first, then = names.ends(rule, from_sheet=False)
            default += _links(rule, first, then, work)
    in_rank = sorted(by_key.values(), key=lambda place: place.rank)
    found = precedence([place.key for place in in_rank], sheet, default)
    return Arrangement(
        places=tuple(by_key[key] for key in found.order),
        sheet_reasons=_sheet_reasons(found),
        default_reasons=_default_reasons(found),
        relies_on=_relies_on(found),
        slack=_slack(found),
        overridden=found.overridden,
    )


def _links(rule: Rule, first: frozenset[str], then: frozenset[str], work: Work) -> list[Link[Rule]]:
    if not first or not then:
        return []
    if work == "loosening" and not _is_about_loosening(rule):
        first, then = then, first
    return [Link(first, then, rule)]


def _is_about_loosening(rule: Rule) -> bool:
    named = (activities().get(rule.first), activities().get(rule.then))
    return rule.when == "loosening" or any(one and one.when == "loosening" for one in named)


def _repeat(
    rule: Rule, first: frozenset[str], then: frozenset[str], by_key: dict[str, Place]
) -> list[Link[Rule]]:
    """Adds the places where `then` is done once more, and binds them behind `first`."""
    if not first or not then:
        return []
    already = _repetition_by_default(rule)
    if already in by_key:
        return [Link(first, frozenset([already]), rule)]
    after = [by_key[key] for key in first]
    again = [repeated(by_key[key], after, rule.first) for key in then]
    by_key.update((place.key, place) for place in again)
    copies = frozenset(place.key for place in again)
    return [Link(first, copies, rule), Link(then, copies, rule)]


def _repetition_by_default(rule: Rule) -> str:
    """Key of the activity that already repeats `then` after `first`; "" where there is none."""
    for usual in default_rules():
        if usual.kind == "again_after" and usual.first == rule.first:
            activity = activities()[usual.then]
            if rule.then in (activity.activity, activity.repeats):
                return f"{activity.kind}/{activity.activity}"
    return ""


def _sheet_reasons(found: Precedence) -> dict[str, Rule]:
    """By place, the sheet's rule whose own end comes latest before it; else one it goes before."""
    position = {key: number for number, key in enumerate(found.order)}
    reasons: dict[str, Rule] = {}
    latest: dict[str, int] = {}
    for link in found.sheet:
        end = max(position[key] for key in link.first)
        for key in link.then:
            if end > latest.get(key, -1):
                latest[key] = end
                reasons[key] = link.rule
    for link in found.sheet:
        if link.rule.kind != "again_after":  # says why a thing is done twice, not why at first
            for key in link.first:
                reasons.setdefault(key, link.rule)
    return reasons


def _default_reasons(found: Precedence) -> dict[str, Rule]:
    reasons: dict[str, Rule] = {}
    for link in found.default:
        for key in link.then:
            reasons.setdefault(key, link.rule)
    return reasons


def _relies_on(found: Precedence) -> dict[str, tuple[str, ...]]:
    position = {key: number for number, key in enumerate(found.order)}
    holds: dict[str, set[str]] = {}
    for link in (*found.sheet, *found.default):
        if link.rule.kind == "after_hold":
            for key in link.then:
                holds.setdefault(key, set()).update(link.first)
    return {key: tuple(sorted(found_, key=position.__getitem__)) for key, found_ in holds.items()}


def _slack(found: Precedence) -> dict[str, tuple[frozenset[str], ...]]:
    """The sets are shared, never written out: they would grow with the square of the joints."""
    slack: dict[str, list[frozenset[str]]] = {}
    for link in (*found.sheet, *found.default):
        if link.rule.kind == "while_slack":
            for key in link.first:
                slack.setdefault(key, []).append(link.then)
    return {key: tuple(sets) for key, sets in slack.items()}
