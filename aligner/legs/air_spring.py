"""The air above the oil as a spring: pressure and force over the stroke, left against right.

Two traps. The law holds for ABSOLUTE pressure: a gauge reads 0 where the air is at 101.325 kPa.
And the air gap is read with the leg fully compressed, so it is the air that is left at the END of
the stroke; the column the stroke starts from is larger by the volume the tube sweeps on its way.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from aligner.language import marked, say, written
from aligner.legs.oil_level import MM3_PER_ML, LegBore, oil_volume_ml
from aligner.legs.refusals import LegError, finite, not_negative, positive

ATMOSPHERE_KPA = 101.325
"""Standard atmosphere, absolute (ISO 2533; exact by definition)."""
LOWEST_ABSOLUTE_KPA = 50.0
"""About the air pressure 5,500 m up: a leg closed with less was read on a gauge."""
ISOTHERMAL, ADIABATIC = 1.0, 1.4
"""Exponents for air: so slow that it stays cool, so fast that no heat leaves."""
KPA_MM2_PER_N = 1000.0


@dataclass(frozen=True)
class AirColumn:
    """The air closed in one leg, at full extension.

    Attributes:
        volume_ml: air in the extended leg, V0, ml.
        swept_area_mm2: volume lost for each mm of stroke, A, mm² (the outside of the tube).
        exponent: n, from 1 (slow) to 1.4 (fast).
        initial_absolute_kpa: p0, ABSOLUTE pressure in the extended leg, kPa.
    """

    volume_ml: float
    swept_area_mm2: float
    exponent: float
    initial_absolute_kpa: float = ATMOSPHERE_KPA


@dataclass(frozen=True)
class AirForcePoint:
    """The air's force in both legs at one stroke.

    Attributes:
        stroke_mm: stroke from full extension, mm.
        left_n: force that pushes the left leg apart, N.
        right_n: the same of the right leg, N.
        difference_n: left less right, N (positive: the left leg is the stiffer).
    """

    stroke_mm: float
    left_n: float
    right_n: float
    difference_n: float


def air_column(
    bore: LegBore,
    gap_mm: float,
    tube_outside_mm: float,
    travel_mm: float,
    exponent: float,
    initial_absolute_kpa: float = ATMOSPHERE_KPA,
    displaced_ml: float = 0.0,
) -> AirColumn:
    """The air column of an extended leg from the air gap measured with it fully compressed.

    V0 = A_bore gap + A_tube travel - displaced. Derived: the leg's closed space grows by the
    outside area of the tube times the travel, and oil does not change its volume.

    Args:
        bore: the bore in which the gap was measured, and the rod in it.
        gap_mm: air gap, spring out, leg fully compressed, mm.
        tube_outside_mm: outside diameter of the tube that slides in at the seal, mm.
        travel_mm: stroke from full extension to where the gap was measured, mm.
        exponent: 1 to 1.4.
        initial_absolute_kpa: absolute pressure at full extension, kPa.
        displaced_ml: volume of what goes in after the measurement (spring, spacer, the cap's
            plug), ml.

    Raises:
        LegError: what goes in leaves no air, or a dimension is impossible.
    """
    outside = positive(marked("tube outside diameter"), tube_outside_mm, "mm")
    swept_area = math.pi / 4 * outside**2
    swept_ml = swept_area * positive(marked("travel"), travel_mm, "mm") / MM3_PER_ML
    gap_ml = oil_volume_ml(bore, not_negative(marked("air gap"), gap_mm, "mm"))
    displaced = not_negative(marked("volume of spring and spacer"), displaced_ml, "ml")
    if displaced >= gap_ml + swept_ml:
        raise LegError(
            say("volume of spring and spacer"),
            say("{volume} ml leaves no air in the leg", volume=written(displaced)),
            say("less than {volume} ml is needed", volume=written(gap_ml + swept_ml, ".1f")),
        )
    column = AirColumn(gap_ml + swept_ml - displaced, swept_area, exponent, initial_absolute_kpa)
    _check(column)
    return column


def air_pressure_kpa(column: AirColumn, stroke_mm: float) -> float:
    """Absolute pressure at a stroke from full extension, kPa.

    p = p0 (V0 / (V0 - A s))^n: polytropic change of an ideal gas (mathematics.md 9).

    Raises:
        LegError: the stroke uses up the air, or the column's values are impossible.
    """
    _check(column)
    s = not_negative(marked("stroke"), stroke_mm, "mm")
    v0 = column.volume_ml * MM3_PER_ML
    left_over = v0 - column.swept_area_mm2 * s
    if left_over <= 0:
        raise LegError(
            say("stroke"),
            say(
                "{stroke} mm of stroke uses up the air, which is all gone after {most} mm",
                stroke=written(s),
                most=written(v0 / column.swept_area_mm2, ".1f"),
            ),
            say("a shorter stroke or a larger air gap is needed"),
        )
    return column.initial_absolute_kpa * math.pow(v0 / left_over, column.exponent)


def air_force_n(column: AirColumn, stroke_mm: float) -> float:
    """Force with which the air pushes the leg apart, against the atmosphere outside, N.

    Negative only where the leg was closed with less than the atmosphere in it.
    """
    excess_kpa = air_pressure_kpa(column, stroke_mm) - ATMOSPHERE_KPA
    return excess_kpa * column.swept_area_mm2 / KPA_MM2_PER_N


def air_force_difference(left: AirColumn, right: AirColumn, stroke_mm: float) -> AirForcePoint:
    """Both legs' air forces at one stroke and left less right.

    Raises:
        LegError: naming the leg whose air the stroke uses up.
    """
    forces = []
    named = ((marked("left leg, {field}"), left), (marked("right leg, {field}"), right))
    for where, column in named:
        try:
            forces.append(air_force_n(column, stroke_mm))
        except LegError as refusal:
            field = say(where, field=refusal.where)
            raise LegError(field, refusal.understood, refusal.wanted) from refusal
    return AirForcePoint(stroke_mm, forces[0], forces[1], forces[0] - forces[1])


def air_force_table(
    left: AirColumn, right: AirColumn, travel_mm: float, steps: int = 50
) -> tuple[AirForcePoint, ...]:
    """The air forces at `steps` equal steps from full extension to full travel, ends included.

    Raises:
        LegError: no step, no travel, or a travel that uses up the air of a leg.
    """
    travel = positive(marked("travel"), travel_mm, "mm")
    if steps < 1:
        raise LegError(say("steps"), f"{steps}", say("one step or more is needed"))
    last = air_force_difference(left, right, travel)  # first: a refusal names the whole travel
    before = (air_force_difference(left, right, travel * i / steps) for i in range(steps))
    return (*before, last)


def _check(column: AirColumn) -> None:
    positive(marked("air in the leg"), column.volume_ml, "ml")
    positive(marked("area of the tube"), column.swept_area_mm2, "mm²")
    if not ISOTHERMAL <= finite(marked("air exponent"), column.exponent) <= ADIABATIC:
        raise LegError(
            say("air exponent"),
            written(column.exponent),
            say("a value from 1 (slow) to 1.4 (fast) is needed"),
        )
    if finite(marked("air pressure"), column.initial_absolute_kpa) < LOWEST_ABSOLUTE_KPA:
        raise LegError(
            say("air pressure"),
            say(
                "{pressure} kPa looks like a gauge reading",
                pressure=written(column.initial_absolute_kpa),
            ),
            say(
                "the absolute pressure is needed: gauge reading + {pressure} kPa",
                pressure=written(ATMOSPHERE_KPA),
            ),
        )
