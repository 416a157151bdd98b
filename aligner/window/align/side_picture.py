"""The picture of the bike from the side: paints what it is given, from the side it is turned to."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from aligner.drawing.side_bones import SideChange, SideProportions
from aligner.drawing.side_painting import DimensionWords, paint_side_view
from aligner.drawing.side_view import side_view
from aligner.drawing.theme import Theme


class SidePicture(QWidget):
    """The bike from the side; paints what it is given."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.theme = theme
        self.is_from_the_right = True
        self._proportions = SideProportions()
        self._change = SideChange()
        self._dimensions: dict[str, DimensionWords] = {}
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(theme.px(360), theme.px(164))

    def show_picture(
        self,
        proportions: SideProportions,
        change: SideChange,
        dimensions: dict[str, DimensionWords],
    ) -> None:
        """Draw this from now on."""
        self._proportions, self._change, self._dimensions = proportions, change, dimensions
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        view = side_view(
            QRectF(self.rect()),
            self._proportions,
            self._change,
            from_the_right=self.is_from_the_right,
            text_scale=self.theme.text_scale,
        )
        paint_side_view(painter, self.theme, view, self._dimensions)
