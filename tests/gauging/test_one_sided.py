"""Limits on one side: against the normal and Student's distributions, and the two-sided rule."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy import stats

from aligner.gauging import UnusableTolerance, Verdict, judge
from aligner.gauging.one_sided import judge_at_least, judge_at_most

_LENGTHS = st.floats(0, 1000, allow_nan=False)
_SMALL = st.floats(0.001, 5)


@pytest.mark.parametrize(
    ("value", "verdict"),
    [
        pytest.param(0.10, Verdict.WITHIN, id="well inside"),
        pytest.param(0.16, Verdict.WITHIN, id="inside by the whole uncertainty"),
        pytest.param(0.17, Verdict.UNSETTLED, id="inside by less"),
        pytest.param(0.23, Verdict.UNSETTLED, id="beyond by less"),
        pytest.param(0.25, Verdict.OUT, id="beyond by more"),
    ],
)
def test_the_uncertainty_is_taken_off_before_within_and_added_before_out(value, verdict):
    # U = 1.96 x 0.02 = 0.0392 and the limit 0.20, so within ends at 0.1608 and out begins at 0.2392
    assert judge_at_most(value, 0.02, math.inf, 0.20).verdict is verdict


def test_a_spring_far_longer_than_its_least_length_is_within():
    assert judge_at_least(520, 0.3, math.inf, 490).verdict is Verdict.WITHIN
    assert judge_at_least(480, 0.3, math.inf, 490).verdict is Verdict.OUT
    assert judge_at_least(490.1, 0.3, math.inf, 490).verdict is Verdict.UNSETTLED


@given(_LENGTHS, _SMALL, _LENGTHS)
def test_at_most_and_at_least_are_mirror_images(value, u, limit):
    most = judge_at_most(value, u, math.inf, limit)
    least = judge_at_least(-value, u, math.inf, -limit)
    assert most == least


@given(st.floats(10, 1000), st.floats(0.001, 1), st.integers(1, 40), st.floats(50, 1000))
def test_far_from_nought_it_is_the_two_sided_rule(value, u, nu, limit):
    """The two-sided judgement of a value that cannot come near minus the limit."""
    assume(abs(value) > 30 * u)
    assert judge_at_most(value, u, nu, limit).verdict is judge(value, u, nu, limit).verdict


@given(_LENGTHS, _SMALL, st.integers(1, 60), _LENGTHS)
def test_the_probability_is_student_s(value, u, nu, limit):
    found = judge_at_most(value, u, nu, limit).probability_within
    assert found == pytest.approx(float(stats.t.cdf((limit - value) / u, nu)), abs=1e-9)


def test_nothing_measured_and_no_limit_are_missing_and_no_uncertainty_settles_nothing():
    assert judge_at_most(None, None, math.inf, 0.2).verdict is Verdict.MISSING
    assert judge_at_most(0.1, 0.01, math.inf, None).verdict is Verdict.MISSING
    assert judge_at_most(0.1, None, math.inf, None).verdict is Verdict.MISSING
    assert judge_at_most(0.1, None, math.inf, 0.2).verdict is Verdict.UNSETTLED


def test_a_value_on_its_limit_typed_in_inches_is_within_when_it_is_exact():
    assert judge_at_most(0.1 * 25.4, 0.0, math.inf, 2.54).verdict is Verdict.WITHIN
    assert judge_at_least(0.1 * 25.4, 0.0, math.inf, 2.54).verdict is Verdict.WITHIN


@pytest.mark.parametrize(("value", "chance"), [(0.19, 1), (0.2, 1), (0.21, 0)])
def test_what_is_known_exactly_is_certain_either_way(value, chance):
    assert judge_at_most(value, 0.0, math.inf, 0.2).probability_within == chance
    assert judge_at_least(-value, 0.0, math.inf, -0.2).probability_within == chance


@pytest.mark.parametrize("scale", [1.0, 25.4, 1 / 25.4, 1e-3, 3.7, 0.3, 1 / 7])
def test_a_value_on_the_end_of_its_guard_is_decided_alike_in_every_unit(scale):
    guard = float(stats.norm.ppf(0.975)) * 0.1
    for limit in (0.5, 0.6, 0.7, 1.1, 2.3):
        ends = (("within", limit - guard), ("unsettled", limit + guard))
        for verdict, value in ends:
            given = (value * scale, 0.1 * scale, math.inf, limit * scale)
            assert judge_at_most(*given).verdict == verdict


@pytest.mark.parametrize(
    ("given", "words"),
    [
        pytest.param((math.nan, 0.1, math.inf, 1.0), "value", id="value"),
        pytest.param((0.1, -0.1, math.inf, 1.0), "zero or more", id="uncertainty"),
        pytest.param((0.1, 0.1, math.inf, math.inf), "limit", id="limit"),
    ],
)
def test_what_is_no_number_is_refused(given, words):
    with pytest.raises(UnusableTolerance, match=words):
        judge_at_most(*given)
