"""The window: stage list, the sentence that says what to do now, and the stage on the screen."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from functools import partial
from pathlib import Path
from typing import Any

from PySide6.QtCore import QEvent, QSettings, Qt
from PySide6.QtGui import (
    QCloseEvent,
    QDragEnterEvent,
    QDropEvent,
    QKeyEvent,
    QResizeEvent,
    QShowEvent,
)
from PySide6.QtWidgets import (
    QApplication,
    QHBoxLayout,
    QMainWindow,
    QMenu,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from aligner.assessment import Stage
from aligner.assessment.stages import where_to_begin
from aligner.drawing.theme import EDGE, HEIGHT, WIDTH, Theme, theme_for
from aligner.job import Job
from aligner.job.stamps import now_here
from aligner.language import say
from aligner.units.preferred import Preferred
from aligner.window.announcer import Announcer
from aligner.window.beside import PagesBeside
from aligner.window.files.autosave import Autosave, say_no_copy
from aligner.window.files.background import Background
from aligner.window.files.document_watch import DocumentWatch
from aligner.window.files.file_menu import FileMenu
from aligner.window.files.filing import Filing
from aligner.window.files.printing import Printing
from aligner.window.files.recent import RecentFiles
from aligner.window.kept_words import kept_words, title_words
from aligner.window.language import language_for, speak_language
from aligner.window.measuring.help import MeasuringHelp
from aligner.window.menus import fill_menus
from aligner.window.open_job import OpenJob
from aligner.window.page_stack import PageStack
from aligner.window.preferences import Preferences, keep_preferences
from aligner.window.setting import Setting
from aligner.window.stage_list import StageList
from aligner.window.stage_page import make_page
from aligner.window.undo_keys import UndoKeys
from aligner.window.widgets.labels import Caution, caution_words, label
from aligner.window.widgets.question_bar import QuestionBar
from aligner.window.widgets.style_sheet import style_sheet

#: Width, at 100 % text, below which the stage list shows its marks alone.
_FOLDED_BELOW = 1100


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
        preferences: Preferences | None = None,
    ) -> None:
        """Make the window.

        Args:
            theme: colours and sizes.
            show: the units a person prefers.
            now: the time, with the offset from UTC.
            settings: what is remembered from one start to the next; nothing if left out.
            recovery: the folder for copies of unsaved edits; none are made if left out.
            preferences: what the theme and the units were made from.
        """
        super().__init__()
        self.open_job = OpenJob(parent=self, now=now)
        self._settings = settings
        self._current = Stage.ALIGN
        self._closing_agreed = False
        self._pressed_at: QWidget | None = None
        self._setting = Setting(
            self.open_job, theme, show or Preferred(), now, self.go_to, self.save, self.go_to_value
        )
        self._preferences = preferences or Preferences()
        self._fit = theme.text_scale * 100 / self._preferences.text_size
        self._is_beside = False  # whether a page beside the stages is on the screen
        self._is_bare = False  # whether that page stands alone
        self.stages = StageList(theme, tuple(Stage))
        self.sentence = label("", "sentence", wraps=True)
        self.detail = label("", "quiet", wraps=True)
        self.caution = Caution()
        self._sentence_read = Announcer(self)
        self._caution_read = Announcer(self, is_urgent=True)
        self.question = QuestionBar()
        self._stack = PageStack(self._make_page)
        self._background = Background(self)
        self._watch = DocumentWatch(self._background, self)
        self._recent = RecentFiles(settings)
        self.filing = Filing(
            self.open_job, self.question, self._watch, self._recent, now, window=self
        )
        self._pages_beside = PagesBeside(
            self, self.filing, self.question, settings, self.take_preferences
        )
        self.printing = Printing(
            self.open_job, self.filing, self.question, self._setting.show, settings, window=self
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
        UndoKeys(self)

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
            from aligner.window.files.recovery_offer import RecoveryOffer  # late: once painted

            RecoveryOffer(self.filing, self._autosave, self.question).offer(self._recovery)

    def go_to(self, stage: Stage) -> None:
        """Show a stage and put the keyboard where it begins."""
        self._current = stage
        self._show(self.page(stage), is_beside=False)
        self._stack.type_again(stage)

    def go_to_value(self, stage: Stage, path: str) -> None:
        """Show a stage with the keyboard in the box of a value."""
        self.go_to(stage)
        self.page(stage).go_to_value(path)

    def go_back(self) -> None:
        """Back from a page beside the stages to the stage it was opened from."""
        self.go_to(self._current)

    def show_manual(self) -> None:
        """Open the manual at the page of the stage that is open."""
        self._show(self._pages_beside.manual(self._setting, self._current))

    def show_history(self) -> None:
        """Show all the jobs of the folder."""
        self._show(self._pages_beside.history(self._setting))

    def show_preferences(self) -> None:
        """Show what can be chosen."""
        self._show(self._pages_beside.preferences(self._preferences))

    def show_measuring(self) -> None:
        """Show how the value in hand is measured, beside it, or show that no more."""
        self._measuring.turn_over(self._setting.theme)

    def show_bench(self) -> None:
        """Show the open stage in very large type, or leave that view."""
        if self._is_bare:
            self.go_back()
        else:
            self.show_bench_of(self._current)

    def show_bench_of(self, stage: Stage) -> None:
        """Show a stage in very large type, and nothing else."""
        self._current = stage
        self._show(self._pages_beside.bench(self._setting, stage), is_bare=True)

    def page(self, stage: Stage) -> Any:
        """The page of a stage, made when it is first asked for."""
        return self._stack.page(stage)

    def take_preferences(self, chosen: Preferences) -> None:
        """Show everything in other colours, sizes or units from now on."""
        self.filing.keep_what_is_typed()
        keep_preferences(self._settings, chosen)
        self._preferences = chosen
        is_other_language = speak_language(language_for(chosen.language))
        theme = theme_for(chosen.appearance, self._fit * chosen.text_size / 100)
        self._setting = replace(self._setting, theme=theme, show=chosen.units)
        self.printing.show = chosen.units
        self._pages_beside.forget()
        self._stack.forget()
        self._measuring.take_away()
        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.setPalette(theme.qt_palette())
        self.setStyleSheet(style_sheet(theme))
        if is_other_language:
            self._forget_words()
        self.stages.set_theme(theme)
        self._fold_stages()
        self.show_preferences()

    def _forget_words(self) -> None:
        """Make anew what was made in the language spoken before."""
        self.open_job.say_anew()
        for menu in self.menuBar().findChildren(QMenu):
            menu.deleteLater()
        self.menuBar().clear()
        self._fill_menus()

    def say(self) -> None:
        """Say again what the page on the screen has to say."""
        if self._stack.shown is None:
            return
        said = self._stack.shown.sentence()
        self.sentence.setText(said[0])
        self.detail.setText(said[1])
        self.detail.setVisible(bool(said[1]) and not self._is_bare)
        caution = said[2] if len(said) > 2 else ""
        self.caution.say("" if self._is_bare else caution)
        if not self.open_job.has_draft:
            self._sentence_read.say(said[0])
            self._caution_read.say(caution_words(caution))

    def _show(self, page: Any, *, is_beside: bool = True, is_bare: bool = False) -> None:
        focus = self.focusWidget()
        if focus is not None:
            focus.clearFocus()  # what is being typed is kept before its page goes
        self._is_beside, self._is_bare = is_beside, is_bare
        for said_by_the_page in (self.stages, self.sentence, self.detail):
            said_by_the_page.setVisible(not is_bare)
        self._stack.put_on_screen(page)
        self._refresh()
        page.begin()
        self.say()

    def _make_page(self, stage: Stage) -> Any:
        page: Any = make_page(stage, self._setting)
        if stage is Stage.TIGHTEN:
            page.door.ticked.connect(self.sound)
        return page

    def sound(self) -> None:
        """Let a tick be heard, where that is preferred."""
        if self._preferences.sound:
            QApplication.beep()

    def _fold_stages(self) -> None:
        wide = self._setting.theme.px(_FOLDED_BELOW)
        self.stages.set_folded(self.width() < wide)

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
        self._measuring = MeasuringHelp(center)

    def _connect(self) -> None:
        self.open_job.started.connect(self._stack.forget_typing)
        self.open_job.changed.connect(self._refresh)
        self.open_job.look_changed.connect(self.say)
        self.open_job.kept_changed.connect(self._say_kept)
        self.stages.chosen.connect(lambda name: self.go_to(Stage(name)))
        self.filing.opened.connect(self._begin)

    def _begin(self) -> None:
        """Show another job where its work stands."""
        stages = self.open_job.assessment.stages
        self.go_to(where_to_begin(self.open_job.job, stages))

    def _keep_recovery_copies(self, folder: Path, now: Callable[[], datetime]) -> None:
        autosave = Autosave(self.open_job, self._background, now, folder, self)
        autosave.failed.connect(partial(say_no_copy, self.question))
        self._watch.copy = lambda: autosave.copy
        self._autosave = autosave

    def _refresh(self) -> None:
        if self._stack.shown is None:
            return
        job, assessment = self.open_job.job, self.open_job.assessment
        current = None if self._is_beside else self._current
        self.stages.show_job(job.sheet.name, job.title, assessment.stages, current)
        self._stack.shown.refresh()
        self.say()
        self._say_kept()

    def _say_kept(self) -> None:
        self.stages.show_kept(kept_words(self.open_job))
        self.setWindowTitle(title_words(self.open_job))
        self.setWindowModified(self.open_job.has_unsaved_edits)

    def _fill_menus(self) -> None:
        file = self.menuBar().addMenu(say("&File"))
        self._file_menu = FileMenu(file, self, self.filing, self.printing, self._recent)
        fill_menus(self)

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ShortcutOverride:
            self._pressed_at = self.focusWidget()  # the keyboard may be elsewhere once it acts
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter presses the button that had the keyboard, as Space does."""
        button = self.focusWidget()
        is_enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        was_here = isinstance(button, QPushButton) and button is self._pressed_at
        self._pressed_at = None
        if is_enter and was_here and not event.isAutoRepeat():
            button.click()
        else:
            super().keyPressEvent(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if any(url.isLocalFile() for url in event.mimeData().urls()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        files = [url.toLocalFile() for url in event.mimeData().urls() if url.isLocalFile()]
        if files:
            self.filing.unless_unsaved(lambda: self.open_path(Path(files[0])))

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._stack.shown is None:
            self._begin()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fold_stages()

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
