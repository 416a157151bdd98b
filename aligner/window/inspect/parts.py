"""The parts list on the screen: what to replace, what to watch, and copying it."""

from __future__ import annotations

from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from aligner.assessment.inspection import InspectionAssessment
from aligner.drawing.theme import GAP, Theme
from aligner.language import marked, say
from aligner.report.parts_list import (
    parts_text,
    parts_to_replace,
    parts_to_watch,
)
from aligner.units.preferred import Preferred
from aligner.window.widgets.labels import label
from aligner.window.widgets.page import Page, table_card

_HEADINGS = (marked("part"), marked("count"), marked("where"), marked("why"))
_WIDTHS = (5, 2, 4, 10)


class PartsPage(QWidget):
    """What to buy and what to keep an eye on."""

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._show = show
        self._text = ""
        self._shown: object = None
        self.page = Page(say("parts list"))
        self.copy = QPushButton(say("Copy the list"))
        self.copy.setAccessibleName(say("Copy the parts list to the clipboard"))
        self.said = label("", "quiet")
        foot = QHBoxLayout()
        foot.setSpacing(GAP)
        foot.addWidget(self.copy)
        foot.addWidget(self.said, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.page, 1)
        column.addLayout(foot)
        self.copy.clicked.connect(self._copy)

    def show_parts(self, inspection: InspectionAssessment, bike: str) -> None:
        """Show what the findings ask for."""
        text = parts_text(inspection, self._show, bike)
        if text != self._text:
            self.said.setText("")
        self._text = text
        fitted = any(each.found.is_fitted for each in inspection.places)
        none_yet = say("Nothing so far")
        nothing = (say("Nothing left: every new part is fitted") if fitted else none_yet, "")
        lists = (
            parts_to_replace(inspection, self._show),
            parts_to_watch(inspection, self._show),
        )
        if (nothing, lists) == self._shown:
            return
        self._shown = (nothing, lists)
        self.page.clear()
        none = (nothing, (none_yet, ""))
        titles = (say("To replace"), say("To watch"))
        for title, rows, no_rows in zip(titles, lists, none, strict=True):
            cells = [
                [(row.part, ""), (str(row.count), ""), (row.where, ""), (row.why, "")]
                for row in rows
            ] or [[no_rows, ("", ""), ("", ""), ("", "")]]
            headings = tuple(say(each) if rows else "" for each in _HEADINGS)
            self.page.add(table_card(title, headings, cells, _WIDTHS))

    def begin(self) -> None:
        """Put the keyboard on the button."""
        self.copy.setFocus()

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(self._text)
        self.said.setText(say("Copied: paste it where it is wanted."))
