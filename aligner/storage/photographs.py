"""Photographs of a job: checked, copied beside the job, and found again.

The trap: a name in a document that another person made can lead anywhere on this computer
("../../private.png"), and a file called "seal.jpg" can be anything. So a photograph is known
by its content, is copied into one folder beside the job, and no name leads out of that folder.
"""

from __future__ import annotations

import os
from collections.abc import Iterable
from pathlib import Path

from aligner.errors import AlignerError
from aligner.language import say
from aligner.storage.document_file import digest
from aligner.storage.failure import save_failed
from aligner.storage.files import read_whole, write_whole
from aligner.storage.places import safe_name
from aligner.storage.refusal import UnusableDocument

FOLDER = "photographs"
LARGEST_PHOTOGRAPH_BYTES = 40_000_000
MOST_PIXELS = 200_000_000

_LONGEST_STEM = 24  # letters, so that with all that follows the name fits every drive
_LONGEST_SHOWN = 40
#: First bytes. Source: PNG, ISO/IEC 15948:2004, 5.2 (from memory); JPEG, ITU-T T.81, B.1.1.3
#: (from memory): the marker SOI, and the first byte of the marker that follows.
_PNG, _JPEG = b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff"
#: JPEG markers that begin a frame and carry its size (T.81, table B.1; from memory): SOF0 to
#: SOF15 without DHT, JPG and DAC, which lie between them.
_FRAMES = set(range(0xC0, 0xD0)) - {0xC4, 0xC8, 0xCC}


class UnusablePhotograph(AlignerError):
    """A file cannot be kept as a photograph, or a name in a document cannot be one."""


def keep_photograph(job_path: Path, source: Path) -> str:
    """Copy a photograph into the job's folder; the file it came from is left alone.

    The same photograph kept twice is one file.

    Args:
        job_path: of the job's document, which must have been saved.
        source: the photograph, JPEG or PNG by its content, whatever its name says.

    Returns:
        Its name for the document: "photographs/left seal-3f2a9c01.jpg".

    Raises:
        UnusablePhotograph: not a JPEG or PNG, too large, cut short, or not readable.
        SaveFailed: the copy cannot be written, in words; nothing is left half written.
    """
    content = _read(source)
    ending = _ending(content, source.name)
    stem = f"{safe_name(source.stem[:_LONGEST_STEM], 'photograph')}-{digest(content)[:8]}"
    name, number = f"{FOLDER}/{stem}{ending}", 2
    target = photograph_path(job_path, name)
    while os.path.lexists(target) and not _holds(target, content):
        name, number = f"{FOLDER}/{stem}-{number}{ending}", number + 1
        target = photograph_path(job_path, name)
    try:
        target.parent.mkdir(exist_ok=True)
    except OSError as error:
        raise save_failed(error, target) from error
    write_whole(target, content)
    return name


def photograph_path(job_path: Path, name: str) -> Path:
    """Where the photograph of that name is; it need not be there any more.

    Args:
        job_path: of the job's document.
        name: as `keep_photograph` gave it and the document carries it.

    Raises:
        UnusablePhotograph: the name leads out of the job's folder for photographs.
    """
    parts = name.split("/")
    is_plain = len(parts) == 2 and parts[0] == FOLDER and safe_name(parts[1], "_") == parts[1]
    folder = Path(os.path.realpath(job_path)).parent
    path = folder / FOLDER / parts[-1]
    if not is_plain or Path(os.path.realpath(path)) != path:  # a link would lead elsewhere
        raise UnusablePhotograph(
            _shortened(name),
            say("this name leads out of the job's folder, so it is not opened"),
            say("add the photograph anew"),
        )
    return path


