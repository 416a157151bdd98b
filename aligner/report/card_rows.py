"""What stands on the job card, part by part: picked from the assessment and put into words."""

from __future__ import annotations

from collections.abc import Sequence

from aligner.assessment import Assessment, Level
from aligner.assessment.as_found import estimate_words
from aligner.assessment.findings import findings
from aligner.assessment.readings import mean_mm
from aligner.gauging import Estimate
from aligner.job import Job, SquaringPair
from aligner.job.inspect import Finding
from aligner.language import begun, marked, say
from aligner.report.card_due import due_rows
from aligner.report.card_steps import caution_rows, change_rows, step_rows
from aligner.report.page import Row
from aligner.report.printable import printable, printable_lines
from aligner.report.row_forms import heading, judged, line, pairs, signature, three, titled
from aligner.report.verdicts import verdict_lines
from aligner.sheet.quantities import Quantity
from aligner.units.preferred import Preferred

CAUTIONS = (
    marked(
        "The maker's manual and local rules come first; if you are not sure have the work checked "
        "by a qualified mechanic."
    ),
    marked(
        "Brakes are pumped up and proved before the first metre. After the road test every "
        "fastener marked for it is checked again."
    ),
)
#: What stands in the table beside the drawing, and needs no other row.
_AT_THE_DRAWING = (marked("left height"), marked("right height"), marked("heights, difference"))


def card_foot(job: Job) -> str:
    """The line at the foot of each page, and the document's title."""
    names = [name for name in (printable(job.sheet.name), printable(job.title)) if name]
    if not names:
        return say("Job card: unnamed")
    return say("Job card: {names}", names=", ".join(names))


def rows_above(assessment: Assessment) -> tuple[Row, ...]:
    """The head of the card: the bike, the job, the cautions."""
    job = assessment.job
    bike = printable(job.sheet.name) or say("Bike not named")
    title = printable(job.title) or say("Front end refit")
    return (
        line(bike, points=18, bold=True),
        line(say("Job card: {names}", names=title), points=11),
        *(line(say(caution), points=7.5, above_mm=0.8, is_quiet=True) for caution in CAUTIONS),
    )


def rows_beside(assessment: Assessment, show: Preferred) -> tuple[Row, ...]:
    """The table at the drawing's right: as found and as left. Numbers and short words only."""
    job = assessment.job
    found, now = job.as_found.protrusion, job.align.protrusion
    sheet, attempts = job.sheet.protrusion, job.attempts
    rows = [
        three(say("Heights"), say("as found"), say("as left"), bold=True),
        three(say("left leg"), _mean(found.left, show), _mean(now.left, show)),
        three(say("right leg"), _mean(found.right, show), _mean(now.right, show)),
        three(
            say("left less right"),
            _unlike(found.left, found.right, show),
            _unlike(now.left, now.right, show),
        ),
        three(
            say("target"),
            "",
            show.show_length(sheet.target.value)
            if sheet.target
            else say("none", meaning="a target height"),
        ),
        three(say("allowed"), "", _allowed(sheet.tolerance, show)),
    ]
    if job.align.squaring:
        first = {pair.name: pair for pair in attempts[0].align.squaring} if attempts else {}
        rows.append(three(say("Lower bracket"), say("first read"), say("as left"), bold=True))
        for pair in job.align.squaring:
            earlier = first.get(pair.name, SquaringPair())  # one in its place may be another's
            name = say("{pair}, left less right", pair=printable(pair.name))
            rows.append(
                three(
                    name,
                    _unlike(earlier.left, earlier.right, show),
                    _unlike(pair.left, pair.right, show),
                )
            )
    rows.append(three(say("earlier attempts"), "", str(len(attempts))))
    return tuple(rows)


def rows_below(
    assessment: Assessment, show: Preferred, *, is_tight: bool = False
) -> tuple[Row, ...]:
    """All that follows the drawing: verdicts, findings, settings, steps, what is due, sign-off.

    Args:
        assessment: of the job.
        show: the units to show values in.
        is_tight: whether to set some of it closer, so that it may go on two pages.
    """
    return (
        *_alignment(assessment, show),
        *_as_found(assessment, show),
        *_findings(assessment, show),
        *_settings(assessment, show),
        *step_rows(assessment, show, is_tight=is_tight),
        *change_rows(assessment),
        *due_rows(assessment, show),
        *_notices(assessment),
        *_proof(assessment.job),
        *caution_rows(assessment, is_tight=is_tight),
        *_signature(assessment.job),
    )


def with_uncertainty(estimate: Estimate | None, show: Preferred) -> str:
    """A leg's height with its expanded uncertainty, as it stands at the drawing."""
    return estimate_words(estimate, show) if estimate else say("not read")


