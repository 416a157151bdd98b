"""Every text a person reads, in the language they chose: English in the code, others beside it."""

from aligner.language.numbers import with_decimal_sign, written
from aligner.language.said import (
    LANGUAGES,
    begun,
    decimal_sign,
    inside,
    listed,
    marked,
    say,
    say_count,
    speak,
    spoken,
)

__all__ = [
    "LANGUAGES",
    "begun",
    "decimal_sign",
    "inside",
    "listed",
    "marked",
    "say",
    "say_count",
    "speak",
    "spoken",
    "with_decimal_sign",
    "written",
]
