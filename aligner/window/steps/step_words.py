"""What a step of a list says on the screen."""

from __future__ import annotations

from aligner.assessment import StepStanding, StepState
from aligner.assessment.assess import Assessment
from aligner.fastening.steps import Step
from aligner.job import Action, Job, LogEntry
from aligner.language import begun, inside, listed, marked, say, written
from aligner.sheet import ThreadCondition, TorqueSpecification
from aligner.sheet.printed_torque import torque_text
from aligner.units.preferred import Preferred
from aligner.units.shown import rounded
from aligner.window.widgets.pictures import height_words, in_line_words, square_words

_CONDITIONS = {
    ThreadCondition.DRY: marked("thread dry"),
    ThreadCondition.OILED: marked("thread oiled"),
    ThreadCondition.GREASED: marked("thread greased"),
    ThreadCondition.LOCKED: marked("thread locked"),
}
_TURNS = {
    360.0: marked("1 turn back"),
    180.0: marked("½ turn back"),
    90.0: marked("¼ turn back"),
    45.0: marked("⅛ turn back"),
}


def kind_words(kind: str) -> str:
    """What kind of step it is, where it has no torque to show."""
    found = {
        "act": say("do this"),
        "look": say("look", meaning="kind of step"),
        "hold": say("hold point"),
        "seat": say("seat", meaning="kind of step"),
        "turn": say("turn", meaning="kind of step"),
        "torque": say("tighten", meaning="kind of step"),
        "loosen": say("loosen", meaning="kind of step"),
    }
    return found.get(kind, kind)


def state_words(state: StepState) -> str:
    """Where a step stands: done, in hand or to come."""
    if state is StepState.DONE:
        return say("done", meaning="step")
    if state is StepState.NEXT:
        return say("in hand", meaning="step")
    return say("to come", meaning="step")


def big_words(step: Step, show: Preferred) -> str:
    """The largest words of a step: its torque, its turn, or what kind of thing is to be done."""
    if step.torque_missing:
        return say("Torque missing")
    if step.target_nm is not None:
        return show.show_torque(step.target_nm)
    if step.kind == "turn" and step.turn_deg is not None:
        return turn_words(step.turn_deg)
    return begun(kind_words(step.kind))


def turn_words(turn_deg: float) -> str:
    """A turn backwards as a mechanic says it, the common fractions of a turn by name."""
    if turn_deg in _TURNS:
        return say(_TURNS[turn_deg])
    return say("{angle} back", angle=f"{written(turn_deg)}°")


def beside_words(step: Step, show: Preferred) -> str:
    """What stands at the right of a step's line: its torque, or what kind of step it is."""
    if step.torque_missing:
        return say("torque missing")
    if step.target_nm is not None:
        return show.show_torque(step.target_nm)
    return kind_words(step.kind)


def range_words(job: Job, step: Step, show: Preferred) -> str:
    """Under the torque: its range, the thread's condition, what is printed, and where."""
    fastener = next((each for each in job.sheet.fasteners if each.name == step.joint), None)
    parts = []
    if step.low_nm is not None and step.high_nm is not None and step.low_nm < step.high_nm:
        parts.append(show.show_torques(step.low_nm, step.high_nm))
    elif step.target_nm is not None and step.fraction < 1:
        parts.append(say("{share}% of the torque", share=rounded(100 * step.fraction, 0)))
    if fastener is not None and step.kind in ("torque", "seat"):
        if fastener.thread_condition:
            parts.append(say(_CONDITIONS[fastener.thread_condition]))
        torque = fastener.seating if step.kind == "seat" else fastener.torque
        if torque is not None:
            if _is_printed_otherwise(torque, show):
                parts.append(say("printed as {torque}", torque=torque_text(torque)))
            if torque.source:
                parts.append(torque.source)
    if step.torque_missing:
        parts.append(
            say(
                "take it from the maker's manual and give it on the Bike stage, or type it below "
                "for this step alone; it is never guessed"
            )
        )
    return ", ".join(parts)


def _is_printed_otherwise(torque: TorqueSpecification, show: Preferred) -> bool:
    """Whether the manual prints a torque in another unit than it is shown in."""
    printed = (each for each in (torque.nominal, torque.low, torque.high) if each is not None)
    return any(each.unit != show.torque for each in printed)


def bolt_words(step: Step) -> str:
    """In which turn the bolts go, where there are several: "Bolts 11, 13, 12 and 14 in turn"."""
    if len(step.bolts) < 2:
        return ""
    return say("Bolts {numbers} in turn", numbers=listed(map(str, step.bolts)))


def pass_name(step: Step) -> str:
    """What one pass is called: "half", "full, until neither moves"."""
    return step.pass_words or say("pass {number}", number=step.pass_number)


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
    said = f"{begun(said)}." if said else ""
    if standing.waits_for:
        return f"{said} {say('Cannot pass: {reason}.', reason=standing.waits_for)}".strip()
    return said


def elsewhere_words(standing: StepStanding, in_hand: StepStanding | None) -> str:
    """Where the step stands, if it is not the one in hand; "" if it is."""
    if in_hand is None or standing.number == in_hand.number:
        return ""
    if standing.state is StepState.DONE:
        here = say("Step {number}, done.", number=standing.number)
    else:
        here = say("Step {number}, not its turn yet.", number=standing.number)
    back = say(
        "In hand is step {number}, {title}: Escape goes back to it.",
        number=in_hand.number,
        title=in_hand.step.title,
    )
    return f"{here} {back}"


def done_words(standing: StepStanding) -> str:
    """When and how a step was done, from its entry in the log; "" while it is not."""
    entry = standing.entry
    if entry is None:
        return ""
    at, wrench = f"{entry.at:%Y-%m-%d %H:%M}", entry.wrench
    torque = entry.torque.said if entry.torque else ""
    if torque and wrench:
        said = say("Done {at}, {torque} seen on {wrench}.", at=at, torque=torque, wrench=wrench)
    elif torque:
        said = say("Done {at}, {torque} seen.", at=at, torque=torque)
    elif wrench:
        said = say("Done {at} on {wrench}.", at=at, wrench=wrench)
    else:
        said = say("Done {at}.", at=at)
    if entry.reason:
        return f"{said} {say('Out of order because: {reason}.', reason=entry.reason)}"
    return said


def opened_words(log: tuple[LogEntry, ...], standing: StepStanding) -> str:
    """Why a step that was done is open again; "" where it was not done, or is done."""
    if standing.state is StepState.DONE:
        return ""
    last = next((entry for entry in reversed(log) if entry.step == standing.step.key), None)
    if last is None or last.action is Action.TICKED:
        return ""
    text = (
        marked("Opened again {at} because: {reason}.")
        if last.action is Action.OPENED_AGAIN
        else marked("Unticked {at} because: {reason}.")
    )
    return say(text, at=f"{last.at:%Y-%m-%d %H:%M}", reason=inside(last.reason.rstrip(".")))


def row_words(standing: StepStanding, show: Preferred) -> str:
    """A step in one line of words: number, what is done, the pass, the torque."""
    step = standing.step
    passes = f", {pass_name(step)}" if step.passes > 1 else ""
    return f"{standing.number}  {step.title}{passes}  {beside_words(step, show)}"


def spoken_words(standing: StepStanding, show: Preferred) -> str:
    """A step for a screen reader: its words and where it stands."""
    return f"{row_words(standing, show)}, {state_words(standing.state)}"