def _alignment(assessment: Assessment, show: Preferred) -> list[Row]:
    rows = [heading(say("As left (± is the expanded uncertainty, 95 %)"))]
    rows += [
        judged(each.title, each.verdict, printable(each.said))
        for each in verdict_lines(assessment, show)
    ]
    rows += [titled(say("Distances"), _pair(pair, show)) for pair in assessment.job.align.squaring]
    correction = assessment.correction(show)
    rows.append(titled(say("Correction"), printable(f"{correction.sentence} {correction.detail}")))
    if correction.caution:
        rows.append(titled(say("Caution"), begun(printable(correction.caution))))
    return rows


def _as_found(assessment: Assessment, show: Preferred) -> list[Row]:
    """What the table beside the drawing does not say already."""
    told = {say(name) for name in _AT_THE_DRAWING}
    rows = [
        (begun(row.name), printable(row.words))
        for row in assessment.strip.as_found_rows(show)
        if row.name not in told
    ]
    if not rows:
        return []
    return [heading(say("As found, before anything was loosened")), *pairs(rows)]


def _findings(assessment: Assessment, show: Preferred) -> list[Row]:
    """A row for each finding that says something; what is plainly good stands in one."""
    rows: list[Row] = []
    good: dict[str, list[str]] = {}
    for found in findings(assessment.inspection, show):
        words = ". ".join(part for part in (found.numbers, found.note) if part)
        if found.photographs:
            words += f" ({', '.join(found.photographs)})"
        verdict = printable(found.finding)
        if verdict == say(Finding.GOOD.value) and not words:
            good.setdefault(found.point, []).append(found.side)
            continue
        title = f"{found.point}, {found.side}" if found.side else found.point
        said = f"{verdict}: {printable(words)}" if words else verdict
        rows.append(titled(printable(title), said, title_mm=62.0))
    if good:
        names = [_point_words(point, sides) for point, sides in good.items()]
        rows.append(titled(say("Good, nothing to note"), "; ".join(names), title_mm=62.0))
    return [heading(say("Findings")), *rows] if rows else []


def _point_words(point: str, sides: Sequence[str]) -> str:
    """A point with its legs: "Bush play", or "Oil seal, left leg" where only one is meant."""
    return printable(point if len(sides) == 2 or not sides[0] else f"{point}, {sides[0]}")


def _settings(assessment: Assessment, show: Preferred) -> list[Row]:
    build = assessment.build
    if not build.is_begun:
        return []
    entries = [(begun(each.name), printable(each.words)) for each in build.settings]
    for change in assessment.job.build.bearing.adjustments:
        words = ". ".join(part for part in (change.what, change.why) if part)
        entries.append((say("Bearing, {day}", day=change.on), printable(words)))
    return [heading(say("Oil and settings")), *pairs(entries)] if entries else []


def _notices(assessment: Assessment) -> list[Row]:
    grave = [notice for notice in assessment.notices if notice.level is Level.ATTENTION]
    if not grave:
        return []
    rows = [line(printable(notice.text), above_mm=0.8) for notice in grave]
    return [heading(say("Needs attention")), *rows]


def _proof(job: Job) -> list[Row]:
    prove = job.prove
    rows = [heading(say("Final checks and road test"))]
    for check in prove.checks:
        words = say("done", meaning="a final check") if check.done else say("NOT DONE")
        if check.note.strip():
            words += f": {printable(check.note)}"
        rows.append(titled(printable(say(check.name)), words, title_mm=62.0))
    if not prove.checks:
        rows.append(line(say("No final checks are recorded.")))
    road_test = " ".join(printable_lines(prove.road_test)) or say("not recorded")
    rows.append(titled(say("Road test"), road_test))
    rows += [titled(say("Note"), words) for words in printable_lines(job.note)]
    return rows


def _signature(job: Job) -> list[Row]:
    signed = say("not signed off")
    if job.prove.sign_off:
        signed = f"{printable(job.prove.sign_off.name)}, {job.prove.sign_off.on.isoformat()}"
    return [heading(say("Sign-off")), *signature(signed)]


def _allowed(tolerance: Quantity | None, show: Preferred) -> str:
    return f"± {show.show_length(tolerance.value)}" if tolerance else say("not given")


def _pair(pair: SquaringPair, show: Preferred) -> str:
    left, right = _mean(pair.left, show), _mean(pair.right, show)
    return say(
        "{pair}: left {left}, right {right}", pair=printable(pair.name), left=left, right=right
    )


def _mean(readings: Sequence[Quantity], show: Preferred) -> str:
    if not readings:
        return say("not read")
    return f"{show.show_length(mean_mm(readings), fine=1)} ({len(readings)})"


def _unlike(left: Sequence[Quantity], right: Sequence[Quantity], show: Preferred) -> str:
    if not left or not right:
        return ""
    return show.show_length(mean_mm(left) - mean_mm(right), fine=1)
