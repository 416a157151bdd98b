"""What a screen reader is told of a window, through Qt's accessibility interface."""

from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractScrollArea,
    QApplication,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QSlider,
    QStackedWidget,
    QTextEdit,
    QWidget,
)

from aligner.window.widgets.reading_box import ReadingBox

Role, Text = QAccessible.Role, QAccessible.Text

#: The role that each kind of widget is to have, the most particular kind first.
_ROLES = (
    (QLineEdit, {Role.EditableText}),
    (QPlainTextEdit, {Role.EditableText}),
    (QTextEdit, {Role.StaticText}),  # a page of the manual, only read
    (QComboBox, {Role.ComboBox}),
    (QSlider, {Role.Slider}),
    (QAbstractButton, {Role.Button, Role.CheckBox, Role.RadioButton}),
    (QAbstractItemView, {Role.List, Role.Table, Role.Tree}),
    (QAbstractScrollArea, {Role.Client}),  # a page that the arrow keys scroll
)


def spoken_name(interface):
    """What a screen reader calls something: by the label that belongs to it, if there is one."""
    for other, relation in interface.relations():
        if relation & QAccessible.RelationFlag.Label:
            return other.text(Text.Name)
    return interface.text(Text.Name)


@dataclass(frozen=True)
class Stop:
    """A place for the keyboard, as a screen reader is told of it."""

    widget: Any
    name: str
    role: Any
    place: QRect

    @property
    def fits(self):
        """Whether the role is one that this kind of widget has."""
        kinds = (roles for kind, roles in _ROLES if isinstance(self.widget, kind))
        return self.role in next(kinds, set())

    @property
    def interface(self):
        return QAccessible.queryAccessibleInterface(self.widget)


def stop_of(widget):
    interface = QAccessible.queryAccessibleInterface(widget)
    place = QRect(widget.mapTo(widget.window(), QPoint(0, 0)), widget.size())
    return Stop(widget, spoken_name(interface), interface.role(), place)


def stops_in(page):
    """Every place where Tab can stop in a widget."""
    return [
        stop_of(widget)
        for widget in page.findChildren(QWidget)
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and widget.isVisible()
        and widget.isEnabled()
    ]


def tab_walk(key=Qt.Key.Key_Tab, most=400):
    """Where Tab goes from where the keyboard is, until it comes to a place for a second time."""
    here, walk = QApplication.focusWidget(), []
    while here is not None and here not in walk and len(walk) < most:
        walk.append(here)
        QTest.keyClick(here, key)
        here = QApplication.focusWidget()
    return walk, here


def is_one_of_several(widget):
    """Whether arrow keys choose among several of which Tab stops at one."""
    if not isinstance(widget, QAbstractButton):
        return False
    group = widget.group()
    return widget.autoExclusive() or (group is not None and group.exclusive())


def has_nothing_to_scroll(widget):
    """Whether it is a page that scrolls where it must, and need not now."""
    return (
        isinstance(widget, QAbstractScrollArea)
        and not isinstance(widget, QAbstractItemView)
        and not widget.verticalScrollBar().maximum()
    )


def card_of(widget):
    """The card or page a widget stands on; what holds the readings of one length is none."""
    there = widget.parentWidget()
    while there is not None:
        is_card = there.objectName() == "card" and not isinstance(there, ReadingBox)
        if is_card or isinstance(there, QStackedWidget | QAbstractScrollArea):
            return there
        there = there.parentWidget()
    return None


def goes_back(before, after):
    """Whether the eye would have to go back: left in the same row, or up in the same column."""
    high = min(before.bottom(), after.bottom()) - max(before.top(), after.top())
    if high > min(before.height(), after.height()) / 2:
        return after.right() <= before.left()
    return after.bottom() <= before.top() and after.left() < before.right()


def find(root, name, role=None):
    """What a screen reader finds by its name, among what can be seen."""
    found = _find(QAccessible.queryAccessibleInterface(root), name, role)
    assert found is not None, f"nothing is called {name!r}"
    return found


def _find(interface, name, role):
    if interface is None or not interface.isValid() or interface.state().invisible:
        return None
    is_of_role = role is None or interface.role() == role
    if is_of_role and interface.parent() is not None and spoken_name(interface) == name:
        return interface
    for place in range(interface.childCount()):
        found = _find(interface.child(place), name, role)
        if found is not None:
            return found
    return None


def press(interface, action="Press"):
    """Do an action by its name, as assistive technology does."""
    actions = interface.actionInterface()
    assert action in actions.actionNames()
    actions.doAction(action)
