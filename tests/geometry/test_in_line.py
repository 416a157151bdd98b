"""Plate, bars and spread against two rigid tubes in twisted brackets."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.errors import AlignerError
from aligner.geometry import (
    Corner,
    Face,
    ForkDimensions,
    InLine,
    Side,
    from_bars,
    from_plate,
    from_spread,
)
from tests.rigid_model import LEFT, RIGHT, RigidFork

PLACES = {
    Corner.UPPER_LEFT: (LEFT, False),
    Corner.LOWER_LEFT: (LEFT, True),
    Corner.UPPER_RIGHT: (RIGHT, False),
    Corner.LOWER_RIGHT: (RIGHT, True),
}
AHEAD = {Face.FRONT: 1, Face.REAR: -1}
twists = st.floats(-2, 2).filter(lambda twist: abs(twist) > 0.01)
rigid_forks = st.builds(
    RigidFork,
    leg_spacing=st.floats(160, 240),
    bracket_spacing=st.floats(150, 220),
    to_axle=st.floats(350, 550),
    bracket_offset=st.floats(20, 70),
    twist_deg=twists,
)


def as_given(fork: RigidFork) -> ForkDimensions:
    return ForkDimensions(fork.leg_spacing, fork.bracket_spacing, fork.to_axle)


def second_order(fork: RigidFork) -> float:
    """Room for what the closed forms leave out.

    A plate or bar turns with the tubes it lies on, the more the deeper down: its turn is that
    of the twist times depth over bracket spacing, and the closed forms leave out its square.
    """
    return math.radians(fork.twist_deg) ** 2 * (1 + (fork.to_axle / fork.bracket_spacing) ** 2)


def plate_on(fork: RigidFork, corner: Corner, face: Face, upper: float, length: float) -> float:
    return float(fork.plate_gap(upper, length, PLACES[corner], AHEAD[face]))


def with_gap_where_it_belongs(skew_mm: float, length: float, fork: RigidFork) -> InLine:
    corner = Corner.LOWER_RIGHT if skew_mm > 0 else Corner.LOWER_LEFT
    return from_plate(abs(skew_mm), length, corner, as_given(fork))


def test_the_plate_gap_worked_on_coordinates() -> None:
    # checks.md, "Computed on coordinates (no closed form used)": gap 2.38826 mm; the plate's
    # upper line at the lower bracket, its length along the tubes.
    fork = RigidFork(leg_spacing=200, bracket_spacing=190, twist_deg=0.5)

    gap_mm = plate_on(fork, Corner.LOWER_RIGHT, Face.FRONT, 0, 260)
    made = from_plate(2.38826, 260, Corner.LOWER_RIGHT, as_given(fork))

    assert gap_mm == pytest.approx(2.38826, abs=5e-6)
    assert made.twist_deg == pytest.approx(0.5, abs=2e-5)


@pytest.mark.parametrize("face", Face)
@pytest.mark.parametrize("corner", Corner)
@pytest.mark.parametrize("twist", [0.8, -0.8], ids=["twisted left", "twisted right"])
def test_a_plate_gapes_at_the_two_corners_that_give_the_twist_its_sign(
    twist: float, corner: Corner, face: Face
) -> None:
    fork = RigidFork(twist_deg=twist)
    gap_mm = plate_on(fork, corner, face, 30, 260)

    told = from_plate(abs(gap_mm), 260, corner, as_given(fork), face)

    assert told.twist_deg is not None
    # A plate that would have to sink into a tube cannot lie so, and its corner tells the other.
    assert told.twist_deg == pytest.approx(math.copysign(1, gap_mm) * twist, rel=1e-3)


@given(fork=rigid_forks, upper=st.floats(0, 60), corner=st.sampled_from(Corner))
def test_the_twist_is_recovered_from_a_plate_to_second_order(
    fork: RigidFork, upper: float, corner: Corner
) -> None:
    gaps = {face: plate_on(fork, corner, face, upper, 260) for face in Face}
    face = max(gaps, key=lambda name: gaps[name])

    told = from_plate(gaps[face], 260, corner, as_given(fork), face)

    assert told.twist_deg == pytest.approx(fork.twist_deg, rel=second_order(fork))


@given(fork=rigid_forks, upper=st.floats(20, 60))
def test_the_twist_is_recovered_from_two_bars_to_second_order(
    fork: RigidFork, upper: float
) -> None:
    ends = [fork.bar_left_end_ahead(depth, 300) for depth in (upper, upper + 250)]

    told = from_bars(ends[1] - ends[0], 300, 250, as_given(fork))

    assert told.twist_deg == pytest.approx(fork.twist_deg, rel=second_order(fork))


@given(fork=rigid_forks)
def test_the_fore_and_aft_skew_gives_the_twist_exactly_and_the_correction_clears_it(
    fork: RigidFork,
) -> None:
    told = with_gap_where_it_belongs(fork.fore_and_aft_skew(20, 270), 250, fork)
    assert told.twist_deg is not None

    corrected = RigidFork(
        leg_spacing=fork.leg_spacing,
        bracket_spacing=fork.bracket_spacing,
        to_axle=fork.to_axle,
        bracket_offset=fork.bracket_offset,
        twist_deg=fork.twist_deg - told.twist_deg,
    )

    assert told.twist_deg == pytest.approx(fork.twist_deg, abs=1e-11)
    assert corrected.fore_and_aft_skew(20, 270) == pytest.approx(0, abs=1e-9)
    assert corrected.axle_end(LEFT)[0] == pytest.approx(corrected.axle_end(RIGHT)[0], abs=1e-9)
    assert plate_on(corrected, Corner.LOWER_LEFT, Face.FRONT, 20, 250) == pytest.approx(0, abs=1e-9)


@given(fork=rigid_forks)
def test_measuring_a_plate_and_correcting_twice_leaves_nothing(fork: RigidFork) -> None:
    for _ in range(2):
        gap_mm = plate_on(fork, Corner.LOWER_RIGHT, Face.FRONT, 20, 260)
        face = Face.FRONT if gap_mm >= 0 else Face.REAR
        told = from_plate(abs(gap_mm), 260, Corner.LOWER_RIGHT, as_given(fork), face)
        assert told.twist_deg is not None
        fork = RigidFork(
            fork.leg_spacing,
            fork.bracket_spacing,
            fork.to_axle,
            fork.bracket_offset,
            twist_deg=fork.twist_deg - told.twist_deg,
        )

    assert fork.fore_and_aft_skew(20, 280) == pytest.approx(0, abs=1e-6)


@given(fork=rigid_forks)
def test_axle_and_wheel_are_those_of_the_rigid_fork(fork: RigidFork) -> None:
    told = with_gap_where_it_belongs(fork.fore_and_aft_skew(0, 250), 250, fork)

    ahead = fork.axle_end(LEFT)[0] - fork.axle_end(RIGHT)[0]
    assert told.axle_end_ahead_mm == pytest.approx(ahead, abs=1e-9)
    assert told.axle_turn_deg == pytest.approx(fork.wheel_heading_deg(), rel=second_order(fork))


def test_a_top_bracket_twisted_left_turns_the_wheel_right_and_is_cured_left_side_forward() -> None:
    fork = RigidFork(twist_deg=1.0)
    told = with_gap_where_it_belongs(fork.fore_and_aft_skew(0, 250), 250, fork)
    moved_mm = RigidFork().top_clamp(LEFT)[0] - fork.top_clamp(LEFT)[0]

    assert fork.at_height(LEFT, -250)[0] > fork.at_height(RIGHT, -250)[0]
    assert told.skew_deg is not None
    assert told.skew_deg > 0
    assert told.twist_deg == pytest.approx(1.0)
    assert fork.wheel_heading_deg() < 0
    assert told.axle_turn_deg is not None
    assert told.axle_turn_deg < 0
    assert moved_mm > 0
    assert told.forward_side is Side.LEFT
    assert told.top_bracket_rim_mm == pytest.approx(moved_mm, rel=0.01)


@given(gap=st.floats(0.001, 8), corner=st.sampled_from(Corner), face=st.sampled_from(Face))
def test_mirrored_left_to_right_every_sign_flips(gap: float, corner: Corner, face: Face) -> None:
    mirrored = Corner(
        corner.replace("left", "right") if "left" in corner else corner.replace("right", "left")
    )
    fork = ForkDimensions(200, 190, 430)

    one, other = (from_plate(gap, 260, place, fork, face) for place in (corner, mirrored))

    for name in ("skew_deg", "twist_deg", "top_bracket_rim_mm", "axle_turn_deg"):
        assert getattr(one, name) == -getattr(other, name)
    assert one.axle_end_ahead_mm == -(other.axle_end_ahead_mm or 0)
    assert {one.forward_side, other.forward_side} == set(Side)


@given(difference=st.floats(-8, 8), scale=st.floats(0.01, 100))
def test_angles_do_not_depend_on_the_unit(difference: float, scale: float) -> None:
    told = from_bars(difference, 300, 250, ForkDimensions(200, 190, 430))

    scaled = from_bars(
        difference * scale,
        300 * scale,
        250 * scale,
        ForkDimensions(200 * scale, 190 * scale, 430 * scale),
    )

    for name in ("skew_deg", "twist_deg", "axle_turn_deg"):
        assert getattr(scaled, name) == pytest.approx(getattr(told, name), abs=1e-12)


@given(gap=st.floats(0.1, 40), corner=st.sampled_from(Corner), face=st.sampled_from(Face))
def test_the_plates_sensitivity_is_the_numerical_derivative(
    gap: float, corner: Corner, face: Face
) -> None:
    step = 1e-3
    told, less, more = (from_plate(gap + by, 260, corner, None, face) for by in (0, -step, step))

    slope = ((more.skew_deg or 0) - (less.skew_deg or 0)) / (2 * step)

    assert told.sensitivity_deg_per_mm == pytest.approx(slope, rel=1e-6)


@given(difference=st.floats(-40, 40))
def test_the_bars_and_the_spreads_sensitivity_is_the_numerical_derivative(
    difference: float,
) -> None:
    step, fork = 1e-3, ForkDimensions(leg_spacing_mm=200)
    bars = [from_bars(difference + by, 300, 250, fork) for by in (0, -step, step)]
    spread = [from_spread(240, 240 + difference + by, 260) for by in (0, -step, step)]

    bars_slope = ((bars[2].skew_deg or 0) - (bars[1].skew_deg or 0)) / (2 * step)
    spread_slope = ((spread[2].convergence_deg or 0) - (spread[1].convergence_deg or 0)) / (
        2 * step
    )

    assert bars[0].sensitivity_deg_per_mm == pytest.approx(bars_slope, rel=1e-6)
    assert spread[0].sensitivity_deg_per_mm == pytest.approx(spread_slope, rel=1e-6)


def test_tubes_wider_apart_below_have_a_positive_convergence_and_no_twist() -> None:
    told = from_spread(240.0, 242.0, 260.0)

    # Each tube leans out by half of it: 1 mm over 260 mm.
    assert told.convergence_deg == pytest.approx(2 * math.degrees(math.atan(1 / 260)), rel=1e-4)
    assert told.twist_deg is None
    assert from_spread(242.0, 240.0, 260.0).convergence_deg == -(told.convergence_deg or 0)


def test_what_needs_a_missing_dimension_is_left_out() -> None:
    told = from_plate(2.0, 260, Corner.LOWER_RIGHT, ForkDimensions(bracket_spacing_mm=190))
    ahead = from_plate(2.0, 260, Corner.LOWER_RIGHT, ForkDimensions(lower_bracket_to_axle_mm=430))

    assert told.skew_deg is not None
    assert (told.twist_deg, told.axle_turn_deg, told.forward_side) == (None, None, None)
    assert ahead.axle_end_ahead_mm == pytest.approx(430 * 2 / 260)
    assert ahead.axle_turn_deg is None


def test_a_plate_that_touches_everywhere_means_nothing_to_turn() -> None:
    told = from_plate(0.0, 260, Corner.UPPER_RIGHT, ForkDimensions(200, 190, 430))

    # As text, because a minus nought compares equal and would be shown with its sign.
    assert str((told.skew_deg, told.twist_deg, told.axle_turn_deg)) == "(0.0, 0.0, 0.0)"
    assert told.forward_side is None


@pytest.mark.parametrize(
    ("gap", "height", "where"),
    [
        pytest.param(300, 260, "in_line gap", id="gap longer than the height"),
        pytest.param(-1, 260, "in_line gap", id="less than touching"),
        pytest.param(2, 0, "in_line height", id="no height"),
        pytest.param(2, -260, "in_line height", id="height upside down"),
        pytest.param(math.nan, 260, "in_line gap", id="gap unread"),
    ],
)
def test_a_plate_reading_that_cannot_be_is_refused(gap: float, height: float, where: str) -> None:
    with pytest.raises(AlignerError) as refusal:
        from_plate(gap, height, Corner.LOWER_LEFT)

    assert refusal.value.where == where


@pytest.mark.parametrize(
    "fork", [ForkDimensions(0, 190), ForkDimensions(200, 0), ForkDimensions(200, 190, -1)]
)
def test_a_fork_without_lengths_is_refused(fork: ForkDimensions) -> None:
    with pytest.raises(AlignerError, match="give more than 0 mm"):
        from_plate(2, 260, Corner.LOWER_LEFT, fork)


def test_a_twist_beyond_a_quarter_turn_is_refused() -> None:
    with pytest.raises(AlignerError, match="more than 90 degrees"):
        from_plate(30, 260, Corner.LOWER_LEFT, ForkDimensions(20, 190))


def test_bars_need_the_leg_spacing_and_ends_closer_than_their_length() -> None:
    with pytest.raises(AlignerError, match="leg_spacing"):
        from_bars(2, 300, 250, ForkDimensions())
    with pytest.raises(AlignerError, match="in_line end_difference"):
        from_bars(-301, 300, 250, ForkDimensions(200))


def test_widths_that_differ_by_the_height_are_refused() -> None:
    with pytest.raises(AlignerError, match="in_line widths"):
        from_spread(240, 500, 260)
