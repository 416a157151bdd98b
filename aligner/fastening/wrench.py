"""Torque wrenches: what to set so that the fastener gets what the manual says.

The trap: an adapter that makes the wrench longer makes the fastener's torque larger than the
scale says, and only for a hand at the middle of the grip. What is delivered is never one
number either: the wrench's own deviation spreads it, and the spread must fit the range.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from aligner.errors import AlignerError
from aligner.fastening.torque import NEWTON_METRES_PER_UNIT
from aligner.language import say, written

#: Marks nearer to each other than this count as one, in N·m.
_SLACK_NM = 1e-9


class UnusableWrench(AlignerError):
    """A wrench or adapter is described in a way that cannot be, or a length is missing."""


@dataclass(frozen=True)
class Wrench:
    """A setting torque wrench, its own scale given in N·m.

    Attributes:
        name: as its owner calls it.
        low_nm: lowest value marked on it.
        high_nm: highest value marked on it.
        graduation_nm: from one mark to the next.
        scale_unit_nm: N·m in one unit of its own scale (1 for N·m, 1.3558... for lbf·ft).
        permissible_deviation: 0.04 for plus or minus 4 %; see `standard_deviation_share`.
        drive: its square, in words ("3/8 in"); "" if not given.
        grip_length_mm: from the middle of the drive to the middle of the grip, if measured.
        own_lower_bound_nm: a bound above the lowest mark where its entry asks for one (the
            older rule, still common practice, is 20 % of the highest mark).
    """

    name: str
    low_nm: float
    high_nm: float
    graduation_nm: float
    scale_unit_nm: float = 1.0
    permissible_deviation: float = 0.04
    drive: str = ""
    grip_length_mm: float | None = None
    own_lower_bound_nm: float | None = None

    def __post_init__(self) -> None:
        where = say("wrench “{name}”", name=self.name)
        if not 0 < self.low_nm <= self.high_nm:
            raise UnusableWrench(
                where,
                say(
                    "its scale runs from {low} to {high} N·m",
                    low=written(self.low_nm),
                    high=written(self.high_nm),
                ),
                say("give the lowest mark above zero, then the highest"),
            )
        if not (self.graduation_nm > 0 and self.scale_unit_nm > 0):
            raise UnusableWrench(
                where, say("its graduation is not above zero"), say("read it off the scale")
            )
        if self.low_nm < self.high_nm and not (
            self.graduation_nm <= (self.high_nm - self.low_nm) * (1 + 1e-6)  # typed in lbf·ft
        ):
            raise UnusableWrench(
                where,
                say("its marks are further apart than its lowest is from its highest"),
                say("give the distance from one mark to the next"),
            )
        if not 0 < self.permissible_deviation < 1:
            raise UnusableWrench(
                where,
                say("its deviation is {share} %", share=written(100 * self.permissible_deviation)),
                say("give what its certificate says, usually 4 %"),
            )
        if self.grip_length_mm is not None and not self.grip_length_mm > 0:
            raise UnusableWrench(
                where, say("its grip length is not above zero"), say("measure it again")
            )
        if self.usable_low_nm > self.high_nm:
            raise UnusableWrench(
                where,
                say("its own lower bound is above its highest mark"),
                say("20 % of that is usual"),
            )

    @property
    def usable_low_nm(self) -> float:
        """The lowest value it may be set to: its lowest mark (ISO 6789-1:2017) or its own bound."""
        return max(self.low_nm, self.own_lower_bound_nm or 0.0)

    def on_scale(self, setting_nm: float) -> float:
        """A setting in the unit of the wrench's own scale."""
        return round(setting_nm / self.scale_unit_nm, 9)

    def setting_text(self, setting_nm: float) -> str:
        """A setting in words, on its own scale, with the decimals its marks need: "22.5 lbf·ft"."""
        graduation, lowest = self.on_scale(self.graduation_nm), self.on_scale(self.low_nm)
        decimals = max(_decimals(graduation), _decimals(lowest))
        unit = next(
            (
                name
                for name, factor in NEWTON_METRES_PER_UNIT.items()
                if math.isclose(factor, self.scale_unit_nm, rel_tol=1e-5)
            ),
            None,
        )
        if unit is None:
            return f"{written(setting_nm, '.1f')} N·m"
        return f"{written(self.on_scale(setting_nm), f'.{decimals}f')} {unit}"


@dataclass(frozen=True)
class Adapter:
    """What stands between the wrench's drive and the fastener.

    Attributes:
        name: as its owner calls it.
        effective_length_mm: from the middle of the drive to the middle of the fastener.
        angle_deg: between adapter and wrench: 0 straight out, 90 square, 180 folded back.
        concentric: whether the fastener lies in line with the drive, as in a socket.
        drive: the square it takes, in words; "" if not given.
    """

    name: str
    effective_length_mm: float
    angle_deg: float = 0.0
    concentric: bool = False
    drive: str = ""

    @property
    def reach_mm(self) -> float:
        """How much longer it makes the wrench: E cos(a), negative where it is folded back."""
        if self.concentric:
            return 0.0
        reach_mm = self.effective_length_mm * math.cos(math.radians(self.angle_deg))
        return 0.0 if abs(reach_mm) < 1e-9 else reach_mm  # cos 90 deg is not quite nought in binary


