"""The lower bracket's turn against reference points in coordinates, and a root finder."""

from dataclasses import astuple

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from aligner.errors import AlignerError
from aligner.geometry import (
    ReferencePair,
    changes,
    changes_without_dimensions,
    distances_at,
    straight_distance_mm,
    turn_deg,
    turn_sensitivities,
)
from tests.rigid_model import LEFT, RIGHT, RigidPair, pair_that_reads

rigid_pairs = st.builds(
    RigidPair,
    reach=st.floats(-40, 120),
    half_width=st.floats(40, 120),
    setback=st.floats(20, 300),
    frame_half_width=st.floats(0, 60),
    height=st.floats(-300, 300),
    turn_deg=st.floats(-40, 40),
    asymmetry=st.floats(-4, 4),
).filter(lambda pair: pair.setback * pair.half_width + pair.frame_half_width * pair.reach > 1000)


def as_given(pair: RigidPair) -> ReferencePair:
    return ReferencePair(pair.reach, pair.half_width, pair.setback, pair.frame_half_width)


def readings(pair: RigidPair) -> tuple[float, float]:
    # The bracket's point cannot stand on the frame's.
    assume(min(pair.distance(LEFT), pair.distance(RIGHT)) > 10)
    return pair.distance(LEFT), pair.distance(RIGHT)


def test_the_example_worked_on_coordinates() -> None:
    # checks.md, "Computed on coordinates (no closed form used)": turn and straight distance.
    pair = ReferencePair(60, 85, 40, 30)

    assert turn_deg(184.6, 182.0, pair) == pytest.approx(-2.626499, abs=5e-7)
    assert straight_distance_mm(184.6, 182.0, pair) == pytest.approx(183.303750, abs=5e-7)


@given(left=st.floats(170, 200), right=st.floats(170, 200))
def test_turn_and_straight_distance_are_those_a_root_finder_gives(
    left: float, right: float
) -> None:
    given_pair = RigidPair(60, 85, 40, 30)
    found = pair_that_reads(left, right, given_pair)
    straight = found.turned(-found.turn_deg)

    assert turn_deg(left, right, as_given(given_pair)) == pytest.approx(found.turn_deg, abs=1e-9)
    assert straight_distance_mm(left, right, as_given(given_pair)) == pytest.approx(
        straight.distance(LEFT), abs=1e-9
    )


@given(pair=rigid_pairs)
def test_the_turn_of_a_rigid_bracket_is_recovered_at_any_height(pair: RigidPair) -> None:
    left, right = readings(pair)

    assert turn_deg(left, right, as_given(pair), pair.asymmetry) == pytest.approx(
        pair.turn_deg, abs=1e-9
    )


@given(pair=rigid_pairs)
def test_a_bracket_turned_by_the_correction_reads_what_was_foretold(pair: RigidPair) -> None:
    left, right = readings(pair)
    turn = turn_deg(left, right, as_given(pair), pair.asymmetry)
    change = changes(left, right, as_given(pair), pair.asymmetry)
    straight = straight_distance_mm(left, right, as_given(pair), pair.asymmetry)

    corrected = pair.turned(-turn)

    assert corrected.distance(LEFT) == pytest.approx(left + change.left_mm, abs=1e-9)
    assert corrected.distance(RIGHT) == pytest.approx(right + change.right_mm, abs=1e-9)
    assert corrected.distance(LEFT) - pair.asymmetry / 2 == pytest.approx(straight, abs=1e-9)
    assert corrected.distance(RIGHT) + pair.asymmetry / 2 == pytest.approx(straight, abs=1e-9)


@given(pair=rigid_pairs, wanted=st.floats(-40, 40))
def test_readings_at_another_turn_are_those_of_the_rigid_bracket(
    pair: RigidPair, wanted: float
) -> None:
    left, right = readings(pair)
    other = pair.turned(wanted - pair.turn_deg)
    assume(min(other.distance(LEFT), other.distance(RIGHT)) > 10)

    foretold = distances_at(wanted, left, right, as_given(pair), pair.asymmetry)

    assert astuple(foretold) == pytest.approx(
        (other.distance(LEFT), other.distance(RIGHT)), abs=1e-8
    )


