"""The small drawings that show where a gauge is held; what each shows is data.

The trap: a drawing fixed as a picture is unreadable on a dark screen or in large type. So these
are lists of shapes in `resources/measuring/sketches.json`, painted with the theme's colours and
type and with the strokes of the large drawings.
"""

from __future__ import annotations

import json
import math
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from typing import Any

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from aligner.data_files import resource
from aligner.drawing.strokes import (
    NARROW,
    WIDE,
    arrow,
    center_line,
    dimension_line,
    narrow_line,
    outline,
    words,
)
from aligner.drawing.theme import Theme
from aligner.language import say

#: The field in which the shapes' places are given.
WIDTH, HEIGHT = 240.0, 160.0

#: A shape: its kind, then what that kind takes.
Shape = list[Any]


@cache
def sketches() -> dict[str, list[Shape]]:
    """Every drawing by its name."""
    loaded: dict[str, list[Shape]] = json.loads(
        resource("measuring", "sketches.json").read_text(encoding="utf-8")
    )
    return loaded


def paint_sketch(painter: QPainter, theme: Theme, room: QRectF, name: str) -> None:
    """Paint a drawing as large as it fits into the room, pixels."""
    scale = min(room.width() / WIDTH, room.height() / HEIGHT)
    left = room.center().x() - scale * WIDTH / 2
    top = room.center().y() - scale * HEIGHT / 2
    # Words as much larger as the drawing is, and no more: they would not go beside their things.
    fitting = replace(theme, text_scale=min(theme.text_scale, scale))
    sketch = _Sketch(painter, fitting, QPointF(left, top), scale)
    for kind, *given in sketches()[name]:
        _KINDS[kind](sketch, *given)


