"""Numbers and beginnings of words, as the language spoken writes them inside a sentence."""

from __future__ import annotations

from aligner.language import decimal_sign, spoken


def written(number: float, form: str = "g") -> str:
    """A number for a sentence, with the decimal sign of the language spoken."""
    return f"{number:{form}}".replace(".", decimal_sign())


def begun(text: str) -> str:
    """A text as it stands at the beginning of a sentence."""
    return f"{text[:1].upper()}{text[1:]}"


def run_on(text: str) -> str:
    """A text that began a sentence, as it stands inside one.

    Only English takes its letter small there; in German it may be a noun.
    """
    return f"{text[:1].lower()}{text[1:]}" if spoken() == "en" else text
