"""The size of paper that is usual where a person lives."""

from __future__ import annotations

from PySide6.QtCore import QLocale
from PySide6.QtGui import QPageSize

#: Where US Letter is the usual size; everywhere else it is A4.
#: Source: Unicode CLDR, supplemental data, paperSize "US-Letter" (from memory).
_LETTER = {
    "BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE",
}  # fmt: skip
_SIZES = {"A4": QPageSize.PageSizeId.A4, "Letter": QPageSize.PageSizeId.Letter}


def page_size(chosen: str = "", locale: QLocale | None = None) -> QPageSize:
    """The size of paper.

    Args:
        chosen: "A4" or "Letter"; anything else leaves it to the locale.
        locale: the person's; the system's if left out.
    """
    if chosen in _SIZES:
        return QPageSize(_SIZES[chosen])
    here = locale or QLocale.system()
    territory = QLocale.territoryToCode(here.territory())
    return QPageSize(_SIZES["Letter" if territory in _LETTER else "A4"])
