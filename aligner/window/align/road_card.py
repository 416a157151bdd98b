"""The card on what the heights do on the road: the bike from the side, its figures, what if.

The trap: the slider supposes, it never edits. What it is at lives in this card alone, and the
job stays as it is.
"""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from aligner.assessment import Assessment, Notice
from aligner.assessment.road_figures import RoadTable, WhatIf, road_table, what_if
from aligner.assessment.steering import missing_for_steering
from aligner.drawing.proportions import side_proportions
from aligner.drawing.side_view import change_exaggeration
from aligner.drawing.theme import GAP, Theme
from aligner.job import Job
from aligner.language import marked, say
from aligner.units.preferred import Preferred
from aligner.window.align.raise_entry import RaiseEntry
from aligner.window.align.road_figures_words import (
    change_drawn,
    dimension_words,
    drawn_state,
    drawn_words,
    missing_words,
    reference_words,
)
from aligner.window.align.road_table import RoadTableView
from aligner.window.align.side_picture import SidePicture
from aligner.window.widgets.folding_card import FoldingCard
from aligner.window.widgets.labels import label

_WHAT_IF = marked("What if both legs were raised? It edits nothing.")


class RoadCard(FoldingCard):
    """The bike from the side with its dimensions, a table of figures, and a slider."""

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(theme, spacing=theme.px(GAP))
        self._show = show
        self._job = Job()
        self._assessment: Assessment | None = None
        self._supposed = WhatIf(0.0, None)
        self._is_stale = False
        self.setAccessibleName(say("On the road, seen from the side"))
        self.picture = SidePicture(theme)
        self.entry = RaiseEntry(theme, show)
        self._table = RoadTableView(theme, show)
        self._title = label("", "strong")
        self._drawn = label("", "small", wraps=True)
        self.turn_round = QPushButton(say("Turn round"))
        self._missing = label("", "small", wraps=True, tone="attention")
        self._reference = label("", "small", wraps=True)
        self._lay_out()
        self.turn_round.clicked.connect(self._turn_round)
        self.entry.supposed.connect(self._suppose)
        self._say_side()

    def show_job(self, job: Job, assessment: Assessment) -> None:
        """Show what a job's heights do on the road; the raise supposed stays as it is."""
        self._job, self._assessment = job, assessment
        self._is_stale = not self.isVisible()
        if not self._is_stale:
            self._refresh()

    def stops(self) -> list[QWidget]:
        """What the keyboard stops at, as the eye goes."""
        entries = [self.turn_round, self.entry.slider, self.entry.box, self.entry.nought]
        return [*entries, *(super().stops() if self.is_longer_than_the_card else [])]

    def begin(self) -> None:
        """Put the keyboard on the slider."""
        self.entry.slider.setFocus(Qt.FocusReason.TabFocusReason)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._is_stale:
            self._is_stale = False
            self._refresh()

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.addWidget(self._title)
        head.addStretch(1)
        head.addWidget(self.turn_round)
        self.column.addLayout(head)
        beside, below = QWidget(), QWidget()
        left = QVBoxLayout(beside)
        left.setContentsMargins(0, 0, 0, 0)
        left.setSpacing(2)
        left.addWidget(self.picture, 1)
        left.addWidget(self._drawn)
        left.addWidget(self._missing)
        self._missing.hide()
        right = QVBoxLayout(below)
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(4)
        right.addWidget(label(say(_WHAT_IF), "small", wraps=True))
        right.addWidget(self.entry)
        right.addWidget(self._table)
        right.addStretch(1)
        right.addWidget(self._reference)
        self.parts.add(beside, 11)
        self.parts.add(below, 10)
        self.add_parts()

    def _refresh(self) -> None:
        if self._assessment is None:
            return
        self._supposed = what_if(self._job, self._supposed.rise_mm)
        found = self._assessment.steering
        table = road_table(self._job, found, self._supposed)
        self._table.show_table(table, self._supposed)
        self._reference.setText(reference_words(table, self._show))
        figures = self._draw(table, found.notices)
        # Where the sheet itself is refused, that is said under the drawing, not at the box.
        self.entry.show_supposed(self._supposed, figures, is_refused=not found.notices)

    def _draw(self, table: RoadTable, refused: tuple[Notice, ...]) -> str:
        """Draw the state that is looked at; the figures drawn, in words."""
        state = drawn_state(table, self._supposed)
        proportions = side_proportions(self._job)
        change = change_drawn(table, state)
        dimensions = dimension_words(table, state, self._show)
        self.picture.show_picture(proportions, change, dimensions)
        drawn = drawn_words(state, self._supposed, change_exaggeration(change), self._show)
        self._drawn.setText(drawn)
        lacking = missing_words(missing_for_steering(self._job), proportions)
        why = " ".join((*(notice.text for notice in refused), lacking)).strip()
        self._missing.setText(why)
        self._missing.setVisible(bool(why))
        figures = ", ".join(said.text for said in dimensions.values())
        self.picture.setAccessibleName(f"{self._title.text()}, {drawn}")
        self.picture.setAccessibleDescription(figures)
        return figures

    def _suppose(self, rise_mm: float) -> None:
        self._supposed = WhatIf(rise_mm, None)
        self._refresh()

    def _turn_round(self) -> None:
        self.picture.is_from_the_right = not self.picture.is_from_the_right
        self._say_side()
        self._refresh()

    def _say_side(self) -> None:
        if self.picture.is_from_the_right:
            title = say("On the road, seen from the right")
            turn_round = say("Turn round: see it from the left")
        else:
            title = say("On the road, seen from the left")
            turn_round = say("Turn round: see it from the right")
        self._title.setText(title)
        self.turn_round.setAccessibleName(turn_round)