def standard_deviation_share(high_nm: float) -> float:
    """The permissible deviation of a type II class A wrench: 6 % up to 10 N·m, else 4 %.

    Source: ISO 6789-1:2017, seen (secondary).
    """
    return 0.06 if high_nm <= 10 else 0.04


def lengthening(grip_length_mm: float | None, adapter: Adapter | None) -> float:
    """(L + E cos a) / L: how many times the setting the fastener gets.

    Raises:
        UnusableWrench: an adapter that counts, and no grip length; or the fastener would lie
            at or behind the hand.
    """
    reach_mm = adapter.reach_mm if adapter is not None else 0.0
    if adapter is None or reach_mm == 0.0:
        return 1.0
    where = say("adapter “{name}”", name=adapter.name)
    if grip_length_mm is None:
        raise UnusableWrench(
            where,
            say("it changes the torque, and the wrench's grip length is not known"),
            say(
                "measure from the middle of the drive to the middle of the grip, "
                "or set the adapter at 90°"
            ),
        )
    if grip_length_mm + reach_mm <= 0:
        raise UnusableWrench(
            where,
            say(
                "folded back by {reach} mm on a grip length of {grip} mm it puts "
                "the fastener behind the hand",
                reach=written(-reach_mm),
                grip=written(grip_length_mm),
            ),
            say("turn it round"),
        )
    return (grip_length_mm + reach_mm) / grip_length_mm


def setting_nm(torque_nm: float, grip_length_mm: float | None, adapter: Adapter | None) -> float:
    """What to set so that the fastener gets a torque: S = T L / (L + E cos a).

    Source: the effective-length formula of the US Navy and Army training manuals; TM 9-254
    figure 4-6 for the angle.

    Args:
        torque_nm: T, what the fastener is to get.
        grip_length_mm: L, from the middle of the drive to the middle of the grip.
        adapter: `None` for a plain socket.

    Raises:
        UnusableWrench: as `lengthening`.
    """
    return torque_nm / lengthening(grip_length_mm, adapter)


def delivered_range_nm(
    setting_nm: float, permissible_deviation: float, times: float
) -> tuple[float, float]:
    """The least and greatest torque at the fastener for one setting.

    ISO 6789 refers the deviation d to the true value: d = (set - true) / true, so the true
    torque at the drive lies between S / (1 + d) and S / (1 - d).

    Args:
        setting_nm: S, what the wrench is set to.
        permissible_deviation: d, 0.04 for 4 %.
        times: from `lengthening`.
    """
    low_nm = setting_nm / (1 + permissible_deviation) * times
    high_nm = setting_nm / (1 - permissible_deviation) * times
    return low_nm, high_nm


def marks_nm(wrench: Wrench, from_nm: float, to_nm: float) -> tuple[float, ...]:
    """The marks of a wrench's own scale from one setting to another, within its usable range.

    Marks are counted from the lowest marked value, on the wrench's own scale.
    """
    from_nm = max(from_nm, wrench.usable_low_nm)
    to_nm = min(to_nm, wrench.high_nm)
    first = math.ceil((from_nm - wrench.low_nm - _SLACK_NM) / wrench.graduation_nm)
    last = math.floor((to_nm - wrench.low_nm + _SLACK_NM) / wrench.graduation_nm)
    return tuple(wrench.low_nm + n * wrench.graduation_nm for n in range(first, last + 1))


def set_on_scale(
    wrench: Wrench, target_nm: float, low_nm: float, high_nm: float, times: float = 1.0
) -> float | None:
    """The mark to set, in N·m, or `None` if no mark of the wrench will do.

    Of the marks whose delivered range lies within the specification, the one nearest to what
    the target asks for; where there is none, the nearest mark, as long as the exact setting
    lies within the usable scale.

    Args:
        wrench: whose marks are meant.
        target_nm: torque aimed for at the fastener.
        low_nm: least torque specified.
        high_nm: greatest torque specified.
        times: from `lengthening`.
    """
    exact_nm = target_nm / times
    deviation = wrench.permissible_deviation
    inside = marks_nm(wrench, low_nm * (1 + deviation) / times, high_nm * (1 - deviation) / times)
    if inside:
        return min(inside, key=lambda mark_nm: abs(mark_nm - exact_nm))
    if not wrench.usable_low_nm - _SLACK_NM <= exact_nm <= wrench.high_nm + _SLACK_NM:
        return None
    step_nm = wrench.graduation_nm
    around = marks_nm(wrench, exact_nm - step_nm, exact_nm + step_nm)
    return min(around, key=lambda mark_nm: abs(mark_nm - exact_nm), default=None)


def margin_nm(delivered_nm: tuple[float, float], low_nm: float, high_nm: float) -> float:
    """How far inside the specification a delivered range lies at its nearer end; negative: out."""
    return min(delivered_nm[0] - low_nm, high_nm - delivered_nm[1])


def _decimals(number: float) -> int:
    return next((n for n in range(4) if math.isclose(round(number, n), number, rel_tol=1e-6)), 4)
