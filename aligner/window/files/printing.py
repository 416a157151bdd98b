"""The job card printed, looked at before, and saved as PDF; the bench list; tables as CSV.

The trap: printing needs a part of Qt that takes its time to load. It is loaded when it is
asked for, and where it is missing, or there is no printer, a sentence says so.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from PySide6.QtCore import QObject, QSettings, Qt
from PySide6.QtWidgets import QDialog, QWidget

from aligner.errors import AlignerError
from aligner.language import listed, marked, say
from aligner.units.preferred import Preferred
from aligner.window.files.filing import Filing
from aligner.window.files.job_dialogs import ask_name_to_save
from aligner.window.open_job import OpenJob
from aligner.window.widgets.question_bar import QuestionBar
from aligner.window.widgets.refusal_words import sentence

if TYPE_CHECKING:
    from PySide6.QtGui import QPageSize
    from PySide6.QtPrintSupport import QPrinter


class _Words(NamedTuple):
    """What is said of one kind of file: asking for its name, once it is saved, if it is not."""

    title: str
    saved: str
    refused: str


_CARD = _Words(
    marked("The job card as a file"),
    marked("The job card was saved as {files} in {folder}."),
    marked("The job card was not saved."),
)
_BENCH_LIST = _Words(
    marked("The bench list as a file"),
    marked("The bench list was saved as {files} in {folder}."),
    marked("The bench list was not saved."),
)
_TABLES = _Words(
    marked("The tables as files"),
    marked("The tables were saved as {files} in {folder}."),
    marked("The tables were not saved."),
)


class Printing(QObject):
    """What one window puts on paper and into other programs' files."""

    def __init__(
        self,
        open_job: OpenJob,
        filing: Filing,
        question: QuestionBar,
        show: Preferred,
        settings: QSettings | None,
        window: QWidget,
    ) -> None:
        super().__init__(window)
        self._window = window
        self._open_job = open_job
        self._filing = filing
        self._question = question
        self.show = show
        self._settings = settings
        self._in_hand: QPrinter | None = None  # the dialogs do not keep their printer alive

    def page_size(self) -> QPageSize:
        """The paper preferred in the settings, else the one usual where the person lives."""
        from aligner.report.paper import page_size

        chosen = str(self._settings.value("page_size", "")) if self._settings else ""
        return page_size(chosen)

    def print_card(self) -> None:
        """Ask for a printer, and print the job card on it."""
        printer = self._printer()
        if printer is None:
            return
        from PySide6.QtPrintSupport import QPrintDialog

        dialog = QPrintDialog(printer, self._window)
        dialog.accepted.connect(lambda *_: self.paint_card(printer))
        _show(dialog)

    def preview_card(self) -> None:
        """Show the job card as it will be printed."""
        printer = self._printer()
        if printer is None:
            return
        from PySide6.QtPrintSupport import QPrintPreviewDialog

        dialog = QPrintPreviewDialog(printer, self._window)
        dialog.setWindowTitle(say("The job card, as it will be printed"))
        dialog.resize(self._window.size())
        dialog.paintRequested.connect(self.paint_card)
        _show(dialog)

    def paint_card(self, printer: QPrinter) -> None:
        """Paint the job card on a printer."""
        from aligner.report.card import paint_card

        try:
            paint_card(self._open_job.job, printer, self.show, self._open_job.path)
        except OSError as error:
            self._question.say(say("The job card was not printed: {why}.", why=error))

    def print_parts(self) -> None:
        """Ask for a printer, and print the list of parts to replace and to watch on it."""
        printer = self._printer()
        if printer is None:
            return
        from PySide6.QtPrintSupport import QPrintDialog

        dialog = QPrintDialog(printer, self._window)
        dialog.accepted.connect(lambda *_: self.paint_parts(printer))
        _show(dialog)

    def paint_parts(self, printer: QPrinter) -> None:
        """Print the list of parts as plain lines, on as many pages as it needs."""
        from PySide6.QtGui import QTextDocument

        from aligner.report.parts_list import parts_text

        document = QTextDocument()
        inspection = self._open_job.assessment.inspection
        bike = self._open_job.job.sheet.name
        document.setPlainText(parts_text(inspection, self.show, bike))  # never as markup
        document.print_(printer)

    def save_card(self) -> None:
        """Save the job card as a PDF document that the person names."""
        from aligner.report.card import write_card

        self._save_as(
            _CARD,
            say("card", meaning="end of a file's name"),
            lambda path: write_card(
                self._open_job.job, path, self.show, self.page_size(), self._open_job.path
            ),
        )

    def save_bench_list(self) -> None:
        """Save the list for the bench as a PDF document that the person names."""
        try:
            from aligner.report.bench_list import bench_list
        except ImportError:
            self._question.say(say("The bench list is not part of this installation."))
            return

        def write(path: Path) -> None:
            bench_list(self._open_job.job, path, self.page_size(), self.show)

        self._save_as(_BENCH_LIST, say("bench list", meaning="end of a file's name"), write)

    def save_tables(self) -> None:
        """Save readings and torques as tables that other programs read."""
        from aligner.report.tables import write_tables

        path = self._named(_TABLES, ".csv")
        if path is not None:
            self._write(_TABLES, lambda: write_tables(self._open_job.job, path))

    def _save_as(self, words: _Words, name: str, write: Callable[[Path], object]) -> None:
        path = self._named(words, f" {name}.pdf")
        if path is not None:

            def written() -> tuple[Path, ...]:
                write(path)
                return (path,)

            self._write(words, written)

    def _named(self, words: _Words, ending: str) -> Path | None:
        self._filing.keep_what_is_typed()
        title = say(words.title)
        return ask_name_to_save(self._open_job.job, self._open_job.path, title, ending)

    def _write(self, words: _Words, write: Callable[[], tuple[Path, ...]]) -> None:
        """Write, and say where it is now or why it is not."""
        try:
            paths = write()
        except AlignerError as error:
            self._question.say(f"{say(words.refused)} {sentence(error)}")
            return
        files = listed(path.name for path in paths)
        self._question.say(say(words.saved, files=files, folder=paths[0].parent))

    def _printer(self) -> QPrinter | None:
        self._filing.keep_what_is_typed()
        try:
            from PySide6.QtPrintSupport import QPrinter
        except ImportError:
            self._question.say(
                say("Printing is not part of this installation; save the job card as PDF instead.")
            )
            return None
        from aligner.report.card import prepare

        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        prepare(printer, self._open_job.job, self.page_size())
        self._in_hand = printer
        return printer


def _show(dialog: QDialog) -> None:
    """Show a dialog over its window; it goes when it is closed."""
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.setModal(True)
    dialog.show()
