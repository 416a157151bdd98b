"""The open document as others work on it too: open to read, taken over, changed, gone.

The trap: two people at one file, and the later save undoes the earlier without a word. Here
every such meeting is told, and each has an answer that keeps both.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from aligner.language import say
from aligner.window.files.document_watch import DocumentWatch
from aligner.window.open_job import OpenJob
from aligner.window.widgets.question_bar import Answer, QuestionBar
from aligner.window.widgets.refusal_words import sentence

if TYPE_CHECKING:
    from aligner.storage.document_file import ChangedOnDisk, DocumentFile
    from aligner.storage.lock import Holder
    from aligner.window.files.filing import Filing


class SharedDocument(QObject):
    """What is told and asked about other programs' work on the open document."""

    def __init__(
        self, filing: Filing, open_job: OpenJob, question: QuestionBar, watch: DocumentWatch
    ) -> None:
        super().__init__(filing)
        self._filing = filing
        self._open_job = open_job
        self._question = question
        self._watch = watch
        self._holder: Holder | None = None  # who has the document that is open to read
        self._has_said_only_read = False
        watch.taken.connect(self._was_taken)
        watch.changed.connect(self._was_changed)
        watch.gone.connect(self._is_gone)
        open_job.changed.connect(self._say_only_read_once)

    def begin(self, holder: Holder | None) -> None:
        """Another document is opened, which this holder has."""
        self._holder = holder
        self._has_said_only_read = False

    def may_write(self, path: Path) -> bool:
        """Whether the job's own file may be written; says why not, and offers what may be done."""
        if self._watch.is_lost():
            holder = self._watch.take(path)
            if holder is not None:
                self._now_only_read(holder)
        if not self._open_job.only_read:
            return True
        self._question.ask(
            f"{_not_saved()} {self._open_job.only_read}.",
            [*self._ways_on(), (say("Stay"), _nothing)],
        )
        return False

    def takes_new_place(self, path: Path) -> bool:
        """Whether no other program works on the file that is to be written."""
        from aligner.storage.lock import LockedByAnother, holder

        found = holder(path)
        if found is None or found.is_left_behind():
            return True
        self._question.say(
            f"{say('The job was not saved there; the edits are still here.')} "
            f"{LockedByAnother(path, found)}. {say('Choose another name.')}"
        )
        return False

    def _ways_on(self) -> list[Answer]:
        ways: list[Answer] = [(say("Save under another name"), self._filing.save_as)]
        holder = self._holder
        if holder is not None:
            ways.append((say("Take it over"), lambda: self._take_over(holder)))
        return ways

    def offer_take_over(self, holder: Holder) -> None:
        """Say who has the document, and offer to take it over."""
        answers: list[Answer] = [
            (say("Only read"), _nothing),
            (say("Take it over"), lambda: self._take_over(holder)),
        ]
        if holder.is_left_behind():
            answers.reverse()
        here = say("It is open here to read.")
        self._question.ask(f"{self._open_job.only_read}. {here}", answers)

    def _take_over(self, seen: Holder) -> None:
        path = self._open_job.path
        if path is None:
            return
        holder = self._watch.take_over(path, seen)
        self._holder = holder
        self._open_job.only_read = held_words(path, holder)
        if holder is not None:
            self.offer_take_over(holder)
            return
        if not self._open_job.has_unsaved_edits:
            self._filing.open_path(path)  # as the other left it
        else:
            self._watch.look()

    def _now_only_read(self, holder: Holder) -> None:
        path = self._open_job.path
        if path is not None:
            self._holder = holder
            self._open_job.only_read = held_words(path, holder)

    def _was_taken(self, holder: Holder) -> None:
        self._now_only_read(holder)
        self._question.ask(
            f"{say('Another program has taken the job over.')} {self._open_job.only_read}. "
            f"{say('What is typed here stays here.')}",
            [*self._ways_on(), (say("Understood"), _nothing)],
            takes_keyboard=False,
        )

    def _say_only_read_once(self) -> None:
        open_job = self._open_job
        if not open_job.only_read or self._has_said_only_read or not open_job.has_unsaved_edits:
            return
        self._has_said_only_read = True
        stays = say("What is changed here stays in this window and is not written to that file.")
        self._question.ask(
            f"{open_job.only_read}. {stays}",
            [*self._ways_on(), (say("Understood"), _nothing)],
            takes_keyboard=False,
        )

    def _was_changed(self, file: DocumentFile) -> None:
        if self._question.text:
            return  # it may be the very save that met the change and asks what becomes of both
        name = file.path.name
        if self._open_job.has_unsaved_edits:
            words = say(
                "{file} was changed by another program. Your edits are still here; saving will "
                "ask what becomes of both.",
                file=name,
            )
            answers: list[Answer] = [
                (say("Keep both"), self._filing.save_beside),
                (say("Understood"), _nothing),
            ]
        else:
            words = say(
                "{file} was changed by another program since it was opened here.", file=name
            )
            answers = [
                (say("Open it as it is now"), lambda: self._filing.open_path(file.path)),
                (say("Stay with this"), _nothing),
            ]
        self._question.ask(words, answers, takes_keyboard=False)

    def _is_gone(self, file: DocumentFile) -> None:
        if self._question.text:
            return

        def anew() -> None:
            self._filing.save_to(file.path, over_changes=True)

        self._question.ask(
            say(
                "{file} is not there any more (is its drive plugged in?). The job is still whole "
                "in this window.",
                file=file.path.name,
            ),
            [
                (say("Save it there anew"), anew),
                (say("Save under another name"), self._filing.save_as),
                (say("Understood"), _nothing),
            ],
            takes_keyboard=False,
        )

    def offer_both(self, changed: ChangedOnDisk) -> None:
        """Say that a save met another program's work, and offer what may become of both."""
        path = self._open_job.path
        if path is None:
            return
        replace: Answer = (
            say("Save it there anew") if changed.is_gone else say("Replace theirs with mine"),
            lambda: self._filing.save_to(path, over_changes=True),
        )
        first: list[Answer] = [replace]
        if not changed.is_gone:
            both: Answer = (say("Keep both"), self._filing.save_beside)
            first = [both, replace] if _can_be_read(path) else [both]
        self._question.ask(
            f"{_not_saved()} {sentence(changed)}",
            [
                *first,
                (say("Save under another name"), self._filing.save_as),
                (say("Stay"), _nothing),
            ],
        )


def held_words(path: Path, holder: Holder | None) -> str:
    """Who has a document and since when; "" where nobody else has it."""
    if holder is None:
        return ""
    file, who, since = path.name, holder.who(), holder.since_when()
    if holder.is_left_behind():
        if since:
            return say(
                "{file} was left open by {who} since {since}, which does not run any more",
                file=file,
                who=who,
                since=since,
            )
        return say("{file} was left open by {who}, which does not run any more", file=file, who=who)
    if since:
        return say("{file} is open for {who} since {since}", file=file, who=who, since=since)
    return say("{file} is open for {who}", file=file, who=who)


def _not_saved() -> str:
    return say("The job was not saved; the edits are still here.")


def _can_be_read(path: Path) -> bool:
    """Whether a job stands there; a damaged or a newer one is not to be replaced."""
    from aligner.storage.document_file import load_job
    from aligner.storage.refusal import UnusableDocument

    try:
        load_job(path)
    except UnusableDocument:
        return False
    return True


def _nothing() -> None:
    """An answer that leaves everything as it is."""
