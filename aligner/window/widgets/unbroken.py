"""A number kept together with its unit: no line ends between "0.7" and "mm"."""

from __future__ import annotations

import re

from aligner.units.dimension import EVERY_DIMENSION

_NO_BREAK = "\u00a0"
_SYMBOLS = sorted(
    (unit.symbol for dimension in EVERY_DIMENSION for unit in dimension.units), key=len
)
_WITHIN_A_VALUE = re.compile(
    rf"(?<=[0-9]) (?:{'|'.join(map(re.escape, reversed(_SYMBOLS)))})(?!\w)|(?<=±) "
)


def unbroken(text: str) -> str:
    """A text in which no line ends within a value."""
    return _WITHIN_A_VALUE.sub(lambda found: found[0].replace(" ", _NO_BREAK), text)


def as_written(text: str) -> str:
    """The text as it was before `unbroken`."""
    return text.replace(_NO_BREAK, " ")
