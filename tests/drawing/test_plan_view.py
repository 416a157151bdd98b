"""The plan view: the turn and what is not certain of it, to one factor, within the room."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from aligner.drawing.plan_view import (
    PlanProportions,
    paint_plan_view,
    plan_view,
    turn_exaggeration,
)
from aligner.drawing.theme import LIGHT, Theme

ROOM = QRectF(40, 40, 400, 320)
FELLSIDE = PlanProportions(200, 35, 38, 60, 85, 40, 30)


@given(st.floats(-4, 4), st.floats(0.01, 3))
def test_turn_and_whisker_are_drawn_to_one_factor(turn, spread):
    view = plan_view(ROOM, FELLSIDE, turn, spread)
    factor = turn_exaggeration(turn, spread)
    assert view.turn_deg == pytest.approx(factor * turn)
    assert view.spread_deg == pytest.approx(factor * spread)


@given(st.floats(-3, 3))
def test_the_bracket_points_are_turned_to_the_left_for_a_positive_turn(turn):
    view = plan_view(ROOM, FELLSIDE, turn, 0.1)
    middle = (view.left_bracket + view.right_bracket) / 2
    ahead = view.axis.y() - middle.y()
    left = view.axis.x() - middle.x()
    drawn = math.degrees(math.atan2(left, ahead))
    assert drawn == pytest.approx(turn * turn_exaggeration(turn, 0.1), abs=1e-6)


def test_without_an_uncertainty_there_is_no_whisker():
    assert plan_view(ROOM, FELLSIDE, 2.0).spread_deg == 0.0
    assert plan_view(ROOM, FELLSIDE, None, 0.2).spread_deg == 0.0


@pytest.mark.parametrize("turn", [-2.56, 0.0, 0.3, 12.0])
@pytest.mark.parametrize("spread", [0.05, 0.7, 6.0])
def test_nothing_is_painted_outside_the_room(turn, spread):
    theme = Theme(LIGHT)
    image = QImage(480, 400, QImage.Format.Format_RGB32)
    image.fill(theme.color("card"))
    painter = QPainter(image)
    paint_plan_view(painter, theme, plan_view(ROOM, FELLSIDE, turn, spread))
    painter.end()
    ground = theme.color("card").rgb()
    edge = ROOM.adjusted(-6, -6, 6, 6).toRect()
    outside = [
        (x, y)
        for x in range(480)
        for y in range(400)
        if not edge.contains(x, y) and image.pixel(x, y) != ground
    ]
    assert outside == []
