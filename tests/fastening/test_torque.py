import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from aligner.fastening.torque import (
    NEWTON_METRES_PER_UNIT,
    PrintedRange,
    PrintedTorque,
    UnreadableTorque,
    newton_metres_per,
    printed_pair_disagreement,
    printed_torque,
)
from aligner.units import TORQUE


def line(low, high, unit):
    return PrintedRange(printed_torque(low, unit), printed_torque(high, unit))


def alone(number, unit):
    return line(number, number, unit)


def test_units_are_those_people_may_type():
    assert set(NEWTON_METRES_PER_UNIT) == {unit.symbol for unit in TORQUE.units}


@pytest.mark.parametrize(
    ("unit", "printed_nm", "tolerance_nm"),
    [
        # NIST SP 811 (2008) appendix B.8, restated (seen, secondary).
        ("lbf·ft", 1.355818, 5e-7),
        ("kgf·m", 9.80665, 0),
        # Encyclopaedia page "Pound-foot (torque)" (seen).
        ("lbf·ft", 1.3558179483314003, 1e-15),
    ],
)
def test_factors_are_those_printed(unit, printed_nm, tolerance_nm):
    assert newton_metres_per(unit) == pytest.approx(printed_nm, abs=tolerance_nm, rel=0)


@pytest.mark.parametrize(
    ("digits", "number", "step", "text"),
    [
        ("36", 36, 1, "36 lbf·ft"),
        ("3.6", 3.6, 0.1, "3.6 lbf·ft"),
        ("3,60", 3.6, 0.01, "3.60 lbf·ft"),
        ("40", 40, 1, "40 lbf·ft"),
    ],
)
def test_the_last_printed_digit_says_how_fine_a_number_is(digits, number, step, text):
    printed = printed_torque(digits, "lbf·ft")
    assert (printed.number, printed.step) == (number, pytest.approx(step))
    assert printed.text == text


@pytest.mark.parametrize(
    ("digits", "unit", "said"),
    [
        ("about 36", "lbf·ft", "“about 36” is not a number; write it as “36”"),
        ("1/2", "lbf·ft", "“1/2” is not a number; write it as “36”"),
        (
            "36",
            "lb",
            "“lb” is no unit of torque; it can be N·m, lbf·ft, lbf·in, kgf·m, kgf·cm, daN·m, N·cm",
        ),
    ],
)
def test_what_cannot_be_read_is_refused_in_words(digits, unit, said):
    with pytest.raises(UnreadableTorque) as refused:
        printed_torque(digits, unit)
    assert str(refused.value) == said


def test_a_stem_nut_line_is_told_to_be_a_cut_copy():
    # Common practice, no source: 40 to 50 N·m printed beside 29 to 36 lbf·ft. 50 N·m is
    # 36.88 lbf·ft and would be rounded to 37.
    apart = printed_pair_disagreement(line("40", "50", "N·m"), line("29", "36", "lbf·ft"))
    assert apart is not None
    assert apart.end == "high"
    assert apart.is_cut_copy
    assert apart.difference_nm == pytest.approx(50 - 36 * 1.3558179483314003)
    assert apart.difference_share == pytest.approx(0.02381, abs=1e-5)
    assert str(apart) == (
        "50 N·m and 36 lbf·ft differ by 1.2 N·m (36 lbf·ft is 48.8 N·m): "
        "one is a copy of the other cut off at its last digit, not rounded"
    )


def test_a_copy_of_a_stem_nut_line_that_was_rounded_agrees():
    assert printed_pair_disagreement(line("40", "50", "N·m"), line("30", "37", "lbf·ft")) is None


