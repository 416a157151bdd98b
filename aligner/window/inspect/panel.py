"""One place to look at: what earlier jobs said, its readings, the finding, note and photographs.

The trap: a text that cannot be read must still stand there when the person comes back. So
each place has a panel of its own, which is kept as long as the job is open.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QWidget

from aligner.assessment.inspection import PlaceStanding
from aligner.drawing.theme import ROOM, Theme
from aligner.job import Job
from aligner.job.inspect import Finding
from aligner.language import say
from aligner.units.preferred import Preferred
from aligner.window.inspect.carried import CarriedCard
from aligner.window.inspect.choice import FindingChoice
from aligner.window.inspect.doors import PlaceDoors
from aligner.window.inspect.number import NumberEntry
from aligner.window.inspect.photograph_strip import PhotographStrip
from aligner.window.widgets.labels import Card, set_tone
from aligner.window.widgets.page import Page, wrapping
from aligner.window.widgets.tab_order import walk_by_tab
from aligner.window.widgets.tick import Tick
from aligner.window.widgets.word_line import WordLine


class InspectPanel(Page):
    """Everything that is entered for one place.

    Signals:
        went_on: the person goes on to the next place.
        photograph_opened: the name of a photograph to be seen large.
    """

    went_on = Signal()
    photograph_opened = Signal(str)

    def __init__(
        self,
        theme: Theme,
        show: Preferred,
        doors: PlaceDoors,
        save: Callable[[], bool],
        standing: PlaceStanding,
    ) -> None:
        super().__init__(standing.title)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAcceptDrops(True)
        self._doors = doors
        self.carried = CarriedCard(theme, show)
        self.number: NumberEntry | None = None
        self.choice = FindingChoice(theme)
        self.fitted = Tick(say("New part fitted"))
        self.fitted.setAccessibleName(say("{point}: new part fitted", point=standing.title))
        self.disagreement = wrapping("", tone="attention")
        self.note = WordLine(
            theme, say("{point}: note", point=standing.title), say("what was seen")
        )
        self.photographs = PhotographStrip(theme, doors, save)
        self.add(self.carried)
        card = Card()
        card.column.setSpacing(ROOM - 6)
        if standing.point.why:
            card.column.addWidget(wrapping(say(standing.point.why), "quiet"))
        if standing.point.measure is not None:
            self.number = NumberEntry(theme, show, doors, standing)
            self.number.went_on.connect(self.choice.begin)
            card.column.addWidget(self.number)
        line = QHBoxLayout()
        line.setSpacing(ROOM)
        line.addWidget(self.fitted)
        line.addWidget(self.note, 1)
        card.column.addWidget(self.choice)
        card.column.addWidget(self.disagreement)
        card.column.addLayout(line)
        card.column.addWidget(self.photographs)
        self.add(card)
        source = say("Source: {source}", source=say(standing.point.source))
        self.source = wrapping(source, "small")
        self.add(self.source)
        self.choice.given.connect(doors.keep_finding)
        self.choice.went_on.connect(self.went_on)
        self.fitted.clicked.connect(doors.keep_fitted)
        self.note.typed.connect(doors.draft_note)
        self.note.kept.connect(doors.keep_note)
        self.note.went_on.connect(self.went_on)
        self.photographs.opened.connect(self.photograph_opened)
        for line_edit in self.findChildren(QLineEdit):
            line_edit.setAcceptDrops(False)  # a photograph is never typed in as its path
        self._order_for_tab()

    def show_standing(self, job: Job, standing: PlaceStanding) -> None:
        """Show how the place stands; nothing that is being typed is touched."""
        found = standing.found
        self.carried.show_carried(standing)
        if self.number is not None:
            self.number.show_number(job, standing)
        self.choice.show_finding(found.finding)
        is_replaced = found.finding is Finding.REPLACE
        self.fitted.setVisible(is_replaced)
        self.fitted.setChecked(found.is_fitted)
        said = _unlike_numbers(standing)
        self.disagreement.setText(said)
        self.disagreement.setVisible(bool(said))
        set_tone(self.disagreement, "tone", "attention" if not found.note else "")
        self.note.show_kept(found.note)
        self.photographs.show_photographs(found.photographs)

    def begin(self) -> None:
        """Put the keyboard on the first thing to enter."""
        if self.number is not None and not self.number.box.first_cell.text().strip():
            self.number.begin()
        else:
            self.choice.begin()
        focus = self.focusWidget()
        if focus is not None:
            self.ensureWidgetVisible(focus)

    def close_doors(self) -> None:
        """Send nothing any more: another job was opened."""
        self._doors.close()

    @property
    def has_refused_text(self) -> bool:
        """Whether something typed here cannot be read."""
        return self.number is not None and self.number.has_refused_text

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if _photographs_in(event):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        self.photographs.add_files(_photographs_in(event))
        event.acceptProposedAction()

    def _order_for_tab(self) -> None:
        order: list[QWidget] = []
        if self.number is not None:
            order += [*self.number.box.cells, self.number.gauge]
            limit = self.number.limit
            order += [limit.value, limit.of, limit.source]
        order += [*self.choice.buttons.values(), self.fitted, self.note]
        order += [self.photographs.save_first, *self.photographs.thumbnails, self.photographs.add]
        walk_by_tab(order)


def _unlike_numbers(standing: PlaceStanding) -> str:
    """What to say where the number and the person's finding part; "" where they do not."""
    measured, found = standing.measured, standing.found
    if measured is None or found.finding is not Finding.GOOD or measured.verdict.value != "out":
        return ""
    if found.note:
        return say("It measures out and is marked good; the note says why.")
    return say("It measures out and is marked good: say why in the note.")


def _photographs_in(event: QDropEvent) -> list[Path]:
    """The files of a drop that are no job."""
    urls = event.mimeData().urls()
    files = [Path(url.toLocalFile()) for url in urls if url.isLocalFile()]
    return [file for file in files if file.suffix.lower() != ".json"]
