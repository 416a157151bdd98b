"""What the door of a list of steps is made of: the lines to type in, the words, the buttons."""

from __future__ import annotations

from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from aligner.assessment import StepStanding, StepState
from aligner.drawing.theme import GAP, Theme
from aligner.language import say
from aligner.window.measuring.guides import measured_by
from aligner.window.steps.door_offer import button_words, has_torque
from aligner.window.widgets.labels import label, main_button, set_tone
from aligner.window.widgets.typed_line import FormLine
from aligner.window.widgets.wrapping_row import WrappingRow


class DoorRow(QWidget):
    """Lines and buttons in a row, what is said or asked above them; it decides nothing."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.words = label("", "strong", wraps=True, tone="attention")
        self._seen = label(say("Seen", meaning="before a value"), "quiet")
        self.value = FormLine(say("value seen on the wrench"))
        self.value.setFixedWidth(theme.px(138))
        measured_by(self.value, "seen_torque")
        self._on = label(say("on", meaning="before a wrench"), "quiet")
        self.wrench = FormLine(say("wrench used"), say("wrench"))
        self.wrench.setFixedWidth(theme.px(230))
        self.reason = FormLine(say("reason"), say("reason, then Enter"))
        self.reason.setMinimumWidth(theme.px(160))
        self.reason.hide()
        self.read_again = QPushButton(say("Read the heights again"))
        self.wrenches = QPushButton(say("&Wrenches"))
        self.wrenches.setCheckable(True)
        self.done = main_button(say("Done   Space"))
        row = WrappingRow()
        for widget in (self._seen, self.value, self._on, self.wrench):
            row.add(widget)
        row.add(self.reason, 1)
        row.add_room()
        for button in (self.read_again, self.wrenches, self.done):
            row.add(button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(GAP)
        column.addWidget(self.words)
        column.addLayout(row)
        for line in (self.value, self.wrench, self.reason):
            line.setMinimumHeight(theme.px(36))

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops, as the eye goes."""
        lines = [self.value, self.wrench, self.reason]
        return [*lines, self.read_again, self.wrenches, self.done]

    def show_parts(self, standing: StepStanding | None, *, is_finished: bool) -> None:
        """Show what a step takes: a value where it has a torque, a way back to the readings."""
        is_open = standing is not None and standing.state is not StepState.DONE
        takes_value = bool(is_open and standing and has_torque(standing))
        for widget in (self._seen, self.value, self._on, self.wrench):
            widget.setVisible(takes_value)
        if standing is not None and standing.step.torque_missing:
            self.value.setPlaceholderText(say("type it here"))
        waits = standing is not None and standing.step.kind == "hold" and standing.waits_for
        self.read_again.setVisible(bool(waits) and is_open)
        is_height = standing is not None and standing.step.reads == "protrusion"
        self.read_again.setText(say("Read the heights again") if is_height else say("Go to Align"))
        self.wrenches.setVisible(standing is not None)
        self.done.setVisible(standing is not None or is_finished)
        self.done.setText(button_words(standing))

    def say(self, words: str) -> None:
        """Say or ask something above the lines; "" takes it away."""
        self.words.setText(words)
        self.words.setAccessibleName(words)
        self.words.setVisible(bool(words))

    def mark_value(self, why: str) -> None:
        """Mark the value's line as one that is refused or asked about."""
        set_tone(self.value, "refused", "true" if why else "false")
        self.value.setAccessibleDescription(why)
