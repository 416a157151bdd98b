"""What there is to ask about the log of ticks: torques far out, ticks out of order, times.

The trap: a document need not come from the screens that ask for a reason. A log written or
changed elsewhere is taken as it stands, and what does not hold together in it is said.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from aligner.assessment.notice import Notice, attention, note
from aligner.assessment.wrenches import ToolForStep
from aligner.fastening.steps import Step
from aligner.gauging import Verdict
from aligner.job import Action, Job, LogEntry, ticked_steps
from aligner.language import marked, say, say_count, written

#: How far beyond its limits a logged torque is asked about, as a share of the one wanted, and how
#: far from one without limits. Chosen, no source: what the ticking itself asks about.
_BEYOND_LIMITS = 0.05
_FROM_BARE = 0.20
_A_MINUTE = 60.0
_MONTHS = (
    marked("January"),
    marked("February"),
    marked("March"),
    marked("April"),
    marked("May"),
    marked("June"),
    marked("July"),
    marked("August"),
    marked("September"),
    marked("October"),
    marked("November"),
    marked("December"),
)


def log_notices(
    job: Job,
    steps: Sequence[tuple[Step, ToolForStep | None]],
    verdicts: dict[str, Verdict],
) -> tuple[Notice, ...]:
    """What does not hold together in the log of a job; nothing of it is changed.

    Args:
        job: of which the log is.
        steps: the list in its order, each with what it is tightened with.
        verdicts: of the readings that hold points ask for on this job.
    """
    if not job.log:
        return ()
    ticked = ticked_steps(job.log)
    return (
        *_holds(job, [step for step, _ in steps], ticked, verdicts),
        *_torques(job, steps, ticked),
        *_order(job, [step for step, _ in steps]),
        *_times(job.log),
    )


_HOLDS_NOT = {
    Verdict.OUT: marked(
        "“{step}” is ticked, but its readings are out: slacken what was done on it, correct, "
        "measure again and do it anew."
    ),
    Verdict.UNSETTLED: marked(
        "“{step}” is ticked, but its readings cannot tell: untick it and measure."
    ),
    Verdict.MISSING: marked(
        "“{step}” is ticked, but its readings are missing: untick it and measure."
    ),
}


def _holds(
    job: Job, steps: list[Step], ticked: dict[str, LogEntry], verdicts: dict[str, Verdict]
) -> list[Notice]:
    """Hold points that stand ticked on readings that do not let them pass, or that are older."""
    found = []
    tightened_since: dict[str, list[tuple[str, LogEntry]]] = {}
    for step in steps:
        entry = ticked.get(step.key)
        if step.kind == "torque" and entry is not None:
            for since in tightened_since.values():
                since.append((step.title, entry))
        later = tightened_since.get(step.reads or "", [])
        if step.kind == "hold" and step.reads is not None:
            tightened_since[step.reads] = []
        if step.kind != "hold" or entry is None or entry.reason.strip() or step.reads is None:
            continue
        verdict = verdicts.get(step.reads, Verdict.WITHIN)
        # With attempts put by it passed on readings that are not the ones in hand.
        if verdict is Verdict.OUT or (verdict is not Verdict.WITHIN and not job.attempts):
            found.append(attention("log", say(_HOLDS_NOT[verdict], step=step.title)))
        else:
            for tightened, tick in later:
                if tick.at.timestamp() > entry.at.timestamp() and not tick.reason.strip():
                    text = say(
                        "“{step}” is ticked, but “{tightened}” was tightened after it: untick it "
                        "and measure again.",
                        step=step.title,
                        tightened=tightened,
                    )
                    found.append(attention("log", text))
                    break
    return found


_FAR_OUT = marked(
    "“{step}” was ticked at {seen}, and {specified} is specified; no reason is given. "
    "Untick it and do it again, or look at the sheet."
)
_FAR_OUT_IN_PASS = marked(
    "“{step}” was ticked at {seen}, and {specified} is specified in pass {number}; no reason is "
    "given. Untick it and do it again, or look at the sheet."
)


def _torques(
    job: Job, steps: Sequence[tuple[Step, ToolForStep | None]], ticked: dict[str, LogEntry]
) -> list[Notice]:
    """Joints ticked without a reason at a torque far from what is specified, each said once."""
    found: dict[str, Notice] = {}
    for step, tool in steps:
        entry = ticked.get(step.key)
        target_nm = step.target_nm
        if entry is None or entry.torque is None or target_nm is None or entry.reason.strip():
            continue
        low, high = 1 - _FROM_BARE, 1 + _FROM_BARE
        if step.low_nm is not None and step.high_nm is not None and step.low_nm < step.high_nm:
            low = step.low_nm / target_nm - _BEYOND_LIMITS
            high = step.high_nm / target_nm + _BEYOND_LIMITS
        # With an adapter the wrench shows another torque than the fastener gets.
        settings = [target_nm]
        if tool is not None and tool.adapter and tool.setting_nm is not None:
            settings.append(tool.setting_nm)
        seen_nm = entry.torque.value
        if any(low * each <= seen_nm <= high * each for each in settings):
            continue
        chosen = tool.adapter if tool is not None else ""
        named = [name for name in job.adapters if name and name in entry.wrench]
        if named and chosen not in named:
            continue  # another adapter than the one chosen now: nothing to hold it against
        text = _FAR_OUT_IN_PASS if step.passes > 1 else _FAR_OUT
        text = say(
            text,
            step=step.title,
            seen=entry.torque.said,
            specified=f"{written(target_nm, '.3g')} N·m",
            number=step.pass_number,
        )
        found.setdefault(step.joint or step.key, attention("log.torque", text))
    return list(found.values())


def _order(job: Job, steps: list[Step]) -> list[Notice]:
    """Steps ticked without a reason while one that stands before them was open."""
    place = {step.key: number for number, step in enumerate(steps)}
    titles = {step.key: step.title for step in steps}
    is_done = [False] * len(steps)
    first_open = 0
    early: list[tuple[str, str]] = []
    for entry in job.log:
        here = place.get(entry.step)
        if here is None:
            continue
        is_tick = entry.action is Action.TICKED
        if is_tick and first_open < here and not entry.reason.strip():
            early.append((titles[entry.step], titles[steps[first_open].key]))
        is_done[here] = is_tick
        if not is_tick:
            first_open = min(first_open, here)
        while first_open < len(steps) and is_done[first_open]:
            first_open += 1
    if not early:
        return []
    text = say_count(
        "{count} step was ticked without a reason while a step that stands before was open: the "
        "first, “{step}” before “{before}”. Look whether it still holds.",
        "{count} steps were ticked without a reason while a step that stands before was open: the "
        "first, “{step}” before “{before}”. Look whether it still holds.",
        len(early),
        step=early[0][0],
        before=early[0][1],
    )
    return [note("log", text)]


def _times(log: tuple[LogEntry, ...]) -> list[Notice]:
    """Ticks whose times run backwards, by which no reading can be told to be from after them."""
    latest: LogEntry | None = None
    for entry in log:
        if latest is not None and latest.at.timestamp() - entry.at.timestamp() > _A_MINUTE:
            text = say(
                "The times of the log run backwards, from {latest} to {then}. Whether the "
                "readings were taken after the clamps were tightened cannot be told from them: "
                "set the clock, then measure once more.",
                latest=moment_words(latest.at),
                then=moment_words(entry.at),
            )
            return [note("log", text)]
        latest = entry
    return []


def moment_words(at: datetime) -> str:
    """A time as it is read on a page: "04 May 2026 09:30"."""
    return say(
        "{day} {month} {year} {time}",
        day=f"{at:%d}",
        month=say(_MONTHS[at.month - 1]),
        year=f"{at:%Y}",
        time=f"{at:%H:%M}",
    )
