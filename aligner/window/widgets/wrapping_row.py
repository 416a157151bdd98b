"""A row of buttons and lines that goes on below where the page is too narrow for all of it.

The trap: a row that cannot wrap is cut off at its right end, and that is where the button stands
that says what comes next.
"""

from __future__ import annotations

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QSizePolicy, QSpacerItem, QWidget, QWidgetItem

from aligner.drawing.theme import GAP

_Line = list[tuple[QLayoutItem, int]]


class WrappingRow(QLayout):
    """Things in a row, each at least as wide as it must be; those that do not fit go below."""

    def __init__(self, parent: QWidget | None = None, spacing: int = GAP) -> None:
        super().__init__(parent)  # type: ignore[arg-type]  # none: it is put in another layout
        self._items: _Line = []
        # What was measured, kept until Qt says (`invalidate`) that something in the row is
        # another: Qt asks dozens of times for each layout, and rows stand within rows.
        self._heights: dict[int, int] = {}
        self._hint: QSize | None = None
        self._least: QSize | None = None
        self.setContentsMargins(0, 0, 0, 0)
        self.setSpacing(spacing)

    def add(self, part: QWidget, share: int = 0) -> None:
        """Put something at the end of the row.

        Args:
            part: what stands there.
            share: of the width that is left over in its line.
        """
        self.addChildWidget(part)
        self._items.append((QWidgetItem(part), share))
        self.invalidate()

    def add_room(self) -> None:
        """Let whatever follows stand at the right end of its line, unless a share takes it."""
        room = QSpacerItem(0, 0, QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        self._items.append((room, 0))

    def addItem(self, item: QLayoutItem) -> None:
        """Take an item, as Qt asks of every layout."""
        self._items.append((item, 0))

    def count(self) -> int:
        """How many things there are, room included."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:  # type: ignore[override]
        """One of them; `None` beyond the last."""
        return self._items[index][0] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:  # type: ignore[override]
        """Take one out; `None` beyond the last."""
        return self._items.pop(index)[0] if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        """It takes all the width there is."""
        return Qt.Orientation.Horizontal

    def hasHeightForWidth(self) -> bool:
        """The narrower the row, the more lines it has."""
        return True

    def heightForWidth(self, width: int) -> int:
        """How high all its lines are at a width, in pixels."""
        if width not in self._heights:
            room = QRect(0, 0, width, 0)
            self._heights[width] = self._place(room, is_measured_only=True)
        return self._heights[width]

    def invalidate(self) -> None:
        """Measure anew: Qt says so where a thing in the row came, went or wants another size."""
        self._heights.clear()
        self._hint = self._least = None
        super().invalidate()

    def minimumSize(self) -> QSize:
        """As wide as the widest of its things."""
        if self._least is None:
            shown = [item.minimumSize() for item, _ in self._items if not item.isEmpty()]
            wide = max((least.width() for least in shown), default=0)
            self._least = QSize(wide, max((least.height() for least in shown), default=0))
        return QSize(self._least)

    def sizeHint(self) -> QSize:
        """All of it in one line."""
        if self._hint is None:
            shown = [item for item, _ in self._items if not item.isEmpty()]
            wide = sum(_asked(item) for item in shown) + self.spacing() * max(len(shown) - 1, 0)
            self._hint = QSize(wide, max((item.sizeHint().height() for item in shown), default=0))
        return QSize(self._hint)

    def setGeometry(self, rect: QRect) -> None:
        """Put everything where it stands."""
        super().setGeometry(rect)
        self._place(rect, is_measured_only=False)

    def _place(self, rect: QRect, *, is_measured_only: bool) -> int:
        top = rect.top()
        lines = self._lines(rect.width())
        for number, line in enumerate(lines):
            widths = self._widths(line, rect.width())
            needs = (_height(item, wide) for (item, _), wide in zip(line, widths, strict=True))
            high = max(needs, default=0)
            if len(lines) == 1 and not is_measured_only:
                high = max(high, rect.height())
            left = rect.left()
            for (item, _), wide in zip(line, widths, strict=True):
                if not is_measured_only:
                    item.setGeometry(QRect(left, top, wide, high))
                left += wide + (0 if item.spacerItem() else self.spacing())
            top += high + (self.spacing() if number + 1 < len(lines) else 0)
        return top - rect.top()

    def _lines(self, width: int) -> list[_Line]:
        """The things of each line; what stands behind room does so in its own line as well."""
        lines: list[_Line] = [[]]
        room: _Line = []
        taken = 0
        for item, share in self._items:
            if item.spacerItem() is not None:
                room = [(item, share)]
                lines[-1] += room
            elif not item.isEmpty():
                wide = _least(item)
                if taken and taken + wide > width:
                    lines.append(list(room))
                    taken = 0
                lines[-1].append((item, share))
                taken += wide + self.spacing()
        return lines

    def _widths(self, line: _Line, width: int) -> list[int]:
        """How wide each thing in a line becomes: as it asks, less where there is no room."""
        gaps = max(sum(item.spacerItem() is None for item, _ in line) - 1, 0) * self.spacing()
        asked = [min(_asked(item), width) for item, _ in line]
        least = [min(_least(item), wide) for (item, _), wide in zip(line, asked, strict=True)]
        spare = width - gaps - sum(asked)
        shares = [share for _, share in line]
        if not any(shares):
            shares = [int(item.spacerItem() is not None) for item, _ in line]
        if spare >= 0 and any(shares):
            return [
                wide + spare * share // sum(shares)
                for wide, share in zip(asked, shares, strict=True)
            ]
        can_give = sum(asked) - sum(least)
        if spare >= 0 or can_give <= 0:
            return asked
        return [
            wide + max(spare, -can_give) * (wide - low) // can_give
            for wide, low in zip(asked, least, strict=True)
        ]


def _is_ignored(item: QLayoutItem) -> bool:
    widget = item.widget()
    policy = widget.sizePolicy().horizontalPolicy() if widget is not None else None
    return policy is QSizePolicy.Policy.Ignored


def _asked(item: QLayoutItem) -> int:
    """The width a thing asks for; words that wrap ask for no more than they must have."""
    least = item.minimumSize().width()
    return least if _is_ignored(item) else max(item.sizeHint().width(), least)


def _least(item: QLayoutItem) -> int:
    """The least width in a line; a row that itself wraps goes below before it does so."""
    wraps_itself = item.hasHeightForWidth() and not _is_ignored(item)
    return _asked(item) if wraps_itself else item.minimumSize().width()


def _height(item: QLayoutItem, width: int) -> int:
    return item.heightForWidth(width) if item.hasHeightForWidth() else item.sizeHint().height()
