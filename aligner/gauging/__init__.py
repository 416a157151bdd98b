"""Repeated readings with a gauge, to a value with uncertainty, to a verdict and advice."""

from aligner.gauging.advice import Advice, Remedy, settling_advice
from aligner.gauging.combination import Combination, Difference, Term, combine, difference
from aligner.gauging.gauge import Gauge, UnusableGauge
from aligner.gauging.outliers import StandsOff, reading_that_stands_off
from aligner.gauging.readings import Estimate, UnusableReading, estimate, stated
from aligner.gauging.verdict import Judgement, UnusableTolerance, Verdict, judge

__all__ = [
    "Advice",
    "Combination",
    "Difference",
    "Estimate",
    "Gauge",
    "Judgement",
    "Remedy",
    "StandsOff",
    "Term",
    "UnusableGauge",
    "UnusableReading",
    "UnusableTolerance",
    "Verdict",
    "combine",
    "difference",
    "estimate",
    "judge",
    "reading_that_stands_off",
    "settling_advice",
    "stated",
]
