"""What the sheet says of the inside of the legs: oil, springs, sag, and the head bearing's drag.

The trap: an air gap without its bore is no volume, and a pull without its radius is no drag. Each
is kept as the manual prints it, and what is not there is said to be missing, never guessed.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

from aligner import units
from aligner.sheet.model import Part
from aligner.sheet.quantities import (
    Force,
    Length,
    OneOf,
    Quantity,
    Ratio,
    Stiffness,
    Torque,
    Volume,
)

ShareOrLength = Annotated[Ratio | Length, OneOf((Ratio, Length))]


class Pressure(Quantity):
    """A gauge pressure, zero or more; `value` in kPa above the air outside."""

    __slots__ = ()
    dimension = units.PRESSURE


class Way(StrEnum):
    """Which end of a spring stands uppermost."""

    UP = "up"
    DOWN = "down"


class OilSpecification(Part):
    """What goes into each leg.

    Attributes:
        name: as the manual calls it ("fork oil, 15 weight"): a name, not a viscosity.
        air_gap: tube top edge down to the oil, spring out, leg fully compressed.
        air_gap_tolerance: plus or minus, on each leg and on the difference of both.
        volume: for one leg, after it was taken apart.
        volume_tolerance: plus or minus, where the manual gives no air gap.
        air_pressure: of an air-assisted leg, fully extended, as its gauge shows it.
    """

    name: str = ""
    air_gap: Length | None = None
    air_gap_tolerance: Length | None = None
    volume: Volume | None = None
    volume_tolerance: Volume | None = None
    air_pressure: Pressure | None = None


class SpringSpecification(Part):
    """The spring and what is stacked with it.

    Attributes:
        closer_coils: which way up the closer coils go.
        order: what goes in, from the bottom up ("spring, washer, spacer").
        spacer: its length.
        preload: what the spring is shortened by with the leg extended and the cap home.
        rate: from the free length on.
        second_rate: after the change, for a spring in two rates.
        rate_changes_at: compression from the free length at which it changes.
        displaced: volume of spring and spacer in the oil and the air above it.
        has_adjuster: whether the cap holds a preload adjuster.
    """

    closer_coils: Way | None = None
    order: str = ""
    spacer: Length | None = None
    preload: Length | None = None
    rate: Stiffness | None = None
    second_rate: Stiffness | None = None
    rate_changes_at: Length | None = None
    displaced: Volume | None = None
    has_adjuster: bool = False


class SagBand(Part):
    """How far the leg should settle, as a share of its travel or as a length along it.

    Attributes:
        static_low: least sag under the machine alone.
        static_high: most.
        rider_low: least sag with the rider on it.
        rider_high: most.
    """

    static_low: ShareOrLength | None = None
    static_high: ShareOrLength | None = None
    rider_low: ShareOrLength | None = None
    rider_high: ShareOrLength | None = None


class BearingDrag(Part):
    """What it takes to start the steering turning, as a pull at a radius or as a torque.

    Attributes:
        pull_low: least pull that is right.
        pull_high: greatest.
        radius: from the steering axis to where the manual pulls, square to that arm.
        torque_low: least drag torque, where the manual gives that.
        torque_high: greatest.
    """

    pull_low: Force | None = None
    pull_high: Force | None = None
    radius: Length | None = None
    torque_low: Torque | None = None
    torque_high: Torque | None = None


class Legs(Part):
    """The inside of both legs, and the bearing between them.

    Attributes:
        bore: inside diameter of the tube where the oil's surface stands.
        rod: diameter of a rod that stands in that surface; left out where there is none.
        sliding_tube: outside diameter of the tube that slides through the seal; the tubes' own
            where left out, but for an upside-down fork.
        travel: from fully extended to fully compressed.
        oil: what goes in.
        spring: what stands on it.
        sag: how far it should settle.
        bearing: the head bearing's drag.
    """

    bore: Length | None = None
    rod: Length | None = None
    sliding_tube: Length | None = None
    travel: Length | None = None
    oil: OilSpecification = OilSpecification()
    spring: SpringSpecification = SpringSpecification()
    sag: SagBand = SagBand()
    bearing: BearingDrag = BearingDrag()
