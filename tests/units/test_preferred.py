"""Values as they are written for a person."""

import pytest

from aligner.units import ANGLE, LENGTH, TORQUE, VOLUME
from aligner.units.preferred import Preferred


@pytest.mark.parametrize(
    ("low", "high", "unit", "words"),
    [
        (23.1, 25.0, "N·m", "23.1 to 25.0 N·m"),
        (20.0, 25.0, "N·m", "20 to 25 N·m"),
        (20.0, 25.3, "N·m", "20.0 to 25.3 N·m"),
        (27.1164, 40.0, "lbf·ft", "20.0 to 29.5 lbf·ft"),  # 1 lbf·ft is 1.3558 N·m
        (9.80665, 14.5, "kgf·m", "1.00 to 1.48 kgf·m"),  # 1 kgf·m is 9.80665 N·m
    ],
)
def test_both_ends_of_a_span_of_torques_are_equally_fine(low, high, unit, words):
    assert Preferred(torque=unit).show_torques(low, high) == words


def test_what_was_chosen_is_shown_and_the_dimensions_own_unit_where_there_is_no_choice():
    chosen = Preferred(length="in", torque="lbf·ft", volume="US fl oz")
    assert [chosen.unit(each) for each in (LENGTH, TORQUE, VOLUME, ANGLE)] == [
        "in",
        "lbf·ft",
        "US fl oz",
        "deg",
    ]
    assert chosen.show_length(25.4) == "1.000 in"
