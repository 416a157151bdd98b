"""The card on which the lower bracket is squared to the frame, seen from above."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QPushButton, QWidget

from aligner.assessment import Assessment
from aligner.assessment.squaring import SquaringAssessment
from aligner.assessment.squaring_pair import PairAssessment
from aligner.drawing.clear_room import clear_room
from aligner.drawing.plan_view import paint_plan_view, plan_view, turn_exaggeration
from aligner.drawing.proportions import plan_proportions
from aligner.drawing.strokes import turn_arrow, words
from aligner.drawing.theme import Theme, TypeSize
from aligner.drawing.tolerance_strip import paint_strip
from aligner.job import Job, SquaringPair
from aligner.language import marked, say
from aligner.sheet.quantities import Length
from aligner.units.preferred import Preferred
from aligner.window.align.words import alike_at_first
from aligner.window.widgets.drawing_card import DrawingCard
from aligner.window.widgets.pictures import correction_words, square_words, strip_of
from aligner.window.widgets.reading_box import ReadingBox
from aligner.window.widgets.tried_choice import TriedChoice

_NAMES = {"left": marked("left side"), "right": marked("right side")}
_MOST_CELLS = 6
_LEAST_PICTURE = 60
_LEAST_WIDTH = 450
_TITLE = marked("Square, seen from above")


class SquareCard(DrawingCard):
    """The lower bracket, the frame points, and a box for each distance of the pair in hand.

    Each pair has boxes of its own, so that a text that cannot be read stays with its pair.

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
        super().__init__(theme, say(_TITLE))
        self._show = show
        self._job = Job()
        self._assessment: Assessment | None = None
        self._place = 0
        self._boxes: list[dict[str, ReadingBox]] = []
        self._shown: tuple[SquaringPair, ...] = ()
        self._note_below = ""
        self._grow_to(1)
        self.pair_choice = TriedChoice(say("pair of distances"))
        self.pair_choice.setParent(self)
        self.pair_choice.tried.connect(self._show_pair)
        self.pair_choice.chosen.connect(self._show_pair)
        self.pair_choice.went_on.connect(self.go_to_first_box)
        self.add_pair = QPushButton(say("Add a pair of points"), self)
        self.add_pair.clicked.connect(self._add_pair)

    @property
    def place(self) -> int:
        """Which pair is in hand, from nought."""
        return self._place

    @property
    def boxes(self) -> dict[str, ReadingBox]:
        """The boxes of the pair in hand, by side."""
        return self._boxes[self._place]

    def show_job(self, job: Job, assessment: Assessment) -> None:
        """Show a job's readings and what follows from them."""
        self._job, self._assessment = job, assessment
        found = assessment.squaring
        pairs = found.pairs
        self._title = say(_TITLE) if len(pairs) < 2 else say("Square")  # the choice needs the room
        self._place = min(self._place, max(len(pairs) - 1, 0))
        if len(self._shown) != len(pairs):
            self._grow_to(max(alike_at_first(self._shown, job.align.squaring), 1))
        self._shown = job.align.squaring
        self._grow_to(max(len(pairs), 1))
        for place, boxes in enumerate(self._boxes):
            for box in boxes.values():
                box.setVisible(place == self._place and bool(pairs))
        self.add_pair.setVisible(not pairs)
        self.pair_choice.setVisible(len(pairs) > 1)
        self.pair_choice.offer(
            (place, _pair_words(place, pair, found)) for place, pair in enumerate(pairs)
        )
        self.pair_choice.show_value(self._place)
        if pairs:
            self._show_readings(pairs[self._place])
        turn = found.turn.value if found.turn else None
        factor = turn_exaggeration(turn, _spread_of(found))
        said = say("turn and its ± drawn {factor} times", factor=factor) if factor > 1 else ""
        self._note_below = said if len(pairs) > 1 else ""  # the choice needs the room beside it
        self.say_note("" if len(pairs) > 1 else said)
        self.setAccessibleDescription(square_words(found, self._show))
        self.place_boxes()
        places = (box.geometry() for box in self.boxes.values())
        self.paint_if_other(job.sheet, job.align.squaring, self._place, found, *places)

    def _add_pair(self) -> None:
        self.pair_wanted.emit()
        self.boxes["left"].go_to_first_empty()

    def _show_readings(self, pair: PairAssessment) -> None:
        typed = self._job.align.squaring[self._place]
        where = f"align.squaring[{self._place}]"
        advice = self._assessment.squaring.advice if self._assessment else None
        wanted = advice.readings_needed if advice else None
        for side, estimate in (("left", pair.left), ("right", pair.right)):
            mean = (
                self._show.show_length(estimate.value_mm)
                if estimate
                else say("not read", meaning="in place of a mean")
            )
            box = self.boxes[side]
            box.show_readings(getattr(typed, side), mean, cells=min(wanted or 0, _MOST_CELLS))
            refusals = (
                notice.text
                for notice in pair.notices
                if notice.where == f"{where}.{side}" and pair.change is None
            )
            box.say_trouble(next(refusals, "") if getattr(typed, side) else "")

    def go_to_first_box(self) -> None:
        """Put the keyboard where the next reading is wanted."""
        if self._job.align.squaring:
            self.boxes["left"].go_to_first_empty()
        else:
            self.add_pair.setFocus(Qt.FocusReason.TabFocusReason)

    def go_to_odd_pair(self) -> None:
        """Show the pair that stands out where they disagree, and put the keyboard in its box."""
        found = self._assessment.squaring if self._assessment else None
        names = [pair.name for pair in found.pairs] if found else []
        if found is not None and found.odd_pair in names:
            self._show_pair(names.index(found.odd_pair))
        self.go_to_first_box()

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops, as the eye goes."""
        cells = (cell for side in _NAMES for cell in self.boxes[side].cells)
        return [self.pair_choice, *cells, self.add_pair]

    def place_boxes(self) -> None:
        room = self.room()
        width = min(self.theme.px(196), int(room.width() * 0.43))
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
        left = int(room.left() + self.title_width()) + self.theme.px(12)
        wide = int(room.right()) - left
        self.pair_choice.setGeometry(left, self.theme.px(4), wide, self.theme.px(34))
        self.ask_for_room()

    def least_size(self) -> QSize:
        box = max(box.height() for box in self.boxes.values())
        around = self.height() - self._above(self.room()).height()
        high = round(around) + box + self.theme.px(_LEAST_PICTURE)
        return QSize(self.theme.px(_LEAST_WIDTH), high)

    def _above(self, room: QRectF) -> QRectF:
        """The room between the words above the picture and the strip below it."""
        return room.adjusted(0, self.theme.px(40), 0, -self.theme.px(44))

    def _grow_to(self, count: int) -> None:
        while len(self._boxes) > count:
            for box in self._boxes.pop().values():
                for cell in box.cells:
                    cell.blockSignals(True)  # a box that goes has nothing more to say
                box.hide()
                box.deleteLater()
        while len(self._boxes) < count:
            self._boxes.append(self._make_boxes(len(self._boxes)))

    def _make_boxes(self, place: int) -> dict[str, ReadingBox]:
        boxes = {
            side: ReadingBox(
                self.theme, say(name), Length, self._show.length, guide="frame_distance"
            )
            for side, name in _NAMES.items()
        }
        for side, box in boxes.items():
            box.setParent(self)
            box.resized.connect(self.place_boxes)
            box.typed.connect(lambda r, side=side: self.typed.emit(place, side, r))
            box.kept.connect(lambda r, side=side: self.kept.emit(place, side, r))
        boxes["left"].went_on.connect(boxes["right"].go_to_first_empty)
        boxes["right"].went_on.connect(self._go_on)
        return boxes

    def paint_picture(self, painter: QPainter) -> None:
        if self._assessment is None:
            return
        found = self._assessment.squaring
        room = self.room()
        boxes = [QRectF(box.geometry()) for box in self.boxes.values() if box.isVisible()]
        picture_room = clear_room(self._above(room), boxes)
        turn = found.turn.value if found.turn else None
        proportions = plan_proportions(self._job, self._place)
        view = plan_view(picture_room, proportions, turn, _spread_of(found))
        paint_plan_view(painter, self.theme, view)
        if found.turn is not None and found.verdict.value == "out":
            self._paint_turn(painter, room, found.turn.value)
        self._paint_strip(painter)
        line = QRectF(room.left(), room.top() + self.theme.px(6), room.width(), self.theme.px(18))
        right = Qt.AlignmentFlag.AlignRight
        words(painter, self.theme, line, self._note_below, role="quiet", align=right)

    def _paint_turn(self, painter: QPainter, room: QRectF, turn_deg: float) -> None:
        to_the_left = turn_deg < 0
        line = QRectF(room.left(), room.top(), room.width(), self.theme.px(22))
        words(
            painter,
            self.theme,
            line,
            correction_words(turn_deg, self._show),
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

    def _show_pair(self, place: int) -> None:
        if self._assessment is not None:
            self._place = place
            self.show_job(self._job, self._assessment)

    def _go_on(self) -> None:
        if self._place + 1 < len(self._job.align.squaring):
            self._show_pair(self._place + 1)
            self.boxes["left"].go_to_first_empty()
        else:
            self.went_on.emit()


def _pair_words(place: int, pair: PairAssessment, found: SquaringAssessment) -> str:
    """A pair among all of them: "2 of 3, odd: frame lugs"."""
    number, count = place + 1, len(found.pairs)
    if found.disagree and pair.name == found.odd_pair:
        return say("{number} of {count}, odd: {name}", number=number, count=count, name=pair.name)
    return say("{number} of {count}: {name}", number=number, count=count, name=pair.name)


def _spread_of(found: SquaringAssessment) -> float | None:
    """What is not certain of the turn, for 95 %; degrees."""
    return found.turn.judgement.expanded_uncertainty if found.turn else None
