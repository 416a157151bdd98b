"""Contrast of every pair of colours that is drawn, by WCAG 2.2's formula.

The formula is W3C's (WCAG 2.2, "relative luminance" and "contrast ratio", seen); text asks for
4.5:1 (1.4.3), edges of what is typed in or pressed for 3:1 (1.4.11), and high contrast for
7:1 (1.4.6). A ratio is never rounded up to pass.
"""

import pytest

from aligner.drawing.theme import DARK, HIGH_CONTRAST, LIGHT

#: Text of each role, and the grounds it stands on.
TEXT = {
    "ink": ("ground", "side", "card", "accent_soft", "attention_soft", "tube", "slider", "bracket"),
    "quiet": ("ground", "side", "card"),
    "hint": ("ground", "card"),
    "accent": ("ground", "card"),
    "attention": ("ground", "card"),
    "on_accent": ("accent",),
}
EDGES = {"edge": ("ground", "card"), "accent": ("ground", "side", "card")}
PALETTES = {"light": LIGHT, "dark": DARK, "high contrast": HIGH_CONTRAST}


def luminance(color):
    channels = [int(color[place : place + 2], 16) / 255 for place in (1, 3, 5)]
    red, green, blue = (
        c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one, other):
    lighter, darker = sorted((luminance(one), luminance(other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


@pytest.mark.parametrize(
    ("one", "expected"),
    [
        pytest.param("#000000", 21.0, id="the most there is (W3C: 1 to 21, seen)"),
        pytest.param("#767676", 4.54, id="just passes for text (from memory)"),
        pytest.param("#777777", 4.48, id="just fails for text (from memory)"),
        pytest.param("#595959", 7.0, id="just passes at 7:1 (from memory)"),
        pytest.param("#999999", 2.85, id="a published example (seen, second-hand)"),
        pytest.param("#ff0000", 4.0, id="pure red (from memory)"),
    ],
)
def test_the_formula_gives_the_known_values_on_white(one, expected):
    assert contrast(one, "#ffffff") == pytest.approx(expected, abs=0.005)


@pytest.mark.parametrize("name", PALETTES)
def test_every_text_can_be_read_on_its_ground(name):
    palette = PALETTES[name]
    least = 7.0 if name == "high contrast" else 4.5
    for role, grounds in TEXT.items():
        for ground in grounds:
            found = contrast(getattr(palette, role), getattr(palette, ground))
            assert found >= least, f"{role} on {ground}: {found:.2f}"


@pytest.mark.parametrize("name", PALETTES)
def test_every_box_and_every_focus_can_be_seen(name):
    palette = PALETTES[name]
    for role, grounds in EDGES.items():
        for ground in grounds:
            found = contrast(getattr(palette, role), getattr(palette, ground))
            assert found >= 3.0, f"{role} on {ground}: {found:.2f}"
