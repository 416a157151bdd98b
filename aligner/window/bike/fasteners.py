"""The fasteners of a sheet in a list: each row edited in place, more added below.

The trap: a row that is rebuilt while something stands in its box that cannot be read. Rows
stay with their fastener when others come, go or change places.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QPushButton, QVBoxLayout, QWidget

from aligner.drawing.theme import GAP
from aligner.errors import AlignerError
from aligner.fastening.joints import joint_kinds
from aligner.job import Job
from aligner.job.edits_sheet import (
    with_fastener_on_other_side,
    with_new_fastener,
    without_fastener,
)
from aligner.language import begun, marked, say, say_count
from aligner.sheet import Fastener, Sheet
from aligner.window.bike.boxes import HEIGHT
from aligner.window.bike.fastener_reads import default_name, sides_of
from aligner.window.bike.fastener_row import WIDTHS, FastenerRow
from aligner.window.setting import Setting
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.folding_row import PAGE_FROM
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.wrapping_row import WrappingRow

_HEADINGS = ("", marked("torque as the manual prints it"), marked("source"), marked("thread"))


class FastenersCard(Card):
    """Every fastener in a row, and a line to add one.

    Signals:
        went_on: Enter was pressed where no row below waits for anything.
        said: something to be known, in a sentence.
        laid_out: rows have come, gone or opened.
    """

    went_on = Signal()
    said = Signal(str)
    laid_out = Signal()

    def __init__(self, setting: Setting) -> None:
        super().__init__(say("Fasteners"))
        self._open_job = setting.open_job
        self._theme = setting.theme
        self._show = setting.show
        self._now = setting.now
        self.rows: dict[str, FastenerRow] = {}
        self._none = wrapping(say("missing: no fasteners on the sheet"), tone="attention")
        self._rows = QVBoxLayout()
        self._rows.setSpacing(GAP)
        self._is_folded = False
        self._over_columns = QWidget()
        self._headings = self._headings_made(self._over_columns)
        self.column.addWidget(self._over_columns)
        self.column.addWidget(self._none)
        self.column.addLayout(self._rows)
        self.column.addLayout(self._adding())

    def show_sheet(self, sheet: Sheet) -> None:
        """Show the fasteners as they are."""
        names = [fastener.name for fastener in sheet.fasteners]
        if names != list(self.rows):
            self._lay_out(names)
        for place, row in enumerate(self.rows.values()):
            row.show_fastener(sheet, place)
        self._none.setVisible(not names)
        self._align_columns()

    def end_typing(self) -> None:
        """From here on every row shows what the sheet holds."""
        for row in self.rows.values():
            row.end_typing()

    def stops(self) -> list[QWidget]:
        """Where Tab stops, in order."""
        inside = [stop for row in self.rows.values() for stop in row.stops()]
        return [*inside, self.new_kind, self.new_side, self.add_button]

    def go_to_first(self) -> None:
        """Put the keyboard in the first torque."""
        if self.rows:
            self._go_to(next(iter(self.rows.values())), "torque")

    def _align_columns(self) -> None:
        """Give every row the first column that the longest name needs."""
        widest = max((row.open_button.sizeHint().width() for row in self.rows.values()), default=0)
        widest = 0 if self._is_folded else widest
        self._headings.setColumnMinimumWidth(0, widest)
        for row in self.rows.values():
            row.open_button.setMinimumWidth(widest)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Below a width no torque could be read beside the names: it stands under its own."""
        super().resizeEvent(event)
        is_folded = event.size().width() < self._theme.px(PAGE_FROM)
        if is_folded is not self._is_folded:
            self._is_folded = is_folded
            self._over_columns.setVisible(not is_folded)
            for row in self.rows.values():
                row.fold(is_folded=is_folded)
            self._align_columns()

    def _headings_made(self, over: QWidget) -> QGridLayout:
        grid = QGridLayout(over)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(GAP)
        for column, (heading, width) in enumerate(zip(_HEADINGS, WIDTHS, strict=True)):
            grid.setColumnStretch(column, width)
            grid.addWidget(wrapping(say(heading), "small"), 0, column)
        return grid

    def _adding(self) -> WrappingRow:
        kinds = [(kind.kind, say(kind.title)) for kind in joint_kinds().values()]
        self.new_kind = Choice(say("Kind of the new fastener"), kinds, letters=8)
        self.new_side = Choice(say("Side of the new fastener"), letters=8)
        self.add_button = QPushButton(say("Add a fastener"))
        self.add_button.setMinimumHeight(self._theme.px(HEIGHT))
        self.new_kind.show_value(kinds[0][0])
        self.new_kind.currentIndexChanged.connect(lambda _: self._offer_sides())
        self._offer_sides()
        self.new_kind.went_on.connect(lambda: self.new_side.setFocus())
        self.new_side.went_on.connect(lambda: self.add_button.setFocus())
        self.add_button.clicked.connect(self._add)
        for box, width in ((self.new_kind, 286), (self.new_side, 170)):
            box.setMinimumWidth(self._theme.px(width))
        line = WrappingRow()
        line.add(label(say("One more:"), "quiet"))
        line.add(self.new_kind)
        line.add(self.new_side)
        line.add(self.add_button)
        return line

    def _offer_sides(self) -> None:
        sides = sides_of(str(self.new_kind.value))
        self.new_side.offer(sides)
        if self.new_side.value is None:
            self.new_side.show_value(sides[0][0])

    def _lay_out(self, names: list[str]) -> None:
        renamed = self._renamed(names)
        if renamed is not None:
            self.rows = dict(zip(names, self.rows.values(), strict=True))
            return
        for gone in [name for name in self.rows if name not in names]:
            row = self.rows.pop(gone)
            self._rows.removeWidget(row)
            row.hide()
            row.deleteLater()
        self.rows = {name: self.rows.get(name) or self._new_row() for name in names}
        for place, row in enumerate(self.rows.values()):
            if self._rows.indexOf(row) != place:
                self._rows.insertWidget(place, row)
        self.laid_out.emit()

    def _renamed(self, names: list[str]) -> str | None:
        """The new name of the one fastener that only has another name now."""
        before = list(self.rows)
        if len(before) != len(names):
            return None
        apart = [now for old, now in zip(before, names, strict=True) if old != now]
        return apart[0] if len(apart) == 1 and apart[0] not in self.rows else None

    def _new_row(self) -> FastenerRow:
        row = FastenerRow(self._open_job, self._theme, self._show, self._now)
        row.fold(is_folded=self._is_folded)
        row.went_on.connect(lambda field, row=row: self._go_on(row, field))
        row.walked_through.connect(lambda row=row: self._go_on_to_missing(row))
        row.opened.connect(self.laid_out)
        row.copy_wanted.connect(lambda row=row: self._copy(row))
        row.removed.connect(lambda row=row: self._remove(row))
        return row

    def _go_on(self, row: FastenerRow, field: str) -> None:
        rows = list(self.rows.values())
        following = rows.index(row) + 1
        if following < len(rows):
            self._go_to(rows[following], field)
        else:
            self.went_on.emit()

    def _go_on_to_missing(self, row: FastenerRow) -> None:
        """On from an opened row: to the next torque that is missing, never into one that is not."""
        fasteners = self._open_job.job.sheet.fasteners
        after = list(self.rows.values())[row.place + 1 :]
        waiting = next((each for each in after if fasteners[each.place].torque is None), None)
        if waiting is None:
            self.went_on.emit()
        else:
            self._go_to(waiting, "torque")

    def _go_to(self, row: FastenerRow, field: str) -> None:
        row.box_at(field).setFocus(Qt.FocusReason.TabFocusReason)

    def _add(self) -> None:
        kind, sides = str(self.new_kind.value), self.new_side.value
        before = set(self.rows)

        def added(job: Job) -> Job:
            for side in sides if isinstance(sides, tuple) else (None,):
                made = Fastener(name=default_name(kind, side), kind=kind, side=side)
                job = with_new_fastener(job, made)
            return job

        title = say(joint_kinds()[kind].title)
        self._open_job.edit(say("add {joint}", joint=title), added)
        new = [row for name, row in self.rows.items() if name not in before]
        if new:
            self._go_to(new[0], "torque")

    def _copy(self, row: FastenerRow) -> None:
        before = set(self.rows)
        try:
            self._open_job.edit(
                say("copy to the other side"),
                lambda job: with_fastener_on_other_side(job, row.place),
            )
        except AlignerError as error:
            why = f"{begun(str(error))}."
            self.said.emit(f"{say('Nothing was copied.')} {why}")
            return
        for name, made in self.rows.items():
            if name not in before:
                self._go_to(made, "torque")

    def _remove(self, row: FastenerRow) -> None:
        sheet = self._open_job.job.sheet
        gone = sheet.fasteners[row.place].name
        self._open_job.edit(
            say("remove {fastener}", fastener=gone),
            lambda job: without_fastener(job, row.place, self._now()),
        )
        rules = len(sheet.rules) - len(self._open_job.job.sheet.rules)
        rows = list(self.rows.values())
        after = rows[min(row.place, len(rows) - 1)].open_button if rows else self.new_kind
        after.setFocus(Qt.FocusReason.OtherFocusReason)
        if rules:
            said = say_count(
                "Removed: {fastener}, and {count} of the maker's rules with it. "
                "Undo brings it back.",
                "Removed: {fastener}, and {count} of the maker's rules with it. "
                "Undo brings it back.",
                rules,
                fastener=gone,
            )
        else:
            said = say("Removed: {fastener}. Undo brings it back.", fastener=gone)
        self.said.emit(said)
