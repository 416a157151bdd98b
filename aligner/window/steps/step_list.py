"""The whole list at a glance: done folds up, what comes next is small, the step in hand is not.

The trap: a list that takes a key held down for many keys would tick a whole clamp on its own.
A key that repeats by itself moves the choice, and never acts. Nor does the Enter of a gauge.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPainter, QResizeEvent
from PySide6.QtWidgets import (
    QListWidget,
    QListWidgetItem,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
)

from aligner.assessment import StepStanding, StepState
from aligner.drawing.theme import Theme
from aligner.language import say
from aligner.units.preferred import Preferred
from aligner.window.steps.line_painter import line_height, paint_line
from aligner.window.steps.step_lines import Line, step_lines
from aligner.window.steps.step_words import row_words
from aligner.window.widgets.stray_number import StrayNumber

_ACTS = (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter)


class StepList(QListWidget):
    """One row a step; the rows of a folded line are hidden behind the one that stands for it.

    Signals:
        acted: Space or Enter went down on a line that is not folded.
        let_go: that key came up again, or the keyboard went elsewhere.
        strayed: a sign of a number was typed here, with the text of it.
        back_wanted: Escape: back to the step in hand.
    """

    acted = Signal()
    let_go = Signal()
    strayed = Signal(str)
    back_wanted = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._show = show
        self._steps: tuple[StepStanding, ...] = ()
        self._lines: dict[int, Line] = {}
        self._opened = ""
        self._stray = StrayNumber()
        self.theme = theme
        self.setAccessibleName(say("tightening list"))
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QListWidget.ScrollMode.ScrollPerPixel)
        self.setItemDelegate(_LineDelegate(self))
        self.itemDoubleClicked.connect(lambda _: self.open_line())

    def show_steps(self, steps: Sequence[StepStanding], chosen: str) -> None:
        """Show a list with one of its steps chosen (by key; "" for none); says nothing of it."""
        self.blockSignals(True)
        self._steps = tuple(steps)
        if self.count() != len(self._steps):
            self.clear()
            self.addItems([""] * len(self._steps))
        keys = [each.step.key for each in self._steps]
        self.setCurrentRow(keys.index(chosen) if chosen in keys else -1)
        self._fold()
        self.blockSignals(False)
        self._keep_in_view()

    def line_at(self, row: int) -> Line | None:
        """The line that stands in a row; `None` where the row is folded away."""
        return self._lines.get(row)

    @property
    def lines(self) -> tuple[Line, ...]:
        """The lines on the screen, from the top."""
        return tuple(self._lines.values())

    def open_line(self) -> bool:
        """Open the chosen line to its steps; whether there was anything to open."""
        line = self.line_at(self.currentRow())
        if line is None or len(line.steps) < 2:
            return False
        self._opened = line.stands_for.step.key
        self._fold()
        return True

    def fold_line(self) -> None:
        """Fold what was opened."""
        if self._opened:
            self._opened = ""
            self._fold()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if self._stray.takes(event):
            if key not in _ACTS:
                self.strayed.emit(event.text())
        elif key in _ACTS:
            line = self.line_at(self.currentRow())
            if event.isAutoRepeat():
                return
            if line is not None and line.is_folded:
                self.open_line()
            else:
                self.acted.emit()
        elif key == Qt.Key.Key_Right:
            self.open_line()
        elif key == Qt.Key.Key_Left:
            self.fold_line()
        elif key == Qt.Key.Key_Escape:
            self.fold_line()
            self.back_wanted.emit()
        else:
            super().keyPressEvent(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        if event.key() in _ACTS and not event.isAutoRepeat():
            self.let_go.emit()
        super().keyReleaseEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self._stray.forget()
        self.let_go.emit()
        super().focusOutEvent(event)

    def keyboardSearch(self, search: str) -> None:
        """A letter goes nowhere: a slip on the keys must not move the choice."""

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.scheduleDelayedItemsLayout()
        self._keep_in_view()

    def _fold(self) -> None:
        row = self.currentRow()
        chosen = self._steps[row].step.key if 0 <= row < len(self._steps) else ""
        lines = step_lines(self._steps, chosen, self._opened, self._show)
        self._lines = {line.stands_for.number - 1: line for line in lines}
        for row, each in enumerate(self._steps):
            line = self._lines.get(row)
            item: QListWidgetItem = self.item(row)
            item.setText(row_words(each, self._show))
            item.setData(Qt.ItemDataRole.AccessibleTextRole, line.spoken if line else "")
            item.setHidden(line is None)
        self.scheduleDelayedItemsLayout()
        self.viewport().update()

    def follow_choice(self) -> None:
        """Fold again round a choice that has moved out of what was opened."""
        row = self.currentRow()
        chosen = self._steps[row].step.key if 0 <= row < len(self._steps) else ""
        opened = next(
            (
                line
                for line in step_lines(self._steps, "", "", self._show)
                if any(each.step.key == self._opened for each in line.steps)
            ),
            None,
        )
        if opened is not None and all(each.step.key != chosen for each in opened.steps):
            self._opened = ""
        self._fold()

    def _keep_in_view(self) -> None:
        """The step in hand in the middle, then the chosen one, which may be elsewhere."""
        hint = QListWidget.ScrollHint
        for row, line in self._lines.items():
            if line.state is StepState.NEXT:
                self.scrollToItem(self.item(row), hint.PositionAtCenter)
        if self.currentItem() is not None:
            self.scrollToItem(self.currentItem(), hint.EnsureVisible)


class _LineDelegate(QStyledItemDelegate):
    """Hands each row's line to the painter."""

    def __init__(self, of: StepList) -> None:
        super().__init__(of)
        self._list = of

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        line = self._list.line_at(index.row())
        width = self._list.viewport().width()
        height = line_height(self._list.theme, line, width) if line else 0
        return QSize(width, height)

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        line = self._list.line_at(index.row())
        if line is None:
            return
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        is_chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        paint_line(painter, self._list.theme, line, option.rect, is_chosen=is_chosen)
        painter.restore()
