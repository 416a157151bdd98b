"""The front end's geometry: readings in, corrections out, as pure functions on floats.

Millimetres and degrees at the edge. Axes after ISO 8855: x forward, y to the rider's left,
z up along the steering axis; a positive turn is to the left; a difference is left less right.
"""

from aligner.geometry.agreement import WeightedTurn, chi_square_survival, weighted_turn
from aligner.geometry.in_line import (
    Corner,
    Face,
    ForkDimensions,
    InLine,
    Side,
    from_bars,
    from_plate,
    from_spread,
)
from aligner.geometry.protrusion import (
    Moves,
    MoveSensitivities,
    Policy,
    axle_lean_deg,
    move_sensitivities,
    moves,
    patch_shift_mm,
)
from aligner.geometry.reference_pair import ReferencePair, check_dimensions
from aligner.geometry.squaring import (
    Distances,
    TurnSensitivities,
    changes,
    changes_without_dimensions,
    distances_at,
    straight_distance_mm,
    turn_deg,
    turn_sensitivities,
)
from aligner.geometry.steering import (
    Handling,
    SteeringGeometry,
    normal_trail_mm,
    raised,
    trail_mm,
)

__all__ = [
    "Corner",
    "Distances",
    "Face",
    "ForkDimensions",
    "Handling",
    "InLine",
    "MoveSensitivities",
    "Moves",
    "Policy",
    "ReferencePair",
    "Side",
    "SteeringGeometry",
    "TurnSensitivities",
    "WeightedTurn",
    "axle_lean_deg",
    "changes",
    "changes_without_dimensions",
    "check_dimensions",
    "chi_square_survival",
    "distances_at",
    "from_bars",
    "from_plate",
    "from_spread",
    "move_sensitivities",
    "moves",
    "normal_trail_mm",
    "patch_shift_mm",
    "raised",
    "straight_distance_mm",
    "trail_mm",
    "turn_deg",
    "turn_sensitivities",
    "weighted_turn",
]
