"""How one line of the tightening list is painted: its mark, its title in full, what is beside."""

from __future__ import annotations

import re

from PySide6.QtCore import QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetrics, QPainter, QPen

from aligner.assessment import StepState
from aligner.drawing.theme import Theme, TypeSize
from aligner.window.steps.step_lines import Line
from aligner.window.steps.step_marks import draw_step_mark

#: A list of numbers behind the word for what they number: "bolts 1, 2 and 3", in any language.
_NUMBERS = re.compile(r"[^\W\d_]+ [0-9]+(?:,? (?:[^\W\d_]{2,3} )?[0-9]+)*")
_WRAPPED = int(Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap)
_AT_RIGHT = int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight)


def line_height(theme: Theme, line: Line, width: int) -> int:
    """How high a line is at a width, in pixels, its title wrapped and never cut."""
    box, _ = _places(theme, line, QRect(0, 0, width, 1000))
    metrics = _metrics(theme, line)
    high = metrics.boundingRect(box, _WRAPPED, _unbroken(line.title)).height()
    if line.passes:
        high = max(high, 2 * metrics.lineSpacing())
    stands_out = line.state is StepState.NEXT or line.is_hold
    return high + theme.px(14 if stands_out else 6)


def paint_line(
    painter: QPainter, theme: Theme, line: Line, room: QRect, *, is_chosen: bool
) -> None:
    """Paint a line; a hold point has a rule above and below and a square mark."""
    is_next = line.state is StepState.NEXT
    box = QRectF(room)
    if is_chosen:
        painter.setPen(QPen(theme.color("accent"), 1.5))
        painter.setBrush(theme.color("accent_soft"))
        painter.drawRoundedRect(box.adjusted(1, 1, -1, -1), 5, 5)
    if line.is_hold:
        painter.setPen(QPen(theme.color("quiet"), 1))
        for y in (box.top() + 0.5, box.bottom() + 0.5):  # neighbours share a rule
            painter.drawLine(QPointF(box.left() + 4, y), QPointF(box.right() - 4, y))
    middle = QPointF(box.left() + theme.px(16), box.center().y())
    radius = theme.px(8 if is_next else 6)
    draw_step_mark(painter, theme, line.state, middle, radius, is_hold=line.is_hold)
    title, beside = _places(theme, line, room)
    is_quiet = line.state is StepState.DONE and not is_chosen
    painter.setFont(_font(theme, line))
    painter.setPen(theme.color("quiet" if is_quiet else "ink"))
    painter.drawText(title, _WRAPPED, _unbroken(line.title))
    if line.passes:
        _paint_passes(painter, theme, line, beside)
        beside = beside.adjusted(0, 0, 0, -theme.px(16))
    painter.setFont(theme.font(TypeSize.SMALL, bold=is_next))
    painter.setPen(theme.color("ink" if is_next or is_chosen else "quiet"))
    painter.drawText(beside, _AT_RIGHT, line.beside)


def _paint_passes(painter: QPainter, theme: Theme, line: Line, beside: QRect) -> None:
    """A small mark for each pass, under the torque."""
    y = beside.center().y() + theme.px(9)
    for from_right, state in enumerate(reversed(line.passes)):
        x = beside.right() - theme.px(5) - from_right * theme.px(13)
        draw_step_mark(painter, theme, state, QPointF(x, y), theme.px(4))


def _places(theme: Theme, line: Line, room: QRect) -> tuple[QRect, QRect]:
    """Where the title stands, and where what is beside it."""
    small = QFontMetrics(theme.font(TypeSize.SMALL, bold=line.state is StepState.NEXT))
    wide = small.horizontalAdvance(line.beside)
    wide = max(wide, len(line.passes) * theme.px(13)) + theme.px(8)
    left, edge = theme.px(32), theme.px(10)
    beside = room.adjusted(room.width() - wide - edge, 0, -edge, 0)
    return room.adjusted(left, 0, -wide - edge, 0), beside


def _unbroken(title: str) -> str:
    """The title with its bolts' numbers kept together: no line ends between "3 and" and "4"."""
    return _NUMBERS.sub(lambda found: found[0].replace(" ", "\u00a0"), title)


def _font(theme: Theme, line: Line) -> QFont:
    return theme.font(_size(line), bold=line.state is StepState.NEXT or line.is_hold)


def _metrics(theme: Theme, line: Line) -> QFontMetrics:
    return QFontMetrics(_font(theme, line))


def _size(line: Line) -> TypeSize:
    return TypeSize.TEXT if line.state is StepState.NEXT else TypeSize.SMALL
