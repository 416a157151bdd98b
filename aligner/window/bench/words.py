"""Words as large as their room allows, over several lines: read from three metres.

The trap: a size that is chosen once is too small for a short sentence and cut off for a long
one. Here the words are laid out at the largest size at which all of them fit.
"""

from __future__ import annotations

import re

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from aligner.drawing.theme import Theme, TypeSize
from aligner.window.widgets.unbroken import unbroken

_LEAST = 8
_FLAGS = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap)


class BenchWords(QWidget):
    """Wrapped words that fill their room, up to a share of the window's height.

    Attributes:
        most: height of the type at most, in pixels.
    """

    def __init__(
        self,
        theme: Theme,
        most: float,
        *,
        role: str = "ink",
        bold: bool = True,
        framed: bool = False,
    ) -> None:
        """Make room for words.

        Args:
            theme: colours and sizes.
            most: height of the type at most, in pixels at 100 % text.
            role: of the palette.
            bold: or the regular weight.
            framed: whether they stand on the ground of a caution.
        """
        super().__init__()
        self._theme = theme
        self._role = role
        self._is_bold = bold
        self._is_framed = framed
        self._text = ""
        self._laid_out: tuple[str, QSize, int] = ("", QSize(), _LEAST)
        self.most = most
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Ignored)

    @property
    def text(self) -> str:
        """The words."""
        return self._text

    @property
    def type_height(self) -> int:
        """Height of the type they are drawn in, in pixels."""
        room = self._room()
        if self._laid_out[:2] != (self._text, self.size()):
            self._laid_out = (self._text, self.size(), self._largest(room))
        return self._laid_out[2]

    def say(self, text: str, role: str = "") -> None:
        """Show other words; hidden when there are none."""
        self._text = text
        self._role = role or self._role
        self.setAccessibleName(text)
        self.setVisible(bool(text))
        self.update()

    def minimumSizeHint(self) -> QSize:
        return QSize(self._theme.px(80), self._theme.px(20))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        if self._is_framed:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setBrush(self._theme.color("attention_soft"))
            painter.setPen(QPen(self._theme.color("attention"), 1.5))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 6, 6)
        painter.setFont(self._font(self.type_height))
        painter.setPen(self._theme.color(self._role))
        painter.drawText(self._room(), _FLAGS, unbroken(self._text))

    def _room(self) -> QRectF:
        room = QRectF(self.rect())
        return room.adjusted(12, 3, -12, -3) if self._is_framed else room

    def _font(self, pixels: int) -> QFont:
        font = self._theme.font(TypeSize.TEXT, bold=self._is_bold)
        font.setPixelSize(pixels)
        return font

    def _largest(self, room: QRectF) -> int:
        low, high = _LEAST, max(_LEAST, round(self.most * self._theme.text_scale))
        while low < high:
            middle = (low + high + 1) // 2
            if self._fits(middle, room):
                low = middle
            else:
                high = middle - 1
        return low

    def _fits(self, pixels: int, room: QRectF) -> bool:
        metrics = QFontMetricsF(self._font(pixels))
        words = re.split(r"[ \n]", unbroken(self._text))
        widest = max(metrics.horizontalAdvance(word) for word in words)
        needed = metrics.boundingRect(room, _FLAGS, unbroken(self._text))
        return (
            widest <= room.width()
            and needed.height() <= room.height()
            and needed.width() <= room.width()
        )
