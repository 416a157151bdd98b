"""Quantities as people type them, and pint behind one door.

`dimension` says what can be measured and in which units (`unit`), `typed` reads what a person or a
document wrote, `shown` writes a value in the unit a person prefers.
"""

from aligner.units.dimension import (
    ANGLE,
    DISTANCE,
    FORCE,
    LENGTH,
    PRESSURE,
    RATIO,
    STIFFNESS,
    TORQUE,
    VISCOSITY,
    VOLUME,
)
from aligner.units.shown import shown
from aligner.units.typed import TypedQuantity, UnreadableQuantity, read_quantity
from aligner.units.unit import Dimension, factor

__all__ = [
    "ANGLE",
    "DISTANCE",
    "FORCE",
    "LENGTH",
    "PRESSURE",
    "RATIO",
    "STIFFNESS",
    "TORQUE",
    "VISCOSITY",
    "VOLUME",
    "Dimension",
    "TypedQuantity",
    "UnreadableQuantity",
    "factor",
    "read_quantity",
    "shown",
]
