"""The words of a sheet on the screen: names of choices, a torque, a rule."""

from __future__ import annotations

from aligner.fastening.joints import joint_kinds
from aligner.fastening.steps import activities
from aligner.sheet import (
    Fastener,
    ForkKind,
    HandlebarPlace,
    OrderRule,
    Sheet,
    TorqueSpecification,
)
from aligner.sheet.printed_torque import torque_text
from aligner.sheet.quantities import Quantity
from aligner.units import LENGTH
from aligner.units.preferred import Preferred

FORKS = {
    ForkKind.DAMPER_ROD: "damper rod",
    ForkKind.AIR_ASSISTED: "damper rod, air-assisted",
    ForkKind.ANTI_DIVE: "damper rod with anti-dive unit",
    ForkKind.CARTRIDGE: "cartridge",
    ForkKind.UPSIDE_DOWN: "upside-down",
}
HANDLEBARS = {
    HandlebarPlace.ABOVE: "above the top bracket",
    HandlebarPlace.BETWEEN: "between the brackets",
    HandlebarPlace.BELOW: "below the top bracket",
}
#: What stands between the two names of a rule.
RULE_KINDS = {
    "before": "before",
    "while_slack": "while this is slack:",
    "after_hold": "must pass before",
    "again_after": "and after it, once more:",
}
_RULES = {
    "before": "{first} before {then}",
    "while_slack": "{first} while {then} is slack",
    "after_hold": "{then} waits for the reading: {first}",
    "again_after": "after {first}, {then} once more",
}
NO_TORQUE = "missing: take it from the maker's manual"


def torque_words(torque: TorqueSpecification | None) -> str:
    """A torque as the manual prints it: "21 to 25 N·m", "23 N·m ± 10 %"."""
    return torque_text(torque) if torque else NO_TORQUE


def torque_understood(
    torque: TorqueSpecification | None, doubts: str, show: Preferred
) -> tuple[str, str]:
    """What was understood of a torque, and the tone to say it in.

    Args:
        torque: as printed; `None` where it is missing.
        doubts: what there is to ask about it, "" if nothing.
        show: the preferred units.
    """
    if torque is None:
        return NO_TORQUE, "attention"
    words = range_words(torque, show)
    if doubts:
        return doubts, "attention"
    return ("" if words == torque_text(torque) else words), ""


def range_words(torque: TorqueSpecification, show: Preferred) -> str:
    """From where to where a torque is right, in the preferred unit."""
    low, high = show.show_torque(torque.low_nm), show.show_torque(torque.high_nm)
    aim = show.show_torque(torque.target_nm)
    return aim if low == high else f"aim for {aim}, right from {low} to {high}"


def value_words(value: Quantity, show: Preferred) -> str:
    """A length in the preferred unit where it was typed in another; else ""."""
    if value.dimension is LENGTH and not value.text.endswith(f" {show.length}"):
        return show.show_length(value.value)
    return ""


def rule_words(rule: OrderRule) -> str:
    """What a rule of the maker's asks for, in words."""
    first, then = rule.first.replace("_", " "), rule.then.replace("_", " ")
    return _RULES.get(rule.kind, "{first}, then {then}").format(first=first, then=then)


def rule_names(sheet: Sheet) -> list[tuple[str, object]]:
    """What a rule can speak of on this sheet: the words, and the name in the rule."""
    kinds = {fastener.kind for fastener in sheet.fasteners}
    found: list[tuple[str, object]] = [(each.name, each.name) for each in sheet.fasteners]
    found += [
        (f"every {kind.title}", kind.kind)
        for kind in joint_kinds().values()
        if kind.kind in kinds and kind.kind not in {each.name for each in sheet.fasteners}
    ]
    found += [
        (f"step: {activity.title}", activity.activity)
        for activity in activities().values()
        if activity.when == "tightening" and not activity.per
    ]
    return found


def fastener_words(fastener: Fastener) -> str:
    """A fastener's name with its number of bolts: "left lower clamp, 2 bolts"."""
    kind = joint_kinds().get(fastener.kind)
    piece = (kind.piece if kind else "") or "bolt"
    return f"{fastener.name}, {fastener.bolts} {piece}s" if fastener.bolts > 1 else fastener.name
