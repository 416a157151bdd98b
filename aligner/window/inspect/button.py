"""A button beside the main one: Enter presses it like Space."""

from __future__ import annotations

from aligner.window.widgets.labels import MainButton


class PlainButton(MainButton):
    """A button that does something by the way; it looks like any other."""

    def __init__(self, text: str) -> None:
        super().__init__(text)
        self.setProperty("main", False)
