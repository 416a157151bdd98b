"""Sag: how far the loaded leg settles, and the preload change that corrects it.

The trap is friction: pushed down and let up slowly the leg stops low, lifted and let down slowly
it stops high, and only the mean of both is where the spring would hold it. All lengths are along
the leg, the same two marks each time (as the seal's lip and the lower bracket).

With a given load the spring's own compression is given too, whatever its rate or rates; so one mm
more spacer is one mm less sag, for a spring in two rates as well. What breaks that rule is a second
force that changes with the stroke: the air. The balance of forces counts it in.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from aligner.language import marked, say, written
from aligner.legs.refusals import (
    ROUNDING_SLACK_MM,
    LegError,
    finite,
    not_negative,
    positive,
)


@dataclass(frozen=True)
class SagReadings:
    """Repeated readings of one length that gets shorter as the leg goes in, mm.

    Attributes:
        extended_mm: wheel off the ground, leg fully extended.
        pushed_down_mm: loaded, after pushing down and letting up slowly.
        lifted_up_mm: loaded, after lifting up and letting down slowly.
    """

    extended_mm: tuple[float, ...]
    pushed_down_mm: tuple[float, ...]
    lifted_up_mm: tuple[float, ...]


@dataclass(frozen=True)
class Sag:
    """What the readings say.

    Attributes:
        sag_mm: extended length less the mean of the two loaded ones, mm.
        stiction_mm: lifted-up mean less pushed-down mean, mm: the band that friction holds.
            Below nothing the two sets were probably changed over.
    """

    sag_mm: float
    stiction_mm: float


@dataclass(frozen=True)
class TwoRateSpring:
    """A spring that is softer (or stiffer) up to some compression and has another rate after it.

    Attributes:
        first_rate_n_per_mm: rate from its free length on, N/mm.
        second_rate_n_per_mm: rate after the change, N/mm (the same: a linear spring).
        change_at_mm: compression from the free length at which the rate changes, mm.
    """

    first_rate_n_per_mm: float
    second_rate_n_per_mm: float
    change_at_mm: float


@dataclass(frozen=True)
class PreloadChange:
    """What to do about a sag.

    Attributes:
        change_mm: change of preload, mm (positive: longer spacer or adjuster further in).
        preload_mm: preload after the change, mm.
        load_n: load on the leg that the measured sag tells of, N.
    """

    change_mm: float
    preload_mm: float
    load_n: float


def measured_sag(readings: SagReadings) -> Sag:
    """Sag from the three sets of readings: L1 - (L2 + L3)/2, each the mean of its set.

    The lengths weigh equally however many readings each set has. Source: common practice, as
    stated in workshop articles (seen).

    Raises:
        LegError: a set without readings, or loaded lengths longer than the extended one.
    """
    extended = _mean(marked("extended length"), readings.extended_mm)
    pushed = _mean(marked("length after pushing down"), readings.pushed_down_mm)
    lifted = _mean(marked("length after lifting up"), readings.lifted_up_mm)
    settled = extended - (pushed + lifted) / 2
    if settled < -ROUNDING_SLACK_MM:
        raise LegError(
            say("sag"),
            say(
                "the loaded length is {excess} mm longer than the extended one",
                excess=written(-settled),
            ),
            say(
                "the extended length is read with the wheel off the ground, and a length that "
                "gets shorter as the leg goes in is needed"
            ),
        )
    return Sag(sag_mm=max(settled, 0.0), stiction_mm=lifted - pushed)


def share_of_travel(sag_mm: float, travel_mm: float) -> float:
    """Sag as a share of the whole travel, 0 to 1.

    Raises:
        LegError: more sag than there is travel.
    """
    settled = not_negative(marked("sag"), sag_mm, "mm")
    travel = positive(marked("travel"), travel_mm, "mm")
    if settled > travel + ROUNDING_SLACK_MM:
        raise LegError(
            say("sag"),
            say(
                "{sag} mm is more than the travel of {travel} mm",
                sag=written(settled),
                travel=written(travel),
            ),
            say("one is misread"),
        )
    return min(settled / travel, 1.0)


def preload_change_mm(measured_sag_mm: float, wanted_sag_mm: float) -> float:
    """Change of preload that makes the measured sag the wanted one, spring alone, mm.

    One for one along the leg, positive for a longer spacer. Both legs alike.

    Raises:
        LegError: no sag at all, measured or wanted: a leg against its stop says nothing of how
            much preload it holds beyond that.
    """
    return _sag(marked("measured sag"), measured_sag_mm) - _sag(marked("wanted sag"), wanted_sag_mm)


def spring_force_n(spring: TwoRateSpring, compression_mm: float) -> float:
    """Force at a compression from the free length, N; nothing while the spring is loose."""
    k1, k2, c1 = _rates(spring)
    c = finite(marked("compression"), compression_mm)
    if c <= 0:
        return 0.0
    return k1 * c if c <= c1 else k1 * c1 + k2 * (c - c1)


def spring_compression_mm(spring: TwoRateSpring, force_n: float) -> float:
    """Compression from the free length that a force makes, mm: `spring_force_n` solved for it."""
    k1, k2, c1 = _rates(spring)
    force = not_negative(marked("spring force"), force_n, "N")
    return force / k1 if force <= k1 * c1 else c1 + (force - k1 * c1) / k2


def preload_change_by_forces(
    spring: TwoRateSpring,
    preload_mm: float,
    measured_sag_mm: float,
    wanted_sag_mm: float,
    air_at_measured_n: float = 0.0,
    air_at_wanted_n: float = 0.0,
) -> PreloadChange:
    """Preload change from the balance of forces of one leg: load = spring + air.

    spring(preload + measured) + air(measured) = spring(new preload + wanted) + air(wanted),
    solved for the new preload in closed form. Derived: mathematics.md 9.

    Args:
        spring: the spring's two rates.
        preload_mm: preload now, mm.
        measured_sag_mm: sag now, mm.
        wanted_sag_mm: sag wanted, mm.
        air_at_measured_n: the air's force at the measured sag, N (`air_force_n`).
        air_at_wanted_n: the air's force at the wanted sag, N.

    Raises:
        LegError: the spring would be loose, or the air alone carries the load.
    """
    preload = not_negative(marked("preload"), preload_mm, "mm")
    measured = _sag(marked("measured sag"), measured_sag_mm)
    wanted = _sag(marked("wanted sag"), wanted_sag_mm)
    air_measured = finite(marked("air force at the measured sag"), air_at_measured_n)
    air_wanted = finite(marked("air force at the wanted sag"), air_at_wanted_n)
    load = spring_force_n(spring, preload + measured) + air_measured
    if load < air_wanted:
        raise LegError(
            say("wanted sag"),
            say(
                "at {sag} mm the air alone holds {force} N, more than the load of {load} N",
                sag=written(wanted),
                force=written(air_wanted, ".0f"),
                load=written(load, ".0f"),
            ),
            say("less sag or a larger air gap is needed"),
        )
    needed = spring_compression_mm(spring, load - air_wanted) - wanted
    if needed < -ROUNDING_SLACK_MM:
        raise LegError(
            say("wanted sag"),
            say(
                "{sag} mm would leave the spring loose by {gap} mm",
                sag=written(wanted),
                gap=written(-needed, ".1f"),
            ),
            say("less sag or a softer spring is needed"),
        )
    needed = max(needed, 0.0)
    return PreloadChange(change_mm=needed - preload, preload_mm=needed, load_n=load)


def _mean(where: str, readings: tuple[float, ...]) -> float:
    if not readings:
        raise LegError(say(where), say("no reading"), say("one or more in mm are needed"))
    return math.fsum(positive(where, reading, "mm") for reading in readings) / len(readings)


def _sag(where: str, sag_mm: float) -> float:
    if finite(where, sag_mm) <= 0:
        raise LegError(
            say(where),
            say("{sag} mm: the leg is against its stop", sag=written(sag_mm)),
            say("a sag greater than 0 mm is needed, with less preload or more load"),
        )
    return sag_mm


def _rates(spring: TwoRateSpring) -> tuple[float, float, float]:
    return (
        positive(marked("first spring rate"), spring.first_rate_n_per_mm, "N/mm"),
        positive(marked("second spring rate"), spring.second_rate_n_per_mm, "N/mm"),
        not_negative(marked("compression where the rate changes"), spring.change_at_mm, "mm"),
    )
