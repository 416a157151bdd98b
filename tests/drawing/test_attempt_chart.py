"""The chart of attempts: to scale about nought, every whisker within it, shapes for verdicts."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QImage, QPainter

from aligner.drawing.attempt_chart import (
    ChartPicture,
    ChartPoint,
    chart_places,
    chart_reach,
    paint_attempts,
)
from aligner.drawing.theme import LIGHT, Theme

BOX = QRectF(0, 0, 320, 220)

points = st.builds(
    ChartPoint,
    st.sampled_from(["1", "2", "now"]),
    st.none() | st.floats(-50, 50),
    st.none() | st.floats(0, 10),
    st.sampled_from(["within", "out", "unsettled", "missing"]),
)


@given(st.lists(points, min_size=1, max_size=12), st.none() | st.floats(0.001, 5))
def test_every_whisker_and_the_band_lie_within_the_scale(points, tolerance):
    picture = ChartPicture(tuple(points), tolerance, "left high", "right high")
    places = chart_places(BOX, picture)
    reach = chart_reach(picture.points, tolerance)
    for point in points:
        if point.value is not None:
            assert abs(point.value) + (point.spread or 0.0) <= reach
            true = places.nought - point.value * places.per_unit
            assert places.y(point.value) == pytest.approx(true, abs=1e-6)
    assert (tolerance or 0.0) <= reach / 2 + 1e-9
    assert all(BOX.left() < x < BOX.right() for x in places.x)
    assert list(places.x) == sorted(places.x)


def test_nought_is_the_middle_and_positive_is_up():
    picture = ChartPicture((ChartPoint("now", 2.0, 0.1, "out"),), 0.5, "left high", "right high")
    places = chart_places(BOX, picture)
    assert places.y(0.0) == pytest.approx(places.plot.center().y())
    assert places.y(2.0) < places.y(0.5) < places.y(0.0) < places.y(-0.5)


def painted(verdict, value=0.0):
    theme = Theme(LIGHT)
    image = QImage(320, 220, QImage.Format.Format_RGB32)
    image.fill(theme.color("card"))
    painter = QPainter(image)
    picture = ChartPicture((ChartPoint("now", value, None, verdict),), 0.5, "left", "right")
    paint_attempts(painter, theme, BOX, picture)
    painter.end()
    places = chart_places(BOX, picture)
    at = QPointF(places.x[0], places.y(value or 0.0)).toPoint()
    return [image.pixel(at.x() + x, at.y() + y) for x in range(-8, 9) for y in range(-8, 9)]


def test_each_verdict_has_a_mark_of_its_own_shape():
    theme = Theme(LIGHT)
    colors = {theme.color("attention").rgb(), theme.color("accent").rgb()}
    masks = [
        tuple(pixel in colors for pixel in painted(verdict))
        for verdict in ("within", "out", "unsettled", "missing")
    ]
    assert len(set(masks)) == 4


def test_what_was_not_measured_does_not_look_like_nought():
    assert painted("missing", None) != painted("within", 0.0)
