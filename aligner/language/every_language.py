"""What an English text is called in every language the program speaks, for telling it again.

The trap: a document keeps a name as it was said when it was written, and may be opened where
another language is spoken. What is compared with such a name is compared with all it can be
called; what is shown is still said in the language spoken.

The translations are read from their .ts files, once, and only when a name is met that is known
neither in English nor in the language spoken: nothing here needs Qt, and few jobs need this.
"""

from __future__ import annotations

from functools import cache

from aligner.data_files import resource
from aligner.language.said import LANGUAGES, say


def is_called(name: str, text: str) -> bool:
    """Whether a name from a document is an English text, in whatever language it was said."""
    return name in (text, say(text)) or name in in_other_languages(text)


def in_other_languages(text: str) -> tuple[str, ...]:
    """An English text in every other language that has it."""
    return _translations().get(text, ())


@cache
def _translations() -> dict[str, tuple[str, ...]]:
    from xml.etree import ElementTree  # late: the window starts without it

    found: dict[str, tuple[str, ...]] = {}
    for language in LANGUAGES:
        if language == "en":
            continue
        try:
            texts = ElementTree.parse(resource("languages", f"{language}.ts"))
        except (OSError, ElementTree.ParseError):
            continue  # missing or damaged: its names stay those of strangers
        for message in texts.iter("message"):
            kept = message.find("translation")
            if kept is None or not kept.text or message.get("numerus") == "yes":
                continue
            text = message.findtext("source") or ""
            found[text] = (*found.get(text, ()), kept.text)
    return found
