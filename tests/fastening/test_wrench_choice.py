import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.fastening.torque import newton_metres_per
from aligner.fastening.wrench import Adapter, UnusableWrench, Wrench
from aligner.fastening.wrench_choice import NoWrench, WrenchFit, best_wrench, fit

LBF_FT = newton_metres_per("lbf·ft")
SMALL = Wrench("small", 5, 25, 0.25, drive="1/4 in", grip_length_mm=220)
MIDDLE = Wrench("middle", 10 * LBF_FT, 80 * LBF_FT, 0.5 * LBF_FT, LBF_FT, grip_length_mm=300)
LARGE = Wrench("large", 40, 200, 1, drive="1/2 in", grip_length_mm=450)
CROWFOOT = Adapter("crowfoot", 40)


def test_a_clamp_bolt_within_its_range_fits():
    tried = fit(SMALL, None, 23, 20.7, 25.3)
    assert tried.setting_text == "23.00 N·m"
    assert tried.setting_on_scale == 23
    assert tried.delivered_low_nm == pytest.approx(23 / 1.04)
    assert tried.delivered_high_nm == pytest.approx(23 / 0.96)
    assert tried.margin_nm == pytest.approx(25.3 - 23 / 0.96)
    assert tried.is_in_range
    assert tried.is_inside_specification is True
    assert tried.problems == ()


def test_an_adapter_lowers_the_setting_and_delivers_the_same():
    # 45 N·m through 40 mm on 300 mm: 39.7 N·m, 29.28 lbf·ft, so 29.5 or 29.0 on the scale.
    tried = fit(MIDDLE, CROWFOOT, 45, 40, 50)
    assert tried.setting_nm == pytest.approx(45 * 300 / 340)
    assert tried.setting_text == "29.5 lbf·ft"
    assert tried.delivered_low_nm == pytest.approx(29.5 * LBF_FT * 340 / 300 / 1.04)


def test_a_bare_nominal_is_reported_and_not_called_outside():
    tried = fit(SMALL, None, 23, 23, 23)
    assert tried.is_in_range
    assert tried.is_inside_specification is None
    assert tried.margin_nm == pytest.approx(23 - 23 / 0.96)
    assert tried.problems == ()


def test_a_range_narrower_than_the_wrench_is_told():
    tried = fit(SMALL, None, 20, 19.8, 20.2)
    assert tried.is_in_range
    assert tried.is_inside_specification is False
    assert tried.problems == (
        "set to 20.00 N·m it delivers 19.2 to 20.8 N·m where 19.8 to 20.2 N·m is specified",
    )


@pytest.mark.parametrize(
    ("wrench", "adapter", "target_nm", "said"),
    [
        (
            LARGE,
            None,
            23,
            "a setting of 23.0 N·m is outside its usable scale, 40.0 to 200.0 N·m",
        ),
        (
            Wrench("large", 40, 200, 1, own_lower_bound_nm=60),
            None,
            45,
            "a setting of 45.0 N·m is outside its usable scale, 60.0 to 200.0 N·m",
        ),
        (
            SMALL,
            Adapter("hook spanner", 50, drive="1/2 in"),
            20,
            "its 1/4 in drive does not take the 1/2 in of “hook spanner”",
        ),
        (
            Wrench("unmeasured", 5, 50, 1),
            CROWFOOT,
            23,
            "adapter “crowfoot”: it changes the torque, and the wrench's grip length is not "
            "known; measure from the middle of the drive to the middle of the grip, or set the "
            "adapter at 90°",
        ),
    ],
    ids=["below its lowest mark", "below its own bound", "drive", "no grip length"],
)
def test_a_wrench_that_cannot_be_used_gives_no_number_to_set(wrench, adapter, target_nm, said):
    tried = fit(wrench, adapter, target_nm, target_nm * 0.9, target_nm * 1.1)
    assert tried.problems == (said,)
    assert not tried.is_in_range
    assert tried.setting_on_scale is None
    assert tried.setting_text == ""
    assert tried.delivered_low_nm is None
    assert tried.is_inside_specification is None


@pytest.mark.parametrize("low_target_high", [(0, 0, 0), (20, 19, 22), (20, 23, 22)])
def test_a_torque_that_is_none_is_refused(low_target_high):
    low_nm, target_nm, high_nm = low_target_high
    with pytest.raises(UnusableWrench, match="give low, target and high in rising order"):
        fit(SMALL, None, target_nm, low_nm, high_nm)


def test_the_wrench_inside_the_specification_is_chosen():
    coarse = Wrench("coarse", 10, 100, 10)
    chosen = best_wrench([coarse, SMALL], [None], 23, 20.7, 25.3)
    assert isinstance(chosen, WrenchFit)
    assert chosen.wrench is SMALL


