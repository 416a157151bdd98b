from math import inf, nan

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from aligner.errors import AlignerError
from aligner.gauging.uncertainty import (
    Part,
    combined_uncertainty,
    coverage_factor,
    whole_degrees_of_freedom,
)

sizes = st.floats(1e-6, 1e3)
degrees = st.integers(1, 50)


@pytest.mark.parametrize(
    ("nu", "whole"),
    [(5.0, 5), (4.9999999999, 5), (4.99, 4), (0.6, 1), (16.76, 16), (inf, inf)],
)
def test_degrees_of_freedom_are_cut_but_rounding_does_not_cost_one(nu, whole):
    assert whole_degrees_of_freedom(nu) == whole
    k = stats.norm.ppf(0.975) if whole == inf else stats.t.ppf(0.975, whole)
    assert coverage_factor(nu) == pytest.approx(k, rel=1e-10)


@pytest.mark.parametrize("nu", [0.0, -2.0, nan])
def test_no_degrees_of_freedom_is_an_error(nu):
    with pytest.raises(AlignerError, match="not more than 0"):
        whole_degrees_of_freedom(nu)


@given(u=sizes, nu=degrees)
def test_a_single_part_keeps_its_degrees_of_freedom(u, nu):
    whole = combined_uncertainty([Part(-u, nu)])
    assert whole.standard_uncertainty == pytest.approx(u)
    assert whole_degrees_of_freedom(whole.degrees_of_freedom) == nu


@given(parts=st.lists(st.tuples(sizes, degrees), min_size=1, max_size=5))
def test_effective_degrees_of_freedom_lie_between_the_fewest_and_the_sum(parts):
    nu = combined_uncertainty(Part(*part) for part in parts).degrees_of_freedom
    assert min(n for _, n in parts) * (1 - 1e-9) <= nu
    assert nu <= sum(n for _, n in parts) * (1 + 1e-9)


def test_known_parts_alone_leave_endless_degrees_of_freedom():
    assert combined_uncertainty([Part(3.0), Part(4.0)]) == (5.0, inf)
    assert combined_uncertainty([]) == (0.0, inf)
