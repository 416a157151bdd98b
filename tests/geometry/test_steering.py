"""Rake, trail and wheelbase against a rigid bike that a root finder settles on its tyres."""

import math
from dataclasses import astuple, replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from aligner.errors import AlignerError
from aligner.geometry import SteeringGeometry, normal_trail_mm, raised, trail_mm
from tests.rigid_model import RigidBike

BIKE = SteeringGeometry(
    rake_deg=26, offset_mm=35, front_radius_mm=300, rear_radius_mm=310, wheelbase_mm=1450
)
bikes = st.builds(
    SteeringGeometry,
    rake_deg=st.floats(15, 45),
    offset_mm=st.floats(-20, 80),
    front_radius_mm=st.floats(220, 360),
    rear_radius_mm=st.floats(220, 360),
    wheelbase_mm=st.floats(1100, 1800),
)
rises = st.floats(-60, 60)


def test_the_rise_worked_on_coordinates() -> None:
    # checks.md, "Computed on coordinates (no closed form used)".
    made = raised(BIKE, 5)

    assert made.rake_deg == pytest.approx(25.822154, abs=5e-7)
    assert made.trail_mm == pytest.approx(106.286406, abs=5e-7)
    assert made.trail_mm - made.trail_change_mm == pytest.approx(107.378717, abs=1e-5)
    assert made.wheelbase_mm == pytest.approx(1447.784079, abs=5e-7)


@settings(max_examples=60)
@given(bike=bikes, rise=rises)
def test_a_raised_bike_settles_where_the_rigid_one_does(
    bike: SteeringGeometry, rise: float
) -> None:
    rake_deg, trail, wheelbase = RigidBike(*astuple(bike)).raised(rise)

    made = raised(bike, rise)

    assert made.rake_deg == pytest.approx(rake_deg, abs=1e-9)
    assert made.wheelbase_mm == pytest.approx(wheelbase, abs=1e-8)
    assert made.trail_mm == pytest.approx(trail, abs=1e-8)
    assert made.normal_trail_mm == pytest.approx(trail * math.cos(math.radians(rake_deg)), abs=1e-8)


@given(bike=bikes)
def test_no_rise_changes_nothing(bike: SteeringGeometry) -> None:
    made = raised(bike, 0)

    assert made.rake_deg == pytest.approx(bike.rake_deg, abs=1e-12)
    assert made.wheelbase_mm == pytest.approx(bike.wheelbase_mm)
    assert made.trail_change_mm == pytest.approx(0, abs=1e-9)


@given(bike=bikes, rise=st.floats(0.1, 60))
def test_raising_the_legs_drops_the_nose_and_steepens_the_axis(
    bike: SteeringGeometry, rise: float
) -> None:
    up, down = raised(bike, rise), raised(bike, -rise)

    assert up.rake_change_deg < 0 < down.rake_change_deg
    assert up.rake_deg == pytest.approx(bike.rake_deg + up.rake_change_deg)


@given(bike=bikes, rise=rises)
def test_letting_down_what_was_raised_restores_the_bike(
    bike: SteeringGeometry, rise: float
) -> None:
    up = raised(bike, rise)
    back = raised(replace(bike, rake_deg=up.rake_deg, wheelbase_mm=up.wheelbase_mm), -rise)

    assert back.rake_deg == pytest.approx(bike.rake_deg, abs=1e-9)
    assert back.wheelbase_mm == pytest.approx(bike.wheelbase_mm, abs=1e-8)


@given(bike=bikes, rise=rises, scale=st.floats(0.01, 100))
def test_the_rake_does_not_depend_on_the_unit(
    bike: SteeringGeometry, rise: float, scale: float
) -> None:
    made = raised(bike, rise)
    lengths = (value * scale for value in astuple(bike)[1:])

    scaled = raised(SteeringGeometry(bike.rake_deg, *lengths), rise * scale)

    assert scaled.rake_deg == pytest.approx(made.rake_deg, abs=1e-9)
    assert scaled.trail_mm == pytest.approx(made.trail_mm * scale, abs=1e-7 * scale)


@given(bike=bikes)
def test_normal_trail_is_trail_times_the_cosine_of_the_rake(bike: SteeringGeometry) -> None:
    values = (bike.rake_deg, bike.offset_mm, bike.front_radius_mm)

    assert normal_trail_mm(*values) == pytest.approx(
        trail_mm(*values) * math.cos(math.radians(bike.rake_deg))
    )


@pytest.mark.parametrize(
    ("wrong", "where"),
    [
        pytest.param({"rake_deg": 90.0}, "rake", id="rake flat"),
        pytest.param({"rake_deg": -5.0}, "rake", id="rake forward"),
        pytest.param({"rake_deg": math.nan}, "rake", id="rake missing"),
        pytest.param({"offset_mm": math.inf}, "offset", id="endless offset"),
        pytest.param({"front_radius_mm": 0.0}, "front_radius", id="no front wheel"),
        pytest.param({"rear_radius_mm": -310.0}, "rear_radius", id="rear wheel inside out"),
        pytest.param({"wheelbase_mm": 0.0}, "wheelbase", id="no wheelbase"),
        pytest.param({"wheelbase_mm": 600.0}, "wheelbase", id="tyres overlap"),
    ],
)
def test_a_bike_that_cannot_be_is_refused_by_the_fields_name(
    wrong: dict[str, float], where: str
) -> None:
    with pytest.raises(AlignerError) as refusal:
        raised(replace(BIKE, **wrong), 5)

    assert refusal.value.where == where


@pytest.mark.parametrize(
    ("wheelbase", "rise"),
    [
        pytest.param(1450, 4000.0, id="the axle behind the rear one"),
        pytest.param(625, 50.0, id="the tyres together"),
        pytest.param(1450, math.nan, id="no number"),
    ],
)
def test_a_rise_that_brings_the_wheels_together_or_is_no_number_is_refused(
    wheelbase: float, rise: float
) -> None:
    with pytest.raises(AlignerError) as refusal:
        raised(replace(BIKE, wheelbase_mm=wheelbase), rise)

    assert refusal.value.where == "rise"


def test_trail_refuses_a_steering_axis_that_never_meets_the_ground() -> None:
    with pytest.raises(AlignerError, match="never meets the ground"):
        trail_mm(90, 35, 300)
