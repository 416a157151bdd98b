"""One pair of distances: what is said of it is said of either side alike."""

import pytest

from aligner.assessment import assess
from aligner.job import Job
from aligner.sheet.quantities import Length, SignedLength
from tests.assessment.bench_jobs import true_job


def mm(*texts: str) -> tuple[Length, ...]:
    return tuple(Length.typed(f"{text} mm") for text in texts)


def job_with(**changes) -> Job:
    job = true_job()
    pair = job.align.squaring[0].with_changes(**changes)
    return job.with_changes(align=job.align.with_changes(squaring=(pair,)))


def told(job: Job) -> list[tuple[str, str]]:
    (pair,) = assess(job).squaring.pairs
    return [(notice.where.rpartition(".")[2], notice.text) for notice in pair.notices]


FOUR = {
    "bracket_reach": SignedLength.typed("40 mm"),
    "bracket_half_width": Length.typed("120 mm"),
    "frame_setback": SignedLength.typed("150 mm"),
    "frame_half_width": Length.typed("100 mm"),
}


@pytest.mark.parametrize("lacking", list(FOUR))
def test_a_pair_that_lacks_one_of_its_four_dimensions_says_that_there_is_no_angle(lacking):
    found = told(job_with(**{**FOUR, lacking: None}))
    assert any("lacks some of its four dimensions" in text for _, text in found)


def test_a_pair_with_all_its_dimensions_or_none_lacks_nothing():
    for job in (job_with(), job_with(**FOUR)):
        assert not any("lacks some" in text for _, text in told(job))


@pytest.mark.parametrize(("read", "absent"), [("left", "right"), ("right", "left")])
def test_a_side_read_alone_asks_for_the_other_and_for_its_gauge(read, absent):
    found = told(job_with(gauge=None, **{absent: ()}))
    assert any(where == absent and "is missing" in text for where, text in found)
    assert any("gauge" in text.lower() for _, text in found)
    assert not told(job_with(gauge=None, left=(), right=()))


@pytest.mark.parametrize(("left", "right", "known"), [("182", "180", "2"), ("180", "182", "-2")])
def test_what_the_frame_is_known_to_be_unlike_by_is_taken_off_whole(left, right, known):
    job = job_with(
        left=mm(left, left),
        right=mm(right, right),
        frame_asymmetry=SignedLength.typed(f"{known} mm"),
        frame_asymmetry_uncertainty=Length.typed("0.1 mm"),
    )
    (pair,) = assess(job).squaring.pairs
    assert pair.difference is not None
    assert pair.difference.value == 0
    # A tenth of a millimetre more of it is a tenth less of the difference: it counts once.
    bare = job_with(left=mm(left, left), right=mm(right, right))
    (without,) = assess(bare).squaring.pairs
    assert without.difference is not None
    before, after = (each.difference.standard_uncertainty for each in (without, pair))
    assert after**2 - before**2 == pytest.approx(0.1**2)


@pytest.mark.parametrize("side", ["left", "right"])
def test_a_distance_of_nothing_is_refused_on_its_own_side(side):
    (pair,) = assess(job_with(**{side: mm("0", "0")})).squaring.pairs
    told = {notice.where: notice.text for notice in pair.notices}
    assert f"the {side} distance" in told[f"align.squaring[0].{side}"].lower()
    assert pair.change is None


def test_without_dimensions_both_sides_aim_for_what_lies_in_the_middle_of_them():
    (pair,) = assess(job_with(left=mm("182"), right=mm("180"))).squaring.pairs
    assert pair.target_mm == 181
    assert pair.change is not None
    assert (pair.change.left_mm, pair.change.right_mm) == (-1, 1)
