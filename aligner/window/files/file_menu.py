"""The File menu: documents, the job card on paper and as a file, and tables for other programs."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

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
        self._window = window
        self._filing = filing
        self._recent = recent
        self._add("&New job", filing.new, Keys.New)
        self._add("&Open...", filing.open, Keys.Open)
        self._recent_menu = menu.addMenu("Open &recent")
        self._recent_menu.aboutToShow.connect(self._fill_recent)
        menu.addSeparator()
        self._add("&Save", filing.save, Keys.Save)
        self._add("Save &as...", filing.save_as, "Ctrl+Shift+S")
        self._add("Save a cop&y...", filing.save_copy)
        menu.addSeparator()
        self._add("&Print the job card...", printing.print_card, Keys.Print)
        self._add("Print pre&view...", printing.preview_card, "Ctrl+Shift+P")
        self._add("Job card as P&DF...", printing.save_card)
        self._add("Print the parts &list...", printing.print_parts)
        self._add("&Bench list as PDF...", printing.save_bench_list)
        self._add("&Tables as CSV...", printing.save_tables)
        menu.addSeparator()
        self._add("&Close", window.close, "Ctrl+Q Ctrl+W")

    def _add(self, words: str, act: Callable[[], object], keys: Keys | str = "") -> None:
        action = QAction(words, self._window)
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
            self._recent_menu.addAction("nothing opened yet").setEnabled(False)
