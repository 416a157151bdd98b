"""Numbers as the language spoken writes them inside a sentence."""

from __future__ import annotations

from aligner.language import decimal_sign


def written(number: float, form: str = "g") -> str:
    """A number for a sentence, with the decimal sign of the language spoken."""
    return f"{number:{form}}".replace(".", decimal_sign())
