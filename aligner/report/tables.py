"""Readings and torques as two tables for a person's own sheet: CSV after RFC 4180.

The trap: "4,2 mm" in a cell is text to a spreadsheet, and a name that begins with "=" is a
formula. So numbers stand plain with a point, their unit in the column's head, and such a name
has an apostrophe put before it.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence
from pathlib import Path

from aligner.assessment import Assessment, assess
from aligner.job import Align, AsFound, Job
from aligner.job.build import Build
from aligner.job.inspection_points import point_of
from aligner.language import marked, say
from aligner.sheet.quantities import Quantity
from aligner.storage.files import write_whole
from aligner.storage.places import free_path

#: The heads of the columns, one text for each table.
_READING_HEAD = marked("when_read,what,side,number,value_mm,as_typed,gauge,put_by_at,point")
_TORQUE_HEAD = marked(
    "step,what,fastener,bolts,pass,passes,target_nm,low_nm,high_nm,"
    "done,logged_nm,as_typed,wrench,at,reason"
)
READING_COLUMNS = tuple(_READING_HEAD.split(","))
TORQUE_COLUMNS = tuple(_TORQUE_HEAD.split(","))
_SPRING_LENGTHS = {
    "free_length": marked("free length of the spring"),
    "room": marked("room for spring and spacer"),
    "washers": marked("washers, seats"),
    "old_spacer": marked("spacer as it was"),
    "solid_length": marked("all coils touching"),
    "fitted_spacer": marked("spacer that went in"),
}
_SAG_LENGTHS = {
    "extended": marked("sag, extended"),
    "static_down": marked("sag, static down"),
    "static_up": marked("sag, static up"),
    "rider_down": marked("sag, rider down"),
    "rider_up": marked("sag, rider up"),
}
_SAG_AS_FOUND = {
    "extended": marked("sag, extended"),
    "static": marked("sag, static"),
    "rider": marked("sag, rider"),
}
_IN_LINE_LENGTHS = {
    "gap": marked("in line, gap"),
    "end_difference": marked("in line, end difference"),
    "upper": marked("in line, upper"),
    "lower": marked("in line, lower"),
}
#: What makes a spreadsheet take text for a formula.
#: Source: OWASP, "CSV Injection" (from memory).
_FORMULA = ("=", "+", "-", "@", "\t", "\r")

Value = str | int | float | None
Record = tuple[Value, ...]


def write_tables(job: Job, path: Path) -> tuple[Path, Path]:
    """Write both tables: "NAME readings.csv" and "NAME torques.csv"; neither replaces a file.

    Args:
        job: of which the tables are.
        path: "NAME.csv", as the person gave it.

    Returns:
        The paths of the two files.

    Raises:
        SaveFailed: in words; what was written is whole.
    """
    assessment = assess(job)
    written = []
    for name, text in (
        (say("{name} readings", name=path.stem), readings_table(job)),
        (say("{name} torques", name=path.stem), torques_table(assessment)),
    ):
        beside = free_path(path.with_name(f"{name}.csv"))
        # Without the mark at its beginning spreadsheets do not take it for UTF-8.
        write_whole(beside, text.encode("utf-8-sig", errors="replace"))
        written.append(beside)
    return written[0], written[1]


def readings_table(job: Job) -> str:
    """Every length that was read, one to a record, the earliest attempt first; lengths in mm.

    A point that was inspected has its name in the language spoken, and its key in the last column:
    by that the tables of several years or languages are put together.
    """
    records: list[Record] = [*_as_found(job.as_found)]
    for number, attempt in enumerate(job.attempts, start=1):
        at = attempt.closed.isoformat(timespec="seconds")
        records += _align(say("attempt {number}", number=number), attempt.align, at)
    records += _align(say("as left"), job.align)
    for each in job.inspect.found:
        side = each.side or ""
        records += _records(
            say("inspected", meaning="in a table"),
            say(point_of(each.point).name),
            side,
            each.readings,
            each.gauge,
            point=each.point,
        )
    return _table(_READING_HEAD, (*records, *_built(job.build)))


def torques_table(assessment: Assessment) -> str:
    """Every step of the tightening list, one to a record; torques in N·m."""
    records: list[Record] = []
    for standing in assessment.tightening.steps:
        step, entry = standing.step, standing.entry
        torque = entry.torque if entry else None
        records.append(
            (
                standing.number,
                step.title,
                step.joint or "",
                " ".join(str(bolt) for bolt in step.bolts),
                step.pass_number,
                step.passes,
                step.target_nm,
                step.low_nm,
                step.high_nm,
                say("yes") if entry else say("no"),
                torque.value if torque else None,
                str(torque) if torque else "",
                entry.wrench if entry else "",
                entry.at.isoformat(timespec="seconds") if entry else "",
                entry.reason if entry else "",
            )
        )
    return _table(_TORQUE_HEAD, records)


def _as_found(found: AsFound) -> Iterable[Record]:
    when, heights, bracket = say("as found"), found.protrusion, found.bracket
    what = say("height", meaning="in a table")
    for side in ("left", "right"):
        yield from _records(when, what, side, getattr(heights, side), heights.gauge)
    what = say("bracket to frame")
    for side in ("left", "right"):
        yield from _records(when, what, side, getattr(bracket, side), bracket.gauge)
    for length, what in _SAG_AS_FOUND.items():
        yield from _records(when, say(what), "", getattr(found.sag, length), None)


def _built(build: Build) -> Iterable[Record]:
    when = say("built", meaning="in a table")
    gaps = [
        (each.closed.isoformat(timespec="seconds"), each.left, each.right) for each in build.earlier
    ]
    for closed, left, right in (*gaps, ("", build.left.gap, build.right.gap)):
        for side, gap in (("left", left), ("right", right)):
            yield from _records(when, say("air gap"), side, gap, build.gauge, closed)
    for length, what in _SPRING_LENGTHS.items():
        yield from _records(when, say(what), "", _only(getattr(build.spring, length)), None)
    for length, what in _SAG_LENGTHS.items():
        yield from _records(when, say(what), "", getattr(build.sag, length), build.sag.gauge)
    what = say("spacer while the sag was read")
    yield from _records(when, what, "", _only(build.sag.spacer), None)


def _only(reading: Quantity | None) -> tuple[Quantity, ...]:
    return () if reading is None else (reading,)


def _align(when: str, align: Align, closed: str = "") -> Iterable[Record]:
    heights = align.protrusion
    for side in ("left", "right"):
        yield from _records(
            when,
            say("height", meaning="in a table"),
            side,
            getattr(heights, side),
            heights.gauge,
            closed,
        )
    for pair in align.squaring:
        for side in ("left", "right"):
            yield from _records(when, pair.name, side, getattr(pair, side), pair.gauge, closed)
    for in_line in (align.in_line, *align.in_line_others):
        for name, what in _IN_LINE_LENGTHS.items():
            readings, gauge = getattr(in_line, name, ()), getattr(in_line, "gauge", None)
            yield from _records(when, say(what), "", readings, gauge, closed)


def _records(
    when: str,
    what: str,
    side: str,
    readings: Sequence[Quantity],
    gauge: str | None,
    closed: str = "",
    point: str = "",
) -> Iterable[Record]:
    side = _side_words(side)
    for number, reading in enumerate(readings, start=1):
        yield when, what, side, number, reading.value, str(reading), gauge or "", closed, point


def _side_words(side: str) -> str:
    match side:
        case "left":
            return say("left", meaning="in a table")
        case "right":
            return say("right", meaning="in a table")
    return ""


def _table(head: str, records: Iterable[Record]) -> str:
    text = io.StringIO(newline="")
    writer = csv.writer(text, lineterminator="\r\n")  # RFC 4180, 2.1
    writer.writerow(say(head).split(","))
    writer.writerows([_plain(value) for value in record] for record in records)
    return text.getvalue()


def _plain(value: Value) -> str:
    if value is None:
        return ""
    if isinstance(value, str):
        return f"'{value}" if value.startswith(_FORMULA) else value.replace("\0", "")
    return f"{value:.10g}"
