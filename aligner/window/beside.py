"""The pages that stand beside the stages: manual, history, preferences, bench view.

The trap: each must lead back to the stage it was opened from, with nothing lost on the way.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QSettings

from aligner.assessment import Stage
from aligner.errors import AlignerError
from aligner.language import say
from aligner.window.files.filing import Filing
from aligner.window.preferences import Preferences
from aligner.window.setting import Setting
from aligner.window.widgets.question_bar import QuestionBar
from aligner.window.widgets.refusal_words import sentence

if TYPE_CHECKING:
    from aligner.window.main_window import MainWindow

_FOLDER = "folder"


class PagesBeside:
    """Makes each page when it is first wanted, and connects it to the window."""

    def __init__(
        self,
        window: MainWindow,
        filing: Filing,
        question: QuestionBar,
        settings: QSettings | None,
        take_preferences: Callable[[Preferences], None],
    ) -> None:
        self._window = window
        self._filing = filing
        self._question = question
        self._settings = settings
        self._take_preferences = take_preferences
        self._kept: dict[str, Any] = {}

    def forget(self) -> None:
        """Let every page go, as when colours, sizes or units have changed."""
        self._kept = {}

    def manual(self, setting: Setting, stage: Stage) -> Any:
        """The manual, at the page of a stage."""
        from aligner.window.manual_page import ManualPage

        def make() -> Any:
            page = ManualPage(setting.theme)
            page.left.connect(self._window.go_back)
            return page

        page = self._page("manual", make)
        page.open_at(stage.value)
        return page

    def history(self, setting: Setting) -> Any:
        """All the jobs of the folder."""
        from aligner.window.history.page import HistoryPage

        def make() -> Any:
            page = HistoryPage(setting.theme, self._folder())
            page.open_wanted.connect(
                lambda path: self._filing.unless_unsaved(lambda: self._filing.open_path(path))
            )
            page.next_wanted.connect(
                lambda path: self._filing.unless_unsaved(lambda: self._begin_next(path, setting))
            )
            page.folder_chosen.connect(self._keep_folder)
            page.changed.connect(self._window.say)
            page.left.connect(self._window.go_back)
            return page

        return self._page("history", make)

    def preferences(self, chosen: Preferences) -> Any:
        """The preferences as they are now."""
        from aligner.window.preferences_page import PreferencesPage

        def make() -> Any:
            page = PreferencesPage(chosen)
            page.chosen.connect(self._take_preferences)
            page.left.connect(self._window.go_back)
            return page

        return self._page("preferences", make)

    def bench(self, setting: Setting, stage: Stage) -> Any:
        """A stage in very large type."""
        from aligner.window.bench.view import BenchView

        def make() -> Any:
            page = BenchView(setting)
            page.left.connect(self._window.go_back)
            page.stage_wanted.connect(self._window.show_bench_of)
            page.step.door.ticked.connect(self._window.sound)
            return page

        page, own = self._page("bench", make), self._window.page(stage)
        own.refresh()  # it may not have been on the screen yet, and then has nothing to say
        page.show_stage(stage, own.sentence)
        return page

    def _page(self, name: str, make: Callable[[], Any]) -> Any:
        if name not in self._kept:
            self._kept[name] = make()
        return self._kept[name]

    def _folder(self) -> Path:
        from aligner.storage.places import documents_folder

        kept = str(self._settings.value(_FOLDER, "")) if self._settings else ""
        return Path(kept) if kept else documents_folder()

    def _keep_folder(self, folder: Path) -> None:
        if self._settings is not None:
            self._settings.setValue(_FOLDER, str(folder))

    def _begin_next(self, path: Path, setting: Setting) -> None:
        from aligner.job.next_job import begun_from
        from aligner.storage.document_file import load_job

        try:
            last, _ = load_job(path)
        except AlignerError as error:
            refused = say("{file} was not opened.", file=path.name)
            self._question.say(f"{refused} {sentence(error)}")
            return
        self._filing.start(begun_from(last, setting.now()))
