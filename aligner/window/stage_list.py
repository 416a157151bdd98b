"""The list of stages at the window's left: where the job stands, in words and in shape."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QAbstractButton, QSizePolicy, QVBoxLayout, QWidget

from aligner.assessment import Stage, StageStanding, StageState
from aligner.drawing.theme import Theme, TypeSize
from aligner.language import marked, say
from aligner.window.widgets.labels import label

_STATES = {
    StageState.DONE: marked("done"),
    StageState.IN_HAND: marked("in hand"),
    StageState.BLOCKED: marked("waits"),
    StageState.OPEN: marked("not begun"),
}


class StageRow(QAbstractButton):
    """One stage: its mark, its name, and one line on where it stands."""

    chosen = Signal(str)

    def __init__(self, theme: Theme, stage: Stage, number: int) -> None:
        super().__init__()
        self._theme = theme
        self._standing = StageStanding(stage, StageState.OPEN, "")
        self._is_current = False
        self._is_folded = False
        self._shortcut = f"Alt+{number}"
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
        self.clicked.connect(lambda: self.chosen.emit(self.stage.value))
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setToolTip(self._shortcut)

    @property
    def stage(self) -> Stage:
        """The stage this row opens."""
        return self._standing.stage

    @property
    def title_width(self) -> int:
        """How wide the stage's name is where it is the one on the screen, in pixels."""
        metrics = QFontMetricsF(self._theme.font(TypeSize.TEXT, bold=True))
        return math.ceil(metrics.horizontalAdvance(self.stage.title))

    def show_standing(self, standing: StageStanding, *, is_current: bool) -> None:
        """Show where the stage stands, and whether it is the one on the screen."""
        if standing == self._standing and is_current == self._is_current:
            return  # most keys change one row
        self._standing = standing
        self._is_current = is_current
        self.setAccessibleName(f"{standing.stage.title}: {standing.line}")
        state = say(_STATES[standing.state])
        here = say("on the screen, {state}", state=state) if is_current else state
        self.setAccessibleDescription(f"{here}, {self._shortcut}")
        self.setToolTip(f"{standing.stage.title}: {standing.line} ({self._shortcut})")
        self.update()

    def set_theme(self, theme: Theme) -> None:
        """Draw in another theme from now on."""
        self._theme = theme
        self.updateGeometry()
        self.update()

    def set_folded(self, is_folded: bool) -> None:
        """Draw the mark alone."""
        self._is_folded = is_folded
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(self._theme.px(48), self._theme.px(54))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self.chosen.emit(self.stage.value)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.chosen.emit(self.stage.value)
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = self._theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        frame = QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5)
        if self._is_current:
            painter.setBrush(theme.color("card"))
            painter.setPen(QPen(theme.color("accent"), 2))
            painter.drawRoundedRect(frame, 6, 6)
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(theme.color("ink"), 1.2, Qt.PenStyle.DashLine))
            painter.drawRoundedRect(frame.adjusted(2, 2, -2, -2), 5, 5)
        middle = self.height() / 2
        draw_mark(painter, theme, self._standing.state, QPointF(theme.px(24), middle), theme.px(9))
        if self._is_folded:
            return
        self._paint_words(painter)

    def _paint_words(self, painter: QPainter) -> None:
        """The name, and below it the line on where it stands, or two where one is too short."""
        theme, middle = self._theme, self.height() / 2
        left = theme.px(46)
        width = self.width() - left - 6
        small = theme.font(TypeSize.SMALL)
        metrics = QFontMetricsF(small)
        is_long = metrics.horizontalAdvance(self._standing.line) > width
        name_top = middle - (metrics.height() + theme.px(11) if is_long else theme.px(22))
        painter.setPen(theme.color("ink"))
        painter.setFont(theme.font(TypeSize.TEXT, bold=self._is_current))
        name = QRectF(left, name_top, width, theme.px(24))
        painter.drawText(name, Qt.AlignmentFlag.AlignVCenter, self.stage.title)
        painter.setPen(theme.color("quiet"))
        painter.setFont(small)
        lines = 2 if is_long else 1
        line = metrics.elidedText(self._standing.line, Qt.TextElideMode.ElideRight, 1.8 * width)
        under = QRectF(left, name.bottom() - 2, width, lines * metrics.height())
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap
        painter.drawText(under, int(flags), line if is_long else self._standing.line)


