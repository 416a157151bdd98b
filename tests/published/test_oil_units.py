"""Units of oil, air and springs against NIST SP 811 (2008), appendix B.8; from memory."""

import pytest

from aligner.units import FORCE, PRESSURE, STIFFNESS, VOLUME, factor
from aligner.units.dimension import EVERY_DIMENSION


@pytest.mark.parametrize(
    ("dimension", "unit", "printed", "half_a_digit"),
    [
        (VOLUME, "US fl oz", 29.57353, 5e-6),
        (VOLUME, "imp fl oz", 28.41306, 5e-6),
        (PRESSURE, "psi", 6.894757, 5e-7),
        (PRESSURE, "kgf/cm²", 98.0665, 1e-9),  # exact
        (FORCE, "lbf", 4.448222, 5e-7),
        (STIFFNESS, "lbf/in", 0.1751268, 5e-8),
    ],
    ids=["US fluid ounce", "imperial fluid ounce", "psi", "kgf/cm²", "lbf", "lbf/in"],
)
def test_the_factor_agrees_with_the_printed_one(dimension, unit, printed, half_a_digit):
    assert factor(dimension, unit) == pytest.approx(printed, abs=half_a_digit)


@pytest.mark.parametrize("dimension", EVERY_DIMENSION, ids=lambda each: each.name)
def test_every_unit_on_offer_can_be_worked_out(dimension):
    assert all(factor(dimension, unit.symbol) > 0 for unit in dimension.units)
