"""Every text of the program that is said to a person, found in the code and the data files.

For those who carry the translations on; the program itself never runs this. The trap: a text
that is put together before it is said is never found. So what is said must be written out, or
be a constant that is marked; anything else is refused by name and line.
"""

from __future__ import annotations

import ast
import json
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from aligner.data_files import resource

_PACKAGE = Path(__file__).parent.parent
_SAYING = {"say": 1, "marked": 1, "say_count": 2}

#: The names under which the data files hold words for a person; "marks" and the like are keys.
_WORDS_IN_DATA = {
    "about", "ask", "because", "because_loosening", "caution", "caution_loosening", "deed",
    "description", "gauge", "how", "how_to", "loosening_also", "loosening_verb", "name", "note",
    "part", "piece", "reading", "reason", "reason_loosening", "reminder", "source", "stage",
    "title", "title_without", "turn", "upon", "why",
}  # fmt: skip


@dataclass(frozen=True, order=True)
class Text:
    """One text to translate.

    Attributes:
        text: the English one; of a number of things, the one for many.
        meaning: tells apart what English says with the same words.
        one: the English one for one thing, where it speaks of a number of things.
        place: the file it was first found in, from the top of the checkout.
    """

    text: str
    meaning: str = ""
    one: str | None = None
    place: str = ""


class NotWrittenOut(ValueError):
    """A text is said that cannot be found by reading the code."""


def every_text() -> list[Text]:
    """All texts, each once, in the order they are found.

    Raises:
        NotWrittenOut: a text is said that is neither written out nor a name.
    """
    found: dict[tuple[str, str], Text] = {}
    for each in (*_in_code(), *_in_data()):
        before = found.setdefault((each.text, each.meaning), each)
        if before.one is None and each.one is not None:
            found[each.text, each.meaning] = each
    return list(found.values())


def _in_code() -> Iterator[Text]:
    for path in sorted(_PACKAGE.rglob("*.py")):
        if path.parent == Path(__file__).parent and path.name != "said.py":
            continue  # they name texts, but say none
        place = f"aligner/{path.relative_to(_PACKAGE).as_posix()}"
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
                yield from _of_call(node, node.func.id, place)


def _of_call(node: ast.Call, name: str, place: str) -> Iterator[Text]:
    count = _SAYING.get(name)
    if count is None:
        return
    texts = [_written_out(each, place) for each in node.args[:count]]
    if len(texts) < count or texts[-1] is None:
        return  # a constant that is marked where it stands
    words = {keyword.arg: keyword.value for keyword in node.keywords}
    meaning = _written_out(words["meaning"], place) if "meaning" in words else ""
    yield Text(texts[-1], meaning or "", texts[0] if count == 2 else None, place)


def _written_out(node: ast.expr, place: str) -> str | None:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return node.value
    if isinstance(node, (ast.Name, ast.Attribute, ast.Subscript, ast.Call)):
        return None
    raise NotWrittenOut(f"{place}:{node.lineno}: what is said here is put together before it")


def _in_data() -> Iterator[Text]:
    for path in sorted(resource("order").parent.rglob("*.json")):
        place = path.relative_to(resource("order").parent.parent).as_posix()
        yield from _of_data(json.loads(path.read_text(encoding="utf-8")), place, is_top=True)


def _of_data(value: Any, place: str, *, is_top: bool = False) -> Iterator[Text]:
    if isinstance(value, list) and value[:1] == ["words"]:  # a word in a small drawing
        if len(value[4]) > 1:
            yield Text(value[4], place=place)
    elif isinstance(value, list):
        for each in value:
            yield from _of_data(each, place)
    elif isinstance(value, dict):
        for name, each in value.items():
            if isinstance(each, str):
                # The "about" at the top of a file is for those who edit it; where there is a
                # "title", the "name" beside it is a key.
                is_key = (is_top and name == "about") or (name == "name" and "title" in value)
                is_read = name in _WORDS_IN_DATA and not is_key
                if is_read and any(letter.isalpha() for letter in each):
                    yield Text(each, place=place)
            else:
                yield from _of_data(each, place)
