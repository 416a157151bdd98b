"""The card on which the air gaps are read and set: a section through both legs with its boxes."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QFontMetrics, QPainter

from aligner.assessment.build import BuildAssessment
from aligner.drawing.leg_section import (
    LegSection,
    LegSections,
    leg_sections,
    paint_gap,
    paint_leg_sections,
    paint_suction_dimension,
)
from aligner.drawing.strokes import arrow, words
from aligner.drawing.theme import Theme, TypeSize
from aligner.drawing.tolerance_strip import paint_strip
from aligner.gauging import Remedy, Verdict
from aligner.job import Job
from aligner.language import marked, say
from aligner.sheet import ForkKind
from aligner.sheet.quantities import Length
from aligner.units.preferred import Preferred
from aligner.window.build.results import difference_words, leg_line, leg_words
from aligner.window.widgets.drawing_card import DrawingCard
from aligner.window.widgets.pictures import strip_of
from aligner.window.widgets.reading_box import ReadingBox

_GAPS = {"left": marked("left gap"), "right": marked("right gap")}


class OilCard(DrawingCard):
    """Both legs cut open, with a box for each air gap where the gauge goes in.

    Signals:
        typed: side and readings, while they are being typed.
        kept: side and readings, when a cell is left.
        went_on: Enter after the last reading of the right leg.
    """

    typed = Signal(str, object)
    kept = Signal(str, object)
    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(theme, say("Air gap, spring out, leg compressed"))
        self._show = show
        self._job = Job()
        self._found: BuildAssessment | None = None
        self.boxes = {
            side: ReadingBox(theme, say(words), Length, show.length, guide="air_gap")
            for side, words in _GAPS.items()
        }
        for side, box in self.boxes.items():
            box.setParent(self)
            box.resized.connect(self.place_boxes)
            box.typed.connect(lambda readings, side=side: self.typed.emit(side, readings))
            box.kept.connect(lambda readings, side=side: self.kept.emit(side, readings))
        self.boxes["left"].went_on.connect(self.boxes["right"].go_to_first_empty)
        self.boxes["right"].went_on.connect(self.went_on)
        self.setMinimumHeight(theme.px(396))

    def show_job(self, job: Job, found: BuildAssessment) -> None:
        """Show a job's readings and what follows from them."""
        self._job, self._found = job, found
        oil = found.oil
        advice = found.advice
        wants_more = advice is not None and advice.remedy is Remedy.MORE_READINGS
        wanted = advice.readings_needed if advice is not None and wants_more else None
        for side in _GAPS:
            gap = oil.leg(side).gap
            mean = self._show.show_length(gap.value_mm) if gap else say("not read")
            readings = getattr(job.build, side).gap
            self.boxes[side].show_readings(readings, mean, cells=min(wanted or 0, 8))
        factor = self._sections(QRectF(0, 0, 100, 100)).factor
        self.say_note(
            say("level drawn {factor} times", factor=factor)
            if factor > 1
            else say("seen from the seat")
        )
        lines = [leg_line(side, oil.leg(side), self._show) for side in _GAPS]
        self.setAccessibleDescription(". ".join([*lines, difference_words(oil, self._show)]))
        self.place_boxes()
        self.update()

    def place_boxes(self) -> None:
        room = self.room()
        width = int(self._box_width())
        for side, box in self.boxes.items():
            height = box.height_at(width)
            left = room.left() if side == "left" else room.right() - width
            box.setGeometry(int(left), int(room.top()), width, height)

    def paint_picture(self, painter: QPainter) -> None:
        if self._found is None:
            return
        room = self._picture_room()
        sections = self._sections(room)
        paint_leg_sections(painter, self.theme, sections)
        depth = self._show.show_length(self._found.oil.suction_depth_mm or 0.0)
        said = say("suction tube {depth}", depth=depth)
        paint_suction_dimension(painter, self.theme, sections, said)
        for side, leg in (("left", sections.left), ("right", sections.right)):
            paint_gap(painter, self.theme, leg, to_the_left=side == "left")
            self._paint_what_to_do(painter, side, leg, sections.wanted_y)
        self._paint_strip(painter)

    def _sections(self, room: QRectF) -> LegSections:
        oil = self._found.oil if self._found else None
        gaps = (None, None)
        if oil is not None:
            left, right = oil.left.gap, oil.right.gap
            gaps = (left.value_mm if left else None, right.value_mm if right else None)
        return leg_sections(
            room,
            oil.wanted_mm if oil else None,
            gaps,
            is_upside_down=self._job.sheet.fork.kind is ForkKind.UPSIDE_DOWN,
        )

    def _box_width(self) -> float:
        return float(min(self.theme.px(186), int(self.room().width() * 0.34)))

    def _picture_room(self) -> QRectF:
        room = self.room()
        side = self._box_width() + self.theme.px(6)
        foot = self.theme.px(30) + self._said_height()
        return room.adjusted(side, self.theme.px(20), -side, -foot)

    def _paint_what_to_do(
        self, painter: QPainter, side: str, leg: LegSection, wanted_y: float | None
    ) -> None:
        if self._found is None:
            return
        found = self._found.oil.leg(side)
        text = leg_words(found, self._show)
        if not text:
            return
        room = self.room()
        box = self.boxes[side]
        top = max(float(box.geometry().bottom() + 8), leg.tube.top())
        width = self._box_width()
        left = room.left() if side == "left" else room.right() - width
        height = self.theme.px(48)
        align = Qt.AlignmentFlag.AlignRight if side == "left" else Qt.AlignmentFlag.AlignLeft
        place = QRectF(left, top, width, height)
        has_arrow = found.verdict is Verdict.OUT and wanted_y is not None
        if has_arrow and wanted_y is not None:
            x = (
                place.right() - self.theme.px(12)
                if side == "left"
                else (place.left() + self.theme.px(12))
            )
            rises = (found.against_wanted.value if found.against_wanted else 0.0) > 0
            y0, y1 = place.top() + 6, place.bottom() - 6
            start, end = (y1, y0) if rises else (y0, y1)
            color = self.theme.color("accent")
            arrow(painter, color, QPointF(x, start), QPointF(x, end), 3.5)
            inset = self.theme.px(30)
            place = (
                place.adjusted(0, 0, -inset, 0)
                if side == "left"
                else place.adjusted(inset, 0, 0, 0)
            )
        words(
            painter,
            self.theme,
            place,
            text,
            role="accent" if found.verdict is Verdict.OUT else "ink",
            size=TypeSize.TEXT,
            bold=True,
            align=align,
        )

    def _said_height(self) -> int:
        """Height of the words over the strip: a language of long words takes a second line."""
        said = difference_words(self._found.oil, self._show) if self._found else ""
        metrics = QFontMetrics(self.theme.font(TypeSize.TEXT, bold=True))
        lines = 2 if metrics.horizontalAdvance(said) > self.room().width() else 1
        return lines * self.theme.px(24)

    def _paint_strip(self, painter: QPainter) -> None:
        if self._found is None:
            return
        oil = self._found.oil
        room = self.room()
        height = self.theme.px(14)
        box = QRectF(room.left(), room.bottom() - height, room.width(), height)
        said = self._said_height()
        line = QRectF(room.left(), box.top() - self.theme.px(6) - said, room.width(), said)
        is_out = oil.difference is not None and oil.difference.verdict is Verdict.OUT
        words(
            painter,
            self.theme,
            line,
            difference_words(oil, self._show),
            role="attention" if is_out else "ink",
            size=TypeSize.TEXT,
            bold=True,
        )
        strip = strip_of(oil.difference)
        if strip is not None:
            paint_strip(painter, self.theme, box, strip)
