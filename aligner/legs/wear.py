"""A bent tube under a dial: from the pointer's swing to the bend, and how sure a swing is.

The trap: on V-blocks the dial shows TWICE the bend, because the tube's middle goes once to each
side. A limit in the manual is one or the other; comparing a reading with a limit on the bend
condemns a good tube. An oval tube adds to the reading, so half of it is the most the bend can be.
"""

from __future__ import annotations

from math import sqrt

from aligner.language import marked
from aligner.legs.refusals import not_negative


def bend_mm(indicated_mm: float) -> float:
    """Bend of a tube turned on V-blocks: half the total indicator reading, mm.

    Source: US Army TM 10-3930-653-14&P, p. 79: the bend is half of the reading over one full
    revolution.
    """
    return not_negative(marked("indicator reading"), indicated_mm, "mm") / 2


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
