"""Naming what came off: a line to type in, and the usual things under it, searched as it is typed.

The trap: a name that was typed and not entered must not be lost. It is taken when its line is left,
unless it is left for the list of usual things, which it only searches.
"""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QShowEvent
from PySide6.QtWidgets import QApplication, QListWidget

from aligner.drawing.theme import Theme
from aligner.job.usual_clutter import usual_clutter
from aligner.language import say
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.typed_line import TypedLine

_ENTERS = (Qt.Key.Key_Return, Qt.Key.Key_Enter)


class NameLine(TypedLine):
    """The name of what came off; Down goes to the usual things.

    Signals:
        down: Down was pressed.
        left_for_good: the line was left, the window staying the one in front.
    """

    down = Signal()
    left_for_good = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Down:
            self.down.emit()
        else:
            super().keyPressEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        stays = (Qt.FocusReason.PopupFocusReason, Qt.FocusReason.ActiveWindowFocusReason)
        if event.reason() not in stays:
            self.left_for_good.emit()


#: Between the edge of the list and what stands in it, in pixels.
_PADDING = 4


class UsualList(QListWidget):
    """The usual things. Enter or Space adds the one that is chosen; Up from the first goes back.

    Signals:
        picked: a name.
        back_wanted: back to the line.
    """

    picked = Signal(str)
    back_wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(say("usual things that come off"))
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.itemDoubleClicked.connect(lambda item: self.picked.emit(item.text()))

    def showEvent(self, event: QShowEvent) -> None:
        """Be as wide as the longest of the usual things: only now is its type known."""
        super().showEvent(event)
        edges = self.width() - self.contentsRect().width() + 2 * _PADDING
        bar = self.verticalScrollBar().sizeHint().width()
        self.setMinimumWidth(self.sizeHintForColumn(0) + bar + edges)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        item = self.currentItem()
        if event.key() in (*_ENTERS, Qt.Key.Key_Space):
            if item is not None and not event.isAutoRepeat():
                self.picked.emit(item.text())
        elif event.key() == Qt.Key.Key_Escape or (
            event.key() == Qt.Key.Key_Up and self.currentRow() <= 0
        ):
            self.back_wanted.emit()
        else:
            super().keyPressEvent(event)


class PickCard(Card):
    """The line, and the usual things that are not off yet.

    Signals:
        picked: a name was entered or picked.
        left_behind: a name was typed, and the line left without entering it.
        went_on: Enter was pressed where nothing is typed.
    """

    picked = Signal(str)
    went_on = Signal()
    left_behind = Signal(str)

    def __init__(self, theme: Theme) -> None:
        super().__init__(say("What came off"))
        self._gone: tuple[str, ...] = ()
        self.name = NameLine(say("what came off"), say("name, then Enter"))
        self.name.setMinimumHeight(theme.px(36))
        self.usual = UsualList()
        self.usual.setMinimumHeight(theme.px(132))
        self.said = label("", "small", wraps=True, tone="attention")
        self.column.addWidget(self.name)
        self.column.addWidget(label(say("usual things, Down to pick"), "small"))
        self.column.addWidget(self.usual, 1)
        self.column.addWidget(self.said)
        self.name.went_on.connect(self._enter)
        self.name.textEdited.connect(lambda _: self.offer(self._gone))
        self.name.down.connect(self._go_to_usual)
        self.name.left_for_good.connect(self._leave)
        self.usual.picked.connect(self._pick)
        self.usual.back_wanted.connect(self.begin)

    def begin(self) -> None:
        """Put the keyboard where the next part is named."""
        self.name.setFocus(Qt.FocusReason.OtherFocusReason)

    def forget_typing(self) -> None:
        """Take away what was typed and not entered."""
        self.name.clear()
        self.offer(self._gone)

    def offer(self, gone: Iterable[str]) -> None:
        """Offer the usual things, those with what is typed in them, but for what is off."""
        self._gone = tuple(gone)
        typed = self.name.text().strip().casefold()
        off = {name.casefold() for name in self._gone}
        names = [
            say(each.name)
            for each in usual_clutter()
            if off.isdisjoint(name.casefold() for name in (each.name, say(each.name)))
        ]
        fit = [name for name in names if typed in name.casefold()]
        if fit != [self.usual.item(row).text() for row in range(self.usual.count())]:
            self.usual.clear()
            self.usual.addItems(fit)

    def _enter(self) -> None:
        if self.name.text().strip():
            self._pick(self.name.text())
        else:
            self.went_on.emit()

    def _pick(self, name: str) -> None:
        self.name.clear()
        self.picked.emit(name)

    def _leave(self) -> None:
        name = self.name.text()
        if name.strip() and QApplication.focusWidget() is not self.usual:
            self.name.clear()
            self.left_behind.emit(name)

    def _go_to_usual(self) -> None:
        if self.usual.count():
            self.usual.setFocus(Qt.FocusReason.OtherFocusReason)
            self.usual.setCurrentRow(0)
