"""Assessing a full job, in process; run by hand with --benchmark-only."""

from aligner.assessment import assess
from aligner.data_files import demo
from aligner.storage.document_file import load_job


def test_assess_of_a_full_job(benchmark):
    job, _ = load_job(demo("fellside-left-leg-high.job.json"))
    benchmark(assess, job)
