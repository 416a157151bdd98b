"""Text from a document made fit to print."""

from __future__ import annotations

import pytest

from aligner.report.printable import printable, printable_lines


@pytest.mark.parametrize(
    ("given", "shown"),
    [
        pytest.param("left lower clamp", "left lower clamp", id="plain"),
        pytest.param("a\r\nb\tc", "a b c", id="white space"),
        pytest.param("\x1b[2J", "·[2J", id="escape sequence"),
        pytest.param("\u202egnp.x", "·gnp.x", id="mark that turns the direction"),
        pytest.param("half \ud800", "half ·", id="half a character"),
        pytest.param("می\u200cروم", "می\u200cروم", id="joiner that a script needs"),
        pytest.param("31 lbf·ft ± 10 %", "31 lbf·ft ± 10 %", id="signs of the trade"),
    ],
)
def test_text_prints_on_one_line(given: str, shown: str) -> None:
    assert printable(given) == shown


def test_lines_of_a_note_stay_lines() -> None:
    assert printable_lines("one\n\n two \x07\n") == ("one", "two ·")
