"""One piece of work on one bike, as an immutable value."""

from aligner.job.align import (
    Align,
    BarReadings,
    InLineReadings,
    PlateReadings,
    ProtrusionReadings,
    SpreadReadings,
    SquaringPair,
)
from aligner.job.as_found import AsFound
from aligner.job.gauges import Gauge
from aligner.job.job import Attempt, Check, Job, Prove, SignOff
from aligner.job.log import Action, LogEntry, ticked_steps
from aligner.job.wrenches import Adapter, TorqueWrench, WrenchChoice

__all__ = [
    "Action",
    "Adapter",
    "Align",
    "AsFound",
    "Attempt",
    "BarReadings",
    "Check",
    "Gauge",
    "InLineReadings",
    "Job",
    "LogEntry",
    "PlateReadings",
    "ProtrusionReadings",
    "Prove",
    "SignOff",
    "SpreadReadings",
    "SquaringPair",
    "TorqueWrench",
    "WrenchChoice",
    "ticked_steps",
]
