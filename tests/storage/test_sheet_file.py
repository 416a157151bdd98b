"""A sheet is taken over from a sheet's file or from a job's, and from nothing else."""

import pytest

from aligner.data_files import demo
from aligner.job import Job
from aligner.sheet.patterns import composed
from aligner.storage.document_file import load_job, save_job, save_sheet
from aligner.storage.refusal import UnusableDocument
from aligner.storage.sheet_file import sheet_of_file


def test_a_sheet_that_was_saved_is_taken_over_the_same(tmp_path):
    sheet = composed({"fork": "upside_down"}).with_changes(name="an invented bike")
    save_sheet(sheet, tmp_path / "bike.sheet.json")
    assert sheet_of_file(tmp_path / "bike.sheet.json") == sheet


def test_the_sheet_of_an_earlier_job_is_taken_over():
    path = demo("fellside-true.job.json")
    assert sheet_of_file(path) == load_job(path)[0].sheet


def test_a_job_without_a_sheet_gives_an_empty_one(tmp_path):
    save_job(Job(), tmp_path / "empty.job.json")
    assert sheet_of_file(tmp_path / "empty.job.json") == Job().sheet


@pytest.mark.parametrize(
    "content",
    [
        pytest.param(b"", id="empty"),
        pytest.param(b"{}", id="says nothing"),
        pytest.param(b'{"document": "photo", "about": "job"}', id="something else"),
        pytest.param(b'{"document": "sheet", "version": 1, "nmae": "x"}', id="a wrong field"),
        pytest.param(b'{"document": "job", "version": 1, "sheet": 3}', id="a job with a wrong one"),
    ],
)
def test_anything_else_is_refused_in_words(tmp_path, content):
    path = tmp_path / "other.json"
    path.write_bytes(content)
    with pytest.raises(UnusableDocument):
        sheet_of_file(path)
