"""A fold: a line that says what is inside, and opens on what is set once.

The trap: what is folded away must not be forgotten, so the line names what is set in it, and
a text that cannot be read keeps its fold open.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import (
    QFrame,
    QLabel,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from aligner.drawing.theme import GAP, ROOM, Theme
from aligner.language import say
from aligner.window.align.entry import Entry
from aligner.window.widgets.labels import label
from aligner.window.widgets.page import Page


class Fold(QFrame):
    """A card that opens and closes; its head says what is in it."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.setObjectName("card")
        self.theme = theme
        self.head = QPushButton("")
        self.head.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.head.setStyleSheet("text-align: left;")
        self._about = label("", "small", wraps=True)
        self.body = QWidget()
        self.body_column = QVBoxLayout(self.body)
        self.body_column.setContentsMargins(0, 0, 0, 0)
        self.body_column.setSpacing(GAP)
        self.body.hide()
        self.entries: dict[str, Entry] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(ROOM - 6, GAP, ROOM - 6, GAP)
        column.setSpacing(GAP // 2)
        column.addWidget(self.head)
        column.addWidget(self._about)
        column.addWidget(self.body)
        self.head.clicked.connect(lambda: self.set_open(not self.is_open))
        self._title = ""

    @property
    def is_open(self) -> bool:
        """Whether its entries are on the screen."""
        return not self.body.isHidden()

    @property
    def about(self) -> str:
        """What is said under the head."""
        return self._about.text()

    def say(self, title: str, about: str) -> None:
        """Set the head's words, and the line under it."""
        self._title = title
        self._about.setText(about)
        self._about.setVisible(bool(about))
        for entry in self.entries.values():
            entry.say_whose(title)
        self._mark()

    def set_open(self, is_open: bool) -> None:
        """Open or close it."""
        self.body.setVisible(is_open)
        self._mark()

    def add_entry(self, field: str, entry: Entry) -> Entry:
        """Put an entry in it; Enter walks from one to the next."""
        if self.entries:
            before = list(self.entries.values())[-1]
            before.went_on.connect(lambda: entry.cell.setFocus(Qt.FocusReason.TabFocusReason))
        self.entries[field] = entry
        self.body_column.addWidget(entry)
        return entry

    def go_to_first_entry(self) -> None:
        """Open it and put the keyboard in its first box."""
        self.set_open(True)
        next(iter(self.entries.values())).cell.setFocus(Qt.FocusReason.TabFocusReason)

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops, as the eye goes."""
        return [self.head, *(entry.cell for entry in self.entries.values())]

    def _mark(self) -> None:
        self.head.setText(f"{'▾' if self.is_open else '▸'}  {self._title}")
        self.head.setAccessibleName(f"{self._title}, {self._about.text()}")
        self.head.setAccessibleDescription(
            say("open", meaning="a fold") if self.is_open else say("closed", meaning="a fold")
        )


class FoldPage(Page):
    """A page of folds that keeps the box with the keyboard in sight."""

    def __init__(self, name: str) -> None:
        super().__init__(name)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # the keyboard walks its boxes
        content = self.widget()
        if content is not None:
            content.installEventFilter(self)

    def watch(self, widget: QWidget) -> None:
        """Scroll to any of the widget's boxes when the keyboard comes to it."""
        for each in (widget, *widget.findChildren(QWidget)):
            if not isinstance(each, QLabel | QScrollArea):
                each.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in (QEvent.Type.FocusIn, QEvent.Type.Resize):
            here = self.focusWidget()  # a box that opens or says something moves the others
            if here is not None and here is not self:
                self.ensureWidgetVisible(here, 0, 60)
        return super().eventFilter(watched, event)

    def remove(self, card: QWidget) -> None:
        """Take one card off."""
        for each in card.findChildren(QWidget):
            each.blockSignals(True)  # a box that goes has nothing more to say
        self._cards.remove(card)
        self._column.removeWidget(card)
        card.hide()
        card.deleteLater()

    def insert(self, place: int, card: QWidget) -> None:
        """Put a card at a place among the others."""
        self._cards.insert(place, card)
        self._column.insertWidget(place, card)
        card.show()  # at once, so that the keyboard can be put in it
