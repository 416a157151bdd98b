"""Jobs and sheets as JSON text: reading with a clear refusal, writing in one stable form.

The trap: a newer version's document read as if it were ours loses, at the next save, every
field we do not know. So it is refused, and can be opened to read only, with what was left out.
One of a newer minor version only has fields more: they are kept apart and saved again.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from pydantic import ValidationError

from aligner.job import Job
from aligner.language import marked, say
from aligner.sheet import Sheet
from aligner.storage.json_text import is_no_text, parsed_text, text_of
from aligner.storage.migration import (
    MINOR,
    STEPS,
    VERSION,
    Fields,
    Step,
    migrated,
    oldest_version,
)
from aligner.storage.refusal import UnusableDocument, field_path, refusal
from aligner.storage.unknown_fields import Newer, with_unknown, without_unknown

LARGEST_BYTES = 20_000_000

Document = TypeVar("Document", Job, Sheet)

_TOO_LARGE = {
    "job": marked("a job is far smaller than 20 MB"),
    "sheet": marked("a sheet is far smaller than 20 MB"),
}
_NEWER = {
    "job": marked("this job was made by a newer version of the program ({version})"),
    "sheet": marked("this sheet was made by a newer version of the program ({version})"),
}
_NOT_ONE = {
    "job": marked("this is not a job document"),
    "sheet": marked("this is not a sheet document"),
}
_NO_TEXT = {
    "job": marked("damaged, or not a job"),
    "sheet": marked("damaged, or not a sheet"),
}
_THE_OTHER = {
    "job": marked("this is a sheet, not a job"),
    "sheet": marked("this is a job, not a sheet"),
}
_SAYS = {
    "job": marked('a job says "document": "job"'),
    "sheet": marked('a sheet says "document": "sheet"'),
}


class NewerDocument(UnusableDocument):
    """A document made by a newer version of the program.

    Attributes:
        version: of the document.
        fields: the document as parsed, for `job_to_read` and `sheet_to_read`.
    """

    def __init__(self, where: str, kind: str, version: int, fields: Fields) -> None:
        super().__init__(
            where,
            say(_NEWER[kind], version=version),
            say(
                "this one reads version {version}: update the program to work on it",
                version=VERSION,
            ),
        )
        self.version = version
        self.fields = fields


@dataclass(frozen=True)
class ToRead(Generic[Document]):
    """A newer document as far as it can be understood. It must not be saved over its file.

    Attributes:
        document: the job or sheet.
        left_out: paths of the fields that this version does not know.
    """

    document: Document
    left_out: tuple[str, ...]


def job_from(content: bytes) -> Job:
    """The job a file's bytes hold.

    Raises:
        NewerDocument: made by a newer version.
        UnusableDocument: not a job, or a field of it is wrong; says which and what is right.
    """
    return document_from(content, Job)


def sheet_from(content: bytes) -> Sheet:
    """The sheet a file's bytes hold; raises as `job_from`."""
    return document_from(content, Sheet)


def document_from(
    content: bytes, model: type[Document], steps: tuple[Step, ...] = STEPS
) -> Document:
    """The document of this kind that a file's bytes hold; raises as `job_from`.

    Args:
        content: all of the file.
        model: `Job` or `Sheet`.
        steps: those that bring older versions up to the present one.
    """
    return document_and_newer(content, model, steps)[0]


def document_and_newer(
    content: bytes, model: type[Document], steps: tuple[Step, ...] = STEPS
) -> tuple[Document, Newer | None]:
    """The same, with what a newer minor version wrote beside what this one knows."""
    kind = kind_of(model)
    if len(content) > LARGEST_BYTES:
        raise UnusableDocument("", say("the file is too large"), say(_TOO_LARGE[kind]))
    if is_no_text(content):
        raise UnusableDocument("", say(_NO_TEXT[kind]))
    text = text_of(content)
    fields = _checked_head(parsed_text(text), kind, oldest_version(steps))
    minor = _minor(fields)
    if minor is not None:
        fields = {name: value for name, value in fields.items() if name != "minor"}
    if fields["version"] != VERSION:
        fields = migrated(fields, kind, steps)
    elif minor is None:
        return _validated(model, text, fields), None
    elif minor > MINOR:
        known, unknown = without_unknown(fields, model)
        return _validated(model, json.dumps(known), known), Newer(minor, unknown)
    return _validated(model, json.dumps(fields), fields), None


