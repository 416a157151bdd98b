"""A reading that stands off from its fellows is pointed out, never dropped.

The trap: among three readings two of which agree, any third one is "significant" to the
bare test. So a reading no further off than one step of the gauge, or three of its
repeatabilities, is ordinary whatever the test says. One reading is pointed out at a time;
two that are off together can hide each other.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise
from math import inf, sqrt

from aligner.gauging.gauge import Gauge
from aligner.gauging.readings import estimate
from aligner.gauging.student import student_quantile

_SIGNIFICANCE = 0.05
_ORDINARY_REPEATABILITIES = 3.0
_ROUNDING = 1e-9


@dataclass(frozen=True)
class StandsOff:
    """A reading that stands off.

    Attributes:
        index: its place among the readings, from 0.
        reading_mm: the reading.
        off_mm: how far it is from the mean of the others, positive where it is more.
        grubbs: its distance from the mean of all in standard deviations.
        critical: the value this passes by chance in 5 % of sets of readings.
    """

    index: int
    reading_mm: float
    off_mm: float
    grubbs: float
    critical: float


def reading_that_stands_off(readings_mm: Sequence[float], gauge: Gauge | None) -> StandsOff | None:
    """The one reading that its fellows do not bear out, or `None`.

    Args:
        readings_mm: the readings of one length; fewer than three tell nothing.
        gauge: what they were taken with. Where it is `None` the smallest step between two of
            the readings stands for its resolution.

    Raises:
        UnusableReading: there is no reading, or one is not a length.

    Source: Grubbs' test, two-sided at 5 % (NIST/SEMATECH e-Handbook 1.3.5.17.1; ISO 5725-2).
    """
    whole = estimate(readings_mm, gauge)
    s = whole.standard_deviation_mm
    if len(readings_mm) < 3 or not s:
        return None
    distances = [abs(reading - whole.value_mm) for reading in readings_mm]
    index = distances.index(max(distances))
    others = [reading for place, reading in enumerate(readings_mm) if place != index]
    off = readings_mm[index] - estimate(others, gauge).value_mm
    if abs(off) <= _ordinary_distance(readings_mm, gauge) * (1.0 + _ROUNDING):
        return None
    grubbs = distances[index] / s
    critical = grubbs_critical_value(len(readings_mm))
    if grubbs <= critical:
        return None
    return StandsOff(index, readings_mm[index], off, grubbs, critical)


@lru_cache(maxsize=64)
def grubbs_critical_value(count: int) -> float:
    """What Grubbs' statistic of this many readings passes by chance in 5 % of cases.

    Args:
        count: number of readings, three or more.

    Raises:
        ValueError: fewer than three.

    Source: NIST/SEMATECH e-Handbook 1.3.5.17.1: (n-1)/sqrt(n) sqrt(t^2 / (n-2+t^2)), t the
    upper point of Student's t at 5 % / (2 n) with n-2 degrees of freedom.
    """
    if count < 3:
        raise ValueError(f"Grubbs' test takes three readings or more, not {count}")
    t = student_quantile(1.0 - _SIGNIFICANCE / (2 * count), count - 2)
    return (count - 1) / sqrt(count) * sqrt(t * t / (count - 2 + t * t))


def _ordinary_distance(readings_mm: Sequence[float], gauge: Gauge | None) -> float:
    if gauge is not None:
        return max(gauge.resolution_mm, _ORDINARY_REPEATABILITIES * gauge.repeatability_mm)
    noise = _ROUNDING * max(abs(reading) for reading in readings_mm)
    steps = (above - below for below, above in pairwise(sorted(readings_mm)))
    return min((step for step in steps if step > noise), default=inf)
