"""What is missing on the sheet: counted, listed, and each a button that leads to its box."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from aligner.assessment.missing import MissingValue, missing_for, not_given
from aligner.drawing.theme import GAP, Theme
from aligner.job import Job
from aligner.job.edits_sheet_sides import lacking_on_one_side
from aligner.language import say, say_count
from aligner.window.bike.boxes import HEIGHT
from aligner.window.widgets.labels import Card
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.wrapping_row import WrappingRow

_IN_A_ROW = 4
_SHOWN = 8


class MissingCard(Card):
    """The list of what is missing; hidden when nothing is.

    Signals:
        wanted: the path of a value that is to be filled in.
        other_side_wanted: torques typed for one side are to be those of the other.
        laid_out: other values are listed.
    """

    wanted = Signal(str)
    other_side_wanted = Signal()
    laid_out = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._shown: tuple[tuple[MissingValue, ...], tuple[MissingValue, ...]] = ((), ())
        self._is_whole = False
        self.links: list[QPushButton] = []
        self._title = wrapping("", "strong")
        self._grid = QGridLayout()
        self._grid.setSpacing(GAP)
        for column in range(_IN_A_ROW):
            self._grid.setColumnStretch(column, 1)
        self.more = QPushButton("")
        self.more.clicked.connect(self._show_more)
        self.other_side = QPushButton("")
        self.other_side.clicked.connect(self.other_side_wanted)
        buttons = WrappingRow()
        for button in (self.other_side, self.more):
            button.setMinimumHeight(theme.px(HEIGHT))
            buttons.add(button)
        self.column.addWidget(self._title)
        self.column.addLayout(self._grid)
        self.column.addLayout(buttons)

    def show_job(self, job: Job) -> None:
        """List what the sheet lacks of what the job asks for."""
        missing, absent = missing_for(job), not_given(job.sheet)
        if (missing, absent) != self._shown:
            self._shown = (missing, absent)
            self._lay_out()
        alike = len(lacking_on_one_side(job.sheet))
        self.other_side.setText(
            say_count(
                "Take {count} torque from the other side",
                "Take {count} torques from the other side",
                alike,
            )
        )
        self.other_side.setVisible(bool(alike))
        self.setVisible(bool(missing or absent))

    def _lay_out(self) -> None:
        for link in self.links:
            self._grid.removeWidget(link)
            link.hide()
            link.deleteLater()
        missing, absent = self._shown
        everything = (*missing, *absent)
        self._title.setText(_count_words(len(missing), len(absent)))
        self.links = []
        for at, value in enumerate(everything if self._is_whole else everything[:_SHOWN]):
            link = QPushButton(value.name)
            link.setAccessibleName(say("Missing: {value}. Go to its box", value=value.name))
            link.setMinimumHeight(self._theme.px(HEIGHT))
            link.clicked.connect(lambda _=False, path=value.path: self.wanted.emit(path))
            self._grid.addWidget(link, at // _IN_A_ROW, at % _IN_A_ROW)
            link.show()  # now: it may be given the keyboard before the layout would show it
            self.links.append(link)
        self.more.setVisible(len(everything) > _SHOWN)
        everything_words = say("Show all {number}", number=len(everything))
        self.more.setText(say("Show fewer") if self._is_whole else everything_words)
        self.laid_out.emit()

    def stops(self) -> list[QWidget]:
        """Where Tab stops, in order."""
        return [*self.links, self.other_side, self.more]

    def go_to_first(self) -> None:
        """Put the keyboard on what fills most at once: the other side, or the first value."""
        first = self.links[0] if self.other_side.isHidden() else self.other_side
        first.setFocus(Qt.FocusReason.TabFocusReason)

    def _show_more(self) -> None:
        self._is_whole = not self._is_whole
        self._lay_out()


def _count_words(missing: int, absent: int) -> str:
    if not missing:
        return say_count(
            "{count} dimension not given: each leads to its box",
            "{count} dimensions not given: each leads to its box",
            absent,
        )
    if not absent:
        return say("{missing} missing: each leads to its box", missing=missing)
    return say_count(
        "{missing} missing, {count} dimension not given: each leads to its box",
        "{missing} missing, {count} dimensions not given: each leads to its box",
        absent,
        missing=missing,
    )
