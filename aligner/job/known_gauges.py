"""The gauges that most benches have, with what is known of each, to put on a job's list."""

from __future__ import annotations

from collections.abc import Collection
from functools import cache, lru_cache

from pydantic import TypeAdapter

from aligner.data_files import resource
from aligner.job.gauges import Gauge
from aligner.language import say, spoken
from aligner.language.every_language import is_called


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


def known_gauge(name: str) -> KnownGauge | None:
    """The gauge of the list that a job calls so, in whatever language it was put there."""
    found = known_gauges().get(name)
    if found is not None:
        return found
    return next((gauge for gauge in _known() if is_called(name, gauge.name)), None)


def not_listed(names: Collection[str]) -> list[str]:
    """The names, in the language spoken, of the known gauges that are not among these.

    One that stands there under its name in another language is not offered a second time.
    """
    strange = [name for name in names if name not in known_gauges()]
    return [
        said
        for said, gauge in zip(known_gauges(), _known(), strict=True)
        if said not in names and not any(is_called(name, gauge.name) for name in strange)
    ]


@lru_cache(maxsize=4)
def _named_in(_language: str) -> dict[str, KnownGauge]:
    named = (gauge.with_changes(name=say(gauge.name)) for gauge in _known())
    return {gauge.name: gauge for gauge in named}


@cache
def _known() -> tuple[KnownGauge, ...]:
    content = resource("gauges.json").read_bytes()
    return TypeAdapter(tuple[KnownGauge, ...]).validate_json(content)
