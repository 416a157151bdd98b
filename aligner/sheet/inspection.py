"""The wear limits of a bike, as the owner's manual prints them.

The trap: a runout limit is printed either for what the dial shows or for the bend, which is
half of it. So a limit carries which of the two it is of; taking one for the other passes a
bent tube or condemns a good one.
"""

from __future__ import annotations

from enum import StrEnum

from aligner.sheet.model import Part
from aligner.sheet.quantities import Length


class LimitOf(StrEnum):
    """What a runout limit is printed for."""

    INDICATED = "indicated"
    BEND = "bend"


class InspectionLimit(Part):
    """How far a part may be worn. Whether it is the most or the least, its point says.

    Attributes:
        value: as printed, zero or more.
        of: what a runout limit is printed for; what the dial shows where nothing is said. No
            other kind of limit looks at it.
        source: where the value comes from ("manual p. 12-31").
    """

    value: Length
    of: LimitOf = LimitOf.INDICATED
    source: str = ""
