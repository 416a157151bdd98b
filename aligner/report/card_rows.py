"""What stands on the job card, row by row: picked from the assessment and put into words.

The trap: a step done out of order, undone or opened again must stay to be seen, with its
reason; a card that shows the last state alone hides how it came about.
"""

from __future__ import annotations

from collections.abc import Sequence

from aligner.assessment import Assessment, Level, StepStanding
from aligner.job import Action, Job, LogEntry, ProtrusionReadings, SquaringPair
from aligner.report.page import Cell, Row
from aligner.report.printable import printable, printable_lines
from aligner.report.steps import step_words, torque_words
from aligner.report.verdicts import verdict_lines
from aligner.sheet.quantities import Quantity
from aligner.units.preferred import Preferred

CAUTIONS = (
    "The maker's manual and local rules come first; if you are not sure have the work checked "
    "by a qualified mechanic.",
    "Brakes are pumped up and proved before the first metre. After the road test every "
    "fastener marked for it is checked again.",
)

_NUMBER_MM, _STEP_MM, _TORQUE_MM, _LOGGED_MM, _WRENCH_MM = 8.0, 66.0, 38.0, 18.0, 24.0
_TITLE_MM = 30.0


def card_foot(job: Job) -> str:
    """The line at the foot of each page, and the document's title."""
    names = (printable(job.sheet.name), printable(job.title))
    return "Job card: " + (", ".join(name for name in names if name) or "unnamed")


def rows_above(assessment: Assessment) -> tuple[Row, ...]:
    """The head of the card: the bike, the job, the cautions."""
    job = assessment.job
    bike = printable(job.sheet.name) or "Bike not named"
    title = printable(job.title) or "Front end refit"
    return (
        _line(bike, points=16, bold=True),
        _line(f"Job card: {title}", points=11),
        *(_line(caution, points=8, above_mm=1.0) for caution in CAUTIONS),
    )


def rows_beside(assessment: Assessment, show: Preferred) -> tuple[Row, ...]:
    """The table at the drawing's right: the heights as found and as left. Numbers only."""
    job = assessment.job
    found, now = job.as_found.protrusion, job.align.protrusion
    sheet = job.sheet.protrusion
    rows = [
        _three("Heights", "as found", "as left", bold=True),
        _three("left leg", _mean(found.left, show), _mean(now.left, show)),
        _three("right leg", _mean(found.right, show), _mean(now.right, show)),
        _three("left less right", _unlike(found, show), _unlike(now, show)),
        _three("target", "", show.show_length(sheet.target.value) if sheet.target else "none"),
        _three(
            "allowed",
            "",
            f"± {show.show_length(sheet.tolerance.value)}" if sheet.tolerance else "not given",
        ),
        _three("earlier attempts", "", str(len(job.attempts))),
    ]
    return tuple(rows)


def rows_below(assessment: Assessment, show: Preferred) -> tuple[Row, ...]:
    """All that follows the drawing: verdicts, steps, changes, checks, sign-off."""
    return (
        *_alignment(assessment, show),
        *_steps(assessment, show),
        *_changes(assessment),
        *_notices(assessment),
        *_proof(assessment.job),
    )


def _alignment(assessment: Assessment, show: Preferred) -> list[Row]:
    rows = [_heading("As left (± is the expanded uncertainty, 95 %)")]
    rows += [_two(line.title, printable(line.words)) for line in verdict_lines(assessment, show)]
    rows += [_two("Distances", _pair(pair, show)) for pair in assessment.job.align.squaring]
    correction = assessment.correction(show)
    rows.append(_two("Correction", printable(f"{correction.sentence} {correction.detail}")))
    if correction.caution:
        rows.append(_two("Caution", printable(correction.caution)))
    return rows


def _steps(assessment: Assessment, show: Preferred) -> list[Row]:
    tightening = assessment.tightening
    total = len(tightening.steps)
    rows = [_heading(f"Tightening: {tightening.done_count} of {total} steps done")]
    if total:
        rows.append(_step_row("", "step", "specified", "logged", "wrench", "when", bold=True))
    for standing in tightening.steps:
        rows += _step(standing, show)
    return rows


def _step(standing: StepStanding, show: Preferred) -> list[Row]:
    step, entry = standing.step, standing.entry
    rows = [
        _step_row(
            str(standing.number),
            printable(step_words(step)),
            torque_words(step, show),
            str(entry.torque) if entry and entry.torque else "",
            printable(entry.wrench) if entry else "",
            _when(entry) if entry else "open",
            is_attention=step.torque_missing,
        )
    ]
    if entry and entry.reason.strip():
        rows.append(_under(f"Out of order or noted: {printable(entry.reason)}"))
    if step.caution:
        rows.append(_under(f"Caution: {printable(step.caution)}"))
    return rows


