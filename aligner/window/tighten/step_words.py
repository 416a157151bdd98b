"""What a step of the tightening list says on the screen."""

from __future__ import annotations

from aligner.assessment import StepStanding, StepState
from aligner.assessment.assess import Assessment
from aligner.fastening.steps import Step
from aligner.job import Action, Job, LogEntry
from aligner.units.preferred import Preferred
from aligner.window.widgets.pictures import height_words, in_line_words, square_words

_KIND_WORDS = {
    "act": "do this",
    "look": "look",
    "hold": "hold point",
    "seat": "seat",
    "turn": "turn",
    "torque": "tighten",
    "loosen": "loosen",
}
_STATE_WORDS = {StepState.DONE: "done", StepState.NEXT: "in hand", StepState.LATER: "to come"}


def big_words(step: Step, show: Preferred) -> str:
    """The largest words of a step: its torque, its turn, or what kind of thing is to be done."""
    if step.torque_missing:
        return "Torque missing"
    if step.target_nm is not None:
        return show.show_torque(step.target_nm)
    if step.kind == "turn" and step.turn_deg is not None:
        return turn_words(step.turn_deg)
    return _KIND_WORDS.get(step.kind, step.kind).capitalize()


def turn_words(turn_deg: float) -> str:
    """A turn backwards as a mechanic says it, the common fractions of a turn by name."""
    named = {360.0: "1 turn", 180.0: "½ turn", 90.0: "¼ turn", 45.0: "⅛ turn"}
    return f"{named.get(turn_deg, f'{turn_deg:g}°')} back"


def beside_words(step: Step, show: Preferred) -> str:
    """What stands at the right of a step's line: its torque, or what kind of step it is."""
    if step.torque_missing:
        return "torque missing"
    if step.target_nm is not None:
        return show.show_torque(step.target_nm)
    return _KIND_WORDS.get(step.kind, step.kind)


def range_words(job: Job, step: Step, show: Preferred) -> str:
    """Under the torque: its range, the thread's condition, and where it comes from."""
    fastener = next((each for each in job.sheet.fasteners if each.name == step.joint), None)
    parts = []
    if step.low_nm is not None and step.high_nm is not None and step.low_nm < step.high_nm:
        low = show.show_torque(step.low_nm).split(" ", 1)[0]
        parts.append(f"{low} to {show.show_torque(step.high_nm)}")
    elif step.target_nm is not None and step.fraction < 1:
        parts.append(f"{step.fraction:.0%} of the torque")
    if fastener is not None and step.kind in ("torque", "seat"):
        if fastener.thread_condition:
            parts.append(f"thread {fastener.thread_condition.value}")
        torque = fastener.seating if step.kind == "seat" else fastener.torque
        if torque is not None and torque.source:
            parts.append(torque.source)
    if step.torque_missing:
        parts.append("take it from the maker's manual and type it below; it is never guessed")
    return ", ".join(parts)


def bolt_words(step: Step) -> str:
    """In which turn the bolts go, where there are several: "Bolts 11, 13, 12 and 14 in turn"."""
    if len(step.bolts) < 2:
        return ""
    numbers = [str(number) for number in step.bolts]
    return f"Bolts {', '.join(numbers[:-1])} and {numbers[-1]} in turn"


def pass_name(step: Step) -> str:
    """What one pass is called: "half", "full, until neither moves"."""
    return step.pass_words or f"pass {step.pass_number}"


def pass_mates(steps: tuple[StepStanding, ...], step: Step) -> tuple[StepStanding, ...]:
    """All passes of the clamp a step belongs to; empty where it has one only."""
    if step.passes < 2:
        return ()
    return tuple(
        each for each in steps if each.step.joint == step.joint and each.step.kind == step.kind
    )


def hold_words(assessment: Assessment, standing: StepStanding, show: Preferred) -> str:
    """What the readings say that a hold point waits for."""
    reads = standing.step.reads
    said = {
        "protrusion": height_words(assessment.protrusion, show),
        "squaring": square_words(assessment.squaring, show),
        "in_line": in_line_words(assessment.in_line, show),
    }.get(reads or "", "")
    said = f"{said[:1].upper()}{said[1:]}."
    if standing.waits_for:
        return f"{said if len(said) > 1 else ''} Cannot pass: {standing.waits_for}.".strip()
    return said if len(said) > 1 else ""


def done_words(standing: StepStanding) -> str:
    """When and how a step was done, from its entry in the log; "" while it is not."""
    entry = standing.entry
    if entry is None:
        return ""
    torque = f", {entry.torque} seen" if entry.torque else ""
    wrench = f" on {entry.wrench}" if entry.wrench else ""
    reason = f". Out of order because: {entry.reason}" if entry.reason else ""
    return f"Done {entry.at:%Y-%m-%d %H:%M}{torque}{wrench}{reason}."


def opened_words(log: tuple[LogEntry, ...], standing: StepStanding) -> str:
    """Why a step that was done is open again; "" where it was not done, or is done."""
    if standing.state is StepState.DONE:
        return ""
    last = next((entry for entry in reversed(log) if entry.step == standing.step.key), None)
    if last is None or last.action is Action.TICKED:
        return ""
    did = "Opened again" if last.action is Action.OPENED_AGAIN else "Unticked"
    reason = last.reason.rstrip(".")
    return f"{did} {last.at:%Y-%m-%d %H:%M} because: {reason[:1].lower()}{reason[1:]}."


def row_words(standing: StepStanding, show: Preferred) -> str:
    """A step in one line of words: number, what is done, the pass, the torque."""
    step = standing.step
    passes = f", {pass_name(step)}" if step.passes > 1 else ""
    return f"{standing.number}  {step.title}{passes}  {beside_words(step, show)}"


def spoken_words(standing: StepStanding, show: Preferred) -> str:
    """A step for a screen reader: its words and where it stands."""
    return f"{row_words(standing, show)}, {_STATE_WORDS[standing.state]}"
