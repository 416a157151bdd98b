"""A person at the keyboard: keys are pressed, names are read, and nothing else is reached for.

Whatever has the keyboard gets the keys. A box, a button or a list is found as a person finds
it who does not see the screen: by Tab and its name. So a test that uses these alone fails
where the keyboard gets stuck, where a name is missing, and where Tab does not lead.
"""

from PySide6.QtGui import QAccessible, QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
)

#: More stops than any page has: Tab has gone round by then.
ALL_ROUND = 600


def at_hand():
    """What has the keyboard: an open menu before everything else."""
    popup = QApplication.activePopupWidget()
    if popup is not None:
        return popup
    return QApplication.focusWidget() or QApplication.activeWindow()


def name_of(widget):
    """What a screen reader would call it."""
    if isinstance(widget, QComboBox):
        return widget.accessibleName()  # Qt itself gives the answer chosen for a name on Linux
    found = QAccessible.queryAccessibleInterface(widget) if widget is not None else None
    return found.text(QAccessible.Text.Name) if found is not None else ""


def about(widget):
    """What a screen reader would add to its name."""
    found = QAccessible.queryAccessibleInterface(widget)
    return found.text(QAccessible.Text.Description) if found is not None else ""


def here():
    """The name of what has the keyboard."""
    return name_of(at_hand())


def press(*keys):
    """Press keys, each as a menu writes it: "Enter", "Shift+Tab", "Ctrl+S"."""
    for key in keys:
        pressed = QKeySequence("Return" if key == "Enter" else key)[0]
        QTest.keyClick(at_hand(), pressed.key(), pressed.keyboardModifiers())
        QApplication.processEvents()


def write(text):
    """Type a text where the keyboard is."""
    QTest.keyClicks(at_hand(), text)
    QApplication.processEvents()


def tab_to(name, *, back=False):
    """Press Tab until something with this name has the keyboard."""
    met = [here()]
    while not _is(name, met[-1]):
        press("Shift+Tab" if back else "Tab")
        met.append(here())
        assert len(met) < ALL_ROUND, f"Tab does not lead to {name!r}, but to {_each_once(met)}"


def type_into(name, text, *, enter=True):
    """Find a box, put a text in place of what stands there, and leave it by Enter."""
    tab_to(name)
    line = at_hand()
    assert isinstance(line, (QLineEdit, QPlainTextEdit)), f"{name!r} is {type(line).__name__}"
    press("Ctrl+A")
    write(text)
    if enter:
        press("Enter")


def read(name, *readings):
    """Type readings as a gauge does, number and Enter, from the first box of this name."""
    tab_to(f"{name}, reading 1")
    for reading in readings:
        press("Ctrl+A")
        write(reading)
        press("Enter")


def choose(name, wanted):
    """Find a choice, and go down its list until it says what is wanted."""
    tab_to(name)
    box = at_hand()
    assert isinstance(box, QComboBox), f"{name!r} is {type(box).__name__}"
    press("Home")
    met = [box.currentText()]
    while not met[-1].startswith(wanted):
        press("Down")
        assert box.currentText() != met[-1], f"{name!r} offers {met}, not {wanted!r}"
        met.append(box.currentText())


def _is(name, met):
    return met == name or (name.endswith("...") and met.startswith(name[:-3]))


def _each_once(names):
    return list(dict.fromkeys(names))


def go_to(stage):
    """Open a stage by its key."""
    stages = ("bike", "strip", "inspect", "build", "align", "tighten", "prove")
    press(f"Alt+{1 + stages.index(stage)}")


def said():
    """The sentence at the top of the window."""
    labels = QApplication.activeWindow().findChildren(QLabel)
    return next(each.text() for each in labels if each.property("typeSize") == "sentence")


def stage_on_screen():
    """The stage that the stage list says is on the screen."""
    buttons = QApplication.activeWindow().findChildren(QAbstractButton)
    return next(name_of(each) for each in buttons if about(each).startswith("on the screen"))


def press_while(name, *keys):
    """Press the same keys again and again while something of this name has the keyboard."""
    for _ in range(ALL_ROUND):
        if not here().startswith(name):
            return
        press(*keys)
    raise AssertionError(f"the keyboard never left {name!r}; it says {said()!r}")
