"""The gauges that most benches have, with what is known of each, to put on a job's list."""

from __future__ import annotations

from functools import cache

from pydantic import TypeAdapter

from aligner.data_files import resource
from aligner.job.gauges import Gauge


class KnownGauge(Gauge):
    """A gauge of resources/gauges.json.

    Attributes:
        name: what it is called.
        how_to: how it is used, in two sentences.
    """

    name: str
    how_to: str = ""

    def for_job(self) -> Gauge:
        """The same as a job's list keeps it."""
        return Gauge(
            resolution=self.resolution,
            limit_of_error=self.limit_of_error,
            repeatability=self.repeatability,
            source=self.source,
        )


@cache
def known_gauges() -> dict[str, KnownGauge]:
    """Every gauge of the list, by name, in its order."""
    content = resource("gauges.json").read_bytes()
    gauges = TypeAdapter(tuple[KnownGauge, ...]).validate_json(content)
    return {gauge.name: gauge for gauge in gauges}
