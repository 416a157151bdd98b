"""The lock beside the open document, and what other programs do to the document meanwhile.

The trap: a window that learns of another's work only when it saves has let its person work
for nothing. So it looks every minute and each time it comes to the front, in another thread.
"""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from aligner.storage.document_file import DocumentFile
from aligner.window.files.background import Background

if TYPE_CHECKING:
    from aligner.storage.lock import Holder, Lock
    from aligner.storage.watch import Standing

_LOOK_EVERY_MS = 60_000


class DocumentWatch(QObject):
    """Holds the lock of at most one document.

    Signals:
        taken: another program holds the document now; carries its `Holder`.
        changed: the file is not as it was; carries the `DocumentFile` that it was.
        gone: the file is not there any more; carries the same.
    """

    taken = Signal(object)
    changed = Signal(object)
    gone = Signal(object)

    def __init__(self, background: Background, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._background = background
        self._lock: Lock | None = None
        self._said: DocumentFile | None = None  # what was told once is not told again
        self._is_looking = False
        self.file: Callable[[], DocumentFile | None] = lambda: None
        self.copy: Callable[[], Path | None] = lambda: None
        self._timer = QTimer(self, interval=_LOOK_EVERY_MS)
        self._timer.timeout.connect(self.look)

    def take(self, document: Path) -> Holder | None:
        """Take the document's lock, giving the one before free; who has it, if another.

        Where no lock can be written (a read-only folder) the document is worked on without.
        """
        from aligner.errors import AlignerError
        from aligner.storage.lock import LockedByAnother, take

        if self._lock is not None and is_same_file(self._lock.document, document):
            return None if self._lock.is_held() else self._taken_meanwhile(document)
        self.release()
        self._timer.start()
        try:
            self._lock = take(document)
        except LockedByAnother as refused:
            return refused.holder
        except AlignerError:
            return None
        return None

    def take_over(self, document: Path, seen: Holder) -> Holder | None:
        """Take the document from the holder that was seen; who has it, if another came first."""
        from aligner.errors import AlignerError
        from aligner.storage.lock import LockedByAnother, take_over

        try:
            self._lock = take_over(document, seen)
        except LockedByAnother as refused:
            return refused.holder
        except AlignerError:
            return None
        return None

    def is_lost(self) -> bool:
        """Whether the lock that was held here is not held any more."""
        return self._lock is not None and not self._lock.is_held()

    def release(self) -> None:
        """Give the document free."""
        lock, self._lock = self._lock, None
        self._said = None
        self._timer.stop()
        if lock is not None:
            lock.release()

    def look(self) -> None:
        """Look at the document in the other thread, and say there that it is worked on."""
        file, lock, copy = self.file(), self._lock, self.copy()
        if self._is_looking or (file is None and lock is None and copy is None):
            return
        from aligner.storage.watch import looked_at

        self._is_looking = True

        def seen(standing: Standing) -> None:
            self._seen(standing, lock)

        self._background.run(lambda: looked_at(file, lock, copy), seen)

    def _taken_meanwhile(self, document: Path) -> Holder | None:
        from aligner.storage.lock import holder

        self._lock = None
        return holder(document) or self.take(document)

    def _seen(self, standing: Standing, lock: Lock | None) -> None:
        self._is_looking = False
        if self._lock is lock and lock is not None:
            self._lock = standing.lock
            if standing.taken_by is not None:
                self.taken.emit(standing.taken_by)
                return
        if standing.file is None or standing.file is not self.file():
            return  # saved or closed while it was looked at
        if not (standing.is_changed or standing.is_gone):
            self._said = None
        elif self._said is not standing.file:
            self._said = standing.file
            (self.gone if standing.is_gone else self.changed).emit(standing.file)


def is_same_file(one: Path, other: Path) -> bool:
    """Whether two paths lead to one file, through whatever links."""
    return os.path.realpath(one) == os.path.realpath(other)
