"""The value read off a wrench when a step is ticked, held against what was to be set.

The trap: with an adapter the wrench shows another torque than the bolt gets, so what was seen
is held against the setting, not against the manual's torque. And 23 typed with the wrong unit
behind it is a torque too: one far out is asked about before it is kept.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.fastening.steps import Step
from aligner.language import marked, say, with_decimal_sign
from aligner.sheet.quantities import Torque
from aligner.units.dimension import TORQUE
from aligner.units.preferred import Preferred
from aligner.units.unit import factor

#: How far beyond its limits a value is asked about, as a share of the value wanted; and how far
#: from a value that has no limits (a part pass, a bare nominal). Chosen, no source: wider than
#: any wrench's deviation, narrower than the step from one unit to the next.
BEYOND_LIMITS = 0.05
FROM_BARE = 0.20


_OVER = marked("{seen} is far over {wanted}.")
_UNDER = marked("{seen} is far under {wanted}.")
_OVER_IN_OTHER_UNIT = marked("{seen}, which is {converted}, is far over {wanted}.")
_UNDER_IN_OTHER_UNIT = marked("{seen}, which is {converted}, is far under {wanted}.")


@dataclass(frozen=True)
class Wanted:
    """What the wrench should show; N·m.

    Attributes:
        value_nm: on the wrench.
        low_nm, high_nm: between these nothing is asked.
        text: the value in words.
    """

    value_nm: float
    low_nm: float
    high_nm: float
    text: str


def wanted(step: Step, setting_nm: float | None, text: str) -> Wanted | None:
    """What the wrench should show for a step; `None` where the step has no torque.

    Args:
        step: of the list.
        setting_nm: on the wrench's scale in N·m; `None` where no wrench was chosen for it.
        text: the setting, or the torque, in words.
    """
    if step.target_nm is None:
        return None
    return wanted_of(step.target_nm, step.low_nm, step.high_nm, setting_nm, text)


def wanted_of(
    target: float, low: float | None, high: float | None, setting_nm: float | None, text: str
) -> Wanted:
    """What the wrench should show for a torque.

    Args:
        target: torque aimed for at the fastener, N·m.
        low: least that is right, N·m; `None` where there is no limit.
        high: greatest that is right, N·m; likewise.
        setting_nm: as `wanted`.
        text: as `wanted`.
    """
    value = setting_nm if setting_nm is not None else target
    if low is None or high is None or low == high:
        spread = (1 - FROM_BARE, 1 + FROM_BARE)
    else:
        spread = (low / target - BEYOND_LIMITS, high / target + BEYOND_LIMITS)
    return Wanted(value, spread[0] * value, spread[1] * value, text)


def doubt(seen: Torque, goal: Wanted | None, show: Preferred) -> str:
    """What is asked before a value far out is kept; "" where there is nothing to ask."""
    if goal is None or goal.low_nm <= seen.value <= goal.high_nm:
        return ""
    is_over = seen.value > goal.value_nm
    if seen.unit == show.torque:
        text = _OVER if is_over else _UNDER
        said = say(text, seen=seen.said, wanted=goal.text)
    else:
        text = _OVER_IN_OTHER_UNIT if is_over else _UNDER_IN_OTHER_UNIT
        converted = show.show_torque(seen.value)
        said = say(text, seen=seen.said, converted=converted, wanted=goal.text)
    meant = _unit_meant(seen, goal)
    return f"{said} {say('Is it {torque}?', torque=meant)}" if meant else said


def _unit_meant(seen: Torque, goal: Wanted) -> str:
    """The same number in the unit in which it would be right; "" if there is none."""
    per_unit = factor(TORQUE, seen.unit)
    for other in TORQUE.units:
        value = seen.value / per_unit * factor(TORQUE, other.symbol)
        if other.symbol != seen.unit and goal.low_nm <= value <= goal.high_nm:
            return with_decimal_sign(f"{seen.number} {other.symbol}")
    return ""
