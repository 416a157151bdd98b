"""The bike: dimensions, clamps, fasteners and limits, as immutable values."""

from aligner.sheet.dimensions import (
    Fork,
    ForkKind,
    HandlebarPlace,
    ProtrusionLimits,
    Steering,
    TurnLimits,
)
from aligner.sheet.fasteners import (
    AlsoPrinted,
    Fastener,
    OrderRule,
    Pattern,
    Side,
    ThreadCondition,
    TorqueSpecification,
)
from aligner.sheet.sheet import Sheet

__all__ = [
    "AlsoPrinted",
    "Fastener",
    "Fork",
    "ForkKind",
    "HandlebarPlace",
    "OrderRule",
    "Pattern",
    "ProtrusionLimits",
    "Sheet",
    "Side",
    "Steering",
    "ThreadCondition",
    "TorqueSpecification",
    "TurnLimits",
]
