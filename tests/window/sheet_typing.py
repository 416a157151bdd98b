"""What the tests of the Bike stage share: typing into a box, and what has the keyboard."""

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest


def type_into(line, text, *, enter=True):
    line.setFocus()
    line.clear()
    QTest.keyClicks(line, text)
    if enter:
        QTest.keyClick(line, Qt.Key.Key_Return)


def focused(window):
    return window.focusWidget()
