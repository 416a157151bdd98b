"""The manual, opened at the right page: plain pages that come with the program.

The trap: help that asks for a network is no help in a garage. The pages are files beside the
program, and a link leads only to another of them.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, QUrl, Signal
from PySide6.QtGui import QKeyEvent, QTextDocument
from PySide6.QtWidgets import QHBoxLayout, QListWidget, QTextBrowser, QWidget

from aligner.data_files import resource
from aligner.drawing.theme import ROOM, Theme
from aligner.language import say, spoken

#: The pages in the order of the list; one that is not there is left out.
ORDER = (
    "start",
    "bike",
    "strip",
    "inspect",
    "build",
    "align",
    "tighten",
    "wrenches",
    "prove",
    "history",
    "bench",
    "files",
    "figures",
    "glossary",
)

#: Width of the list of pages, at 100 % text.
_LIST = 216


class Pages(QTextBrowser):
    """One page; Escape leaves the manual."""

    left = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setOpenLinks(False)
        self.setAccessibleName(say("page of the manual"))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)


class ManualPage(QWidget):
    """The list of pages and the page.

    Signals:
        left: the person goes back to the job.
    """

    left = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self.list = QListWidget()
        self.list.setAccessibleName(say("pages of the manual"))
        self.list.setFixedWidth(theme.px(_LIST))
        self.list.setWordWrap(True)
        self.list.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.text = Pages()
        self._paths = manual_pages()
        self._names = list(self._paths)
        for path in self._paths.values():
            self.list.addItem(_title(path))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(ROOM)
        row.addWidget(self.list)
        row.addWidget(self.text, 1)
        self.list.currentRowChanged.connect(self._show)
        self.text.anchorClicked.connect(self._follow)
        self.text.left.connect(self.left)

    def sentence(self) -> tuple[str, ...]:
        """What is open, and how to leave it."""
        return (
            say("The manual."),
            say("Escape goes back to the job. The maker's manual comes first."),
            "",
        )

    def refresh(self) -> None:
        """Nothing here depends on the job."""

    def begin(self) -> None:
        """Put the keyboard on the page, so that the arrow keys scroll it."""
        self.text.setFocus(Qt.FocusReason.TabFocusReason)

    def open_at(self, name: str) -> None:
        """Open a page by its file's name without the ending; the first where there is none."""
        self.list.setCurrentRow(self._names.index(name) if name in self._paths else 0)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)

    def _show(self, row: int) -> None:
        if not 0 <= row < len(self._names):
            return
        path = self._paths[self._names[row]]
        document = QTextDocument(self.text)
        document.setBaseUrl(QUrl.fromLocalFile(f"{path.parent}/"))
        document.setDefaultFont(self.text.font())
        document.setDocumentMargin(self._theme.px(18))
        document.setMarkdown(path.read_text(encoding="utf-8"))
        self.text.setDocument(document)

    def _follow(self, link: QUrl) -> None:
        self.open_at(Path(link.path()).stem)


def manual_pages() -> dict[str, Path]:
    """The pages by name, in their order; those not named in it come last.

    A page that is not there in the language spoken is shown in English.
    """
    folder = resource("manual")
    in_english, spoken_here = folder.glob("*.md"), (folder / spoken()).glob("*.md")
    found = {path.stem: path for path in (*sorted(in_english), *sorted(spoken_here))}
    ordered = {name: found.pop(name) for name in ORDER if name in found}
    return {**ordered, **found}


def _title(path: Path) -> str:
    first = path.read_text(encoding="utf-8").partition("\n")[0]
    return first.lstrip("# ").replace("`", "").strip()
