"""Assessing a job, in process; run by hand with --benchmark-only. Target: under 2 ms."""

import pytest

from aligner.assessment import assess
from aligner.data_files import demo
from aligner.job.edits_align import with_protrusion
from aligner.storage.document_file import load_job
from tests.benchmarks.full_job import full_job


def test_assess_of_the_demo_job(benchmark):
    job, _ = load_job(demo("fellside-left-leg-high.job.json"))
    benchmark(assess, job)


@pytest.fixture(scope="module")
def job():
    made = full_job()
    assert len(made.align.squaring) == 3
    assert len(made.attempts) == 5
    assert len(made.sheet.fasteners) == 20
    assert assess(made).tightening.is_finished
    return made


def test_assess_of_a_full_job(benchmark, job):
    benchmark(assess, job)


def test_assess_of_a_full_job_after_a_keystroke(benchmark, job):
    """A new job each time, as typing makes one: nothing may be kept from the last by identity."""
    begun = job.align.begun
    readings = job.align.protrusion.left
    benchmark(lambda: assess(with_protrusion(job, "left", readings, begun)))


def test_all_attempts_of_a_full_job(benchmark, job):
    """What the chart of attempts costs on top, while it is looked at."""
    benchmark(lambda: assess(job).attempts)
