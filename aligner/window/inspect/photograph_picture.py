"""A photograph read from its file in the size it is shown at, turned the way it was taken.

The trap: a telephone's photograph unpacked whole takes 50 MB and a blink of the eye. The
reader is asked for the small size, which for a JPEG it reaches without unpacking the rest,
and a row of thumb-nails is read beside the window's own thread.
"""

from __future__ import annotations

import contextlib
from functools import lru_cache
from pathlib import Path

from PySide6.QtCore import QObject, QSize, Qt, QThreadPool, Signal
from PySide6.QtGui import QImage, QImageIOHandler, QImageReader

_THUMBNAILS_KEPT = 64
_LARGE_KEPT = 2  # a picture as large as the page takes 4 MB and more
_THUMBNAIL_DOTS = 400 * 300


def picture(path: Path | None, width: int, height: int) -> QImage | None:
    """The photograph, no larger than so many dots; `None` where it is not there or unreadable."""
    if path is None or width < 1 or height < 1:
        return None
    try:
        stamp = path.stat().st_mtime_ns
    except OSError:
        return None
    is_small = width * height <= _THUMBNAIL_DOTS
    return (_small if is_small else _large)(str(path), stamp, width, height)


def _read(path: str, _stamp: int, width: int, height: int) -> QImage | None:
    reader = QImageReader(path)
    reader.setAutoTransform(True)
    reader.setDecideFormatFromContent(True)
    whole = reader.size()
    if not whole.isValid():
        return None
    is_turned = bool(
        reader.transformation() & QImageIOHandler.Transformation.TransformationRotate90
    )
    room = QSize(height, width) if is_turned else QSize(width, height)
    if whole.width() > room.width() or whole.height() > room.height():
        scaled = whole.scaled(room, Qt.AspectRatioMode.KeepAspectRatio)
        reader.setScaledSize(scaled.expandedTo(QSize(1, 1)))
    image = reader.read()
    return None if image.isNull() else image


_small = lru_cache(maxsize=_THUMBNAILS_KEPT)(_read)
_large = lru_cache(maxsize=_LARGE_KEPT)(_read)


class PictureReader(QObject):
    """Reads one photograph away from the window.

    Signals:
        read: the photograph as `picture` gives it.
    """

    read = Signal(object)

    def begin(self, path: Path | None, width: int, height: int) -> None:
        """Read it, no larger than so many dots; `read` tells when it is there."""

        def work() -> None:
            image = picture(path, width, height)
            with contextlib.suppress(RuntimeError):  # what asked for it is gone meanwhile
                self.read.emit(image)

        QThreadPool.globalInstance().start(work)
