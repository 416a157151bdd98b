"""The plot of both legs' air force: steps of its axes, and two lines that are told apart."""

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from aligner.drawing.force_plot import ForcePoint, paint_force_plot, round_step
from aligner.drawing.theme import Theme


@pytest.mark.parametrize(
    ("span", "step"),
    [(357.0, 100.0), (150.0, 50.0), (1000.0, 200.0), (0.9, 0.2), (1.0, 0.2), (0.0, 1.0)],
)
def test_steps_are_1_2_or_5_times_a_power_of_ten(span, step):
    assert round_step(span) == pytest.approx(step)
    assert span / round_step(span) <= 5


def painted(points):
    theme = Theme()
    image = QImage(500, 300, QImage.Format.Format_RGB32)
    image.fill(theme.color("card"))
    painter = QPainter(image)
    paint_force_plot(painter, theme, QRectF(0, 0, 500, 300), points)
    painter.end()
    return theme, image


def test_the_stiffer_legs_line_ends_higher(application):
    points = [ForcePoint(s, 2.0 * s, 1.0 * s) for s in (0.0, 50.0, 100.0, 150.0)]
    theme, image = painted(points)

    def heights(role):
        color = theme.color(role)
        return [
            y for y in range(5, 255) for x in range(380, 418) if image.pixelColor(x, y) == color
        ]

    left, right = heights("accent"), heights("ink")
    assert left
    assert right
    assert min(left) < min(right)


@pytest.mark.parametrize(
    "points",
    [
        [],
        [ForcePoint(0.0, 0.0, 0.0)],
        [ForcePoint(0.0, 0.0, 0.0), ForcePoint(150.0, 0.0, 0.0)],
        [ForcePoint(0.0, -40.0, -40.0), ForcePoint(150.0, 300.0, 300.0)],
    ],
    ids=["none", "one", "no force at all", "below the atmosphere at first"],
)
def test_any_points_are_painted_without_complaint(application, points):
    _, image = painted(points)
    assert not image.isNull()
