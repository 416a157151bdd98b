"""The gesture that passes a hold point: Space held, or pressed twice within a moment.

The trap: a hold point that goes by with the same single press as every other step is passed
by a hand that has not looked. A key that repeats by itself never counts.
"""

from __future__ import annotations

from PySide6.QtCore import QObject, QTimer, Signal

#: How long the key is held, and within what time it is pressed again; ms. Chosen, no source:
#: longer than a slip, shorter than a wait.
HELD_MS = 700
AGAIN_MS = 1500


class HoldKey(QObject):
    """Counts presses and time.

    Signals:
        passed: the key was held, or pressed again in time.
        forgotten: the second press did not come in time.
    """

    passed = Signal()
    forgotten = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._held = QTimer(self, singleShot=True, interval=HELD_MS)
        self._again = QTimer(self, singleShot=True, interval=AGAIN_MS)
        self._held.timeout.connect(self._pass)
        self._again.timeout.connect(self.forgotten)

    def set_times(self, held_ms: int, again_ms: int) -> None:
        """Other times than the usual ones."""
        self._held.setInterval(held_ms)
        self._again.setInterval(again_ms)

    @property
    def is_waiting(self) -> bool:
        """Whether a first press stands and waits for a second."""
        return self._again.isActive() or self._held.isActive()

    def press(self) -> None:
        """The key went down."""
        if self._again.isActive():
            self._pass()
        else:
            self._held.start()
            self._again.start()

    def release(self) -> None:
        """The key came up, or the keyboard went elsewhere."""
        self._held.stop()

    def drop(self) -> None:
        """Forget a first press without a word."""
        self._held.stop()
        self._again.stop()

    def _pass(self) -> None:
        self.drop()
        self.passed.emit()
