"""One piece of work on one bike, as an immutable value."""

from aligner.job.align import (
    Align,
    BarReadings,
    PlateReadings,
    ProtrusionReadings,
    SpreadReadings,
    SquaringPair,
)
from aligner.job.gauges import Gauge
from aligner.job.job import AsFound, Attempt, Check, Job, Prove, SignOff
from aligner.job.log import Action, LogEntry, ticked_steps

__all__ = [
    "Action",
    "Align",
    "AsFound",
    "Attempt",
    "BarReadings",
    "Check",
    "Gauge",
    "Job",
    "LogEntry",
    "PlateReadings",
    "ProtrusionReadings",
    "Prove",
    "SignOff",
    "SpreadReadings",
    "SquaringPair",
    "ticked_steps",
]
