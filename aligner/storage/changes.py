"""What differs between two versions of a job or a sheet, in words, field by field.

The trap: "the copy is newer" helps nobody to choose. What helps is "align, protrusion, left:
2 readings more".
"""

from __future__ import annotations

from typing import Any

from aligner.job import Job
from aligner.language import say, say_count
from aligner.sheet import Sheet
from aligner.storage.field_words import field_word

Path = tuple[int | str, ...]

_LONGEST_SHOWN = 40


def changes(before: Job | Sheet, after: Job | Sheet) -> tuple[str, ...]:
    """The fields of `after` that are not as in `before`, one sentence each; () if none.

    A place in a list is said by the entry's name ("sheet, fasteners, left cap, bolts"), or by its
    number from one.
    """
    return tuple(_changes((), _fields(before), _fields(after)))


def _fields(document: Job | Sheet) -> dict[str, Any]:
    return document.model_dump(mode="json", exclude_none=True)


def _changes(path: Path, before: object, after: object) -> list[str]:
    if before == after:
        return []
    if isinstance(before, dict) and isinstance(after, dict):
        names = [*before, *(name for name in after if name not in before)]
        return [
            sentence
            for name in names
            for sentence in _changes((*path, name), before.get(name), after.get(name))
        ]
    if isinstance(before or after, list):
        return _list_changes(path, _entries(before), _entries(after))
    return [_change(_where(path), before, after)]


def _entries(found: object) -> list[Any]:
    return found if isinstance(found, list) else []  # a list not there has no entries


def _list_changes(path: Path, before: list[Any], after: list[Any]) -> list[str]:
    both = min(len(before), len(after))
    sentences = [
        sentence
        for place in range(both)
        for sentence in _changes(
            (*path, _name_of(path, before[place], after[place]) or place),
            before[place],
            after[place],
        )
    ]
    more = len(after) - len(before)
    if more:
        where, entries = _where(path), _counted(path, before or after, abs(more))
        sentences.append(
            say("{where}: {entries} more", where=where, entries=entries)
            if more > 0
            else say("{where}: {entries} fewer", where=where, entries=entries)
        )
    return sentences


def _name_of(path: Path, before: object, after: object) -> str:
    """The name that an entry had and has; "" if it has none or another now."""
    if not isinstance(before, dict) or not isinstance(after, dict):
        return ""
    name = before.get("name")
    if not isinstance(name, str) or name != after.get("name"):
        return ""
    return say(name) if path[-1:] == ("checks",) else name  # a check is kept in English


def _where(path: Path) -> str:
    parts = (
        say("no. {number}", number=part + 1)
        if isinstance(part, int)
        else _shortened(field_word(part))
        for part in path
    )
    return ", ".join(parts)


def _counted(path: Path, entries: list[Any], count: int) -> str:
    """So many entries of a list, by what they are called."""
    match next((part for part in reversed(path) if isinstance(part, str)), ""):
        case "squaring":
            return say_count("{count} pair", "{count} pairs", count)
        case "attempts":
            return say_count("{count} attempt", "{count} attempts", count)
        case "fasteners":
            return say_count("{count} fastener", "{count} fasteners", count)
        case "rules":
            return say_count("{count} rule", "{count} rules", count)
        case "checks":
            return say_count("{count} check", "{count} checks", count)
        case "passes":
            return say_count("{count} pass", "{count} passes", count)
        case _ if isinstance(entries[0], str):
            return say_count("{count} reading", "{count} readings", count)
        case _:
            return say_count("{count} entry", "{count} entries", count)


def _change(where: str, before: object, after: object) -> str:
    if before in (None, ""):
        return say("{where}: now {value}", where=where, value=_shown(after))
    if after in (None, ""):
        return say("{where}: {value} is gone", where=where, value=_shown(before))
    was, now = _shown(before), _shown(after)
    return say("{where}: {before} is now {after}", where=where, before=was, after=now)


def _shown(value: object) -> str:
    if isinstance(value, dict):
        return say("filled in")
    if isinstance(value, bool):
        return say("yes") if value else say("no")
    return say("“{text}”", text=_shortened(str(value)))


def _shortened(text: str) -> str:
    line = " ".join(text.split())
    return line if len(line) <= _LONGEST_SHOWN else line[: _LONGEST_SHOWN - 1] + "…"
