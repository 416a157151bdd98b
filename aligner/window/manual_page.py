"""The manual, opened at the right page: plain pages that come with the program.

The trap: help that asks for a network is no help in a garage. The pages are files beside the
program, and a link leads only to another of them.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

from PySide6.QtCore import Qt, QUrl, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent, QTextDocument
from PySide6.QtWidgets import QHBoxLayout, QListWidget, QTextBrowser, QWidget

from aligner.data_files import resource
from aligner.drawing.theme import ROOM, Theme
from aligner.language import say, spoken
from aligner.window.manual_pictures import picture_for, picture_path

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
#: Round the words of a page, likewise.
_MARGIN = 18


class Pages(QTextBrowser):
    """One page; Escape leaves the manual."""

    left = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._path = Path()
        self.setOpenLinks(False)
        self.setAccessibleName(say("page of the manual"))
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)

    def show_page(self, path: Path) -> None:
        """Show a page from its beginning.

        Args:
            path: its file.
        """
        self._path = path
        document = QTextDocument(self)
        document.setBaseUrl(QUrl.fromLocalFile(f"{path.parent}/"))
        document.setDefaultFont(self.font())
        document.setDocumentMargin(self._theme.px(_MARGIN))
        document.setMarkdown(path.read_text(encoding="utf-8"))
        document.setTextWidth(self.viewport().width())  # laid out half, it asks for a scroll bar
        self.setDocument(document)

    def loadResource(self, kind: int, name: QUrl) -> Any:
        if kind != QTextDocument.ResourceType.ImageResource.value:
            return super().loadResource(kind, name)
        width = self.viewport().width() - 2 * self._theme.px(_MARGIN)
        path = picture_path(self._path.parent, name.fileName(), self._theme)
        return picture_for(path, width, self.devicePixelRatioF())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._path.name and event.size().width() != event.oldSize().width():
            bar, before = self.verticalScrollBar(), self.verticalScrollBar().value()
            highest = max(bar.maximum(), 1)
            self.show_page(self._path)  # its pictures have another width now
            bar.setValue(round(before / highest * bar.maximum()))

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
        self.list = QListWidget()
        self.list.setAccessibleName(say("pages of the manual"))
        self.list.setFixedWidth(theme.px(_LIST))
        self.list.setWordWrap(True)
        self.list.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.text = Pages(theme)
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
        self.text.show_page(self._paths[self._names[row]])

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
