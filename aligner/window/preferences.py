"""What a person prefers: look, size of text, units, language. Kept in the desktop's own settings.

The trap: a settings file is edited, synced or left over from another version. So what it holds
is checked, and what is not known is as if it had never been chosen.
"""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from typing import Any

from PySide6.QtCore import QSettings

from aligner.drawing.theme import Appearance
from aligner.language import LANGUAGES
from aligner.units.preferred import Preferred

#: Sizes of text, in per cent.
TEXT_SIZES = (100, 125, 150, 175, 200)
LENGTHS = ("mm", "in")
TORQUES = ("N·m", "lbf·ft", "kgf·m")
VOLUMES = ("ml", "US fl oz", "imp fl oz")


@dataclass(frozen=True)
class Preferences:
    """One person's choices.

    Attributes:
        appearance: light, dark, high contrast, or as the desktop has it.
        text_size: in per cent of the usual.
        length, torque, volume: symbols of the units to show; any may be typed.
        sound: whether a tick is heard.
        language: code of the language of the texts, or "system": as the desktop has it.
    """

    appearance: Appearance = Appearance.SYSTEM
    text_size: int = 100
    length: str = "mm"
    torque: str = "N·m"
    volume: str = "ml"
    sound: bool = False
    language: str = "system"

    @property
    def units(self) -> Preferred:
        """The units, as the rest of the program takes them."""
        return Preferred(length=self.length, torque=self.torque, volume=self.volume)

    def with_choice(self, name: str, value: Any) -> Preferences:
        """The same with one other choice; one that is not known changes nothing."""
        return replace(self, **{name: value}) if value in CHOICES[name] else self


#: What can be chosen, by the name of the preference.
CHOICES: dict[str, tuple[Any, ...]] = {
    "appearance": tuple(Appearance),
    "text_size": TEXT_SIZES,
    "length": LENGTHS,
    "torque": TORQUES,
    "volume": VOLUMES,
    "sound": (False, True),
    "language": ("system", *LANGUAGES),
}


def preferences_in(settings: QSettings | None) -> Preferences:
    """The choices that the settings hold."""
    chosen = Preferences()
    if settings is None:
        return chosen
    for name, choices in CHOICES.items():
        kept = str(settings.value(f"preferences/{name}", ""))
        known = {str(choice): choice for choice in choices}
        if kept in known:
            chosen = chosen.with_choice(name, known[kept])
    return chosen


def keep_preferences(settings: QSettings | None, chosen: Preferences) -> None:
    """Keep the choices in the settings."""
    if settings is not None:
        for field in fields(chosen):
            settings.setValue(f"preferences/{field.name}", str(getattr(chosen, field.name)))
