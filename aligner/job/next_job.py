"""The next job on the same bike, begun from the last.

The trap: what was read last time must never pass for what was read this time. So readings,
ticks and findings begin empty; what is carried over says that it is, and from when.
"""

from __future__ import annotations

from datetime import datetime

from aligner.job.edits_align import with_attempt_closed
from aligner.job.edits_inspect import with_carried
from aligner.job.job import Job


def begun_from(last: Job, at: datetime, title: str = "") -> Job:
    """A new job on the bike of an earlier one.

    Args:
        last: the earlier job; its sheet, gauges, wrenches and measuring points are taken over,
            and what was to be watched comes back.
        at: the time now.
        title: of the new job.
    """
    begun = Job(
        title=title,
        sheet=last.sheet,
        gauges=last.gauges,
        wrenches=last.wrenches,
        adapters=last.adapters,
        wrench_choices=last.wrench_choices,
        align=with_attempt_closed(last, at).align.with_changes(begun=None),
    )
    return with_carried(begun, last)
