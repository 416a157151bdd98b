"""The history chart: where its marks lie, by looking at what was painted."""

from datetime import date

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from aligner.drawing.history_chart import HistoryLimit, HistoryPoint, paint_history
from aligner.drawing.theme import DARK, LIGHT, Theme

WIDTH, HEIGHT = 420, 140


def _painted(points, limit=None, palette=LIGHT):
    image = QImage(WIDTH, HEIGHT, QImage.Format.Format_RGB32)
    image.fill(QColor(palette.card))
    painter = QPainter(image)
    box = QRectF(0, 0, WIDTH, HEIGHT)
    paint_history(painter, Theme(palette), box, points, limit, lambda value: f"{value:.2f} mm")
    painter.end()
    return np.array(image.constBits(), np.uint8).reshape(HEIGHT, WIDTH, 4)[:, :, 2::-1]


def _of(pixels, colour):
    rows, columns = np.where((pixels == QColor(colour).getRgb()[:3]).all(axis=2))
    return rows, columns


def _groups(columns):
    found = np.unique(columns)
    return [group.mean() for group in np.split(found, np.where(np.diff(found) > 3)[0] + 1)]


def test_nothing_is_painted_for_no_points():
    assert len(np.unique(_painted([]))) <= 3


def test_points_stand_at_their_dates_and_not_at_equal_steps():
    days = [date(2020, 1, 1), date(2021, 1, 1), date(2024, 1, 1)]
    pixels = _painted([HistoryPoint(day, 0.1 * n) for n, day in enumerate(days)])
    first, second, last = _groups(_of(pixels, LIGHT.accent)[1])
    share = (days[1] - days[0]).days / (days[2] - days[0]).days
    assert (second - first) / (last - first) == pytest.approx(share, abs=0.02)


def test_more_stands_higher_and_the_order_given_does_not_matter():
    low, high = HistoryPoint(date(2020, 1, 1), 1.0), HistoryPoint(date(2022, 1, 1), 2.0)
    rows, columns = _of(_painted([low, high]), LIGHT.accent)
    assert rows[columns < WIDTH / 2].mean() > rows[columns > WIDTH / 2].mean()
    assert np.array_equal(_painted([low, high]), _painted([high, low]))


@pytest.mark.parametrize("palette", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize(("is_most", "value"), [(True, 3.0), (False, 1.0)], ids=["most", "least"])
def test_a_value_beyond_the_limit_is_a_square_and_one_within_a_disc(palette, is_most, value):
    points = [HistoryPoint(date(2020, 1, 1), 2.0), HistoryPoint(date(2022, 1, 1), value)]
    limit = HistoryLimit(2.5 if is_most else 1.5, is_most=is_most)
    pixels = _painted(points, limit, palette)
    discs, squares = _of(pixels, palette.accent), _of(pixels, palette.attention)
    assert discs[0].size
    # the words of the last value are in the same colour: only what lies left of them counts
    mark = squares[1] < squares[1].min() + 9
    rows, columns = squares[0][mark], squares[1][mark]
    filled = rows.size / (np.ptp(rows) + 1) / (np.ptp(columns) + 1)
    assert filled > 0.95


def test_one_value_alone_and_values_all_alike_are_painted():
    one = HistoryPoint(date(2020, 1, 1), 1.0)
    assert _of(_painted([one]), LIGHT.accent)[0].size
    alike = [one, HistoryPoint(date(2021, 1, 1), 1.0)]
    assert len(_groups(_of(_painted(alike, HistoryLimit(1.0)), LIGHT.accent)[1])) == 2
    nought = [HistoryPoint(date(2020, 1, 1), 0.0), HistoryPoint(date(2021, 1, 1), 0.0)]
    assert _of(_painted(nought), LIGHT.accent)[0].size


def test_the_box_is_kept():
    image = QImage(WIDTH + 60, HEIGHT + 60, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    points = [HistoryPoint(date(2020, 1, 1), 1.0), HistoryPoint(date(2022, 1, 1), 9.0)]
    box = QRectF(30, 30, WIDTH, HEIGHT)
    paint_history(painter, Theme(), box, points, HistoryLimit(8.9), lambda v: f"{v:.2f} mm")
    painter.end()
    inked = []
    for y in range(image.height()):
        for x in range(image.width()):
            if image.pixelColor(x, y) != QColor("white") and not box.contains(x, y):
                inked.append((x, y))
    assert inked == []
