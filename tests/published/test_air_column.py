"""Air column against published and worked values; each source beside its number."""

import pytest
from scipy.integrate import quad
from scipy.optimize import brentq

from aligner.legs import (
    AirColumn,
    LegBore,
    air_force_n,
    air_pressure_kpa,
    oil_area_mm2,
    oil_volume_ml,
)
from aligner.legs.air_spring import ATMOSPHERE_KPA


@pytest.mark.parametrize(
    ("bore", "height", "ml", "within"),
    [
        # Geometry, computed: no published numbers.
        pytest.param(41, 140, 184.836, 0.001, id="41 mm bore, 140 mm"),
        pytest.param(43, 110, 159.742, 0.001, id="43 mm bore, 110 mm"),
        pytest.param(41, 1, 1.32025, 1e-5, id="one mm of level in 41 mm"),
    ],
)
def test_volume_of_a_column(bore, height, ml, within):
    assert oil_volume_ml(LegBore(bore), height) == pytest.approx(ml, abs=within)


# sarthaks.com question 2890936 (seen): air at 1.02 bar and 22 °C in 0.015 m3 is compressed
# adiabatically (1.4) to 6.8 bar: final volume 0.00387 m3, final temperature 507.24 K, work on
# the air 2.751 kJ. As a leg: 15,000 ml over a piston of 10,000 mm2.
CYLINDER = AirColumn(15_000.0, 10_000.0, exponent=1.4, initial_absolute_kpa=102.0)


def published_stroke_mm() -> float:
    return brentq(lambda s: air_pressure_kpa(CYLINDER, s) - 680.0, 0, 1499, xtol=1e-9)


def test_adiabatic_final_volume_of_the_worked_example():
    final_m3 = 0.015 - 10_000e-6 * published_stroke_mm() / 1000
    assert final_m3 == pytest.approx(0.00387, abs=5e-6)


def test_adiabatic_final_temperature_of_the_worked_example():
    final_m3 = 0.015 - 10_000e-6 * published_stroke_mm() / 1000
    final_k = 295 * (680 * final_m3) / (102 * 0.015)  # ideal gas
    assert final_k == pytest.approx(507.24, abs=0.15)


def test_work_on_the_air_of_the_worked_example_as_the_force_summed_over_the_stroke():
    def absolute_force_n(s: float) -> float:
        return air_force_n(CYLINDER, s) + ATMOSPHERE_KPA * 10_000 / 1000

    work_n_mm, _ = quad(absolute_force_n, 0, published_stroke_mm())
    assert work_n_mm / 1e6 == pytest.approx(2.751, abs=0.005)


def test_fork_air_at_110_mm_of_stroke_in_a_column_of_140_mm():
    # Computed from the formula (101.325 kPa, exponent 1.3): 750.63 kPa absolute. The column here
    # is the air at the START of the stroke, in the area that is swept.
    bore = LegBore(41)
    column = AirColumn(oil_volume_ml(bore, 140), oil_area_mm2(bore), 1.3, 101.325)
    assert air_pressure_kpa(column, 110) == pytest.approx(750.63, abs=0.01)
