from math import hypot, inf, nan, sqrt

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from uncertainties import ufloat

from aligner.gauging import Gauge, Term, combine, difference, estimate, stated
from aligner.gauging.combination import UnusableTerm

CALIPER = Gauge("caliper", 0.05, 0.08, 0.03)
RULE = Gauge("rule", 0.5, 0.3, 0.2)
LEFT, RIGHT = estimate([4.20, 4.25, 4.30], CALIPER), estimate([3.95, 4.00], CALIPER)

lengths = st.lists(st.floats(0, 300), min_size=1, max_size=6)
weights = st.floats(-20, 20).filter(lambda c: abs(c) > 1e-3)


def with_a_common_limit(found, limit):
    """The same length in the `uncertainties` library, sharing the variable `limit`."""
    own = ufloat(found.value_mm, hypot(found.type_a_mm, found.resolution_part_mm))
    return own + limit


@given(left=lengths, right=lengths)
def test_the_same_gauge_drops_out_as_a_shared_variable_does(left, right):
    one, other = estimate(left, CALIPER), estimate(right, CALIPER)
    limit = ufloat(0, 0.08 / sqrt(3))
    expected = with_a_common_limit(one, limit) - with_a_common_limit(other, limit)
    found = difference(one, other, same_gauge=True)
    assert found.value_mm == pytest.approx(expected.nominal_value, abs=1e-9)
    assert found.standard_uncertainty_mm == pytest.approx(expected.std_dev, rel=1e-9)


@given(left=lengths, right=lengths)
def test_different_gauges_keep_both_limits_of_error(left, right):
    one, other = estimate(left, CALIPER), estimate(right, RULE)
    expected = with_a_common_limit(one, ufloat(0, 0.08 / sqrt(3))) - with_a_common_limit(
        other, ufloat(0, 0.3 / sqrt(3))
    )
    found = difference(one, other, same_gauge=False)
    assert found.standard_uncertainty_mm == pytest.approx(expected.std_dev, rel=1e-9)
    assert found.standard_uncertainty_mm == pytest.approx(
        hypot(one.standard_uncertainty_mm, other.standard_uncertainty_mm), rel=1e-9
    )


@given(taken=st.lists(st.tuples(weights, lengths), min_size=1, max_size=4))
def test_weights_and_a_shared_gauge_agree_with_shared_variables(taken):
    terms = [Term(c, estimate(readings, CALIPER), "caliper") for c, readings in taken]
    limit = ufloat(0, 0.08 / sqrt(3))
    expected = sum(t.coefficient * with_a_common_limit(t.estimate, limit) for t in terms)
    found = combine(terms)
    assert found.value == pytest.approx(expected.nominal_value, rel=1e-9, abs=1e-6)
    assert found.standard_uncertainty == pytest.approx(expected.std_dev, rel=1e-9)


def test_two_groups_share_nothing_with_each_other():
    terms = [Term(1.0, LEFT, "first"), Term(1.0, RIGHT, "second")]
    assert combine(terms).standard_uncertainty == pytest.approx(
        hypot(LEFT.standard_uncertainty_mm, RIGHT.standard_uncertainty_mm)
    )


def test_left_higher_is_positive_and_sides_exchanged_only_change_the_sign():
    one = difference(LEFT, RIGHT, same_gauge=True)
    other = difference(RIGHT, LEFT, same_gauge=True)
    assert one.value_mm == pytest.approx(0.275) == -other.value_mm
    assert one.standard_uncertainty_mm == other.standard_uncertainty_mm
    assert one.degrees_of_freedom == other.degrees_of_freedom


def test_an_unknown_side_leaves_the_difference_unknown():
    found = difference(LEFT, estimate([4.0], None), same_gauge=False)
    assert found.value_mm == pytest.approx(0.25)
    assert found.standard_uncertainty_mm is None


def test_a_stated_offset_adds_its_uncertainty():
    found = combine([Term(1.0, LEFT), Term(-1.0, stated(0.3, 0.1))])
    assert found.value == pytest.approx(3.95)
    assert found.standard_uncertainty == pytest.approx(hypot(LEFT.standard_uncertainty_mm, 0.1))


@pytest.mark.parametrize(
    "terms", [[], [Term(nan, LEFT)], [Term(inf, LEFT)]], ids=["none", "nan", "inf"]
)
def test_terms_that_cannot_be_put_together_are_refused(terms):
    with pytest.raises(UnusableTerm):
        combine(terms)


@pytest.mark.parametrize(
    ("c_left", "c_right", "counts"),
    [
        pytest.param(1.0, -1.0, (3, 3), id="difference"),
        pytest.param(-2.2, 2.1, (2, 5), id="squared sides"),
        pytest.param(0.5, 0.5, (1, 1), id="mean of both legs"),
    ],
)
def test_the_spread_agrees_with_a_million_draws(c_left, c_right, counts):
    # JCGM 101:2008 7: draw every input from its own distribution and look at the result.
    draws = 1_000_000
    chance = np.random.default_rng(20080101)
    limit = chance.uniform(-0.08, 0.08, draws)

    def drawn(n):
        scatter = chance.normal(0, 0.03 / sqrt(n), draws)
        return scatter + chance.uniform(-0.025, 0.025, draws) + limit

    result = c_left * drawn(counts[0]) + c_right * drawn(counts[1])
    terms = [
        Term(c_left, estimate([4.2] * counts[0], CALIPER), "caliper"),
        Term(c_right, estimate([4.0] * counts[1], CALIPER), "caliper"),
    ]
    u = combine(terms).standard_uncertainty
    # Five standard errors of a standard deviation (sqrt(1 / 2N), less for flat-topped draws).
    assert result.std() == pytest.approx(u, rel=5 / sqrt(2 * draws))
    assert result.mean() == pytest.approx(0, abs=5 * u / sqrt(draws))
