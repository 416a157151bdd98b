import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.fastening.torque import newton_metres_per
from aligner.fastening.wrench import (
    Adapter,
    UnusableWrench,
    Wrench,
    delivered_range_nm,
    lengthening,
    margin_nm,
    marks_nm,
    set_on_scale,
    setting_nm,
)

LBF_FT = newton_metres_per("lbf·ft")
IN_POUND_FEET = Wrench(
    "three eighths", 10 * LBF_FT, 80 * LBF_FT, 0.5 * LBF_FT, LBF_FT, grip_length_mm=300
)
IN_NEWTON_METRES = Wrench("small", 5, 25, 0.25, drive="1/4 in")

LENGTHS = st.floats(150, 700)
REACHES = st.floats(0, 120)
ANGLES = st.floats(-180, 180)
TORQUES = st.floats(2, 200)


@given(TORQUES, LENGTHS, REACHES, ANGLES, st.floats(0, 2 * math.pi))
def test_setting_balances_the_moments_in_coordinates(torque_nm, grip_mm, reach_mm, angle_deg, turn):
    # A second way: the drive stands at the origin, the hand pulls square to the wrench at the
    # grip, the fastener lies beyond the drive at the adapter's angle; all turned anyhow.
    angle = math.radians(angle_deg)
    spin = np.array([[math.cos(turn), -math.sin(turn)], [math.sin(turn), math.cos(turn)]])
    grip = spin @ np.array([grip_mm / 1000, 0.0])
    fastener = spin @ (reach_mm / 1000 * np.array([-math.cos(angle), math.sin(angle)]))
    pull = spin @ np.array([0.0, 1.0])

    def moment(arm):
        return arm[0] * pull[1] - arm[1] * pull[0]

    pull_n = torque_nm / moment(grip - fastener)
    at_drive_nm = pull_n * moment(grip)
    adapter = Adapter("crowfoot", reach_mm, angle_deg)
    assert setting_nm(torque_nm, grip_mm, adapter) == pytest.approx(at_drive_nm, rel=1e-9)


@given(TORQUES, LENGTHS, REACHES, st.sampled_from([90.0, -90.0, 270.0]))
def test_a_square_adapter_changes_nothing(torque_nm, grip_mm, reach_mm, angle_deg):
    assert setting_nm(torque_nm, grip_mm, Adapter("crowfoot", reach_mm, angle_deg)) == torque_nm


@given(TORQUES, LENGTHS, REACHES, ANGLES)
def test_a_concentric_socket_changes_nothing(torque_nm, grip_mm, length_mm, angle_deg):
    socket = Adapter("socket", length_mm, angle_deg, concentric=True)
    assert setting_nm(torque_nm, grip_mm, socket) == torque_nm


@given(TORQUES, LENGTHS, REACHES)
def test_an_adapter_folded_back_subtracts(torque_nm, grip_mm, reach_mm):
    folded = setting_nm(torque_nm, grip_mm, Adapter("crowfoot", reach_mm, 180))
    assert folded == pytest.approx(torque_nm * grip_mm / (grip_mm - reach_mm))
    assert folded >= torque_nm >= setting_nm(torque_nm, grip_mm, Adapter("crowfoot", reach_mm))


@given(TORQUES, LENGTHS, REACHES, ANGLES, st.floats(0.01, 100))
def test_units_of_length_and_torque_do_not_matter(torque_nm, grip_mm, reach_mm, angle_deg, factor):
    here = setting_nm(torque_nm, grip_mm, Adapter("crowfoot", reach_mm, angle_deg))
    there = setting_nm(
        torque_nm * factor, grip_mm / 25.4, Adapter("crowfoot", reach_mm / 25.4, angle_deg)
    )
    assert there == pytest.approx(here * factor, rel=1e-9)


