"""The gauges a reading can be said to have been taken with: the job's own, then known ones.

The trap: a known gauge that is chosen must stand on the job's own list at once, or the reading
would carry the name of a gauge that nothing is known of.
"""

from __future__ import annotations

from aligner.job.job import Job
from aligner.job.known_gauges import known_gauges
from aligner.language import say


def gauge_choices(job: Job, chosen: str | None) -> list[tuple[object, str]]:
    """What a person can choose from: nothing yet, the job's gauges, and known ones."""
    names = dict.fromkeys([*job.gauges, *known_gauges()])
    if chosen:
        names.setdefault(chosen)
    return [(None, say("which gauge?")), *((name, name) for name in names)]


def with_gauge_known(job: Job, name: str | None) -> Job:
    """The job with a known gauge put on its list; one that is there stays as it is."""
    if not name or name in job.gauges or name not in known_gauges():
        return job
    return job.with_changes(gauges={**job.gauges, name: known_gauges()[name].for_job()})
