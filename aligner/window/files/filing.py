"""Opening, saving and closing the job: what is asked, and what is said when it fails.

The trap: each of these can lose what was typed or what another program wrote. So nothing is
let go without an answer, and every refusal offers a way on in place.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from aligner.errors import AlignerError
from aligner.job import Job
from aligner.language import say
from aligner.window.files.document_watch import DocumentWatch, is_same_file
from aligner.window.files.job_dialogs import ask_name_to_open, ask_name_to_save
from aligner.window.files.recent import RecentFiles
from aligner.window.files.shared_document import SharedDocument, held_words
from aligner.window.keyboard_place import KeyboardPlace
from aligner.window.open_job import OpenJob
from aligner.window.widgets.question_bar import QuestionBar
from aligner.window.widgets.refusal_words import sentence

if TYPE_CHECKING:
    from aligner.storage.document_file import DocumentFile
    from aligner.storage.documents import NewerDocument
    from aligner.storage.lock import Holder

Act = Callable[[], object]


class Filing(QObject):
    """The files of one window.

    Signals:
        opened: another job stands in the window.
    """

    opened = Signal()

    def __init__(
        self,
        open_job: OpenJob,
        question: QuestionBar,
        watch: DocumentWatch,
        recent: RecentFiles,
        now: Callable[[], datetime],
        window: QWidget,
    ) -> None:
        super().__init__(window)
        self._window = window
        self._open_job = open_job
        self._question = question
        self._watch = watch
        self._recent = recent
        self._now = now
        self._shared = SharedDocument(self, open_job, question, watch)
        watch.file = lambda: open_job.file

    def new(self) -> None:
        """Begin an empty job."""
        self.unless_unsaved(lambda: self.start(Job()))

    def open(self) -> None:
        """Ask for a job's file, and open it."""
        self.unless_unsaved(self._open_named)

    def start(self, job: Job) -> None:
        """Show a job that is in no file yet."""
        self._watch.release()
        self._begin(None)
        self._open_job.start(job)
        self.opened.emit()

    def open_path(self, path: Path) -> None:
        """Open a job's file; what is wrong with it is said in the window."""
        from aligner.storage.document_file import load_job
        from aligner.storage.documents import NewerDocument

        path = path.absolute()
        try:
            job, file = load_job(path)
        except NewerDocument as newer:
            self._open_newer(path, newer)
            return
        except AlignerError as error:
            refused = say("{file} was not opened.", file=path.name)
            self._question.say(f"{refused} {sentence(error)}")
            return
        holder = self._watch.take(path)
        self._begin(holder)
        self._open_job.start(job, file, only_read=held_words(path, holder))
        self._recent.remember(path)
        self.opened.emit()
        if holder is not None:
            self._shared.offer_take_over(holder)

    def recover(self, job: Job, before: Job, file: DocumentFile | None) -> None:
        """Open a job found in a recovery copy; its edits are not saved yet."""
        self._watch.release()
        holder = self._watch.take(file.path) if file else None
        self._begin(holder)
        self._open_job.recover(job, before, file)
        if file is not None:
            from aligner.window.files.newer_document import words_if_newer

            newer = words_if_newer(file.path)
            self._open_job.only_read = newer or held_words(file.path, holder)
        self.opened.emit()
        self._watch.look()
        if holder is not None:
            self._shared.offer_take_over(holder)

    def save(self) -> bool:
        """Save to the job's file, asking for one where it has none; whether it is saved now."""
        path = self._open_job.path
        return self.save_as() if path is None else self.save_to(path)

    def save_as(self) -> bool:
        """Save to a file that the person names."""
        self.keep_what_is_typed()
        path = ask_name_to_save(self._open_job.job, self._open_job.path, say("Save the job as"))
        return path is not None and self.save_to(path)

    def save_to(self, path: Path, *, over_changes: bool = False) -> bool:
        """Save to a file, which becomes the job's own; whether it is saved now."""
        from aligner.storage.document_file import ChangedOnDisk

        self.keep_what_is_typed()
        own = self._open_job.path
        if own is not None and is_same_file(path, own):
            path = own
        if not (
            self._shared.may_write(path) if path == own else self._shared.takes_new_place(path)
        ):
            return False
        before = self._open_job.path
        try:
            self._open_job.save(path, over_changes=over_changes)
        except ChangedOnDisk as changed:
            self._shared.offer_both(changed)
            return False
        except AlignerError as error:
            self._say_not_saved(error, lambda: self.save_to(path, over_changes=over_changes))
            return False
        self._saved()
        self._carry_photographs(before, path)
        return True

    def save_copy(self) -> None:
        """Save a copy under another name; the window stays with the file it has."""
        self.keep_what_is_typed()
        path = ask_name_to_save(self._open_job.job, self._open_job.path, say("Save a copy as"))
        if path is None:
            return
        own = self._open_job.path
        if own is not None and is_same_file(path, own):
            self.save()
            return
        if not self._shared.takes_new_place(path):
            return
        try:
            self._open_job.save_copy(path)
        except AlignerError as error:
            self._question.say(f"{say('The copy was not saved.')} {sentence(error)}")
            return
        self._question.say(say("A copy was saved as {file}.", file=path))
        self._carry_photographs(own, path)

    def unless_unsaved(self, act: Act) -> None:
        """Do something that lets the open job go; with unsaved edits only after an answer."""
        self.keep_what_is_typed()
        if not self._open_job.has_unsaved_edits:
            act()
            return

        def save_first() -> None:
            if self.save():
                act()

        self._question.ask(
            say("There are edits that are not saved."),
            [
                (say("Save first"), save_first),
                (say("Discard them"), act),
                (say("Stay"), _nothing),
            ],
        )

    def keep_what_is_typed(self) -> None:
        """Leave the field that is being typed in, so that its text is part of the job.

        The keyboard goes back to it: who saves in the middle of a row goes on from there.
        """
        focus = self._window.focusWidget()
        place = KeyboardPlace(focus)
        if focus is not None:
            focus.clearFocus()
        self._open_job.keep_draft()  # a field that has lost the keyboard already is not left
        place.go_back()

    def close(self) -> None:
        """Give the document free; the window goes."""
        self._watch.release()

    def _open_named(self) -> None:
        path = ask_name_to_open(self._open_job.path)
        if path is not None:
            self.open_path(path)

    def _open_newer(self, path: Path, newer: NewerDocument) -> None:
        """Open a newer version's document to read, as far as it can be understood."""
        from aligner.window.files.newer_document import only_read_words, opened_to_read

        try:
            found, file, detail = opened_to_read(path, newer)
        except AlignerError as error:
            refused = say(
                "{file} was not opened. It was made by a newer version of the program "
                "({version}), and this one cannot make it out.",
                file=path.name,
                version=newer.version,
            )
            self._question.say(f"{refused} {sentence(error)}")
            return
        self._watch.release()
        self._begin(None)
        words = only_read_words(path, newer)
        self._open_job.start(found, file, only_read=words)
        self.opened.emit()
        update = say("Update the program to work on it.")
        self._question.say(" ".join(each for each in (f"{words}.", detail, update) if each))

    def _begin(self, holder: Holder | None) -> None:
        self._question.leave()
        self._shared.begin(holder)

    def _saved(self) -> None:
        path = self._open_job.path
        if path is not None:
            self._shared.begin(None)
            holder = self._watch.take(path)
            if holder is not None and holder.is_left_behind():
                self._watch.take_over(path, holder)
            self._recent.remember(path)

    def save_beside(self) -> None:
        """Save beside the job's file, which another program changed; both are kept."""
        self.keep_what_is_typed()
        try:
            self._open_job.save_beside(self._now())
        except AlignerError as error:
            self._say_not_saved(error, self.save_beside)
            return
        self._saved()
        path = self._open_job.path
        name = path.name if path else ""
        self._question.say(say("Both are kept. This one is now in {file}.", file=name))

    def _carry_photographs(self, before: Path | None, path: Path) -> None:
        """Have the photographs stand beside the job where it is now."""
        names = [name for found in self._open_job.job.inspect.found for name in found.photographs]
        if before is None or before.parent == path.parent or not names:
            return
        from aligner.storage.photographs import carry_photographs

        missing = carry_photographs(names, before, path)
        if missing:
            self._question.say(
                say(
                    "The job was saved as {file}, but without these photographs, which could "
                    "not be copied: {photographs}.",
                    file=path.name,
                    photographs=", ".join(missing),
                )
            )

    def _say_not_saved(self, error: AlignerError, again: Act) -> None:
        self._question.ask(
            f"{say('The job was not saved; the edits are still here.')} {sentence(error)}",
            [
                (say("Try again"), again),
                (say("Save under another name"), self.save_as),
                (say("Stay"), _nothing),
            ],
        )


def _nothing() -> None:
    """An answer that leaves everything as it is."""
