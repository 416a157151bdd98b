"""Turning what a model refuses into one sentence: the field's path, what is wrong, what is right.

The trap: a validator's own words ("Input should be a valid tuple") mean nothing to a
mechanic, and its locations hold marks of its own that are not in the document.
"""

from __future__ import annotations

from typing import Any

from pydantic import ValidationError
from pydantic_core import ErrorDetails

from aligner.errors import AlignerError


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
    understood, wanted = _sentence(first)
    if len(details) > 1:
        more = len(details) - 1
        wanted += f" (and {more} more {'thing is' if more == 1 else 'things are'} wrong)"
    return UnusableDocument(path, understood, wanted.strip())


def field_path(location: tuple[int | str, ...], document: object) -> str:
    """A field's path as a person would write it: "sheet.fasteners[2].torque.nominal"."""
    path = ""
    here: Any = document
    for position, part in enumerate(location):
        is_last = position == len(location) - 1
        if isinstance(part, int) and isinstance(here, list) and part < len(here):
            path += f"[{part}]"
            here = here[part]
        elif isinstance(part, str) and isinstance(here, dict) and (part in here or is_last):
            path += f".{part}" if path else part
            here = here.get(part)
    return path


def _sentence(detail: ErrorDetails) -> tuple[str, str]:
    context = detail.get("ctx", {})
    given = detail.get("input")
    cause = context.get("error")
    match detail["type"]:
        case "value_error" if isinstance(cause, AlignerError):
            place = f"{cause.where}: " if cause.where else ""
            return place + cause.understood, cause.wanted
        case "extra_forbidden":
            return "this field is not known", "check its spelling, or take it out"
        case "missing":
            return "this field is missing", "it must be given"
        case "literal_error" | "enum":
            return f"{_quoted(given)} is not known here", f"it can be {context['expected']}"
        case "union_tag_invalid":
            return f"{_quoted(context['tag'])} is not known here", (
                f"it can be {context['expected_tags']}"
            )
        case "union_tag_not_found":
            return "it does not say its method", "give “method”: plate, bars or spread"
        case "string_type":
            return f"{_quoted(given)} is not text", "put it in quotation marks"
        case "tuple_type":
            return f"{_quoted(given)} is not a list", "put it in square brackets"
        case "model_type" | "model_attributes_type" | "dict_type":
            return f"{_quoted(given)} is not a group of fields", "put it in curly brackets"
        case "json_invalid":
            return "this is not JSON", str(context.get("error", ""))
        case _:
            return f"{_quoted(given)}: {detail['msg'][:1].lower()}{detail['msg'][1:]}", ""


def _quoted(given: object) -> str:
    if isinstance(given, dict):
        return "a group of fields"
    if isinstance(given, list):
        return "a list"
    text = str(given)
    return f"“{text if len(text) <= 40 else text[:37] + '…'}”"
