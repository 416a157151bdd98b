"""The units a person prefers to see; what they type may be in any."""

from __future__ import annotations

from dataclasses import dataclass

from aligner.language import say
from aligner.units.dimension import ANGLE, DISTANCE, LENGTH, TORQUE, VOLUME
from aligner.units.shown import as_fine, shown
from aligner.units.unit import Dimension


@dataclass(frozen=True)
class Preferred:
    """The symbols of the preferred units, and how a value looks in them."""

    length: str = "mm"
    torque: str = "N·m"
    volume: str = "ml"

    def unit(self, dimension: Dimension) -> str:
        """The preferred unit of a dimension; its own where there is no choice."""
        chosen = {LENGTH: self.length, TORQUE: self.torque, VOLUME: self.volume}
        return chosen.get(dimension, dimension.own_unit)

    def show_length(self, mm: float, *, fine: int = 0) -> str:
        """A length in words; `fine` asks for more decimals."""
        return shown(mm, LENGTH, self.length, fine=fine)

    def show_torque(self, nm: float) -> str:
        """A torque in words."""
        return shown(nm, TORQUE, self.torque)

    def show_torques(self, low_nm: float, high_nm: float) -> str:
        """From one torque to another, as fine as each other: "23.1 to 25.0 N·m"."""
        low, _, unit = self.show_torque(low_nm).partition(" ")
        high = self.show_torque(high_nm).partition(" ")[0]
        low, high = as_fine(low, high), as_fine(high, low)
        return say("{low} to {high}", low=low, high=f"{high} {unit}")

    def show_angle(self, deg: float) -> str:
        """An angle in words."""
        return shown(deg, ANGLE)

    def show_distance(self, km: float) -> str:
        """A distance on the road in words."""
        return shown(km, DISTANCE)
