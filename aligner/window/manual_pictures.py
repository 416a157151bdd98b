"""The pictures in the manual: in the colours of the window, as wide as the page.

The trap: a picture drawn smaller by the page itself is jagged, and its words cannot be read. It is
made smaller here, once for each width, to the screen's own pixels.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QImage

from aligner.drawing.theme import Theme

_IN_LIGHT, _IN_DARK = "-light", "-dark"


def picture_path(folder: Path, name: str, theme: Theme) -> Path:
    """The file of a picture named in a page of the manual.

    Args:
        folder: that of the page.
        name: as it stands in the page: the picture in light colours.
        theme: of the window; a dark one has a picture of its own.
    """
    return folder / (name.replace(_IN_LIGHT, _IN_DARK) if theme.is_dark else name)


def picture_for(path: Path, width: int, ratio: float) -> QImage:
    """A picture no wider than the page, empty if there is none.

    Args:
        path: its file.
        width: of the page, in the window's own pixels.
        ratio: of the screen's pixels to those.
    """
    picture = QImage(str(path))
    wide = round(width * ratio)
    if picture.width() > wide > 0:
        picture = picture.scaledToWidth(wide, Qt.TransformationMode.SmoothTransformation)
    picture.setDevicePixelRatio(ratio)
    return picture
