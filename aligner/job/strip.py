"""What was taken off on this job, and how things stood before it was."""

from __future__ import annotations

from aligner.job.log import LogEntry
from aligner.sheet.model import Part


class Strip(Part):
    """The work of taking apart.

    Attributes:
        log: ticks of the loosening list.
    """

    log: tuple[LogEntry, ...] = ()
