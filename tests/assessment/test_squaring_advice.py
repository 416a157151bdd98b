"""What would settle a difference of distances that the readings cannot tell yet."""

from __future__ import annotations

import pytest

from aligner.assessment import assess
from aligner.gauging import Remedy, Verdict
from aligner.job import Gauge, Job, SquaringPair
from aligner.sheet.quantities import Length, SignedLength
from tests.assessment.bench_jobs import true_job


def lengths(*texts: str) -> tuple[Length, ...]:
    return tuple(Length.typed(text) for text in texts)


def job_with(pair: SquaringPair) -> Job:
    """A gauge that may be 0.5 mm out as a whole, held against a tolerance of 0.5 mm."""
    gauge = Gauge(
        resolution=Length.typed("0.02 mm"),
        limit_of_error=Length.typed("0.5 mm"),
        repeatability=Length.typed("0.1 mm"),
    )
    job = true_job()
    return job.with_changes(gauges={"gauge": gauge}, align=job.align.with_changes(squaring=(pair,)))


UNLIKE = SquaringPair(
    name="lugs", gauge="gauge", left=lengths("180.4 mm"), right=lengths("180.0 mm")
)


def test_the_error_of_the_one_gauge_drops_out_of_what_would_settle_a_pair_without_dimensions():
    found = assess(job_with(UNLIKE)).squaring
    assert found.verdict is Verdict.UNSETTLED
    assert found.advice is not None
    assert found.advice.remedy is Remedy.MORE_READINGS
    # 1.960 sqrt(2 (0.1^2 / n + 0.02^2 / 12)) <= 0.5 - 0.4, by hand: n = 8.
    assert found.advice.readings_needed == 8


@pytest.mark.parametrize("count", [7, 8])
def test_so_many_readings_settle_it_and_one_fewer_does_not(count: int):
    pair = UNLIKE.with_changes(
        left=lengths(*["180.4 mm"] * count), right=lengths(*["180.0 mm"] * count)
    )
    is_settled = assess(job_with(pair)).squaring.verdict is Verdict.WITHIN
    assert is_settled is (count == 8)


def test_what_is_not_known_of_the_frame_counts_in_what_would_settle_a_pair():
    pair = UNLIKE.with_changes(
        frame_asymmetry=SignedLength.typed("0 mm"),
        frame_asymmetry_uncertainty=Length.typed("0.2 mm"),
    )
    found = assess(job_with(pair)).squaring
    assert found.verdict is Verdict.UNSETTLED
    assert found.advice is not None
    # 1.960 x 0.2 mm alone is more than the 0.1 mm of room: no number of readings will do.
    assert found.advice.readings_needed is None
