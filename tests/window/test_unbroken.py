"""No line ends within a value."""

import pytest
from PySide6.QtGui import QTextDocument, QTextOption

from aligner.window.widgets.labels import label
from aligner.window.widgets.unbroken import as_written, unbroken

TEXT = "left 1.0 mm high; ± 0.7 mm allowed, 22.5 lbf·ft, 9 US fl oz, 4 % of 3 bolts"


def lines_of(text, width):
    """The lines in which Qt sets a text at a width."""
    document = QTextDocument(text)
    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WordWrap)
    document.setDefaultTextOption(option)
    document.setTextWidth(width)
    document.size()
    block = document.firstBlock()
    layout = block.layout()
    lines = [layout.lineAt(place) for place in range(layout.lineCount())]
    return [text[line.textStart() :][: line.textLength()].strip() for line in lines]


@pytest.mark.parametrize("width", range(80, 400, 7))
def test_no_line_begins_with_a_unit_or_ends_with_a_sign(qapp, width):
    lines = lines_of(unbroken(TEXT), width)
    for line in lines:
        assert not line.startswith(("mm", "lbf", "US", "fl", "oz", "%")), lines
        assert not line.endswith("±"), lines


def test_words_that_are_no_units_may_part():
    assert unbroken("step 3 now, 4 minutes") == "step 3 now, 4 minutes"


def test_what_a_label_says_reads_as_it_was_written(qtbot):
    made = label(TEXT, wraps=True)
    qtbot.addWidget(made)
    assert made.text() == TEXT
    assert as_written(unbroken(TEXT)) == TEXT
