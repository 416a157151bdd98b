"""Every kind of refusal a model can make reads as a mechanic's sentence."""

from __future__ import annotations

import json
from typing import Any

import pytest

from aligner.job import Job
from aligner.sheet import Sheet
from aligner.storage.documents import job_from
from aligner.storage.migration import VERSION
from aligner.storage.refusal import UnusableDocument, field_path, written_path

DATE_AND_TIME = "write it as “2026-11-25T14:02:00+01:00”"


def _fastener(**fields: Any) -> dict[str, Any]:
    return {"sheet": {"fasteners": [{"name": "stem nut", "kind": "stem_nut", **fields}]}}


def _at(time: object) -> dict[str, Any]:
    return {"log": [{"step": "x", "at": time}]}


def _signed(on: object) -> dict[str, Any]:
    return {"prove": {"sign_off": {"name": "x", "on": on}}}


BOLTS = "sheet.fasteners[0].bolts"
WHOLE = "is not a whole number; write it without quotation marks, such as 2"

SENTENCES: list[tuple[str, dict[str, Any], str]] = [
    ("string_type", {"title": 5}, "title: 5 is not text; put it in quotation marks"),
    ("string_type", {"title": None}, "title: null is not text; put it in quotation marks"),
    (
        "extra_forbidden",
        {"titel": "x"},
        "titel: this field is not known; check its spelling, or take it out",
    ),
    (
        "extra_forbidden",
        {"align": {"in_line": {"method": "bars", "gap": []}}},
        "align.in_line.gap: this field is not known; check its spelling, or take it out",
    ),
    (
        "missing",
        {"sheet": {"fasteners": [{"name": "stem nut"}]}},
        "sheet.fasteners[0].kind: this field is missing; it must be given",
    ),
    (
        "string_too_short",
        {"sheet": {"fasteners": [{"name": "", "kind": "x"}]}},
        "sheet.fasteners[0].name: this text is empty; it must be given",
    ),
    (
        "tuple_type",
        {"align": {"protrusion": {"left": "4.2 mm"}}},
        "align.protrusion.left: “4.2 mm” is not a list; put it in square brackets",
    ),
    (
        "model_type",
        {"sheet": [1]},
        "sheet: a list is not a group of fields; put it in curly brackets",
    ),
    (
        "model_attributes_type",
        {"align": {"in_line": 3}},
        "align.in_line: 3 is not a group of fields; put it in curly brackets",
    ),
    (
        "dict_type",
        {"gauges": []},
        "gauges: a list is not a group of fields; put it in curly brackets",
    ),
    (
        "bool_type",
        {"prove": {"checks": [{"name": "x", "done": "yes"}]}},
        "prove.checks[0].done: “yes” is neither true nor false; write true or false",
    ),
    ("int_type", _fastener(bolts="2"), f"{BOLTS}: “2” {WHOLE}"),
    ("int_type", _fastener(bolts=True), f"{BOLTS}: true {WHOLE}"),
    ("int_type", _fastener(bolts=2.5), f"{BOLTS}: 2.5 {WHOLE}"),
    ("greater_than_equal", _fastener(bolts=0), f"{BOLTS}: 0 is too small; it is 1 or more"),
    ("less_than_equal", _fastener(bolts=13), f"{BOLTS}: 13 is too large; it is 12 or less"),
    (
        "less_than_equal",
        _fastener(bolts=10**30),
        f"{BOLTS}: 1000000000000000000000000000000 is too large; it is 12 or less",
    ),
    (
        "enum",
        {"align": {"protrusion": {"policy": "halves"}}},
        "align.protrusion.policy: “halves” is not known here; it can be to_target, to_as_found, "
        "left_to_right, right_to_left or share",
    ),
    (
        "literal_error",
        {"sheet": {"document": "job"}},
        "sheet.document: “job” is not known here; it can be sheet",
    ),
    (
        "union_tag_invalid",
        {"align": {"in_line": {"method": "laser"}}},
        "align.in_line: the method “laser” is not known here; it can be plate, bars or spread",
    ),
    (
        "union_tag_not_found",
        {"align": {"in_line": {"gap": []}}},
        "align.in_line: it does not say its method; give the field “method”",
    ),
    (
        "datetime_from_date_parsing",
        _at("2026-13-01"),
        f"log[0].at: “2026-13-01” is not a date and time; {DATE_AND_TIME}",
    ),
    (
        "datetime_parsing",
        _at("2026-11-25T14:02:00+99:00"),
        f"log[0].at: “2026-11-25T14:02:00+99:00” is not a date and time; {DATE_AND_TIME}",
    ),
    ("datetime_type", _at(5), f"log[0].at: 5 is not a date and time; {DATE_AND_TIME}"),
    (
        "date_from_datetime_parsing",
        _signed("yesterday"),
        "prove.sign_off.on: “yesterday” is not a date; write it as “2026-11-25”",
    ),
    (
        "date_type",
        _signed(5),
        "prove.sign_off.on: 5 is not a date; write it as “2026-11-25”",
    ),
    (
        "value_error",
        {"align": {"protrusion": {"left": [4.2]}}},
        "align.protrusion.left[0]: 4.2 is a bare number; write it as text with its unit, such as "
        "“4.2 mm”",
    ),
    (
        "value_error",
        {"gauges": {"depth gauge": {"resolution": "0.05"}}},
        'gauges["depth gauge"].resolution: “0.05” is a number without a unit; write it as “4.2 mm”',
    ),
    (
        "value_error",
        _fastener(torque={"nominal": "23 N·m", "tolerance": 10}),
        "sheet.fasteners[0].torque.tolerance: 10 is a bare number; write it as text, such as "
        "“10 %” or “23 N·m”",
    ),
    (
        "value_error",
        _fastener(torque={"low": "23 N·m"}),
        "sheet.fasteners[0].torque: no complete torque; give nominal, or both low and high",
    ),
    (
        "value_error",
        {"sheet": {"fasteners": [{"name": "cap", "kind": "fork_cap"}] * 2}},
        "sheet.fasteners: “cap” stands there twice; give each its own name",
    ),
    (
        "several",
        {"title": 5, "note": 6},
        "title: 5 is not text; put it in quotation marks (and 1 more thing is wrong)",
    ),
    (
        "long and unprintable",
        _at("\n" * 3 + "x" * 60),
        f"log[0].at: “···{'x' * 36}…” is not a date and time; {DATE_AND_TIME}",
    ),
]


