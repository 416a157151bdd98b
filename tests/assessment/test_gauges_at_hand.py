"""A gauge of which nothing is known, or that is not on the list, never breaks the assessment."""

import pytest

from aligner.assessment import assess
from aligner.assessment.readings import gauge_refusal, usable_gauges
from aligner.data_files import demo
from aligner.job import Gauge
from aligner.job.edits_gauges import with_gauge
from aligner.sheet.quantities import Length
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred


@pytest.fixture(scope="module")
def job():
    return load_job(demo("fellside-unsettled.job.json"))[0]


def test_a_gauge_of_noughts_is_said_and_the_rest_is_assessed(job):
    blank = job.with_changes(gauges={name: Gauge() for name in job.gauges})
    found = assess(blank)

    assert any("no gauge is exact" in notice.text for notice in found.notices)
    assert found.correction(Preferred()).sentence
    assert not found.is_all_within


def test_a_gauge_of_noughts_on_the_list_is_no_advice(job):
    listed = with_gauge(job, "blank", Gauge())

    assert "blank" not in [gauge.name for gauge in usable_gauges(listed)]
    assert assess(listed).protrusion == assess(job).protrusion


def test_the_refusal_names_the_gauge():
    assert gauge_refusal("tape", Gauge()).startswith("tape: resolution, limit of error")
    assert gauge_refusal("tape", Gauge(resolution=Length.typed("1 mm"))) == ""
