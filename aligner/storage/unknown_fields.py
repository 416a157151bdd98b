"""Fields of a newer minor version: taken out for reading, put back in their places for saving.

The trap: a program that reads what it knows and writes what it read loses, without a word,
everything its newer sister put in. A place in a list may shift meanwhile, so an entry with a
name is found again by its name.
"""

from __future__ import annotations

import copy
from dataclasses import dataclass
from typing import Any

from pydantic import BaseModel, ValidationError

Fields = dict[str, Any]

#: What an entry of a list is known by, as far as it has them.
_KNOWN_BY = ("name", "step", "point", "side")


@dataclass(frozen=True)
class Place:
    """A place in a list: its number from nought, and the name of the entry that stood there."""

    number: int
    name: str = ""


@dataclass(frozen=True)
class UnknownField:
    """A field that this version does not know.

    Attributes:
        path: names of fields and places in lists, from the top of the document.
        value: as parsed.
    """

    path: tuple[str | Place, ...]
    value: Any


@dataclass(frozen=True)
class Newer:
    """What a document of a newer minor version holds beyond what this version knows.

    Attributes:
        minor: the minor version that wrote it.
        unknown: the fields that this version does not know.
    """

    minor: int
    unknown: tuple[UnknownField, ...] = ()


def without_unknown(
    fields: Fields, model: type[BaseModel]
) -> tuple[Fields, tuple[UnknownField, ...]]:
    """A document's fields without those the model does not know, and these.

    Whatever else is wrong with the document is left for the model to refuse.
    """
    import json  # late, as below: only for a document of a newer minor version

    left = copy.deepcopy(fields)
    unknown: list[UnknownField] = []
    while True:
        try:
            model.model_validate_json(json.dumps(left))
        except ValidationError as error:
            locations = [
                detail["loc"] for detail in error.errors() if detail["type"] == "extra_forbidden"
            ]
            if not locations:
                return left, tuple(unknown)
            unknown += [_taken_out(left, location) for location in locations]
        else:
            return left, tuple(unknown)


def with_unknown(fields: Fields, unknown: tuple[UnknownField, ...]) -> Fields:
    """A document's fields with the unknown ones back in their places.

    One whose entry in a list or whose group is gone is gone with it.
    """
    for each in unknown:
        _put_back(fields, each)
    return fields


def _taken_out(fields: Fields, location: tuple[int | str, ...]) -> UnknownField:
    here: Any = fields
    path: list[str | Place] = []
    for part in location[:-1]:
        if isinstance(here, list) and isinstance(part, int):
            here = here[part]
            path.append(Place(part, _name_of(here)))
        elif isinstance(here, dict) and part in here:
            here = here[part]
            path.append(str(part))
        # else the part is a mark of the model's own, which is not in the document
    last = str(location[-1])
    return UnknownField((*path, last), here.pop(last))


def _put_back(fields: Fields, unknown: UnknownField) -> None:
    here: Any = fields
    for part in unknown.path[:-1]:
        if isinstance(part, Place):
            here = _found_again(here, part) if isinstance(here, list) else None
        elif isinstance(here, dict):
            here = here.get(part)
        if here is None:
            return
    last = unknown.path[-1]
    if isinstance(here, dict) and isinstance(last, str):
        here.setdefault(last, copy.deepcopy(unknown.value))


def _found_again(entries: list[Any], place: Place) -> Any:
    if place.name:
        same = [number for number, each in enumerate(entries) if _name_of(each) == place.name]
        if not same:
            return None
        # Several of one name, such as the log's entries of one step: the nearest place.
        return entries[min(same, key=lambda number: abs(number - place.number))]
    return entries[place.number] if place.number < len(entries) else None


def _name_of(entry: object) -> str:
    if not isinstance(entry, dict):
        return ""
    return "\n".join(entry[key] for key in _KNOWN_BY if isinstance(entry.get(key), str))
