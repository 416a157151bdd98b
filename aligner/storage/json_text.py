"""JSON text read strictly: what another program might read otherwise is refused by its place.

The trap: a lenient reader takes the last of two fields of one name, reads NaN as a number
and 1e999 as infinity, and lets half a character through; the next program to read the same
file then sees another job, or none.
"""

from __future__ import annotations

import json
from typing import Any

from aligner.language import marked, say
from aligner.storage.refusal import UnusableDocument, written_path

_DEEPEST = 32
_LONGEST_NUMBER = 40
_BYTE_ORDER_MARK = b"\xef\xbb\xbf"
_OTHER_ENCODINGS = (b"\xff\xfe", b"\xfe\xff", b"\x00\x00\xfe\xff")
_SYNTAX = {
    "Expecting value": (
        marked("a value is missing or misspelt"),
        marked("give text in double quotes"),
    ),
    "Expecting property name enclosed in double quotes": (
        marked("a field's name in double quotes belongs here"),
        marked("quote the name, or take out the comma before it"),
    ),
    "Expecting ':' delimiter": (marked("a colon is missing"), marked('write "name": "value"')),
    "Expecting ',' delimiter": (
        marked("a comma or a closing bracket is missing"),
        marked("put it in"),
    ),
    "Extra data": (marked("something stands after the end of the document"), marked("take it out")),
    "Unterminated string starting at": (
        marked("a text has no closing quotation mark"),
        marked("put it in"),
    ),
    "Invalid control character at": (
        marked("a text holds a line break or another control character"),
        marked("write \\n for a line break"),
    ),
    "Invalid \\escape": (marked("a backslash in a text stands alone"), marked("write it twice")),
    "Invalid \\uXXXX escape": (
        marked("\\u is not followed by four digits"),
        marked("write four, as in \\u00b7"),
    ),
    "Illegal trailing comma before end of object": (
        marked("a comma too many"),
        marked("take it out"),
    ),
    "Illegal trailing comma before end of array": (
        marked("a comma too many"),
        marked("take it out"),
    ),
}
_NOT_JSON = (marked("this is not JSON text"), marked("put it right there"))


class _Fault:
    """Stands in the parsed document for what may not be there, until its path is known."""

    def __init__(self, understood: str, wanted: str) -> None:
        self.understood = understood
        self.wanted = wanted


def is_no_text(content: bytes) -> bool:
    """Whether a file was never a text, such as a picture, or was filled with nought bytes."""
    is_begun = content.removeprefix(_BYTE_ORDER_MARK).lstrip().startswith(b"{")
    return b"\0" in content and not is_begun and not content.startswith(_OTHER_ENCODINGS)


def text_of(content: bytes) -> str:
    """A file's bytes as text; a byte-order mark is passed over.

    Raises:
        UnusableDocument: empty, or not UTF-8.
    """
    content = content.removeprefix(_BYTE_ORDER_MARK)
    if not content.strip():
        raise UnusableDocument("", say("the file is empty"), say("take another copy of it"))
    try:
        return content.decode()
    except UnicodeDecodeError as error:
        if content.startswith(_OTHER_ENCODINGS):
            understood = say("the text is not in UTF-8 but in UTF-16 or UTF-32")
        else:
            line = content.count(b"\n", 0, error.start) + 1
            understood = say("line {line} holds bytes that are not UTF-8 text", line=line)
        raise UnusableDocument("", understood, say("save it as UTF-8")) from error


def parsed_text(text: str) -> object:
    """The values a JSON text holds.

    Raises:
        UnusableDocument: not JSON, or JSON that two programs could read in two ways.
    """
    try:
        parsed = json.loads(
            text,
            object_pairs_hook=_fields,
            parse_constant=_constant,
            parse_int=_whole_number,
            parse_float=_number,
        )
    except json.JSONDecodeError as error:
        raise _not_json(error) from error
    except RecursionError as error:
        raise _too_deep("") from error
    _check(parsed, [], may_hold_half_characters="\\ud" in text or "\\uD" in text)
    return parsed


def _fields(pairs: list[tuple[str, Any]]) -> object:
    fields = dict(pairs)
    if len(fields) == len(pairs):
        return fields
    seen: set[str] = set()
    for name, _ in pairs:
        if name in seen:
            break
        seen.add(name)
    return _Fault(
        say("the field “{field}” stands there twice", field=_shortened(name)),
        say("take one of them out"),
    )


def _constant(name: str) -> _Fault:
    return _Fault(
        say("{word} is not a number", word=name), say("write the value as text with its unit")
    )


def _whole_number(digits: str) -> object:
    if len(digits) > _LONGEST_NUMBER:
        return _Fault(
            say("{number} is too large a number", number=_shortened(digits)),
            say("write it shorter"),
        )
    return int(digits)


def _number(digits: str) -> object:
    number = float(digits)
    if len(digits) > _LONGEST_NUMBER or number in (float("inf"), float("-inf")):
        return _Fault(
            say("{number} is too large or too long a number", number=_shortened(digits)),
            say("write it shorter"),
        )
    return number


def _check(here: object, path: list[int | str], *, may_hold_half_characters: bool) -> None:
    """Raise the first fault in the document's order; `path` leads to `here`."""
    if isinstance(here, _Fault):
        raise UnusableDocument(written_path(tuple(path)), here.understood, here.wanted)
    if may_hold_half_characters and _has_half(here):
        raise _half_character(written_path(tuple(path)))
    if not isinstance(here, (dict, list)):
        return
    if len(path) >= _DEEPEST:
        raise _too_deep(written_path(tuple(path[:4])))
    inside = here.items() if isinstance(here, dict) else enumerate(here)
    for key, value in inside:
        if may_hold_half_characters or isinstance(value, (dict, list, _Fault)):
            path.append(key)
            _check(value, path, may_hold_half_characters=may_hold_half_characters)
            path.pop()


def _has_half(value: object) -> bool:
    """Whether a text, or a field's name, holds half a character."""
    texts = value if isinstance(value, dict) else (value,)
    return any(
        "\ud800" <= letter <= "\udfff" for text in texts if isinstance(text, str) for letter in text
    )


def _half_character(place: str) -> UnusableDocument:
    return UnusableDocument(
        place,
        say("a text holds half a character (a lone \\ud… mark)"),
        say("type that text again"),
    )


def _too_deep(place: str) -> UnusableDocument:
    return UnusableDocument(
        place,
        say("brackets are nested far too deeply for a document of this kind"),
        say("take another copy of it"),
    )


def _not_json(error: json.JSONDecodeError) -> UnusableDocument:
    place = say("line {line}, column {column}", line=error.lineno, column=error.colno)
    is_at_end = not error.doc[error.pos :].strip() or error.msg.startswith("Unterminated")
    if is_at_end and error.doc[:1] in ("{", "["):
        return UnusableDocument(
            place,
            say("the document ends too early, as if it had been cut short"),
            say("take the copy before it (“.previous”) or another one"),
        )
    understood, wanted = _SYNTAX.get(error.msg, _NOT_JSON)
    return UnusableDocument(place, say(understood), say(wanted))


def _shortened(text: str) -> str:
    return text if len(text) <= _LONGEST_NUMBER else text[: _LONGEST_NUMBER - 1] + "…"
