"""The card on which the lower bracket is squared to the frame, seen from above."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QPushButton

from aligner.assessment import Assessment
from aligner.drawing.plan_view import paint_plan_view, plan_view, turn_exaggeration
from aligner.drawing.proportions import plan_proportions
from aligner.drawing.strokes import turn_arrow, words
from aligner.drawing.theme import Theme, TypeSize
from aligner.drawing.tolerance_strip import paint_strip
from aligner.job import Job
from aligner.sheet.quantities import Length
from aligner.units.preferred import Preferred
from aligner.window.drawing_card import DrawingCard
from aligner.window.pictures import square_words, strip_of
from aligner.window.reading_box import ReadingBox

_SIDES = ("left", "right")


class SquareCard(DrawingCard):
    """The lower bracket, the frame points, and a box for each distance of the pair in hand.

    Signals:
        typed, kept: place of the pair, side and readings.
        pair_wanted: a first pair of points is asked for.
        went_on: Enter after the last reading of the last pair.
    """

    typed = Signal(int, str, object)
    kept = Signal(int, str, object)
    pair_wanted = Signal()
    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(theme, "Square, seen from above")
        self._show = show
        self._job = Job()
        self._assessment: Assessment | None = None
        self._place = 0
        self.boxes = {
            side: ReadingBox(theme, f"{side} side", Length, show.length) for side in _SIDES
        }
        for side, box in self.boxes.items():
            box.setParent(self)
            box.resized.connect(self.place_boxes)
            box.typed.connect(lambda r, side=side: self.typed.emit(self._place, side, r))
            box.kept.connect(lambda r, side=side: self.kept.emit(self._place, side, r))
        self.boxes["left"].went_on.connect(self.boxes["right"].go_to_first_empty)
        self.boxes["right"].went_on.connect(self._go_on)
        self.next_pair = QPushButton("Next pair", self)
        self.next_pair.clicked.connect(self._show_next_pair)
        self.add_pair = QPushButton("Add a pair of distances", self)
        self.add_pair.clicked.connect(self.pair_wanted)

    def show_job(self, job: Job, assessment: Assessment) -> None:
        """Show a job's readings and what follows from them."""
        self._job, self._assessment = job, assessment
        pairs = assessment.squaring.pairs
        self._place = min(self._place, max(len(pairs) - 1, 0))
        for box in self.boxes.values():
            box.setVisible(bool(pairs))
        self.add_pair.setVisible(not pairs)
        self.next_pair.setVisible(len(pairs) > 1)
        if pairs:
            pair, typed = pairs[self._place], job.align.squaring[self._place]
            for side, estimate in (("left", pair.left), ("right", pair.right)):
                mean = self._show.show_length(estimate.value_mm) if estimate else "not read"
                self.boxes[side].show_readings(getattr(typed, side), mean)
            self.next_pair.setText(f"{pair.name}: {self._place + 1} of {len(pairs)}, next")
        turn = assessment.squaring.turn.value if assessment.squaring.turn else None
        factor = turn_exaggeration(turn)
        self.say_note(f"turn drawn {factor} times" if factor > 1 else "")
        self.setAccessibleDescription(square_words(assessment.squaring, self._show))
        self.place_boxes()
        self.update()

    def go_to_first_box(self) -> None:
        """Put the keyboard where the next reading is wanted."""
        if self.boxes["left"].isVisible():
            self.boxes["left"].go_to_first_empty()
        else:
            self.add_pair.setFocus(Qt.FocusReason.TabFocusReason)

    def place_boxes(self) -> None:
        room = self.room()
        width = min(self.theme.px(204), int(room.width() * 0.45))
        bottom = room.bottom() - self.theme.px(44)
        for side, box in self.boxes.items():
            height = box.height_at(width)
            left = room.left() if side == "left" else room.right() - width
            box.setGeometry(int(left), int(bottom - height), width, height)
        middle = self.add_pair.sizeHint()
        self.add_pair.setGeometry(
            int(room.center().x() - middle.width() / 2),
            int(bottom - middle.height()),
            middle.width(),
            middle.height(),
        )
        size = self.next_pair.sizeHint()
        self.next_pair.setGeometry(
            int(room.right() - size.width()), int(room.top()), size.width(), size.height()
        )

    def paint_picture(self, painter: QPainter) -> None:
        if self._assessment is None:
            return
        found = self._assessment.squaring
        room = self.room()
        box = min(box.height() for box in self.boxes.values())  # a refusal may lie over it
        arrow_room = self.theme.px(40)
        picture_room = room.adjusted(
            room.width() * 0.22,
            arrow_room,
            -room.width() * 0.22,
            -self.theme.px(44) - box * 0.72,
        )
        turn = found.turn.value if found.turn else None
        view = plan_view(picture_room, plan_proportions(self._job, self._place), turn)
        paint_plan_view(painter, self.theme, view)
        if found.turn is not None and found.verdict.value == "out":
            self._paint_turn(painter, room, found.turn.value)
        self._paint_strip(painter)

    def _paint_turn(self, painter: QPainter, room: QRectF, turn_deg: float) -> None:
        to_the_left = turn_deg < 0
        way = "left" if to_the_left else "right"
        line = QRectF(room.left(), room.top(), room.width(), self.theme.px(22))
        text = f"turn {self._show.show_angle(abs(turn_deg))} to the {way}"
        words(
            painter,
            self.theme,
            line,
            text,
            role="accent",
            size=TypeSize.TEXT,
            bold=True,
            align=Qt.AlignmentFlag.AlignHCenter,
        )
        half = self.theme.px(52)
        arc = QRectF(room.center().x() - half, line.bottom() + 8, 2 * half, self.theme.px(14))
        turn_arrow(painter, self.theme.color("accent"), arc, to_the_left=to_the_left, width=3)

    def _paint_strip(self, painter: QPainter) -> None:
        if self._assessment is None:
            return
        found = self._assessment.squaring
        room = self.room()
        height = self.theme.px(12)
        box = QRectF(room.left(), room.bottom() - height, room.width(), height)
        line = QRectF(room.left(), box.top() - self.theme.px(28), room.width(), self.theme.px(22))
        words(
            painter,
            self.theme,
            line,
            square_words(found, self._show),
            role="attention" if found.verdict.value == "out" else "ink",
            size=TypeSize.TEXT,
            bold=True,
        )
        strip = strip_of(found.turn)
        if strip is None and found.leading_pair:
            strip = strip_of(found.leading_pair.difference)
        if strip is not None:
            paint_strip(painter, self.theme, box, strip)

    def _show_next_pair(self) -> None:
        if self._assessment is not None and self._assessment.squaring.pairs:
            self._place = (self._place + 1) % len(self._assessment.squaring.pairs)
            self.show_job(self._job, self._assessment)
            self.boxes["left"].go_to_first_empty()

    def _go_on(self) -> None:
        pairs = self._assessment.squaring.pairs if self._assessment else ()
        if self._place + 1 < len(pairs):
            self._show_next_pair()
        else:
            self.went_on.emit()
