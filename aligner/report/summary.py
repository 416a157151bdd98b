"""The plain text of an assessment, as the command prints it: the correction first."""

from __future__ import annotations

from aligner.assessment import Assessment, Level, StepState
from aligner.language import say
from aligner.report.printable import printable
from aligner.report.steps import step_words, torque_words
from aligner.report.verdicts import verdict_lines
from aligner.units.preferred import Preferred

_MARKS = {StepState.DONE: "x", StepState.NEXT: ">", StepState.LATER: " "}


def summary(assessment: Assessment, show: Preferred | None = None) -> str:
    """The whole text in lines; nothing in it steers a terminal."""
    show = show or Preferred()
    verdicts = verdict_lines(assessment, show)
    width = max(len(line.title) for line in verdicts) + 2
    groups = (
        _head(assessment),
        _correction(assessment, show),
        [f"{line.title + ':':<{width}}{line.words}" for line in verdicts],
        _tightening(assessment, show),
        _notices(assessment),
    )
    return "\n\n".join("\n".join(lines) for lines in groups if lines)


def _head(assessment: Assessment) -> list[str]:
    job = assessment.job
    names = [printable(name) for name in (job.sheet.name, job.title) if name.strip()]
    return [", ".join(names)] if names else []


def _correction(assessment: Assessment, show: Preferred) -> list[str]:
    correction = assessment.correction(show)
    lines = [printable(correction.sentence)]
    if correction.detail:
        lines.append(printable(correction.detail))
    if correction.caution:
        lines.append(say("Caution: {caution}", caution=printable(correction.caution)))
    return lines


def _tightening(assessment: Assessment, show: Preferred) -> list[str]:
    tightening = assessment.tightening
    total = len(tightening.steps)
    if not total:
        return [say("Tightening list: no steps.")]
    done = tightening.done_count
    lines = [say("Tightening list: {done} of {total} steps done.", done=done, total=total)]
    width = len(str(total))
    for standing in tightening.steps:
        step = standing.step
        parts = [step_words(step), torque_words(step, show)]
        line = ": ".join(part for part in parts if part)
        if step.reason:
            line += f" - {step.reason}"
        if standing.waits_for:
            line = say("{step} (waits: {reason})", step=line, reason=standing.waits_for)
        lines.append(f"[{_MARKS[standing.state]}] {standing.number:>{width}} {printable(line)}")
    return lines


def _notices(assessment: Assessment) -> list[str]:
    if not assessment.notices:
        return []
    lines = [say("Notices:")]
    for notice in assessment.notices:
        mark = "!" if notice.level is Level.ATTENTION else "-"
        lines.append(f"{mark} {printable(notice.where)}: {printable(notice.text)}")
    return lines
