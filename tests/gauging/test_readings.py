import statistics
from math import inf, isinf, nan, sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.gauging import Gauge, UnusableReading, estimate, stated

RULE = Gauge("steel rule", 0.5, 0.3, 0.2)
CALIPER = Gauge("caliper", 0.01, 0.03, 0.0)

readings = st.lists(st.floats(-500, 500), min_size=2, max_size=8)


@given(taken=readings)
def test_mean_and_scatter_agree_with_the_statistics_module(taken):
    found = estimate(taken, CALIPER)
    assert found.value_mm == pytest.approx(statistics.fmean(taken), rel=1e-12, abs=1e-12)
    assert found.standard_deviation_mm == pytest.approx(
        statistics.stdev(taken), rel=1e-9, abs=1e-12
    )


def test_a_single_reading_rests_on_the_gauge():
    found = estimate([4.5], RULE)
    assert found.standard_deviation_mm is None
    assert found.type_a_mm == 0.2
    assert isinf(found.degrees_of_freedom)
    assert found.standard_uncertainty_mm == pytest.approx(
        sqrt(0.2**2 + 0.5**2 / 12 + 0.3**2 / 3), rel=1e-12
    )


def test_readings_that_happen_to_agree_keep_the_gauges_repeatability():
    found = estimate([4.5, 4.5, 4.5, 4.5], RULE)
    assert found.standard_deviation_mm == 0
    assert found.type_a_mm == pytest.approx(0.1)
    assert isinf(found.type_a_degrees_of_freedom)


def test_a_scatter_wider_than_the_gauges_own_counts_with_its_degrees_of_freedom():
    found = estimate([4.0, 5.0, 4.5, 5.5], RULE)
    assert found.type_a_mm == pytest.approx(statistics.stdev([4.0, 5.0, 4.5, 5.5]) / 2)
    assert found.type_a_degrees_of_freedom == 3
    assert 3 < found.degrees_of_freedom < inf


def test_without_a_gauge_only_the_scatter_is_known():
    found = estimate([4.2, 4.3, 4.4], None)
    assert found.standard_uncertainty_mm == pytest.approx(0.1 / sqrt(3))
    assert found.degrees_of_freedom == pytest.approx(2)
    assert found.resolution_part_mm == found.limit_part_mm == found.repeatability_mm == 0


@pytest.mark.parametrize("taken", [[4.2], [4.2, 4.2], [0.1, 0.1, 0.1]], ids=str)
def test_without_a_gauge_readings_that_show_no_scatter_leave_it_unknown_not_nought(taken):
    found = estimate(taken, None)
    assert found.value_mm == taken[0]
    assert found.standard_uncertainty_mm is None
    assert found.type_a_mm is None


@given(taken=readings, scale=st.sampled_from([1 / 25.4, 25.4, 1e-3, 10.0]))
def test_a_change_of_units_changes_nothing_but_the_unit(taken, scale):
    gauge = Gauge("caliper", 0.05, 0.05, 0.03)
    scaled = Gauge("caliper", 0.05 * scale, 0.05 * scale, 0.03 * scale)
    one, other = estimate(taken, gauge), estimate([x * scale for x in taken], scaled)
    assert other.value_mm == pytest.approx(one.value_mm * scale, rel=1e-9, abs=1e-9)
    assert other.standard_uncertainty_mm == pytest.approx(
        one.standard_uncertainty_mm * scale, rel=1e-9
    )


@pytest.mark.parametrize(
    ("taken", "named"),
    [
        pytest.param([], "readings: there is none", id="none"),
        pytest.param([4.2, nan], "reading 2: nan", id="not a number"),
        pytest.param([inf], "reading 1: inf", id="endless"),
        pytest.param([4.2, 4.3, -1e300], "reading 3", id="absurd"),
    ],
)
def test_what_is_no_reading_is_refused_by_its_place(taken, named):
    with pytest.raises(UnusableReading, match=named):
        estimate(taken, RULE)


def test_a_stated_value_keeps_its_uncertainty_and_counts_no_reading():
    found = stated(-0.3, 0.1)
    assert (found.value_mm, found.standard_uncertainty_mm, found.count) == (-0.3, 0.1, 0)


@pytest.mark.parametrize("pair", [(nan, 0.1), (1.0, -0.1), (1.0, inf)])
def test_a_stated_value_must_make_sense(pair):
    with pytest.raises(UnusableReading):
        stated(*pair)
