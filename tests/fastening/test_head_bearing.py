import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.fastening.head_bearing import (
    PullRange,
    UnusablePull,
    pull_at_radius,
    pull_moment_nm,
)

PULLS = st.floats(0.1, 100)
RADII = st.floats(20, 600)


def test_a_pull_twice_as_far_out_needs_half_the_force():
    assert pull_at_radius(PullRange(10, 16, 150), 300) == PullRange(5, 8, 300)


@given(PULLS, RADII, st.floats(-180, 180))
def test_the_moment_is_that_of_force_and_arm_in_coordinates(pull_n, radius_mm, turn_deg):
    turn = np.radians(turn_deg)
    arm_m = radius_mm / 1000 * np.array([np.cos(turn), np.sin(turn), 0.0])
    force_n = pull_n * np.array([-np.sin(turn), np.cos(turn), 0.0])
    moment_nm = np.cross(arm_m, force_n)[2]
    assert pull_moment_nm(pull_n, radius_mm) == pytest.approx(moment_nm, rel=1e-12)


@given(PULLS, RADII, RADII)
def test_the_drag_of_the_bearing_is_the_same_at_every_radius(pull_n, radius_mm, used_mm):
    moved = pull_at_radius(PullRange(pull_n, 2 * pull_n, radius_mm), used_mm)
    assert pull_moment_nm(moved.low_n, used_mm) == pytest.approx(pull_moment_nm(pull_n, radius_mm))
    assert moved.high_n == pytest.approx(2 * moved.low_n)


@pytest.mark.parametrize(
    ("pull_n", "is_right"),
    [(0, False), (9.9, False), (10, True), (13, True), (16, True), (16.1, False), (160, False)],
)
def test_a_pull_is_right_from_the_least_to_the_greatest(pull_n, is_right):
    assert PullRange(10, 16, 150).holds(pull_n) is is_right


@pytest.mark.parametrize("radius_mm", [0.0, -150.0, float("nan")])
def test_a_radius_that_is_none_is_refused(radius_mm):
    with pytest.raises(UnusablePull, match="measure from the steering axis to the scale's hook"):
        pull_at_radius(PullRange(10, 16, 150), radius_mm)


def test_a_range_the_wrong_way_round_is_refused():
    with pytest.raises(UnusablePull, match="it runs from 16 to 10 N"):
        PullRange(16, 10, 150)
