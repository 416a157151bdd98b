"""The list of jobs as a table: rows come in as they are read, sorted and searched here."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt

from aligner.language import marked, say
from aligner.storage.history import JobRow

HEADINGS = (
    marked("Bike"),
    marked("Job"),
    marked("Last day"),
    marked("State"),
    marked("Due"),
)
_KEYS = (
    lambda row: (row.bike.casefold(), row.day),
    lambda row: (row.title.casefold(), row.day),
    lambda row: row.day,
    lambda row: (row.state.value, row.day),
    lambda row: (row.due.casefold(), row.day),
)
_Index = QModelIndex | QPersistentModelIndex
_TOP = QModelIndex()


class HistoryModel(QAbstractTableModel):
    """All the jobs met so far, and of those the ones that are shown."""

    def __init__(self) -> None:
        super().__init__()
        self._all: list[JobRow] = []
        self._shown: list[JobRow] = []
        self._words: tuple[str, ...] = ()
        self._column = 2
        self._descending = True

    @property
    def rows(self) -> tuple[JobRow, ...]:
        """The rows shown, in their order."""
        return tuple(self._shown)

    @property
    def all_rows(self) -> tuple[JobRow, ...]:
        """Every row there is."""
        return tuple(self._all)

    def start(self) -> None:
        """Begin anew, without rows."""
        self.beginResetModel()
        self._all, self._shown = [], []
        self.endResetModel()

    def add(self, rows: Iterable[JobRow]) -> None:
        """Put rows among the others, each in its place."""
        self._all += rows
        self._show()

    def search(self, text: str) -> None:
        """Show only the jobs that hold every word."""
        self._words = tuple(text.casefold().split())
        self._show()

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        self._column = column
        self._descending = order is Qt.SortOrder.DescendingOrder
        self._show()

    def rowCount(self, parent: _Index = _TOP) -> int:
        return 0 if parent.isValid() else len(self._shown)

    def columnCount(self, parent: _Index = _TOP) -> int:
        return 0 if parent.isValid() else len(HEADINGS)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if role == Qt.ItemDataRole.DisplayRole and orientation is Qt.Orientation.Horizontal:
            return say(HEADINGS[section])
        return None

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role not in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return None
        row = self._shown[index.row()]
        if role == Qt.ItemDataRole.ToolTipRole:
            return str(row.path)
        state = say(row.state.value)
        return (row.bike, row.title, row.day, state, row.due)[index.column()]

    def _show(self) -> None:
        self.beginResetModel()
        shown = [row for row in self._all if row.holds(self._words)] if self._words else self._all
        self._shown = sorted(shown, key=_KEYS[self._column], reverse=self._descending)
        self.endResetModel()
