"""What differs between two jobs is said field by field, in words."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any, get_args

import pytest
from hypothesis import HealthCheck, given, settings
from pydantic import BaseModel

from aligner.job import Job
from aligner.job.align import BarReadings, PlateReadings, ProtrusionReadings, SquaringPair
from aligner.job.job import Check, Prove
from aligner.job.log import LogEntry
from aligner.sheet import Fastener, Sheet
from aligner.sheet.quantities import Length, SignedLength
from aligner.storage.changes import changes
from aligner.storage.field_words import FIELD_WORDS
from tests.storage.strategies import jobs


def _readings(*typed: str) -> tuple[SignedLength, ...]:
    return tuple(SignedLength.typed(text) for text in typed)


def _left(*typed: str) -> Job:
    return _align(protrusion=ProtrusionReadings(left=_readings(*typed)))


def _align(**parts: Any) -> Job:
    return Job().with_changes(align=Job().align.with_changes(**parts))


AT = datetime(2026, 11, 25, 14, 2, tzinfo=UTC)
PLATE = PlateReadings(method="plate", gap=(Length.typed("0.2 mm"),))
SMALL = Fastener(name="cap", kind="fork_cap")

CASES: dict[str, tuple[Job, Job, tuple[str, ...]]] = {
    "nothing": (_left("4 mm"), _left("4 mm"), ()),
    "two readings more": (
        _left("4 mm"),
        _left("4 mm", "4.1 mm", "4.2 mm"),
        ("align, protrusion, left: 2 readings more",),
    ),
    "one reading fewer": (
        _left("4 mm", "5 mm"),
        _left("4 mm"),
        ("align, protrusion, left: 1 reading fewer",),
    ),
    "another reading": (
        _left("4.2 mm"),
        _left("4.3 mm"),
        ("align, protrusion, left, no. 1: “4.2 mm” is now “4.3 mm”",),
    ),
    "the first of two taken out": (
        _left("4.2 mm", "4.3 mm"),
        _left("4.3 mm"),
        (
            "align, protrusion, left, no. 1: “4.2 mm” is now “4.3 mm”",
            "align, protrusion, left: 1 reading fewer",
        ),
    ),
    "a text": (Job(title="a"), Job(title="b"), ("title: “a” is now “b”",)),
    "a text taken out": (Job(title="a"), Job(), ("title: “a” is gone",)),
    "a text of two lines": (
        Job(),
        Job(note="a\nb " + "c" * 60),
        (f"note: now “a b {'c' * 35}…”",),
    ),
    "a part filled in": (Job(), _align(in_line=PLATE), ("align, in line: now filled in",)),
    "a part taken out": (_align(in_line=PLATE), Job(), ("align, in line: filled in is gone",)),
    "another method": (
        _align(in_line=PLATE),
        _align(in_line=BarReadings(method="bars")),
        (
            "align, in line, method: “plate” is now “bars”",
            "align, in line, gap: 1 reading fewer",
            "align, in line, face: “front” is gone",
        ),
    ),
    "a pair": (Job(), _align(squaring=(SquaringPair(),)), ("align, squaring: 1 pair more",)),
    "a fastener": (
        Job(),
        Job(sheet=Sheet(fasteners=(SMALL,))),
        ("sheet, fasteners: 1 fastener more",),
    ),
    "bolts": (
        Job(sheet=Sheet(fasteners=(SMALL,))),
        Job(sheet=Sheet(fasteners=(SMALL.with_changes(bolts=2),))),
        ("sheet, fasteners, cap, bolts: “1” is now “2”",),
    ),
    "a tick": (Job(), Job(log=(LogEntry(step="x", at=AT),)), ("log: 1 entry more",)),
    "a check done": (
        Job(prove=Prove(checks=(Check(name="x"),))),
        Job(prove=Prove(checks=(Check(name="x", done=True),))),
        ("prove, checks, x, done: no is now yes",),
    ),
}


@pytest.mark.parametrize(("before", "after", "words"), CASES.values(), ids=CASES.keys())
def test_changes_are_said_in_words(before: Job, after: Job, words: tuple[str, ...]) -> None:
    assert changes(before, after) == words


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(jobs(), jobs())
def test_there_are_changes_exactly_where_two_jobs_are_written_differently(
    one: Job, other: Job
) -> None:
    is_same = one.model_dump(mode="json") == other.model_dump(mode="json")

    assert (changes(one, other) == ()) is is_same
    assert changes(one, one) == ()
    assert all("\n" not in sentence for sentence in changes(one, other))


def _models(kind: Any, found: set[type[BaseModel]]) -> set[type[BaseModel]]:
    """Every model that a document of this kind is made of."""
    if isinstance(kind, type) and issubclass(kind, BaseModel) and kind not in found:
        found.add(kind)
        for field in kind.model_fields.values():
            _models(field.annotation, found)
    for part in get_args(kind):
        _models(part, found)
    return found


def test_every_field_has_a_word_that_can_be_said_in_another_language() -> None:
    fields = {name for model in _models(Job, set()) for name in model.model_fields}
    assert {name.replace("_", " ") for name in fields} <= FIELD_WORDS
