"""The card on which the legs' heights are read and corrected, seen from the seat."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from aligner.assessment import Assessment
from aligner.assessment.protrusion import ProtrusionAssessment, mean_as_found
from aligner.drawing.front_elevation import (
    FrontElevation,
    exaggeration,
    front_elevation,
    paint_front_elevation,
)
from aligner.drawing.proportions import front_proportions
from aligner.drawing.strokes import arrow, dimension_line, narrow_line, words
from aligner.drawing.theme import Theme, TypeSize
from aligner.drawing.tolerance_strip import paint_strip
from aligner.job import Job
from aligner.language import marked, say
from aligner.sheet.quantities import SignedLength
from aligner.units.preferred import Preferred
from aligner.window.align.words import as_found_words, policy_choices, policy_refusals
from aligner.window.widgets.drawing_card import DrawingCard
from aligner.window.widgets.labels import label
from aligner.window.widgets.pictures import height_words, strip_of, way_words
from aligner.window.widgets.reading_box import ReadingBox
from aligner.window.widgets.tried_choice import TriedChoice

_NAMES = {"left": marked("left leg"), "right": marked("right leg")}
_STRIP_HEIGHT = 50
_POLICY_HEIGHT = 34
_LEAST_PICTURE = 200
_LEAST_WIDTH = 520


class HeightCard(DrawingCard):
    """Both legs in their brackets with a box for each height.

    Signals:
        typed: side and readings, while they are being typed.
        kept: side and readings, when a cell is left.
        policy_tried, policy_kept: which leg goes where.
        went_on: Enter after the last reading of the right leg.
    """

    typed = Signal(str, object)
    kept = Signal(str, object)
    policy_tried = Signal(object)
    policy_kept = Signal(object)
    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(theme, say("Height, seen from the seat"))
        self._show = show
        self._job = Job()
        self._assessment: Assessment | None = None
        self.boxes = {
            side: ReadingBox(theme, say(name), SignedLength, show.length, guide="protrusion")
            for side, name in _NAMES.items()
        }
        for side, box in self.boxes.items():
            box.setParent(self)
            box.resized.connect(self.place_boxes)
            box.typed.connect(lambda readings, side=side: self.typed.emit(side, readings))
            box.kept.connect(lambda readings, side=side: self.kept.emit(side, readings))
        self.boxes["left"].went_on.connect(self.boxes["right"].go_to_first_empty)
        self.boxes["right"].went_on.connect(self.went_on)
        self._policy_name = label(say("bring", meaning="before which leg goes where"), "small")
        self._policy_name.setParent(self)
        self.policy = TriedChoice(say("bring which leg where"))
        self.policy.setParent(self)
        self.policy.tried.connect(self.policy_tried)
        self.policy.chosen.connect(self.policy_kept)
        self.policy.went_on.connect(self.went_on)
        self._as_found = label("", "small", wraps=True)
        self._as_found.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop)
        self._as_found.setParent(self)
        self._as_found_placed = ("", 0)

    def show_job(self, job: Job, assessment: Assessment) -> None:
        """Show a job's readings and what follows from them."""
        self._job, self._assessment = job, assessment
        found = assessment.protrusion
        wanted = found.advice.readings_needed if found.advice else None
        for side, estimate in (("left", found.left), ("right", found.right)):
            mean = (
                self._show.show_length(estimate.value_mm)
                if estimate
                else say("not read", meaning="in place of a mean")
            )
            readings = getattr(job.align.protrusion, side)
            self.boxes[side].show_readings(readings, mean, cells=min(wanted or 0, 8))
        as_found = mean_as_found(job)
        words, refusals = policy_choices(job, as_found, self._show), policy_refusals(job, as_found)
        why = {policy: f"{words[policy]}: {refusal}" for policy, refusal in refusals.items()}
        self.policy.offer((words | why).items(), closed=refusals)
        self.policy.show_value(found.policy)
        self._as_found.setText(as_found_words(job, self._show))
        difference = found.difference.value if found.difference else None
        factor = exaggeration(difference, _spread_of(found))
        drawn = say("difference and its ± drawn {factor} times", factor=factor)
        self.say_note(drawn if factor > 1 else "")
        self.setAccessibleDescription(height_words(found, self._show))
        self.place_boxes()
        places = (box.geometry() for box in self.boxes.values())
        self.paint_if_other(job.sheet, found, *places)

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops, as the eye goes."""
        return [*self.boxes["left"].cells, *self.boxes["right"].cells, self.policy]

    def place_boxes(self) -> None:
        room = self.room()
        width = min(self.theme.px(176), int(room.width() * 0.36))
        for side, box in self.boxes.items():
            height = box.height_at(width)
            left = room.left() if side == "left" else room.right() - width
            box.setGeometry(int(left), int(room.top()), width, height)
        self._place_as_found(room, width)
        self._place_policy(room)
        self.ask_for_room()

    def least_size(self) -> QSize:
        around = self.height() - self._picture_room().height()
        high = round(around) + self.theme.px(_LEAST_PICTURE)
        return QSize(self.theme.px(_LEAST_WIDTH), high)

    def _place_policy(self, room: QRectF) -> None:
        high = self.theme.px(_POLICY_HEIGHT)
        top = int(room.bottom() - self.theme.px(_STRIP_HEIGHT) - high)
        name = self._policy_name.sizeHint().width() + self.theme.px(6)
        left = int(room.left())
        self._policy_name.setGeometry(left, top, name, high)
        self.policy.setGeometry(left + name, top, int(room.width()) - name, high)

    def _place_as_found(self, room: QRectF, box: int) -> None:
        """Between the boxes: where the heights are read now stands what they were."""
        between = int(room.width()) - 2 * box - 2 * self.theme.px(8)
        placed = (self._as_found.text(), between)
        if placed == self._as_found_placed:
            return  # most keys leave it as it is
        self._as_found_placed = placed
        high = self._as_found.heightForWidth(between)
        left = int(room.left()) + box + self.theme.px(8)
        self._as_found.setGeometry(left, int(room.top()) + self.theme.px(4), between, high)

    def paint_picture(self, painter: QPainter) -> None:
        if self._assessment is None:
            return
        found = self._assessment.protrusion
        left = found.left.value_mm if found.left else None
        right = found.right.value_mm if found.right else None
        proportions, spread = front_proportions(self._job), _spread_of(found)
        picture = front_elevation(self._picture_room(), proportions, left, right, spread)
        paint_front_elevation(painter, self.theme, picture)
        self._paint_names(painter, picture)
        self._paint_dimensions(painter, picture, (left is not None, right is not None))
        if found.moves is not None and found.verdict.value == "out":
            self._paint_move(painter, picture, "left", found.moves.left_mm)
            self._paint_move(painter, picture, "right", found.moves.right_mm)
        self._paint_strip(painter)

    def _picture_room(self) -> QRectF:
        room = self.room()
        box = max(box.height() for box in self.boxes.values())
        strip = self.theme.px(_STRIP_HEIGHT + _POLICY_HEIGHT + 4)
        side = self.theme.px(64)
        mark = self.theme.px(18)  # a short dimension's arrows stand outside it
        return room.adjusted(side, box + mark, -side, -strip - 10)

    def _paint_names(self, painter: QPainter, picture: FrontElevation) -> None:
        for bracket, name in (
            (picture.top_bracket, say("top bracket")),
            (picture.lower_bracket, say("lower bracket")),
        ):
            middle = Qt.AlignmentFlag.AlignHCenter
            words(painter, self.theme, bracket, name, role="ink", align=middle)
        wide, off = self.theme.px(80), self.theme.px(6)
        left, right = picture.left_slider, picture.right_slider
        beside = QRectF(left.left() - off - wide, left.top(), wide, left.height())
        right_end = Qt.AlignmentFlag.AlignRight
        words(painter, self.theme, beside, say("left"), role="ink", align=right_end)
        beside = QRectF(right.right() + off, right.top(), wide, right.height())
        words(painter, self.theme, beside, say("right"), role="ink")

    def _paint_dimensions(
        self, painter: QPainter, picture: FrontElevation, is_read: tuple[bool, bool]
    ) -> None:
        face = picture.top_bracket.top()
        for side, tube, read in zip(
            (-1, 1), (picture.left_tube, picture.right_tube), is_read, strict=True
        ):
            if not read:
                continue
            edge = tube.left() if side < 0 else tube.right()
            plate = picture.top_bracket.left() if side < 0 else picture.top_bracket.right()
            x = plate + side * self.theme.px(20)
            far = x + side * 6
            narrow_line(painter, self.theme, QPointF(edge, tube.top()), QPointF(far, tube.top()))
            narrow_line(painter, self.theme, QPointF(plate, face), QPointF(far, face))
            dimension_line(painter, self.theme, QPointF(x, tube.top()), QPointF(x, face))

    def _paint_move(
        self, painter: QPainter, picture: FrontElevation, side: str, move_mm: float
    ) -> None:
        text = self._show.show_length(abs(move_mm))
        if not any(digit in text for digit in "123456789"):
            return
        tube = picture.left_tube if side == "left" else picture.right_tube
        sign = -1 if side == "left" else 1
        between = (picture.top_bracket.bottom() + picture.lower_bracket.top()) / 2
        half = (picture.lower_bracket.top() - picture.top_bracket.bottom()) * 0.36
        x = tube.center().x() + sign * (tube.width() / 2 + self.theme.px(18))
        up = move_mm > 0
        start = QPointF(x, between + (half if up else -half))
        end = QPointF(x, between - (half if up else -half))
        arrow(painter, self.theme.color("accent"), start, end, 4)
        way = way_words(is_up=up)
        width = self.theme.px(86)
        beside = x - width - 10 if sign < 0 else x + 10
        align = Qt.AlignmentFlag.AlignRight if sign < 0 else Qt.AlignmentFlag.AlignLeft
        box = QRectF(beside, between - self.theme.px(24), width, self.theme.px(48))
        words(
            painter,
            self.theme,
            box,
            f"{way}\n{text}",
            role="accent",
            size=TypeSize.TEXT,
            bold=True,
            align=align,
        )

    def _paint_strip(self, painter: QPainter) -> None:
        if self._assessment is None:
            return
        found = self._assessment.protrusion
        room = self.room()
        height = self.theme.px(14)
        box = QRectF(room.left(), room.bottom() - height, room.width(), height)
        line = QRectF(room.left(), box.top() - self.theme.px(30), room.width(), self.theme.px(24))
        is_out = found.verdict.value == "out"
        painter.setPen(QPen(self.theme.color("ink")))
        words(
            painter,
            self.theme,
            line,
            height_words(found, self._show),
            role="attention" if is_out else "ink",
            size=TypeSize.TEXT,
            bold=True,
        )
        strip = strip_of(found.difference)
        if strip is not None:
            paint_strip(painter, self.theme, box, strip)


def _spread_of(found: ProtrusionAssessment) -> float | None:
    """What is not certain of the difference of heights, for 95 %; mm."""
    return found.difference.judgement.expanded_uncertainty if found.difference else None
