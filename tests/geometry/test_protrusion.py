"""Moves of the legs, and the lean and shift they cure, against a rigid fork in coordinates."""

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.errors import AlignerError
from aligner.geometry import (
    Moves,
    Policy,
    axle_lean_deg,
    move_sensitivities,
    moves,
    patch_shift_mm,
)
from tests.rigid_model import RigidFork, about_y, lowest_point, vector

protrusions = st.floats(-10, 40)
policies = st.sampled_from(Policy)


def made(left: float, right: float, policy: Policy) -> Moves:
    return moves(left, right, policy, target_mm=6.0, as_found_mm=4.5)


@pytest.mark.parametrize(
    ("policy", "left_mm", "right_mm"),
    [
        pytest.param(Policy.TO_TARGET, 1.8, 0.6, id="each leg to the sheet's 6 mm"),
        pytest.param(Policy.TO_AS_FOUND, 0.3, -0.9, id="each leg to the 4.5 mm found"),
        pytest.param(Policy.LEFT_TO_RIGHT, 1.2, 0.0, id="left goes up to the right"),
        pytest.param(Policy.RIGHT_TO_LEFT, 0.0, -1.2, id="right goes down to the left"),
        pytest.param(Policy.SHARE, 0.6, -0.6, id="each goes half way"),
    ],
)
def test_each_policy_moves_the_legs_it_says(
    policy: Policy, left_mm: float, right_mm: float
) -> None:
    done = made(4.2, 5.4, policy)

    assert (done.left_mm, done.right_mm) == pytest.approx((left_mm, right_mm))


@given(left=protrusions, right=protrusions, policy=policies)
def test_after_the_moves_the_rigid_axle_is_level(left: float, right: float, policy: Policy) -> None:
    done = made(left, right, policy)

    fork = RigidFork(left_rise=left + done.left_mm, right_rise=right + done.right_mm)

    assert fork.axle_end(1)[2] == pytest.approx(fork.axle_end(-1)[2], abs=1e-9)


@given(left=protrusions, right=protrusions, policy=policies)
def test_mirrored_readings_give_mirrored_moves(left: float, right: float, policy: Policy) -> None:
    mirrored = {
        Policy.LEFT_TO_RIGHT: Policy.RIGHT_TO_LEFT,
        Policy.RIGHT_TO_LEFT: Policy.LEFT_TO_RIGHT,
    }.get(policy, policy)

    done, other = made(left, right, policy), made(right, left, mirrored)

    assert (done.left_mm, done.right_mm) == pytest.approx((other.right_mm, other.left_mm))


@given(left=protrusions, right=protrusions, policy=policies)
def test_the_sensitivities_are_the_numerical_derivatives(
    left: float, right: float, policy: Policy
) -> None:
    step = 0.5
    by_left = made(left + step, right, policy), made(left - step, right, policy)
    by_right = made(left, right + step, policy), made(left, right - step, policy)

    stated = move_sensitivities(policy)

    assert by_left[0].left_mm - by_left[1].left_mm == pytest.approx(stated.left_by_left)
    assert by_left[0].right_mm - by_left[1].right_mm == pytest.approx(stated.right_by_left)
    assert by_right[0].left_mm - by_right[1].left_mm == pytest.approx(stated.left_by_right)
    assert by_right[0].right_mm - by_right[1].right_mm == pytest.approx(stated.right_by_right)


@pytest.mark.parametrize("policy", [Policy.TO_TARGET, Policy.TO_AS_FOUND])
def test_a_policy_without_its_target_says_what_is_missing(policy: Policy) -> None:
    with pytest.raises(AlignerError, match="give it, or bring one leg to the other"):
        moves(4.2, 5.4, policy)


@pytest.mark.parametrize("wrong", [math.nan, math.inf])
def test_a_reading_that_is_no_number_is_refused(wrong: float) -> None:
    with pytest.raises(AlignerError, match="protrusion right"):
        moves(4.0, wrong, Policy.SHARE)
    with pytest.raises(AlignerError, match="target"):
        moves(4.0, 4.0, Policy.TO_TARGET, target_mm=wrong)


def test_a_left_leg_that_stands_higher_leans_the_wheels_top_right_and_shifts_the_patch_left() -> (
    None
):
    fork = RigidFork(left_rise=5.0)
    axle, middle = fork.axle_direction(), fork.axle_middle()
    contact = lowest_point(middle, axle, 300)
    top = 2 * middle - contact

    assert fork.axle_end(1)[2] > fork.axle_end(-1)[2]
    assert top[1] < middle[1] < contact[1]
    lean_deg = axle_lean_deg(5.0, fork.leg_spacing)
    assert lean_deg > 0
    assert patch_shift_mm(lean_deg, 300) > 0


@given(
    difference=st.floats(-30, 30),
    leg_spacing=st.floats(150, 260),
    radius=st.floats(200, 360),
)
def test_lean_and_shift_are_those_of_the_rigid_wheel_square_to_the_steering_axis(
    difference: float, leg_spacing: float, radius: float
) -> None:
    fork = RigidFork(leg_spacing=leg_spacing, left_rise=difference)
    axle, middle = fork.axle_direction(), fork.axle_middle()
    contact = lowest_point(middle, axle, radius)

    lean_deg = axle_lean_deg(difference, leg_spacing)

    assert math.sin(math.radians(lean_deg)) == pytest.approx(axle[2], abs=1e-12)
    assert patch_shift_mm(lean_deg, radius) == pytest.approx(contact[1] - middle[1], abs=1e-9)


@pytest.mark.parametrize("rake_deg", [20.0, 26.0, 32.0])
def test_on_the_ground_of_a_raked_bike_the_shift_is_shorter_by_the_cosine_of_the_rake(
    rake_deg: float,
) -> None:
    fork = RigidFork(left_rise=4.0)
    ground_up = about_y(rake_deg) @ vector(0, 0, 1)
    contact = lowest_point(fork.axle_middle(), fork.axle_direction(), 300, ground_up)

    shift = patch_shift_mm(axle_lean_deg(4.0, fork.leg_spacing), 300)

    assert contact[1] == pytest.approx(shift * math.cos(math.radians(rake_deg)), rel=1e-3)


@given(difference=st.floats(-30, 30), scale=st.floats(0.01, 100))
def test_lean_does_not_depend_on_the_unit_and_mirrors_with_the_difference(
    difference: float, scale: float
) -> None:
    lean_deg = axle_lean_deg(difference, 200)

    assert axle_lean_deg(difference * scale, 200 * scale) == pytest.approx(lean_deg)
    assert axle_lean_deg(-difference, 200) == -lean_deg
    assert patch_shift_mm(-lean_deg, 300) == -patch_shift_mm(lean_deg, 300)


def test_equal_legs_neither_lean_nor_shift() -> None:
    level = replace(RigidFork(), left_rise=7.0, right_rise=7.0)

    assert axle_lean_deg(level.left_rise - level.right_rise, level.leg_spacing) == 0
    assert patch_shift_mm(0.0, 300) == 0


@pytest.mark.parametrize("spacing", [0.0, -200.0, math.nan])
def test_a_spacing_or_radius_that_is_no_length_is_refused(spacing: float) -> None:
    with pytest.raises(AlignerError, match="leg_spacing"):
        axle_lean_deg(1.0, spacing)
    with pytest.raises(AlignerError, match="front_radius"):
        patch_shift_mm(1.0, spacing)
