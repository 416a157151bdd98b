"""Where documents, settings and recovery copies live on each kind of computer.

The trap: a bike's name is not a file name. "CON", "a/b", a trailing dot or a name of three
hundred letters fails on one computer or another, so what people type is made safe for all.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path

from aligner.language import say

APPLICATION = "Aligner"
JOB_ENDING = ".job.json"
SHEET_ENDING = ".sheet.json"

#: Names that Windows keeps for devices, whatever ending follows.
#: Source: Microsoft, "Naming Files, Paths, and Namespaces" (from memory).
_RESERVED = {"con", "prn", "aux", "nul", "conin$", "conout$"} | {
    f"{port}{number}" for port in ("com", "lpt") for number in "0123456789¹²³"
}
_NOT_IN_NAMES = '<>:"/\\|?*'
_LONGEST_BYTES = 120  # leaves room for endings, marks and ".previous" within 255
_USER_DIRS_LINE = "XDG_DOCUMENTS_DIR="


@dataclass(frozen=True)
class Computer:
    """What the places depend on.

    Attributes:
        platform: as `sys.platform` says it.
        environment: the environment's variables.
        home: the person's own folder.
    """

    platform: str = sys.platform
    environment: Mapping[str, str] = field(default_factory=lambda: os.environ)
    home: Path = field(default_factory=Path.home)

    def folder(self, variable: str, otherwise: str) -> Path:
        """The folder a variable names, if it is a full path, else one under `home`."""
        named = self.environment.get(variable, "")
        return Path(named) if Path(named).is_absolute() else self.home / otherwise


def documents_folder(computer: Computer | None = None) -> Path:
    """Where a bike's folders go by default: "Aligner" in the person's documents folder."""
    return _own_documents(computer or Computer()) / APPLICATION


def configuration_folder(computer: Computer | None = None) -> Path:
    """Where the settings live, by the platform's convention.

    Source: XDG Base Directory Specification 0.8 for Linux; %APPDATA% on Windows;
    ~/Library/Application Support on macOS (from memory).
    """
    here = computer or Computer()
    if here.platform == "win32":
        return here.folder("APPDATA", "AppData/Roaming") / APPLICATION
    if here.platform == "darwin":
        return here.home / "Library" / "Application Support" / APPLICATION
    return here.folder("XDG_CONFIG_HOME", ".config") / APPLICATION.lower()


def recovery_folder(computer: Computer | None = None) -> Path:
    """Where copies of unsaved edits live: on this computer only, and not in a cache."""
    here = computer or Computer()
    if here.platform == "win32":
        return here.folder("LOCALAPPDATA", "AppData/Local") / APPLICATION / "Recovery"
    if here.platform == "darwin":
        return configuration_folder(here) / "Recovery"
    return here.folder("XDG_STATE_HOME", ".local/state") / APPLICATION.lower() / "recovery"


def job_path(documents: Path, bike: str, title: str) -> Path:
    """Where a job is saved at first: "DOCUMENTS/BIKE/TITLE.job.json"."""
    file = safe_name(title, say("Job", meaning="name of a file"))
    return documents / _folder_of(bike) / f"{file}{JOB_ENDING}"


def sheet_path(documents: Path, bike: str) -> Path:
    """Where a bike's sheet is saved at first: "DOCUMENTS/BIKE/BIKE.sheet.json"."""
    name = _folder_of(bike)
    return documents / name / f"{name}{SHEET_ENDING}"


def _folder_of(bike: str) -> str:
    return safe_name(bike, say("Bike", meaning="name of a folder"))


def free_path(path: Path) -> Path:
    """The path itself, or with " 2", " 3", ... before its ending, so that nothing is there."""
    ending = ending_of(path)
    stem = path.name.removesuffix(ending)
    number = 2
    free = path
    while os.path.lexists(free):
        free = path.with_name(f"{stem} {number}{ending}")
        number += 1
    return free


def ending_of(path: Path) -> str:
    """The ending of a document's name: ".job.json" counts as one."""
    for ending in (JOB_ENDING, SHEET_ENDING):
        if path.name.lower().endswith(ending) and len(path.name) > len(ending):
            return path.name[-len(ending) :]
    return path.suffix


def safe_name(typed: str, otherwise: str) -> str:
    """A name that every computer takes for a file or folder, as near to the typed as can be.

    Args:
        typed: the bike or title.
        otherwise: the name where nothing usable was typed.
    """
    import unicodedata  # late: only needed when something is saved for the first time

    composed = unicodedata.normalize("NFC", "".join(map(_whole, typed)))
    kept = "".join(
        "-" if letter in _NOT_IN_NAMES else " " if letter.isspace() else letter
        for letter in composed
        if letter.isspace() or unicodedata.category(letter)[0] != "C"
    )
    name = _cut(" ".join(kept.split()).strip(". "))
    if not name.strip("-. "):
        return otherwise
    if name.split(".")[0].rstrip().lower() in _RESERVED:
        return f"_{name}"
    return name.replace("-", "_", 1) if name.startswith("-") else name


def _whole(letter: str) -> str:
    return "" if "\ud800" <= letter <= "\udfff" else letter


def _cut(name: str) -> str:
    """A name short enough for every drive, cut between two letters."""
    while len(name.encode()) > _LONGEST_BYTES:
        name = name[:-1]
    return name.rstrip(". ")


def _own_documents(here: Computer) -> Path:
    if here.platform == "win32":
        return _windows_documents() or here.folder("USERPROFILE", ".") / "Documents"
    if here.platform == "darwin":
        return here.home / "Documents"
    return _linux_documents(here) or here.home / "Documents"


def _linux_documents(here: Computer) -> Path | None:
    """The folder the desktop's user-dirs.dirs names: XDG_DOCUMENTS_DIR="$HOME/Documents"."""
    file = here.folder("XDG_CONFIG_HOME", ".config") / "user-dirs.dirs"
    try:
        lines = file.read_text(encoding="utf-8", errors="surrogateescape").splitlines()
    except OSError:
        return None
    for line in lines:
        if line.strip().startswith(_USER_DIRS_LINE):
            named = line.strip().removeprefix(_USER_DIRS_LINE).strip('"')
            named = named.replace("$HOME", str(here.home), 1) if named[:5] == "$HOME" else named
            if Path(named).is_absolute():
                return Path(named)
    return None


def _windows_documents() -> Path | None:
    """The documents folder where a person moved it to, as the registry says."""
    if sys.platform != "win32":
        return None
    import winreg

    folders = r"Software\Microsoft\Windows\CurrentVersion\Explorer\User Shell Folders"
    try:
        with winreg.OpenKey(winreg.HKEY_CURRENT_USER, folders) as key:
            named = str(winreg.QueryValueEx(key, "Personal")[0])
    except OSError:
        return None
    return Path(os.path.expandvars(named))
