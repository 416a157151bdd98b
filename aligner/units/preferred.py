"""The units a person prefers to see; what they type may be in any."""

from __future__ import annotations

from dataclasses import dataclass

from aligner.units.dimension import ANGLE, DISTANCE, LENGTH, TORQUE, VOLUME
from aligner.units.shown import shown
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

    def show_angle(self, deg: float) -> str:
        """An angle in words."""
        return shown(deg, ANGLE)

    def show_distance(self, km: float) -> str:
        """A distance on the road in words."""
        return shown(km, DISTANCE)
