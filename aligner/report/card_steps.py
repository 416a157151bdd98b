"""The tightening list on the job card: every fastener with what was specified and what was done.

The trap: a step out of order, undone or opened again must stay to be seen, with its reason; a
card that shows the last state alone hides how it came about.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from itertools import groupby

from aligner.assessment import Assessment, StepStanding
from aligner.job import Action, LogEntry
from aligner.language import say
from aligner.report.page import Cell, Row
from aligner.report.printable import printable
from aligner.report.row_forms import TABLE_POINTS, heading, line, titled, under
from aligner.report.steps import step_words, torque_words
from aligner.units.preferred import Preferred

_NUMBER_MM, _STEP_MM, _SPECIFIED_MM, _LOGGED_MM, _WRENCH_MM = 10.0, 60.0, 39.0, 17.0, 24.0

_NUMBER, _SPECIFIED, _LOGGED = 0, 2, 3


@dataclass(frozen=True)
class _Work:
    """One thing that is tightened, with all its passes, or one act or look between.

    Attributes:
        passes: its steps, in their order.
    """

    passes: tuple[StepStanding, ...]

    @property
    def numbers(self) -> str:
        first, last = self.passes[0].number, self.passes[-1].number
        return str(first) if first == last else f"{first}-{last}"

    @property
    def is_fastener(self) -> bool:
        return self.passes[0].step.joint is not None

    @property
    def done(self) -> tuple[StepStanding, ...]:
        return tuple(each for each in self.passes if each.entry is not None)


def step_rows(assessment: Assessment, show: Preferred, *, is_tight: bool) -> list[Row]:
    """The list in its order, the passes of one fastener in one row.

    Where it is tight, what is done between the fasteners stands in one paragraph after them.
    """
    tightening = assessment.tightening
    total = len(tightening.steps)
    rows = [
        heading(
            say(
                "Tightening: {done} of {total} steps done",
                done=tightening.done_count,
                total=total,
            )
        )
    ]
    if not total:
        return [*rows, line(say("There is no tightening list."))]
    zone = _common_zone(assessment.job.log)
    when = say("done at (UTC{zone})", zone=zone) if zone else say("done at")
    head = (
        say("step", meaning="head of a column"),
        "",
        say("specified"),
        say("logged"),
        say("wrench", meaning="head of a column"),
        when,
    )
    rows.append(_row(head, is_head=True))
    between: list[str] = []
    for work in _works(tightening.steps):
        if is_tight and not work.is_fastener:
            between.append(_between(work, zone))
        else:
            rows += _work_rows(work, show, zone)
    if between:
        rows.append(under(say("Between them: {steps}.", steps="; ".join(between)), _NUMBER_MM))
    return rows


def change_rows(assessment: Assessment) -> list[Row]:
    """What was undone or opened again, and ticks of steps that are not on the list any more."""
    titles = {
        standing.step.key: f"{standing.number} {step_words(standing.step)}"
        for standing in assessment.tightening.steps
    }
    zone = _common_zone(assessment.job.log)
    rows: list[Row] = []
    for entry in assessment.job.log:
        if entry.action is Action.TICKED and entry.step in titles:
            continue
        gone = say("{step} (not on the list now)", step=entry.step)
        words = f"{say(entry.action.value)}: {titles.get(entry.step, gone)}"
        if entry.torque:
            words += f", {entry.torque.said}"
        if entry.wrench:
            words += f", {entry.wrench}"
        if entry.reason:
            words += f". {entry.reason}"
        rows.append(titled(_when(entry, zone), printable(words)))
    return [heading(say("Undone and opened again")), *rows] if rows else []


def caution_rows(assessment: Assessment, *, is_tight: bool) -> list[Row]:
    """The cautions that went with the steps, each once; one after the other where it is tight."""
    cautions = dict.fromkeys(
        printable(standing.step.caution)
        for standing in assessment.tightening.steps
        if standing.step.caution
    )
    if not cautions:
        return []
    said = [" ".join(cautions)] if is_tight else list(cautions)
    rows = [line(words, points=TABLE_POINTS, above_mm=0.3) for words in said]
    return [heading(say("Cautions")), *rows]


def _works(steps: Iterable[StepStanding]) -> list[_Work]:
    grouped = groupby(steps, key=lambda each: (each.step.joint, each.step.title))
    return [_Work(tuple(group)) for _, group in grouped]


def _work_rows(work: _Work, show: Preferred, zone: str) -> list[Row]:
    last = work.passes[-1]
    step = last.step
    cells = (
        work.numbers,
        printable(step.title),
        torque_words(step, show),
        _logged(work),
        _wrenches(work),
        _state(work, zone),
    )
    rows = [_row(cells, is_fastener=work.is_fastener, is_attention=step.torque_missing)]
    rows += _reasons(work)
    # One rule under all that belongs to it.
    return [*(replace(row, has_rule=False) for row in rows[:-1]), replace(rows[-1], has_rule=True)]


def _reasons(work: _Work) -> list[Row]:
    rows = []
    for each in work.done:
        reason = each.entry.reason.strip() if each.entry else ""
        if reason:
            words = say("Out of order or noted: {reason}", reason=printable(reason))
            if len(work.passes) > 1:
                words = say(
                    "Out of order or noted (pass {number}): {reason}",
                    number=each.step.pass_number,
                    reason=printable(reason),
                )
            rows.append(under(words, _NUMBER_MM))
    return rows


def _between(work: _Work, zone: str) -> str:
    """An act, a look or a hold point in words, with when it was done and why out of order."""
    words = f"{work.numbers} {printable(work.passes[0].step.title)}, {_state(work, zone)}"
    reasons = [printable(each.entry.reason) for each in work.done if each.entry]
    said = "; ".join(reason for reason in reasons if reason)
    if not said:
        return words
    return say("{step} (out of order or noted: {reasons})", step=words, reasons=said)


def _logged(work: _Work) -> str:
    """What the wrench was set to or showed in the last pass that was done."""
    torques = [each.entry.torque for each in work.done if each.entry and each.entry.torque]
    return torques[-1].said if torques else ""


def _wrenches(work: _Work) -> str:
    """What was used. What could be used is no record, and stands on the bench list."""
    used = dict.fromkeys(
        printable(each.entry.wrench) for each in work.done if each.entry and each.entry.wrench
    )
    return ", ".join(used)


def _state(work: _Work, zone: str) -> str:
    done = work.done
    if not done:
        return say("open", meaning="a step not done")
    entry = done[-1].entry
    at = _when(entry, zone) if entry else ""
    if len(done) < len(work.passes):
        return say("{done} of {total} passes, {at}", done=len(done), total=len(work.passes), at=at)
    return at


def _row(
    texts: tuple[str, str, str, str, str, str],
    *,
    is_head: bool = False,
    is_fastener: bool = True,
    is_attention: bool = False,
) -> Row:
    widths = (_NUMBER_MM, _STEP_MM, _SPECIFIED_MM, _LOGGED_MM, _WRENCH_MM, 0.0)
    is_quiet = is_head or not is_fastener
    cells = tuple(
        Cell(
            text,
            widths[place],
            TABLE_POINTS,
            bold=is_head or place == _LOGGED,
            is_attention=is_attention and place == _SPECIFIED,
            is_quiet=is_quiet or place == _NUMBER,
        )
        for place, text in enumerate(texts)
    )
    return Row(cells, above_mm=0.5, has_rule=True, keeps_with_next=is_head, heads_table=is_head)


def _common_zone(log: tuple[LogEntry, ...]) -> str:
    """The offset from UTC of all entries ("+01:00"); "" where they differ or there is none."""
    offsets = {entry.at.isoformat()[19:] for entry in log}
    only = offsets.pop() if len(offsets) == 1 else ""
    return "" if "." in only else only


def _when(entry: LogEntry, zone: str) -> str:
    words = entry.at.isoformat(sep=" ", timespec="minutes")
    return words.removesuffix(zone) if zone else words
