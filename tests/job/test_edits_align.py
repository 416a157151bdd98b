"""Edits of the alignment: nothing read is lost, and only a reading begins an attempt."""

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.geometry import Corner, Policy
from aligner.job import Job, PlateReadings
from aligner.job.edits_align import (
    has_readings,
    readings_by,
    with_another_pair,
    with_attempt_closed,
    with_distances,
    with_in_line,
    with_in_line_gauge,
    with_in_line_method,
    with_pair,
    with_policy,
    with_protrusion,
    without_pair,
)
from aligner.sheet.quantities import Length, SignedLength

AT = datetime(2026, 5, 2, 9, 0, tzinfo=UTC)
LATER = AT + timedelta(minutes=5)


def lengths(*texts):
    return tuple(Length.typed(text, "mm") for text in texts)


def with_plate_read(job=None):
    return with_in_line(
        job or Job(),
        "plate",
        AT,
        gap=lengths("0.4", "0.5"),
        corner=Corner.UPPER_LEFT,
        height=Length.typed("150 mm"),
    )


@given(st.lists(st.sampled_from(["plate", "bars", "spread"]), max_size=12))
def test_no_walk_through_the_methods_loses_a_reading(walk):
    start = with_plate_read()
    job = start
    for method in walk:
        job = with_in_line_method(job, method)

    assert with_in_line_method(job, "plate").align.in_line == start.align.in_line
    parts = [job.align.in_line, *job.align.in_line_others]
    assert sum(readings_by(part) for part in parts) == 2
    assert len({part.method for part in parts}) == len(parts)
    assert has_readings(job.align)


def test_a_method_that_is_not_known_is_a_mistake_of_the_program():
    with pytest.raises(ValueError, match="no method"):
        with_in_line_method(Job(), "laser")


def test_another_method_takes_the_gauge_along():
    job = with_in_line_method(with_in_line_gauge(Job(), "feeler gauges"), "bars")

    assert job.align.in_line.gauge == "feeler gauges"


@pytest.mark.parametrize(
    "edit",
    [
        pytest.param(lambda job: with_policy(job, Policy.SHARE), id="policy"),
        pytest.param(with_another_pair, id="another-pair"),
        pytest.param(lambda job: with_in_line_method(job, "bars"), id="method"),
        pytest.param(lambda job: with_in_line_gauge(job, "rule"), id="gauge"),
        pytest.param(
            lambda job: with_in_line(job, "plate", AT, height=Length.typed("150 mm")),
            id="plate-height",
        ),
        pytest.param(lambda job: with_protrusion(job, "left", (), AT), id="no-reading"),
    ],
)
def test_what_is_set_up_does_not_begin_the_attempt(edit):
    assert edit(Job()).align.begun is None


def test_the_first_reading_begins_the_attempt_and_later_ones_do_not():
    job = with_protrusion(Job(), "left", (SignedLength.typed("5 mm"),), AT)
    job = with_protrusion(job, "right", (SignedLength.typed("5 mm"),), LATER)

    assert job.align.begun == AT


def test_the_same_readings_again_are_no_edit():
    job = with_plate_read()

    assert with_in_line(job, "plate", LATER, gap=lengths("0.4", "0.5")) is job
    assert with_in_line(Job(), "plate", AT, gap=()) == Job()


def test_an_attempt_is_put_by_whole_and_keeps_what_is_set_once():
    job = with_another_pair(with_plate_read())
    job = with_pair(job, 0, name="lugs", frame_setback=SignedLength.typed("40 mm"))
    job = with_distances(job, 0, "left", lengths("180"), AT)
    job = with_in_line_method(with_policy(job, Policy.SHARE), "spread")
    closed = with_attempt_closed(job, LATER)

    assert closed.attempts[-1].align == job.align
    assert not has_readings(closed.align)
    assert closed.align.protrusion.policy is Policy.SHARE
    assert closed.align.squaring[0].frame_setback == SignedLength.typed("40 mm")
    assert closed.align.in_line_others == (
        PlateReadings(method="plate", height=Length.typed("150 mm")),
    )


def test_readings_kept_by_another_method_are_worth_an_attempt():
    job = with_in_line_method(with_plate_read(), "bars")

    assert len(with_attempt_closed(job, LATER).attempts) == 1


def test_pairs_keep_their_order_and_their_names_apart():
    job = with_another_pair(with_another_pair(with_another_pair(Job())))
    assert [pair.name for pair in job.align.squaring] == ["pair 1", "pair 2", "pair 3"]

    fewer = without_pair(job, 1)
    assert [pair.name for pair in fewer.align.squaring] == ["pair 1", "pair 3"]
    again = with_another_pair(fewer)
    assert len({pair.name for pair in again.align.squaring}) == 3


def test_what_was_typed_for_a_method_that_was_left_meanwhile_is_kept_with_it():
    job = with_in_line_method(with_plate_read(), "bars")
    late = with_in_line(job, "plate", LATER, gap=lengths("0.6"))

    assert late.align.in_line == job.align.in_line
    assert late.align.in_line_others[0].gap == lengths("0.6")
    new = with_in_line(job, "spread", LATER, upper=lengths("238"))
    assert [part.method for part in new.align.in_line_others] == ["plate", "spread"]


def test_a_pair_that_has_gone_takes_nothing():
    assert with_distances(Job(), 0, "left", lengths("180"), AT) == Job()
    assert with_pair(Job(), 0, name="lugs") == Job()
