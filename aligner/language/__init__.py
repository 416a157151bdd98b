"""Every text a person reads, in the language they chose: English in the code, others beside it."""

from aligner.language.said import (
    decimal_sign,
    listed,
    marked,
    say,
    say_count,
    speak,
    spoken,
)

__all__ = ["decimal_sign", "listed", "marked", "say", "say_count", "speak", "spoken"]
