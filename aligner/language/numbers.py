"""Numbers inside a sentence, with the decimal sign of the language spoken."""

from __future__ import annotations

from aligner.language.said import decimal_sign


def written(number: float, form: str = "g") -> str:
    """A number as it stands in a sentence: "45", "22.5"; in German "22,5".

    Args:
        number: what is written.
        form: as in Python's own formats; six digits at most if left out, "" for all there are.
    """
    return with_decimal_sign(f"{number:{form}}")


def with_decimal_sign(text: str) -> str:
    """A number or quantity that stands with a point ("4.25 mm"), as a person reads it."""
    return text.replace(".", decimal_sign())
