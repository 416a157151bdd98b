"""A torque typed for one side is taken for the other when that is asked for, and never else."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from aligner.job import Job
from aligner.job.edits_sheet_sides import lacking_on_one_side, with_torques_of_the_other_side
from aligner.sheet import Fastener, Sheet, Side, ThreadCondition
from aligner.sheet.printed_torque import printed_torque

_AT = datetime(2026, 5, 4, 9, 0, tzinfo=UTC)


def _clamp(side: Side, printed: str = "", **more: object) -> Fastener:
    torque = printed_torque(printed, source="manual p. 112") if printed else None
    fields = {"name": f"{side.value} clamp", "kind": "top_clamp", "bolts": 2, **more}
    return Fastener(side=side, torque=torque, **fields)


def _job(*fasteners: Fastener, **more: object) -> Job:
    return Job(sheet=Sheet(name="an invented bike", fasteners=fasteners, **more))


def test_a_torque_goes_over_as_it_is_printed_with_its_source_and_thread():
    job = _job(_clamp(Side.LEFT, "18 lbf·ft", thread="M8x1.25"), _clamp(Side.RIGHT))
    left, right = with_torques_of_the_other_side(job, _AT).sheet.fasteners
    assert right.torque == left.torque
    assert right.torque is not None
    assert right.torque.source == "manual p. 112"
    assert right.thread == left.thread


def test_what_stands_on_the_other_side_already_is_left_alone():
    job = _job(_clamp(Side.LEFT, "18 lbf·ft"), _clamp(Side.RIGHT, "20 N·m"))
    assert lacking_on_one_side(job.sheet) == ()
    assert with_torques_of_the_other_side(job, _AT) == job


def test_a_source_typed_before_its_torque_stays():
    own = {"fasteners.right clamp.torque": "manual p. 9"}
    job = _job(_clamp(Side.LEFT, "18 lbf·ft"), _clamp(Side.RIGHT), sources=own)
    right = with_torques_of_the_other_side(job, _AT).sheet.fasteners[1]
    assert right.torque is not None
    assert right.torque.source == "manual p. 9"


def test_no_torque_goes_to_another_kind_another_number_of_bolts_or_one_of_several():
    known = _clamp(Side.LEFT, "18 lbf·ft")
    for other in (
        _clamp(Side.RIGHT, kind="lower_clamp"),
        _clamp(Side.RIGHT, bolts=1),
        _clamp(Side.LEFT, name="second clamp"),
    ):
        assert lacking_on_one_side(_job(known, other).sheet) == ()
    two = (_clamp(Side.RIGHT), _clamp(Side.RIGHT, name="second clamp"))
    assert lacking_on_one_side(_job(known, *two).sheet) == ()


@pytest.mark.parametrize(
    ("field", "here", "there"),
    [
        ("thread", "M8x1.25", "M10x1.25"),
        ("strength_class", "8.8", "aluminium"),
        ("thread_condition", ThreadCondition.DRY, ThreadCondition.OILED),
    ],
)
def test_no_torque_goes_to_a_bolt_that_is_known_to_be_another(field, here, there):
    known = _clamp(Side.LEFT, "18 lbf·ft", **{field: here})
    assert lacking_on_one_side(_job(known, _clamp(Side.RIGHT, **{field: there})).sheet) == ()
    assert lacking_on_one_side(_job(known, _clamp(Side.RIGHT, **{field: here})).sheet) == ((1, 0),)
