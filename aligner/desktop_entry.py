"""Putting the program into the desktop's menu, and a job's file into its hands.

    python -m aligner.desktop_entry            add it for this user
    python -m aligner.desktop_entry --remove   take it away again

For desktops that keep to the freedesktop.org specifications (Linux and the BSDs). The trap: a
menu does not see a virtual environment, so the entry names the very program it was made with.
"""

from __future__ import annotations

import argparse
import os
import shutil
import subprocess
import sys
from pathlib import Path

from aligner.data_files import resource

#: In the top-level domain that belongs to nobody (RFC 2606), until the program has a home.
IDENTIFIER = "invalid.aligner.Aligner"

#: Where each file goes below the user's data folder.
_PLACES = {
    f"{IDENTIFIER}.desktop": f"applications/{IDENTIFIER}.desktop",
    f"{IDENTIFIER}.xml": f"mime/packages/{IDENTIFIER}.xml",
    f"{IDENTIFIER}.metainfo.xml": f"metainfo/{IDENTIFIER}.metainfo.xml",
    "aligner.svg": f"icons/hicolor/scalable/apps/{IDENTIFIER}.svg",
}


def data_folder() -> Path:
    """Where the desktop looks for what belongs to this user alone (XDG base directories)."""
    named = os.environ.get("XDG_DATA_HOME", "")
    return Path(named) if Path(named).is_absolute() else Path.home() / ".local" / "share"


def add_to_desktop(folder: Path, command: Path) -> list[Path]:
    """Write entry, file type, description and icon below a data folder.

    Args:
        folder: the data folder, such as ~/.local/share.
        command: the program that the entry starts.

    Returns:
        The files written.
    """
    written = []
    for name, place in _PLACES.items():
        target = folder / place
        target.parent.mkdir(parents=True, exist_ok=True)
        content = resource(f"desktop/{name}").read_text(encoding="utf-8")
        if name.endswith(".desktop"):
            content = content.replace("TryExec=aligner", f"TryExec={command}")
            content = content.replace("Exec=aligner %f", f"Exec={_quoted(command)} %f")
        target.write_text(content, encoding="utf-8")
        written.append(target)
    _look_again(folder)
    return written


def remove_from_desktop(folder: Path) -> list[Path]:
    """Take away what `add_to_desktop` wrote; the files that were there."""
    removed = [folder / place for place in _PLACES.values() if (folder / place).exists()]
    for path in removed:
        path.unlink()
    _look_again(folder)
    return removed


def main(arguments: list[str] | None = None) -> int:
    """Add the program to this user's desktop, or remove it. Returns the exit status."""
    parser = argparse.ArgumentParser(prog="python -m aligner.desktop_entry", description=__doc__)
    parser.add_argument("--remove", action="store_true", help="take it away again")
    chosen = parser.parse_args(arguments)
    if chosen.remove:
        for path in remove_from_desktop(data_folder()):
            print(f"removed {path}")
        return 0
    command = Path(sys.executable).with_name("aligner")
    if not command.exists():
        print(f"{command}: no such program: install it first (see the README)", file=sys.stderr)
        return 2
    for path in add_to_desktop(data_folder(), command):
        print(f"wrote {path}")
    return 0


def _quoted(command: Path) -> str:
    """A path as the Exec key of a desktop entry takes it."""
    text = str(command).replace("%", "%%")
    if not any(character in text for character in " \t\"'\\><~|&;$*?#()`"):
        return text
    for character in '\\"`$':
        text = text.replace(character, "\\" + character)
    return f'"{text}"'.replace("\\", "\\\\")  # once more for the file's own escapes


def _look_again(folder: Path) -> None:
    """Have the desktop read its folders again, where it has the programs for that."""
    for program, below in (
        ("update-mime-database", "mime"),
        ("update-desktop-database", "applications"),
    ):
        found = shutil.which(program)
        if found and (folder / below).is_dir():
            subprocess.run([found, str(folder / below)], check=False, capture_output=True)


if __name__ == "__main__":
    raise SystemExit(main())
