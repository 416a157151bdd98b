"""The page of preferences: every choice takes effect at once and is kept."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFormLayout, QHBoxLayout, QVBoxLayout, QWidget

from aligner.drawing.theme import ROOM, Theme
from aligner.language import marked, say
from aligner.window.preferences import CHOICES, Preferences
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.labels import Card, label, main_button
from aligner.window.widgets.standing_foot import StandingFoot

_NAMES = {
    "appearance": marked("Look"),
    "text_size": marked("Size of text"),
    "length": marked("Lengths in"),
    "torque": marked("Torques in"),
    "volume": marked("Volumes in"),
    "sound": marked("Sound at a tick"),
    "language": marked("Language"),
}
_WORDS = {
    "system": marked("as the desktop has it"),
    "light": marked("light"),
    "dark": marked("dark"),
    "high contrast": marked("high contrast"),
    "mm": marked("millimetres (mm)"),
    "in": marked("inches (in)"),
    "N·m": marked("newton metres (N·m)"),
    "lbf·ft": marked("pounds-force feet (lbf·ft)"),
    "kgf·m": marked("kilograms-force metres (kgf·m)"),
    "ml": marked("millilitres (ml)"),
    "US fl oz": marked("US fluid ounces"),
    "imp fl oz": marked("imperial fluid ounces"),
}
#: A language is called by its own name, so that whoever reads it finds it.
_LANGUAGES = {"en": "English", "de": "Deutsch"}


class PreferencesPage(QWidget):
    """All the choices, and the way back.

    Signals:
        chosen: the preferences as they are now.
        left: the person goes back to the job.
    """

    chosen = Signal(object)
    left = Signal()

    def __init__(self, preferences: Preferences) -> None:
        super().__init__()
        self._preferences = preferences
        self.choices: dict[str, Choice] = {}
        card = Card()
        form = QFormLayout()
        form.setVerticalSpacing(ROOM - 4)
        form.setHorizontalSpacing(ROOM)
        for name, values in CHOICES.items():
            box = Choice(say(_NAMES[name]), [(value, _words(name, value)) for value in values])
            box.show_value(getattr(preferences, name))
            box.chosen.connect(lambda value, name=name: self._choose(name, value))
            self.choices[name] = box
            form.addRow(label(say(_NAMES[name])), box)
        card.column.addLayout(form)
        card.column.addWidget(
            label(say("Any unit may be typed, whatever is chosen here."), "quiet", wraps=True)
        )
        self.back = main_button(say("Back to the job   Enter"))
        self.back.clicked.connect(self.left)
        foot, parts = QWidget(), QWidget()
        button = QHBoxLayout(foot)
        button.setContentsMargins(0, 0, 0, 0)
        button.addStretch(1)
        button.addWidget(self.back)
        column = QVBoxLayout(parts)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(card)
        column.addStretch(1)
        sizes = Theme(text_scale=preferences.text_size / 100)
        StandingFoot(self, sizes, parts, foot).setSpacing(ROOM)

    def sentence(self) -> tuple[str, ...]:
        """What the page is for."""
        return (
            say("Preferences."),
            say("Each choice takes effect at once, on this machine."),
            "",
        )

    def refresh(self) -> None:
        """Nothing here depends on the job."""

    def begin(self) -> None:
        """Put the keyboard on the first choice."""
        self.choices["appearance"].setFocus(Qt.FocusReason.TabFocusReason)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)

    def _choose(self, name: str, value: Any) -> None:
        self._preferences = self._preferences.with_choice(name, value)
        self.chosen.emit(self._preferences)


def _words(name: str, value: Any) -> str:
    if name == "text_size":
        return f"{value} %"
    if name == "sound":
        return say("a short one", meaning="sound") if value else say("none", meaning="sound")
    return _LANGUAGES.get(value) or say(_WORDS[str(value)])
