"""Unit factors against NIST SP 811 (2008), appendix B.8 and B.9; seen (secondary)."""

import pytest

from aligner.units import LENGTH, TORQUE, factor


@pytest.mark.parametrize(
    ("dimension", "unit", "printed", "half_a_digit"),
    [
        (TORQUE, "lbf·ft", 1.355818, 5e-7),
        (TORQUE, "lbf·in", 0.1129848, 5e-8),  # from memory
        (TORQUE, "kgf·m", 9.80665, 1e-12),  # exact
        (LENGTH, "in", 25.4, 1e-12),  # exact
        (LENGTH, "ft", 304.8, 1e-9),  # exact
    ],
)
def test_the_factor_agrees_with_the_printed_one(dimension, unit, printed, half_a_digit):
    assert factor(dimension, unit) == pytest.approx(printed, abs=half_a_digit)