def _changes(assessment: Assessment) -> list[Row]:
    """What was undone or opened again, and ticks of steps that are not on the list any more."""
    titles = {
        standing.step.key: f"{standing.number} {step_words(standing.step)}"
        for standing in assessment.tightening.steps
    }
    rows: list[Row] = []
    for entry in assessment.job.log:
        is_on_list = entry.step in titles
        if entry.action is Action.TICKED and is_on_list:
            continue
        what = titles.get(entry.step, f"{entry.step} (not on the list now)")
        words = f"{entry.action.value}: {what}"
        if entry.torque:
            words += f", {entry.torque}"
        if entry.wrench:
            words += f", {entry.wrench}"
        if entry.reason:
            words += f". {entry.reason}"
        rows.append(_two(_when(entry), printable(words)))
    return [_heading("Undone and opened again"), *rows] if rows else []


def _notices(assessment: Assessment) -> list[Row]:
    grave = [notice for notice in assessment.notices if notice.level is Level.ATTENTION]
    if not grave:
        return []
    rows = [_two(printable(notice.where), printable(notice.text)) for notice in grave]
    return [_heading("Needs attention"), *rows]


def _proof(job: Job) -> list[Row]:
    prove = job.prove
    rows = [_heading("Final checks and road test")]
    for check in prove.checks:
        words = "done" if check.done else "NOT DONE"
        if check.note.strip():
            words += f": {printable(check.note)}"
        rows.append(_two(printable(check.name), words, title_mm=90.0))
    if not prove.checks:
        rows.append(_line("No final checks are recorded."))
    road_test = " ".join(printable_lines(prove.road_test)) or "not recorded"
    rows.append(_two("Road test", road_test))
    rows += [_two("Note", line) for line in printable_lines(job.note)]
    if prove.sign_off:
        signed = f"{printable(prove.sign_off.name)}, {prove.sign_off.on.isoformat()}"
    else:
        signed = "not signed off"
    rows.append(_two("Signed off by", signed, above_mm=3.0))
    rows.append(_two("Signature, date", "_" * 60, above_mm=7.0))
    return rows


def _pair(pair: SquaringPair, show: Preferred) -> str:
    left, right = _mean(pair.left, show), _mean(pair.right, show)
    return f"{printable(pair.name)}: left {left}, right {right}"


def _mean(readings: Sequence[Quantity], show: Preferred) -> str:
    if not readings:
        return "not read"
    mean = sum(reading.value for reading in readings) / len(readings)
    return f"{show.show_length(mean, fine=1)} ({len(readings)})"


def _unlike(readings: ProtrusionReadings, show: Preferred) -> str:
    left, right = readings.left, readings.right
    if not left or not right:
        return ""
    means = [sum(reading.value for reading in side) / len(side) for side in (left, right)]
    return show.show_length(means[0] - means[1], fine=1)


def _when(entry: LogEntry) -> str:
    return entry.at.isoformat(sep=" ", timespec="minutes")


def _line(text: str, *, points: float = 8.5, bold: bool = False, above_mm: float = 0.6) -> Row:
    return Row((Cell(text, points=points, bold=bold),), above_mm)


def _heading(text: str) -> Row:
    cell = Cell(text, points=10, bold=True)
    return Row((cell,), above_mm=3.0, has_rule=True, keeps_with_next=True)


def _two(title: str, text: str, *, title_mm: float = _TITLE_MM, above_mm: float = 0.6) -> Row:
    return Row((Cell(title, title_mm), Cell(text)), above_mm)


def _three(title: str, before: str, after: str, *, bold: bool = False) -> Row:
    cells = (Cell(title, 32, bold=bold), Cell(before, 32, bold=bold), Cell(after, bold=bold))
    return Row(cells, above_mm=1.2, has_rule=True)


def _step_row(
    number: str,
    step: str,
    specified: str,
    logged: str,
    wrench: str,
    when: str,
    *,
    bold: bool = False,
    is_attention: bool = False,
) -> Row:
    size = 7.5
    return Row(
        (
            Cell(number, _NUMBER_MM, size, bold),
            Cell(step, _STEP_MM, size, bold),
            Cell(specified, _TORQUE_MM, size, bold, is_attention),
            Cell(logged, _LOGGED_MM, size, bold),
            Cell(wrench, _WRENCH_MM, size, bold),
            Cell(when, 0.0, size, bold),
        ),
        above_mm=0.4,
        has_rule=True,
        keeps_with_next=bold,
    )


def _under(text: str) -> Row:
    return Row((Cell("", _NUMBER_MM, 7.5), Cell(text, points=7.5)), above_mm=0.2)
