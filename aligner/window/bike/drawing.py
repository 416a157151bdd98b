"""The front elevation beside the dimensions: each stands where it is measured."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter

from aligner.drawing.front_elevation import (
    FrontElevation,
    front_elevation,
    paint_front_elevation,
)
from aligner.drawing.proportions import front_proportions
from aligner.drawing.strokes import dimension_line, narrow_line, words
from aligner.drawing.theme import Theme, TypeSize
from aligner.job import Job
from aligner.language import marked, say
from aligner.sheet import Side
from aligner.sheet.quantities import Quantity
from aligner.window.widgets.drawing_card import DrawingCard

#: The dimensions on the picture, as they stand there.
_PAINTED = {
    "fork.leg_spacing": marked("spacing {value}"),
    "fork.tube_diameter": marked("tube ⌀ {value}"),
    "fork.bracket_spacing": marked("brackets {value}"),
    "fork.lower_bracket_to_axle": marked("to the axle {value}"),
}


class SheetDrawing(DrawingCard):
    """The front end to the sheet's proportions, with the dimensions that can be seen on it."""

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme, say("Seen from the seat"))
        self._job = Job()
        self._lit = ""
        self.setMinimumWidth(theme.px(300))
        self.setFixedHeight(theme.px(420))

    def show_job(self, job: Job) -> None:
        """Draw this job's sheet."""
        if job.sheet != self._job.sheet:
            self._job = job
            self.say_note(say("slider ends cut short"))
            self.setAccessibleDescription(self._said())
            self.update()

    def light(self, path: str) -> None:
        """Show in the accent where a dimension is measured ("fork.leg_spacing")."""
        if path != self._lit:
            self._lit = path
            self.update()

    def paint_picture(self, painter: QPainter) -> None:
        px = self.theme.px
        room = self.room().adjusted(px(96), px(30), -px(96), -px(52))
        picture = front_elevation(room, front_proportions(self._job))
        paint_front_elevation(painter, self.theme, picture)
        self._paint_across(painter, picture)
        self._paint_heights(painter, picture)

    def _paint_across(self, painter: QPainter, picture: FrontElevation) -> None:
        px = self.theme.px
        left, right = picture.left_tube.center().x(), picture.right_tube.center().x()
        foot = picture.left_slider.bottom()
        y = foot + px(22)
        for x in (left, right):
            narrow_line(painter, self.theme, QPointF(x, foot + 4), QPointF(x, y + 6))
        dimension_line(painter, self.theme, QPointF(left, y), QPointF(right, y))
        self._say(painter, QRectF(left, y, right - left, px(24)), "fork.leg_spacing")
        middle = Qt.AlignmentFlag.AlignHCenter
        for x, name in ((left, Side.LEFT.words), (right, Side.RIGHT.words)):
            box = QRectF(x - px(40), y + px(20), px(80), px(20))
            words(painter, self.theme, box, name, role="quiet", align=middle)
        tube = picture.left_tube
        top = tube.top() - px(12)
        for x in (tube.left(), tube.right()):
            narrow_line(painter, self.theme, QPointF(x, tube.top() - 2), QPointF(x, top - 6))
        dimension_line(painter, self.theme, QPointF(tube.left(), top), QPointF(tube.right(), top))
        box = QRectF(tube.center().x() - px(80), top - px(28), px(160), px(22))
        self._say(painter, box, "fork.tube_diameter")

    def _paint_heights(self, painter: QPainter, picture: FrontElevation) -> None:
        px = self.theme.px
        upper, lower = picture.top_bracket.center().y(), picture.lower_bracket.center().y()
        x = picture.top_bracket.left() - px(20)
        for y, bracket in ((upper, picture.top_bracket), (lower, picture.lower_bracket)):
            narrow_line(painter, self.theme, QPointF(bracket.left() - 3, y), QPointF(x - 6, y))
        dimension_line(painter, self.theme, QPointF(x, upper), QPointF(x, lower))
        room = self.room()
        box = QRectF(room.left(), (upper + lower) / 2 - px(24), x - room.left() - px(6), px(48))
        align = Qt.AlignmentFlag.AlignRight
        self._say(painter, box, "fork.bracket_spacing", align)
        x = picture.lower_bracket.right() + px(20)
        foot = picture.right_slider.bottom()
        narrow_line(
            painter,
            self.theme,
            QPointF(picture.lower_bracket.right() + 3, lower),
            QPointF(x + 6, lower),
        )
        narrow_line(
            painter,
            self.theme,
            QPointF(picture.right_slider.right() + 3, foot),
            QPointF(x + 6, foot),
        )
        dimension_line(painter, self.theme, QPointF(x, lower), QPointF(x, foot))
        box = QRectF(x + px(6), (lower + foot) / 2 - px(24), room.right() - x - px(6), px(48))
        align = Qt.AlignmentFlag.AlignLeft
        self._say(painter, box, "fork.lower_bracket_to_axle", align)

    def _say(
        self,
        painter: QPainter,
        box: QRectF,
        path: str,
        align: Qt.AlignmentFlag = Qt.AlignmentFlag.AlignHCenter,
    ) -> None:
        value = self._value(path)
        is_lit = path == self._lit
        words(
            painter,
            self.theme,
            box,
            say(_PAINTED[path], value=self._value_words(path)),
            role="accent" if is_lit else "ink" if value else "quiet",
            size=TypeSize.SMALL,
            bold=is_lit,
            align=align,
        )

    def _value(self, path: str) -> Quantity | None:
        found: Quantity | None = getattr(self._job.sheet.fork, path.partition(".")[2])
        return found

    def _value_words(self, path: str) -> str:
        value = self._value(path)
        return value.said if value else "?"

    def _said(self) -> str:
        return say(
            "leg spacing {legs}, bracket spacing {brackets}, tube diameter {tube}, "
            "lower bracket to axle {axle}",
            legs=self._value_words("fork.leg_spacing"),
            brackets=self._value_words("fork.bracket_spacing"),
            tube=self._value_words("fork.tube_diameter"),
            axle=self._value_words("fork.lower_bracket_to_axle"),
        )
