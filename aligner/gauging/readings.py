"""Repeated readings of one length made into a value with its uncertainty.

The trap: few readings that happen to agree look certain. The gauge's own repeatability
stands in wherever their scatter is smaller, and where no gauge is named and the readings
show no scatter the uncertainty is unknown, never nought.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum, inf, isfinite, sqrt

from aligner.errors import AlignerError
from aligner.gauging.gauge import Gauge
from aligner.gauging.uncertainty import Part, combined_uncertainty
from aligner.language import say, written

_LONGEST_MM = 1e6


class UnusableReading(AlignerError):
    """A reading is no length, or there is none."""


@dataclass(frozen=True)
class Estimate:
    """What the readings of one length say.

    Attributes:
        value_mm: the mean of the readings.
        count: how many there are; 0 where the value was stated and not read here.
        standard_deviation_mm: their own scatter, `None` for a single reading.
        repeatability_mm: the gauge's stated scatter, 0 where no gauge is named.
        type_a_mm: standard uncertainty from scatter, of the mean; `None` if it is unknown.
        type_a_degrees_of_freedom: infinite where the stated repeatability stands in.
        resolution_part_mm: standard uncertainty from the smallest step.
        limit_part_mm: standard uncertainty from the limit of error, common to every reading
            with the same gauge.
        standard_uncertainty_mm: all parts together, `None` if it is unknown.
        degrees_of_freedom: of all parts together (Welch-Satterthwaite), not yet cut.
    """

    value_mm: float
    count: int
    standard_deviation_mm: float | None
    repeatability_mm: float
    type_a_mm: float | None
    type_a_degrees_of_freedom: float
    resolution_part_mm: float
    limit_part_mm: float
    standard_uncertainty_mm: float | None
    degrees_of_freedom: float


def estimate(readings_mm: Sequence[float], gauge: Gauge | None) -> Estimate:
    """The mean of repeated readings, with its standard uncertainty.

    Args:
        readings_mm: one or more readings of the same length, with the same gauge.
        gauge: `None` where it is not known: then only the scatter counts, and a single
            reading, or several that are all alike, leaves the uncertainty unknown.

    Raises:
        UnusableReading: there is no reading, or one is not a length.

    Source: GUM 4.2 (mean, s / sqrt(n)), 4.3.7 (rectangular, half width / sqrt(3)), F.2.2.1
    (resolution, step / sqrt(12)); the stand-in of r for s: mathematics.md 1.
    """
    _check(readings_mm)
    n = len(readings_mm)
    s = _standard_deviation(readings_mm)
    scatter = _scatter(s, n, gauge)
    resolution_part = gauge.resolution_mm / sqrt(12.0) if gauge else 0.0
    limit_part = gauge.limit_of_error_mm / sqrt(3.0) if gauge else 0.0
    whole = None
    if scatter is not None:
        whole = combined_uncertainty((scatter, Part(resolution_part), Part(limit_part)))
    return Estimate(
        value_mm=_mean(readings_mm),
        count=n,
        standard_deviation_mm=s,
        repeatability_mm=gauge.repeatability_mm if gauge else 0.0,
        type_a_mm=scatter.standard_uncertainty if scatter else None,
        type_a_degrees_of_freedom=scatter.degrees_of_freedom if scatter else inf,
        resolution_part_mm=resolution_part,
        limit_part_mm=limit_part,
        standard_uncertainty_mm=whole.standard_uncertainty if whole else None,
        degrees_of_freedom=whole.degrees_of_freedom if whole else inf,
    )


def stated(value_mm: float, standard_uncertainty_mm: float) -> Estimate:
    """A value that comes with its uncertainty and is not read here, such as a known offset.

    Args:
        value_mm: either sign.
        standard_uncertainty_mm: taken as known (infinite degrees of freedom); 0 if exact.

    Raises:
        UnusableReading: either is not a number, or the uncertainty is negative.
    """
    _check((value_mm, standard_uncertainty_mm))
    if standard_uncertainty_mm < 0:
        raise UnusableReading(
            say("standard uncertainty"),
            say("{value} mm is negative", value=written(standard_uncertainty_mm)),
            say("it is zero or more"),
        )
    return Estimate(
        value_mm=value_mm,
        count=0,
        standard_deviation_mm=None,
        repeatability_mm=0.0,
        type_a_mm=0.0,
        type_a_degrees_of_freedom=inf,
        resolution_part_mm=0.0,
        limit_part_mm=standard_uncertainty_mm,
        standard_uncertainty_mm=standard_uncertainty_mm,
        degrees_of_freedom=inf,
    )


def _check(readings_mm: Sequence[float]) -> None:
    if not readings_mm:
        raise UnusableReading(say("readings"), say("there is none"), say("take at least one"))
    for place, reading_mm in enumerate(readings_mm, start=1):
        if not isfinite(reading_mm) or abs(reading_mm) > _LONGEST_MM:
            raise UnusableReading(
                say("reading {number}", number=place),
                say("{value} is not a length", value=written(reading_mm, "")),
                say("write it as “4.2 mm”"),
            )


def _mean(readings_mm: Sequence[float]) -> float:
    # Taken from the first reading, so that readings that are all alike have it as their mean.
    first = readings_mm[0]
    return first + fsum(reading - first for reading in readings_mm) / len(readings_mm)


def _standard_deviation(readings_mm: Sequence[float]) -> float | None:
    if len(readings_mm) < 2:
        return None
    mean = _mean(readings_mm)
    squares = fsum((reading - mean) * (reading - mean) for reading in readings_mm)
    return sqrt(squares / (len(readings_mm) - 1))


def _scatter(s: float | None, n: int, gauge: Gauge | None) -> Part | None:
    """Type A part of the mean; `None` where nothing is known of the scatter."""
    if gauge is None:
        return Part(s / sqrt(n), n - 1) if s else None
    if s is not None and s > gauge.repeatability_mm:
        return Part(s / sqrt(n), n - 1)
    if gauge.repeatability_mm == 0.0 and gauge.resolution_mm == 0.0:
        return None  # a limit of error alone says nothing of the scatter, and drops out besides
    return Part(gauge.repeatability_mm / sqrt(n))
