"""A sheet taken over from a file, whether that file is a sheet or an earlier job on the bike."""

from __future__ import annotations

from pathlib import Path

from aligner.job import Job
from aligner.sheet import Sheet
from aligner.storage.documents import LARGEST_BYTES, document_from
from aligner.storage.files import read_whole
from aligner.storage.refusal import UnusableDocument


def sheet_of_file(path: Path) -> Sheet:
    """The sheet a file holds: a sheet's own, or the copy that a job carries.

    Raises:
        NewerDocument: made by a newer version.
        UnusableDocument: neither, or a field of it is wrong; says which and what is right.
    """
    content = read_whole(path, LARGEST_BYTES)
    try:
        return document_from(content, Sheet)
    except UnusableDocument as error:
        if error.where != "document" or '"job"' not in _head(content):
            raise
    return document_from(content, Job).sheet


def _head(content: bytes) -> str:
    """The first lines, in which a document says what it is."""
    return content[:400].decode(errors="replace")
