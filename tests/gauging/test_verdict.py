from math import inf, nan

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from aligner.gauging import UnusableTolerance, Verdict, judge

values = st.floats(-20, 20)
uncertainties = st.floats(1e-4, 10)
tolerances = st.floats(0, 10)
degrees = st.one_of(st.just(inf), st.floats(0.5, 200))


@pytest.mark.parametrize(
    ("value", "verdict"),
    [
        (0.0, "within"),
        (0.304, "within"),
        (0.305, "unsettled"),
        (-0.5, "unsettled"),
        (0.695, "unsettled"),
        (-0.697, "out"),
    ],
)
def test_the_expanded_uncertainty_stands_between_within_and_out(value, verdict):
    assert judge(value, 0.1, inf, 0.5).verdict == verdict


@given(value=values, u=uncertainties, nu=degrees, tolerance=tolerances)
def test_the_probability_agrees_with_scipy(value, u, nu, tolerance):
    found = judge(value, u, nu, tolerance)
    whole = stats.norm if nu == inf else stats.t(max(1, int(nu * (1 + 1e-9))))
    expected = whole.cdf((tolerance - value) / u) - whole.cdf((-tolerance - value) / u)
    # scipy itself loses what is next to the middle: with one degree of freedom its cdf is flat
    # within some 2e-9 of nought, where the exact slope is 1/pi.
    assert found.probability_within == pytest.approx(expected, abs=5e-9)
    assert 0 <= found.probability_within <= 1


@given(value=values, u=uncertainties, nu=degrees, tolerance=tolerances)
def test_a_settled_verdict_is_at_least_95_per_cent_sure(value, u, nu, tolerance):
    found = judge(value, u, nu, tolerance)
    if found.verdict == Verdict.WITHIN:
        assert found.probability_within >= 0.95 - 1e-9
    if found.verdict == Verdict.OUT:
        assert found.probability_within <= 0.025 + 1e-9


@given(value=values, u=uncertainties, nu=degrees, tolerance=tolerances)
def test_the_side_a_value_is_on_does_not_matter(value, u, nu, tolerance):
    assert judge(value, u, nu, tolerance) == judge(-value, u, nu, tolerance)


@given(
    value=st.integers(-40, 40),
    u=st.integers(0, 20),
    tolerance=st.integers(0, 40),
    scale=st.sampled_from([25.4, 1 / 25.4, 1e-3, 1000.0, 3.7]),
)
def test_a_change_of_units_never_changes_a_verdict(value, u, tolerance, scale):
    # Whole tenths, so that values exactly on a limit are among them.
    plain = judge(value / 10, u / 10, inf, tolerance / 10)
    scaled = judge(value / 10 * scale, u / 10 * scale, inf, tolerance / 10 * scale)
    assert plain.verdict == scaled.verdict
    assert plain.probability_within == pytest.approx(scaled.probability_within, abs=1e-12)


@given(value=values, tolerance=tolerances, u=uncertainties, more=st.floats(1.0, 5.0))
def test_more_uncertainty_never_settles_anything(value, tolerance, u, more):
    if not judge(value, u, inf, tolerance).verdict.is_settled:
        assert not judge(value, u * more * (1 + 1e-9), inf, tolerance).verdict.is_settled


def test_an_unknown_uncertainty_settles_nothing_even_far_away():
    found = judge(99.0, None, inf, 0.5)
    assert found.verdict == "unsettled"
    assert found.probability_within is found.expanded_uncertainty is found.coverage_factor is None


@pytest.mark.parametrize(("value", "tolerance"), [(None, 0.5), (0.1, None), (None, None)], ids=str)
def test_what_is_not_there_is_missing(value, tolerance):
    assert judge(value, 0.1, inf, tolerance).verdict == "missing"
    assert judge(value, None, inf, tolerance).verdict == "missing"


def test_without_a_tolerance_the_expanded_uncertainty_is_still_given():
    assert judge(0.1, 0.1, inf, None).expanded_uncertainty == pytest.approx(0.1959964)


@pytest.mark.parametrize(
    ("value", "tolerance", "verdict", "probability"),
    [
        pytest.param(0.5, 0.5, "within", 1.0, id="on the limit"),
        pytest.param(0.1 + 0.2, 0.3, "within", 1.0, id="on the limit but for rounding"),
        pytest.param(0.5001, 0.5, "out", 0.0, id="over"),
    ],
)
def test_an_exact_value_is_on_one_side(value, tolerance, verdict, probability):
    found = judge(value, 0.0, inf, tolerance)
    assert (found.verdict, found.probability_within) == (verdict, probability)


@pytest.mark.parametrize("scale", [1.0, 25.4, 1 / 25.4, 1e-3, 3.7, 0.3, 1 / 7])
def test_a_value_on_the_end_of_its_guard_is_decided_alike_in_every_unit(scale):
    # ISO 14253-1: within is proven up to the limit less U, itself included; out only beyond
    # the limit and U. Both ends are met exactly here, but for the last digits.
    guard = float(stats.norm.ppf(0.975)) * 0.1
    for tolerance in (0.5, 0.6, 0.7, 1.1, 2.3):
        inner, outer = tolerance - guard, tolerance + guard
        assert judge(inner * scale, 0.1 * scale, inf, tolerance * scale).verdict == "within"
        assert judge(outer * scale, 0.1 * scale, inf, tolerance * scale).verdict == "unsettled"


@pytest.mark.parametrize(
    "given_",
    [(nan, 0.1, inf, 1.0), (inf, 0.1, inf, 1.0), (0.1, nan, inf, 1.0), (0.1, -0.1, inf, 1.0),
     (0.1, inf, inf, 1.0), (0.1, 0.1, inf, -1.0), (0.1, 0.1, inf, nan)],
)  # fmt: skip
def test_what_cannot_be_judged_is_refused(given_):
    with pytest.raises(UnusableTolerance):
        judge(*given_)
