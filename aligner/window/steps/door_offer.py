"""What the door of a list of steps offers: the value, the wrench, the button's words.

The trap: a question that was asked of a step holds for that step as it stood, and for no other.
"""

from __future__ import annotations

from aligner.assessment import StepStanding, StepState
from aligner.language import say
from aligner.units.preferred import Preferred


def is_same_standing(before: StepStanding | None, after: StepStanding | None) -> bool:
    """Whether it is the same step standing as it stood, so that what was asked still holds."""
    if before is None or after is None:
        return before is after
    return (before.step.key, before.state, before.waits_for) == (
        after.step.key,
        after.state,
        after.waits_for,
    )


def has_torque(standing: StepStanding) -> bool:
    """Whether a torque is seen when the step is done, be it known or missing."""
    return standing.step.target_nm is not None or standing.step.torque_missing


def offered_value(standing: StepStanding | None, show: Preferred) -> str:
    """What stands in the box until something else is typed: the setting, or the torque."""
    if standing is None or standing.step.target_nm is None:
        return ""
    tool = standing.tool
    if tool is not None and tool.can_be_set:
        return tool.setting_text
    return show.show_torque(standing.step.target_nm)


def offered_wrench(standing: StepStanding | None) -> str:
    """The wrench and adapter in words; "" where none is worked out."""
    tool = standing.tool if standing is not None else None
    return tool.words if tool is not None and tool.can_be_set else ""


def button_words(standing: StepStanding | None) -> str:
    """What the button does, and the key for it."""
    if standing is None:
        return say("Go on to Prove   Enter")
    if standing.state is StepState.DONE:
        return say("Untick   Space")
    if standing.step.kind == "hold":
        return say("Passed   Space twice")
    return say("Done   Space")
