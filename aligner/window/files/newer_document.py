"""A document of a newer version in the window: open to read, and never written.

The trap: what this version does not know is not in the job it shows. Saved under another name
the rest is a job of its own, but the newer document itself must stay as it is.
"""

from __future__ import annotations

from pathlib import Path

from aligner.errors import AlignerError
from aligner.job import Job
from aligner.language import say, say_count
from aligner.storage.document_file import DocumentFile, load_job
from aligner.storage.documents import NewerDocument, job_to_read


def opened_to_read(path: Path, newer: NewerDocument) -> tuple[Job, DocumentFile, str]:
    """The job as far as it is understood, its file, and what is left out in words.

    The file counts as never seen, so that no save agrees to replace it.

    Raises:
        AlignerError: it is too different to be read at all.
    """
    found = job_to_read(newer)
    detail = ""
    if found.left_out:
        detail = say_count(
            "This version leaves out {count} field that it does not know.",
            "This version leaves out {count} fields that it does not know.",
            len(found.left_out),
        )
    return found.document, DocumentFile(path, -1, -1, ""), detail


def only_read_words(path: Path, newer: NewerDocument) -> str:
    """Why the file is not written."""
    return say(
        "{file} was made by a newer version of the program ({version}) and is open to read only",
        file=path.name,
        version=newer.version,
    )


def words_if_newer(path: Path) -> str:
    """The same for a file that a newer version made; "" for any other."""
    try:
        load_job(path)
    except NewerDocument as newer:
        return only_read_words(path, newer)
    except AlignerError:
        return ""
    return ""