def test_a_grip_length_is_needed_only_where_the_adapter_counts():
    assert setting_nm(23, None, None) == 23
    assert setting_nm(23, None, Adapter("crowfoot", 30, 90)) == 23
    assert setting_nm(23, None, Adapter("socket", 30, concentric=True)) == 23
    with pytest.raises(UnusableWrench) as refused:
        setting_nm(23, None, Adapter("crowfoot", 30))
    assert str(refused.value) == (
        "adapter “crowfoot”: it changes the torque, and the wrench's grip length is not known; "
        "measure from the middle of the drive to the middle of the grip, "
        "or set the adapter at 90°"
    )


@pytest.mark.parametrize("unit", [1.0, LBF_FT, LBF_FT / 12])
def test_a_scale_of_two_marks_is_a_scale_and_one_of_fewer_is_refused(unit):
    for low, high in ((10, 12), (20, 28), (3.3, 5.5)):
        Wrench("two marks", low * unit, high * unit, (high - low) * unit, unit)
        with pytest.raises(UnusableWrench, match="marks are further apart"):
            Wrench("one mark", low * unit, high * unit, (high - low) * 1.01 * unit, unit)


def test_a_fastener_behind_the_hand_is_refused():
    with pytest.raises(UnusableWrench, match="puts the fastener behind the hand; turn it round"):
        lengthening(100, Adapter("bar", 120, 180))


@given(st.floats(1, 200), st.floats(0, 0.1), st.floats(0.5, 2))
def test_at_either_end_of_what_is_delivered_the_deviation_is_the_permissible_one(
    set_nm, deviation, times
):
    low_nm, high_nm = (value / times for value in delivered_range_nm(set_nm, deviation, times))
    assert (set_nm - low_nm) / low_nm == pytest.approx(deviation, abs=1e-9)
    assert (set_nm - high_nm) / high_nm == pytest.approx(-deviation, abs=1e-9)


@pytest.mark.parametrize(
    ("wrench", "target_nm", "low_nm", "high_nm", "said"),
    [
        # 23 N·m is 16.96 lbf·ft, and the nearest half is 17.
        (IN_POUND_FEET, 23, 20, 26, "17.0 lbf·ft"),
        # 30 N·m is 22.13 lbf·ft.
        (IN_POUND_FEET, 30, 27, 33, "22.0 lbf·ft"),
        # 45 N·m is 33.19 lbf·ft.
        (IN_POUND_FEET, 45, 45, 45, "33.0 lbf·ft"),
        (IN_NEWTON_METRES, 10, 9, 11, "10.00 N·m"),
        (IN_NEWTON_METRES, 9.6, 8.6, 10.6, "9.50 N·m"),
        (IN_NEWTON_METRES, 9.65, 8.6, 10.6, "9.75 N·m"),
        # Between 9.50 and 9.75 the nearer to 9.5; but 9.50 delivers down to 9.135.
        (IN_NEWTON_METRES, 9.6, 9.2, 10.4, "9.75 N·m"),
        # Nothing fits within 4 %: the nearest mark.
        (IN_NEWTON_METRES, 9.6, 9.5, 9.7, "9.50 N·m"),
        # Marks count from the lowest one.
        (Wrench("odd", 7, 47, 2), 20, 18, 22, "19 N·m"),
        (Wrench("odd", 7, 47, 2), 20.5, 18, 23, "21 N·m"),
        # A lowest mark finer than the step between marks.
        (Wrench("half", 2.5, 20.5, 1), 3.4, 3, 4, "3.5 N·m"),
        # A scale in kgf·cm: 10 N·m is 101.97.
        (
            Wrench("old", 20 * 0.0980665, 240 * 0.0980665, 2 * 0.0980665, 0.0980665),
            10,
            9,
            11,
            "102 kgf·cm",
        ),
        # A scale of its own kind.
        (Wrench("strange", 7, 47, 1, 0.7), 20, 18, 22, "20.0 N·m"),
    ],
)
def test_a_setting_is_a_mark_on_the_wrenchs_own_scale(wrench, target_nm, low_nm, high_nm, said):
    mark_nm = set_on_scale(wrench, target_nm, low_nm, high_nm)
    assert mark_nm is not None
    assert wrench.setting_text(mark_nm) == said


