"""The photographs of one place as thumb-nails, and how another is added.

The trap: a photograph is kept beside the job's file, and a job that was never saved has none.
What was chosen then waits here, and is added as soon as the job is saved.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QImage, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QFileDialog,
    QGridLayout,
    QHBoxLayout,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from aligner.drawing.strokes import words
from aligner.drawing.theme import GAP, Theme
from aligner.language import say, say_count
from aligner.window.inspect.doors import PlaceDoors
from aligner.window.inspect.photograph_picture import PictureReader
from aligner.window.widgets.labels import MainButton, label, set_tone
from aligner.window.widgets.page import wrapping

_IN_A_ROW = 5
_ENDINGS = "*.jpg *.jpeg *.png"


class Thumbnail(QWidget):
    """One photograph, small. Enter, Space or a click opens it; Delete takes it off.

    Signals:
        opened: its name.
        taken_off: its name.
        shown: the photograph is read and stands there, or is said to be missing.
    """

    opened = Signal(str)
    taken_off = Signal(str)
    shown = Signal()

    def __init__(self, theme: Theme, name: str, number: int, file: Path | None) -> None:
        super().__init__()
        self._theme = theme
        self._name = name
        self._file = file
        self._asked = QSize()
        self._image: QImage | None = None
        self._is_read = False
        self._reader = PictureReader(self)
        self._reader.read.connect(self._take)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFixedSize(QSize(theme.px(116), theme.px(87)))
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        is_there = file is not None and file.is_file()
        short = Path(name).name
        self.setAccessibleName(
            say("photograph {number}: {name}", number=number, name=short)
            if is_there
            else say("photograph {number}, file missing: {name}", number=number, name=short)
        )
        self.setAccessibleDescription(say("Enter opens it, Delete takes it off"))
        self.setToolTip(short)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.isAutoRepeat():
            return
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self.opened.emit(self._name)
        elif event.key() in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self.taken_off.emit(self._name)
        else:
            super().keyPressEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self.rect().contains(event.position().toPoint()):
            self.opened.emit(self._name)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme, dots = self._theme, self.devicePixelRatioF()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        frame = QRectF(self.rect()).adjusted(1, 1, -1, -1)
        painter.fillRect(frame, theme.color("side"))
        inside = frame.adjusted(2, 2, -2, -2)
        image = self._image
        self._ask(QSize(int(inside.width() * dots), int(inside.height() * dots)))
        if image is None and self._is_read:
            middle = Qt.AlignmentFlag.AlignHCenter
            text = say("missing", meaning="a photograph")
            words(painter, theme, inside, text, role="attention", align=middle)
        elif image is not None:
            size = image.size().toSizeF() / dots
            corner = QPointF(
                inside.center().x() - size.width() / 2, inside.center().y() - size.height() / 2
            )
            painter.drawImage(QRectF(corner, size), image)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(
            QPen(theme.color("accent" if self.hasFocus() else "line"), 3 if self.hasFocus() else 1)
        )
        painter.drawRect(frame)

    def _ask(self, size: QSize) -> None:
        """Have it read in this size, once."""
        if size != self._asked:
            self._asked = size
            self._reader.begin(self._file, size.width(), size.height())

    def _take(self, image: QImage | None) -> None:
        self._image, self._is_read = image, True
        self.update()
        self.shown.emit()


class PhotographStrip(QWidget):
    """The thumb-nails of a place, and the button that adds another.

    Signals:
        opened: the name of a photograph to be seen large.
    """

    opened = Signal(str)

    def __init__(self, theme: Theme, doors: PlaceDoors, save: Callable[[], bool]) -> None:
        super().__init__()
        self._theme = theme
        self._doors = doors
        self._save = save
        self._waiting: list[Path] = []
        self._shown: tuple[tuple[str, Path | None, bool], ...] | None = None
        self.thumbnails: list[Thumbnail] = []
        self._grid = QGridLayout()
        self._grid.setSpacing(GAP)
        self._grid.setColumnStretch(_IN_A_ROW, 1)
        self.add = QPushButton(say("Add a photograph"))
        self.add.setAccessibleName(self.add.text())
        self.hint = label(say("or drop it here"), "small")
        self.said = wrapping("", tone="attention")
        self.save_first = MainButton(say("Save the job"))
        saying = QHBoxLayout()
        saying.addWidget(self.said, 1)
        saying.addWidget(self.save_first)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(saying)
        column.addLayout(self._grid)
        self._place_add(0)
        self._say("")
        self.add.clicked.connect(self._choose)
        self.save_first.clicked.connect(self._save_and_add)

    def show_photographs(self, names: tuple[str, ...]) -> None:
        """Show a place's photographs; one whose file is gone is shown as missing."""
        files = [(name, self._doors.photograph_file(name)) for name in names]
        shown = tuple((name, file, file is not None and file.is_file()) for name, file in files)
        if shown == self._shown:
            return
        self._shown = shown
        for old in self.thumbnails:
            self._grid.removeWidget(old)
            old.hide()
            old.deleteLater()
        self.thumbnails = []
        for number, (name, file) in enumerate(files, start=1):
            made = Thumbnail(self._theme, name, number, file)
            made.opened.connect(self.opened)
            made.taken_off.connect(self._take_off)
            self._grid.addWidget(made, *divmod(number - 1, _IN_A_ROW))
            made.show()  # so that it can take the keyboard at once
            self.thumbnails.append(made)
        self._place_add(len(files))
        before: QWidget = self.save_first
        for made in (*self.thumbnails, self.add):
            QWidget.setTabOrder(before, made)
            before = made

    def add_files(self, sources: list[Path]) -> None:
        """Add photographs, or say that the job must be saved first."""
        if not sources:
            return
        if self._doors.job_path is None:
            self._waiting += sources
            kept = say("Save the job first: photographs are kept beside its file.")
            waiting = say_count(
                "This one is added then.", "These {count} are added then.", len(self._waiting)
            )
            self._say(f"{kept} {waiting}", offers_saving=True)
            self.save_first.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        if self._doors.only_read:
            self._say(f"{say('Not added.')} {self._doors.only_read}")
            return
        refused = self._doors.add_photographs(sources)
        self._say(f"{say('Not added.')} {refused}." if refused else "")

    def go_back_to(self, name: str) -> None:
        """Put the keyboard on a photograph that was seen large."""
        for made, (shown, _, _) in zip(self.thumbnails, self._shown or (), strict=False):
            if shown == name:
                made.setFocus(Qt.FocusReason.OtherFocusReason)

    def _place_add(self, after: int) -> None:
        """The button stands behind the last photograph, or under them where the row is full."""
        for widget in (self.add, self.hint):
            self._grid.removeWidget(widget)
        row, column = divmod(after, _IN_A_ROW)
        if column > _IN_A_ROW - 2:
            row, column = row + 1, 0
        self._grid.addWidget(self.add, row, column, 1, 2)
        if column <= _IN_A_ROW - 4:
            self._grid.addWidget(self.hint, row, column + 2, 1, 2)
        self.hint.setVisible(column <= _IN_A_ROW - 4)

    def _choose(self) -> None:
        kinds = say("Photographs ({endings})", endings=_ENDINGS)
        names, _ = QFileDialog.getOpenFileNames(self, say("Add photographs"), "", kinds)
        self.add_files([Path(name) for name in names])

    def _save_and_add(self) -> None:
        if not self._save() or self._doors.job_path is None:
            return
        waiting, self._waiting = self._waiting, []
        self.add_files(waiting)
        self.add.setFocus(Qt.FocusReason.OtherFocusReason)

    def _take_off(self, name: str) -> None:
        self._doors.take_off_photograph(name)
        after = self.thumbnails[-1] if self.thumbnails else self.add
        after.setFocus(Qt.FocusReason.OtherFocusReason)

    def _say(self, words_said: str, *, offers_saving: bool = False) -> None:
        self.said.setText(words_said)
        self.said.setVisible(bool(words_said))
        set_tone(self.said, "tone", "attention")
        self.save_first.setVisible(offers_saving)
