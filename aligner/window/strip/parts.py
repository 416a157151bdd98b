"""What is in the way and came off, and the same turned round for the way back.

The trap: a row stands for a place in the order, and rows come and go as parts do. What a row says
is therefore sent with its place, and the keyboard goes along with the part that is moved.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget

from aligner.assessment.strip import StripAssessment
from aligner.drawing.theme import GAP, ROOM, Theme
from aligner.job import Job
from aligner.job.edits_strip import (
    moved_to,
    with_put_back,
    with_removed,
    with_removed_changed,
    with_removed_moved,
    without_removed,
)
from aligner.language import marked, say
from aligner.window.open_job import OpenJob
from aligner.window.strip.part_row import BackRow, OffRow
from aligner.window.strip.pick_card import PickCard
from aligner.window.widgets.folding_row import FoldingRow
from aligner.window.widgets.labels import Card
from aligner.window.widgets.page import Page, wrapping
from aligner.window.widgets.tab_order import walk_by_tab

#: The step in the Undo menu for each field of a part.
_CHANGES = {
    "name": marked("name of a part that is off"),
    "fasteners": marked("fasteners of a part that is off"),
    "note": marked("note of a part that is off"),
}


class PartsView(QWidget):
    """Three columns: what may come off, what came off, and what goes back.

    Signals:
        went_on: nothing more came off, or everything is back.
    """

    went_on = Signal()

    def __init__(self, open_job: OpenJob, theme: Theme, now: Callable[[], datetime]) -> None:
        super().__init__()
        self._open_job = open_job
        self._theme = theme
        self._now = now
        self.pick = PickCard(theme)
        self.off_page = Page(say("what came off"))
        self.back_page = Page(say("to go back"))
        self.off_rows: list[OffRow] = []
        self.back_rows: list[BackRow] = []
        self._order: list[int] = []  # the place of each row that goes back
        self._empty_off = wrapping(say("Nothing yet. What comes off first stands first."), "quiet")
        self._empty_back = wrapping(say("It fills by itself, turned round."), "quiet")
        row = FoldingRow(theme, spacing=GAP)
        row.add(self.pick, 25)
        off = self._page_card(say("Off, in this order"), self._empty_off, self.off_page)
        row.add(off, 48)
        back = self._page_card(say("To go back, last off first"), self._empty_back, self.back_page)
        row.add(back, 27)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(row)
        self.pick.picked.connect(self._add)
        self.pick.went_on.connect(self.went_on)
        self.pick.left_behind.connect(self._take)
        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.focusChanged.connect(self._follow)

    def refresh(self) -> None:
        """Show what the job holds."""
        found = self._found
        self._make_rows(len(found.removed))
        for part, row in zip(found.removed, self.off_rows, strict=True):
            row.show_part(part, len(found.removed) - 1)
        ahead = next(iter(found.to_go_back), None)
        back = list(reversed(found.removed))
        self._order = [part.place for part in back]
        for part, shown in zip(back, self.back_rows, strict=True):
            shown.show_part(part, is_next=ahead is not None and part.place == ahead.place)
        self._empty_off.setVisible(not found.removed)
        self._empty_back.setVisible(not found.removed)
        self.pick.offer(part.entry.name for part in found.removed)

    def begin(self) -> None:
        """Put the keyboard where the next part is named."""
        self.pick.begin()

    def begin_back(self) -> None:
        """Put the keyboard on the first part that goes back; on the name where there is none."""
        for row in self.back_rows:
            if not row.tick.isChecked():
                row.tick.setFocus(Qt.FocusReason.OtherFocusReason)
                return
        self.begin()

    @property
    def _found(self) -> StripAssessment:
        return self._open_job.assessment.strip

    def _take(self, name: str) -> None:
        self._open_job.edit(
            say("off: {name}", name=name), lambda job: with_removed(job, name, self._now())
        )

    def _add(self, name: str) -> None:
        self._take(name)
        self.off_rows[-1].go_to("fasteners")

    def _change(self, place: int, field: str, text: str, *, is_kept: bool) -> None:
        self.pick.said.setText("")
        if field == "name" and not text.strip():
            return  # a part has a name: the one it had stays until there is another

        def changed(job: Job) -> Job:
            return with_removed_changed(job, place, **{field: text})

        if is_kept:
            self._open_job.edit(say(_CHANGES[field]), changed)
        else:
            self._open_job.draft(changed)

    def _say_emptied(self) -> None:
        self._open_job.drop_draft()
        self.pick.said.setText(say("A part needs a name: the one it had stays."))

    def _move(self, place: int, by: int, field: str) -> None:
        to = moved_to(self._open_job.job, place, by)
        self._open_job.edit(
            say("order of the parts"), lambda job: with_removed_moved(job, place, by)
        )
        row = self.off_rows[to]
        if field:
            row.go_to(field)
        else:
            button = row.up if by < 0 and row.up.isEnabled() else row.down
            button = button if button.isEnabled() else row.up
            button.setFocus(Qt.FocusReason.TabFocusReason)

    def _take_out(self, place: int) -> None:
        self._open_job.edit(say("take out a part"), lambda job: without_removed(job, place))
        self.begin()

    def _put_back(self, line: int, is_back: bool) -> None:
        place = self._order[line]
        name = self._open_job.job.strip.removed[place].name
        at = self._now() if is_back else None
        self._open_job.edit(
            say("back: {name}", name=name) if is_back else say("off again: {name}", name=name),
            lambda job: with_put_back(job, place, at),
        )
        if is_back and self._found.to_go_back:
            self.begin_back()
        elif is_back:
            self.went_on.emit()

    def _make_rows(self, count: int) -> None:
        if len(self.off_rows) == count:
            return
        focus = QApplication.focusWidget()
        goes = [*self.off_rows[count:], *self.back_rows[count:]]
        has_keyboard = focus is not None and any(row.isAncestorOf(focus) for row in goes)
        while len(self.off_rows) > count:
            for row in (self.off_rows.pop(), self.back_rows.pop()):
                row.blockSignals(True)  # what is typed in it has no place any more
                row.hide()
                row.setParent(None)
                row.deleteLater()
        if has_keyboard:
            self.begin()
        while len(self.off_rows) < count:
            self._make_row(len(self.off_rows))
        walk = [
            self.pick.name,
            self.pick.usual,
            *(each for row in self.off_rows for each in row.walk()),
        ]
        walk += [row.tick for row in self.back_rows]
        walk_by_tab(walk)

    def _make_row(self, place: int) -> None:
        row = OffRow(self._theme, place + 1)
        row.typed.connect(lambda field, text: self._change(place, field, text, is_kept=False))
        row.kept.connect(lambda field, text: self._change(place, field, text, is_kept=True))
        row.moved.connect(lambda by, field: self._move(place, by, field))
        row.unwanted.connect(lambda: self._take_out(place))
        row.emptied.connect(self._say_emptied)
        row.went_on.connect(self.begin)
        back = BackRow(self._theme)
        back.ticked.connect(lambda is_back: self._put_back(place, is_back))
        self.off_rows.append(row)
        self.back_rows.append(back)
        for page, made in ((self.off_page, row), (self.back_page, back)):
            page.add(made)
            made.show()  # or the keyboard could not go there yet

    def _page_card(self, title: str, empty: QWidget, page: Page) -> Card:
        card = Card(title)
        card.column.addWidget(empty)
        card.column.addWidget(page, 1)
        page.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        inside = page.widget().layout()
        if isinstance(inside, QVBoxLayout):
            inside.setSpacing(GAP)
            inside.setContentsMargins(0, 0, ROOM // 2, 0)
        return card

    def _follow(self, _before: QWidget | None, now: QWidget | None) -> None:
        """Bring what the keyboard reaches into view, with its whole row where it fits."""
        for page, rows in ((self.off_page, self.off_rows), (self.back_page, self.back_rows)):
            for row in rows:
                if now is not None and row.isAncestorOf(now):
                    page.ensureWidgetVisible(row, 0, 8)
                    page.ensureWidgetVisible(now, 0, 40)
