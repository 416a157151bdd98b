"""Where a raise of both legs is supposed: a slider and a box to type in.

The trap: text that cannot be read must stay in its box, marked, and the slider must not jump
to half a number.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QSlider, QVBoxLayout, QWidget

from aligner.assessment.road_figures import WhatIf
from aligner.drawing.theme import Theme
from aligner.language import begun, say
from aligner.sheet.quantities import SignedLength
from aligner.units import UnreadableQuantity
from aligner.units.preferred import Preferred
from aligner.window.align.road_figures_words import (
    most_steps,
    refusal_words,
    rise_of,
    signed_length,
    step_of,
)
from aligner.window.widgets.labels import label, set_tone
from aligner.window.widgets.typed_line import ValueLine


class RaiseSlider(QSlider):
    """Both legs raised by so much; the mouse wheel never moves it."""

    def __init__(self, theme: Theme) -> None:
        super().__init__(Qt.Orientation.Horizontal)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumHeight(theme.px(34))

    def wheelEvent(self, event: object) -> None:
        """Leave the raise alone: a wheel turned over it is meant for the page."""


class RaiseEntry(QWidget):
    """Slider, box and a button back to nought.

    Signals:
        supposed: another raise is supposed, in mm.
    """

    supposed = Signal(float)

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._show = show
        self._settled_mm = 0.0
        self._typed_mm = 0.0
        self._unread = ""
        self.slider = RaiseSlider(theme)
        self.slider.setStyleSheet(_style(theme))
        self.slider.setRange(-most_steps(show), most_steps(show))
        self.slider.setPageStep(4)
        self.slider.setAccessibleName(say("What if both legs were raised by"))
        self.box = ValueLine(say("What if both legs were raised by, typed"))
        self.box.setFixedWidth(theme.px(100))
        self.box.setMinimumHeight(theme.px(34))
        self.nought = QPushButton(say("Back to 0"))
        self._refusal = label("", "small", wraps=True, tone="attention")
        self._refusal.hide()
        row = QHBoxLayout()
        row.setSpacing(theme.px(6))
        row.addWidget(self.slider, 1)
        row.addWidget(self.box)
        row.addWidget(self.nought)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(theme.px(2))
        column.addLayout(row)
        column.addWidget(self._refusal)
        self.slider.valueChanged.connect(lambda step: self._settle(rise_of(step, show)))
        self.box.textEdited.connect(self._typed)
        self.box.went_on.connect(self._typing_ends)
        self.box.left.connect(self._typing_ends)
        self.nought.clicked.connect(lambda: self._settle(0.0))

    def show_supposed(self, supposed: WhatIf, figures: str, *, is_refused: bool) -> None:
        """Show what is supposed.

        Args:
            supposed: the raise and what comes of it.
            figures: the same in words, for a screen reader.
            is_refused: whether a refusal is of the raise itself, and not of the sheet.
        """
        rise_mm = supposed.rise_mm
        refusal = refusal_words(supposed, self._show) if is_refused else ""
        self._say_refusal(self._unread or refusal)
        self.box.show_kept(signed_length(rise_mm, self._show))
        self.slider.blockSignals(True)
        self.slider.setValue(step_of(rise_mm, self._show))
        self.slider.blockSignals(False)
        self.slider.setAccessibleDescription(f"{signed_length(rise_mm, self._show)}: {figures}")

    def _settle(self, rise_mm: float) -> None:
        self.box.end_typing()
        self._unread = ""
        self._settled_mm = rise_mm
        self.supposed.emit(rise_mm)

    def _typed(self, text: str) -> None:
        """Follow the typing; where it cannot be read, show the raise from before it."""
        if not self.box.is_being_typed:
            self._settle(self._settled_mm)
            return
        self._unread, rise_mm = "", self._settled_mm
        try:
            rise_mm = SignedLength.typed(text, self._show.length).value if text.strip() else 0.0
        except UnreadableQuantity as unreadable:
            self._unread = str(unreadable)
        tried = WhatIf(rise_mm, None)
        if tried.is_too_far:
            self._unread = refusal_words(tried, self._show)
            rise_mm = self._settled_mm
        self._typed_mm = rise_mm
        self.supposed.emit(rise_mm)

    def _typing_ends(self) -> None:
        if self.box.is_being_typed and not self._unread:
            self._settle(self._typed_mm)

    def _say_refusal(self, text: str) -> None:
        self._refusal.setText(begun(text))
        self._refusal.setVisible(bool(text))
        set_tone(self.box, "refused", "true" if text else "false")
        self.box.setAccessibleDescription(text)


def _style(theme: Theme) -> str:
    """What the window's style sheet does not know: the slider."""
    p = theme.palette
    return (
        "QSlider { border: 2px solid transparent; }"
        f"QSlider::groove:horizontal {{ background: {p.line}; height: {theme.px(4)}px; }}"
        f"QSlider::handle:horizontal {{ background: {p.accent}; border: 2px solid {p.accent};"
        f" width: {theme.px(14)}px; margin: -{theme.px(9)}px 0; border-radius: 5px; }}"
        f"QSlider:focus {{ border: 2px solid {p.accent}; border-radius: 5px; }}"
    )