def carry_photographs(names: Iterable[str], job_path: Path, new_path: Path) -> tuple[str, ...]:
    """Copy a job's photographs to where the job is saved now; those beside it stay there too.

    Args:
        names: as the document carries them.
        job_path: where the job was.
        new_path: where it is now.

    Returns:
        The names of those that are not there, or could not be copied.
    """
    missing = []
    for name in dict.fromkeys(names):
        try:
            source, target = photograph_path(job_path, name), photograph_path(new_path, name)
            if source == target or target.exists():
                continue
            content = _read(source)
            target.parent.mkdir(exist_ok=True)
            write_whole(target, content)
        except (AlignerError, OSError):
            missing.append(name)
    return tuple(missing)


def _read(source: Path) -> bytes:
    try:
        if source.exists() and not source.is_dir() and not source.is_file():
            raise UnusablePhotograph(
                source.name, say("this is not an ordinary file"), say("choose a photograph")
            )
        content = read_whole(source, LARGEST_PHOTOGRAPH_BYTES)
    except UnusablePhotograph:
        raise
    except UnusableDocument as error:
        raise UnusablePhotograph(
            source.name, error.understood, say("choose a photograph")
        ) from error
    except (OSError, ValueError) as error:
        raise UnusablePhotograph(
            source.name, say("it cannot be read"), say("choose another photograph")
        ) from error
    if len(content) > LARGEST_PHOTOGRAPH_BYTES:
        raise UnusablePhotograph(
            source.name,
            say(
                "the file is larger than {size}", size=f"{LARGEST_PHOTOGRAPH_BYTES // 1_000_000} MB"
            ),
            say("save it smaller, and choose that"),
        )
    return content


def _ending(content: bytes, name: str) -> str:
    """The ending that goes with the content: ".jpg" or ".png"."""
    if content.startswith(_PNG):
        ending, size = ".png", _png_size(content)
    elif content.startswith(_JPEG):
        ending, size = ".jpg", _jpeg_size(content)
    else:
        raise UnusablePhotograph(
            name,
            say("this is neither a JPEG nor a PNG photograph"),
            say("choose one of these kinds"),
        )
    if size is None:
        raise UnusablePhotograph(
            name, say("the photograph is damaged or cut short"), say("take another copy of it")
        )
    width, height = size
    if width * height > MOST_PIXELS:
        raise UnusablePhotograph(
            name,
            say(
                "the photograph is {width} by {height} dots, too large to show",
                width=width,
                height=height,
            ),
            say("save it smaller, and choose that"),
        )
    return ending


def _png_size(content: bytes) -> tuple[int, int] | None:
    """Width and height in dots; `None` where the file is no whole PNG.

    Source: ISO/IEC 15948:2004, 11.2.2 IHDR, 11.2.5 IEND (from memory).
    """
    if content[12:16] != b"IHDR" or b"IEND" not in content[-1024:]:
        return None
    width, height = int.from_bytes(content[16:20]), int.from_bytes(content[20:24])
    return (width, height) if width and height else None


def _jpeg_size(content: bytes) -> tuple[int, int] | None:
    """Width and height in dots; `None` where no frame begins or the scan has no end.

    Source: ITU-T T.81, B.2.2 frame header syntax, B.1.1.4 marker segments (from memory).
    """
    at = 2
    while at + 9 <= len(content):
        if content[at] != 0xFF:
            return None
        marker = content[at + 1]
        if marker == 0xFF:  # a marker may be preceded by any number of fill bytes
            at += 1
            continue
        if marker in _FRAMES:
            height = int.from_bytes(content[at + 5 : at + 7])
            width = int.from_bytes(content[at + 7 : at + 9])
            is_whole = content.find(b"\xff\xd9", at) > 0  # EOI; cameras may put more behind it
            return (width, height) if width and height and is_whole else None
        length = int.from_bytes(content[at + 2 : at + 4])
        if length < 2:
            return None
        at += 2 + length
    return None


def _holds(path: Path, content: bytes) -> bool:
    try:
        return read_whole(path, LARGEST_PHOTOGRAPH_BYTES) == content
    except UnusableDocument:
        return False


def _shortened(name: str) -> str:
    line = "".join(letter if letter.isprintable() else "·" for letter in name)
    return line if len(line) <= _LONGEST_SHOWN else line[: _LONGEST_SHOWN - 1] + "…"
