"""Documents come back as they went out, and what cannot be used is refused in one line."""

from __future__ import annotations

import json

import pytest
from hypothesis import HealthCheck, given, settings

from aligner.job import Job
from aligner.sheet import Sheet
from aligner.storage.documents import (
    LARGEST_BYTES,
    NewerDocument,
    as_bytes,
    job_from,
    job_to_read,
    sheet_from,
    sheet_to_read,
)
from aligner.storage.migration import MINOR, VERSION
from aligner.storage.refusal import UnusableDocument
from tests.storage.strategies import jobs, sheets

_SLOW_IS_FINE = settings(
    max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow]
)


@_SLOW_IS_FINE
@given(jobs())
def test_a_job_is_the_same_after_writing_and_reading(job: Job) -> None:
    assert job_from(as_bytes(job)) == job


@_SLOW_IS_FINE
@given(sheets())
def test_a_sheet_is_the_same_after_writing_and_reading(sheet: Sheet) -> None:
    assert sheet_from(as_bytes(sheet)) == sheet


@_SLOW_IS_FINE
@given(jobs())
def test_the_same_job_is_always_written_in_the_same_bytes(job: Job) -> None:
    assert as_bytes(job_from(as_bytes(job))) == as_bytes(job)


def test_a_document_says_in_its_first_lines_what_it_is() -> None:
    lines = as_bytes(Job(title="front end refit")).decode().splitlines()

    assert lines[1:5] == [
        ' "document": "job",',
        ' "version": 1,',
        f' "minor": {MINOR},',
        ' "title": "front end refit",',
    ]


def test_an_empty_sheet_needs_no_more_than_its_head() -> None:
    assert sheet_from(b'{"document": "sheet", "version": 1}') == Sheet()


def test_a_byte_order_mark_is_passed_over() -> None:
    assert job_from(b"\xef\xbb\xbf" + as_bytes(Job(title="x"))) == Job(title="x")


def test_half_a_character_never_keeps_a_job_from_being_written() -> None:
    job = Job.model_construct(title="left \ud83d leg")

    assert json.loads(as_bytes(job))["title"] == "left ? leg"


HEAD = {"document": "job", "version": VERSION}

