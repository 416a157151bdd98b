"""The front elevation: what is certain and what is not, to one factor; clamps and fork kinds."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from aligner.assessment import assess
from aligner.data_files import demo
from aligner.drawing.front_elevation import (
    FrontProportions,
    exaggeration,
    front_elevation,
    paint_front_elevation,
)
from aligner.drawing.proportions import front_proportions
from aligner.drawing.theme import LIGHT, Theme
from aligner.storage.document_file import load_job

ROOM = QRectF(0, 0, 420, 380)
readings = st.floats(-5, 5)


@given(readings, readings, st.floats(0.01, 3))
def test_the_whiskers_show_the_difference_with_its_uncertainty_to_one_factor(left, right, spread):
    picture = front_elevation(ROOM, FrontProportions(), left, right, spread)
    factor = exaggeration(left - right, spread)
    if factor == 1:
        return
    drawn = (picture.right_tube.top() - picture.left_tube.top()) / picture.scale
    assert drawn == pytest.approx(factor * (left - right), abs=1e-9)
    assert 2 * picture.spread / picture.scale == pytest.approx(factor * spread)


@given(readings, readings, st.floats(0.01, 3))
def test_a_whisker_never_leaves_the_room(left, right, spread):
    picture = front_elevation(ROOM, FrontProportions(), left, right, spread)
    if exaggeration(left - right, spread) > 1:
        for tube in (picture.left_tube, picture.right_tube):
            assert tube.top() - picture.spread >= ROOM.top()


@pytest.mark.parametrize(
    ("difference", "spread", "factor"),
    [
        pytest.param(None, 0.1, 1, id="not read"),
        pytest.param(0.1, None, 20, id="small"),
        pytest.param(1.6, 0.13, 10, id="the demo"),
        pytest.param(0.25, 3.0, 10, id="uncertain"),
        pytest.param(30.0, 0.1, 1, id="large enough as it is"),
    ],
)
def test_the_factor_leaves_room_for_the_whisker(difference, spread, factor):
    assert exaggeration(difference, spread) == factor


@pytest.mark.parametrize("reading", [1e9, -1e9, 0.0])
@pytest.mark.parametrize("spread", [0.0, 1e9])
def test_a_slip_of_the_keyboard_still_leaves_a_picture(reading, spread):
    picture = front_elevation(ROOM, FrontProportions(), reading, 5.0, spread)
    for tube in (picture.left_tube, picture.right_tube):
        assert ROOM.top() - 1 <= tube.top() <= picture.top_bracket.top() + 1
    assert picture.spread <= ROOM.height() / 2


def test_without_an_uncertainty_there_is_no_whisker():
    assert front_elevation(ROOM, FrontProportions(), 6.6, 5.0).spread == 0.0


def test_upside_down_the_thick_tube_stands_in_the_brackets_and_ends_above_the_axle():
    plain = front_elevation(ROOM, FrontProportions(tube_mm=38.0))
    turned = front_elevation(ROOM, FrontProportions(tube_mm=54.0, is_upside_down=True))
    assert plain.left_slider.width() > plain.left_tube.width()
    assert turned.left_slider.width() < turned.left_tube.width()
    assert turned.left_tube.bottom() < turned.left_slider.bottom() - 20
    assert turned.left_tube.bottom() > turned.lower_bracket.bottom()


def test_the_clamps_bolts_are_those_of_the_sheet():
    job, _ = load_job(demo("fellside-left-leg-high.job.json"))
    proportions = front_proportions(job)
    assert (proportions.top_bolts, proportions.lower_bolts) == ((1, 1), (2, 2))
    picture = front_elevation(ROOM, proportions)
    top = [bolt for bolt in picture.clamp_bolts if picture.top_bracket.contains(bolt)]
    lower = [bolt for bolt in picture.clamp_bolts if picture.lower_bracket.contains(bolt)]
    assert (len(top), len(lower)) == (2, 4)
    assert not any(picture.left_tube.contains(bolt) for bolt in picture.clamp_bolts)


@pytest.mark.parametrize("count", [1, 2, 3])
def test_a_clamps_bolts_lie_apart_within_the_bracket(count):
    picture = front_elevation(
        ROOM, FrontProportions(top_bolts=(count, count), lower_bolts=(count, count))
    )
    assert len(picture.clamp_bolts) == 4 * count
    for bracket in (picture.top_bracket, picture.lower_bracket):
        bolts = [bolt for bolt in picture.clamp_bolts if bracket.contains(bolt)]
        heights = sorted(bolt.y() for bolt in bolts if bolt.x() < bracket.center().x())
        gaps = [low - high for high, low in pairwise(heights)]
        assert all(gap >= 7.5 * picture.scale for gap in gaps)


def test_painted_upside_down_the_slider_does_not_lie_over_the_tube():
    theme = Theme(LIGHT)
    image = QImage(420, 380, QImage.Format.Format_RGB32)
    image.fill(theme.color("card"))
    painter = QPainter(image)
    picture = front_elevation(ROOM, FrontProportions(tube_mm=54.0, is_upside_down=True))
    paint_front_elevation(painter, theme, picture)
    painter.end()
    x = picture.left_tube.center().x() + 8
    above, below = picture.left_tube.bottom() - 8, picture.left_tube.bottom() + 8
    assert image.pixelColor(int(x), int(above)) == theme.color("tube")
    assert image.pixelColor(int(x), int(below)) == theme.color("slider")


def test_the_demo_is_drawn_with_the_uncertainty_it_is_judged_by():
    job, _ = load_job(demo("fellside-left-leg-high.job.json"))
    judged = assess(job).protrusion.difference
    spread = judged.judgement.expanded_uncertainty
    picture = front_elevation(ROOM, front_proportions(job), 6.6, 5.0, spread)
    assert picture.spread > 0
