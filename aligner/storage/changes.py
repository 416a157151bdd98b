"""What differs between two versions of a job or a sheet, in words, field by field.

The trap: "the copy is newer" helps nobody to choose. What helps is "align, protrusion, left:
2 readings more".
"""

from __future__ import annotations

from typing import Any

from aligner.job import Job
from aligner.sheet import Sheet

Path = tuple[int | str, ...]

_LONGEST_SHOWN = 40
#: What the entries of a list are called, one and several; a list not named here has readings
#: if it holds text, else entries.
_ENTRIES = {
    "squaring": ("pair", "pairs"),
    "attempts": ("attempt", "attempts"),
    "fasteners": ("fastener", "fasteners"),
    "rules": ("rule", "rules"),
    "checks": ("check", "checks"),
    "passes": ("pass", "passes"),
}


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
    return [f"{_where(path)}: {_change(before, after)}"]


def _entries(found: object) -> list[Any]:
    return found if isinstance(found, list) else []  # a list not there has no entries


def _list_changes(path: Path, before: list[Any], after: list[Any]) -> list[str]:
    both = min(len(before), len(after))
    sentences = [
        sentence
        for place in range(both)
        for sentence in _changes(
            (*path, _name_of(before[place], after[place]) or place), before[place], after[place]
        )
    ]
    more = len(after) - len(before)
    if more:
        one, several = _entry(path, before or after)
        count = abs(more)
        sentences.append(
            f"{_where(path)}: {count} {one if count == 1 else several} "
            f"{'more' if more > 0 else 'fewer'}"
        )
    return sentences


def _name_of(before: object, after: object) -> str:
    """The name that an entry had and has; "" if it has none or another now."""
    if not isinstance(before, dict) or not isinstance(after, dict):
        return ""
    name = before.get("name")
    return _shortened(name) if isinstance(name, str) and name == after.get("name") else ""


def _where(path: Path) -> str:
    parts = (f"no. {part + 1}" if isinstance(part, int) else _spaced(part) for part in path)
    return ", ".join(parts)


def _spaced(name: str) -> str:
    return _shortened(name.replace("_", " "))


def _entry(path: Path, entries: list[Any]) -> tuple[str, str]:
    names = [part for part in path if isinstance(part, str)]
    if names and names[-1] in _ENTRIES:
        return _ENTRIES[names[-1]]
    return ("reading", "readings") if isinstance(entries[0], str) else ("entry", "entries")


def _change(before: object, after: object) -> str:
    if before in (None, ""):
        return f"now {_shown(after)}"
    if after in (None, ""):
        return f"{_shown(before)} is gone"
    return f"{_shown(before)} is now {_shown(after)}"


def _shown(value: object) -> str:
    if isinstance(value, dict):
        return "filled in"
    if isinstance(value, bool):
        return "yes" if value else "no"
    return f"“{_shortened(str(value))}”"


def _shortened(text: str) -> str:
    line = " ".join(text.split())
    return line if len(line) <= _LONGEST_SHOWN else line[: _LONGEST_SHOWN - 1] + "…"
