"""The history: every job in the folder as a list, to search, to open, and to begin the next from.

The trap: a folder of ten thousand jobs takes a second to read. So rows come in as they are
read, a few at a time between one paint and the next, and can be used from the first.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from time import perf_counter

from PySide6.QtCore import QModelIndex, Qt, QTimer, Signal
from PySide6.QtGui import QFontMetrics, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFileDialog,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QPushButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from aligner.drawing.theme import GAP, ROOM, Theme, TypeSize
from aligner.language import say, say_count
from aligner.storage.history import JobRow, JobState, jobs_in
from aligner.window.history.model import HistoryModel
from aligner.window.history.settings_card import MOST_JOBS, SettingsCard
from aligner.window.widgets.labels import label, main_button
from aligner.window.widgets.standing_foot import StandingFoot

#: Widths of the columns at 100 % text; the last one takes what is left over.
_WIDTHS = (150, 200, 112, 150, 390)
#: The height of a row, at 100 % text, from each share of the widths that there is room for.
_HEIGHTS = ((1.0, 34), (0.6, 50), (0.0, 68))
#: The least height of the list, at 100 % text: its head and two jobs.
_LEAST_OF_LIST = 140
_DAY, _STATE = 2, 3
_A_TURN_S = 0.008  # how long rows are read before the window may paint again


class JobTable(QTableView):
    """The list; Enter opens the job that is chosen in it."""

    opened = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Where the columns do not fit, make them narrower, and let their words wrap."""
        super().resizeEvent(event)
        widths = [self._theme.px(width) for width in _WIDTHS]
        metrics = QFontMetrics(self._theme.font(TypeSize.TEXT))
        states = (metrics.horizontalAdvance(say(state.value)) for state in JobState)
        widths[_STATE] = max(states) + self._theme.px(GAP)
        day = widths.pop(_DAY)  # a day that is cut off says another one
        share = min(1.0, (self.viewport().width() - day) / sum(widths))
        self.setWordWrap(share < 1.0)
        high = next(high for least, high in _HEIGHTS if share >= least)
        self.verticalHeader().setDefaultSectionSize(self._theme.px(high))
        widths = [int(width * share) for width in widths]
        widths.insert(_DAY, day)
        for column, width in enumerate(widths[:-1]):
            self.setColumnWidth(column, width)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.opened.emit()
        else:
            super().keyPressEvent(event)


