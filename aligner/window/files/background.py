"""Work done one after the other away from the window, and what came of it told to the window.

The trap: a slow drive felt at every keystroke. What waits for the disk without the person
waiting for it runs here; the thread is started by the first piece of work.
"""

from __future__ import annotations

import contextlib
from collections.abc import Callable
from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import QObject, Signal

if TYPE_CHECKING:
    from queue import SimpleQueue
    from threading import Thread

Result = TypeVar("Result")
_Piece = Callable[[], None]


class Background(QObject):
    """One thread, and a line of work before it."""

    _done = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._line: SimpleQueue[_Piece | None] | None = None
        self._thread: Thread | None = None
        self._done.connect(self._tell)  # queued, for it comes from the other thread

    def run(self, work: Callable[[], Result], then: Callable[[Result], None] | None = None) -> None:
        """Have work done; `then` is called in the window's own thread with what came of it.

        The work must not raise and must not touch the window.
        """

        def piece() -> None:
            result = work()
            if then is not None:
                with contextlib.suppress(RuntimeError):  # the window is gone meanwhile
                    self._done.emit(lambda: then(result))

        if self._line is None or self._thread is None:
            self._line, self._thread = _begun()
        self._line.put(piece)

    def wait(self, longest_s: float = 10.0) -> bool:
        """Wait until all work given so far is done; whether it is."""
        if self._line is None or self._thread is None:
            return True
        from threading import Event

        done = Event()
        self._line.put(done.set)
        return done.wait(longest_s)

    def end(self, longest_s: float = 10.0) -> None:
        """Do what is still in line, then no more."""
        if self._line is not None and self._thread is not None:
            self._line.put(None)
            self._thread.join(longest_s)
            self._thread = None

    def _tell(self, told: Callable[[], None]) -> None:
        told()


def _begun() -> tuple[SimpleQueue[_Piece | None], Thread]:
    from queue import SimpleQueue  # late: the window is painted before there is any work
    from threading import Thread

    line: SimpleQueue[_Piece | None] = SimpleQueue()
    thread = Thread(target=_work, args=(line,), name="disk", daemon=True)
    thread.start()
    return line, thread


def _work(line: SimpleQueue[_Piece | None]) -> None:
    while (piece := line.get()) is not None:
        piece()
