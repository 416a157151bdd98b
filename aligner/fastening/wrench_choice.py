"""Whether a wrench and adapter will do for a torque, and which of several does best.

The trap: a wrench that can be set to the target may still deliver outside the specification,
and a bare nominal has no range to be inside or outside of: that is said, not made up.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from aligner.fastening.wrench import (
    Adapter,
    UnusableWrench,
    Wrench,
    delivered_range_nm,
    lengthening,
    margin_nm,
    set_on_scale,
)
from aligner.language import say, written

#: A graduation coarser than this share of the setting is told. US Army TM 1-1500-204-23-9
#: table 8-1 (seen): graduations no more than 10 % of the torque measured.
COARSEST_GRADUATION = 0.10
_SLACK_NM = 1e-9


@dataclass(frozen=True)
class WrenchFit:
    """What one wrench with one adapter does for one specified torque.

    Attributes:
        wrench: the wrench.
        adapter: `None` for a plain socket.
        setting_nm: the exact setting the target asks for; `None` where it cannot be reckoned.
        setting_on_scale: the mark to set, in the unit of the wrench's own scale; `None` where
            the wrench cannot be used.
        setting_text: the same in words: "22.5 lbf·ft"; "" where there is none.
        delivered_low_nm: least torque at the fastener for that mark.
        delivered_high_nm: greatest torque at the fastener for that mark.
        is_in_range: whether a mark for it lies on the usable part of the wrench's scale; no
            as well where the drive or a missing length stands in the way.
        is_inside_specification: whether all that can be delivered is within the specified
            range; `None` for a bare nominal, which has no range, and where there is no mark.
        margin_nm: how far inside at the nearer end; negative outside. For a bare nominal it
            is less than zero by as much as the delivered torque can be away from it.
        problems: what is wrong or worth knowing, in words.
    """

    wrench: Wrench
    adapter: Adapter | None
    setting_nm: float | None
    setting_on_scale: float | None
    setting_text: str
    delivered_low_nm: float | None
    delivered_high_nm: float | None
    is_in_range: bool
    is_inside_specification: bool | None
    margin_nm: float | None
    problems: tuple[str, ...]

    @property
    def tool_text(self) -> str:
        """Wrench and adapter in words."""
        if self.adapter is None:
            return self.wrench.name
        return say("{wrench} with {adapter}", wrench=self.wrench.name, adapter=self.adapter.name)


@dataclass(frozen=True)
class NoWrench:
    """No wrench on the list does.

    Attributes:
        refused: every wrench with every adapter, its `problems` saying why; those that can be
            set at all come first, the nearest to the specification at the front.
    """

    refused: tuple[WrenchFit, ...]

    @property
    def reasons(self) -> tuple[str, ...]:
        """One line for each."""
        return tuple(f"{fit.tool_text}: {'; '.join(fit.problems)}" for fit in self.refused)


def fit(
    wrench: Wrench, adapter: Adapter | None, target_nm: float, low_nm: float, high_nm: float
) -> WrenchFit:
    """What a wrench with an adapter does for a torque of low <= target <= high.

    A bare nominal is given as low = target = high. It cannot be tested: the delivered range is
    reported, and `is_inside_specification` is `None`.

    Raises:
        UnusableWrench: the torque is not above zero, or the target not within its own range.
    """
    if not 0 < low_nm <= target_nm <= high_nm:
        raise _no_range(target_nm, low_nm, high_nm)
    if adapter is not None and adapter.drive and wrench.drive and adapter.drive != wrench.drive:
        said = say(
            "its {drive} drive does not take the {other_drive} of “{adapter}”",
            drive=wrench.drive,
            other_drive=adapter.drive,
            adapter=adapter.name,
        )
        return _unusable(wrench, adapter, None, said)
    try:
        times = lengthening(wrench.grip_length_mm, adapter)
    except UnusableWrench as error:
        return _unusable(wrench, adapter, None, str(error))
    exact_nm = target_nm / times
    mark_nm = set_on_scale(wrench, target_nm, low_nm, high_nm, times)
    if mark_nm is None:
        return _unusable(wrench, adapter, exact_nm, _off_the_scale(wrench, exact_nm))
    delivered_nm = delivered_range_nm(mark_nm, wrench.permissible_deviation, times)
    inside_by_nm = margin_nm(delivered_nm, low_nm, high_nm)
    is_inside = None if low_nm == high_nm else inside_by_nm >= -_SLACK_NM
    return WrenchFit(
        wrench,
        adapter,
        exact_nm,
        wrench.on_scale(mark_nm),
        wrench.setting_text(mark_nm),
        *delivered_nm,
        is_in_range=True,
        is_inside_specification=is_inside,
        margin_nm=inside_by_nm,
        problems=_problems(wrench, mark_nm, delivered_nm, (low_nm, high_nm), is_inside),
    )


def _no_range(target_nm: float, low_nm: float, high_nm: float) -> UnusableWrench:
    return UnusableWrench(
        say("torque"),
        say(
            "{target} N·m is not within {low} to {high} N·m",
            target=written(target_nm),
            low=written(low_nm),
            high=written(high_nm),
        ),
        say("give low, target and high in rising order, above zero"),
    )


def _off_the_scale(wrench: Wrench, exact_nm: float) -> str:
    return say(
        "a setting of {setting} N·m is outside its usable scale, {low} to {high} N·m",
        setting=written(exact_nm, ".1f"),
        low=written(wrench.usable_low_nm, ".1f"),
        high=written(wrench.high_nm, ".1f"),
    )


def best_wrench(
    wrenches: Sequence[Wrench],
    adapters: Sequence[Adapter | None],
    target_nm: float,
    low_nm: float,
    high_nm: float,
) -> WrenchFit | NoWrench:
    """The wrench and adapter that do best, or why none does.

    Preferred in this order (chosen, no source): delivering inside the specification; the most
    margin at the nearer end, told apart to 0.1 N·m, which is less than can be felt or set; the
    smaller wrench; its name. A wrench that delivers outside a specified range is not chosen.

    Args:
        wrenches: those at hand.
        adapters: those that reach this fastener, any of which will do; `None` among them is a
            plain socket, and so is an empty list.
        target_nm: torque aimed for.
        low_nm: least torque specified.
        high_nm: greatest torque specified.

    Raises:
        UnusableWrench: as `fit`.
    """
    fits = [
        fit(wrench, adapter, target_nm, low_nm, high_nm)
        for wrench in wrenches
        for adapter in (adapters or (None,))
    ]
    fits.sort(key=_preference)
    if fits and fits[0].is_in_range and fits[0].is_inside_specification is not False:
        return fits[0]
    return NoWrench(tuple(fits))


def _preference(tried: WrenchFit) -> tuple[bool, bool, float, float, str, str]:
    margin_nm = tried.margin_nm if tried.margin_nm is not None else 0.0
    return (
        not tried.is_in_range,
        tried.is_inside_specification is False,
        -round(margin_nm, 1),
        tried.wrench.high_nm,
        tried.wrench.name,
        tried.adapter.name if tried.adapter is not None else "",
    )


def _unusable(
    wrench: Wrench, adapter: Adapter | None, exact_nm: float | None, said: str
) -> WrenchFit:
    return WrenchFit(
        wrench,
        adapter,
        setting_nm=exact_nm,
        setting_on_scale=None,
        setting_text="",
        delivered_low_nm=None,
        delivered_high_nm=None,
        is_in_range=False,
        is_inside_specification=None,
        margin_nm=None,
        problems=(said,),
    )


def _problems(
    wrench: Wrench,
    mark_nm: float,
    delivered_nm: tuple[float, float],
    specified_nm: tuple[float, float],
    is_inside: bool | None,
) -> tuple[str, ...]:
    problems = []
    if is_inside is False:
        problems.append(
            say(
                "set to {setting} it delivers {least} to {greatest} N·m "
                "where {low} to {high} N·m is specified",
                setting=wrench.setting_text(mark_nm),
                least=written(delivered_nm[0], ".1f"),
                greatest=written(delivered_nm[1], ".1f"),
                low=written(specified_nm[0], ".1f"),
                high=written(specified_nm[1], ".1f"),
            )
        )
    if wrench.graduation_nm > COARSEST_GRADUATION * mark_nm + _SLACK_NM:
        problems.append(
            say(
                "its marks are {share} % of the setting apart, too coarse to set well",
                share=written(100 * wrench.graduation_nm / mark_nm, ".0f"),
            )
        )
    return tuple(problems)
