"""The rows in resources/order/, read once and checked.

The trap: these files are meant to be edited by a mechanic, and a row without its reason or
its source, or with a misspelt field, would change the order of work without a word.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from aligner.data_files import resource
from aligner.errors import AlignerError
from aligner.language import say


class UnusableTable(AlignerError):
    """A file in resources/order/ cannot be used as it stands."""


def table(name: str) -> dict[str, Any]:
    """A whole file of resources/order/, `name` without its ending.

    Raises:
        UnusableTable: the file is no JSON object.
    """
    try:
        found = json.loads(resource("order", f"{name}.json").read_text(encoding="utf-8"))
    except ValueError as fault:
        raise UnusableTable(
            f"order/{name}.json", say("not readable as JSON: {fault}", fault=fault)
        ) from fault
    if not isinstance(found, dict):
        raise UnusableTable(
            f"order/{name}.json", say("not an object"), say("give 'about' and 'rows'")
        )
    return found


def rows(
    name: str, required: Mapping[str, type], optional: Mapping[str, type]
) -> list[dict[str, Any]]:
    """The checked rows of a file; in the order of the file.

    Args:
        name: of the file, without its ending.
        required: the fields each row must have, with their types; a text must not be empty.
        optional: the fields a row may have.

    Raises:
        UnusableTable: a row lacks a field, or has one that is unknown, empty or of another type.
    """
    return [
        checked(
            say("{file} row {number}", file=f"order/{name}.json", number=number),
            row,
            required,
            optional,
        )
        for number, row in enumerate(table(name).get("rows", []), 1)
    ]


def checked(
    where: str, row: object, required: Mapping[str, type], optional: Mapping[str, type]
) -> dict[str, Any]:
    """One row, unchanged, once its fields are found right.

    Raises:
        UnusableTable: a field is missing, unknown, empty or of another type.
    """
    if not isinstance(row, dict):
        raise UnusableTable(where, say("not an object"), say("give each row as fields with values"))
    if missing := sorted(required.keys() - row.keys()):
        raise UnusableTable(
            where,
            say("without {fields}", fields=", ".join(missing)),
            say("give every row these fields"),
        )
    if unknown := sorted(row.keys() - required.keys() - optional.keys()):
        known = ", ".join([*required, *optional])
        raise UnusableTable(
            where,
            say("unknown field {fields}", fields=", ".join(unknown)),
            say("the fields are {fields}", fields=known),
        )
    for field, value in row.items():
        wanted = required.get(field) or optional[field]
        fits = isinstance(value, wanted) and (wanted is bool or not isinstance(value, bool))
        if not fits:
            raise UnusableTable(
                f"{where}, {field}", f"{value!r}", say("give a {type}", type=wanted.__name__)
            )
        if value == "" and field in required:
            raise UnusableTable(f"{where}, {field}", say("empty"), say("say it in a sentence"))
    return row
