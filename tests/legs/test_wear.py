"""Runout against a tube turned in coordinates under a dial, and plain differences of diameters."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.legs import (
    LegError,
    bend_mm,
    bush_play_difference_mm,
    bush_play_mm,
    indicated_mm,
    indicated_runout_mm,
)

# US Army TM 10-3930-653-14&P p. 79 (seen): "Bend value is half of the reading ... one full
# revolution"; the limit there is 0.05 mm, within 0.02 mm after correction.


def test_a_reading_of_a_tenth_is_a_bend_of_half_of_it():
    assert bend_mm(0.10) == 0.05


def test_a_limit_of_two_hundredths_on_the_bend_shows_as_four_on_the_dial():
    assert indicated_mm(0.02) == pytest.approx(0.04, abs=1e-12)


@given(st.floats(10, 30), st.floats(0.001, 0.5))
def test_half_of_what_the_dial_shows_is_how_far_the_middle_of_a_round_tube_is_off(radius, off):
    """The tube's circle is turned round the blocks' axis; the dial stands straight above it."""
    turn = np.linspace(0, 2 * math.pi, 361)
    across, up = off * np.sin(turn), off * np.cos(turn)  # the middle of the tube
    dial = up + np.sqrt(radius**2 - across**2)  # its surface on the dial's line, across = 0
    assert bend_mm(indicated_runout_mm(tuple(dial))) == pytest.approx(off, abs=1e-9)


def test_an_oval_tube_shows_more_than_its_bend():
    """Straight but oval by 0.04 mm across: the dial moves and half of it is an upper estimate."""
    turn = np.linspace(0, 2 * math.pi, 361)
    straight_and_oval = 18.5 + 0.01 * np.cos(2 * turn)
    bent_and_oval = straight_and_oval + 0.03 * np.cos(turn)
    assert bend_mm(indicated_runout_mm(tuple(straight_and_oval))) > 0
    assert bend_mm(indicated_runout_mm(tuple(bent_and_oval))) >= 0.03


@given(st.lists(st.floats(-1, 1), min_size=2, max_size=12), st.floats(-5, 5))
def test_the_dial_s_zero_does_not_matter(readings, zero):
    moved = tuple(value + zero for value in readings)
    assert indicated_runout_mm(moved) == pytest.approx(
        indicated_runout_mm(tuple(readings)), abs=1e-12
    )


def test_play_is_bush_less_tube_and_left_less_right():
    assert bush_play_mm(37.12, 36.97) == pytest.approx(0.15)
    assert bush_play_difference_mm(0.25, 0.10) == pytest.approx(0.15)


@pytest.mark.parametrize(
    ("ask", "words"),
    [
        pytest.param(lambda: indicated_runout_mm((0.1,)), "highest and the lowest", id="one"),
        pytest.param(lambda: bend_mm(-0.1), "indicator reading: -0.1 mm", id="negative"),
        pytest.param(lambda: indicated_runout_mm((0.1, math.nan)), "nan is not", id="nan"),
        pytest.param(lambda: bush_play_mm(36.9, 37.0), "does not go into a bush", id="tight"),
        pytest.param(
            lambda: bush_play_difference_mm(0.1, -0.1), "right bush play: -0.1", id="play"
        ),
    ],
)
def test_a_misreading_is_refused_in_words(ask, words):
    with pytest.raises(LegError, match=words):
        ask()
