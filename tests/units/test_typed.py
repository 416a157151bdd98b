"""What a person types is understood as meant, or refused in words."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.units import ANGLE, LENGTH, TORQUE, VOLUME, UnreadableQuantity, read_quantity
from aligner.units.shown import rounded, shown


@pytest.mark.parametrize(
    ("typed", "dimension", "kept", "value"),
    [
        ("4.2", LENGTH, "4.2 mm", 4.2),
        ("4,2", LENGTH, "4.2 mm", 4.2),
        ("4.2mm", LENGTH, "4.2 mm", 4.2),
        ("0.165 in", LENGTH, "0.165 in", 4.191),
        ("11/64 in", LENGTH, "11/64 in", 4.365625),
        ('1 1/2"', LENGTH, "1 1/2 in", 38.1),
        ("31 lbf ft", TORQUE, "31 lbf·ft", 42.0303563982734),
        ("31 ft·lb", TORQUE, "31 lbf·ft", 42.0303563982734),
        ("31 lb ft", TORQUE, "31 lbf·ft", 42.0303563982734),
        ("4.3 kgf·m", TORQUE, "4.3 kgf·m", 42.168595),
        ("4.3 kgm", TORQUE, "4.3 kgf·m", 42.168595),
        ("25 Nm", TORQUE, "25 N·m", 25.0),
        ("25nm", TORQUE, "25 N·m", 25.0),
        ("25 N.m", TORQUE, "25 N·m", 25.0),
        ("25 Nm.", TORQUE, "25 N·m", 25.0),
        ("1/2 turn", ANGLE, "1/2 turn", 180.0),
        ("260 cc", VOLUME, "260 ml", 260.0),
    ],
)
def test_what_is_typed_is_understood(typed, dimension, kept, value):
    found = read_quantity(typed, dimension, unit_if_bare=dimension.own_unit)

    assert found.text == found.said == kept
    assert found.value == pytest.approx(value, rel=1e-12)
    assert read_quantity(found.text, dimension) == found


@pytest.mark.parametrize(
    ("typed", "dimension", "words"),
    [
        ("25 lb", TORQUE, "write lbf·ft or lbf·in"),
        ("2 kg", TORQUE, "write kgf·m or kgf·cm"),
        ("5 mm", TORQUE, "is a length where a torque belongs"),
        ("5 Nm", LENGTH, "is a torque where a length belongs"),
        ("8 fl oz", VOLUME, "write US fl oz or imp fl oz"),
        ("1,450", LENGTH, "can be read as 1.450 or as 1450"),
        ("-4", LENGTH, "is negative"),
        ("nan", LENGTH, "does not begin with a number"),
        ("1/0 in", LENGTH, "divides by nought"),
        ("1000000000 mm", LENGTH, "is more than 10000 mm"),
        ("", LENGTH, "does not begin with a number"),
    ],
)
def test_what_cannot_be_meant_is_refused_in_words(typed, dimension, words):
    with pytest.raises(UnreadableQuantity, match=words.replace("?", r"\?")):
        read_quantity(typed, dimension, unit_if_bare=dimension.own_unit)


def test_a_document_needs_the_unit():
    with pytest.raises(UnreadableQuantity, match="number without a unit"):
        read_quantity("4.2", LENGTH)


@given(st.text(max_size=80))
def test_any_text_is_read_or_refused(text):
    try:
        found = read_quantity(text, LENGTH, unit_if_bare="mm", signed=True)
    except UnreadableQuantity:
        return
    assert read_quantity(found.text, LENGTH, signed=True) == found


@pytest.mark.parametrize(
    ("number", "decimals", "text"),
    [(-0.04, 1, "0.0"), (-0.06, 1, "−0.1"), (2.5, 0, "2"), (4.25, 2, "4.25")],
)
def test_rounding_never_prints_a_negative_nought(number, decimals, text):
    assert rounded(number, decimals) == text


def test_a_torque_shows_no_idle_noughts():
    assert shown(23.0, TORQUE) == "23 N·m"
    assert shown(42.0303563982734, TORQUE, "lbf·ft") == "31 lbf·ft"


@pytest.mark.parametrize(
    ("value", "dimension", "unit", "words"),
    [
        # As fine as the tool it is read off: a tenth of a millimetre, a thousandth of an inch.
        (4.191, LENGTH, None, "4.2 mm"),
        (4.191, LENGTH, "in", "0.165 in"),
        (254.0, LENGTH, "cm", "25.40 cm"),
        (1234.0, LENGTH, "m", "1.234 m"),
        (42.0303563982734, TORQUE, "lbf·in", "372 lbf·in"),
        (42.168595, TORQUE, "kgf·m", "4.3 kgf·m"),
        (42.168595, TORQUE, "kgf·cm", "430 kgf·cm"),
        (0.934, ANGLE, None, "0.93°"),
        (260.4, VOLUME, None, "260 ml"),
    ],
)
def test_a_value_is_shown_as_fine_as_it_can_be_read(value, dimension, unit, words):
    assert shown(value, dimension, unit) == words
