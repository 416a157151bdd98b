"""The menus beside File: Edit, Stage, View and Help, each entry with its key."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu

from aligner.assessment import Stage

if TYPE_CHECKING:
    from aligner.window.main_window import MainWindow

Keys = QKeySequence.StandardKey


def fill_menus(window: MainWindow) -> None:
    """Put the menus into the window's menu bar, behind File."""
    bar = window.menuBar()
    edit = bar.addMenu("&Edit")
    undo = window.open_job.edits.createUndoAction(window, "Undo")
    undo.setShortcuts(Keys.Undo)
    redo = window.open_job.edits.createRedoAction(window, "Redo")
    redo.setShortcuts(Keys.Redo)
    edit.addActions([undo, redo])
    _add(window, edit, "Answer the &question", "F6", window.question.take_keyboard)
    stages = bar.addMenu("&Stage")
    for number, stage in enumerate(Stage, start=1):
        _add(window, stages, stage.title, f"Alt+{number}", partial(window.go_to, stage))
    view = bar.addMenu("&View")
    _add(window, view, "All &jobs", "Ctrl+H", window.show_history)
    _add(window, view, "&Bench view", "F11", window.show_bench)
    _add(window, view, "&Preferences", "Ctrl+,", window.show_preferences)
    _add(window, bar.addMenu("&Help"), "&Manual", Keys.HelpContents, window.show_manual)


def _add(
    window: MainWindow, menu: QMenu, words: str, keys: Keys | str, act: Callable[[], object]
) -> None:
    action = QAction(words, window)
    action.setShortcut(QKeySequence(keys))
    action.triggered.connect(lambda _=False: act())
    menu.addAction(action)
