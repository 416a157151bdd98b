"""The Align stage: readings in on the drawing, the one correction to make now in words."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from aligner.assessment import Subject
from aligner.drawing.theme import ROOM, Theme
from aligner.job.edits import (
    has_readings,
    with_another_pair,
    with_attempt_closed,
    with_distances,
    with_plate,
    with_protrusion,
)
from aligner.units.preferred import Preferred
from aligner.window.height_card import HeightCard
from aligner.window.in_line_card import InLineCard, road_words
from aligner.window.labels import label, main_button
from aligner.window.open_job import OpenJob
from aligner.window.square_card import SquareCard


class AlignStage(QWidget):
    """Heights, squareness and the legs' plane, each read where the gauge stands.

    Signals:
        finished: the person goes on to the tightening list.
    """

    finished = Signal()

    def __init__(
        self,
        open_job: OpenJob,
        theme: Theme,
        show: Preferred,
        now: Callable[[], datetime],
    ) -> None:
        super().__init__()
        self._open_job = open_job
        self._show = show
        self.height_card = HeightCard(theme, show)
        self.square_card = SquareCard(theme, show)
        self.in_line_card = InLineCard(theme, show)
        self._attempt = label("", "small", wraps=True)
        self.measure_again = QPushButton("Measure again")
        self.go_on = main_button("Measure again   Enter")
        right = QVBoxLayout()
        right.setSpacing(ROOM)
        right.addWidget(self.square_card, 1)
        right.addWidget(self.in_line_card)
        cards = QHBoxLayout()
        cards.setSpacing(ROOM)
        cards.addWidget(self.height_card, 11)
        cards.addLayout(right, 10)
        foot = QHBoxLayout()
        foot.addWidget(self._attempt, 1)
        foot.addWidget(self.measure_again)
        foot.addWidget(self.go_on)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(ROOM)
        column.addLayout(cards, 1)
        column.addLayout(foot)
        self._connect(open_job, now)

    def sentence(self) -> tuple[str, str, str]:
        """What to do now, its detail, and the caution that belongs to it."""
        found = self._open_job.assessment.correction(self._show)
        return found.sentence, found.detail, found.caution

    def refresh(self) -> None:
        """Show the job as it is now."""
        job, assessment = self._open_job.job, self._open_job.assessment
        self.height_card.show_job(job, assessment)
        self.square_card.show_job(job, assessment)
        self.in_line_card.show_job(job, assessment)
        attempt = f"Attempt {len(job.attempts) + 1} of this alignment."
        road = road_words(assessment, self._show)
        self._attempt.setText(f"{road} {attempt}".strip())
        is_done = assessment.correction(self._show).subject is Subject.NOTHING
        self.go_on.setText("Go on to Tighten   Enter" if is_done else "Measure again   Enter")
        self.measure_again.setVisible(is_done)
        self.go_on.setEnabled(is_done or has_readings(job.align))

    def begin(self) -> None:
        """Put the keyboard where the first reading is wanted, or on the button if none is."""
        if self._open_job.assessment.correction(self._show).subject is Subject.NOTHING:
            self.go_on.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self.height_card.boxes["left"].go_to_first_empty()

    def _connect(self, open_job: OpenJob, now: Callable[[], datetime]) -> None:
        height, square, in_line = self.height_card, self.square_card, self.in_line_card
        height.typed.connect(
            lambda side, r: open_job.draft(lambda job: with_protrusion(job, side, r, now()))
        )
        height.kept.connect(
            lambda side, r: open_job.edit(
                f"height of the {side} leg", lambda job: with_protrusion(job, side, r, now())
            )
        )
        square.typed.connect(
            lambda place, side, r: open_job.draft(
                lambda job: with_distances(job, place, side, r, now())
            )
        )
        square.kept.connect(
            lambda place, side, r: open_job.edit(
                f"distance on the {side}",
                lambda job: with_distances(job, place, side, r, now()),
            )
        )
        square.pair_wanted.connect(
            lambda: open_job.edit("pair of distances", lambda job: with_another_pair(job, now()))
        )
        in_line.typed.connect(
            lambda changes: open_job.draft(lambda job: with_plate(job, now(), **changes))
        )
        in_line.changed.connect(
            lambda changes: open_job.edit(
                "plate reading", lambda job: with_plate(job, now(), **changes)
            )
        )
        height.went_on.connect(square.go_to_first_box)
        square.went_on.connect(in_line.gap.go_to_first_empty)
        in_line.went_on.connect(lambda: self.go_on.setFocus(Qt.FocusReason.TabFocusReason))
        self.measure_again.clicked.connect(lambda: self._measure_again(now))
        self.go_on.clicked.connect(lambda: self._go_on(now))

    def _measure_again(self, now: Callable[[], datetime]) -> None:
        self._open_job.edit("measure again", lambda job: with_attempt_closed(job, now()))
        self.height_card.boxes["left"].go_to_first_empty()

    def _go_on(self, now: Callable[[], datetime]) -> None:
        if self._open_job.assessment.correction(self._show).subject is Subject.NOTHING:
            self.finished.emit()
        else:
            self._measure_again(now)