def as_bytes(document: Job | Sheet, newer: Newer | None = None) -> bytes:
    """A document as it is written to disk: UTF-8, indented, what it is in the first lines.

    Defaults are written out, so that it reads the same in ten years. Half a character, which
    UTF-8 cannot hold, is written as a question mark.

    Args:
        document: to be written.
        newer: what a newer minor version wrote beside it, and is to be kept.
    """
    fields = document.model_dump(mode="json", exclude_none=True)
    minor = MINOR
    if newer is not None:
        fields, minor = with_unknown(fields, newer.unknown), newer.minor
    head = {"document": document.document, "version": document.version, "minor": minor}
    text = json.dumps({**head, **fields}, ensure_ascii=False, indent=1)
    return text.encode(errors="replace") + b"\n"


def job_to_read(newer: NewerDocument) -> ToRead[Job]:
    """A newer job as far as this version understands it, to read only.

    Raises:
        UnusableDocument: it is too different to be read at all.
    """
    return _to_read(newer, Job)


def sheet_to_read(newer: NewerDocument) -> ToRead[Sheet]:
    """A newer sheet as far as this version understands it; raises as `job_to_read`."""
    return _to_read(newer, Sheet)


def kind_of(model: type[Job] | type[Sheet]) -> str:
    """What documents of this model call themselves: "job" or "sheet"."""
    return "job" if model is Job else "sheet"


def _validated(model: type[Document], text: str, fields: Fields) -> Document:
    try:
        return model.model_validate_json(text)
    except ValidationError as error:
        raise refusal(error, fields) from error


def _checked_head(parsed: object, kind: str, oldest: int) -> Fields:
    if not isinstance(parsed, dict):
        raise UnusableDocument(
            "", say(_NOT_ONE[kind]), say('it should begin with "{sign}"', sign="{")
        )
    found = parsed.get("document")
    if found != kind:
        raise UnusableDocument(
            "document",
            say(_THE_OTHER[kind])
            if found in ("job", "sheet")
            else say("the file does not say that it is one of this program's documents"),
            say(_SAYS[kind]),
        )
    sheet = parsed.get("sheet") if kind == "job" else None
    inner = sheet.get("version") if isinstance(sheet, dict) else None
    for where, version in (("version", parsed.get("version")), ("sheet.version", inner)):
        if where == "sheet.version" and version is None:
            continue
        if not isinstance(version, int) or isinstance(version, bool) or version < oldest:
            understood = say("it is missing") if version is None else say("this is not a version")
            wanted = say('write "version": {version}', version=VERSION)
            raise UnusableDocument(where, understood, wanted)
        if version > VERSION:
            raise NewerDocument(where, kind, version, parsed)
    return parsed


def _minor(fields: Fields) -> int | None:
    """The minor version a document says it is of; `None` where it does not."""
    minor = fields.get("minor")
    if minor is None and "minor" not in fields:
        return None
    if not isinstance(minor, int) or isinstance(minor, bool) or minor < 0:
        wanted = say('write "minor": {minor}', minor=MINOR)
        raise UnusableDocument("minor", say("this is not a version"), wanted)
    return minor


def _to_read(newer: NewerDocument, model: type[Document]) -> ToRead[Document]:
    fields = json.loads(json.dumps(newer.fields))
    fields["version"] = VERSION
    fields.pop("minor", None)
    if isinstance(fields.get("sheet"), dict) and "version" in fields["sheet"]:
        fields["sheet"]["version"] = VERSION
    left_out: list[str] = []
    while True:
        try:
            document = model.model_validate_json(json.dumps(fields))
        except ValidationError as error:
            unknown = [
                detail["loc"] for detail in error.errors() if detail["type"] == "extra_forbidden"
            ]
            if not unknown:
                raise refusal(error, fields) from error
            left_out += [field_path(location, fields) for location in unknown]
            for location in unknown:
                _take_out(fields, location)
        else:
            return ToRead(document, tuple(left_out))


def _take_out(fields: Fields, location: tuple[int | str, ...]) -> None:
    here: Any = fields
    for part in location[:-1]:
        is_place = isinstance(here, list) or (isinstance(here, dict) and part in here)
        here = here[part] if is_place else here
    here.pop(location[-1], None)
