"""Text from a document made fit to print: one line, nothing that steers a terminal or a page.

The trap: a name may hold an escape sequence, a line break or a mark that turns the direction
of all that follows it. Printed as it stands, it would say something else than it reads.
"""

from __future__ import annotations

#: Joiners are invisible, yet some scripts cannot be written without them.
_JOINERS = "\u200c\u200d"


def printable(text: str) -> str:
    """Text on one line; what cannot be printed shows as a middle dot, white space as a blank."""
    kept = "".join(_shown(letter) for letter in text)
    return " ".join(kept.split())


def printable_lines(text: str) -> tuple[str, ...]:
    """The same for text of several lines, such as a note; empty lines are left out."""
    lines = (printable(line) for line in text.splitlines())
    return tuple(line for line in lines if line)


def _shown(letter: str) -> str:
    if letter.isspace():
        return " "
    return letter if letter.isprintable() or letter in _JOINERS else "·"
