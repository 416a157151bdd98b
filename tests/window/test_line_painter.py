"""No line of the list ends within the numbers of a clamp's bolts, in any language."""

import pytest

from aligner.window.steps.line_painter import _unbroken


@pytest.mark.parametrize(
    "numbers",
    ["bolt 3", "bolts 1 and 2", "bolts 1, 2 and 3", "bolts 1 to 4", "Schrauben 1, 2 und 3"],
)
def test_numbers_stay_with_what_they_number(numbers):
    kept = numbers.replace(" ", "\u00a0")
    assert _unbroken(f"Left lower clamp, {numbers}") == f"Left lower clamp, {kept}"


def test_a_title_without_numbers_breaks_anywhere():
    assert _unbroken("Top bracket on, its clamps slack") == "Top bracket on, its clamps slack"
