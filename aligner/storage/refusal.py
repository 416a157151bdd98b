"""Turning what a model refuses into one sentence: the field's path, what is wrong, what is right.

The trap: a validator's own words ("Input should be a valid tuple") mean nothing to a
mechanic, and its locations hold marks of its own that are not in the document.
"""

from __future__ import annotations

import re
from typing import Any

from pydantic import ValidationError
from pydantic_core import ErrorDetails

from aligner.errors import AlignerError
from aligner.language import inside, marked, say, say_count

_LONGEST_SHOWN = 40
_DATE_AND_TIME = marked("write it as “2026-11-25T14:02:00+01:00”")
_DATE = marked("write it as “2026-11-25”")


class UnusableDocument(AlignerError):
    """A document cannot be used as it is. `where` holds the field's path in it."""


def refusal(error: ValidationError, document: object) -> UnusableDocument:
    """The first thing wrong with a document, in words.

    Args:
        error: what the model raised.
        document: the document as parsed JSON, by which the path is told from the model's marks.
    """
    details = error.errors(include_url=False)
    first = details[0]
    path = field_path(first["loc"], document)
    cause = first.get("ctx", {}).get("error")
    if isinstance(cause, AlignerError) and cause.where:
        path = f"{path}.{cause.where}" if path else cause.where
    understood, wanted = _sentence(first)
    if len(details) > 1:
        more = len(details) - 1
        others = say_count(
            "(and {count} more thing is wrong)", "(and {count} more things are wrong)", more
        )
        wanted = f"{wanted} {others}"
    return UnusableDocument(path, understood, wanted.strip())


def field_path(location: tuple[int | str, ...], document: object) -> str:
    """A field's path as a person would write it: "sheet.fasteners[2].torque.nominal".

    Args:
        location: where the model says it is.
        document: the document as parsed JSON; what is not in it is a mark of the model's own,
            but for the last part, which may be the name of a missing field.
    """
    kept: list[int | str] = []
    here: Any = document
    for position, part in enumerate(location):
        is_last = position == len(location) - 1
        if isinstance(part, int) and isinstance(here, list) and part < len(here):
            kept.append(part)
            here = here[part]
        elif isinstance(part, str) and isinstance(here, dict):
            is_mark = part not in here and (not is_last or part == here.get("method"))
            if not is_mark:
                kept.append(part)
                here = here.get(part)
    return written_path(tuple(kept))


def written_path(parts: tuple[int | str, ...]) -> str:
    """Names and places in lists as one path: `gauges["depth gauge"].resolution`."""
    path = ""
    for part in parts:
        if isinstance(part, int):
            path += f"[{part}]"
        elif part.isidentifier() and len(part) <= _LONGEST_SHOWN:
            path += f".{part}" if path else part
        else:
            path += f'["{_shortened(part)}"]'
    return path


def _sentence(detail: ErrorDetails) -> tuple[str, str]:
    context = detail.get("ctx", {})
    given = _quoted(detail.get("input"))
    cause = context.get("error")
    match detail["type"]:
        case "value_error" if isinstance(cause, AlignerError):
            return _one_line(cause.understood), _one_line(cause.wanted)
        case "extra_forbidden":
            return say("this field is not known"), say("check its spelling, or take it out")
        case "missing":
            return say("this field is missing"), say("it must be given")
        case "literal_error" | "enum":
            return say("{given} is not known here", given=given), _possible(context["expected"])
        case "union_tag_invalid":
            return (
                say(
                    "the {field} “{given}” is not known here",
                    field=_plain(context["discriminator"]),
                    given=_shortened(str(context["tag"])),
                ),
                _possible(context["expected_tags"]),
            )
        case "union_tag_not_found":
            name = _plain(context["discriminator"])
            return (
                say("it does not say its {field}", field=name),
                say("give the field “{field}”", field=name),
            )
        case "string_type":
            return say("{given} is not text", given=given), say("put it in quotation marks")
        case "string_too_short":
            return say("this text is empty"), say("it must be given")
        case "string_unicode":
            return say("this text holds half a character"), say("type that text again")
        case "tuple_type":
            return say("{given} is not a list", given=given), say("put it in square brackets")
        case "model_type" | "model_attributes_type" | "dict_type":
            return (
                say("{given} is not a group of fields", given=given),
                say("put it in curly brackets"),
            )
        case "bool_type":
            return (
                say("{given} is neither true nor false", given=given),
                say("write true or false"),
            )
        case "int_type" | "int_parsing" | "int_from_float" | "int_parsing_size":
            return (
                say("{given} is not a whole number", given=given),
                say("write it without quotation marks, such as 2"),
            )
        case "greater_than_equal":
            return (
                say("{given} is too small", given=given),
                say("it is {limit} or more", limit=context["ge"]),
            )
        case "less_than_equal":
            return (
                say("{given} is too large", given=given),
                say("it is {limit} or less", limit=context["le"]),
            )
        case kind if kind.startswith("datetime_") or kind.startswith("timezone_"):
            return say("{given} is not a date and time", given=given), say(_DATE_AND_TIME)
        case kind if kind.startswith("date_"):
            return say("{given} is not a date", given=given), say(_DATE)
        case "json_invalid":
            return say("this is not JSON text"), say("take another copy of it")
        case _:
            words = _one_line(detail["msg"])
            why = inside(words)
            return say("{given} cannot be used here ({why})", given=given, why=why), ""


def _quoted(given: object) -> str:
    match given:
        case dict():
            return say("a group of fields")
        case list() | tuple():
            return say("a list")
        case None:
            return "null"
        case bool():
            return "true" if given else "false"
        case str():
            return say("“{text}”", text=_shortened(given))
        case _:
            return _shortened(str(given))


def _possible(expected: str) -> str:
    """What may stand here, from the model's list: "'a', 'b' or 'c'", of kinds "'a', 'b', 'c'"."""
    *others, last = re.split(", | or ", _one_line(expected).replace("'", ""))
    names = say("{a} or {b}", a=", ".join(others), b=last) if others else last
    return say("it can be {names}", names=names)


def _plain(name: str) -> str:
    return name.strip("'")


def _shortened(text: str) -> str:
    line = _one_line(text)
    return line if len(line) <= _LONGEST_SHOWN else line[: _LONGEST_SHOWN - 1] + "…"


def _one_line(text: str) -> str:
    """Text that stays on one line and shows what cannot be printed as a mark."""
    return "".join(letter if letter.isprintable() else "·" for letter in text)
