"""The menus beside File: Edit, Stage, View and Help, each entry with its key."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu

from aligner.assessment import Stage
from aligner.language import say

if TYPE_CHECKING:
    from aligner.window.main_window import MainWindow

Keys = QKeySequence.StandardKey


def fill_menus(window: MainWindow) -> None:
    """Put the menus into the window's menu bar, behind File."""
    bar = window.menuBar()
    edit = bar.addMenu(say("&Edit"))
    undo = window.open_job.edits.createUndoAction(edit, say("Undo", meaning="menu"))
    undo.setShortcuts(Keys.Undo)
    redo = window.open_job.edits.createRedoAction(edit, say("Redo", meaning="menu"))
    redo.setShortcuts(Keys.Redo)
    edit.addActions([undo, redo])
    _add(edit, say("Answer the &question"), "F6", window.question.take_keyboard)
    stages = bar.addMenu(say("&Stage"))
    for number, stage in enumerate(Stage, start=1):
        _add(stages, stage.title, f"Alt+{number}", partial(window.go_to, stage))
    view = bar.addMenu(say("&View"))
    _add(view, say("All &jobs"), "Ctrl+H", window.show_history)
    _add(view, say("&Bench view"), "F11", window.show_bench)
    _add(view, say("&Preferences"), "Ctrl+,", window.show_preferences)
    help_menu = bar.addMenu(say("&Help"))
    _add(help_menu, say("&Manual"), Keys.HelpContents, window.show_manual)
    _add(help_menu, say("How to measure &this"), "Shift+F1", window.show_measuring)


def _add(menu: QMenu, words: str, keys: Keys | str, act: Callable[[], object]) -> None:
    action = QAction(words, menu)
    action.setShortcut(QKeySequence(keys))
    action.triggered.connect(lambda _=False: act())
    menu.addAction(action)
