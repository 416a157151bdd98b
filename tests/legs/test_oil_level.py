"""Oil level: the ways round the formula must meet, and the slips must be refused."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import dblquad

from aligner.legs import (
    LegBore,
    LegError,
    oil_area_mm2,
    oil_correction,
    oil_volume_ml,
    suction_tube_depth_mm,
    volume_against_manual,
)

BORE = LegBore(bore_mm=36.0)
bores = st.builds(LegBore, st.floats(25, 60), st.floats(0, 20))
gaps = st.floats(20, 300)


def test_area_is_the_ring_between_rod_and_bore_summed_over_its_surface():
    summed, _ = dblquad(lambda r, _: r, 0, 2 * math.pi, 6.0, 18.0)
    assert oil_area_mm2(LegBore(36.0, 12.0)) == pytest.approx(summed, rel=1e-12)


def test_a_larger_gap_than_wanted_asks_for_oil_and_a_smaller_one_gives_some_back():
    too_little = oil_correction(BORE, measured_gap_mm=230, wanted_gap_mm=221)
    too_much = oil_correction(BORE, measured_gap_mm=213, wanted_gap_mm=221)
    assert too_little.change_ml > 0 > too_much.change_ml
    assert too_little.level_rise_mm == 9
    assert too_much.level_rise_mm == -8


def test_a_leg_filled_with_260_ml_is_set_to_221_mm_by_drawing_off_the_excess():
    # Common practice, no source: about 260 ml go in, then the gap is set by drawing off.
    # 8 mm too high in a 36 mm bore: 8 * pi/4 * 3.6^2 / 10 = 8.143 ml (by hand).
    correction = oil_correction(BORE, measured_gap_mm=213, wanted_gap_mm=221)
    assert correction.change_ml == pytest.approx(-8.143, abs=0.0005)
    assert suction_tube_depth_mm(221) == 221
    left = volume_against_manual(BORE, put_in_ml=260 + correction.change_ml, manual_ml=260)
    assert left.difference_ml == pytest.approx(-8.143, abs=0.0005)
    assert left.share == pytest.approx(-8.143 / 260, abs=1e-5)
    assert left.level_rise_mm == pytest.approx(-8)


@given(bores, gaps, gaps)
def test_the_correction_brings_the_gap_to_the_wanted_one(bore, measured, wanted):
    change = oil_correction(bore, measured, wanted).change_ml
    ring_mm2 = math.pi / 4 * (bore.bore_mm**2 - bore.rod_mm**2)
    assert measured - 1000 * change / ring_mm2 == pytest.approx(wanted, abs=1e-9)


@given(bores, gaps, st.floats(0.5, 2))
def test_a_leg_twice_as_wide_and_high_takes_eight_times_the_oil(bore, height, factor):
    scaled = LegBore(bore.bore_mm * factor, bore.rod_mm * factor)
    assert oil_volume_ml(scaled, height * factor) == pytest.approx(
        oil_volume_ml(bore, height) * factor**3
    )


@pytest.mark.parametrize(
    ("ask", "words"),
    [
        pytest.param(lambda: oil_area_mm2(LegBore(0)), "bore diameter: 0 mm", id="no bore"),
        pytest.param(
            lambda: oil_area_mm2(LegBore(30, 30)), "rod diameter: 30 mm does not go", id="rod"
        ),
        pytest.param(
            lambda: oil_correction(BORE, -1, 221), "measured air gap: -1 mm", id="over the edge"
        ),
        pytest.param(
            lambda: oil_correction(BORE, 210, math.nan), "wanted air gap: nan is not", id="nan"
        ),
        pytest.param(lambda: suction_tube_depth_mm(0), "wanted air gap: 0 mm", id="no depth"),
        pytest.param(
            lambda: volume_against_manual(BORE, 260, 0), "oil volume: 0 ml", id="no volume"
        ),
    ],
)
def test_an_impossible_leg_is_refused_by_the_field_s_name(ask, words):
    with pytest.raises(LegError, match=words):
        ask()
