"""The window: stage list, the sentence that says what to do now, and the stage on the screen."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import Any

from PySide6.QtCore import QEvent, QSettings, Qt
from PySide6.QtGui import QAction, QCloseEvent, QDragEnterEvent, QDropEvent, QKeySequence
from PySide6.QtWidgets import (
    QHBoxLayout,
    QMainWindow,
    QMenu,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from aligner.assessment import Stage
from aligner.drawing.theme import EDGE, HEIGHT, WIDTH, Theme
from aligner.job import Job
from aligner.job.stamps import now_here
from aligner.units.preferred import Preferred
from aligner.window.autosave import Autosave
from aligner.window.background import Background
from aligner.window.document_watch import DocumentWatch
from aligner.window.file_menu import FileMenu
from aligner.window.filing import Filing
from aligner.window.labels import Caution, label
from aligner.window.open_job import OpenJob
from aligner.window.printing import Printing
from aligner.window.question_bar import QuestionBar
from aligner.window.recent import RecentFiles
from aligner.window.stage_list import StageList
from aligner.window.stage_page import Setting, make_page
from aligner.window.style_sheet import style_sheet


class MainWindow(QMainWindow):
    """One window, one job."""

    def __init__(
        self,
        theme: Theme,
        show: Preferred | None = None,
        *,
        now: Callable[[], datetime] = now_here,
        settings: QSettings | None = None,
        recovery: Path | None = None,
    ) -> None:
        """Make the window.

        Args:
            theme: colours and sizes.
            show: the units a person prefers.
            now: the time, with the offset from UTC.
            settings: what is remembered from one start to the next; nothing if left out.
            recovery: the folder for copies of unsaved edits; none are made if left out.
        """
        super().__init__()
        self.open_job = OpenJob(parent=self, now=now)
        self._settings = settings
        self._current = Stage.ALIGN
        self._closing_agreed = False
        self._setting = Setting(
            self.open_job, theme, show or Preferred(), now, self.go_to, self.save
        )
        self._pages: dict[Stage, Any] = {}  # each a widget and a StagePage
        self.stages = StageList(theme, tuple(Stage))
        self.sentence = label("", "sentence", wraps=True)
        self.detail = label("", "quiet", wraps=True)
        self.caution = Caution()
        self.question = QuestionBar()
        self._stack = QStackedWidget()
        self._background = Background(self)
        self._watch = DocumentWatch(self._background, self)
        self._recent = RecentFiles(settings)
        self.filing = Filing(
            self.open_job, self.question, self._watch, self._recent, now, window=self
        )
        self._autosave: Autosave | None = None
        self._recovery = recovery
        if recovery is not None:
            self._keep_recovery_copies(recovery, now)
        self._lay_out()
        self._fill_menus()
        self.setStyleSheet(style_sheet(theme))
        self.setAcceptDrops(True)
        self.resize(theme.px(WIDTH), theme.px(HEIGHT))
        self._connect()
        self.go_to(Stage.ALIGN)

    def open_path(self, path: Path) -> None:
        """Open a job's file; what is wrong with it is said in the window."""
        self.filing.open_path(path)

    def show_job(self, job: Job) -> None:
        """Open a job that is in no file yet."""
        self.filing.start(job)

    def save(self) -> bool:
        """Save to the job's file, asking for one where it has none; whether it is saved now."""
        return self.filing.save()

    def save_as(self) -> bool:
        """Save to a file that the person names."""
        return self.filing.save_as()

    def save_to(self, path: Path) -> bool:
        """Save to a file, which becomes the job's own."""
        return self.filing.save_to(path)

    def offer_recovery(self) -> None:
        """Offer what windows that were killed left unsaved, one copy after the other."""
        if self.question.text:  # one question at a time
            once = Qt.ConnectionType.SingleShotConnection
            self.question.answered.connect(self.offer_recovery, once)
        elif self._recovery is not None and self._autosave is not None:
            from aligner.window.recovery_offer import RecoveryOffer  # late: once painted

            RecoveryOffer(self.filing, self._autosave, self.question).offer(self._recovery)

    def go_to(self, stage: Stage) -> None:
        """Show a stage and put the keyboard where it begins."""
        focus = self.focusWidget()
        if focus is not None:
            focus.clearFocus()  # what is being typed is kept before the page goes
        self._current = stage
        page = self.page(stage)
        self._stack.setCurrentWidget(page)
        self._refresh()
        page.begin()
        self._say()

    def page(self, stage: Stage) -> Any:
        """The page of a stage, made when it is first asked for."""
        if stage not in self._pages:
            made = make_page(stage, self._setting)
            self._stack.addWidget(made)
            self._pages[stage] = made
        return self._pages[stage]

    def _lay_out(self) -> None:
        center = QWidget()
        center.setObjectName("ground")
        right = QVBoxLayout()
        right.setContentsMargins(EDGE - 8, 14, EDGE - 8, 14)
        right.setSpacing(6)
        for widget in (self.question, self.sentence, self.detail, self.caution):
            right.addWidget(widget)
        right.addSpacing(6)
        right.addWidget(self._stack, 1)
        row = QHBoxLayout(center)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.stages)
        row.addLayout(right, 1)
        self.setCentralWidget(center)

    def _connect(self) -> None:
        self.open_job.changed.connect(self._refresh)
        self.open_job.look_changed.connect(self._say)
        self.open_job.kept_changed.connect(self._say_kept)
        self.stages.chosen.connect(lambda name: self.go_to(Stage(name)))
        self.filing.opened.connect(lambda: self.go_to(Stage.ALIGN))

    def _keep_recovery_copies(self, folder: Path, now: Callable[[], datetime]) -> None:
        autosave = Autosave(self.open_job, self._background, now, folder, self)
        self._watch.copy = lambda: autosave.copy
        autosave.failed.connect(
            lambda words: self.question.ask(
                f"No recovery copy can be written; save the job now and then. {words}.",
                [("Understood", lambda: None)],
                takes_keyboard=False,
            )
        )
        self._autosave = autosave

    def _refresh(self) -> None:
        job, assessment = self.open_job.job, self.open_job.assessment
        self.stages.show_job(job.sheet.name, job.title, assessment.stages, self._current)
        self.page(self._current).refresh()
        self._say()
        self._say_kept()

    def _say(self) -> None:
        said = self.page(self._current).sentence()
        self.sentence.setText(said[0])
        self.detail.setText(said[1])
        self.detail.setVisible(bool(said[1]))
        self.caution.say(said[2] if len(said) > 2 else "")

    def _say_kept(self) -> None:
        path = self.open_job.path
        if self.open_job.has_unsaved_edits:
            words = "edits not saved"
        elif self.open_job.only_read:
            words = "open to read"
        else:
            words = f"saved in {path.name}" if path else "not saved in a file yet"
        self.stages.show_kept(words)
        name = path.name if path else "new job"
        only_read = " (to read)" if self.open_job.only_read else ""
        self.setWindowTitle(f"{name}[*]{only_read} - Aligner")
        self.setWindowModified(self.open_job.has_unsaved_edits)

    def _fill_menus(self) -> None:
        keys = QKeySequence.StandardKey
        file = self.menuBar().addMenu("&File")
        self.printing = Printing(
            self.open_job,
            self.filing,
            self.question,
            self._setting.show,
            self._settings,
            window=self,
        )
        self._file_menu = FileMenu(file, self, self.filing, self.printing, self._recent)
        edit = self.menuBar().addMenu("&Edit")
        undo = self.open_job.edits.createUndoAction(self, "Undo")
        undo.setShortcuts(keys.Undo)
        redo = self.open_job.edits.createRedoAction(self, "Redo")
        redo.setShortcuts(keys.Redo)
        edit.addActions([undo, redo])
        self._add(edit, "Answer the &question", "F6", self.question.take_keyboard)
        go = self.menuBar().addMenu("&Stage")
        for number, stage in enumerate(Stage, start=1):
            self._add(go, stage.title, f"Alt+{number}", lambda stage=stage: self.go_to(stage))

    def _add(
        self,
        menu: QMenu,
        words: str,
        keys: QKeySequence.StandardKey | str,
        act: Callable[[], object],
    ) -> None:
        action = QAction(words, self)
        action.setShortcut(QKeySequence(keys))
        action.triggered.connect(lambda _=False: act())
        menu.addAction(action)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if any(url.isLocalFile() for url in event.mimeData().urls()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        files = [url.toLocalFile() for url in event.mimeData().urls() if url.isLocalFile()]
        if files:
            self.filing.unless_unsaved(lambda: self.open_path(Path(files[0])))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.ActivationChange and self.isActiveWindow():
            self._watch.look()

    def closeEvent(self, event: QCloseEvent) -> None:
        self.filing.keep_what_is_typed()
        if not (self._closing_agreed or not self.open_job.has_unsaved_edits):
            event.ignore()
            self.filing.unless_unsaved(self._close_agreed)
            return
        if self._settings is not None:
            self._settings.setValue("geometry", self.saveGeometry())
        if self._autosave is not None:
            self._autosave.drop()
        self.filing.close()
        self._background.end()
        event.accept()

    def _close_agreed(self) -> None:
        self._closing_agreed = True
        self.close()
