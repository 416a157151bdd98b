"""One photograph large in the page; Escape or Enter goes back to where it was opened."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from aligner.drawing.strokes import words
from aligner.drawing.theme import Theme
from aligner.language import say
from aligner.window.inspect.photograph_picture import picture

Shown = tuple[str, Path | None]
_LEAST = 260  # least height, at 100 % text


class PhotographView(QWidget):
    """A photograph as large as there is room; the arrow keys go to the one beside it.

    Signals:
        left: the view is left, at the photograph of this name.
    """

    left = Signal(str)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._photographs: list[Shown] = []
        self._place = 0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumHeight(theme.px(_LEAST))

    def show_photographs(self, photographs: list[Shown], name: str) -> None:
        """Show the photograph of that name out of some."""
        self._photographs = photographs
        names = [each for each, _ in photographs]
        self._place = names.index(name) if name in names else 0
        self._say()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        match event.key():
            case Qt.Key.Key_Escape | Qt.Key.Key_Return | Qt.Key.Key_Enter | Qt.Key.Key_Space:
                if not event.isAutoRepeat():
                    self._leave()
            case Qt.Key.Key_Right | Qt.Key.Key_Down:
                self._step(1)
            case Qt.Key.Key_Left | Qt.Key.Key_Up:
                self._step(-1)
            case _:
                super().keyPressEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._leave()

    def paintEvent(self, event: QPaintEvent) -> None:
        if not self._photographs:
            return
        theme, dots = self._theme, self.devicePixelRatioF()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        frame = QRectF(self.rect()).adjusted(1, 1, -1, -1)
        painter.fillRect(frame, theme.color("card"))
        painter.setPen(QPen(theme.color("accent" if self.hasFocus() else "line"), 2))
        painter.drawRect(frame)
        line = theme.px(30)
        inside = frame.adjusted(8, 8, -8, -line - 4)
        name, file = self._photographs[self._place]
        image = picture(file, int(inside.width() * dots), int(inside.height() * dots))
        centre = Qt.AlignmentFlag.AlignHCenter
        if image is None:
            text = say("{name} is missing, or cannot be read", name=Path(name).name)
            words(painter, theme, inside, text, role="attention", align=centre)
        else:
            size = image.size().toSizeF() / dots
            middle = inside.center()
            corner = QPointF(middle.x() - size.width() / 2, middle.y() - size.height() / 2)
            painter.drawImage(QRectF(corner, size), image)
        under = QRectF(frame.left(), frame.bottom() - line, frame.width(), line)
        text = f"{self._caption()}. {say('Escape goes back.')}"
        words(painter, theme, under, text, align=centre)

    def _caption(self) -> str:
        name, _ = self._photographs[self._place]
        count = len(self._photographs)
        name = Path(name).name
        if count < 2:
            return name
        return say("{number} of {total}: {name}", number=self._place + 1, total=count, name=name)

    def _say(self) -> None:
        said = say("photograph {caption}", caption=self._caption()) if self._photographs else ""
        self.setAccessibleName(said)
        self.update()

    def _step(self, by: int) -> None:
        self._place = min(max(self._place + by, 0), max(len(self._photographs) - 1, 0))
        self._say()

    def _leave(self) -> None:
        self.left.emit(self._photographs[self._place][0] if self._photographs else "")
