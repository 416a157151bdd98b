"""The front end with the bolts of the step in hand lit and numbered."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter

from aligner.assessment import Assessment, StepStanding, StepState
from aligner.drawing.bolt_places import bolt_places, kept_apart
from aligner.drawing.fittings import fittings, paint_fittings
from aligner.drawing.front_elevation import FrontElevation, front_elevation, paint_front_elevation
from aligner.drawing.proportions import front_proportions
from aligner.drawing.strokes import bubble, narrow_line, words
from aligner.drawing.theme import Theme
from aligner.job import Job
from aligner.language import say
from aligner.sheet import Side
from aligner.window.widgets.drawing_card import DrawingCard

_LEAST_WIDTH = 230
_LEAST_HEIGHT = 340


@dataclass(frozen=True)
class _Bolt:
    """One bolt in the picture; its number is "" where the joint is single."""

    joint: str
    number: str
    place: QPointF
    is_done: bool


class BoltCard(DrawingCard):
    """Where the bolts are: filled for the step in hand, ringed twice once done."""

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme, say("Where, seen from the seat"))
        self._job = Job()
        self._steps: tuple[StepStanding, ...] = ()
        self._in_hand: StepStanding | None = None

    def show_step(self, job: Job, assessment: Assessment, in_hand: StepStanding | None) -> None:
        """Light the bolts of a step."""
        self._job = job
        self._steps = assessment.tightening.steps
        self._in_hand = in_hand
        where = in_hand.step.title if in_hand else say("nothing left to do")
        self.setAccessibleDescription(where)
        self.update()

    def least_size(self) -> QSize:
        return QSize(self.theme.px(_LEAST_WIDTH), self.theme.px(_LEAST_HEIGHT))

    def paint_picture(self, painter: QPainter) -> None:
        joints = self._joints()
        picture = front_elevation(
            self.room().adjusted(0, self.theme.px(30), 0, -self.theme.px(36)),
            front_proportions(self._job),
            has_fittings=True,
            has_handlebar_above=any(kind == "handlebar_clamp_above" for kind, _, _ in joints),
        )
        apart = self.theme.px(28)
        bolted_on = fittings(picture, joints)
        paint_fittings(painter, self.theme, (part for part in bolted_on if part.depth < 0))
        paint_front_elevation(painter, self.theme, picture)
        paint_fittings(painter, self.theme, (part for part in bolted_on if part.depth > 0))
        in_hand = self._in_hand.step.joint if self._in_hand else None
        bolts = self._bolts(picture, in_hand)
        places = kept_apart([bolt.place for bolt in bolts], apart, QRectF(self.rect()))
        self._name_sides(painter, picture, max((place.y() for place in places), default=0.0))
        for bolt, place in zip(bolts, places, strict=True):
            if place != bolt.place:
                narrow_line(painter, self.theme, bolt.place, place)
        for bolt, place in zip(bolts, places, strict=True):
            is_lit = bolt.joint == in_hand
            bubble(painter, self.theme, place, bolt.number, is_lit=is_lit, is_done=bolt.is_done)

    def _joints(self) -> set[tuple[str, str, int]]:
        """Kind, side and number of bolts of every joint of the list."""
        steps = (standing.step for standing in self._steps)
        return {
            (step.joint_kind, step.side, max(len(step.bolts), 1))
            for step in steps
            if step.joint is not None
        }

    def _bolts(self, picture: FrontElevation, in_hand: str | None) -> list[_Bolt]:
        """Every numbered bolt, and the joint in hand even where it has no numbers."""
        steps: dict[str, list[StepStanding]] = {}
        for standing in self._steps:
            if standing.step.joint is not None:
                steps.setdefault(standing.step.joint, []).append(standing)
        found = []
        for joint, standings in steps.items():
            step = standings[0].step
            is_done = all(each.state is StepState.DONE for each in standings)
            numbers = [str(number) for number in sorted(step.bolts)] or [""]
            if numbers == [""] and joint != in_hand:
                continue
            places = bolt_places(
                picture, step.joint_kind, step.side, len(numbers), self.theme.px(28)
            )
            found += [
                _Bolt(joint, number, place, is_done)
                for number, place in zip(numbers, places, strict=True)
            ]
        return found

    def _name_sides(self, painter: QPainter, picture: FrontElevation, lowest: float) -> None:
        """The rider's left and right under the legs and under the lowest of the bolts."""
        legs = ((Side.LEFT.words, picture.left_slider), (Side.RIGHT.words, picture.right_slider))
        for name, slider in legs:
            high = self.theme.px(18)
            below = max(slider.bottom() + 8, lowest + self.theme.px(15))
            below = min(below, self.height() - high - 2)
            box = QRectF(slider.center().x() - 60, below, 120, high)
            centred = Qt.AlignmentFlag.AlignHCenter
            words(painter, self.theme, box, name, role="quiet", align=centred)
