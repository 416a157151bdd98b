"""The jobs in a folder as a list: which bike, which job, when, where it stands, what is due.

The trap: ten thousand jobs are read whenever the list is opened. So a row is picked out of the
parsed text without checking the whole document; a file that cannot be read is a row that says
so, and opening it goes through every check there is.
"""

from __future__ import annotations

import json
import os
from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from functools import reduce
from pathlib import Path
from typing import Any

from aligner.job.log import recheck_key
from aligner.language import marked, say, say_count, with_decimal_sign
from aligner.storage.places import JOB_ENDING

_LARGEST_BYTES = 8_000_000
_DEEPEST_FOLDER = 6
#: Fields that say nothing was done: what a length is called, and what it would be read with.
_ALONE = ("name", "gauge")


class JobState(StrEnum):
    """Where a kept job stands, by what its file says; each is said where it is shown."""

    NOT_BEGUN = marked("not begun")
    IN_HAND = marked("in hand")
    DUE = marked("signed, checks due")
    DONE = marked("done")
    UNREADABLE = marked("cannot be read")


@dataclass(frozen=True, slots=True)
class JobRow:
    """One job of the list.

    Attributes:
        path: of its file.
        bike: the sheet's name; the file's own where that is empty or cannot be read.
        title: of the job.
        day: the last day something was done, as "2026-05-02"; "" where nothing was.
        state: where it stands.
        due: what is still to be done, in words; what is wrong with a file that cannot be read.
    """

    path: Path
    bike: str
    title: str
    day: str
    state: JobState
    due: str

    def holds(self, words: tuple[str, ...]) -> bool:
        """Whether every word, in small letters, stands somewhere in the row."""
        state = say(self.state.value)
        text = f"{self.bike} {self.title} {self.day} {state} {self.due}".casefold()
        return all(word in text for word in words)


def jobs_in(folder: Path) -> Iterator[JobRow]:
    """Every job below a folder, as it is met; a folder that cannot be read holds none."""
    for path in _job_files(str(folder), _DEEPEST_FOLDER):
        yield job_row(Path(path))


def job_row(path: Path) -> JobRow:
    """The row of one file; never raises for what the file holds."""
    try:
        if path.stat().st_size > _LARGEST_BYTES:
            return _unreadable(path, say("larger than any job"))
        fields = json.loads(path.read_bytes())
    except OSError as error:
        return _unreadable(path, (error.strerror or "").lower() or say("cannot be opened"))
    except (ValueError, RecursionError):
        return _unreadable(path, say("damaged, or not a job"))
    if not isinstance(fields, dict) or fields.get("document") != "job":
        return _unreadable(path, say("not a job"))
    try:
        return _row(path, fields)
    except (AttributeError, TypeError, ValueError, KeyError):
        return _unreadable(path, say("not a job as this program writes it"))


def _row(path: Path, fields: dict[str, Any]) -> JobRow:
    sheet = fields.get("sheet", {})
    proof = fields.get("prove", {})
    signed = proof.get("sign_off")
    due = _checks_due(sheet, proof)
    day = _last_day(fields, signed)
    if signed:
        state = JobState.DUE if due else JobState.DONE
    elif day or _has_undated(fields):
        state, due = JobState.IN_HAND, say("sign-off")
    else:
        state, due = JobState.NOT_BEGUN, ""
    name = path.name.removesuffix(JOB_ENDING)
    return JobRow(path, sheet.get("name") or name, fields.get("title", ""), day, state, due)


def _has_undated(fields: dict[str, Any]) -> bool:
    """Whether anything was read or written down that bears no date."""
    heights = fields.get("align", {}).get("protrusion", {})
    return any(
        _holds_anything(part)
        for part in (
            heights.get("left"),
            heights.get("right"),
            fields.get("as_found"),
            fields.get("build"),
        )
    )


def _holds_anything(part: Any) -> bool:
    """Whether a part of a document holds more than empty fields."""
    if isinstance(part, dict):
        return any(_holds_anything(each) for field, each in part.items() if field not in _ALONE)
    return bool(part)


def _checks_due(sheet: dict[str, Any], proof: dict[str, Any]) -> str:
    """Fasteners that the sheet wants checked again after a distance and that were not."""
    asked = {
        each["name"]: each["again_after"]
        for each in sheet.get("fasteners", ())
        if each.get("again_after")
    }
    last = {entry["step"]: entry.get("action", "ticked") for entry in proof.get("rechecks", ())}
    due = {name: after for name, after in asked.items() if last.get(recheck_key(name)) != "ticked"}
    if not due:
        return ""
    distances = sorted({with_decimal_sign(after) for after in due.values()})
    return say_count(
        "check {count} fastener again after {distances}",
        "check {count} fasteners again after {distances}",
        len(due),
        distances=reduce(lambda a, b: say("{a} or {b}", a=a, b=b), distances),
    )


def _last_day(fields: dict[str, Any], signed: dict[str, Any] | None) -> str:
    """The last day that anything in the job bears; dates written one way sort as text."""
    strip, build, proof = (fields.get(part, {}) for part in ("strip", "build", "prove"))
    days = [str(signed["on"])] if signed else []
    for log in (fields.get("log"), strip.get("log"), build.get("log"), proof.get("rechecks")):
        if log:
            days.append(log[-1]["at"])
    found = fields.get("inspect", {}).get("found", ())
    days += (each["at"] for each in found if each.get("at"))
    if fields.get("attempts"):
        days.append(fields["attempts"][-1]["closed"])
    if begun := fields.get("align", {}).get("begun"):
        days.append(begun)
    return max(days)[:10] if days else ""


def _unreadable(path: Path, why: str) -> JobRow:
    name = path.name.removesuffix(JOB_ENDING)
    return JobRow(path, name, "", "", JobState.UNREADABLE, why)


def _job_files(folder: str, depth: int) -> Iterator[str]:
    """Paths of the jobs below a folder; links to folders are not followed."""
    folders = []
    try:
        with os.scandir(folder) as entries:
            for entry in entries:
                if entry.name.startswith("."):
                    continue
                if entry.is_dir(follow_symlinks=False):
                    folders.append(entry.path)
                elif entry.name.endswith(JOB_ENDING):
                    yield entry.path
    except OSError:
        return
    for each in sorted(folders) if depth else ():
        yield from _job_files(each, depth - 1)
