"""A reading that stands off is looked for before anyone is sent for a finer gauge."""

from __future__ import annotations

import pytest

from aligner.assessment import assess
from aligner.assessment.corrections import next_correction
from aligner.job import Gauge, Job, ProtrusionReadings, SquaringPair
from aligner.sheet.quantities import Length, SignedLength
from aligner.units.preferred import Preferred
from tests.assessment.bench_jobs import true_job

#: Too coarse to settle a difference of 1.1 mm against a limit of 1 mm, whatever is read.
RULE = Gauge(
    resolution=Length.typed("0.5 mm"),
    limit_of_error=Length.typed("0.3 mm"),
    repeatability=Length.typed("0.2 mm"),
)


def sentence_for(job: Job) -> tuple[str, str]:
    found = assess(job)
    read = (found.protrusion, found.squaring, found.in_line)
    correction = next_correction(job, *read, Preferred())
    return correction.sentence, correction.detail


def with_heights(right: tuple[str, ...], gauge: str | None = "rule") -> Job:
    job = true_job()
    readings = ProtrusionReadings(
        gauge=gauge,
        left=tuple(SignedLength.typed(each) for each in ("4.9 mm", "4.8 mm", "4.9 mm")),
        right=tuple(SignedLength.typed(each) for each in right),
    )
    limits = job.sheet.protrusion.with_changes(tolerance=Length.typed("1 mm"))
    return job.with_changes(
        sheet=job.sheet.with_changes(protrusion=limits),
        gauges={"rule": RULE},
        align=job.align.with_changes(protrusion=readings, squaring=()),
    )


def test_a_height_mistyped_among_its_fellows_is_named():
    sentence, detail = sentence_for(with_heights(("8.0 mm", "4.9 mm", "4.9 mm")))
    assert sentence == "The heights are not settled yet: look for a reading that is wrong."
    assert detail.startswith("8.0 mm stands off from its fellows by 3.1 mm.")


def test_heights_that_bear_each_other_out_are_left_to_a_finer_gauge():
    sentence, _ = sentence_for(with_heights(("6.0 mm", "5.9 mm", "5.9 mm")))
    assert "wrong" not in sentence


def test_a_wrong_height_is_looked_for_whether_or_not_the_gauge_is_named():
    sentence, _ = sentence_for(with_heights(("8.0 mm", "4.9 mm", "4.9 mm"), gauge=None))
    assert sentence.endswith("look for a reading that is wrong.")


@pytest.mark.parametrize("side", ["left", "right"])
def test_a_distance_mistyped_is_named_whichever_side_it_is_on(side: str):
    job = true_job()
    true = tuple(Length.typed(each) for each in ("180.0 mm", "180.0 mm", "180.0 mm"))
    off = tuple(Length.typed(each) for each in ("180.0 mm", "180.0 mm", "186.0 mm"))
    pair = SquaringPair(
        name="lugs",
        gauge="gauge",
        left=off if side == "left" else true,
        right=off if side == "right" else true,
    )
    fine = RULE.with_changes(resolution=Length.typed("0.02 mm"))
    gauges = {**job.gauges, "gauge": fine}
    job = job.with_changes(gauges=gauges, align=job.align.with_changes(squaring=(pair,)))
    sentence, detail = sentence_for(job)
    assert sentence.endswith("look for a reading that is wrong.")
    assert detail.startswith("186.0 mm stands off")
