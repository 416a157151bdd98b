"""What was typed before a crash, offered at the next start with what differs.

The trap: a copy taken without a word undoes what was saved meanwhile, one dropped without a
word loses work. So each copy is laid before the person, one after the other, and stays where
it is until they choose.
"""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from aligner.errors import AlignerError
from aligner.job import Job
from aligner.language import say
from aligner.window.files.autosave import Autosave
from aligner.window.files.filing import Filing
from aligner.window.widgets.question_bar import Answer, QuestionBar

if TYPE_CHECKING:
    from pathlib import Path

    from aligner.storage.recovery import Found, Original, RecoveryCopy

_MOST_SHOWN = 4


class RecoveryOffer:
    """Offers the copies that windows before this one left behind."""

    def __init__(self, filing: Filing, autosave: Autosave, question: QuestionBar) -> None:
        self._filing = filing
        self._autosave = autosave
        self._question = question
        self._left: list[RecoveryCopy] = []

    def offer(self, folder: Path) -> None:
        """Look through the folder, and ask about the newest copy that is left behind."""
        if not folder.is_dir():
            return
        from aligner.storage.recovery import recovery_copies

        self._left = [copy for copy in recovery_copies(folder) if not copy.may_be_open_still()]
        self._next()

    def _next(self) -> None:
        if self._left:
            self._ask(self._left.pop(0))

    def _ask(self, copy: RecoveryCopy) -> None:
        from aligner.storage.recovery import found_in, remove_recovery_copy

        found = found_in(copy)
        if found.job is not None and not found.changes and copy.is_whole:
            remove_recovery_copy(copy.path)  # it was saved after all: nothing differs
            self._next()
            return
        answers: list[Answer] = []
        if found.job is not None:
            answers.append((say("Open the copy"), partial(self._open, copy, found)))
        answers += [
            (say("Later"), self._next),
            (say("Drop the copy"), partial(self._drop, copy, found)),
        ]
        self._question.ask(offer_words(copy, found), answers)

    def _drop(self, copy: RecoveryCopy, found: Found) -> None:
        """Drop it at the second asking only: it cannot be brought back."""
        from aligner.storage.recovery import remove_recovery_copy

        def drop() -> None:
            remove_recovery_copy(copy.path)
            self._next()

        self._question.ask(
            say("Drop the copy for good? What it holds beyond the file is then lost."),
            [(say("Keep it"), partial(self._ask, copy)), (say("Drop it for good"), drop)],
        )

    def _open(self, copy: RecoveryCopy, found: Found) -> None:
        self._filing.unless_unsaved(partial(self._take, copy, found))

    def _take(self, copy: RecoveryCopy, found: Found) -> None:
        from aligner.storage.document_file import load_job
        from aligner.storage.recovery import Original, adopt_recovery_copy

        if found.job is None:
            return
        self._autosave.drop()  # of the job that goes
        adopted = adopt_recovery_copy(copy, self._autosave.name)
        if adopted is None:
            self._question.say(say("Another window has taken that copy meanwhile."))
            return
        before, file = Job(), copy.file
        if copy.original is not None and found.original is Original.AS_IT_WAS:
            try:
                before, file = load_job(copy.original)
            except AlignerError:
                before = Job()  # it went this moment: saving will say so
        self._autosave.adopt(adopted)
        self._filing.recover(found.job, before, file)


def offer_words(copy: RecoveryCopy, found: Found) -> str:
    """What was found, how its file stands, and what differs."""
    at = f"{copy.written.astimezone():%Y-%m-%d %H.%M}"
    if copy.original is not None:
        what = say(
            "Edits of {file} that were not saved were found, of {at}.",
            file=copy.original.name,
            at=at,
        )
        what += f" {_file_now(found.original)}"
    elif copy.is_whole:
        what = say("A job that was never saved was found, of {at}.", at=at)
    else:
        what = say(
            "A damaged copy of unsaved edits was found, of {at}: {file}.", at=at, file=copy.path
        )
    if found.job is None:
        return f"{what} {say('It cannot be read: {why}.', why=found.trouble)}"
    shown = "; ".join(found.changes[:_MOST_SHOWN])
    more = len(found.changes) - _MOST_SHOWN
    if more > 0:
        shown += f"; {say('and {count} more', count=more)}"
    return f"{what} {say('What differs: {changes}.', changes=shown)}" if shown else what


def _file_now(original: Original) -> str:
    from aligner.storage.recovery import Original

    match original:
        case Original.AS_IT_WAS:
            return say("The file is as it was.")
        case Original.CHANGED_SINCE:
            return say("The file is changed since by another program.")
        case Original.GONE:
            return say("The file is not there any more.")
        case Original.UNREADABLE:
            return say("The file is there, but it cannot be read.")
        case Original.NEVER_SAVED:
            return ""
