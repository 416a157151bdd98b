"""The owner's torque wrenches and adapters, as a job's steps are set on them.

The trap: the unit of a wrench's scale is the one its lowest mark is typed in here, so a scale
in lbf·ft must be typed in lbf·ft, whatever the manual prints.
"""

from __future__ import annotations

from typing import Self

from pydantic import Field, model_validator

from aligner.errors import AlignerError
from aligner.language import say
from aligner.sheet.model import Part
from aligner.sheet.quantities import Angle, Length, Ratio, Torque

#: A mark counts as the same one within this share: marks in lbf·ft are no whole N·m.
_ROUNDING = 1e-9


class TorqueWrench(Part):
    """What is known of a setting torque wrench; its scale's unit is the one typed here.

    Attributes:
        low: lowest value marked on it.
        high: highest value marked on it.
        graduation: from one mark to the next.
        permissible_deviation: plus or minus, of its certificate.
        lowest_share: lowest share of the highest mark it is used at ("20 %", the older rule);
            left out, it is used from its lowest mark (ISO 6789-1:2017).
        drive: its square, in words ("3/8 in").
        grip_length: from the middle of the drive to the middle of the grip.
        source: where these values come from.
    """

    low: Torque
    high: Torque
    graduation: Torque
    permissible_deviation: Ratio = Ratio("4 %", 4.0)
    lowest_share: Ratio | None = None
    drive: str = ""
    grip_length: Length | None = None
    source: str = ""

    @model_validator(mode="after")
    def _can_be_a_scale(self) -> Self:
        if not 0 < self.low.value <= self.high.value:
            raise AlignerError(
                "",
                say("its scale runs from {low} to {high}", low=self.low.said, high=self.high.said),
                say("give the lowest mark above zero, then the highest"),
            )
        if not self.graduation.value > 0:
            raise AlignerError(
                "", say("its graduation is not above zero"), say("read it off the scale")
            )
        if not self.permissible_deviation.value < 100:
            raise AlignerError(
                "",
                say("its deviation is {share}", share=self.permissible_deviation.said),
                say("give what its certificate says, usually 4 %"),
            )
        if self.grip_length is not None and not self.grip_length.value > 0:
            raise AlignerError(
                "", say("its grip length is not above zero"), say("measure it again")
            )
        if self.lowest_share is not None and self.lowest_share.value > 100:
            raise AlignerError(
                "",
                say("its lowest share is {share}", share=self.lowest_share.said),
                say("20 % of the highest mark is usual"),
            )
        return self

    @property
    def doubt(self) -> tuple[str, AlignerError] | None:
        """Why no setting can be trusted to this wrench: the field, and what is wrong with it.

        Such a wrench is not refused with its document, which may be years old: it stays on the
        list and is not chosen until it is put right.
        """
        if not self.permissible_deviation.value > 0:
            return "permissible_deviation", AlignerError(
                "",
                say("its deviation is {share}", share=self.permissible_deviation.said),
                say("no wrench is exact: give what its certificate says, usually 4 %"),
            )
        if self.low.unit != self.high.unit:
            return "high", AlignerError(
                "",
                say(
                    "its scale runs from {low} to {high}, in two units",
                    low=self.low.said,
                    high=self.high.said,
                ),
                say("give both marks of the same scale"),
            )
        span = self.high.value - self.low.value
        if span > 0 and self.graduation.value > span * (1 + _ROUNDING):
            return "graduation", AlignerError(
                "",
                say(
                    "its marks are {graduation} apart, more than from its lowest to its highest",
                    graduation=self.graduation.said,
                ),
                say("give the distance from one mark to the next"),
            )
        return None


class Adapter(Part):
    """What stands between a wrench's drive and the fastener: a crow's foot, a hook, an extension.

    Attributes:
        effective_length: from the middle of the drive to the middle of the fastener (E).
        angle: between adapter and wrench: 0 straight out, 90 square, 180 folded back.
        concentric: whether the fastener lies in line with the drive, as under a socket, so
            that the setting does not change.
        drive: the square it takes, in words.
        source: where these values come from.
    """

    effective_length: Length = Length("0 mm", 0.0)
    angle: Angle = Angle("0 deg", 0.0)
    concentric: bool = False
    drive: str = ""
    source: str = ""


class WrenchChoice(Part):
    """The wrench and adapter a person chose for one joint.

    Attributes:
        wrench: its name on the job's list; left out, the best of them for this adapter.
        adapter: its name on the job's list; left out, a plain socket.
    """

    wrench: str | None = Field(default=None, min_length=1)
    adapter: str | None = Field(default=None, min_length=1)
