"""A bend against a tube turned in coordinates under a dial."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import fsolve

from aligner.legs import (
    LegError,
    bend_mm,
)
from aligner.legs.wear import swing_uncertainty_mm

# US Army TM 10-3930-653-14&P p. 79 (seen): "Bend value is half of the reading ... one full
# revolution"; the limit there is 0.05 mm, within 0.02 mm after correction.


def test_a_reading_of_a_tenth_is_a_bend_of_half_of_it():
    assert bend_mm(0.10) == 0.05


@given(st.floats(10, 30), st.floats(0.001, 0.5))
def test_half_of_what_the_dial_shows_is_how_far_the_middle_of_a_round_tube_is_off(radius, off):
    """The tube's circle is turned round the blocks' axis; the dial stands straight above it."""
    turn = np.linspace(0, 2 * math.pi, 361)
    across, up = off * np.sin(turn), off * np.cos(turn)  # the middle of the tube
    dial = up + np.sqrt(radius**2 - across**2)  # its surface on the dial's line, across = 0
    assert bend_mm(float(np.ptp(dial))) == pytest.approx(off, abs=1e-9)


def test_an_oval_tube_shows_more_than_its_bend():
    """Straight but oval by 0.04 mm across: the dial moves and half of it is an upper estimate."""
    turn = np.linspace(0, 2 * math.pi, 361)
    straight_and_oval = 18.5 + 0.01 * np.cos(2 * turn)
    bent_and_oval = straight_and_oval + 0.03 * np.cos(turn)
    assert bend_mm(float(np.ptp(straight_and_oval))) > 0
    assert bend_mm(float(np.ptp(bent_and_oval))) >= 0.03


def test_a_swing_below_nothing_is_refused_in_words():
    with pytest.raises(LegError, match=r"indicator reading: -0\.1 mm"):
        bend_mm(-0.1)


def _dial_on_v_blocks(bow, radius, length, blocks, at, turns):
    """Heights of a bowed tube's surface under a dial's tip, turned on two V-blocks.

    A round tube is held by each V at the middle of its section, whichever way it is turned, so
    it turns about the straight line through its middles at the two blocks. The tip moves on a
    line across that axis; where it meets the skin is left to a root finder.
    """

    def middle(s):
        return np.array([bow * math.sin(math.pi * s / length), 0.0, s])

    def frame(s):
        slope = bow * math.pi / length * math.cos(math.pi * s / length)
        along = np.array([slope, 0.0, 1.0]) / math.hypot(slope, 1.0)
        across = np.array([0.0, 1.0, 0.0])
        return np.cross(across, along), across

    first, second = middle(blocks[0]), middle(blocks[1])
    axis = (second - first) / np.linalg.norm(second - first)
    side = np.cross([0.0, 1.0, 0.0], axis)
    heights = []
    for turn in turns:
        up = math.cos(turn) * side + math.sin(turn) * np.array([0.0, 1.0, 0.0])
        level = np.cross(axis, up)

        def off_the_tip(unknown, level=level):
            s, angle = unknown
            n, m = frame(s)
            point = middle(s) + radius * (math.cos(angle) * n + math.sin(angle) * m) - first
            return [point @ axis - (at - blocks[0]), point @ level]

        s, angle = fsolve(off_the_tip, [at, turn], xtol=1e-10)
        n, m = frame(s)
        point = middle(s) + radius * (math.cos(angle) * n + math.sin(angle) * m) - first
        heights.append(float(point @ up))
    return heights, float((middle(at) - first) @ side)


@pytest.mark.parametrize("bow", [0.02, 0.1, 0.4, 1.5])
def test_a_bent_tube_turned_on_v_blocks_shows_twice_how_far_its_middle_is_off(bow):
    turns = np.linspace(0, 2 * math.pi, 73)
    heights, off = _dial_on_v_blocks(bow, 18.5, 560.0, (60.0, 500.0), 280.0, turns)
    assert off > 0.5 * bow
    assert bend_mm(float(np.ptp(heights))) == pytest.approx(off, rel=1e-4)


def test_the_swing_has_the_scatter_of_two_readings_and_the_dial_s_travel_error_once():
    """Both ends of the swing simulated with their own scatter and step, and one travel error."""
    rng = np.random.default_rng(20)
    n, r, q, e = 400_000, 0.01, 0.01, 0.02
    ends = rng.normal(0, r, (2, n)) + rng.uniform(-q / 2, q / 2, (2, n))
    swing = 0.3 + ends[1] - ends[0] + rng.uniform(-e, e, n)
    found = swing_uncertainty_mm(r, q / math.sqrt(12), e / math.sqrt(3))
    assert found == pytest.approx(float(np.std(swing)), rel=0.01)


@given(st.floats(0, 1), st.floats(0, 1), st.floats(0, 1))
def test_a_swing_is_never_surer_than_one_reading(scatter, step, travel):
    one = math.sqrt(scatter**2 + step**2 + travel**2)
    assert swing_uncertainty_mm(scatter, step, travel) >= one - 1e-12