BAD_TEXT = {
    "empty": (b"", "the file is empty; take another copy of it"),
    "blank": (b" \n", "the file is empty; take another copy of it"),
    "only a byte-order mark": (b"\xef\xbb\xbf", "the file is empty; take another copy of it"),
    "too large": (
        b" " * (LARGEST_BYTES + 1),
        "the file is too large; a job is far smaller than 20 MB",
    ),
    "not UTF-8": (
        b'{\n"title": "\xff"}',
        "line 2 holds bytes that are not UTF-8 text; save it as UTF-8",
    ),
    "a picture": (b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR", "damaged, or not a job"),
    "a photograph": (b"\xff\xd8\xff\xe0\0\x10JFIF\0", "damaged, or not a job"),
    "filled with nought bytes": (bytes(4096), "damaged, or not a job"),
    "UTF-16": (
        "{}".encode("utf-16"),
        "the text is not in UTF-8 but in UTF-16 or UTF-32; save it as UTF-8",
    ),
    "cut short between fields": (
        b'{"document": "job",',
        "line 1, column 20: the document ends too early, as if it had been cut short; "
        "take the copy before it (“.previous”) or another one",
    ),
    "cut short in a text": (
        b'{"document": "jo',
        "line 1, column 14: the document ends too early, as if it had been cut short; "
        "take the copy before it (“.previous”) or another one",
    ),
    "not JSON": (
        b"left leg 4.2 mm",
        "line 1, column 1: a value is missing or misspelt; give text in double quotes",
    ),
    "comma missing": (
        b'{"a": 1\n"b": 2}',
        "line 2, column 1: a comma or a closing bracket is missing; put it in",
    ),
    "colon missing": (b'{"a" 1}', 'line 1, column 6: a colon is missing; write "name": "value"'),
    "name without quotes": (
        b"{a: 1}",
        "line 1, column 2: a field's name in double quotes belongs here; quote the name, or take "
        "out the comma before it",
    ),
    "two documents": (
        b"{}{}",
        "line 1, column 3: something stands after the end of the document; take it out",
    ),
    "line break in a text": (
        b'{"a": "x\ny"}',
        "line 1, column 9: a text holds a line break or another control character; "
        "write \\n for a line break",
    ),
    "lone backslash": (
        b'{"a": "\\x"}',
        "line 1, column 8: a backslash in a text stands alone; write it twice",
    ),
    "bad \\u": (
        b'{"a": "\\uZZZZ"}',
        "line 1, column 9: \\u is not followed by four digits; write four, as in \\u00b7",
    ),
    "NaN": (b'{"a": [NaN]}', "a[0]: NaN is not a number; write the value as text with its unit"),
    "Infinity": (
        b'{"a": -Infinity}',
        "a: -Infinity is not a number; write the value as text with its unit",
    ),
    "huge whole number": (
        b'{"a": ' + b"9" * 5000 + b"}",
        f"a: {'9' * 39}… is too large a number; write it shorter",
    ),
    "huge exponent": (
        b'{"a": 1e999}',
        "a: 1e999 is too large or too long a number; write it shorter",
    ),
    "field twice": (
        b'{"a": {"left": 1, "right": 2, "left": 3}}',
        "a: the field “left” stands there twice; take one of them out",
    ),
    "half a character": (
        b'{"a": {"b": ["\\uD83D"]}}',
        "a.b[0]: a text holds half a character (a lone \\ud… mark); type that text again",
    ),
    "half a character in a name": (
        b'{"a": {"\\udc00": 1}}',
        "a: a text holds half a character (a lone \\ud… mark); type that text again",
    ),
    "deep lists": (
        b"[" * 100_000,
        "brackets are nested far too deeply for a document of this kind; take another copy of it",
    ),
    "deep groups": (
        b'{"a":' * 40 + b"1" + b"}" * 40,
        "a.a.a.a: brackets are nested far too deeply for a document of this kind; "
        "take another copy of it",
    ),
    "a list": (b"[]", 'this is not a job document; it should begin with "{"'),
    "someone else's JSON": (
        b'{"name": "x"}',
        "document: the file does not say that it is one of this program's documents; "
        'a job says "document": "job"',
    ),
    "a sheet for a job": (
        b'{"document": "sheet", "version": 1}',
        'document: this is a sheet, not a job; a job says "document": "job"',
    ),
    "version missing": (b'{"document": "job"}', 'version: it is missing; write "version": 1'),
    "version nought": (
        b'{"document": "job", "version": 0}',
        'version: this is not a version; write "version": 1',
    ),
    "version true": (
        b'{"document": "job", "version": true}',
        'version: this is not a version; write "version": 1',
    ),
    "version as text": (
        b'{"document": "job", "version": "1"}',
        'version: this is not a version; write "version": 1',
    ),
}


@pytest.mark.parametrize(("content", "sentence"), BAD_TEXT.values(), ids=BAD_TEXT.keys())
def test_what_is_no_document_is_refused_in_one_line(content: bytes, sentence: str) -> None:
    with pytest.raises(UnusableDocument) as refused:
        job_from(content)

    assert str(refused.value) == sentence


def test_a_whole_pair_of_surrogate_escapes_is_one_character() -> None:
    content = json.dumps({**HEAD, "title": "🔧"}).encode()  # written as \ud83d\udd27

    assert job_from(content).title == "🔧"


NEWER = {
    "document": "job",
    "version": VERSION + 1,
    "title": "refit",
    "torch": "on",
    "sheet": {"version": VERSION + 1, "name": "invented bike", "fork": {"colour": "black"}},
    "align": {"in_line": {"method": "plate", "gap": ["0.2 mm"], "lamp": 1}},
}


def test_a_newer_document_is_refused_with_its_version() -> None:
    with pytest.raises(NewerDocument) as refused:
        job_from(json.dumps(NEWER).encode())

    assert str(refused.value) == (
        f"version: this job was made by a newer version of the program ({VERSION + 1}); "
        f"this one reads version {VERSION}: update the program to work on it"
    )


def test_a_newer_sheet_inside_a_job_is_newer_too() -> None:
    with pytest.raises(NewerDocument) as refused:
        job_from(json.dumps({**HEAD, "sheet": {"version": VERSION + 1}}).encode())

    assert refused.value.where == "sheet.version"


def test_a_newer_job_can_be_read_with_what_is_left_out() -> None:
    with pytest.raises(NewerDocument) as refused:
        job_from(json.dumps(NEWER).encode())

    read = job_to_read(refused.value)

    assert read.document.title == "refit"
    assert read.document.sheet.name == "invented bike"
    assert set(read.left_out) == {"torch", "sheet.fork.colour", "align.in_line.lamp"}


def test_a_newer_sheet_can_be_read_with_what_is_left_out() -> None:
    with pytest.raises(NewerDocument) as refused:
        sheet_from(b'{"document": "sheet", "version": 9, "name": "x", "paint": []}')

    read = sheet_to_read(refused.value)

    assert (read.document.name, read.left_out) == ("x", ("paint",))


def test_a_newer_job_of_another_make_is_refused_even_to_read() -> None:
    with pytest.raises(NewerDocument) as refused:
        job_from(json.dumps({**NEWER, "title": ["refit"]}).encode())

    with pytest.raises(UnusableDocument, match=r"title: a list is not text"):
        job_to_read(refused.value)
