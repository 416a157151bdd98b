"""The files opened or saved lately, newest first, kept in the settings."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QSettings

_MOST = 8


class RecentFiles:
    """The list; without settings it stays empty."""

    def __init__(self, settings: QSettings | None) -> None:
        self._settings = settings

    def remember(self, path: Path) -> None:
        """Put a file at the head of the list."""
        if self._settings is None:
            return
        whole = str(path.absolute())
        kept = [name for name in self.names() if name != whole]
        self._settings.setValue("recent", [whole, *kept][:_MOST])

    def names(self) -> list[str]:
        """The files' paths; one may be gone meanwhile."""
        found = self._settings.value("recent", []) if self._settings else []
        if isinstance(found, str):
            return [found]
        return [str(name) for name in found] if isinstance(found, list) else []
