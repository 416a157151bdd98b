"""Words as large as the width allows, up to a size of the theme: read from two metres."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from aligner.drawing.theme import Theme, TypeSize

#: Kept free at the right of the words, at 100 % text: they do not touch the edge of their card.
_EDGE = 8


class LargeWords(QWidget):
    """One line of large words, made smaller where they would not fit, never cut off."""

    def __init__(self, theme: Theme, size: TypeSize, share: float = 1.0) -> None:
        super().__init__()
        self._theme = theme
        self._size = size
        self._share = share
        self._text = ""
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)

    @property
    def text(self) -> str:
        """The words."""
        return self._text

    def say(self, text: str) -> None:
        """Show other words; hidden when there are none."""
        self._text = text
        self.setAccessibleName(text)
        self.setVisible(bool(text))
        self.update()

    def fitted_font(self) -> QFont:
        """The largest font, up to the size asked for, at which all of the words fit."""
        font = self._font()
        most = max(self.width() - self._theme.px(_EDGE), 1)
        # Widths do not grow evenly with the size, so each size is measured.
        while QFontMetricsF(font).horizontalAdvance(self._text) > most and font.pointSizeF() > 2:
            font.setPointSizeF(font.pointSizeF() - 0.5)
        return font

    def sizeHint(self) -> QSize:
        return QSize(self._theme.px(200), round(QFontMetricsF(self._font()).height()))

    def minimumSizeHint(self) -> QSize:
        return QSize(self._theme.px(100), self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setFont(self.fitted_font())
        painter.setPen(self._theme.color("ink"))
        painter.drawText(self.rect(), Qt.AlignmentFlag.AlignVCenter, self._text)

    def _font(self) -> QFont:
        font = self._theme.font(self._size, bold=True)
        font.setPointSizeF(font.pointSizeF() * self._share)
        return font