def draw_mark(
    painter: QPainter, theme: Theme, state: StageState, middle: QPointF, radius: float
) -> None:
    """The mark of a state: ticked disc done, half disc in hand, two bars waiting, ring open."""
    accent, quiet = theme.color("accent"), theme.color("quiet")
    disc = QRectF(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius)
    match state:
        case StageState.DONE:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(accent)
            painter.drawEllipse(disc)
            draw_tick(painter, middle, radius, theme.color("on_accent"))
        case StageState.IN_HAND:
            painter.setPen(QPen(accent, 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(disc)
            painter.setBrush(accent)
            painter.drawPie(disc, -90 * 16, 180 * 16)
        case StageState.BLOCKED:
            painter.setPen(QPen(quiet, 3))
            for side in (-0.45, 0.45):
                x = middle.x() + side * radius
                painter.drawLine(
                    QPointF(x, middle.y() - 0.75 * radius), QPointF(x, middle.y() + 0.75 * radius)
                )
        case StageState.OPEN:
            painter.setPen(QPen(quiet, 1.5))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(disc)


def draw_tick(painter: QPainter, middle: QPointF, radius: float, color: QColor) -> None:
    """A tick, the mark of a thing done."""
    path = QPainterPath(QPointF(middle.x() - 0.45 * radius, middle.y() + 0.02 * radius))
    path.lineTo(middle.x() - 0.1 * radius, middle.y() + 0.4 * radius)
    path.lineTo(middle.x() + 0.5 * radius, middle.y() - 0.4 * radius)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    pen = QPen(color, max(1.6, radius * 0.24))
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    painter.drawPath(path)


class StageList(QWidget):
    """The bike's name, the stages, and whether the job is saved."""

    chosen = Signal(str)

    def __init__(self, theme: Theme, stages: tuple[Stage, ...]) -> None:
        super().__init__()
        self.setObjectName("side")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._rows = {stage: StageRow(theme, stage, n) for n, stage in enumerate(stages, start=1)}
        self._bike = label("", "value", wraps=True)
        self._title = label("", "small", wraps=True)
        self._kept = label("", "small", wraps=True)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 14, 8, 14)
        column.setSpacing(4)
        for text in (self._bike, self._title):
            text.setContentsMargins(12, 0, 4, 0)
            column.addWidget(text)
        column.addSpacing(8)
        for row in self._rows.values():
            row.chosen.connect(self.chosen)
            column.addWidget(row)
        column.addStretch(1)
        self._kept.setContentsMargins(12, 0, 4, 0)
        column.addWidget(self._kept)
        self._is_folded = False
        self.set_theme(theme)

    def set_theme(self, theme: Theme) -> None:
        """Draw in another theme from now on."""
        self._theme = theme
        for row in self._rows.values():
            row.set_theme(theme)
        self._set_width()

    def set_folded(self, is_folded: bool) -> None:
        """Show the marks alone, where the window is narrow; the words stay for a tool tip."""
        if is_folded == self._is_folded:
            return
        self._is_folded = is_folded
        for row in self._rows.values():
            row.set_folded(is_folded)
        for text in (self._bike, self._title, self._kept):
            text.setVisible(not is_folded)
        self._set_width()

    def _set_width(self) -> None:
        widest = max(row.title_width for row in self._rows.values())
        unfolded = max(self._theme.px(174), self._theme.px(46 + 12) + widest)
        self.setFixedWidth((self._theme.px(48) if self._is_folded else unfolded) + 16)

    def show_job(
        self, bike: str, title: str, standings: tuple[StageStanding, ...], current: Stage | None
    ) -> None:
        """Show whose job it is and where every stage stands."""
        self._bike.setText(bike or say("Unnamed bike"))
        self._title.setText(title)
        for standing in standings:
            self._rows[standing.stage].show_standing(standing, is_current=standing.stage is current)

    def show_kept(self, words: str) -> None:
        """Say whether the job is saved."""
        self._kept.setText(words)
