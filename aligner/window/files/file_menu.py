"""The File menu: documents, the job card on paper and as a file, and tables for other programs."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from aligner.language import say
from aligner.window.files.filing import Filing
from aligner.window.files.printing import Printing
from aligner.window.files.recent import RecentFiles

Keys = QKeySequence.StandardKey


class FileMenu:
    """Fills a menu, and the list of recent files each time it is opened."""

    def __init__(
        self, menu: QMenu, window: QWidget, filing: Filing, printing: Printing, recent: RecentFiles
    ) -> None:
        self._menu = menu
        self._filing = filing
        self._recent = recent
        self._add(say("&New job"), filing.new, Keys.New)
        self._add(say("&Open..."), filing.open, Keys.Open)
        self._recent_menu = menu.addMenu(say("Open &recent"))
        self._recent_menu.aboutToShow.connect(self._fill_recent)
        menu.addSeparator()
        self._add(say("&Save"), filing.save, Keys.Save)
        self._add(say("Save &as..."), filing.save_as, "Ctrl+Shift+S")
        self._add(say("Save a cop&y..."), filing.save_copy)
        menu.addSeparator()
        self._add(say("&Print the job card..."), printing.print_card, Keys.Print)
        self._add(say("Print pre&view..."), printing.preview_card, "Ctrl+Shift+P")
        self._add(say("Job card as P&DF..."), printing.save_card)
        self._add(say("Print the parts &list..."), printing.print_parts)
        self._add(say("&Bench list as PDF..."), printing.save_bench_list)
        self._add(say("&Tables as CSV..."), printing.save_tables)
        menu.addSeparator()
        self._add(say("&Close"), window.close, "Ctrl+Q Ctrl+W")

    def _add(self, words: str, act: Callable[[], object], keys: Keys | str = "") -> None:
        action = QAction(words, self._menu)
        if isinstance(keys, Keys):
            action.setShortcuts(keys)
        elif keys:
            action.setShortcuts([QKeySequence(each) for each in keys.split()])
        action.triggered.connect(lambda _=False: act())
        self._menu.addAction(action)

    def _fill_recent(self) -> None:
        self._recent_menu.clear()
        for name in self._recent.names():
            path = Path(name)
            action = self._recent_menu.addAction(path.name.replace("&", "&&"))
            action.setToolTip(name)
            open_it = partial(self._filing.open_path, path)
            action.triggered.connect(lambda _=False, act=open_it: self._filing.unless_unsaved(act))
        if self._recent_menu.isEmpty():
            self._recent_menu.addAction(say("nothing opened yet")).setEnabled(False)
