"""Whether the measuring card is on the window, and whose colours and words it has."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from aligner.drawing.theme import Theme

if TYPE_CHECKING:
    from aligner.window.measuring.card import MeasuringCard


class MeasuringHelp:
    """Puts the card on the window and takes it off again."""

    def __init__(self, ground: QWidget) -> None:
        self._ground = ground
        self._card: MeasuringCard | None = None

    def turn_over(self, theme: Theme) -> None:
        """Show the card if it is not shown, else take it away."""
        if self._card is not None:
            self.take_away()
            return
        from aligner.window.measuring.card import MeasuringCard  # late: few starts need it

        self._card = MeasuringCard(self._ground, theme)
        self._card.closed.connect(self.take_away)

    def take_away(self) -> None:
        """Take the card away, if it is there."""
        if self._card is not None:
            self._card.leave()
            self._card = None
