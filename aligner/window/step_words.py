"""What a step of the tightening list says on the screen."""

from __future__ import annotations

from aligner.assessment import StepStanding, StepState
from aligner.assessment.assess import Assessment
from aligner.fastening.steps import Step
from aligner.job import Job
from aligner.units.preferred import Preferred
from aligner.window.pictures import height_words, in_line_words, square_words

_KIND_WORDS = {
    "act": "do this",
    "look": "look",
    "hold": "hold point",
    "seat": "seat",
    "turn": "turn",
    "torque": "tighten",
}
_MARKS = {StepState.DONE: "✓", StepState.NEXT: "▸", StepState.LATER: " "}


def big_words(step: Step, show: Preferred) -> str:
    """The largest words of a step: its torque, or what kind of thing is to be done."""
    if step.torque_missing:
        return "torque missing"
    if step.target_nm is not None:
        return show.show_torque(step.target_nm)
    return _KIND_WORDS.get(step.kind, step.kind)


def range_words(job: Job, step: Step, show: Preferred) -> str:
    """Under the torque: its range, the thread's condition, and where it comes from."""
    fastener = next((each for each in job.sheet.fasteners if each.name == step.joint), None)
    parts = []
    if step.low_nm is not None and step.high_nm is not None:
        parts.append(f"{show.show_torque(step.low_nm)} to {show.show_torque(step.high_nm)}")
    elif step.target_nm is not None and step.fraction < 1:
        parts.append(f"{step.fraction:.0%} of the torque")
    if fastener is not None and step.kind in ("torque", "seat"):
        if fastener.thread_condition:
            parts.append(f"thread {fastener.thread_condition.value}")
        if fastener.torque is not None and fastener.torque.source:
            parts.append(fastener.torque.source)
    if step.torque_missing:
        parts.append("take it from the maker's manual and type it here; it is never guessed")
    return ", ".join(parts)


def pass_marks(steps: tuple[StepStanding, ...], step: Step) -> str:
    """The passes of a clamp as a row of marks: "half ✓   full ✓   ▸ full, until neither moves"."""
    if step.passes < 2:
        return ""
    mates = [
        each for each in steps if each.step.joint == step.joint and each.step.kind == step.kind
    ]
    words = []
    for each in mates:
        name = each.step.pass_words or f"pass {each.step.pass_number}"
        if each.state is StepState.DONE:
            words.append(f"{name} ✓")
        elif each.step.key == step.key:
            words.append(f"▸ {name}")
        else:
            words.append(name)
    return "Passes:  " + "    ".join(words)


def hold_words(assessment: Assessment, standing: StepStanding, show: Preferred) -> str:
    """What the readings say that a hold point waits for."""
    reads = standing.step.reads
    said = {
        "protrusion": height_words(assessment.protrusion, show),
        "squaring": square_words(assessment.squaring, show),
        "in_line": in_line_words(assessment.in_line, show),
    }.get(reads or "", "")
    if standing.waits_for:
        return f"{said[:1].upper()}{said[1:]}. Cannot pass: {standing.waits_for}."
    return f"{said[:1].upper()}{said[1:]}." if said else ""


def row_words(standing: StepStanding, show: Preferred) -> str:
    """A step as one line of the whole list."""
    step = standing.step
    passes = f", {step.pass_words or step.pass_number}" if step.passes > 1 else ""
    value = big_words(step, show)
    return f"{_MARKS[standing.state]} {standing.number}  {step.title}{passes}  ·  {value}"
