"""The gauges a job's readings were taken with."""

from __future__ import annotations

from aligner import gauging
from aligner.sheet.model import Part
from aligner.sheet.quantities import Length

_NOUGHT = Length("0 mm", 0.0)


class Gauge(Part):
    """What is known of a gauge.

    Attributes:
        resolution: the step its scale or display shows.
        limit_of_error: the most it may be wrong by, the same way each time.
        repeatability: standard deviation of repeated readings in a practised hand.
        source: where these values come from.
    """

    resolution: Length = _NOUGHT
    limit_of_error: Length = _NOUGHT
    repeatability: Length = _NOUGHT
    source: str = ""

    def described(self, name: str) -> gauging.Gauge:
        """The same in plain numbers, as the computations take it."""
        return gauging.Gauge(
            name=name,
            resolution_mm=self.resolution.value,
            limit_of_error_mm=self.limit_of_error.value,
            repeatability_mm=self.repeatability.value,
        )