class HistoryPage(QWidget):
    """The folder of jobs.

    Signals:
        open_wanted: a job's file is to be opened.
        next_wanted: a new job is to be begun from the one in that file.
        folder_chosen: another folder is looked in from now on.
        read_all: every job of the folder is on the list.
        changed: there is something else to say of the list.
        left: Escape: back to the job.
    """

    open_wanted = Signal(Path)
    next_wanted = Signal(Path)
    folder_chosen = Signal(Path)
    read_all = Signal()
    changed = Signal()
    left = Signal()

    def __init__(self, theme: Theme, folder: Path) -> None:
        super().__init__()
        self._theme = theme
        self._folder = folder
        self._coming: Iterator[JobRow] = iter(())
        self._turns = QTimer(self)
        self._turns.timeout.connect(self._read_some)
        self.search = QLineEdit()
        self.search.setAccessibleName(say("search the jobs"))
        self.search.setPlaceholderText(say("search: bike, job, day or what is due"))
        self.search.setClearButtonEnabled(True)
        self.folder_button = QPushButton(say("Another folder..."))
        self.model = HistoryModel()
        self.table = JobTable(theme)
        self.table.setAccessibleName(say("jobs"))
        self._set_up_table()
        self.settings = SettingsCard(theme)
        self._where = label("", "small", wraps=True)
        self.next_button = QPushButton(say("Next job on this bike"))
        self.open_button = main_button(say("Open   Enter"))
        self._lay_out()
        self.search.textChanged.connect(self._search)
        self.search.returnPressed.connect(self._go_to_list)
        self.folder_button.clicked.connect(self._choose_folder)
        self.table.opened.connect(self._open)
        self.table.doubleClicked.connect(self._open)
        self.table.selectionModel().currentRowChanged.connect(self._chosen)
        self.open_button.clicked.connect(self._open)
        self.next_button.clicked.connect(self._begin_next)

    def sentence(self) -> tuple[str, ...]:
        """How many jobs there are, and what is due."""
        rows = self.model.all_rows
        if self._turns.isActive():
            so_far = say_count("{count} jobs so far.", "{count} jobs so far.", len(rows))
            return so_far, say("The folder is being read."), ""
        if not rows:
            return (
                say("No jobs in this folder yet."),
                say("A job that is saved here stands on this list."),
                "",
            )
        due = sum(row.state is JobState.DUE for row in rows)
        in_hand = sum(row.state is JobState.IN_HAND for row in rows)
        standing = say("{in_hand} in hand, {due} signed with checks due.", in_hand=in_hand, due=due)
        return say_count("{count} job.", "{count} jobs.", len(rows)), standing, ""

    def refresh(self) -> None:
        """Nothing here depends on the job that is open."""

    def begin(self) -> None:
        """Read the folder, and put the keyboard in the search box."""
        self.read()
        self.search.setFocus(Qt.FocusReason.OtherFocusReason)

    def read(self, folder: Path | None = None) -> None:
        """Read the folder, or another one from now on."""
        self._folder = folder or self._folder
        self._chosen(QModelIndex())
        self._where.setText(say("in {folder}", folder=self._folder))
        self.model.start()
        self._coming = jobs_in(self._folder)
        self._turns.start(0)

    @property
    def chosen(self) -> JobRow | None:
        """The row that is chosen, if one is."""
        row = self.table.currentIndex().row()
        return self.model.rows[row] if 0 <= row < len(self.model.rows) else None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)

    def _set_up_table(self) -> None:
        table = self.table
        table.setModel(self.model)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setTabKeyNavigation(False)
        table.setShowGrid(False)
        table.verticalHeader().hide()
        header = table.horizontalHeader()
        header.setHighlightSections(False)
        header.setSectionsClickable(True)
        header.setSortIndicatorShown(True)
        header.setSortIndicator(2, Qt.SortOrder.DescendingOrder)
        header.sortIndicatorChanged.connect(self._sort)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(4, QHeaderView.ResizeMode.Stretch)

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.addWidget(self.search, 1)
        head.addWidget(self.folder_button)
        foot, parts = QWidget(), QWidget()
        buttons = QHBoxLayout(foot)
        buttons.setContentsMargins(0, 0, 0, 0)
        buttons.addWidget(self._where, 1)
        buttons.addWidget(self.next_button)
        buttons.addWidget(self.open_button)
        self.table.setMinimumHeight(self._theme.px(_LEAST_OF_LIST))
        column = QVBoxLayout(parts)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(GAP)
        column.addLayout(head)
        column.addWidget(self.table, 3)
        column.addWidget(self.settings, 2)
        StandingFoot(self, self._theme, parts, foot).setSpacing(ROOM)
        self.settings.hide()
        self._chosen(QModelIndex())

    def _read_some(self) -> None:
        until = perf_counter() + _A_TURN_S
        rows = []
        for row in self._coming:
            rows.append(row)
            if perf_counter() > until:
                self._keep_choice(lambda: self.model.add(rows))
                return
        self._turns.stop()
        self._keep_choice(lambda: self.model.add(rows))
        self.changed.emit()
        self.read_all.emit()

    def _search(self, text: str) -> None:
        self._keep_choice(lambda: self.model.search(text))

    def _sort(self, column: int, order: Qt.SortOrder) -> None:
        self._keep_choice(lambda: self.model.sort(column, order))

    def _keep_choice(self, change: Callable[[], None]) -> None:
        """Change the rows; the job that was chosen stays chosen where it is still shown."""
        chosen = self.chosen
        change()
        for place, row in enumerate(self.model.rows):
            if chosen is not None and row.path == chosen.path:
                self.table.selectRow(place)
                return
        self._chosen(QModelIndex())

    def _go_to_list(self) -> None:
        if self.model.rows:
            self.table.setFocus(Qt.FocusReason.TabFocusReason)
            self.table.selectRow(max(0, self.table.currentIndex().row()))

    def _chosen(self, _: QModelIndex) -> None:
        row = self.chosen
        self.open_button.setEnabled(row is not None)
        self.next_button.setEnabled(row is not None and row.state is not JobState.UNREADABLE)
        if row is None:
            self.settings.hide()
            return
        bike = row.bike.casefold()
        same_bike = [
            each
            for each in self.model.all_rows
            if each.bike.casefold() == bike and each.state is not JobState.UNREADABLE
        ]
        same_bike.sort(key=lambda each: each.day)
        self.settings.show_bike(row.bike, [each.path for each in same_bike[-MOST_JOBS:]])

    def _open(self) -> None:
        if self.chosen is not None:
            self.open_wanted.emit(self.chosen.path)

    def _begin_next(self) -> None:
        if self.chosen is not None:
            self.next_wanted.emit(self.chosen.path)

    def _choose_folder(self) -> None:
        title = say("Folder of the jobs")
        name = QFileDialog.getExistingDirectory(self, title, str(self._folder))
        if name:
            self.read(Path(name))
            self.folder_chosen.emit(Path(name))
