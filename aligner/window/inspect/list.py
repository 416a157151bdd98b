"""Everything to look at as a list: a mark, the name, and the finding in a word.

The trap: a key held down would mark the whole list. A key that repeats by itself does nothing.
"""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFontMetricsF, QKeyEvent, QPainter, QPen, QResizeEvent
from PySide6.QtWidgets import (
    QListView,
    QListWidget,
    QListWidgetItem,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
)

from aligner.assessment.inspection import InspectionAssessment, PlaceStanding
from aligner.drawing.theme import Theme, TypeSize
from aligner.job.inspect import Finding, Place
from aligner.language import begun, say
from aligner.window.inspect.words import row_state
from aligner.window.stage_list import draw_tick

_MARK = Qt.ItemDataRole.UserRole
_STATE = Qt.ItemDataRole.UserRole + 1
FINDING_KEYS: dict[int, Finding] = {
    Qt.Key.Key_1: Finding.GOOD,
    Qt.Key.Key_2: Finding.WATCH,
    Qt.Key.Key_3: Finding.REPLACE,
}
#: The row under all places: the parts list.
PARTS: Place = ("", None)


class InspectList(QListWidget):
    """The places of a job, and the parts list under them.

    Signals:
        chosen: a place is the one in hand (`PARTS` for the parts list).
        given: 1, 2 or 3 was pressed on a place.
        entered: Enter or Space was pressed on a row.
    """

    chosen = Signal(object)
    given = Signal(object, object)
    entered = Signal(object)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.setAccessibleName(say("what to look at"))
        self.setItemDelegate(_Row(theme, self))
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._wide = theme.px(312)
        self.setMinimumWidth(self._wide)
        self.setResizeMode(QListView.ResizeMode.Adjust)  # a name may take another line
        self._places: list[Place | None] = []
        self.currentRowChanged.connect(self._say_chosen)

    def sizeHint(self) -> QSize:
        return QSize(self._wide, super().sizeHint().height())

    def show_places(self, inspection: InspectionAssessment, in_hand: Place) -> None:
        """Show every place as it stands, with the one in hand chosen."""
        rows = _rows(inspection)
        places = [place for place, _, _ in rows]
        self.blockSignals(True)
        if places != self._places:
            self.clear()
            for place, text, _ in rows:
                item = QListWidgetItem(text)
                if place is None:
                    item.setFlags(Qt.ItemFlag.NoItemFlags)
                self.addItem(item)
            self._places = places
        for line, (_, text, standing) in enumerate(rows):
            item = self.item(line)
            state = row_state(standing) if standing else ""
            mark = _mark_of(standing)
            if item.data(_MARK) == mark and item.data(_STATE) == state:
                continue  # a row that is as it was is not painted again
            item.setData(_MARK, mark)
            item.setData(_STATE, state)
            said = f"{standing.title}, {state or say('not looked at')}" if standing else text
            item.setData(Qt.ItemDataRole.AccessibleTextRole, said)
        row = places.index(in_hand) if in_hand in places else -1
        if row >= 0 and row != self.currentRow():
            if row > 0 and places[row - 1] is None:
                self.scrollToItem(self.item(row - 1))  # with the heading it stands under
            self.setCurrentRow(row)
        self.blockSignals(False)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        place = self._place(self.currentRow())
        key = event.key()
        if event.isAutoRepeat() and key in (*FINDING_KEYS, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            return
        if key in FINDING_KEYS and place not in (None, PARTS):
            self.given.emit(place, FINDING_KEYS[key])
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space) and place is not None:
            self.entered.emit(place)
        else:
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The words over the list may take another line: the row in hand stays in sight."""
        super().resizeEvent(event)
        if self.currentItem() is not None:
            self.scrollToItem(self.currentItem())

    def _place(self, row: int) -> Place | None:
        return self._places[row] if 0 <= row < len(self._places) else None

    def _say_chosen(self, row: int) -> None:
        place = self._place(row)
        if place is not None:
            self.chosen.emit(place)


def _rows(
    inspection: InspectionAssessment,
) -> list[tuple[Place | None, str, PlaceStanding | None]]:
    rows: list[tuple[Place | None, str, PlaceStanding | None]] = []
    heading = ""
    for each in inspection.places:
        here = f"{begun(each.where)}" or say("In the middle")
        if here != heading:
            rows.append((None, here, None))
            heading = here
        rows.append((each.place, say(each.point.name), each))
    rows.append((None, say("To order"), None))
    rows.append((PARTS, say("Parts list"), None))
    return rows


class _Row(QStyledItemDelegate):
    """Draws a row; nothing in it is said by colour alone."""

    def __init__(self, theme: Theme, parent: QListWidget) -> None:
        super().__init__(parent)
        self._theme = theme
        self._list = parent

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        theme = self._theme
        if not index.flags() & Qt.ItemFlag.ItemIsEnabled:
            return QSize(theme.px(240), theme.px(30))
        # As high as the name wants in bold, so that no row moves as another is chosen.
        metrics = QFontMetricsF(theme.font(TypeSize.TEXT, bold=True))
        room = QRectF(0, 0, self._list.viewport().width(), theme.px(38))
        room = self._room_for_name(room, index.data(_STATE) or "")
        lines = metrics.boundingRect(room, int(_WRAPPED), index.data(Qt.ItemDataRole.DisplayRole))
        return QSize(theme.px(240), max(theme.px(38), round(lines.height()) + theme.px(8)))

    def _room_for_name(self, row: QRectF, state: str) -> QRectF:
        """Where the name stands in a row: between the mark and the finding."""
        theme = self._theme
        metrics = QFontMetricsF(theme.font(TypeSize.SMALL, bold=True))
        taken = metrics.horizontalAdvance(state) + theme.px(16) if state else 0
        return row.adjusted(theme.px(36), 0, -theme.px(6) - taken, 0)

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        theme, box = self._theme, QRectF(option.rect)  # type: ignore[attr-defined]
        is_heading = not index.flags() & Qt.ItemFlag.ItemIsEnabled
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        text = index.data(Qt.ItemDataRole.DisplayRole)
        if is_heading:
            painter.setFont(theme.font(TypeSize.SMALL, bold=True))
            painter.setPen(theme.color("quiet"))
            painter.drawText(box.adjusted(8, 0, -4, -2), int(_LOW), text)
            painter.restore()
            return
        is_chosen = bool(option.state & QStyle.StateFlag.State_Selected)  # type: ignore[attr-defined]
        has_focus = self._list.hasFocus()
        if is_chosen:
            painter.setBrush(theme.color("accent_soft"))
            painter.setPen(QPen(theme.color("accent"), 2 if has_focus else 0.8))
            painter.drawRoundedRect(box.adjusted(2, 2, -2, -2), 5, 5)
        mark = index.data(_MARK)
        if mark:
            middle = QPointF(box.left() + theme.px(20), box.center().y())
            _draw_mark(painter, theme, mark, middle)
        state = index.data(_STATE) or ""
        painter.setFont(theme.font(TypeSize.SMALL, bold=True))
        painter.setPen(theme.color("attention" if mark == "due" else "quiet"))
        right = box.adjusted(0, 0, -theme.px(10), 0)
        painter.drawText(right, int(_RIGHT), state)
        painter.setFont(theme.font(TypeSize.TEXT, bold=is_chosen))
        painter.setPen(theme.color("ink"))
        painter.drawText(self._room_for_name(box, state), int(_WRAPPED), text)
        painter.restore()


_LOW = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_WRAPPED = _LEFT | Qt.TextFlag.TextWordWrap
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


def _mark_of(standing: PlaceStanding | None) -> str:
    """Which mark a row has; "" for a heading and for the parts list."""
    if standing is None:
        return ""
    finding = standing.found.finding
    if finding is None:
        return "open"
    if finding is Finding.WATCH:
        return "watch"
    return "due" if standing.is_due else "done"


def _draw_mark(painter: QPainter, theme: Theme, mark: str, middle: QPointF) -> None:
    """A ticked disc: good or fitted; half a disc: watch; a square: replace; a ring: not yet."""
    r = theme.px(8)
    disc = QRectF(middle.x() - r, middle.y() - r, 2 * r, 2 * r)
    accent = theme.color("accent")
    match mark:
        case "due":
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(theme.color("attention"))
            painter.drawRect(disc)
        case "watch":
            painter.setPen(QPen(accent, 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(disc)
            painter.setBrush(accent)
            painter.drawPie(disc, -90 * 16, 180 * 16)
        case "done":
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(accent)
            painter.drawEllipse(disc)
            draw_tick(painter, middle, r, theme.color("on_accent"))
        case _:
            painter.setPen(QPen(theme.color("quiet"), 1.5))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(disc)
