"""Undo and redo by key while the keyboard is in a box.

The trap: a line keeps the keys of undo and redo to itself even where nothing was typed in it.
After Enter the keyboard is in the next box, and the step just made could not be undone by key.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget

Keys = QKeySequence.StandardKey


class UndoKeys(QObject):
    """Lets the window have the keys that the line with the keyboard has no use for."""

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self._window = window
        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.focusChanged.connect(self._watch)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if not (
            event.type() == QEvent.Type.ShortcutOverride
            and isinstance(watched, QLineEdit)
            and isinstance(event, QKeyEvent)
        ):
            return False
        undoes = event.matches(Keys.Undo) and not watched.isUndoAvailable()
        redoes = event.matches(Keys.Redo) and not watched.isRedoAvailable()
        if undoes or redoes:
            event.ignore()
            return True
        return False

    def _watch(self, before: QWidget | None, now: QWidget | None) -> None:
        if isinstance(before, QLineEdit):
            before.removeEventFilter(self)
        if isinstance(now, QLineEdit) and now.window() is self._window:
            now.installEventFilter(self)