@pytest.mark.parametrize(
    ("fields", "sentence"),
    [(fields, sentence) for _, fields, sentence in SENTENCES],
    ids=[f"{kind}-{number}" for number, (kind, _, _) in enumerate(SENTENCES)],
)
def test_a_refusal_names_field_and_finding_and_what_is_right(
    fields: dict[str, Any], sentence: str
) -> None:
    content = json.dumps({"document": "job", "version": VERSION, **fields}).encode()

    with pytest.raises(UnusableDocument) as refused:
        job_from(content)

    assert str(refused.value) == sentence


#: What each kind of field in the models can be refused for, in JSON read strictly.
REFUSED_FOR = {
    "str": {"string_type", "string_too_short"},
    "int": {"int_type", "greater_than_equal", "less_than_equal"},
    "bool": {"bool_type"},
    "datetime": {"datetime_type", "datetime_parsing", "datetime_from_date_parsing"},
    "date": {"date_type", "date_from_datetime_parsing"},
    "enum": {"enum"},
    "literal": {"literal_error"},
    "tuple": {"tuple_type"},
    "dict": {"dict_type"},
    "model": {"model_type"},
    "model-fields": {"missing", "extra_forbidden"},
    "tagged-union": {"union_tag_invalid", "union_tag_not_found", "model_attributes_type"},
    "function-plain": {"value_error"},
    "function-after": {"value_error"},
    "nullable": set(),
    "default": set(),
    "definitions": set(),
    "definition-ref": set(),
    "model-field": set(),
}
#: Parts of a schema that say how it is written, not what is refused.
_NOT_READ = ("function", "serialization", "metadata", "ref", "cls", "config")


def _kinds(schema: object) -> set[str]:
    if isinstance(schema, list):
        return set().union(*map(_kinds, schema))
    if not isinstance(schema, dict):
        return set()
    own = {schema["type"]} if isinstance(schema.get("type"), str) else set()
    return own.union(*(_kinds(part) for key, part in schema.items() if key not in _NOT_READ))


@pytest.mark.parametrize("model", [Job, Sheet])
def test_every_kind_of_field_in_the_models_has_its_sentences_here(
    model: type[Job] | type[Sheet],
) -> None:
    model.model_rebuild()
    tested = {kind for kind, _, _ in SENTENCES}

    for kind in _kinds(model.__pydantic_core_schema__):
        assert kind in REFUSED_FOR, f"add the refusals of a field of kind {kind} to this table"
        assert REFUSED_FOR[kind] <= tested


@pytest.mark.parametrize(
    ("parts", "path"),
    [
        ((), ""),
        (("sheet", "fasteners", 2, "torque"), "sheet.fasteners[2].torque"),
        (("gauges", "depth gauge", "resolution"), 'gauges["depth gauge"].resolution'),
        (("gauges", ""), 'gauges[""]'),
        (("x" * 50,), f'["{"x" * 39}…"]'),
    ],
)
def test_a_path_is_written_as_a_person_would(parts: tuple[int | str, ...], path: str) -> None:
    assert written_path(parts) == path


def test_the_models_own_marks_are_left_out_of_a_path() -> None:
    document = {"align": {"in_line": {"method": "plate", "gap": ["x"]}}}

    assert field_path(("align", "in_line", "plate", "gap", 0), document) == "align.in_line.gap[0]"
    assert field_path(("align", "in_line", "plate"), document) == "align.in_line"
    assert field_path(("align", "in_line", "plate", "x"), document) == "align.in_line.x"