class _Sketch:
    """Shapes painted at their places in the field."""

    def __init__(self, painter: QPainter, theme: Theme, corner: QPointF, scale: float) -> None:
        self._painter = painter
        self._theme = theme
        self._corner = corner
        self._scale = scale

    def area(self, role: str, *places: float) -> None:
        """A closed outline through corners, filled."""
        outline(self._painter, self._theme, role)
        corners = zip(places[::2], places[1::2], strict=True)
        self._painter.drawPolygon(QPolygonF([self._at(x, y) for x, y in corners]))

    def box(self, role: str, x: float, y: float, width: float, height: float) -> None:
        """An upright rectangle, filled."""
        outline(self._painter, self._theme, role)
        self._painter.drawRect(self._room(x, y, width, height))

    def disc(self, role: str, x: float, y: float, radius: float) -> None:
        """A disc about its middle, filled."""
        outline(self._painter, self._theme, role)
        self._painter.drawEllipse(self._at(x, y), radius * self._scale, radius * self._scale)

    def line(self, *places: float) -> None:
        """A visible edge through points."""
        self._painter.setPen(QPen(self._theme.color("ink"), WIDE))
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        corners = zip(places[::2], places[1::2], strict=True)
        self._painter.drawPolyline(QPolygonF([self._at(x, y) for x, y in corners]))

    def arc(self, x: float, y: float, radius: float, start_deg: float, span_deg: float) -> None:
        """Part of a circle, anticlockwise from three o'clock."""
        self._painter.setPen(QPen(self._theme.color("ink"), WIDE))
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        box = self._room(x - radius, y - radius, 2 * radius, 2 * radius)
        self._painter.drawArc(box, round(start_deg * 16), round(span_deg * 16))

    def thin(self, x: float, y: float, to_x: float, to_y: float) -> None:
        """An extension or leader line."""
        narrow_line(self._painter, self._theme, self._at(x, y), self._at(to_x, to_y))

    def axis(self, x: float, y: float, to_x: float, to_y: float) -> None:
        """A centre line."""
        center_line(self._painter, self._theme, self._at(x, y), self._at(to_x, to_y))

    def size(self, x: float, y: float, to_x: float, to_y: float) -> None:
        """What is read: a dimension line with its arrowheads."""
        dimension_line(self._painter, self._theme, self._at(x, y), self._at(to_x, to_y))

    def push(self, x: float, y: float, to_x: float, to_y: float) -> None:
        """What the hand does: a broad arrow."""
        color = self._theme.color("accent")
        arrow(self._painter, color, self._at(x, y), self._at(to_x, to_y), 2.5)

    def words(self, x: float, y: float, width: float, text: str, align: str = "left") -> None:
        """A word beside what it names, or a letter; two lines where one is too narrow."""
        sides = {
            "left": Qt.AlignmentFlag.AlignLeft,
            "middle": Qt.AlignmentFlag.AlignHCenter,
            "right": Qt.AlignmentFlag.AlignRight,
        }
        said = say(text) if len(text) > 1 else text  # a letter is the same in every language
        words(self._painter, self._theme, self._room(x, y - 8, width, 32), said, align=sides[align])

    def ground(self, x: float, y: float, to_x: float) -> None:
        """A bench or a floor: an edge with short strokes below it."""
        self.line(x, y, to_x, y)
        self._painter.setPen(QPen(self._theme.color("quiet"), NARROW))
        place = x + 4
        while place <= to_x:
            self._painter.drawLine(self._at(place, y), self._at(place - 5, y + 6))
            place += 9

    def rule(self, x: float, y: float, height: float) -> None:
        """An upright steel rule with its marks."""
        self.box("card", x, y, 14, height)
        self._painter.setPen(QPen(self._theme.color("ink"), NARROW))
        for mark in range(1, int(height // 5)):
            long = 8 if mark % 5 == 0 else 4
            self._painter.drawLine(self._at(x, y + 5 * mark), self._at(x + long, y + 5 * mark))

    def dial(self, x: float, y: float, tip_x: float, tip_y: float) -> None:
        """A dial indicator: its face, and its plunger down to what it feels."""
        radius = 15.0
        length = math.hypot(tip_x - x, tip_y - y)
        along_x, along_y = (tip_x - x) / length, (tip_y - y) / length
        self.line(x + along_x * radius, y + along_y * radius, tip_x, tip_y)
        self.disc("card", x, y, radius)
        self._painter.setPen(QPen(self._theme.color("ink"), NARROW))
        for mark in range(12):
            angle = math.radians(30 * mark)
            inner, outer = radius - 4, radius - 1.5
            self._painter.drawLine(
                self._at(x + inner * math.cos(angle), y + inner * math.sin(angle)),
                self._at(x + outer * math.cos(angle), y + outer * math.sin(angle)),
            )
        self._painter.setPen(QPen(self._theme.color("accent"), 2.0))
        self._painter.drawLine(self._at(x, y), self._at(x + 6.0, y - 8.0))
        self.disc("ink", tip_x, tip_y, 1.6)

    def coils(self, x: float, y: float, width: float, height: float, turns: int) -> None:
        """A coil spring, upright."""
        step = height / turns
        places: list[float] = []
        for turn in range(turns):
            places += [x, y + turn * step, x + width, y + (turn + 0.5) * step]
        self.line(*places, x, y + height)

    def _at(self, x: float, y: float) -> QPointF:
        return self._corner + QPointF(x * self._scale, y * self._scale)

    def _room(self, x: float, y: float, width: float, height: float) -> QRectF:
        corner = self._at(x, y)
        return QRectF(corner.x(), corner.y(), width * self._scale, height * self._scale)


_KINDS: dict[str, Callable[..., None]] = {
    "area": _Sketch.area,
    "box": _Sketch.box,
    "disc": _Sketch.disc,
    "line": _Sketch.line,
    "arc": _Sketch.arc,
    "thin": _Sketch.thin,
    "axis": _Sketch.axis,
    "size": _Sketch.size,
    "push": _Sketch.push,
    "words": _Sketch.words,
    "ground": _Sketch.ground,
    "rule": _Sketch.rule,
    "dial": _Sketch.dial,
    "coils": _Sketch.coils,
}
