"""The gauges a reading can be said to have been taken with: the job's own, then known ones.

The trap: a known gauge that is chosen must stand on the job's own list at once, or the reading
would carry the name of a gauge that nothing is known of.
"""

from __future__ import annotations

from aligner.job.job import Job
from aligner.job.known_gauges import known_gauge, not_listed
from aligner.language import say


def gauge_choices(job: Job, chosen: str | None) -> list[tuple[object, str]]:
    """What a person can choose from: nothing yet, the job's gauges, and known ones."""
    names = dict.fromkeys([*job.gauges, *not_listed(job.gauges)])
    if chosen:
        names.setdefault(chosen)
    return [(None, say("which gauge?")), *((name, name) for name in names)]


def with_gauge_known(job: Job, name: str | None) -> Job:
    """The job with a known gauge put on its list; one that is there stays as it is."""
    known = known_gauge(name) if name and name not in job.gauges else None
    if not name or known is None:
        return job
    return job.with_changes(gauges={**job.gauges, name: known.for_job()})
