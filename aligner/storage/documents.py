"""Jobs and sheets as JSON text: reading with a clear refusal, writing in one stable form."""

from __future__ import annotations

import json
from typing import TypeVar

from pydantic import ValidationError

from aligner.job import Job
from aligner.sheet import Sheet
from aligner.storage.refusal import UnusableDocument, refusal

LARGEST_BYTES = 20_000_000
VERSION = 1

Document = TypeVar("Document", Job, Sheet)


class NewerDocument(UnusableDocument):
    """A document made by a newer version of the program."""


def job_from(content: bytes) -> Job:
    """The job a file's bytes hold.

    Raises:
        NewerDocument: made by a newer version.
        UnusableDocument: not a job, or a field of it is wrong; says which and what is right.
    """
    return _document_from(content, Job, "job")


def sheet_from(content: bytes) -> Sheet:
    """The sheet a file's bytes hold; raises as `job_from`."""
    return _document_from(content, Sheet, "sheet")


def as_bytes(document: Job | Sheet) -> bytes:
    """A document as it is written to disk: UTF-8, indented, defaults written out so that it reads the same in ten years."""
    fields = document.model_dump(mode="json", exclude_none=True)
    head = {"document": document.document, "version": document.version}
    text = json.dumps({**head, **fields}, ensure_ascii=False, indent=1)
    return text.encode() + b"\n"


def _document_from(content: bytes, model: type[Document], kind: str) -> Document:
    if len(content) > LARGEST_BYTES:
        raise UnusableDocument("", "the file is too large", f"a {kind} is far smaller than 20 MB")
    if not content.strip():
        raise UnusableDocument("", "the file is empty", f"it should hold a {kind}")
    try:
        parsed = json.loads(content)
    except (ValueError, RecursionError) as error:
        what = str(error) if isinstance(error, json.JSONDecodeError) else "it cannot be read"
        raise UnusableDocument(
            "", f"this is not a {kind} document: {what}", "it should be JSON text in UTF-8"
        ) from error
    _check_head(parsed, kind)
    try:
        return model.model_validate_json(content)
    except ValidationError as error:
        raise refusal(error, parsed) from error


def _check_head(parsed: object, kind: str) -> None:
    if not isinstance(parsed, dict):
        raise UnusableDocument("", f"this is not a {kind} document", 'it should begin with "{"')
    found = parsed.get("document")
    if found != kind:
        raise UnusableDocument(
            "document",
            f"“{found}” is not a {kind}" if found else "the file does not say what it is",
            f'a {kind} says "document": "{kind}"',
        )
    version = parsed.get("version")
    if not isinstance(version, int) or isinstance(version, bool) or version < 1:
        raise UnusableDocument("version", f"“{version}” is not a version", 'write "version": 1')
    if version > VERSION:
        raise NewerDocument(
            "version",
            f"this {kind} was made by a newer version of the program ({version})",
            f"this one reads version {VERSION}: update the program to work on it",
        )