def test_of_two_alike_the_smaller_wrench_is_chosen():
    longer = Wrench("longer", 5, 60, 0.25)
    chosen = best_wrench([longer, SMALL], [None], 20, 18, 22)
    assert isinstance(chosen, WrenchFit)
    assert chosen.wrench is SMALL


def test_a_margin_better_by_less_than_a_tenth_does_not_outweigh_the_smaller_wrench():
    # Delivered 20/0.96 or 20/0.961 N·m at most, against 22: 1.17 and 1.19 N·m of margin.
    longer = Wrench("longer", 5, 60, 0.25, permissible_deviation=0.039)
    chosen = best_wrench([longer, SMALL], [None], 20, 18, 22)
    assert isinstance(chosen, WrenchFit)
    assert chosen.wrench is SMALL


def test_more_margin_comes_before_the_smaller_wrench():
    rough = Wrench("rough", 5, 25, 0.25, permissible_deviation=0.06)
    exact = Wrench("exact", 5, 100, 0.25, permissible_deviation=0.02)
    chosen = best_wrench([rough, exact], [None], 20, 18, 22)
    assert isinstance(chosen, WrenchFit)
    assert chosen.wrench is exact


def test_a_hair_inside_comes_before_a_hair_outside_on_a_smaller_wrench():
    outside = Wrench("outside", 5, 25, 5, permissible_deviation=0.0925)
    inside = Wrench("inside", 5, 50, 5, permissible_deviation=0.09)
    chosen = best_wrench([outside, inside], [None], 20, 18, 22)
    assert isinstance(chosen, WrenchFit)
    assert chosen.wrench is inside


def test_a_bare_nominal_goes_to_the_wrench_that_comes_nearest():
    coarse = Wrench("coarse", 10, 30, 5)
    chosen = best_wrench([coarse, LARGE, SMALL], [], 23, 23, 23)
    assert isinstance(chosen, WrenchFit)
    assert chosen.wrench is SMALL


def test_an_adapter_is_chosen_with_its_wrench():
    fitting = Adapter("hook spanner", 40, 90, drive="1/2 in")
    chosen = best_wrench([SMALL, LARGE], [fitting], 45, 40, 50)
    assert isinstance(chosen, WrenchFit)
    assert chosen.tool_text == "large with hook spanner"
    assert chosen.setting_text == "45 N·m"


def test_where_none_does_each_says_why():
    answer = best_wrench([LARGE, SMALL], [None], 20, 19.8, 20.2)
    assert isinstance(answer, NoWrench)
    assert answer.reasons == (
        "small: set to 20.00 N·m it delivers 19.2 to 20.8 N·m where 19.8 to 20.2 N·m is specified",
        "large: a setting of 20.0 N·m is outside its usable scale, 40.0 to 200.0 N·m",
    )


def test_without_a_wrench_there_is_none():
    assert best_wrench([], [None], 20, 18, 22) == NoWrench(())


@given(st.floats(1, 250), st.floats(0, 0.4), st.booleans())
def test_what_is_chosen_delivers_what_is_specified(target_nm, tolerance, has_adapter):
    low_nm, high_nm = target_nm * (1 - tolerance), target_nm * (1 + tolerance)
    adapters = [CROWFOOT] if has_adapter else [None]
    answer = best_wrench([SMALL, MIDDLE, LARGE], adapters, target_nm, low_nm, high_nm)
    if isinstance(answer, NoWrench):
        assert len(answer.refused) == 3
        assert all(tried.problems for tried in answer.refused)
        return
    assert answer.setting_on_scale is not None
    set_nm = answer.setting_on_scale * answer.wrench.scale_unit_nm
    assert answer.wrench.low_nm - 1e-6 <= set_nm <= answer.wrench.high_nm + 1e-6
    if low_nm < high_nm:
        times = (answer.wrench.grip_length_mm + 40) / answer.wrench.grip_length_mm
        at_fastener_nm = set_nm * (times if has_adapter else 1)
        assert low_nm - 1e-6 <= at_fastener_nm / 1.04
        assert at_fastener_nm / 0.96 <= high_nm + 1e-6


@given(st.floats(6, 24), st.floats(0.02, 0.3), st.floats(0.1, 10))
def test_the_unit_does_not_matter_to_what_is_set(target_nm, tolerance, factor):
    low_nm, high_nm = target_nm * (1 - tolerance), target_nm * (1 + tolerance)
    here = fit(Wrench("here", 5, 25, 0.25), None, target_nm, low_nm, high_nm)
    there = fit(
        Wrench("there", 5 * factor, 25 * factor, 0.25 * factor, factor),
        None,
        target_nm * factor,
        low_nm * factor,
        high_nm * factor,
    )
    assert there.setting_on_scale == here.setting_on_scale
    assert there.is_inside_specification == here.is_inside_specification
