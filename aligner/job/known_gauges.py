"""The gauges that most benches have, with what is known of each, to put on a job's list."""

from __future__ import annotations

from functools import cache, lru_cache

from pydantic import TypeAdapter

from aligner.data_files import resource
from aligner.job.gauges import Gauge
from aligner.language import say, spoken


class KnownGauge(Gauge):
    """A gauge of resources/gauges.json.

    Attributes:
        name: what it is called; in English where it was not said yet.
        how_to: how it is used, in two sentences; in English, and said where it is shown.
    """

    name: str
    how_to: str = ""

    def for_job(self) -> Gauge:
        """The same as a job's list keeps it."""
        return Gauge(
            resolution=self.resolution,
            limit_of_error=self.limit_of_error,
            repeatability=self.repeatability,
            source=say(self.source),
        )


def known_gauges() -> dict[str, KnownGauge]:
    """Every gauge of the list, by its name in the language spoken, in its order.

    On a job's list that name is the job's own, which can be changed and stays what it is.
    """
    return _named_in(spoken())


@lru_cache(maxsize=4)
def _named_in(_language: str) -> dict[str, KnownGauge]:
    named = (gauge.with_changes(name=say(gauge.name)) for gauge in _known())
    return {gauge.name: gauge for gauge in named}


@cache
def _known() -> tuple[KnownGauge, ...]:
    content = resource("gauges.json").read_bytes()
    return TypeAdapter(tuple[KnownGauge, ...]).validate_json(content)
