from math import sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.gauging import (
    Difference,
    Gauge,
    Remedy,
    Term,
    Verdict,
    difference,
    estimate,
    judge,
    settling_advice,
    stated,
)

RULE = Gauge("steel rule", 0.5, 0.3, 0.2)
CALIPER = Gauge("digital caliper", 0.01, 0.03, 0.02)
DEPTH = Gauge("depth gauge", 0.05, 0.07, 0.03)


def readings_with(mean, s, n):
    """N readings that have exactly this mean and this standard deviation."""
    if n == 1 or s == 0:
        return [mean] * n
    if n % 2:
        return [mean] + [mean - s, mean + s] * (n // 2)
    step = s * sqrt((n - 1) / n)
    return [mean - step, mean + step] * (n // 2)


def verdict_of(found: Difference, tolerance):
    return judge(
        found.value_mm, found.standard_uncertainty_mm, found.degrees_of_freedom, tolerance
    ).verdict


def measured(value, gauge, s, counts, *, same_gauge=True):
    left, right = counts
    return difference(
        estimate(readings_with(4.0 + value, s, left), gauge),
        estimate(readings_with(4.0, s, right), gauge),
        same_gauge=same_gauge,
    )


gauges = st.builds(
    Gauge,
    st.just("gauge"),
    st.sampled_from([0.001, 0.01, 0.05, 0.1]),
    st.sampled_from([0.0, 0.02, 0.1]),
    st.sampled_from([0.0, 0.02, 0.05, 0.2]),
)
scatters = st.sampled_from([0.004, 0.03, 0.1, 0.3])
counts = st.tuples(st.integers(1, 6), st.integers(1, 6))


@given(
    value=st.floats(-1, 1),
    gauge=gauges,
    s=scatters,
    counts=counts,
    tolerance=st.sampled_from([0.05, 0.2, 0.5]),
    same_gauge=st.booleans(),
)
def test_the_number_of_readings_settles_it_and_one_fewer_does_not(
    value, gauge, s, counts, tolerance, same_gauge
):
    # A side with a single reading shows no scatter: what stands in is the gauge's own.
    left_s, right_s = (s if n > 1 else 0.0 for n in counts)

    def taken(n):
        return difference(
            estimate(readings_with(4.0 + value, left_s, max(n, counts[0])), gauge),
            estimate(readings_with(4.0, right_s, max(n, counts[1])), gauge),
            same_gauge=same_gauge,
        )

    now = taken(0)
    advice = settling_advice(now.terms, tolerance)
    if verdict_of(now, tolerance).is_settled:
        assert advice is None
        return
    if advice.readings_needed is None:
        assert advice.remedy == Remedy.NOTHING_LISTED
        assert not verdict_of(taken(20_000), tolerance).is_settled
        return
    if advice.readings_needed > 5_000:
        return
    assert advice.readings_needed > min(counts)
    assert verdict_of(taken(advice.readings_needed), tolerance) == advice.expected_verdict
    assert not verdict_of(taken(advice.readings_needed - 1), tolerance).is_settled


@given(
    value=st.floats(-1, 1),
    s=scatters,
    present=gauges,
    other=gauges,
    counts=counts,
    tolerance=st.sampled_from([0.05, 0.2, 0.5]),
)
def test_the_other_gauge_settles_it_with_the_readings_named_and_not_with_fewer(
    value, s, present, other, counts, tolerance
):
    now = measured(value, present, s, counts)
    advice = settling_advice(now.terms, tolerance, other_gauges=[other])
    if advice is None or advice.gauge_readings is None or advice.gauge_readings > 2_000:
        return
    # The scatter beyond the present gauge's own is the hand's, and comes along.
    shown = [s if n > 1 else 0.0 for n in counts]
    beyond = [sqrt(max(0.0, x * x - present.repeatability_mm**2)) for x in shown]
    after = [sqrt(other.repeatability_mm**2 + x * x) if x > 1e-9 else 0.0 for x in beyond]

    def afresh(n):
        left = estimate(readings_with(4.0 + value, after[0], n), other)
        right = estimate(readings_with(4.0, after[1], n), other)
        return verdict_of(difference(left, right, same_gauge=True), tolerance)

    n = advice.gauge_readings
    fewest = 2 if any(after) else 1
    assert afresh(n) == advice.expected_verdict
    assert n == fewest or not afresh(n - 1).is_settled
    assert advice.readings_needed is None or n < advice.readings_needed


def test_a_gauge_too_coarse_for_the_room_left_is_not_helped_by_more_readings():
    now = measured(0.21, RULE, 0.0, (3, 3))
    advice = settling_advice(now.terms, 0.3, other_gauges=[RULE, CALIPER, DEPTH])
    assert advice.remedy == Remedy.ANOTHER_GAUGE
    assert advice.readings_needed is None
    assert advice.fixed_part == pytest.approx(1.959964 * 0.5 * sqrt(2 / 12), rel=1e-6)
    assert advice.fixed_part > advice.room == pytest.approx(0.09)
    assert (advice.gauge_name, advice.gauge_readings) == ("digital caliper", 1)
    assert advice.expected_verdict == Verdict.WITHIN


def test_the_first_on_the_list_is_preferred_among_equals():
    now = measured(0.0, RULE, 0.0, (3, 3))
    advice = settling_advice(now.terms, 0.3, other_gauges=[DEPTH, CALIPER])
    assert (advice.gauge_name, advice.gauge_readings) == ("depth gauge", 1)


@pytest.mark.parametrize("count", [1, 3], ids=["one of each", "all alike"])
def test_readings_that_show_no_scatter_bring_none_to_another_gauge(count):
    stepped = Gauge("stepped", 0.5, 0.3, 0.02)
    now = measured(0.25, stepped, 0.0, (count, count))
    advice = settling_advice(now.terms, 0.3, other_gauges=[Gauge("fine", 0.001, 0.03, 0.001)])
    assert (advice.remedy, advice.gauge_name) == (Remedy.ANOTHER_GAUGE, "fine")
    assert advice.gauge_readings == 1


def test_nothing_on_the_list_will_do_for_a_value_on_the_limit():
    now = measured(0.3, RULE, 0.0, (3, 3))
    advice = settling_advice(now.terms, 0.3, other_gauges=[DEPTH, CALIPER])
    assert advice.remedy == Remedy.NOTHING_LISTED
    assert advice.gauge_name is None
    assert advice.readings_needed is None


def test_a_few_more_readings_are_asked_for_before_another_gauge():
    now = measured(0.2, CALIPER, 0.05, (2, 2))
    advice = settling_advice(now.terms, 0.3, other_gauges=[DEPTH])
    assert advice.remedy == Remedy.MORE_READINGS
    assert 2 < advice.readings_needed <= 10
    assert advice.gauge_name is None


def test_a_gauge_that_is_not_known_is_to_be_named_first():
    now = difference(estimate([4.2], None), estimate([4.0], None), same_gauge=True)
    advice = settling_advice(now.terms, 0.3)
    assert advice.remedy == Remedy.NAME_THE_GAUGE
    assert advice.fixed_part is None
    assert advice.readings_needed is None
    with_list = settling_advice(now.terms, 0.3, other_gauges=[CALIPER])
    assert (with_list.remedy, with_list.gauge_name) == (Remedy.NAME_THE_GAUGE, "digital caliper")


def test_a_settled_verdict_needs_no_advice():
    assert settling_advice(measured(0.0, CALIPER, 0.0, (3, 3)).terms, 0.5) is None


def test_one_length_against_its_target_keeps_the_gauges_limit_of_error():
    term = Term(1.0, estimate([4.4], Gauge("caliper", 0.01, 0.2, 0.02)))
    advice = settling_advice([term], 0.3, value=4.4 - 4.2)
    assert advice.remedy == Remedy.NOTHING_LISTED
    assert advice.fixed_part == pytest.approx(1.959964 * sqrt(0.2**2 / 3 + 0.01**2 / 12), rel=1e-6)


def test_a_doubtful_stated_offset_is_not_cured_by_readings():
    now = measured(0.1, CALIPER, 0.0, (2, 2))
    terms = [*now.terms, Term(-1.0, stated(0.0, 0.5))]
    assert settling_advice(terms, 0.3, other_gauges=[CALIPER]).remedy == Remedy.NOTHING_LISTED


def test_an_angle_is_advised_on_like_a_length():
    left, right = estimate([184.6, 184.8], CALIPER), estimate([182.0, 182.2], CALIPER)
    terms = [Term(-0.5, left, "caliper"), Term(0.49, right, "caliper")]
    advice = settling_advice(terms, 1.4, value=-1.3)
    assert advice.expected_verdict == Verdict.WITHIN
    parts = advice.readings_needed
    s = sqrt(0.02)
    again = [
        Term(-0.5, estimate(readings_with(184.7, s, parts), CALIPER), "caliper"),
        Term(0.49, estimate(readings_with(182.1, s, parts), CALIPER), "caliper"),
    ]
    assert settling_advice(again, 1.4, value=-1.3) is None


@pytest.mark.parametrize("tolerance", [-0.1, float("nan")])
def test_no_advice_on_what_is_no_tolerance(tolerance):
    with pytest.raises(ValueError, match="tolerance"):
        settling_advice(measured(0.1, CALIPER, 0.0, (2, 2)).terms, tolerance)


@given(scale=st.sampled_from([25.4, 1 / 25.4, 1000.0]), s=scatters, value=st.floats(-0.6, 0.6))
def test_a_change_of_units_asks_for_the_same_readings(scale, s, value):
    def terms(unit):
        gauge = Gauge("caliper", 0.02 * unit, 0.05 * unit, 0.02 * unit)
        left = estimate([x * unit for x in readings_with(4 + value, s, 3)], gauge)
        right = estimate([x * unit for x in readings_with(4, s, 4)], gauge)
        return difference(left, right, same_gauge=True).terms

    one, other = settling_advice(terms(1), 0.3), settling_advice(terms(scale), 0.3 * scale)
    assert (one is None) == (other is None)
    if one and other and one.readings_needed and one.readings_needed < 1000:
        assert other.readings_needed == one.readings_needed
