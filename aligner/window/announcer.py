"""Telling a screen reader what changed on the screen while the keyboard is elsewhere.

The trap: who does not see the sentence change would hear of it only by leaving the box. Nor may it
be read at every key: what is typed is not kept yet, and the reader would never come to an end.
"""

from __future__ import annotations

from PySide6 import QtGui
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QWidget


class Announcer:
    """What a widget says, read out whenever it has become another.

    With a Qt older than 6.8, which cannot do that, it stays silent.
    """

    def __init__(self, widget: QWidget, *, is_urgent: bool = False) -> None:
        """Make one.

        Args:
            widget: whose words they are; one that is on the screen.
            is_urgent: whether they may interrupt what is being read.
        """
        self._widget = widget
        self._is_urgent = is_urgent
        self._said = ""

    def say(self, text: str) -> None:
        """Have a text read out, unless it was the last one; "" is remembered, not read."""
        is_new, self._said = text != self._said, text
        if not is_new or not text or not hasattr(QtGui, "QAccessibleAnnouncementEvent"):
            return
        event = QtGui.QAccessibleAnnouncementEvent(self._widget, text)
        politeness = QAccessible.AnnouncementPoliteness
        event.setPoliteness(politeness.Assertive if self._is_urgent else politeness.Polite)
        QAccessible.updateAccessibility(event)