@pytest.mark.parametrize(
    ("first", "second"),
    [
        (alone("23", "N·m"), alone("17", "lbf·ft")),
        (alone("23", "N·m"), alone("2.3", "kgf·m")),
        (alone("10", "N·m"), alone("89", "lbf·in")),
        (alone("59", "N·m"), alone("6.0", "kgf·m")),
        (alone("43", "lbf·ft"), alone("6.0", "kgf·m")),
    ],
    ids=["lbf·ft", "kgf·m", "lbf·in", "copied from kgf·m", "both copied from N·m"],
)
def test_a_rounded_copy_agrees(first, second):
    assert printed_pair_disagreement(first, second) is None


def test_a_misprint_is_told_apart_from_a_cut_copy():
    apart = printed_pair_disagreement(alone("23", "N·m"), alone("23", "lbf·ft"))
    assert apart is not None
    assert apart.end == "both"
    assert not apart.is_cut_copy
    assert str(apart) == (
        "23 N·m and 23 lbf·ft differ by 8.2 N·m (23 lbf·ft is 31.2 N·m): "
        "more than rounding explains, so one of them is misprinted or misread"
    )


def test_a_misprint_at_one_end_outweighs_a_cut_copy_at_the_other():
    apart = printed_pair_disagreement(line("40", "50", "N·m"), line("2.6", "5.09", "kgf·m"))
    assert apart is not None
    assert (apart.end, apart.is_cut_copy) == ("low", False)


def test_a_small_misprint_outweighs_a_coarse_cut_copy():
    # 5 kgf·m is cut from 5.6; 2.30 kgf·m is 22.6 N·m, less far off but not to be explained.
    first = PrintedRange(printed_torque("23.0", "N·m"), printed_torque("55", "N·m"))
    second = PrintedRange(printed_torque("2.30", "kgf·m"), printed_torque("5", "kgf·m"))
    high = printed_pair_disagreement(alone("55", "N·m"), alone("5", "kgf·m"))
    apart = printed_pair_disagreement(first, second)
    assert high is not None
    assert apart is not None
    assert high.is_cut_copy
    assert high.beyond_rounding_nm > apart.beyond_rounding_nm
    assert (apart.end, apart.is_cut_copy) == ("low", False)


UNITS = st.sampled_from(list(NEWTON_METRES_PER_UNIT))
DECIMALS = st.integers(0, 2)


@given(st.floats(0.5, 200), UNITS, UNITS, DECIMALS, DECIMALS)
def test_two_roundings_of_one_torque_always_agree(value_nm, unit, other, decimals, other_decimals):
    first = rounded(value_nm, unit, decimals)
    second = rounded(value_nm, other, other_decimals)
    assert printed_pair_disagreement(*both(first, second)) is None


@given(st.floats(0.5, 200), UNITS, UNITS, DECIMALS, DECIMALS)
def test_a_copy_that_was_cut_off_is_never_called_a_misprint(
    value_nm, unit, other, decimals, other_decimals
):
    first = rounded(value_nm, unit, decimals)
    step = 10.0**-other_decimals
    whole = int(first.value_nm / newton_metres_per(other) / step + 1e-9)
    second = PrintedTorque(whole * step, step, other)
    apart = printed_pair_disagreement(*both(first, second))
    assert apart is None or apart.is_cut_copy


@given(st.floats(5, 200), st.floats(0.5, 2), UNITS, UNITS)
def test_which_unit_comes_first_does_not_matter(value_nm, times, unit, other):
    first, second = rounded(value_nm, unit, 1), rounded(value_nm * times, other, 1)
    assume(first.number > 0 and second.number > 0)
    one_way = printed_pair_disagreement(*both(first, second))
    back = printed_pair_disagreement(*both(second, first))
    assert (one_way is None) == (back is None)
    if one_way is not None and back is not None:
        assert one_way.difference_nm == pytest.approx(-back.difference_nm)
        assert one_way.is_cut_copy == back.is_cut_copy


def rounded(value_nm, unit, decimals):
    number = round(value_nm / newton_metres_per(unit), decimals)
    return PrintedTorque(number, 10.0**-decimals, unit)


def both(first, second):
    return PrintedRange(first, first), PrintedRange(second, second)
