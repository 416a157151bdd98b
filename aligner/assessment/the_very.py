"""A sheet as a key of what was worked out from it: which one it is, not what stands on it.

It is a value, but one too large to be hashed at every keystroke, and an edit of readings keeps
the very same one.
"""

from __future__ import annotations

from aligner.sheet import Sheet


class TheVery:
    """Equal to another only where both hold the very same sheet."""

    def __init__(self, sheet: Sheet) -> None:
        self.sheet = sheet

    def __eq__(self, other: object) -> bool:
        return isinstance(other, TheVery) and self.sheet is other.sheet

    def __hash__(self) -> int:
        return id(self.sheet)
