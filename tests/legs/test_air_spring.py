"""The air spring, against an integrated differential equation and a leg built up in volumes."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import quad, solve_ivp

from aligner.legs import (
    ATMOSPHERE_KPA,
    AirColumn,
    LegBore,
    LegError,
    air_column,
    air_force_difference,
    air_force_n,
    air_force_table,
    air_pressure_kpa,
)

COLUMN = AirColumn(volume_ml=330.0, swept_area_mm2=1320.0, exponent=1.3)
columns = st.builds(
    AirColumn, st.floats(250, 600), st.floats(700, 1500), st.floats(1, 1.4), st.floats(101.325, 300)
)


@pytest.mark.parametrize("exponent", [1.0, 1.2, 1.4])
def test_pressure_follows_the_differential_equation_of_the_polytrope(exponent):
    """A second way: dp/ds = n p A / V, stepped numerically instead of the closed form."""
    column = AirColumn(330.0, 1320.0, exponent, 150.0)

    def slope(s, p):
        return exponent * p * 1320.0 / (330_000.0 - 1320.0 * s)

    path = solve_ivp(slope, (0, 180), [150.0], rtol=1e-10, atol=1e-9)
    assert air_pressure_kpa(column, 180) == pytest.approx(path.y[0, -1], rel=1e-7)


def test_the_work_of_the_force_is_the_heat_engine_book_s_work_less_the_atmosphere_s():
    """W = (p2 V2 - p1 V1) / (n - 1), any thermodynamics text; force summed numerically."""
    p1, v1 = ATMOSPHERE_KPA, 330e-6
    p2, v2 = air_pressure_kpa(COLUMN, 200), 330e-6 - 1320e-6 * 0.2
    on_the_air_j = (p2 * v2 - p1 * v1) * 1000 / 0.3
    atmosphere_j = p1 * 1000 * (v1 - v2)
    summed, _ = quad(lambda s: air_force_n(COLUMN, s) / 1000, 0, 200)
    assert summed == pytest.approx(on_the_air_j - atmosphere_j, rel=1e-9)


def test_the_air_gap_is_what_is_left_at_full_compression():
    """A leg in volumes: slider cavity and tube, the wall of the tube taken out where it dips in."""
    inside, outside, slider, travel, gap = 33.0, 37.0, 42.0, 150.0, 140.0
    a_in, a_out, a_slider = (math.pi / 4 * d**2 for d in (inside, outside, slider))
    tube_length, slider_depth, dips_compressed = 560.0, 420.0, 400.0

    def closed_volume(dips):
        wall_in_oil = (a_out - a_in) * dips
        return a_slider * slider_depth - wall_in_oil + a_in * (tube_length - dips)

    oil = closed_volume(dips_compressed) - a_in * gap
    column = air_column(LegBore(inside), gap, outside, travel, exponent=1.3)
    for stroke in (0.0, 60.0, 150.0):
        air = closed_volume(dips_compressed - travel + stroke) - oil
        first = closed_volume(dips_compressed - travel) - oil
        expected = ATMOSPHERE_KPA * (first / air) ** 1.3
        assert air_pressure_kpa(column, stroke) == pytest.approx(expected, rel=1e-12)


def test_what_goes_in_after_the_measurement_takes_air_away_and_stiffens_the_leg():
    bare = air_column(LegBore(33), 140, 37, 150, 1.3)
    with_spring = air_column(LegBore(33), 140, 37, 150, 1.3, displaced_ml=40)
    assert bare.volume_ml - with_spring.volume_ml == pytest.approx(40)
    assert air_force_n(with_spring, 140) > air_force_n(bare, 140)


def test_an_extended_leg_closed_at_the_atmosphere_pushes_with_nothing():
    assert air_force_n(COLUMN, 0) == 0


def test_the_leg_with_the_smaller_gap_is_the_stiffer_and_more_so_towards_the_end():
    left = air_column(LegBore(33), 130, 37, 150, 1.3)
    right = air_column(LegBore(33), 140, 37, 150, 1.3)
    table = air_force_table(left, right, 150, steps=30)
    differences = [point.difference_n for point in table]
    assert [point.stroke_mm for point in table[:2]] == [0, 5]
    assert len(table) == 31
    assert table[-1].stroke_mm == 150
    assert differences[0] == 0
    assert differences == sorted(differences)
    assert differences[-1] > 5 * differences[15] > 0
    assert table[-1] == air_force_difference(left, right, 150)


@given(columns, st.floats(0, 150), st.floats(0.5, 10))
def test_more_stroke_is_more_force(column, stroke, further):
    assert air_force_n(column, stroke + further) > air_force_n(column, stroke)


@given(columns, columns, st.floats(0, 160))
def test_changing_the_legs_over_changes_the_sign_of_the_difference(left, right, stroke):
    here = air_force_difference(left, right, stroke)
    there = air_force_difference(right, left, stroke)
    assert here.difference_n == -there.difference_n


@settings(max_examples=50)
@given(columns, st.floats(0, 160), st.floats(0.5, 2))
def test_pressure_depends_on_the_ratio_of_volumes_alone(column, stroke, factor):
    scaled = AirColumn(
        column.volume_ml * factor**3,
        column.swept_area_mm2 * factor**2,
        column.exponent,
        column.initial_absolute_kpa,
    )
    assert air_pressure_kpa(scaled, stroke * factor) == pytest.approx(
        air_pressure_kpa(column, stroke)
    )


def test_a_stroke_that_uses_up_the_air_is_refused_with_the_stroke_that_would():
    with pytest.raises(LegError, match=r"260 mm of stroke uses up the air.*after 250\.0 mm"):
        air_force_n(COLUMN, 260)
    with pytest.raises(LegError, match="uses up the air"):
        air_force_n(COLUMN, 250)


def test_the_refusal_names_the_leg_whose_air_is_gone():
    long, short = COLUMN, AirColumn(200.0, 1320.0, 1.3)
    with pytest.raises(LegError, match=r"right leg, stroke: 160 mm"):
        air_force_table(long, short, 160)
    with pytest.raises(LegError, match=r"left leg, stroke: 160 mm"):
        air_force_difference(short, long, 160)


@pytest.mark.parametrize(
    ("ask", "words"),
    [
        pytest.param(
            lambda: air_force_n(AirColumn(330, 1320, 1.3, 40), 10),
            "gauge reading.*absolute pressure is needed",
            id="gauge pressure",
        ),
        pytest.param(lambda: air_force_n(AirColumn(330, 1320, 1.5), 10), "exponent: 1.5", id="n"),
        pytest.param(lambda: air_force_n(AirColumn(330, 1320, 0.9), 10), "exponent: 0.9", id="n<1"),
        pytest.param(lambda: air_force_n(COLUMN, -1), "stroke: -1 mm", id="stroke out"),
        pytest.param(lambda: air_force_n(AirColumn(0, 1320, 1.3), 1), "air in the leg", id="none"),
        pytest.param(lambda: air_force_table(COLUMN, COLUMN, 0), "travel: 0 mm", id="no travel"),
        pytest.param(lambda: air_force_table(COLUMN, COLUMN, 99, 0), "steps: 0", id="no steps"),
        pytest.param(
            lambda: air_column(LegBore(33), 10, 37, 10, 1.3, displaced_ml=50),
            "50 ml leaves no air.*less than 19.3 ml",
            id="full of spring",
        ),
    ],
)
def test_an_impossible_column_is_refused_in_words(ask, words):
    with pytest.raises(LegError, match=words):
        ask()
