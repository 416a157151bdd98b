"""The card that shows how the value in hand is measured; it follows the keyboard from box to box.

The trap: a card that covers the box it speaks of. It stands in a corner of the window that the
box with the keyboard is not in, and never takes the keyboard itself.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QApplication,
    QHBoxLayout,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from aligner.drawing.measuring_sketch import HEIGHT, WIDTH, paint_sketch
from aligner.drawing.theme import GAP, ROOM, Theme
from aligner.language import say
from aligner.window.measuring.guides import guide_key, guides
from aligner.window.widgets.labels import Card, label

#: Sketches grow with the text up to here: at twice the text there is no room for more.
_LARGEST = 1.3


class SketchPicture(QWidget):
    """The small drawing."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._name = ""
        scale = min(theme.text_scale, _LARGEST)
        self.setFixedSize(round(WIDTH * scale), round(HEIGHT * scale))

    def show_sketch(self, name: str) -> None:
        """Show another drawing."""
        self._name = name
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_sketch(painter, self._theme, self.rect().toRectF(), self._name)


class MeasuringCard(Card):
    """Drawing, title and two sentences.

    Signals:
        closed: the person has seen enough.
    """

    closed = Signal()

    def __init__(self, ground: QWidget, theme: Theme) -> None:
        super().__init__()
        self.setProperty("inHand", True)  # it lies over other cards
        self.setParent(ground)
        self._ground = ground
        self._is_guiding = False
        self._picture = SketchPicture(theme)
        self._title = label("", "strong", wraps=True)
        self._how = label("", "text", wraps=True)
        self._how.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.MinimumExpanding)
        self._how.setMinimumWidth(round(theme.px(300) * min(1.0, _LARGEST / theme.text_scale)))
        self.close_button = QPushButton(say("Enough   Shift+F1"))
        self.close_button.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.close_button.clicked.connect(self.closed)
        words = QVBoxLayout()
        words.setSpacing(GAP)
        words.addWidget(self._title)
        words.addWidget(self._how)
        words.addStretch(1)
        words.addWidget(self.close_button, 0, Qt.AlignmentFlag.AlignRight)
        row = QHBoxLayout()
        row.setSpacing(ROOM)
        row.addWidget(self._picture, 0, Qt.AlignmentFlag.AlignTop)
        row.addLayout(words, 1)
        self.column.addLayout(row)
        ground.installEventFilter(self)
        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.focusChanged.connect(self._follow)
        self._follow(None, QApplication.focusWidget())

    @property
    def words(self) -> tuple[str, str]:
        """Title and sentences as they are shown."""
        return self._title.text(), self._how.text()

    def leave(self) -> None:
        """Follow the keyboard no more."""
        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.focusChanged.disconnect(self._follow)
        self._ground.removeEventFilter(self)
        self.hide()
        self.deleteLater()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Resize:
            self._place(QApplication.focusWidget())
        return False

    def _follow(self, before: QWidget | None, now: QWidget | None) -> None:
        if now is None or not self._ground.isAncestorOf(now):
            return
        guide = guides().get(guide_key(now))
        if guide is None:
            self._title.setText(say("How to measure"))
            self._how.setText(
                say("Put the keyboard in the box of a reading: this shows how it is taken.")
            )
        else:
            self._title.setText(say(guide.title))
            self._how.setText(say(guide.how))
            self._picture.show_sketch(guide.sketch)
        self._is_guiding = guide is not None
        self._picture.setVisible(self._is_guiding)
        self.setAccessibleName(self._title.text())
        self.setAccessibleDescription(self._how.text())
        self._place(now)
        self.show()
        self.raise_()

    def _place(self, near: QWidget | None) -> None:
        """Into a corner where the box with the keyboard is not, the lower right if it can be."""
        self.column.activate()  # the words and the drawing may be others than they were
        width = self.minimumSizeHint().width()
        size = QSize(width, max(self.heightForWidth(width), self.minimumSizeHint().height()))
        size = size.boundedTo(self._ground.size() - QSize(2 * ROOM, 2 * ROOM))
        right = self._ground.width() - size.width() - ROOM
        low = self._ground.height() - size.height() - ROOM
        busy = QRect()
        if near is not None and self._is_guiding and self._ground.isAncestorOf(near):
            busy = QRect(near.mapTo(self._ground, QPoint(0, 0)), near.size())
            busy.adjust(-ROOM, -ROOM, ROOM, ROOM)
        corners = [(right, low), (right, ROOM), (ROOM, low), (ROOM, ROOM)]
        places = [QRect(QPoint(x, y), size) for x, y in corners]
        self.setGeometry(min(places, key=lambda place: _area(place.intersected(busy))))


def _area(rect: QRect) -> int:
    return rect.width() * rect.height() if rect.isValid() else 0
