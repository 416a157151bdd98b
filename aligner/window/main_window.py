"""The window: stage list, the sentence that says what to do now, and the stage on the screen."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import Any

from PySide6.QtCore import QSettings
from PySide6.QtGui import QAction, QCloseEvent, QDragEnterEvent, QDropEvent, QKeySequence
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QMainWindow,
    QMenu,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from aligner.assessment import Stage
from aligner.drawing.theme import EDGE, HEIGHT, WIDTH, Theme
from aligner.errors import AlignerError
from aligner.job import Job
from aligner.job.stamps import now_here
from aligner.units.preferred import Preferred
from aligner.window.labels import Caution, label
from aligner.window.open_job import OpenJob
from aligner.window.question_bar import QuestionBar
from aligner.window.stage_list import StageList
from aligner.window.stage_page import Setting, make_page
from aligner.window.style_sheet import style_sheet

_FILTER = "Jobs (*.job.json *.json)"
_RECENT = 8


class MainWindow(QMainWindow):
    """One window, one job."""

    def __init__(
        self,
        theme: Theme,
        show: Preferred | None = None,
        *,
        now: Callable[[], datetime] = now_here,
        settings: QSettings | None = None,
    ) -> None:
        super().__init__()
        self.open_job = OpenJob(parent=self)
        self._settings = settings
        self._current = Stage.ALIGN
        self._closing_agreed = False
        self._setting = Setting(self.open_job, theme, show or Preferred(), now, self.go_to)
        self._pages: dict[Stage, Any] = {}  # each a widget and a StagePage
        self.stages = StageList(theme, tuple(Stage))
        self.sentence = label("", "sentence", wraps=True)
        self.detail = label("", "quiet", wraps=True)
        self.caution = Caution()
        self.question = QuestionBar()
        self._stack = QStackedWidget()
        self._lay_out()
        self._fill_menus()
        self.setStyleSheet(style_sheet(theme))
        self.setAcceptDrops(True)
        self.resize(theme.px(WIDTH), theme.px(HEIGHT))
        self._connect()
        self.go_to(Stage.ALIGN)

    def open_path(self, path: Path) -> None:
        """Open a job's file; what is wrong with it is said in the window."""
        try:
            self.open_job.load(path)
        except AlignerError as error:
            self.question.say(f"{path.name} was not opened. {_sentence(error)}")
            return
        self._remember(path)
        self.go_to(Stage.ALIGN)

    def show_job(self, job: Job) -> None:
        """Open a job that is in no file yet."""
        self.open_job.start(job)
        self.go_to(Stage.ALIGN)

    def save(self) -> bool:
        """Save to the job's file, asking for one where it has none; whether it is saved now."""
        if self.open_job.path is None:
            return self.save_as()
        return self._save_to(self.open_job.path)

    def save_as(self) -> bool:
        """Save to a file that the person names."""
        name, _ = QFileDialog.getSaveFileName(self, "Save the job as", "", _FILTER)
        return bool(name) and self._save_to(Path(name))

    def save_to(self, path: Path) -> bool:
        """Save to a file, which becomes the job's own."""
        return self._save_to(path)

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
        else:
            words = f"saved in {path.name}" if path else "not saved in a file yet"
        self.stages.show_kept(words)
        name = path.name if path else "new job"
        self.setWindowTitle(f"{name}[*] - Aligner")
        self.setWindowModified(self.open_job.has_unsaved_edits)

    def _fill_menus(self) -> None:
        keys = QKeySequence.StandardKey
        file = self.menuBar().addMenu("&File")
        self._add(file, "&New job", keys.New, lambda: self._unless_unsaved(self._new))
        self._add(file, "&Open...", keys.Open, lambda: self._unless_unsaved(self._open))
        self._recent = file.addMenu("Open &recent")
        self._recent.aboutToShow.connect(self._fill_recent)
        self._add(file, "&Save", keys.Save, self.save)
        self._add(file, "Save &as...", keys.SaveAs, self.save_as)
        file.addSeparator()
        self._add(file, "&Close", keys.Quit, self.close)
        edit = self.menuBar().addMenu("&Edit")
        undo = self.open_job.edits.createUndoAction(self, "Undo")
        undo.setShortcut(keys.Undo)
        redo = self.open_job.edits.createRedoAction(self, "Redo")
        redo.setShortcut(keys.Redo)
        edit.addActions([undo, redo])
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

    def _new(self) -> None:
        self.show_job(Job())

    def _open(self) -> None:
        name, _ = QFileDialog.getOpenFileName(self, "Open a job", "", _FILTER)
        if name:
            self.open_path(Path(name))

    def _save_to(self, path: Path) -> bool:
        focus = self.focusWidget()
        if focus is not None:
            focus.clearFocus()
        try:
            self.open_job.save(path)
        except AlignerError as error:
            self.question.say(f"The job was not saved; the edits are still here. {error}.")
            return False
        self._remember(path)
        return True

    def _unless_unsaved(self, act: Callable[[], None]) -> None:
        if not self.open_job.has_unsaved_edits:
            act()
            return

        def save_first() -> None:
            if self.save():
                act()

        self.question.ask(
            "There are edits that are not saved.",
            [("Save first", save_first), ("Discard them", act), ("Stay", lambda: None)],
        )

    def _remember(self, path: Path) -> None:
        if self._settings is None:
            return
        kept = [name for name in self._recent_names() if name != str(path.resolve())]
        self._settings.setValue("recent", [str(path.resolve()), *kept][:_RECENT])

    def _recent_names(self) -> list[str]:
        found = self._settings.value("recent", []) if self._settings else []
        return [found] if isinstance(found, str) else list(found or [])

    def _fill_recent(self) -> None:
        self._recent.clear()
        names = self._recent_names()
        for name in names:
            action = self._recent.addAction(Path(name).name)
            action.triggered.connect(
                lambda _=False, name=name: self._unless_unsaved(lambda: self.open_path(Path(name)))
            )
        if not names:
            self._recent.addAction("nothing opened yet").setEnabled(False)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if any(url.isLocalFile() for url in event.mimeData().urls()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        files = [url.toLocalFile() for url in event.mimeData().urls() if url.isLocalFile()]
        if files:
            self._unless_unsaved(lambda: self.open_path(Path(files[0])))

    def closeEvent(self, event: QCloseEvent) -> None:
        if self._closing_agreed or not self.open_job.has_unsaved_edits:
            if self._settings is not None:
                self._settings.setValue("geometry", self.saveGeometry())
            event.accept()
            return
        event.ignore()
        self._unless_unsaved(self._close_agreed)

    def _close_agreed(self) -> None:
        self._closing_agreed = True
        self.close()


def _sentence(error: AlignerError) -> str:
    """A refusal as a sentence; a field's path keeps its own letters."""
    text = str(error)
    return (text if error.where else text[:1].upper() + text[1:]) + "."
