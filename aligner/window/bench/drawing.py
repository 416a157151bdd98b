"""The drawing of what is corrected now, its lines and numbers large enough for three metres."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from aligner.assessment import Assessment, Subject
from aligner.drawing.front_elevation import (
    FrontElevation,
    exaggeration,
    front_elevation,
    paint_front_elevation,
)
from aligner.drawing.plan_view import paint_plan_view, plan_view, turn_exaggeration
from aligner.drawing.proportions import front_proportions, plan_proportions
from aligner.drawing.strokes import arrow, dimension_line, turn_arrow, words
from aligner.drawing.theme import Theme, TypeSize
from aligner.gauging import Verdict
from aligner.job import BarReadings, Job, PlateReadings, SpreadReadings
from aligner.language import say
from aligner.units.preferred import Preferred
from aligner.window.steps.bolt_card import BoltCard
from aligner.window.widgets.drawing_card import DrawingCard
from aligner.window.widgets.pictures import (
    correction_words,
    height_words,
    in_line_words,
    square_words,
    way_words,
)

#: How much larger than on the pages everything is drawn here; what follows from it stays
#: within the room up to this scale of the text.
LARGER, LARGEST = 1.8, 2.0

_MIDDLE = Qt.AlignmentFlag.AlignHCenter


def larger(theme: Theme) -> Theme:
    """The theme with type and measures for the bench."""
    return replace(theme, text_scale=min(theme.text_scale * LARGER, LARGEST))


class BenchDrawing(DrawingCard):
    """The legs from the seat, or the lower bracket from above."""

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(larger(theme), "")
        self._show = show
        self._job = Job()
        self._assessment: Assessment | None = None
        self._subject = Subject.PROTRUSION
        self._pair = 0

    def show_job(self, job: Job, assessment: Assessment, subject: Subject, pair: int) -> None:
        """Draw a job.

        Args:
            job: the job.
            assessment: of that job.
            subject: what is corrected now.
            pair: the pair of distances that is read, from nought.
        """
        self._job, self._assessment = job, assessment
        self._subject, self._pair = subject, pair
        found = assessment
        factor = 1
        title, name = say("From the seat"), say("drawing, from the seat")
        match subject:
            case Subject.SQUARING:
                title, name = say("From above"), say("drawing, from above")
                said = square_words(found.squaring, self._show)
                turn = found.squaring.turn
                factor = turn_exaggeration(turn.value if turn else None)
            case Subject.IN_LINE:
                said = in_line_words(found.in_line, self._show)
            case _:
                said = height_words(found.protrusion, self._show)
                difference = found.protrusion.difference
                factor = exaggeration(difference.value if difference else None)
        self._title = title
        self.say_note(say("drawn {factor} times", factor=factor) if factor > 1 else "")
        self.setAccessibleName(name)
        self.setAccessibleDescription(said)
        self.update()

    def paint_picture(self, painter: QPainter) -> None:
        if self._assessment is None:
            return
        match self._subject:
            case Subject.SQUARING:
                self._paint_from_above(painter, self._assessment)
            case Subject.IN_LINE:
                self._paint_in_line(painter)
            case _:
                self._paint_heights(painter, self._assessment)

    def _paint_heights(self, painter: QPainter, assessment: Assessment) -> None:
        found = assessment.protrusion
        side = self.theme.px(88)
        room = self.room().adjusted(side, 0, -side, -self.theme.px(12))
        left = found.left.value_mm if found.left else None
        right = found.right.value_mm if found.right else None
        picture = front_elevation(room, front_proportions(self._job), left, right)
        paint_front_elevation(painter, self.theme, picture)
        self._name_sides(painter, picture)
        moves = found.moves if found.verdict is Verdict.OUT else None
        for sign, tube, read, move in (
            (-1, picture.left_tube, left, moves.left_mm if moves else 0.0),
            (1, picture.right_tube, right, moves.right_mm if moves else 0.0),
        ):
            if read is not None:
                self._paint_height(painter, picture, sign, tube, read)
            self._paint_move(painter, picture, sign, move)

    def _paint_height(
        self, painter: QPainter, picture: FrontElevation, sign: int, tube: QRectF, read_mm: float
    ) -> None:
        plate = picture.top_bracket
        edge = plate.left() if sign < 0 else plate.right()
        x = edge + sign * self.theme.px(7)
        dimension_line(painter, self.theme, QPointF(x, tube.top()), QPointF(x, plate.top()))
        between = (tube.top() + plate.top()) / 2
        text = self._show.show_length(read_mm)
        self._number(painter, x + sign * self.theme.px(6), between, sign, text)

    def _paint_move(
        self, painter: QPainter, picture: FrontElevation, sign: int, move_mm: float
    ) -> None:
        text = self._show.show_length(abs(move_mm))
        if not any(digit in text for digit in "123456789"):
            return
        plate, lower = picture.top_bracket, picture.lower_bracket
        edge = plate.left() if sign < 0 else plate.right()
        x = edge + sign * self.theme.px(11)
        top, bottom = plate.bottom() + self.theme.px(10), lower.top() - self.theme.px(2)
        up = move_mm > 0
        start, end = QPointF(x, bottom if up else top), QPointF(x, top if up else bottom)
        arrow(painter, self.theme.color("accent"), start, end, self.theme.px(5))
        text = f"{way_words(is_up=up)}\n{text}"
        self._number(
            painter, x + sign * self.theme.px(16), (top + bottom) / 2, sign, text, role="accent"
        )

    def _number(
        self, painter: QPainter, x: float, y: float, sign: int, text: str, role: str = "ink"
    ) -> None:
        """Words beside a place, outward of it and never beyond the card."""
        high = self.theme.px(30) * (1 + text.count("\n"))
        edge = self.theme.px(4)
        if sign < 0:
            box = QRectF(edge, y - high / 2, x - edge, high)
            align = Qt.AlignmentFlag.AlignRight
        else:
            box = QRectF(x, y - high / 2, self.width() - edge - x, high)
            align = Qt.AlignmentFlag.AlignLeft
        words(painter, self.theme, box, text, role=role, size=TypeSize.TEXT, bold=True, align=align)

    def _name_sides(self, painter: QPainter, picture: FrontElevation) -> None:
        for name, slider in (
            (say("left"), picture.left_slider),
            (say("right"), picture.right_slider),
        ):
            wide = self.theme.px(60)
            box = QRectF(slider.center().x() - wide / 2, slider.bottom(), wide, self.theme.px(18))
            words(painter, self.theme, box, name, align=_MIDDLE, bold=True)

    def _paint_from_above(self, painter: QPainter, assessment: Assessment) -> None:
        found = assessment.squaring
        turn = found.turn.value if found.turn else None
        side, line = self.theme.px(80), self.theme.px(26)
        room = self.room().adjusted(side, line * 1.8, -side, -self.theme.px(10))
        view = plan_view(room, plan_proportions(self._job, self._pair), turn)
        paint_plan_view(painter, self.theme, view)
        pairs = found.pairs
        pair = pairs[self._pair] if self._pair < len(pairs) else None
        for sign, frame, estimate in (
            (-1, view.left_frame, pair.left if pair else None),
            (1, view.right_frame, pair.right if pair else None),
        ):
            if estimate is not None:
                text = self._show.show_length(estimate.value_mm)
                beside = frame.x() + sign * self.theme.px(8)
                self._number(painter, beside, frame.y(), sign, text)
        if turn is None or found.verdict is not Verdict.OUT:
            return
        top = QRectF(self.room().left(), self.room().top(), self.room().width(), line)
        words(
            painter,
            self.theme,
            top,
            correction_words(turn, self._show),
            role="accent",
            size=TypeSize.TEXT,
            bold=True,
            align=_MIDDLE,
        )
        half = self.theme.px(50)
        arc = QRectF(top.center().x() - half, top.bottom() + 6, 2 * half, self.theme.px(12))
        accent = self.theme.color("accent")
        turn_arrow(painter, accent, arc, to_the_left=turn < 0, width=self.theme.px(3))

    def _paint_in_line(self, painter: QPainter) -> None:
        """The legs with what is laid on them, and the corner that stands off."""
        side = self.theme.px(40)
        picture = front_elevation(
            self.room().adjusted(side, 0, -side, -self.theme.px(12)), front_proportions(self._job)
        )
        paint_front_elevation(painter, self.theme, picture)
        self._name_sides(painter, picture)
        readings = self._job.align.in_line or PlateReadings(method="plate")
        reach = self.theme.px(6)
        left, right = picture.left_tube.left() - reach, picture.right_tube.right() + reach
        high = picture.lower_bracket.top() - picture.top_bracket.bottom()
        laid = QRectF(left, picture.top_bracket.bottom() + high * 0.2, right - left, high * 0.6)
        painter.setPen(QPen(self.theme.color("accent"), self.theme.px(3)))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        match readings:
            case PlateReadings():
                painter.drawRect(laid)
                if readings.corner is not None:
                    upper, on_left = (word in readings.corner.value for word in ("upper", "left"))
                    place = QPointF(
                        laid.left() if on_left else laid.right(),
                        laid.top() if upper else laid.bottom(),
                    )
                    painter.setBrush(self.theme.color("accent"))
                    painter.drawEllipse(place, self.theme.px(8), self.theme.px(8))
            case BarReadings():
                painter.drawLine(laid.topLeft(), laid.topRight())
                painter.drawLine(laid.bottomLeft(), laid.bottomRight())
            case SpreadReadings():
                foot = picture.lower_bracket.bottom() + self.theme.px(6)
                low = picture.left_slider.top() - self.theme.px(2)
                for y in (foot, low):
                    dimension_line(
                        painter,
                        self.theme,
                        QPointF(picture.left_tube.left(), y),
                        QPointF(picture.right_tube.right(), y),
                    )


class BoltsInHand(BoltCard):
    """Only the bolts of the step in hand: from three metres the others are in the way."""

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme)
        self._title = say("From the seat")

    def room(self) -> QRectF:
        above, below = self.theme.px(26), self.theme.px(2)
        return super().room().adjusted(0, -above, 0, below)

    def _bolts(self, picture: FrontElevation, in_hand: str | None) -> list[Any]:
        return [bolt for bolt in super()._bolts(picture, in_hand) if bolt.joint == in_hand]