def test_a_setting_in_pound_feet_is_a_plain_number_on_the_scale():
    mark_nm = set_on_scale(IN_POUND_FEET, 30, 27, 33)
    assert mark_nm is not None
    assert IN_POUND_FEET.on_scale(mark_nm) == 22.0


def test_a_mark_just_on_the_scale_serves_a_target_just_off_it():
    assert set_on_scale(IN_NEWTON_METRES, 4.9, 4.5, 5.5) == 5.0
    assert set_on_scale(IN_NEWTON_METRES, 4.9, 4.9, 4.9) is None


@given(st.floats(3, 130), st.floats(0.01, 0.3), st.floats(0.7, 1.4))
def test_the_mark_is_the_best_of_all_marks_tried_one_by_one(target_nm, tolerance, times):
    wrench = Wrench("tried", 5, 100, 0.5)
    low_nm, high_nm = target_nm * (1 - tolerance), target_nm * (1 + tolerance)
    every_nm = [5 + 0.5 * n for n in range(191)]
    inside = [
        mark
        for mark in every_nm
        if mark / 1.04 * times >= low_nm - 1e-9 and mark / 0.96 * times <= high_nm + 1e-9
    ]
    exact_nm = target_nm / times
    mark_nm = set_on_scale(wrench, target_nm, low_nm, high_nm, times)
    if inside:
        assert mark_nm is not None
        best_nm = min(abs(mark - exact_nm) for mark in inside)
        assert abs(mark_nm - exact_nm) == pytest.approx(best_nm, abs=1e-6)
    elif not 5 <= exact_nm <= 100:
        assert mark_nm is None
    else:
        assert mark_nm is not None
        assert abs(mark_nm - exact_nm) <= 0.25 + 1e-9


@given(st.floats(1, 120), st.floats(1, 120))
def test_marks_lie_on_the_usable_scale(one_nm, other_nm):
    wrench = Wrench("own bound", 10, 100, 2.5, own_lower_bound_nm=20)
    low_nm, high_nm = sorted((one_nm, other_nm))
    on_scale = (10 + 2.5 * n for n in range(37) if 10 + 2.5 * n >= 20)
    expected = [mark for mark in on_scale if low_nm - 1e-9 <= mark <= high_nm + 1e-9]
    assert list(marks_nm(wrench, low_nm, high_nm)) == expected


@pytest.mark.parametrize("half_pounds", range(20, 161))
def test_a_mark_is_found_where_it_is_read_whatever_binary_makes_of_it(half_pounds):
    read_nm = half_pounds / 2 * LBF_FT
    marks = marks_nm(IN_POUND_FEET, read_nm, read_nm)
    assert [IN_POUND_FEET.on_scale(mark) for mark in marks] == [half_pounds / 2]


def test_margin_is_counted_at_the_nearer_end():
    assert margin_nm((21, 24), 20, 26) == 1
    assert margin_nm((19, 24), 20, 26) == -1
    assert margin_nm((21, 29), 20, 26) == -3


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"low_nm": 30}, "its scale runs from 30 to 25 N·m"),
        ({"low_nm": 0}, "its scale runs from 0 to 25 N·m"),
        ({"graduation_nm": 0}, "its graduation is not above zero"),
        ({"permissible_deviation": 4}, "its deviation is 400 %"),
        ({"permissible_deviation": 0}, "its deviation is 0 %"),
        (
            {"graduation_nm": 20.5},
            "its marks are further apart than its lowest is from its highest",
        ),
        ({"grip_length_mm": 0}, "its grip length is not above zero"),
        ({"own_lower_bound_nm": 40}, "its own lower bound is above its highest mark"),
        ({"low_nm": float("nan")}, "its scale runs from nan to 25 N·m"),
    ],
)
def test_a_wrench_that_cannot_be_is_refused(changes, said):
    described = {"name": "small", "low_nm": 5, "high_nm": 25, "graduation_nm": 0.25}
    with pytest.raises(UnusableWrench) as refused:
        Wrench(**{**described, **changes})
    assert str(refused.value).startswith(f"wrench “small”: {said}; ")