@pytest.mark.parametrize(
    ("turn", "longer"), [pytest.param(2.0, RIGHT, id="left"), pytest.param(-2.0, LEFT, id="right")]
)
def test_the_side_the_bracket_is_turned_to_has_the_shorter_distance(
    turn: float, longer: int
) -> None:
    pair = RigidPair(60, 85, 40, 30, height=140, turn_deg=turn)

    assert pair.distance(longer) > pair.distance(-longer)
    assert turn_deg(pair.distance(LEFT), pair.distance(RIGHT), as_given(pair)) == pytest.approx(
        turn
    )


@given(pair=rigid_pairs)
def test_mirrored_readings_give_the_opposite_turn(pair: RigidPair) -> None:
    left, right = readings(pair)
    given_pair, asymmetry = as_given(pair), pair.asymmetry

    assert turn_deg(right, left, given_pair, -asymmetry) == pytest.approx(
        -turn_deg(left, right, given_pair, asymmetry), abs=1e-12
    )
    there, back = (
        changes(left, right, given_pair, asymmetry),
        changes(right, left, given_pair, -asymmetry),
    )
    assert astuple(there) == pytest.approx(astuple(back)[::-1], abs=1e-10)


@given(pair=rigid_pairs, scale=st.floats(0.5, 50))
def test_the_turn_does_not_depend_on_the_unit(pair: RigidPair, scale: float) -> None:
    left, right = readings(pair)
    scaled = ReferencePair(*(scale * value for value in astuple(as_given(pair))))

    assert turn_deg(left * scale, right * scale, scaled, pair.asymmetry * scale) == pytest.approx(
        turn_deg(left, right, as_given(pair), pair.asymmetry), abs=1e-9
    )


@given(pair=rigid_pairs)
def test_the_sensitivities_are_the_numerical_derivatives(pair: RigidPair) -> None:
    left, right = readings(pair)
    given_pair, asymmetry, step = as_given(pair), pair.asymmetry, 1e-3

    def slope(by_left: float, by_right: float, by_asymmetry: float) -> float:
        def at(size: float) -> float:
            return turn_deg(
                left + size * by_left,
                right + size * by_right,
                given_pair,
                asymmetry + size * by_asymmetry,
            )

        return (at(step) - at(-step)) / (2 * step)

    stated = turn_sensitivities(left, right, given_pair, asymmetry)

    assert astuple(stated) == pytest.approx(
        (slope(1, 0, 0), slope(0, 1, 0), slope(0, 0, 1)), rel=1e-4, abs=1e-7
    )


@given(left=st.floats(100, 300), difference=st.floats(-5, 5), asymmetry=st.floats(-3, 3))
def test_without_dimensions_each_side_goes_to_the_mean(
    left: float, difference: float, asymmetry: float
) -> None:
    right = left - difference

    change = changes_without_dimensions(left, right, asymmetry)

    assert left + change.left_mm - asymmetry / 2 == pytest.approx((left + right) / 2)
    assert right + change.right_mm + asymmetry / 2 == pytest.approx((left + right) / 2)


@pytest.mark.parametrize("turn", [-1.0, 0.5, 1.0])
def test_without_dimensions_the_target_is_true_to_first_order(turn: float) -> None:
    pair = RigidPair(60, 85, 40, 30, height=140, turn_deg=turn)
    left, right = pair.distance(LEFT), pair.distance(RIGHT)

    rough, exact = changes_without_dimensions(left, right), changes(left, right, as_given(pair))

    assert rough.left_mm == pytest.approx(exact.left_mm, abs=0.01)
    assert abs(exact.left_mm) > 0.2


def test_a_straight_bracket_has_neither_a_turn_nor_a_minus_sign() -> None:
    pair = ReferencePair(60, 85, 40, 30)

    # As text, because a minus nought compares equal and would be shown with its sign.
    assert str(turn_deg(183.0, 183.0, pair)) == "0.0"
    assert str(astuple(changes(183.0, 183.0, pair))) == "(0.0, 0.0)"
    assert str(astuple(changes_without_dimensions(183.0, 183.0))) == "(0.0, 0.0)"


def test_at_a_quarter_turn_the_sensitivities_are_refused_in_words() -> None:
    # A lever of 300 mm2 and (40^2 - 20^2) / 4 = 300 mm2: exact in floats.
    pair = ReferencePair(0, 30, 10, 0)

    assert turn_deg(40.0, 20.0, pair) == -90
    with pytest.raises(AlignerError, match="90 degrees"):
        turn_sensitivities(40.0, 20.0, pair)
