"""A sheet's words read as the manual prints them and as a mechanic says them."""

import pytest

from aligner.sheet import Fastener, OrderRule
from aligner.sheet.printed_torque import printed_torque
from aligner.sheet.quantities import Angle, Length
from aligner.units.preferred import Preferred
from aligner.window.bike.words import (
    NO_TORQUE,
    fastener_words,
    range_words,
    rule_words,
    torque_understood,
    torque_words,
    value_words,
)


def test_a_torque_that_is_not_known_is_never_a_number():
    assert torque_words(None) == NO_TORQUE == "missing: take it from the maker's manual"
    assert not any(character.isdigit() for character in NO_TORQUE)
    assert torque_understood(None, "", Preferred()) == (NO_TORQUE, "attention")


@pytest.mark.parametrize(
    ("kind", "words"),
    [
        ("before", "fork cap before top clamp"),
        ("while_slack", "fork cap while top clamp is slack"),
        ("after_hold", "top clamp waits for the reading: fork cap"),
        ("again_after", "after fork cap, top clamp once more"),
    ],
)
def test_a_rule_reads_as_a_sentence(kind, words):
    rule = OrderRule(kind=kind, first="fork_cap", then="top_clamp", because="invented")
    assert rule_words(rule) == words


@pytest.mark.parametrize(
    ("printed", "unit", "words"),
    [
        pytest.param("23 N·m", "N·m", "23 N·m", id="nothing to add"),
        pytest.param(
            "20 N·m ± 10 %", "N·m", "aim for 20 N·m, right from 18 N·m to 22 N·m", id="per cent"
        ),
        # 1 lbf·ft = 1.355 818 N·m, 1 kgf·m = 9.806 65 N·m (exact definitions of lbf, kgf and ft)
        pytest.param("17 lbf·ft", "N·m", "23 N·m", id="another unit"),
        pytest.param("2 kgf·m", "lbf·ft", "14.5 lbf·ft", id="into the preferred one"),
    ],
)
def test_a_torque_is_said_in_the_preferred_unit(printed, unit, words):
    assert range_words(printed_torque(printed), Preferred(torque=unit)) == words


def test_what_only_says_the_same_again_is_left_out_and_a_doubt_goes_first():
    torque = printed_torque("23 N·m")
    assert torque_understood(torque, "", Preferred()) == ("", "")
    assert torque_understood(torque, "Is it?", Preferred()) == ("Is it?", "attention")


def test_a_length_is_said_in_the_preferred_unit_where_it_was_typed_in_another():
    assert value_words(Length.typed("194 mm"), Preferred(length="in")) == "7.638 in"
    assert value_words(Length.typed("194 mm"), Preferred()) == ""
    assert value_words(Angle.typed("26 deg"), Preferred(length="in")) == ""


@pytest.mark.parametrize(
    ("kind", "bolts", "words"),
    [
        pytest.param("lower_clamp", 2, "left clamp, 2 bolts", id="bolts"),
        pytest.param("axle_clamp_cap", 2, "left clamp, 2 nuts", id="nuts"),
        pytest.param("lower_clamp", 1, "left clamp", id="one alone"),
    ],
)
def test_a_fastener_with_several_pieces_says_how_many(kind, bolts, words):
    assert fastener_words(Fastener(name="left clamp", kind=kind, bolts=bolts)) == words
