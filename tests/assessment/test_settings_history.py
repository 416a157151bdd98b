"""What was set over the years: each value on the last day of its own job."""

from datetime import UTC, date, datetime

import pytest

from aligner.assessment.settings_history import last_day, settings_history
from aligner.job import Job, LogEntry
from aligner.job.edits_build import with_build_tick
from aligner.job.edits_inspect import with_finding
from aligner.job.inspect import Finding
from tests.assessment.build_jobs import job_with_gaps

AT = datetime(2026, 5, 2, 9, 30, tzinfo=UTC)
LATER = datetime(2026, 6, 1, 9, 30, tzinfo=UTC)


def built_up(gap: str, at: datetime) -> Job:
    return with_build_tick(job_with_gaps((gap,), (gap,)), "bearing_greased", at, is_done=True)


def test_a_job_on_which_the_legs_alone_were_filled_has_its_day_and_its_settings():
    series = settings_history([built_up("221", LATER), built_up("218", AT)])
    left = next(each for each in series if each.name == "left air gap")
    assert left.points == ((date(2026, 5, 2), 218.0), (date(2026, 6, 1), 221.0))


@pytest.mark.parametrize(
    "job",
    [
        pytest.param(built_up("221", AT), id="built up"),
        pytest.param(with_finding(Job(), ("head_bearing", None), Finding.GOOD, AT), id="inspected"),
        pytest.param(
            Job().with_changes(
                prove=Job().prove.with_changes(rechecks=(LogEntry(step="recheck/x", at=AT),))
            ),
            id="checked after the road",
        ),
    ],
)
def test_the_last_day_of_a_job_is_that_of_whatever_was_done_last(job: Job):
    assert last_day(job) == date(2026, 5, 2)


def test_a_job_on_which_nothing_bears_a_date_has_no_day():
    assert last_day(Job()) is None
