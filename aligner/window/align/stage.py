"""The Align stage: readings in on the drawing, the one correction to make now in words.

To add a view to the right half: a row in `View` (align_views.py) and a case in `_make_view`.
A view is a QWidget with `show_job(job, assessment)`, with `begin()` if it takes the keyboard,
and with `stops()` where Tab walks otherwise than its widgets were made; it is imported and
made when it is first opened.
"""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from aligner.assessment import Subject
from aligner.drawing.theme import ROOM
from aligner.job.edits_align import has_readings, with_attempt_closed
from aligner.language import say
from aligner.window.align.doors import connect_heights, connect_in_line, connect_square
from aligner.window.align.entry import Entry
from aligner.window.align.height_card import HeightCard
from aligner.window.align.in_line_card import InLineCard
from aligner.window.align.square_card import SquareCard
from aligner.window.align.views import View, ViewRow, as_the_eye_goes, beyond
from aligner.window.align.words import road_words
from aligner.window.setting import Setting
from aligner.window.widgets.folding_row import FoldingRow
from aligner.window.widgets.labels import label, main_button
from aligner.window.widgets.part_stack import PartStack
from aligner.window.widgets.reading_box import ReadingBox
from aligner.window.widgets.standing_foot import StandingFoot
from aligner.window.widgets.tab_order import walk_by_tab
from aligner.window.widgets.wrapping_row import WrappingRow

#: The least width, at 100 % text, of the words between the buttons of the foot.
_WORDS_FROM = 240
#: Up to this size of text the whole foot stays on the screen; beyond, only its buttons do.
_FOOT_WHOLE = 1.6


