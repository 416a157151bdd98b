"""Dimensions that no turn can bring together with the readings are named in words."""

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.errors import AlignerError
from aligner.geometry import ReferencePair, check_dimensions, turn_deg
from tests.rigid_model import LEFT, RIGHT, RigidPair

TRUE = ReferencePair(
    bracket_reach_mm=60, bracket_half_width_mm=85, frame_setback_mm=40, frame_half_width_mm=30
)


@pytest.mark.parametrize(
    ("pair", "where"),
    [
        pytest.param(replace(TRUE, frame_setback_mm=400), "frame_setback", id="a nought too many"),
        pytest.param(replace(TRUE, bracket_reach_mm=250), "bracket_reach", id="reach too long"),
        pytest.param(
            replace(TRUE, bracket_half_width_mm=340), "bracket_half_width", id="wide bracket"
        ),
        pytest.param(replace(TRUE, frame_half_width_mm=340), "frame_half_width", id="wide frame"),
    ],
)
def test_a_plan_distance_longer_than_the_measured_one_names_the_dimension(
    pair: ReferencePair, where: str
) -> None:
    with pytest.raises(AlignerError, match="seen from above") as refusal:
        check_dimensions(184.6, 182.0, pair)

    assert refusal.value.where == where
    assert "longer than the 183.3 mm measured" in str(refusal.value)


def test_a_plan_distance_may_be_longer_by_a_rule_s_millimetre_and_no_more() -> None:
    # Points straight ahead of each other, 40 mm behind the axis and 60 mm ahead: 100 mm in plan.
    pair = replace(TRUE, frame_half_width_mm=85)
    check_dimensions(99.02, 99.02, pair)
    with pytest.raises(AlignerError, match="seen from above"):
        check_dimensions(98.98, 98.98, pair)


def test_a_difference_that_no_turn_makes_names_a_dimension_and_its_least_value() -> None:
    pair = replace(TRUE, frame_setback_mm=4, frame_half_width_mm=3)
    with pytest.raises(AlignerError, match="no turn makes more than") as refusal:
        check_dimensions(190.0, 180.0, pair)

    assert refusal.value.where == "frame_setback"
    least_mm = float(str(refusal.value).split("at least ")[1].split(" mm")[0])
    check_dimensions(190.0, 180.0, replace(pair, frame_setback_mm=least_mm + 0.01))
    with pytest.raises(AlignerError, match="no turn"):
        check_dimensions(190.0, 180.0, replace(pair, frame_setback_mm=least_mm - 0.01))


@pytest.mark.parametrize(
    ("pair", "where"),
    [
        pytest.param(ReferencePair(60, 0, 40, 0), "half widths", id="both in the middle"),
        pytest.param(
            ReferencePair(0, 85, 0, 30), "bracket_reach and frame_setback", id="all abreast"
        ),
        pytest.param(
            ReferencePair(0, 0, 40, 30),
            "bracket_reach and bracket_half_width",
            id="bracket on axis",
        ),
        pytest.param(
            ReferencePair(60, 85, 0, 0), "frame_setback and frame_half_width", id="frame on axis"
        ),
        pytest.param(
            ReferencePair(-60, 60, 30, 30), "reference points", id="in line with the axis"
        ),
    ],
)
def test_points_without_a_lever_are_refused(pair: ReferencePair, where: str) -> None:
    with pytest.raises(AlignerError, match="no turn changes these distances") as refusal:
        check_dimensions(184.6, 182.0, pair)

    assert refusal.value.where == where


@pytest.mark.parametrize(
    ("left", "right", "pair", "asymmetry", "where"),
    [
        pytest.param(math.nan, 182, TRUE, 0, "left", id="left unread"),
        pytest.param(184, 0, TRUE, 0, "right", id="right nothing"),
        pytest.param(184, 182, TRUE, math.inf, "frame_asymmetry", id="endless asymmetry"),
        pytest.param(184, 182, TRUE, 400, "frame_asymmetry", id="asymmetry like a distance"),
        pytest.param(
            184,
            182,
            replace(TRUE, bracket_half_width_mm=-85),
            0,
            "bracket_half_width",
            id="bracket",
        ),
        pytest.param(
            184,
            182,
            replace(TRUE, frame_half_width_mm=-30),
            0,
            "frame_half_width",
            id="frame",
        ),
        pytest.param(
            184, 182, replace(TRUE, bracket_reach_mm=math.nan), 0, "bracket_reach", id="no reach"
        ),
        pytest.param(
            184, 182, replace(TRUE, frame_setback_mm=math.nan), 0, "frame_setback", id="no setback"
        ),
    ],
)
def test_a_value_that_is_no_length_is_refused_by_its_name(
    left: float, right: float, pair: ReferencePair, asymmetry: float, where: str
) -> None:
    with pytest.raises(AlignerError) as refusal:
        turn_deg(left, right, pair, asymmetry)

    assert refusal.value.where == where


@given(
    turn=st.floats(-40, 40),
    height=st.floats(0, 200),
    rounding=st.tuples(st.floats(-0.05, 0.05), st.floats(-0.05, 0.05)),
)
def test_true_dimensions_pass_even_with_points_at_one_height_and_rounded_readings(
    turn: float, height: float, rounding: tuple[float, float]
) -> None:
    rigid = RigidPair(60, 85, 40, 30, height=height, turn_deg=turn)

    check_dimensions(rigid.distance(LEFT) + rounding[0], rigid.distance(RIGHT) + rounding[1], TRUE)


@pytest.mark.parametrize(
    ("pair", "rigid"),
    [
        pytest.param(
            ReferencePair(60, 0, 40, 30),
            RigidPair(60, 0, 40, 30, height=90, turn_deg=3),
            id="one bracket point in the middle",
        ),
        pytest.param(
            ReferencePair(60, 85, 40, 0),
            RigidPair(60, 85, 40, 0, height=90, turn_deg=3),
            id="one frame point in the middle",
        ),
        pytest.param(
            ReferencePair(-80, 85, 20, 40),
            RigidPair(-80, 85, 20, 40, height=90, turn_deg=3),
            id="bracket points behind the axis",
        ),
    ],
)
def test_points_in_the_middle_or_behind_the_axis_still_tell_the_turn(
    pair: ReferencePair, rigid: RigidPair
) -> None:
    assert turn_deg(rigid.distance(LEFT), rigid.distance(RIGHT), pair) == pytest.approx(3)
