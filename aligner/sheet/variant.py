"""A sheet copied to a variant: the next model year with another fork, keeping what still fits.

The trap: a torque carried over to a part that only looks the same. What is kept says in its
source which bike it is from, and what does not fit any more is named, never left out silently.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.language import say
from aligner.sheet.fasteners import Fastener, OrderRule, TorqueSpecification
from aligner.sheet.legs import Legs
from aligner.sheet.patterns import Choices, composed, kinds_of_patterns, rules_of_patterns
from aligner.sheet.sheet import Sheet


@dataclass(frozen=True)
class Variant:
    """A variant and what it cost.

    Attributes:
        sheet: the new sheet.
        dropped: what the old sheet had that does not fit, in words.
        added: names of fasteners that the old sheet did not have.
    """

    sheet: Sheet
    dropped: tuple[str, ...]
    added: tuple[str, ...]

    @property
    def words(self) -> str:
        """What was dropped and what came, in one sentence or two."""
        sentences = [
            say("Dropped: {things}.", things=", ".join(self.dropped))
            if self.dropped
            else say("Nothing was dropped.")
        ]
        if self.added:
            sentences.append(say("New: {things}.", things=", ".join(self.added)))
        return " ".join(sentences)


def variant_of(sheet: Sheet, name: str, choices: Choices) -> Variant:
    """The sheet under another name and with another pattern.

    Dimensions, the alignment's limits and notes are kept. With another kind of fork its oil,
    springs, travel and wear limits are dropped; the head bearing's drag stays. A fastener is
    kept where the new pattern has one of its kind and side, with the pattern's number of bolts;
    one of a kind that no pattern speaks of is kept as it is. The maker's rules are kept where
    all they name is still there.

    Args:
        sheet: to be copied.
        name: of the variant.
        choices: of its pattern.
    """
    pattern = composed(choices, sheet.with_changes(name=name, fasteners=(), rules=()))
    old = list(sheet.fasteners)
    fasteners: list[Fastener] = []
    added: list[str] = []
    for wanted in pattern.fasteners:
        like = next((each for each in old if _is_same(each, wanted)), None)
        if like is None:
            fasteners.append(wanted)
            added.append(wanted.name)
        else:
            old.remove(like)
            kept = like.with_changes(bolts=wanted.bolts)
            fasteners.append(_from(kept, sheet.name) if sheet.name != name else kept)
    governed = kinds_of_patterns()
    fasteners += [each for each in old if each.kind not in governed]
    dropped = [each.name for each in old if each.kind in governed]
    fasteners = _named_once(fasteners)
    rules, rules_dropped = _rules(sheet, pattern, fasteners)
    variant = pattern.with_changes(fasteners=tuple(fasteners), rules=rules)
    of_the_fork: list[str] = []
    if variant.fork.kind is not sheet.fork.kind:
        variant, of_the_fork = _without_old_fork(variant)
    return Variant(variant, (*dropped, *of_the_fork, *rules_dropped), tuple(added))


def _without_old_fork(sheet: Sheet) -> tuple[Sheet, list[str]]:
    """The sheet without what only holds for the fork it had, and that in words."""
    dropped = []
    legs = Legs(bearing=sheet.legs.bearing)
    if legs != sheet.legs:
        dropped.append(say("oil, springs and travel", meaning="dropped from a sheet"))
    if sheet.inspection:
        dropped.append(say("wear limits", meaning="dropped from a sheet"))
    sources = {
        path: text
        for path, text in sheet.sources.items()
        if not path.startswith(("legs.", "inspection.")) or path.startswith("legs.bearing")
    }
    return sheet.with_changes(legs=legs, inspection={}, sources=sources), dropped


def _is_same(old: Fastener, wanted: Fastener) -> bool:
    return old.kind == wanted.kind and old.side == wanted.side


def _from(fastener: Fastener, bike: str) -> Fastener:
    """The same with sources that say which bike's sheet the torques are from."""
    changes = {
        field: _source_from(torque, bike)
        for field in ("torque", "seating")
        if (torque := getattr(fastener, field)) is not None
    }
    return fastener.with_changes(**changes) if changes else fastener


def _source_from(torque: TorqueSpecification, bike: str) -> TorqueSpecification:
    origin = say("from the sheet of {bike}", bike=bike) if bike else say("from another sheet")
    if origin in torque.source:
        return torque
    source = f"{torque.source} ({origin})" if torque.source else origin
    return torque.with_changes(source=source)


def _named_once(fasteners: list[Fastener]) -> list[Fastener]:
    """Fasteners of which a later one gives way where two would have one name."""
    seen: set[str] = set()
    found = []
    for fastener in fasteners:
        name, number = fastener.name, 2
        while name in seen:
            name, number = f"{fastener.name} {number}", number + 1
        seen.add(name)
        found.append(fastener if name == fastener.name else fastener.with_changes(name=name))
    return found


def _rules(
    sheet: Sheet, pattern: Sheet, fasteners: list[Fastener]
) -> tuple[tuple[OrderRule, ...], list[str]]:
    """The pattern's own rules, and the maker's that still name what is there."""
    of_patterns = rules_of_patterns()
    gone = {each.name for each in sheet.fasteners} - {each.name for each in fasteners}
    gone |= {each.kind for each in sheet.fasteners} - {each.kind for each in fasteners}
    rules = list(pattern.rules)
    dropped = []
    for rule in sheet.rules:
        if (rule.kind, rule.first, rule.then) in of_patterns:
            continue
        if {rule.first, rule.then} & gone:
            first, then = (_in_words(sheet, name) for name in (rule.first, rule.then))
            dropped.append(say("the rule of {first} and {then}", first=first, then=then))
        else:
            rules.append(rule)
    return tuple(rules), dropped


def _in_words(sheet: Sheet, name: str) -> str:
    """What a rule names: a fastener as the sheet calls it, a kind or an activity as it is said."""
    if any(each.name == name for each in sheet.fasteners):
        return name.replace("_", " ")
    return say(name.replace("_", " "))
