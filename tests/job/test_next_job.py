"""The next job on a bike takes over what it is done with, and nothing that was done."""

from datetime import UTC, datetime

from aligner.data_files import demo
from aligner.job.edits_align import has_readings
from aligner.job.next_job import begun_from
from aligner.storage.document_file import load_job

AT = datetime(2027, 3, 1, 10, 0, tzinfo=UTC)


def test_sheet_gauges_and_measuring_points_are_taken_over():
    last = load_job(demo("fellside-left-leg-high.job.json"))[0]
    begun = begun_from(last, AT, "steering check")
    assert begun.title == "steering check"
    assert (begun.sheet, begun.gauges, begun.wrenches) == (last.sheet, last.gauges, last.wrenches)
    assert [pair.name for pair in begun.align.squaring] == [
        pair.name for pair in last.align.squaring
    ]
    assert begun.align.squaring[0].bracket_reach == last.align.squaring[0].bracket_reach


def test_nothing_that_was_read_or_ticked_last_time_passes_for_this_time():
    last = load_job(demo("fellside-left-leg-high.job.json"))[0]
    begun = begun_from(last, AT)
    assert not has_readings(begun.align)
    assert begun.align.begun is None
    assert (begun.attempts, begun.log, begun.prove.checks) == ((), (), ())
    assert begun.inspect.found == ()
