"""Oil level of one leg: from a measured air gap to the millilitres that put it right.

The trap: the air gap is read from the tube's top edge DOWN to the oil (spring out, leg fully
compressed), so a bigger gap is less oil. Volume alone does not set the level either: what stays
behind in the damper differs from leg to leg, so the volume is a check and the gap is the setting.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from aligner.language import marked, say, written
from aligner.legs.refusals import (
    LegError,
    finite,
    not_negative,
    positive,
)

MM3_PER_ML = 1000.0


@dataclass(frozen=True)
class LegBore:
    """The inside of the fork tube where the oil's surface stands.

    Attributes:
        bore_mm: inside diameter of the fork tube, mm.
        rod_mm: diameter of the damper rod that stands in the oil's surface, mm (0: none).
    """

    bore_mm: float
    rod_mm: float = 0.0


@dataclass(frozen=True)
class OilCorrection:
    """What brings one leg to the wanted air gap.

    Attributes:
        change_ml: oil to add (positive) or to draw off (negative), ml.
        level_rise_mm: how far the oil's surface rises by it, mm (negative: falls).
    """

    change_ml: float
    level_rise_mm: float


@dataclass(frozen=True)
class VolumeComparison:
    """Oil put in, against the manual's volume for the leg.

    Attributes:
        difference_ml: put in less the manual's, ml (positive: more than the manual says).
        share: the difference as a share of the manual's volume.
        level_rise_mm: the change of level that the difference makes in the bore, mm.
    """

    difference_ml: float
    share: float
    level_rise_mm: float


def oil_area_mm2(bore: LegBore) -> float:
    """Area of the oil's surface: the bore's less the rod's, mm².

    Raises:
        LegError: no bore, or a rod that fills it.
    """
    bore_mm = positive(marked("bore diameter"), bore.bore_mm, "mm")
    rod_mm = not_negative(marked("rod diameter"), bore.rod_mm, "mm")
    if rod_mm >= bore_mm:
        raise LegError(
            say("rod diameter"),
            say(
                "{rod} mm does not go into a bore of {bore} mm",
                rod=written(rod_mm),
                bore=written(bore_mm),
            ),
            say("the rod must be thinner than the bore"),
        )
    return math.pi / 4 * (bore_mm - rod_mm) * (bore_mm + rod_mm)


def oil_volume_ml(bore: LegBore, height_mm: float) -> float:
    """Volume between two levels in the bore, `height_mm` apart (signed as the height), ml.

    The same for oil as for the column of air above it. Source: geometry, mathematics.md 9.
    """
    return oil_area_mm2(bore) * finite(marked("height"), height_mm) / MM3_PER_ML


def oil_correction(bore: LegBore, measured_gap_mm: float, wanted_gap_mm: float) -> OilCorrection:
    """Oil to add or to draw off so that the measured air gap becomes the wanted one.

    Args:
        bore: the tube's bore and the rod in it.
        measured_gap_mm: tube top edge down to the oil, mm.
        wanted_gap_mm: the same as the manual gives it, mm.

    Raises:
        LegError: a gap below nothing (oil above the tube's edge), or an impossible bore.
    """
    measured = not_negative(marked("measured air gap"), measured_gap_mm, "mm")
    wanted = not_negative(marked("wanted air gap"), wanted_gap_mm, "mm")
    rise = measured - wanted
    return OilCorrection(change_ml=oil_volume_ml(bore, rise), level_rise_mm=rise)


def suction_tube_depth_mm(wanted_gap_mm: float) -> float:
    """Length of suction tube below the tube's top edge, so that it draws air at the gap, mm.

    Overfill a little, set the stop at this length, let it rest on the edge and draw off until air
    comes: the level is then at the tube's end, whatever the leg held before (common practice, no
    source).
    """
    return positive(marked("wanted air gap"), wanted_gap_mm, "mm")


def volume_against_manual(bore: LegBore, put_in_ml: float, manual_ml: float) -> VolumeComparison:
    """Oil put in, against the manual's volume, and what the difference does to the level."""
    put_in = not_negative(marked("oil put in"), put_in_ml, "ml")
    manual = positive(marked("the manual's oil volume"), manual_ml, "ml")
    difference = put_in - manual
    return VolumeComparison(
        difference_ml=difference,
        share=difference / manual,
        level_rise_mm=difference * MM3_PER_ML / oil_area_mm2(bore),
    )