class AlignStage(QWidget):
    """Heights, squareness and the legs' plane, each read where the gauge stands.

    Signals:
        finished: the person goes on to the tightening list.
    """

    finished = Signal()

    def __init__(self, setting: Setting) -> None:
        super().__init__()
        theme, show = setting.theme, setting.show
        self._open_job = setting.open_job
        self._theme = setting.theme
        self._show = setting.show
        self._now = setting.now
        self.height_card = HeightCard(theme, show)
        self.square_card = SquareCard(theme, show)
        self.in_line_card = InLineCard(theme, show)
        self.view = View.READINGS
        self._views: dict[View, Any] = {}
        self._ordered: list[QWidget] = []
        self.view_row = ViewRow()
        self._right = PartStack()
        self._readings = QWidget()
        self._road = label("", "small", wraps=True)
        self.measure_again = QPushButton(say("Measure again"))
        self.go_on = main_button(say("Measure again   Enter"))
        self._lay_out()
        self._connect()

    def sentence(self) -> tuple[str, str, str]:
        """What to do now, its detail, and the caution that belongs to it."""
        found = self._open_job.assessment.correction(self._show)
        return found.sentence, found.detail, found.caution

    def refresh(self) -> None:
        """Show the job as it is now."""
        job, assessment = self._open_job.job, self._open_job.assessment
        self.height_card.show_job(job, assessment)
        if self.view is View.READINGS:
            self.square_card.show_job(job, assessment)
            self.in_line_card.show_job(job, assessment)
        else:
            self._views[self.view].show_job(job, assessment)
        is_done = assessment.correction(self._show).subject is Subject.NOTHING
        self._road.setText(road_words(assessment, self._show, is_brief=is_done))
        go_on, again = say("Go on to Tighten   Enter"), say("Measure again   Enter")
        self.go_on.setText(go_on if is_done else again)
        self.measure_again.setVisible(is_done)
        self.go_on.setEnabled(is_done or has_readings(job.align))
        self._order_tabs()

    def begin(self) -> None:
        """Put the keyboard where the first reading is wanted, or on the button if none is."""
        self._page.go_to_top()
        subject = self._open_job.assessment.correction(self._show).subject
        match subject:
            case Subject.NOTHING:
                self.go_on.setFocus(Qt.FocusReason.OtherFocusReason)
            case Subject.SQUARING if self.view is View.READINGS:
                self.square_card.go_to_odd_pair()
            case Subject.IN_LINE if self.view is View.READINGS:
                self.in_line_card.go_to_first_box()
            case _:
                self.height_card.boxes["left"].go_to_first_empty()

    def open_view(self, view: View) -> None:
        """Show a view in the right half; the heights stay beside it."""
        if view is not View.READINGS and view not in self._views:
            made: Any = self._make_view(view)
            made.show_job(self._open_job.job, self._open_job.assessment)
            self._views[view] = made
            self._right.addWidget(made)
        self.view = view
        self._right.setCurrentWidget(self._views.get(view, self._readings))
        self.view_row.show_view(view)
        self.refresh()

    def go_to_view(self, view: View) -> None:
        """Show a view and put the keyboard where its work begins."""
        self.open_view(view)
        if view is View.READINGS:
            self.square_card.go_to_first_box()
        elif hasattr(self._views[view], "begin"):
            self._views[view].begin()

    def view_page(self, view: View) -> Any:
        """The page of a view that was opened."""
        return self._views[view]

    def _make_view(self, view: View) -> QWidget:
        match view:
            case View.POINTS:
                from aligner.window.align.points import PointsCard

                return PointsCard(self._theme, self._show, self._open_job)
            case View.GAUGES:
                from aligner.window.align.gauge_card import GaugeCard

                return GaugeCard(self._theme, self._show, self._open_job)
            case View.ROAD:
                from aligner.window.align.road_card import RoadCard

                return RoadCard(self._theme, self._show)
            case View.ATTEMPTS:
                from aligner.window.align.attempts_card import AttemptsCard

                return AttemptsCard(self._theme, self._show)
        raise ValueError(f"{view} has no page of its own")

    def _lay_out(self) -> None:
        right = QVBoxLayout(self._readings)
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(self._theme.px(ROOM))
        right.addWidget(self.square_card, 1)
        right.addWidget(self.in_line_card)
        self._right.addWidget(self._readings)
        cards = FoldingRow(self._theme, spacing=self._theme.px(ROOM))
        cards.add(self.height_card, 11)
        cards.add(self._right, 10)
        self._road.setMinimumWidth(self._theme.px(_WORDS_FROM))
        buttons, foot, parts = QWidget(), QWidget(), QWidget()
        together = WrappingRow(buttons)
        together.add_room()
        together.add(self.measure_again)
        together.add(self.go_on)
        views, below = WrappingRow(), WrappingRow(foot)
        is_large = self._theme.text_scale > _FOOT_WHOLE
        row = views if is_large else below
        row.add(self.view_row)
        row.add(self._road, 1)
        row.add_room()
        below.add(buttons, int(is_large))
        column = QVBoxLayout(parts)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._theme.px(ROOM))
        column.addWidget(cards, 1)
        if is_large:
            column.addLayout(views)
        self._page = StandingFoot(self, self._theme, parts, foot)
        self._page.setSpacing(ROOM)

    def _connect(self) -> None:
        height, square, in_line = self.height_card, self.square_card, self.in_line_card
        connect_heights(height, self._open_job, self._now)
        connect_square(square, self._open_job, self._now)
        connect_in_line(in_line, self._open_job, self._now)
        height.went_on.connect(self._go_to_square)
        square.went_on.connect(in_line.go_to_first_box)
        in_line.went_on.connect(lambda: self.go_on.setFocus(Qt.FocusReason.TabFocusReason))
        self._open_job.started.connect(self._forget_typing)
        self.view_row.chosen.connect(lambda view: self.go_to_view(View(view)))
        self.measure_again.clicked.connect(self._measure_again)
        self.go_on.clicked.connect(self._go_on)

    def focusNextPrevChild(self, is_next: bool) -> bool:
        """Walk as the eye goes, whatever was made last."""
        step = 1 if is_next else -1
        there = as_the_eye_goes(self._stops(), self.focusWidget(), step) or beyond(self, step)
        if there is None:
            return False
        reason = Qt.FocusReason.TabFocusReason if is_next else Qt.FocusReason.BacktabFocusReason
        there.setFocus(reason)
        return True

    def _order_tabs(self) -> None:
        """Let Tab enter the page where the eye does, from either end."""
        stops = self._stops()
        if stops != self._ordered:
            self._ordered = stops
            walk_by_tab(stops)

    def _stops(self) -> list[QWidget]:
        if self.view is View.READINGS:
            right = [*self.square_card.stops(), *self.in_line_card.stops()]
        elif hasattr(self._views[self.view], "stops"):
            right = self._views[self.view].stops()
        else:
            found = self._views[self.view].findChildren(QWidget)
            right = [each for each in found if each.focusPolicy() & Qt.FocusPolicy.TabFocus]
        foot = [*self.view_row.stops(), self.measure_again, self.go_on]
        return [*self.height_card.stops(), *right, *foot]

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.view is not View.READINGS:
            self.go_to_view(View.READINGS)
        else:
            super().keyPressEvent(event)

    def _forget_typing(self) -> None:
        for box in self.findChildren(ReadingBox):
            box.forget_typing()
        for entry in self.findChildren(Entry):
            entry.forget_typing()

    def _go_to_square(self) -> None:
        if self.view is not View.READINGS:
            self.open_view(View.READINGS)
        self.square_card.go_to_first_box()

    def _measure_again(self) -> None:
        self._open_job.edit(say("measure again"), lambda job: with_attempt_closed(job, self._now()))
        if self.view is not View.READINGS:
            self.open_view(View.READINGS)
        self.height_card.boxes["left"].go_to_first_empty()

    def _go_on(self) -> None:
        if self._open_job.assessment.correction(self._show).subject is Subject.NOTHING:
            self.finished.emit()
        else:
            self._measure_again()
