"""What was taken off on this job, in which order, and where its fasteners went.

The trap: the way back is the way off turned round, so an entry keeps its place in the order. What
is back again is marked so and never taken out.
"""

from __future__ import annotations

from datetime import datetime

from aligner.job.log import LogEntry
from aligner.sheet.model import Part


class Removed(Part):
    """Something that was in the way and was taken off.

    Attributes:
        name: what it is ("headlamp and bracket").
        off: when it was taken off.
        fasteners: where its fasteners went.
        note: anything else that lets it go back as it was.
        reminder: what to mind with it, as it was offered when the entry was made.
        back: when it went back on; `None` while it is off.
    """

    name: str
    off: datetime
    fasteners: str = ""
    note: str = ""
    reminder: str = ""
    back: datetime | None = None


class Strip(Part):
    """The work of taking apart.

    Attributes:
        log: ticks of the loosening list.
        removed: what was taken off, in the order it came off.
    """

    log: tuple[LogEntry, ...] = ()
    removed: tuple[Removed, ...] = ()
