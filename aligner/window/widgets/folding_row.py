"""Parts of a page that stand side by side where it is wide, and below each other where it is not.

The trap: with large text, parts that stay side by side grow narrow until nothing on them can be
read. Every page folds by the one rule here, and then scrolls downwards, never sideways.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QBoxLayout, QWidget

from aligner.drawing.theme import ROOM, Theme
from aligner.window.widgets.whole_scroller import WholeScroller

#: Width, at 100 % text, from which the parts of a page stand side by side.
PAGE_FROM = 860
#: The least height of a list among folded parts, at 100 % text.
_LIST = 220


class FoldingRow(QWidget):
    """Parts in a row, which folds where it is narrower than they want.

    Signals:
        folded: whether the parts stand below each other from now on.
    """

    folded = Signal(bool)

    def __init__(
        self,
        theme: Theme,
        *,
        wanted: int = PAGE_FROM,
        spacing: int = ROOM,
        last_on_top: bool = False,
    ) -> None:
        """Make an empty row.

        Args:
            theme: sizes.
            wanted: width in pixels at 100 % text from which the parts stand side by side; they
                fold as well where their own least widths do not fit.
            spacing: between the parts, in pixels.
            last_on_top: whether the last part comes first when they are folded.
        """
        super().__init__()
        self._theme = theme
        self._wanted = wanted
        directions = QBoxLayout.Direction
        self._folded = directions.BottomToTop if last_on_top else directions.TopToBottom
        self._row = QBoxLayout(directions.LeftToRight, self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(spacing)

    @property
    def is_folded(self) -> bool:
        """Whether the parts stand below each other."""
        return self._row.direction() is self._folded

    def add(self, part: QWidget, share: int = 1, *, on_top: bool = False) -> None:
        """Put a part at the end of the row.

        Args:
            part: what stands there.
            share: of the width that is left over.
            on_top: whether it is only as high as it asks for, at the top of a higher row.
        """
        top = Qt.AlignmentFlag.AlignTop
        self._row.addWidget(part, share, top if on_top else Qt.AlignmentFlag(0))
        if self.is_folded:
            self._give_height(part)

    def minimumSizeHint(self) -> QSize:
        """As narrow as the widest part: the row folds before it is cut off."""
        edges = self.contentsMargins().left() + self.contentsMargins().right()
        widest = max(self._least_widths(), default=0)
        return QSize(widest + edges, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fold_where_narrow()

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.LayoutRequest:  # a part came, went, or wants another size
            self._fold_where_narrow()
        return super().event(event)

    def _fold_where_narrow(self) -> None:
        least = self._least_widths()
        between = self._row.spacing() * max(len(least) - 1, 0)
        wanted = max(self._theme.px(self._wanted), sum(least) + between)
        is_folded = len(least) > 1 and self.contentsRect().width() < wanted
        was_folded = self.is_folded
        if is_folded is not was_folded:
            side_by_side = QBoxLayout.Direction.LeftToRight
            self._row.setDirection(self._folded if is_folded else side_by_side)
            self.folded.emit(is_folded)
        if is_folded or was_folded:  # while folded, a part may have got another list
            for part in self._parts():
                self._give_height(part)

    def _give_height(self, part: QWidget) -> None:
        """While folded, show a part whole, or enough of a list."""
        scrollers = part.findChildren(WholeScroller)
        for scroller in [part, *scrollers] if isinstance(part, WholeScroller) else scrollers:
            scroller.show_whole(self.is_folded)
        if isinstance(part, QAbstractItemView):
            part.setMinimumHeight(self._theme.px(_LIST) if self.is_folded else 0)

    def _parts(self) -> list[QWidget]:
        found = (self._row.itemAt(place).widget() for place in range(self._row.count()))
        return [part for part in found if part is not None]

    def _least_widths(self) -> list[int]:
        items = (self._row.itemAt(place) for place in range(self._row.count()))
        return [item.minimumSize().width() for item in items if not item.isEmpty()]


def beside(theme: Theme, *parts: tuple[QWidget, int]) -> FoldingRow:
    """A row of parts, each with its share of the width."""
    row = FoldingRow(theme)
    for part, share in parts:
        row.add(part, share)
    return row
