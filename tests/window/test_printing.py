"""What the File menu puts on paper and into other programs' files."""

import csv
import gc
from datetime import UTC, datetime
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QSettings
from PySide6.QtGui import Qt
from PySide6.QtPrintSupport import QPrintDialog, QPrinter, QPrintPreviewDialog, QPrintPreviewWidget
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QWidget

from aligner.assessment import Stage
from aligner.drawing.theme import Appearance, theme_for
from aligner.job.edits_inspect import with_finding, with_note
from aligner.job.inspect import Finding
from aligner.job.inspection_points import places_of
from aligner.storage.documents import job_from
from aligner.window.files import job_dialogs
from aligner.window.main_window import MainWindow
from tests.report.test_markup import MARKUP, job_full_of_markup


@pytest.fixture
def named(monkeypatch, tmp_path):
    chosen = {"path": None, "proposed": None}

    def take(_parent, _title, name, _filter):
        chosen["proposed"] = Path(name).name
        return str(chosen["path"] or tmp_path / Path(name).name), ""

    monkeypatch.setattr(job_dialogs.QFileDialog, "getSaveFileName", take)
    monkeypatch.setenv("HOME", str(tmp_path))
    return chosen


def entry(window, words):
    """The entry of the File menu that begins so."""
    menu = window.menuBar().actions()[0].menu()
    return next(one for one in menu.actions() if one.text().replace("&", "").startswith(words))


def words_of(path):
    return " ".join(" ".join(page.extract_text().split()) for page in PdfReader(path).pages)


def test_the_job_card_is_saved_as_pdf(window, named, tmp_path):
    entry(window, "Job card as PDF").trigger()

    assert named["proposed"] == "front end refit card.pdf"
    path = tmp_path / "front end refit card.pdf"
    assert "Fellside 650" in words_of(path)
    assert "was saved as front end refit card.pdf in" in window.question.text


def test_the_bench_list_is_saved_as_pdf(window, named, tmp_path):
    entry(window, "Bench list").trigger()

    assert "Stem nut" in words_of(tmp_path / "front end refit bench list.pdf")


def test_the_tables_are_saved_as_two_files(window, named, tmp_path):
    named["path"] = tmp_path / "out"
    entry(window, "Tables as CSV").trigger()

    assert "The tables were saved as out readings.csv and out torques.csv" in window.question.text
    with (tmp_path / "out torques.csv").open(encoding="utf-8-sig", newline="") as file:
        assert len(list(csv.DictReader(file))) == len(window.open_job.assessment.tightening.steps)


def test_what_cannot_be_written_is_said(window, named, tmp_path):
    named["path"] = tmp_path / "no folder" / "card.pdf"

    entry(window, "Job card as PDF").trigger()

    assert "The job card was not saved." in window.question.text
    assert "is not there" in window.question.text


def test_the_card_printed_is_the_card(window, tmp_path):
    printing = window.printing
    printer = printing._printer()
    assert printer is not None
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))

    printing.paint_card(printer)

    text = words_of(tmp_path / "printed.pdf")
    assert "Fellside 650" in text
    assert "page 2 of 2" in text
    assert printer.docName() == "Job card: Fellside 650, front end refit"


def test_the_preview_shows_the_pages_and_the_print_dialog_opens(qtbot, window):
    entry(window, "Print preview").trigger()
    preview = window.findChild(QPrintPreviewDialog)
    gc.collect()  # its printer must be alive all the same
    qtbot.waitUntil(preview.isVisible)
    qtbot.waitUntil(lambda: preview.findChild(QPrintPreviewWidget).pageCount() == 2)
    preview.grab()
    preview.close()

    entry(window, "Print the job card").trigger()
    dialog = window.findChild(QPrintDialog)
    assert dialog is not None
    dialog.close()


@pytest.mark.parametrize(("chosen", "points"), [("A4", (595, 842)), ("Letter", (612, 792))])
def test_the_paper_is_the_one_in_the_settings(qtbot, tmp_path, window, named, chosen, points):
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    settings.setValue("page_size", chosen)
    made = MainWindow(theme_for(Appearance.LIGHT), settings=settings)
    qtbot.addWidget(made)
    made.show_job(window.open_job.job)

    entry(made, "Job card as PDF").trigger()

    page = PdfReader(tmp_path / "front end refit card.pdf").pages[0].mediabox
    assert (round(float(page.width)), round(float(page.height))) == points


def test_no_text_of_a_document_is_read_as_markup_in_any_stage(qtbot, window, tmp_path):
    path = tmp_path / "<b>bold<b> & x.job.json"
    path.write_bytes(job_full_of_markup())
    window.open_path(path)
    window.open_job.edit("title", lambda job: job.with_changes(note=MARKUP))

    for stage in Stage:
        window.go_to(stage)
        QApplication.processEvents()
        for label in window.findChildren(QLabel):
            is_plain = label.textFormat() == Qt.TextFormat.PlainText
            assert is_plain or not Qt.mightBeRichText(label.text()), label.text()
        for widget in window.findChildren(QWidget):
            assert not Qt.mightBeRichText(widget.toolTip()), widget.toolTip()
        for button in window.findChildren(QAbstractButton):
            assert "<img" not in button.text() or not Qt.mightBeRichText(button.toolTip())
    shown = " ".join(label.text() for label in window.findChildren(QLabel))
    assert "<b>" in shown
    assert job_from(path.read_bytes()).title.startswith("<b>")


def test_the_parts_list_is_printed_as_plain_lines(window, tmp_path):
    window.open_job.edit(
        "finding",
        lambda job: with_note(
            with_finding(job, places_of(job)[0], Finding.REPLACE, datetime(2026, 5, 2, tzinfo=UTC)),
            places_of(job)[0],
            "<b>bent</b>",
        ),
    )
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    path = tmp_path / "parts.pdf"
    printer.setOutputFileName(str(path))
    window.printing.paint_parts(printer)
    words = words_of(path)
    assert "Parts for Fellside 650" in words
    assert "To replace: 1 x fork tube (left leg)" in words
    assert "<b>bent</b>" in words
