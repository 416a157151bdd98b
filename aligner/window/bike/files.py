"""A sheet taken over from a file and saved to one, and the buttons that ask for them."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFileDialog, QPushButton, QWidget

from aligner.errors import AlignerError
from aligner.job.edits_sheet_ticks import with_sheet
from aligner.language import marked, say
from aligner.sheet import Sheet
from aligner.storage.document_file import save_sheet
from aligner.storage.places import SHEET_ENDING, safe_name
from aligner.storage.sheet_file import sheet_of_file
from aligner.window.open_job import OpenJob
from aligner.window.widgets.wrapping_row import WrappingRow

_TO_OPEN = marked("Sheets and jobs (*.sheet.json *.job.json *.json)")
_TO_SAVE = marked("Sheets (*.sheet.json)")


class SheetFiles(QWidget):
    """The buttons above a sheet: take one over, save it, copy it to a variant.

    Signals:
        said: what was done, or why it was not.
        another: another sheet is about to take this one's place.
        variant_wanted: a variant is to be made.
    """

    said = Signal(str)
    another = Signal()
    variant_wanted = Signal()

    def __init__(self, open_job: OpenJob, now: Callable[[], datetime]) -> None:
        super().__init__()
        self._open_job = open_job
        self._now = now
        self.open_button = QPushButton(say("Take over a sheet..."))
        self.save_button = QPushButton(say("Save as a sheet file..."))
        self.variant_button = QPushButton(say("Copy to a variant"))
        self.stops: list[QWidget] = [self.open_button, self.save_button, self.variant_button]
        line = WrappingRow(self)
        for button in self.stops:
            line.add(button)
        self.open_button.clicked.connect(self.ask_what_to_take_over)
        self.save_button.clicked.connect(lambda: self.ask_where_to_save(open_job.job.sheet))
        self.variant_button.clicked.connect(self.variant_wanted)

    def take_over(self, path: Path) -> None:
        """Take over the sheet of a file: a sheet's, or the one in an earlier job."""
        try:
            sheet = sheet_of_file(path)
        except AlignerError as error:
            refused = say("{file} was not taken over.", file=path.name)
            self.said.emit(f"{refused} {error}.")
            return
        self.another.emit()
        self._open_job.edit(
            say("take over a sheet"), lambda job: with_sheet(job, sheet, self._now())
        )
        self.said.emit(
            say("Taken over from {file}. Undo brings back what was here.", file=path.name)
        )

    def save_as(self, path: Path, sheet: Sheet) -> None:
        """Save a sheet to a file of its own, to pass on."""
        if not path.name.lower().endswith(".json"):
            path = path.with_name(path.name + SHEET_ENDING)
        try:
            save_sheet(sheet, path)
        except AlignerError as error:
            self.said.emit(f"{say('The sheet was not saved.')} {error}.")
            return
        self.said.emit(say("The sheet is saved in {file}.", file=path.name))

    def ask_what_to_take_over(self) -> None:
        """Ask for a file, and take its sheet over."""
        name, _ = QFileDialog.getOpenFileName(self, say("Take over a sheet"), "", say(_TO_OPEN))
        if name:
            self.take_over(Path(name))

    def ask_where_to_save(self, sheet: Sheet) -> None:
        """Ask for a file, and save a sheet to it."""
        begin = safe_name(sheet.name, say("Bike")) + SHEET_ENDING
        name, _ = QFileDialog.getSaveFileName(self, say("Save the sheet as"), begin, say(_TO_SAVE))
        if name:
            self.save_as(Path(name), sheet)
