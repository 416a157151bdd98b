"""The one source of colours, type sizes and spacing.

The trap: a colour never says anything alone. Each role here stands beside a word or a shape
wherever it is used, and every text role keeps 4.5:1 against the grounds it is drawn on
(tested by the WCAG 2.2 formula).
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from PySide6.QtGui import QColor, QFont, QGuiApplication, QPalette


@dataclass(frozen=True)
class Palette:
    """Colours by what they are for.

    Attributes:
        ground: behind everything.
        side: behind the stage list.
        card: behind the drawing and the lists.
        line: edges of cards, and lines between things.
        edge: edges of what can be typed in or pressed.
        ink: text and drawn outlines.
        quiet: text of the second rank.
        hint: what stands in a box that is empty.
        accent: what to do now, and what is done.
        on_accent: text on the accent.
        accent_soft: the band of what is allowed; a finished mark's ground.
        attention: what is out.
        attention_soft: ground of a caution.
        tube: the fork tubes. slider: the sliders. bracket: the brackets.
    """

    ground: str
    side: str
    card: str
    line: str
    edge: str
    ink: str
    quiet: str
    hint: str
    accent: str
    on_accent: str
    accent_soft: str
    attention: str
    attention_soft: str
    tube: str
    slider: str
    bracket: str


LIGHT = Palette(
    ground="#f7f5f0",
    side="#efebe2",
    card="#ffffff",
    line="#c9c3b6",
    edge="#85806f",
    ink="#1d2a31",
    quiet="#566067",
    hint="#687178",
    accent="#0a5f73",
    on_accent="#ffffff",
    accent_soft="#d3e6e6",
    attention="#8f4300",
    attention_soft="#fbeedd",
    tube="#d5dade",
    slider="#e9ecee",
    bracket="#e8ebe2",
)

DARK = Palette(
    ground="#171d21",
    side="#10161a",
    card="#1f272c",
    line="#46525a",
    edge="#76838c",
    ink="#eef1ef",
    quiet="#a9b4ba",
    hint="#8a969d",
    accent="#5cc3d6",
    on_accent="#06222a",
    accent_soft="#204952",
    attention="#f2a65a",
    attention_soft="#3d2c19",
    tube="#5a666e",
    slider="#39444b",
    bracket="#3d483f",
)

HIGH_CONTRAST = Palette(
    ground="#000000",
    side="#000000",
    card="#000000",
    line="#9a9a9a",
    edge="#ffffff",
    ink="#ffffff",
    quiet="#e4e4e4",
    hint="#9a9a9a",
    accent="#7fe3ff",
    on_accent="#000000",
    accent_soft="#0d3540",
    attention="#ffc36b",
    attention_soft="#2a1c00",
    tube="#3a3a3a",
    slider="#1c1c1c",
    bracket="#262626",
)


class Appearance(StrEnum):
    """Which palette to use; `SYSTEM` follows the desktop."""

    SYSTEM = "system"
    LIGHT = "light"
    DARK = "dark"
    HIGH_CONTRAST = "high contrast"


class TypeSize(StrEnum):
    """The sizes of type: two to read, the sentence, and the one that is read from two metres."""

    SMALL = "small"
    TEXT = "text"
    VALUE = "value"
    SENTENCE = "sentence"
    HUGE = "huge"


_POINTS = {
    TypeSize.SMALL: 9.0,
    TypeSize.TEXT: 11.0,
    TypeSize.VALUE: 14.0,
    TypeSize.SENTENCE: 24.0,
    TypeSize.HUGE: 52.0,
}

#: Spacing, in pixels at 100 % text: between things that belong together, and between groups.
GAP = 8
ROOM = 16
EDGE = 24


@dataclass(frozen=True)
class Theme:
    """A palette and a text scale, with everything that is derived from them."""

    palette: Palette = LIGHT
    text_scale: float = 1.0

    @property
    def is_dark(self) -> bool:
        """Whether light words stand on a dark ground."""
        return self.color("ground").lightness() < self.color("ink").lightness()

    def color(self, role: str) -> QColor:
        """The colour of a role (a field of `Palette`)."""
        return QColor(getattr(self.palette, role))

    def points(self, size: TypeSize) -> float:
        """A type size in points; the two large ones grow less than the text they stand over."""
        scale = self.text_scale
        if scale > 1.0 and size in (TypeSize.SENTENCE, TypeSize.HUGE):
            scale = 1.0 + (scale - 1.0) * 0.4
        return _POINTS[size] * scale

    def font(self, size: TypeSize, *, bold: bool = False) -> QFont:
        """The font of a size."""
        font = QFont(QGuiApplication.font())
        font.setPointSizeF(self.points(size))
        font.setBold(bold)
        return font

    def px(self, pixels: float) -> int:
        """A measure that grows with the text."""
        return round(pixels * self.text_scale)

    def qt_palette(self) -> QPalette:
        """The same colours for Qt's own widgets."""
        palette = QPalette()
        role = QPalette.ColorRole
        for qt_role, name in (
            (role.Window, "ground"),
            (role.WindowText, "ink"),
            (role.Base, "card"),
            (role.AlternateBase, "ground"),
            (role.Text, "ink"),
            (role.Button, "card"),
            (role.ButtonText, "ink"),
            (role.ToolTipBase, "card"),
            (role.ToolTipText, "ink"),
            (role.PlaceholderText, "hint"),
            (role.Highlight, "accent"),
            (role.HighlightedText, "on_accent"),
            (role.Mid, "line"),
        ):
            palette.setColor(qt_role, self.color(name))
        quiet = self.color("quiet")
        for qt_role in (role.WindowText, role.Text, role.ButtonText):
            palette.setColor(QPalette.ColorGroup.Disabled, qt_role, quiet)
        return palette


#: The window everything is laid out for; on a smaller screen all of it is drawn smaller.
WIDTH, HEIGHT = 1280, 720
_SMALLEST = 0.7


def scale_to_fit(width: float, height: float) -> float:
    """The text scale at which the whole window fits a screen of so many points, at most 1.

    A screen of 1920 by 1080 pixels set to 200 % has 960 by 540 points: there everything is
    drawn at three quarters, which is still half as large again as it would be at 100 %.
    """
    return max(_SMALLEST, min(1.0, width / WIDTH, height / HEIGHT))


def theme_for(appearance: Appearance, text_scale: float = 1.0) -> Theme:
    """The theme a person asked for."""
    from PySide6.QtCore import Qt

    if appearance is Appearance.HIGH_CONTRAST:
        return Theme(HIGH_CONTRAST, text_scale)
    if appearance is Appearance.SYSTEM:
        scheme = QGuiApplication.styleHints().colorScheme()
        is_dark = scheme is Qt.ColorScheme.Dark
    else:
        is_dark = appearance is Appearance.DARK
    return Theme(DARK if is_dark else LIGHT, text_scale)
