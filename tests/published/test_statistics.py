"""Statistics of readings against published tables and worked examples."""

from math import inf, sqrt

import pytest

from aligner.gauging import Gauge, estimate
from aligner.gauging.outliers import grubbs_critical_value
from aligner.gauging.student import student_quantile
from aligner.gauging.uncertainty import (
    Part,
    combined_uncertainty,
    coverage_factor,
    whole_degrees_of_freedom,
)

# NIST TN 1297 table B.1, the same as table G.2 of JCGM 100:2008 (seen). Rows: degrees of
# freedom; columns: the share of the distribution between -t and +t. `None`: not seen.
SHARES = (0.90, 0.95, 0.9545, 0.99)
TABLE_G2 = {
    1: (6.31, 12.71, 13.97, 63.66),
    2: (2.92, None, 4.53, 9.92),
    3: (2.35, 3.18, 3.31, 5.84),
    4: (2.13, 2.78, 2.87, 4.60),
    5: (2.02, 2.57, 2.65, 4.03),
    6: (1.94, 2.45, 2.52, 3.71),
    9: (1.83, 2.26, 2.32, None),
    10: (1.81, 2.23, 2.28, 3.17),
    19: (1.73, 2.09, 2.14, 2.86),
    20: (1.72, 2.09, 2.13, 2.85),
}

# GUM 4.4.3 table 1: twenty temperatures in degrees Celsius (from memory; the printed mean,
# standard deviation and standard uncertainty follow from these only).
TEMPERATURES = (
    *(96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07),
    *(100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72),
)

# LibreTexts, Analytic References, appendix 07, alpha 0.05 (seen). Its row for n = 7 is left
# out: 2.202 there, larger than the row after it, is a misprint.
GRUBBS_5_PERCENT = {
    **{3: 1.155, 4: 1.481, 5: 1.715, 6: 1.887, 8: 2.126, 9: 2.215, 10: 2.290},
    **{11: 2.355, 12: 2.412, 13: 2.462, 14: 2.507, 15: 2.549},
}


@pytest.mark.parametrize(
    ("nu", "share", "t"),
    [
        pytest.param(nu, share, t, id=f"nu {nu}, {share}")
        for nu, row in TABLE_G2.items()
        for share, t in zip(SHARES, row, strict=True)
        if t is not None
    ],
)
def test_students_t_agrees_with_table_g2(nu, share, t):
    assert student_quantile(0.5 + share / 2, nu) == pytest.approx(t, abs=0.0055)


def test_students_t_agrees_with_table_g2_far_out():
    # NIST TN 1297 table B.1 (seen): nu = 100, 99.73 %.
    assert student_quantile(0.5 + 0.9973 / 2, 100) == pytest.approx(3.077, abs=0.0005)


def test_the_twenty_temperatures_of_the_guide():
    # GUM 4.4.3: mean 100.145, s = 1.489, s / sqrt(20) = 0.333 (from memory).
    found = estimate(TEMPERATURES, None)
    assert found.value_mm == pytest.approx(100.145, abs=0.0005)
    assert found.standard_deviation_mm == pytest.approx(1.489, abs=0.0005)
    assert found.standard_uncertainty_mm == pytest.approx(0.333, abs=0.0005)
    assert found.type_a_degrees_of_freedom == 19


@pytest.mark.parametrize(
    ("limit", "u", "within"),
    [
        pytest.param(4.0, 2.3, 0.05, id="GUM 4.4.5, from memory"),
        pytest.param(1.5, 0.87, 0.005, id="worked example of a standard's text, seen"),
    ],
)
def test_a_limit_of_error_is_rectangular(limit, u, within):
    assert estimate([100.0], Gauge("any", 0.0, limit, 0.0)).limit_part_mm == pytest.approx(
        u, abs=within
    )


def test_a_step_of_a_thousandth_is_029_micrometres():
    # Worked example of a micrometer after the GUM (seen): 0.001 mm gives 0.00029 mm.
    found = estimate([10.0], Gauge("micrometer", 0.001, 0.0, 0.0))
    assert found.resolution_part_mm == pytest.approx(0.00029, abs=5e-6)


def test_effective_degrees_of_freedom_of_the_guides_example():
    # GUM G.4.1 example (from memory): 0.25, 0.57, 0.82 % from 10, 5 and 15 observations give
    # 1.03 % with 19.0 effective degrees of freedom, and t_95(19) = 2.09.
    u, nu = combined_uncertainty([Part(0.25, 9), Part(0.57, 4), Part(0.82, 14)])
    assert u == pytest.approx(1.03, abs=0.005)
    assert nu == pytest.approx(19.0, abs=0.05)


def test_the_end_gauge_of_the_guide_takes_sixteen_degrees_of_freedom():
    # GUM H.1.6: nu_eff = 16.7 is cut to 16, t_99(16) = 2.92 (from memory).
    nu = whole_degrees_of_freedom(16.7)
    assert student_quantile(0.995, nu) == pytest.approx(2.92, abs=0.005)


def test_with_endless_degrees_of_freedom_the_factor_is_1_960():
    # GUM table G.1: 95 %, k = 1.960 (from memory).
    assert coverage_factor(inf) == pytest.approx(1.960, abs=0.0005)


@pytest.mark.parametrize(("n", "critical"), GRUBBS_5_PERCENT.items())
def test_grubbs_critical_values_agree_with_the_published_table(n, critical):
    # The table is rounded, at n = 3 upwards (1.1543; it can be no more than 1.1547).
    assert grubbs_critical_value(n) == pytest.approx(critical, abs=0.001)


def test_grubbs_statistic_of_three_cannot_pass_its_bound():
    # (n - 1) / sqrt(n), NIST/SEMATECH e-Handbook 1.3.5.17.1 with t without end.
    assert grubbs_critical_value(3) < 2 / sqrt(3)
