"""Verdicts on a tolerance against published decision rules and worked examples."""

from math import inf

import pytest

from aligner.gauging import judge
from aligner.gauging.student import normal_distribution, normal_quantile


def test_the_conformance_probability_of_a_two_sided_tolerance():
    # JCGM 106:2012 7.4, limits 12.5 and 16.3, value 13.6, u = 1.8 (inputs seen; the result
    # 0.66 from memory): held against the middle of the tolerance, 14.4 +- 1.9.
    found = judge(13.6 - 14.4, 1.8, inf, 1.9)
    assert found.probability_within == pytest.approx(0.6626, abs=0.0005)
    assert found.verdict == "unsettled"


def test_a_value_two_standard_uncertainties_inside_is_falsely_accepted_in_2_5_per_cent():
    # ILAC-G8:09/2019, guard band w = U with k = 2: under 2.5 % (seen, secondary). The other
    # limit is far away here, as the rule supposes.
    found = judge(10.0 - 2 * 0.1, 0.1, inf, 10.0)
    assert 1 - found.probability_within == pytest.approx(0.025, abs=0.0025)
    assert found.verdict == "within"


def test_a_value_on_the_limit_is_an_even_chance():
    # ILAC-G8:09/2019, simple acceptance, w = 0: up to 50 % (seen, secondary).
    found = judge(10.0, 0.1, inf, 10.0)
    assert found.probability_within == pytest.approx(0.5, abs=1e-12)
    assert found.verdict == "unsettled"


def test_a_guard_for_5_per_cent_on_one_side_is_1_645_standard_uncertainties():
    # ISO 14253-1:2017 default of 95 % (from memory), about 0.83 U in ILAC-G8 table 1.
    assert normal_quantile(0.95) == pytest.approx(1.645, abs=0.0005)
    assert normal_distribution(1.645) == pytest.approx(0.95, abs=0.0001)
    assert 1 - judge(10.0 - 0.1645, 0.1, inf, 10.0).probability_within == pytest.approx(
        0.05, abs=0.0005
    )


@pytest.mark.parametrize(
    ("deviation", "verdict"),
    [
        pytest.param(0.0017, "within", id="accepted"),
        pytest.param(0.0020, "within", id="on the acceptance limit"),
        pytest.param(0.0025, "unsettled", id="not proven"),
    ],
)
def test_the_worked_example_of_a_micrometer(deviation, verdict):
    # Worked example after ILAC-G8 (seen): permissible error 0.003 mm, U = 0.001 mm.
    found = judge(deviation, 0.001 / normal_quantile(0.975), inf, 0.003)
    assert found.expanded_uncertainty == pytest.approx(0.001)
    assert found.verdict == verdict


@pytest.mark.parametrize(
    ("in_guards", "verdict"),
    [
        pytest.param(-1.01, "within", id="pass"),
        pytest.param(-0.99, "unsettled", id="conditional pass begins at TL - w"),
        pytest.param(0.0, "unsettled", id="the limit"),
        pytest.param(0.99, "unsettled", id="conditional fail"),
        pytest.param(1.01, "out", id="fail begins at TL + w"),
    ],
)
def test_both_conditional_verdicts_of_the_guide_are_unsettled_here(in_guards, verdict):
    # ILAC-G8:09/2019 4.2.3 (seen): pass, conditional pass, conditional fail, fail.
    guard = 0.196
    assert judge(1.0 + in_guards * guard, guard / normal_quantile(0.975), inf, 1.0).verdict == (
        verdict
    )
