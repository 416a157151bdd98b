"""Probability of lying on the right side of one limit: two worked examples.

Source: JCGM 106:2012, 7.3.2, the two examples (from memory).
"""

import math

import pytest

from aligner.gauging.one_sided import judge_at_least, judge_at_most


def test_a_breakdown_voltage_of_at_most_minus_5_40():
    found = judge_at_most(-5.47, 0.05, math.inf, -5.40)
    assert found.probability_within == pytest.approx(0.92, abs=0.005)


def test_a_burst_strength_of_at_least_490():
    found = judge_at_least(509.7, 8.6, math.inf, 490)
    assert found.probability_within == pytest.approx(0.99, abs=0.005)
