"""A page of cards that is longer than the window: it scrolls by keyboard as well."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from aligner.drawing.theme import ROOM
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.whole_scroller import FlowingContent, WholeScroller

#: What stands in one place of a table: the words, and "attention" where something is missing.
Cell = tuple[str, str]


class Page(WholeScroller):
    """Cards in a column; Tab reaches it, the arrow and page keys scroll it."""

    def __init__(self, name: str) -> None:
        super().__init__()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(name)
        self._cards: list[QWidget] = []
        content = FlowingContent()
        self._column = QVBoxLayout(content)
        self._column.setContentsMargins(0, 0, ROOM, 0)
        self._column.setSpacing(ROOM)
        self._column.addStretch(1)
        self.setWidget(content)

    def add(self, card: QWidget) -> None:
        """Put a card below the others."""
        self._cards.append(card)
        self._column.insertWidget(self._column.count() - 1, card)

    def clear(self) -> None:
        """Take every card off."""
        for card in self._cards:
            self._column.removeWidget(card)
            card.hide()
            card.deleteLater()
        self._cards = []


def wrapping(text: str, size: str = "text", tone: str = "") -> QLabel:
    """A label that wraps and takes the height its lines need."""
    made = label("", size, wraps=True, tone=tone)
    made.setText(text)
    return made


def table_card(
    title: str, headings: Sequence[str], rows: Sequence[Sequence[Cell]], widths: Sequence[int]
) -> Card:
    """A card with a table to read.

    Args:
        title: of the card.
        headings: of the columns; "" for none.
        rows: cells, the first of which names the row.
        widths: of the columns, as shares.
    """
    card = Card(title)
    grid = QGridLayout()
    grid.setHorizontalSpacing(ROOM)
    for column, width in enumerate(widths):
        grid.setColumnStretch(column, width)
    for column, heading in enumerate(headings):
        if heading:
            grid.addWidget(wrapping(heading, "small"), 0, column)
    for line, row in enumerate(rows, start=1):
        for column, (text, tone) in enumerate(row):
            cell = wrapping(text, tone=tone)
            about = ", ".join(part for part in (row[0][0], headings[column]) if part)
            cell.setAccessibleName(f"{about}: {text}" if column else text)
            grid.addWidget(cell, line, column, Qt.AlignmentFlag.AlignTop)
    card.column.addLayout(grid)
    return card
