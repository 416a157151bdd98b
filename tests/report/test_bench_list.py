"""The lists for the bench wall, read back with pypdf."""

from __future__ import annotations

import os
from io import BytesIO

import pytest
from pypdf import PdfReader

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtGui import QPageSize

from aligner.assessment import assess
from aligner.assessment.ticks import with_tick
from aligner.data_files import demo
from aligner.job import Job
from aligner.report.bench_list import bench_list, bench_list_bytes
from aligner.storage.document_file import load_job
from aligner.storage.failure import SaveFailed
from aligner.units.preferred import Preferred
from tests.assessment.bench_jobs import minute, true_job

#: ISO 216 and ANSI/ASME Y14.1, at 72 points an inch.
A4_POINTS, LETTER_POINTS = (595, 842), (612, 792)


@pytest.fixture(scope="module")
def quernbeck() -> Job:
    return load_job(demo("quernbeck-upside-down.job.json"))[0]


def text_of(content: bytes) -> str:
    pages = PdfReader(BytesIO(content)).pages
    return " ".join(" ".join(page.extract_text().split()) for page in pages)


def test_every_step_of_both_lists_stands_on_it_in_order(quernbeck):
    text = text_of(bench_list_bytes(quernbeck))
    assessment = assess(quernbeck)
    place = 0
    for each in (*assessment.tightening.steps, *assessment.strip.steps):
        place = text.index(each.step.title, place) + 1
    assert f"Taking apart: {len(assessment.strip.steps)} steps" in text


def test_a_step_says_torque_setting_wrench_and_why(quernbeck):
    text = text_of(bench_list_bytes(quernbeck))
    assert "Left top clamp, bolts 5 and 6, half 10.5 N·m 10.5 N·m" in text
    assert "The top clamp comes after the cap. small wrench" in text
    assert "38 lbf·ft" in text
    assert "long wrench in lbf·ft with hook spanner" in text


def test_hold_points_are_set_off_with_room_for_the_readings(quernbeck):
    text = text_of(bench_list_bytes(quernbeck))
    assert text.count("HOLD POINT: Measure") == 3
    assert "HOLD POINT: Measure both heights: protrusion equal left ________" in text


def test_a_missing_torque_has_a_line_to_write_on_and_says_so(quernbeck):
    text = text_of(bench_list_bytes(quernbeck))
    assert "Lamp bracket, bolts 13 and 14 ________" in text
    assert "Torque missing: write in the one from the maker's manual." in text


def test_a_caution_stands_once_and_not_at_every_pass(quernbeck):
    text = text_of(bench_list_bytes(quernbeck))
    left = text.partition("Left axle clamp cap, nuts 24 and 25, half")[2]
    left = left.partition("Right axle clamp cap, nuts 26 and 27, half")[0]
    assert left.count("CAUTION: Where the cap is marked") == 1


def test_what_is_ticked_already_shows_a_ticked_box():
    job = true_job()
    assert "☑" not in text_of(bench_list_bytes(job))
    job = with_tick(job, assess(job).tightening.steps[0].step.key, minute(1))
    assert text_of(bench_list_bytes(job)).count("☑") == 1


@pytest.mark.parametrize(
    ("size", "points"),
    [(QPageSize.PageSizeId.A4, A4_POINTS), (QPageSize.PageSizeId.Letter, LETTER_POINTS)],
    ids=["A4", "Letter"],
)
def test_it_is_printed_on_the_paper_that_is_there(quernbeck, size, points):
    content = bench_list_bytes(quernbeck, QPageSize(size))
    for page in PdfReader(BytesIO(content)).pages:
        box = page.mediabox
        assert (float(box.width), float(box.height)) == pytest.approx(points, abs=1)


def test_units_are_the_persons_own(quernbeck):
    text = text_of(bench_list_bytes(quernbeck, show=Preferred(torque="lbf·ft")))
    assert "Axle 47.9 lbf·ft 48 lbf·ft" in text


def test_a_job_without_a_list_says_why():
    text = text_of(bench_list_bytes(Job()))
    assert "Tightening: 0 steps" in text


def test_a_list_that_cannot_be_written_is_refused(tmp_path, quernbeck):
    bench_list(quernbeck, tmp_path / "list.pdf")
    assert (tmp_path / "list.pdf").read_bytes().startswith(b"%PDF")
    with pytest.raises(SaveFailed):
        bench_list(quernbeck, tmp_path / "nowhere" / "list.pdf")
