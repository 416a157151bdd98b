"""Saying a text in the language chosen; the code and the data files hold the English one.

The trap: a sentence put together from pieces cannot be translated, since other languages bend
their words and order them otherwise. So a whole sentence is one text, values stand in it by
name, and a word that fits only one place in a sentence says which place in its `meaning`.

Nothing here knows Qt: the window hands in what looks a text up (`speak`). Until it does, and
on the command line, everything is said in English. What is kept in a document is never looked
up again: it stays as it was written.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any

#: Codes of the languages that the texts are in.
LANGUAGES = ("en", "de")

#: Looks a text up: the text, its meaning where the same words mean two things, and how many
#: where it speaks of a number of things (else -1). Gives the English text if it has none.
Translate = Callable[[str, str, int], str]


class _Speech:
    """The language spoken now, and the texts looked up so far."""

    def __init__(self) -> None:
        self.language = "en"
        self.decimal_sign = "."
        self.translate: Translate | None = None
        self.known: dict[tuple[str, str], str] = {}


_speech = _Speech()


def speak(language: str, translate: Translate | None = None, decimal_sign: str = ".") -> None:
    """Say everything in another language from here on.

    Args:
        language: its code, such as "de".
        translate: looks a text up; `None` leaves all in English.
        decimal_sign: what stands between the units and the tenths in that language.
    """
    _speech.language = language
    _speech.translate = translate
    _speech.decimal_sign = decimal_sign
    _speech.known.clear()


def spoken() -> str:
    """The code of the language spoken now."""
    return _speech.language


def decimal_sign() -> str:
    """What stands between the units and the tenths in the language spoken now."""
    return _speech.decimal_sign


def marked(text: str, *, meaning: str = "") -> str:
    """The text itself: marks one that is kept in a constant and said (`say`) where it is used.

    Args:
        text: the English text.
        meaning: the one with which it will be said.
    """
    return text


def say(text: str, /, *, meaning: str = "", **values: Any) -> str:
    """A text in the language spoken now.

    Args:
        text: the English text, with the places of the values: "Push the left leg up {size}."
        meaning: tells apart what English says with the same words ("a leg", "of a list").
        values: what stands in the places; numbers already in words.
    """
    found = text
    if _speech.translate is not None and text:
        key = (text, meaning)
        if key not in _speech.known:
            _speech.known[key] = _speech.translate(text, meaning, -1)
        found = _speech.known[key]
    return _filled(found, text, values) if values else found


def say_count(one: str, many: str, /, count: int, *, meaning: str = "", **values: Any) -> str:
    """A text about a number of things: "{count} step left", "{count} steps left".

    Args:
        one: the English text for one thing.
        many: the English text for any other number; it is the one that is looked up.
        count: how many; stands in the text as {count}.
        meaning: as in `say`.
        values: what else stands in the text.
    """
    text = found = one if count == 1 else many
    if _speech.translate is not None:
        translated = _speech.translate(many, meaning, count)
        found = text if translated == many else translated
    return _filled(found, text, {"count": count, **values})


def _filled(text: str, english: str, values: dict[str, Any]) -> str:
    """A text with its values in their places; the English one where a translation is damaged."""
    try:
        return text.format(**values)
    except (ValueError, LookupError, AttributeError):
        return english.format(**values)


def inside(text: str) -> str:
    """A text that begins a sentence, as it stands inside one.

    Only English takes its letter small there; in German it may be a noun.
    """
    return text[:1].lower() + text[1:] if _speech.language == "en" else text


def begun(text: str) -> str:
    """A text as it stands at the beginning of a sentence."""
    return text[:1].upper() + text[1:]


def listed(items: Iterable[str]) -> str:
    """Things one after another: "a", "a and b", "a, b and c"."""
    first, *rest = list(items) or [""]
    for place, item in enumerate(rest, start=1):
        is_last = place == len(rest)
        first = say("{a} and {b}", a=first, b=item) if is_last else f"{first}, {item}"
    return first
