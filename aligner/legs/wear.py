"""Wear of tubes and bushes: from a dial's reading to the bend, from two diameters to the play.

The trap: on V-blocks the dial shows TWICE the bend, because the tube's middle goes once to each
side. A limit in the manual is one or the other; comparing a reading with a limit on the bend
condemns a good tube. An oval tube adds to the reading, so half of it is the most the bend can be.
"""

from __future__ import annotations

from math import sqrt

from aligner.language import marked, say, written
from aligner.legs.refusals import LegError, finite, not_negative, positive


def indicated_runout_mm(readings_mm: tuple[float, ...]) -> float:
    """Total indicator reading over one turn: highest less lowest, mm.

    Args:
        readings_mm: what the dial showed round the turn, mm, from any zero, either sign.

    Raises:
        LegError: fewer than two readings.
    """
    if len(readings_mm) < 2:
        raise LegError(
            say("runout"),
            say("{count} reading(s)", count=len(readings_mm)),
            say("the highest and the lowest are needed"),
        )
    dial = [finite(marked("runout"), reading) for reading in readings_mm]
    return max(dial) - min(dial)


def bend_mm(indicated_mm: float) -> float:
    """Bend of a tube turned on V-blocks: half the total indicator reading, mm.

    Source: US Army TM 10-3930-653-14&P, p. 79: the bend is half of the reading over one full
    revolution.
    """
    return not_negative(marked("indicator reading"), indicated_mm, "mm") / 2


def indicated_mm(bend: float) -> float:
    """Total indicator reading that a bend (mm) shows, mm: a limit on the bend put as a reading."""
    return 2 * not_negative(marked("bend"), bend, "mm")


def swing_uncertainty_mm(
    repeatability_mm: float, resolution_part_mm: float, limit_part_mm: float
) -> float:
    """Standard uncertainty of a pointer's swing, highest less lowest, mm.

    A swing is two positions of the pointer, so scatter and resolution count twice. The limit
    of error of a dial is of its travel between two positions, so it stays in, once.

    Args:
        repeatability_mm: standard deviation of one position of the pointer, mm.
        resolution_part_mm: standard uncertainty of one position from the scale's step, mm.
        limit_part_mm: standard uncertainty from the limit of error over the travel, mm.

    Source: GUM 5.1.2, for a difference of two independent positions plus one error of travel.
    """
    own = not_negative(marked("repeatability"), repeatability_mm, "mm")
    step = not_negative(marked("resolution"), resolution_part_mm, "mm")
    travel = not_negative(marked("limit of error"), limit_part_mm, "mm")
    return sqrt(2 * own**2 + 2 * step**2 + travel**2)


def bush_play_mm(bush_bore_mm: float, tube_outside_mm: float) -> float:
    """Play of the tube in its bush: bore less tube, on the diameter, mm.

    Raises:
        LegError: a tube that does not go into the bush.
    """
    bore = positive(marked("bush bore"), bush_bore_mm, "mm")
    tube = positive(marked("tube outside diameter"), tube_outside_mm, "mm")
    if tube > bore:
        raise LegError(
            say("tube outside diameter"),
            say(
                "{tube} mm does not go into a bush of {bore} mm",
                tube=written(tube),
                bore=written(bore),
            ),
            say("one of the two is misread, or was measured at another place"),
        )
    return bore - tube


def bush_play_difference_mm(left_play_mm: float, right_play_mm: float) -> float:
    """Play of the left leg less play of the right one, mm."""
    left = not_negative(marked("left bush play"), left_play_mm, "mm")
    return left - not_negative(marked("right bush play"), right_play_mm, "mm")
