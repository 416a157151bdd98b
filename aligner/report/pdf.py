"""A PDF document in memory, set up alike for every card and list."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QBuffer, QIODevice, QMarginsF
from PySide6.QtGui import QGuiApplication, QPageLayout, QPageSize, QPdfWriter

from aligner.report.page import RESOLUTION


def pdf_bytes(
    title: str,
    size: QPageSize | None,
    margins_mm: QMarginsF,
    paint: Callable[[QPdfWriter], object],
) -> bytes:
    """The bytes of a document. Starts Qt's fonts where no one has yet.

    Args:
        title: of the document.
        size: of the paper; A4 if left out.
        margins_mm: of each page.
        paint: paints all pages.
    """
    application = QGuiApplication.instance() or QGuiApplication(["aligner"])
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(RESOLUTION)
    writer.setPageSize(size or QPageSize(QPageSize.PageSizeId.A4))
    writer.setPageMargins(margins_mm, QPageLayout.Unit.Millimeter)
    writer.setCreator("Aligner")
    writer.setTitle(title)
    paint(writer)
    del application  # kept until the last text is painted
    buffer.close()
    return bytes(buffer.data().data())
