"""The front end with the bolts of the step in hand lit and numbered."""

from __future__ import annotations

from PySide6.QtGui import QPainter

from aligner.assessment import Assessment, StepStanding, StepState
from aligner.drawing.bolt_places import bolt_places
from aligner.drawing.front_elevation import front_elevation, paint_front_elevation
from aligner.drawing.proportions import front_proportions
from aligner.drawing.strokes import bubble
from aligner.drawing.theme import Theme
from aligner.job import Job
from aligner.window.drawing_card import DrawingCard


class BoltCard(DrawingCard):
    """Where the bolts are: filled for the step in hand, ringed twice once done."""

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme, "Where, seen from the seat")
        self._job = Job()
        self._steps: tuple[StepStanding, ...] = ()
        self._in_hand: StepStanding | None = None

    def show_step(self, job: Job, assessment: Assessment, in_hand: StepStanding | None) -> None:
        """Light the bolts of a step."""
        self._job = job
        self._steps = assessment.tightening.steps
        self._in_hand = in_hand
        self.say_note("left is the rider's left")
        where = in_hand.step.title if in_hand else "nothing left to do"
        self.setAccessibleDescription(where)
        self.update()

    def paint_picture(self, painter: QPainter) -> None:
        room = self.room()
        side = self.theme.px(30)
        room = room.adjusted(side, self.theme.px(30), -side, -6)
        picture = front_elevation(room, front_proportions(self._job))
        paint_front_elevation(painter, self.theme, picture)
        painted: dict[str, tuple[StepStanding, bool]] = {}
        for standing in self._steps:
            joint = standing.step.joint
            if joint is None:
                continue
            was_done = painted[joint][1] if joint in painted else True
            painted[joint] = (standing, was_done and standing.state is StepState.DONE)
        in_hand = self._in_hand.step.joint if self._in_hand else None
        for joint, (standing, is_done) in painted.items():
            step = standing.step
            numbers = [str(number) for number in sorted(step.bolts)] or [""]
            places = bolt_places(picture, step.joint_kind or "", step.side, len(numbers))
            for place, number in zip(places, numbers, strict=True):
                if number or joint == in_hand:
                    bubble(
                        painter,
                        self.theme,
                        place,
                        number,
                        is_lit=joint == in_hand,
                        is_done=is_done,
                    )
