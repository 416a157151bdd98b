"""How things stood before anything was loosened: what lets everything go back where it was.

The trap: a height that was not read before the clamps were slack cannot be read afterwards. All of
it is left out where it was not read, and nothing stands in its place.
"""

from __future__ import annotations

from aligner.job.align import ProtrusionReadings, SquaringPair
from aligner.sheet.model import Part
from aligner.sheet.quantities import Length, Volume


class LegAsFound(Part):
    """What one leg held, and how it was set.

    Attributes:
        oil: what was drained from it.
        oil_look: how that looked ("grey, smells burnt, no metal").
        preload: where its preload adjuster stood, in words.
    """

    oil: Volume | None = None
    oil_look: str = ""
    preload: str = ""


class SagAsFound(Part):
    """Lengths along the leg between the same two marks, shorter as the leg goes in.

    Attributes:
        extended: wheel off the ground.
        static: the machine alone on its wheels.
        rider: with the rider on it.
    """

    extended: tuple[Length, ...] = ()
    static: tuple[Length, ...] = ()
    rider: tuple[Length, ...] = ()


class AsFound(Part):
    """How things stood before anything was loosened.

    Attributes:
        protrusion: the legs' heights.
        bracket: the lower bracket's distances to the frame, both sides.
        handlebars: where they stood, from where to where, or a length, as typed.
        air_pressure: of an air-assisted fork, in words or as typed with its unit.
        steering: how it felt.
        left: the left leg.
        right: the right leg.
        sag: lengths read for it.
    """

    protrusion: ProtrusionReadings = ProtrusionReadings()
    bracket: SquaringPair = SquaringPair()
    handlebars: str = ""
    air_pressure: str = ""
    steering: str = ""
    left: LegAsFound = LegAsFound()
    right: LegAsFound = LegAsFound()
    sag: SagAsFound = SagAsFound()
