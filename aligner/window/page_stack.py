"""The pages of the window, one of them on the screen; each is made when it is first shown.

The trap: with very large text a page may not fit the screen. Each stands in a holder that
scrolls where it must, so that nothing is cut off.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QAbstractScrollArea,
    QApplication,
    QFrame,
    QScrollArea,
    QStackedWidget,
)

from aligner.assessment import Stage
from aligner.window.typed_texts import Typed, type_again, typed_into

#: Room that is kept above and below what the keyboard reaches, in pixels.
_ROUND_ABOUT = 60


class PageStack(QStackedWidget):
    """Stages' pages and those beside them. A page is a widget and a `StagePage`."""

    def __init__(self, make_page: Callable[[Stage], Any]) -> None:
        super().__init__()
        self._make_page = make_page
        self._pages: dict[Stage, Any] = {}
        self._holders: dict[Any, QScrollArea] = {}
        self._typed: dict[Stage, Typed] = {}  # into pages that were let go
        self.shown: Any = None
        application = QApplication.instance()
        if isinstance(application, QApplication):
            queued = Qt.ConnectionType.QueuedConnection  # the page is laid out first
            application.focusChanged.connect(self._follow_keyboard, queued)

    def page(self, stage: Stage) -> Any:
        """The page of a stage, made when it is first asked for."""
        if stage not in self._pages:
            self._pages[stage] = self._make_page(stage)
        return self._pages[stage]

    def put_on_screen(self, page: Any) -> None:
        """Show a page in place of the one before."""
        if page not in self._holders:
            holder = QScrollArea()
            holder.setFrameShape(QFrame.Shape.NoFrame)
            holder.setFocusPolicy(Qt.FocusPolicy.NoFocus)
            holder.setWidgetResizable(True)
            holder.setWidget(page)
            self._holders[page] = holder
            self.addWidget(holder)
        self.shown = page
        self.setCurrentWidget(self._holders[page])

    def forget(self) -> None:
        """Let every page go, as when colours, sizes or units have changed."""
        for stage, page in self._pages.items():
            if stage not in self._typed:  # else it still waits for its page to be shown
                self._typed[stage] = typed_into(page)
        self._pages, self.shown = {}, None
        for holder in self._holders.values():
            self.removeWidget(holder)
            holder.deleteLater()
        self._holders = {}

    def type_again(self, stage: Stage) -> None:
        """Put into a stage's page what was typed into the one before it and not kept."""
        typed = self._typed.pop(stage, None)
        if typed is not None:
            type_again(self.page(stage), typed)

    def forget_typing(self) -> None:
        """Another job is opened: what was typed was not meant for it."""
        self._typed = {}

    @Slot()
    def _follow_keyboard(self) -> None:
        """Bring what the keyboard reaches into sight; a list stays where it is."""
        holder, focus = self.currentWidget(), QApplication.focusWidget()
        if focus is None or not isinstance(holder, QScrollArea):
            return
        if not holder.widget().isAncestorOf(focus) or isinstance(focus, QAbstractScrollArea):
            return
        there = focus.parentWidget()
        while there is not holder:
            there = there.parentWidget()
            if isinstance(there, QScrollArea):  # the holder, and parts that scroll by themselves
                there.ensureWidgetVisible(focus, 0, _ROUND_ABOUT)
