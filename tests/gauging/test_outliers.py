import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.gauging import Gauge, UnusableReading, reading_that_stands_off
from aligner.gauging.outliers import grubbs_critical_value

CALIPER = Gauge("caliper", 0.05, 0.05, 0.02)
FINE = Gauge("fine", 1e-6, 1e-6, 1e-6)


def test_a_misread_scale_is_pointed_out_with_how_far_off_it_is():
    found = reading_that_stands_off([4.20, 4.25, 14.20, 4.20, 4.15], CALIPER)
    assert (found.index, found.reading_mm) == (2, 14.20)
    assert found.off_mm == pytest.approx(10.0)
    assert found.grubbs > found.critical


def test_a_reading_that_is_too_small_has_a_negative_distance():
    assert reading_that_stands_off([4.20, 4.25, 3.2, 4.20], CALIPER).off_mm == pytest.approx(
        -1.0167, abs=1e-4
    )


@pytest.mark.parametrize(
    "readings",
    [
        pytest.param([4.2], id="one"),
        pytest.param([4.2, 14.2], id="two have no majority"),
        pytest.param([4.2, 4.2, 4.2, 4.2], id="all alike"),
        pytest.param([4.20, 4.20, 4.25], id="one step of the gauge"),
        pytest.param([4.20] * 9 + [4.15], id="one step down among many"),
        pytest.param([4.20] * 9 + [4.26], id="three repeatabilities"),
        pytest.param([4.1, 4.2, 4.3, 4.4], id="evenly spread"),
        pytest.param([4.1, 4.1, 9.1, 9.1], id="two against two"),
    ],
)
def test_ordinary_readings_are_left_alone(readings):
    assert reading_that_stands_off(readings, CALIPER) is None


@pytest.mark.parametrize(
    "readings",
    [
        pytest.param([4.2, 4.2, 4.3], id="one step"),
        pytest.param([4.3, 4.3, 4.4, 4.3], id="one step that rounding makes longer"),
        pytest.param([5.0, 5.0, 5.0], id="all alike"),
    ],
)
def test_without_a_gauge_the_smallest_step_seen_is_ordinary(readings):
    assert reading_that_stands_off(readings, None) is None


def test_without_a_gauge_a_reading_many_steps_off_is_pointed_out():
    assert reading_that_stands_off([4.20, 4.21, 4.22, 4.21, 5.2], None).index == 4


def test_one_step_of_the_gauge_is_ordinary_though_rounding_makes_it_longer():
    assert 4.4 - 4.3 > 0.1
    assert reading_that_stands_off([4.3, 4.3, 4.4, 4.3], Gauge("vernier", 0.1, 0.1, 0.02)) is None


def test_readings_that_are_no_lengths_are_refused():
    with pytest.raises(UnusableReading):
        reading_that_stands_off([], CALIPER)


@pytest.mark.parametrize("n", [3, 5, 10])
def test_good_readings_are_pointed_out_in_one_set_in_twenty(n):
    sets = np.random.default_rng(1950).normal(100, 1, (4000, n))
    pointed_out = sum(reading_that_stands_off(list(row), FINE) is not None for row in sets)
    assert pointed_out / 4000 == pytest.approx(0.05, abs=4 * (0.05 * 0.95 / 4000) ** 0.5)


@given(
    readings=st.lists(st.integers(0, 60), min_size=3, max_size=9),
    scale=st.sampled_from([25.4, 1 / 25.4, 1e-2, 100.0]),
)
def test_a_change_of_units_points_out_the_same_reading(readings, scale):
    # Off whole steps of the gauge, so that no distance is exactly what is ordinary.
    plain = reading_that_stands_off(readings, Gauge("rule", 1.1, 1, 0.1))
    scaled = reading_that_stands_off(
        [x * scale for x in readings], Gauge("rule", 1.1 * scale, scale, 0.1 * scale)
    )
    assert (plain is None) == (scaled is None)
    if plain and scaled:
        assert plain.index == scaled.index


def test_fewer_than_three_readings_have_no_critical_value():
    with pytest.raises(ValueError, match="three readings"):
        grubbs_critical_value(2)
