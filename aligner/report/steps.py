"""One step of the tightening list in words: which bolts, which pass, which torque.

The trap: a torque that is not known must say so where the number would stand, or an empty
place is read as "no matter".
"""

from __future__ import annotations

from aligner.fastening.steps import Step
from aligner.language import marked, say
from aligner.units.preferred import Preferred

MISSING_TORQUE = marked("torque missing: see the maker's manual")


def step_words(step: Step) -> str:
    """What is done: the step's title, which names joint and bolts, and its pass."""
    if step.passes <= 1:
        return step.title
    words = say(
        "{step}, pass {number} of {passes}",
        step=step.title,
        number=step.pass_number,
        passes=step.passes,
    )
    return f"{words} ({step.pass_words})" if step.pass_words else words


def torque_words(step: Step, show: Preferred) -> str:
    """The torque of this pass with its range; "" where the step has none."""
    if step.torque_missing:
        return say(MISSING_TORQUE)
    if step.target_nm is None:
        return ""
    target = show.show_torque(step.target_nm)
    low, high = step.low_nm, step.high_nm
    if low is None or high is None or low == high:
        return target
    return f"{target} ({show.show_torques(low, high)})"
