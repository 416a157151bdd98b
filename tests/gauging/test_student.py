from math import inf, isclose

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from aligner.gauging.student import (
    normal_distribution,
    normal_quantile,
    student_distribution,
    student_quantile,
)

DEGREES = [0.5, 1, 1.5, 2, 3, 4, 5, 7.3, 16, 30, 99.5, 199, 200, 201, 1e3, 1e5, 1e9, inf]
PROBABILITIES = [1e-8, 1e-4, 0.01, 0.025, 0.3, 0.5, 0.50001, 0.8, 0.975, 0.9995, 0.999999]


def reference(nu):
    return stats.norm if nu == inf else stats.t(nu)


@pytest.mark.parametrize("nu", DEGREES)
def test_quantiles_agree_with_scipy(nu):
    for p in PROBABILITIES:
        assert student_quantile(p, nu) == pytest.approx(reference(nu).ppf(p), rel=1e-10, abs=1e-10)


@pytest.mark.parametrize("nu", DEGREES)
def test_the_distribution_agrees_with_scipy_also_far_out(nu):
    for t in (-12.0, -8.0, -2.5, -1.0, -1e-6, 0.0, 1e-3, 0.7, 1.96, 4.0, 30.0):
        expected = reference(nu).cdf(t)
        assert student_distribution(t, nu) == pytest.approx(expected, rel=1e-8, abs=1e-300)


def test_the_normal_distribution_agrees_with_scipy():
    for p in PROBABILITIES:
        z = stats.norm.ppf(p)
        assert normal_quantile(p) == pytest.approx(z, rel=1e-12, abs=1e-12)
        assert normal_distribution(z) == pytest.approx(p, rel=1e-12)


@given(t=st.floats(-50, 50), nu=st.floats(0.5, 1e6))
def test_both_tails_are_alike(t, nu):
    both = student_distribution(t, nu) + student_distribution(-t, nu)
    assert isclose(both, 1.0, abs_tol=1e-13)


@given(p=st.floats(1e-6, 1 - 1e-6), nu=st.floats(0.5, 1e6))
def test_the_quantile_undoes_the_distribution(p, nu):
    assert student_distribution(student_quantile(p, nu), nu) == pytest.approx(p, rel=1e-9)


@pytest.mark.parametrize("p", [-0.1, 0.0, 1.0, 1.5, float("nan")])
def test_what_is_no_probability_is_refused(p):
    with pytest.raises(ValueError, match="between 0 and 1"):
        student_quantile(p, 5)


@pytest.mark.parametrize("nu", [0.0, -1.0, float("nan")])
def test_degrees_of_freedom_must_be_more_than_nought(nu):
    with pytest.raises(ValueError, match="more than 0"):
        student_distribution(1.0, nu)
