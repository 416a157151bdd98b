"""Every line to type in: Enter goes on once, Escape gives back, leaving it says so."""

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QApplication

from aligner.drawing.theme import Appearance, theme_for
from aligner.window.widgets.typed_line import FormLine, TypedLine, ValueLine
from aligner.window.widgets.word_line import WordLine


def _word_line(name):
    return WordLine(theme_for(Appearance.LIGHT), name)


@pytest.fixture(params=[TypedLine, ValueLine, FormLine, _word_line], ids=lambda made: made.__name__)
def line(request, qtbot):
    """A line of each kind that shows what a job holds."""
    made = request.param("name")
    qtbot.addWidget(made)
    made.show_kept("18 mm")
    return made


@pytest.fixture
def words(qtbot):
    """A line of words, and all that it said was kept."""
    made = _word_line("name")
    qtbot.addWidget(made)
    made.show_kept("fork oil")
    said = []
    made.kept.connect(said.append)
    return made, said


def leave(line, reason):
    """Have the keyboard go."""
    QApplication.sendEvent(line, QFocusEvent(QEvent.Type.FocusOut, reason))


def enter(line, reason):
    """Have the keyboard come."""
    QApplication.sendEvent(line, QFocusEvent(QEvent.Type.FocusIn, reason))


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_Enter])
def test_enter_held_down_goes_on_once(line, key):
    went_on = []
    line.went_on.connect(lambda: went_on.append(True))
    for is_repeat in (False, True, True):
        press = QEvent.Type.KeyPress
        event = QKeyEvent(press, key, Qt.KeyboardModifier.NoModifier, "\r", is_repeat)
        QApplication.sendEvent(line, event)
    assert len(went_on) == 1


def test_what_is_being_typed_is_not_written_over(line, qtbot):
    line.setCursorPosition(5)
    qtbot.keyClicks(line, "4")
    assert line.is_being_typed
    line.show_kept("20 mm")
    assert line.text() == "18 mm4"
    line.end_typing()
    line.show_kept("20 mm")
    assert (line.text(), line.is_being_typed) == ("20 mm", False)


def test_escape_gives_back_what_stood_there_and_says_so(line, qtbot):
    said = []
    line.textEdited.connect(said.append)
    line.selectAll()
    qtbot.keyClicks(line, "9")
    qtbot.keyClick(line, Qt.Key.Key_Escape)
    if isinstance(line, FormLine):
        assert line.text() == "9"  # Escape belongs to the form
    else:
        assert (line.text(), said) == ("18 mm", ["9", "18 mm"])


def test_a_menu_over_a_line_does_not_leave_it(line):
    left = []
    line.left.connect(lambda: left.append(True))
    leave(line, Qt.FocusReason.PopupFocusReason)
    assert left == []
    leave(line, Qt.FocusReason.TabFocusReason)
    assert left == [True]


def test_a_long_text_shows_its_beginning_once_its_line_is_left(line):
    line.setCursorPosition(4)
    leave(line, Qt.FocusReason.ActiveWindowFocusReason)
    assert line.cursorPosition() == 4  # the person comes back to where they were
    leave(line, Qt.FocusReason.MouseFocusReason)
    assert line.cursorPosition() == 0


def test_words_are_kept_once_before_enter_goes_on(words, qtbot):
    line, said = words
    line.went_on.connect(lambda: said.append("went on"))
    enter(line, Qt.FocusReason.OtherFocusReason)
    qtbot.keyClicks(line, ", light ")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    leave(line, Qt.FocusReason.TabFocusReason)
    assert said == ["fork oil, light", "went on"]
    assert line.text() == "fork oil, light"
