"""What can move when a clamp is let go, and when an untick only takes back a mistaken tick.

The trap: a hold point stands before the clamps that keep what was measured there. When such a
clamp is slackened again, the hold point still stands ticked above it, while a leg has slid or
the lower bracket has turned. Letting go of a clamp is therefore not only a matter of what comes
after it. Which clamps matter is said by `holds` in resources/order/joint_kinds.json:

- a lower clamp holds its leg and, with it, the bracket: letting it go always counts;
- a top clamp holds its leg only where no lower clamp on its side stands at its full torque;
- nothing else carries a leg: caps, handlebars and axle leave what was measured alone. But the
  stem head and the stem pinch are done again with the lower clamps slack, and so count too.

An untick counts as letting go unless it plainly is not: it takes back the newest entry of the
log, at once, and no pass of that clamp had brought it to its full torque. A clamp that the log
says was at its torque is taken as slackened whatever the haste, because a leg that slips is seen
within seconds and a measurement is cheap beside it. Who ticked the wrong step has Undo, which
opens nothing.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence

from aligner.fastening.joints import joint_kinds
from aligner.fastening.steps import Step
from aligner.job import Action, LogEntry, ticked_steps

#: Within how long an untick can still take back a tick made by mistake, in seconds. Chosen, no
#: source: long enough to see the wrong row and give a reason, too short to do a clamp's pass.
_AT_ONCE = 120.0


def is_taken_back(log: Sequence[LogEntry], place: int, steps: Iterable[Step]) -> bool:
    """Whether an entry only takes back the tick before it, so that nothing was let go.

    Args:
        log: as far as the entry, or further.
        place: of the entry in it.
        steps: the whole list.
    """
    entry = log[place]
    if entry.action is not Action.UNTICKED or place == 0:
        return False
    tick = log[place - 1]
    if tick.action is not Action.TICKED or tick.step != entry.step:
        return False
    if not 0 <= entry.at.timestamp() - tick.at.timestamp() <= _AT_ONCE:
        return False
    ticked = ticked_steps(tuple(log[:place]))
    joint = next((step.joint for step in steps if step.key == entry.step), None)
    return joint is not None and not any(
        step.key in ticked for step in steps if step.joint == joint and step.fraction >= 1
    )


def can_move_what_was_measured(
    step: Step, steps: Iterable[Step], is_ticked: Collection[str]
) -> bool:
    """Whether a leg or the lower bracket can move once the joint of a step is let go.

    Args:
        step: of the joint.
        steps: the whole list.
        is_ticked: keys of the steps that stand ticked.
    """
    holds = _holds(step)
    if holds != "leg":
        return bool(holds)
    below = [
        other
        for other in steps
        if _holds(other) == "bracket" and other.side == step.side and other.fraction >= 1
    ]
    return not below or any(other.key not in is_ticked for other in below)


def let_go_by(step: Step, steps: Sequence[Step], is_ticked: Collection[str]) -> list[Step]:
    """The step itself, and of what stands ticked all that is slackened to do it again."""
    found = [step]
    for each in found:
        found += (
            other
            for other in must_be_slack(each, steps)
            if other.key in is_ticked and other not in found
        )
    return found


def must_be_slack(step: Step, steps: Iterable[Step]) -> list[Step]:
    """The steps whose joints are slackened before a step is done again."""
    return [other for other in steps if any(other.place in places for places in step.slack)]


def _holds(step: Step) -> str:
    kind = joint_kinds().get(step.joint_kind)
    return kind.holds if kind is not None else ""
