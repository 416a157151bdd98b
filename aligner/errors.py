"""The project's own errors: each carries the facts, and makes its sentence in one place.

A person reads these sentences, so each names the place, what was understood there, and
what would be right. The command turns any of them into one line and exit status 2.
"""

from __future__ import annotations


class AlignerError(ValueError):
    """Something given to the program cannot be used.

    Each part is a phrase of its own, said in the person's language where it is raised.

    Args:
        where: the field's path or the name of the thing, as the person knows it ("" if none).
        understood: what was found there, in words.
        wanted: what would be right, in words ("" if the first part says it all).
    """

    def __init__(self, where: str, understood: str, wanted: str = "") -> None:
        super().__init__(where, understood, wanted)
        self.where = where
        self.understood = understood
        self.wanted = wanted

    def __str__(self) -> str:
        sentence = f"{self.where}: {self.understood}" if self.where else self.understood
        return f"{sentence}; {self.wanted}" if self.wanted else sentence
