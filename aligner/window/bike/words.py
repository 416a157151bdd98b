"""The words of a sheet on the screen: names of choices, a torque, a rule."""

from __future__ import annotations

from aligner.fastening.joints import joint_kinds
from aligner.fastening.steps import activities
from aligner.language import marked, say
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
    ForkKind.DAMPER_ROD: marked("damper rod"),
    ForkKind.AIR_ASSISTED: marked("damper rod, air-assisted"),
    ForkKind.ANTI_DIVE: marked("damper rod with anti-dive unit"),
    ForkKind.CARTRIDGE: marked("cartridge"),
    ForkKind.UPSIDE_DOWN: marked("upside-down"),
}
HANDLEBARS = {
    HandlebarPlace.ABOVE: marked("above the top bracket"),
    HandlebarPlace.BETWEEN: marked("between the brackets"),
    HandlebarPlace.BELOW: marked("below the top bracket"),
}
#: What stands between the two names of a rule.
RULE_KINDS = {
    "before": marked("before"),
    "while_slack": marked("while this is slack:"),
    "after_hold": marked("must pass before"),
    "again_after": marked("and after it, once more:"),
}
_RULES = {
    "before": marked("{first} before {then}"),
    "while_slack": marked("{first} while {then} is slack"),
    "after_hold": marked("{then} waits for the reading: {first}"),
    "again_after": marked("after {first}, {then} once more"),
}
#: What a rule names by a key: kinds of joints where their title is another, groups, activities.
_THINGS = frozenset(
    (
        marked("anti dive unit bolt"),
        marked("damper rod bolt"),
        marked("stem pinch"),
        marked("handlebar clamp below"),
        marked("handlebar clamp between"),
        marked("handlebar clamp above"),
        marked("axle in clamp caps"),
        marked("axle pinch"),
        marked("bench work"),
        marked("stem"),
        marked("clamps"),
        marked("caps"),
        marked("handlebar clamps"),
        marked("fittings"),
        marked("any axle"),
        marked("brake"),
        marked("axle pinches"),
        marked("stem nut seated"),
        marked("stem nut backed off"),
        marked("stem nut set"),
        marked("top bracket on"),
        marked("handlebars slid on"),
        marked("legs in"),
        marked("protrusion equal"),
        marked("lower bracket square"),
        marked("legs in line"),
        marked("steering free"),
        marked("preload at lowest"),
        marked("protrusion again"),
        marked("preload back"),
        marked("air line joined"),
        marked("brace on"),
        marked("anti dive lines joined"),
        marked("wheel in"),
        marked("brake bled"),
        marked("lever firm"),
        marked("fork pumped"),
        marked("hoses free"),
        marked("air in"),
    )
)
NO_TORQUE = marked("missing: take it from the maker's manual")


def torque_words(torque: TorqueSpecification | None) -> str:
    """A torque as the manual prints it: "21 to 25 N·m", "23 N·m ± 10 %"."""
    return torque_text(torque) if torque else say(NO_TORQUE)


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
        return say(NO_TORQUE), "attention"
    words = range_words(torque, show)
    if doubts:
        return doubts, "attention"
    return ("" if words == torque_text(torque) else words), ""


def range_words(torque: TorqueSpecification, show: Preferred) -> str:
    """From where to where a torque is right, in the preferred unit."""
    low, high = show.show_torque(torque.low_nm), show.show_torque(torque.high_nm)
    aim = show.show_torque(torque.target_nm)
    if low == high:
        return aim
    return say("aim for {aim}, right from {low} to {high}", aim=aim, low=low, high=high)


def value_words(value: Quantity, show: Preferred) -> str:
    """A length in the preferred unit where it was typed in another; else ""."""
    if value.dimension is LENGTH and not value.text.endswith(f" {show.length}"):
        return show.show_length(value.value)
    return ""


def rule_words(rule: OrderRule) -> str:
    """What a rule of the maker's asks for, in words."""
    return say(_RULES[rule.kind], first=thing_words(rule.first), then=thing_words(rule.then))


def thing_words(name: str) -> str:
    """What a rule speaks of: a fastener by its name, anything else in the trade's words."""
    words = name.replace("_", " ")
    return say(words) if name in joint_kinds() or words in _THINGS else words


def rule_names(sheet: Sheet) -> list[tuple[object, str]]:
    """What a rule can speak of on this sheet: the name in the rule, and the words."""
    kinds = {fastener.kind for fastener in sheet.fasteners}
    found: list[tuple[object, str]] = [(each.name, each.name) for each in sheet.fasteners]
    found += [
        (kind.kind, say("every {joint}", joint=say(kind.title)))
        for kind in joint_kinds().values()
        if kind.kind in kinds and kind.kind not in {each.name for each in sheet.fasteners}
    ]
    found += [
        (activity.activity, say("step: {step}", step=say(activity.title)))
        for activity in activities().values()
        if activity.when == "tightening" and not activity.per
    ]
    return found


def fastener_words(fastener: Fastener) -> str:
    """A fastener's name with its number of bolts: "left lower clamp, 2 bolts"."""
    kind = joint_kinds().get(fastener.kind)
    if fastener.bolts == 1:
        return fastener.name
    if kind is not None and kind.piece == "nut":
        return say("{fastener}, {number} nuts", fastener=fastener.name, number=fastener.bolts)
    return say("{fastener}, {number} bolts", fastener=fastener.name, number=fastener.bolts)
