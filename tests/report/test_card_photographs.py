"""Photographs on the job card: there, small, named, and never from outside the job's folder."""

from datetime import UTC, datetime

import pytest
from pypdf import PdfReader
from PySide6.QtGui import QColor, QImage

from aligner.data_files import demo
from aligner.job.edits_inspect import with_finding, with_photograph
from aligner.job.inspect import Finding
from aligner.job.inspection_points import places_of
from aligner.report.card import write_card
from aligner.storage.document_file import load_job, save_job
from aligner.storage.photographs import keep_photograph

AT = datetime(2026, 5, 2, tzinfo=UTC)


@pytest.fixture
def kept(tmp_path):
    """A job in its file, with two photographs at the tube runout of the left leg."""
    job = load_job(demo("fellside-true.job.json"))[0]
    place = places_of(job)[0]
    job = with_finding(job, place, Finding.WATCH, AT)
    path = tmp_path / "a.job.json"
    save_job(job, path)
    for number in range(2):
        image = QImage(4000, 3000, QImage.Format.Format_RGB32)
        image.fill(QColor.fromHsv(90 * number, 200, 200))
        image.save(str(tmp_path / f"{number}.jpg"))
        job = with_photograph(job, place, keep_photograph(path, tmp_path / f"{number}.jpg"))
    return job, path


def card(job, path, tmp_path):
    target = tmp_path / "card.pdf"
    write_card(job, target, kept_in=path)
    return PdfReader(target)


def test_each_photograph_stands_on_the_card_with_its_words(kept, tmp_path):
    pages = card(*kept, tmp_path).pages
    last = " ".join(pages[-1].extract_text().split())
    assert "Photographs" in last
    assert last.count("Tube runout, left leg") == 2
    assert len(pages[-1].images) == 2


def test_a_photograph_is_no_larger_than_it_is_printed(kept, tmp_path):
    card(*kept, tmp_path)
    assert (tmp_path / "card.pdf").stat().st_size < 400_000
    assert all(
        image.image.width < 800 for image in PdfReader(tmp_path / "card.pdf").pages[-1].images
    )


def test_one_that_is_gone_says_so_in_its_frame(kept, tmp_path):
    job, path = kept
    name = job.inspect.found[0].photographs[0]
    (path.parent / name).unlink()
    pages = card(job, path, tmp_path).pages
    assert "this photograph is missing" in " ".join(pages[-1].extract_text().split())
    assert len(pages[-1].images) == 1


def test_a_name_that_leads_out_of_the_folder_is_not_opened(kept, tmp_path):
    job, path = kept
    found = job.inspect.found[0].with_changes(photographs=("../../etc/passwd",))
    job = job.with_changes(inspect=job.inspect.with_changes(found=(found,)))
    assert not any(page.images for page in card(job, path, tmp_path).pages)


def test_a_job_in_no_file_has_a_card_without_photographs(kept, tmp_path):
    assert not any(page.images for page in card(kept[0], None, tmp_path).pages)
