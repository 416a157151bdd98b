"""What went into each leg, and how the springs and the head bearing were set.

The trap: the air gap that counts is the one read with the spring out and the leg fully compressed,
after the oil has been pumped through and has settled. Earlier readings are kept beside it.
"""

from __future__ import annotations

from datetime import date, datetime
from enum import StrEnum

from aligner.job.log import LogEntry
from aligner.language import marked
from aligner.sheet.model import Part
from aligner.sheet.quantities import Force, Length, Viscosity, Volume


class LegOil(Part):
    """The oil of one leg.

    Attributes:
        gap: readings of the air gap, spring out, leg fully compressed.
        volume: what was poured in.
    """

    gap: tuple[Length, ...] = ()
    volume: Volume | None = None


class EarlierGaps(Part):
    """Readings that were acted on, kept as they were.

    Attributes:
        closed: when they were put by.
        left: readings of the left leg.
        right: readings of the right leg.
    """

    closed: datetime
    left: tuple[Length, ...] = ()
    right: tuple[Length, ...] = ()


class OilBlend(Part):
    """Two oils to be mixed to a wanted viscosity, all three at one temperature.

    Attributes:
        first_name: of the first oil, as its bottle says.
        first: its viscosity from its data sheet.
        second_name: of the second oil.
        second: its viscosity.
        wanted: of the blend.
        amount: wanted in all.
    """

    first_name: str = ""
    first: Viscosity | None = None
    second_name: str = ""
    second: Viscosity | None = None
    wanted: Viscosity | None = None
    amount: Volume | None = None


class SpringFitting(Part):
    """Spring and spacer, the same in both legs, all lengths along the leg.

    Attributes:
        free_length: of the spring, standing free.
        room: from the spring's lower seat to the underside of the cap when home, leg extended,
            preload adjuster at its lowest.
        washers: thickness of all washers and seats between them, added up.
        wanted_preload: what the spring is to be shortened by; the sheet's where left out.
        old_spacer: as it came out.
        solid_length: of the spring with all coils touching.
        fitted_spacer: that went in.
    """

    free_length: Length | None = None
    room: Length | None = None
    washers: Length | None = None
    wanted_preload: Length | None = None
    old_spacer: Length | None = None
    solid_length: Length | None = None
    fitted_spacer: Length | None = None


class SagLengths(Part):
    """Lengths along the leg between the same two marks, shorter as the leg goes in.

    Attributes:
        gauge: name of the gauge on the job's list.
        extended: wheel off the ground.
        static_down: machine alone, after pushing down and letting up slowly.
        static_up: machine alone, after lifting up and letting down slowly.
        rider_down: rider on it, after pushing down.
        rider_up: rider on it, after lifting up.
        spacer: that was in each leg while they were read; a later one does not change them.
    """

    gauge: str | None = None
    extended: tuple[Length, ...] = ()
    static_down: tuple[Length, ...] = ()
    static_up: tuple[Length, ...] = ()
    rider_down: tuple[Length, ...] = ()
    rider_up: tuple[Length, ...] = ()
    spacer: Length | None = None


class FallAway(StrEnum):
    """How the steering falls from the middle to each side, front wheel off the ground.

    Its value is kept in the job, and said where it is shown.
    """

    FREE = marked("falls freely to both sides")
    SLOW = marked("falls slowly or stops on the way")
    NOTCH = marked("catches in the middle")
    PLAY = marked("knocks: there is play")


class BearingAdjustment(Part):
    """A later change of the head bearing's setting.

    Attributes:
        on: the day.
        what: was changed ("stem nut 1/16 turn tighter").
        why: what the road test showed.
    """

    on: date
    what: str = ""
    why: str = ""


class HeadBearing(Part):
    """How the head bearing was checked.

    Attributes:
        pull: readings of the scale at which the steering starts to turn.
        radius: from the steering axis to the scale's hook, square to that arm.
        fall_away: what was felt.
        adjustments: made after road tests, oldest first.
    """

    pull: tuple[Force, ...] = ()
    radius: Length | None = None
    fall_away: FallAway | None = None
    adjustments: tuple[BearingAdjustment, ...] = ()


class Build(Part):
    """What is set while the front end is built up.

    Attributes:
        gauge: name of the gauge the air gaps were read with.
        oil: name of the oil that went in.
        left: the left leg's oil.
        right: the right leg's oil.
        earlier: air gaps read before oil was added or drawn off, oldest first.
        blend: of two oils, where one was mixed.
        spring: spring and spacer of each leg.
        sag: lengths read for it.
        bearing: the head bearing's check.
        log: ticks of the build list.
    """

    gauge: str | None = None
    oil: str = ""
    left: LegOil = LegOil()
    right: LegOil = LegOil()
    earlier: tuple[EarlierGaps, ...] = ()
    blend: OilBlend = OilBlend()
    spring: SpringFitting = SpringFitting()
    sag: SagLengths = SagLengths()
    bearing: HeadBearing = HeadBearing()
    log: tuple[LogEntry, ...] = ()
