"""Every attempt in a row is what assessing it alone gives, oldest first, the one in hand last."""

from datetime import UTC, datetime

import pytest

from aligner.assessment import Subject, assess
from aligner.assessment.attempts import attempt_series
from aligner.data_files import demo
from aligner.gauging import Verdict
from aligner.geometry import Corner
from aligner.job import Attempt, Job, PlateReadings, SpreadReadings
from aligner.sheet.quantities import Angle, Length, SignedLength
from aligner.storage.document_file import load_job

AT = datetime(2026, 5, 1, 9, 0, tzinfo=UTC)


def heights(job, left, right):
    typed = (
        tuple(SignedLength.typed(f"{value} mm") for value in values) for values in (left, right)
    )
    left, right = typed
    protrusion = job.align.protrusion.with_changes(left=left, right=right)
    return job.align.with_changes(protrusion=protrusion)


@pytest.fixture
def job():
    return load_job(demo("fellside-left-leg-high.job.json"))[0]


def with_attempts(job, *aligns):
    kept = tuple(Attempt(closed=AT, align=align) for align in aligns)
    return job.with_changes(attempts=kept)


def test_each_row_is_what_that_attempt_alone_comes_to(job):
    first = heights(job, (8, 8.1), (5, 5.1))
    second = heights(job, (4.4, 4.5, 4.4), (5, 5, 5))
    rows = attempt_series(with_attempts(job, first, second))[0].rows
    assert [row.number for row in rows] == [1, 2, 3]
    assert [row.is_in_hand for row in rows] == [False, False, True]
    for row, align in zip(rows, (first, second, job.align), strict=True):
        alone = assess(job.with_changes(align=align)).protrusion
        assert row.value == alone.difference.value
        assert row.expanded_uncertainty == alone.difference.judgement.expanded_uncertainty
        assert row.verdict is alone.verdict
        assert row.tolerance == 0.5


def test_squareness_is_the_turn_and_positive_to_the_left(job):
    series = attempt_series(job)[1]
    assert series.subject is Subject.SQUARING
    assert series.is_angle
    turn = assess(job).squaring.turn
    assert series.rows[-1].value == turn.value < 0
    assert series.rows[-1].tolerance == 0.4


def test_a_length_as_tolerance_gives_the_worst_pairs_difference_in_mm(job):
    limits = job.sheet.squaring.with_changes(tolerance=Length.typed("0.8 mm"))
    job = job.with_changes(sheet=job.sheet.with_changes(squaring=limits))
    series = attempt_series(job)[1]
    assert not series.is_angle
    assert series.rows[-1].value == pytest.approx((184.6 * 2 + 184.5) / 3 - (182.0 * 2 + 182.1) / 3)
    assert series.rows[-1].verdict is Verdict.OUT


def test_what_was_not_measured_keeps_its_place_without_a_value(job):
    empty = heights(job, (), ())
    rows = attempt_series(with_attempts(job, empty))[0].rows
    assert rows[0].value is None
    assert rows[0].verdict is Verdict.MISSING
    assert rows[1].value is not None
    assert not attempt_series(job)[2].has_values


def plate(corner, tolerance):
    def change(job):
        limits = job.sheet.in_line.with_changes(tolerance=tolerance)
        readings = PlateReadings(
            method="plate",
            gauge="caliper",
            gap=(Length.typed("0.6 mm"),),
            corner=corner,
            height=Length.typed("300 mm"),
        )
        return job.with_changes(
            sheet=job.sheet.with_changes(in_line=limits),
            align=job.align.with_changes(in_line=readings),
        )

    return change


@pytest.mark.parametrize(
    "tolerance", [Angle.typed("0.3 deg"), Length.typed("0.4 mm")], ids=["angle", "length"]
)
def test_the_corner_of_the_gap_gives_the_side(job, tolerance):
    left = attempt_series(plate(Corner.LOWER_RIGHT, tolerance)(job))[2].rows[-1]
    right = attempt_series(plate(Corner.LOWER_LEFT, tolerance)(job))[2].rows[-1]
    assert left.value > 0
    assert right.value == -left.value


def test_a_twist_and_a_convergence_are_told_apart(job):
    spread = SpreadReadings(
        method="spread",
        gauge="caliper",
        upper=(Length.typed("238 mm"),),
        lower=(Length.typed("239 mm"),),
        height=Length.typed("150 mm"),
    )
    twisted = plate(Corner.LOWER_RIGHT, Angle.typed("0.3 deg"))(job)
    job = with_attempts(twisted, twisted.align)
    job = job.with_changes(align=job.align.with_changes(in_line=spread))
    rows = attempt_series(job)[2].rows
    assert [row.is_convergence for row in rows] == [False, True]
    assert attempt_series(job)[2].is_convergence


def test_a_leg_off_its_height_is_remarked_although_the_legs_are_alike(job):
    limits = job.sheet.protrusion.with_changes(target=SignedLength.typed("9 mm"))
    job = job.with_changes(
        sheet=job.sheet.with_changes(protrusion=limits),
        align=heights(job, (5, 5.1, 5), (5, 5, 5.1)).with_changes(
            protrusion=heights(job, (5, 5.1, 5), (5, 5, 5.1)).protrusion.with_changes(policy=None)
        ),
    )
    row = attempt_series(job)[0].rows[-1]
    assert abs(row.value) < 0.1
    assert row.verdict is Verdict.OUT
    assert "height" in row.remark


def test_an_empty_job_has_one_empty_row_of_each():
    series = attempt_series(Job())
    assert [len(each.rows) for each in series] == [1, 1, 1]
    assert not any(each.has_values for each in series)
