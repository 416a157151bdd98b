"""The owner's torque wrenches and adapters, as a job's steps are set on them."""

from __future__ import annotations

from aligner.sheet.model import Part
from aligner.sheet.quantities import Length, Ratio, Torque


class TorqueWrench(Part):
    """What is known of a setting torque wrench; its scale's unit is the one typed here.

    Attributes:
        low: lowest value marked on it.
        high: highest value marked on it.
        graduation: from one mark to the next.
        permissible_deviation: plus or minus, of its certificate.
        drive: its square, in words ("3/8 in").
        grip_length: from the middle of the drive to the middle of the grip.
        source: where these values come from.
    """

    low: Torque
    high: Torque
    graduation: Torque
    permissible_deviation: Ratio = Ratio("4 %", 4.0)
    drive: str = ""
    grip_length: Length | None = None
    source: str = ""
